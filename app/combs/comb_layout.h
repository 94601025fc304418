// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hive/hive.h"

#include <QRectF>
#include <QSizeF>

#include <vector>

namespace winterlarder::desk {

//! What of a comb decides where it is drawn.
struct CombPlace {
    hive::Outline outline;
    int box = 0;
};

//! Combs of one box side by side, as many as go into a row.
struct CombRow {
    int box = 0;
    std::vector<int> combs;
};
//! Highest box first, whatever the order of the combs; boxes of more combs than `most` run over several rows from the entrance end, of as equal length as can be.
std::vector<CombRow> rowsOf(const std::vector<CombPlace>& combs, std::size_t most = 12);

//! Where one comb and the words below it are drawn.
struct CombSlot {
    int comb = -1;
    QRectF drawn; //!< with its bar
    QRectF words;
};

//! What the words around the combs need.
struct CombWords {
    double rowLabel = 60; //!< width of "box 2"
    double below = 16;    //!< height of the words below a comb
    double widest = 60;   //!< width of the widest of them
};
//! The rows that are drawn in a size: a box is broken into shorter ones where that makes its combs clearly larger.
std::vector<CombRow> rowsIn(const std::vector<CombPlace>& combs, QSizeF size, const CombWords& words);
//! All combs to one scale, filling the size; in the order of rowsIn. Tested: tests/app/comb_layout_test.cpp.
std::vector<CombSlot> layOut(const std::vector<CombPlace>& combs, QSizeF size, const CombWords& words);

//! The height at which combs are as large as a width lets them be (rows broken until the words below have room and the deepest combs are
//! 90 x 60 px or as near to it as rows of four come), or comfortably large where it lets them be larger.
double heightFor(const std::vector<CombPlace>& combs, double width, const CombWords& words);

//! The comb beside, above or below another; the same one at the edge.
int combBeside(const std::vector<CombRow>& rows, int comb, int rowsDown);

} // namespace winterlarder::desk
