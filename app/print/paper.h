// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QString>

#include <functional>

class QPagedPaintDevice;
class QPrinter;

namespace winterlarder::desk {

//! Something to be printed: always dark on light, whatever the screen wears.
struct Paper {
    QString html;
    QString footer;      //!< at the foot of each page, left of the page number
    int wantedPages = 1; //!< letters are made smaller, down to 6.25 points, until it fits; not where it never would
    //! The winter picture, drawn anew for the room it gets [px at 140 per inch]; nothing where the sheet has none.
    std::function<QImage(QSize)> picture{};
};

//! Lays a sheet out on paper, page after page: no heading is left alone at the foot of a page, tables repeat theirs on the next.
//! Tested: tests/app/paper_test.cpp.
void printSheet(const Paper& paper, QPrinter& printer);
//! Writes it as PDF on A4, or Letter where the units are those of the United States; false where the file cannot be written.
bool saveSheet(const Paper& paper, const QString& path);
//! How many pages it takes.
int pagesOf(const Paper& paper);

} // namespace winterlarder::desk
