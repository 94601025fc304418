// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/comb_layout.h"
#include "combs/comb_painter.h"
#include "models/colony.h"
#include "reference/reference.h"

#include <QString>

#include <vector>

namespace winterlarder::desk {

//! One comb as the drawing shows it.
struct DrawnComb {
    book::CombRecord record;
    hive::CombFormat format; //!< its own where it has one, else its box's; with the comb's own spacing
    Length usualSpacing{};   //!< of that format
    int box = 0;
    int place = 0;
    bool inSuper = false;
    bool longHive = false;         //!< its box is one
    double openFactor = 0.65;      //!< what open stores count for on that day
    stores::CombSpreads spreads{}; //!< how far its honey may be off
    CombAppearance look;
    QString kilograms; //!< "2.6 kg (2.1-3.1)", written below it
    QString name;      //!< "Comb 4 of box 2"
    QString spoken;    //!< what a screen reader says: name, every share, kilograms
};

//! The combs of a colony in the order of their list, hung as the answer hangs them (exchange::whereCombsHang), with kilograms, from its
//! records alone, so that nobody waits for an answer to see them; the answer, where there is one, says what open stores count for. Tested: tests/app/comb_entry_test.cpp.
std::vector<DrawnComb> drawnCombs(const book::ColonyCase& record, const AnsweredColony* answered,
                                  const ReferenceData& reference);
//! The same from a hive's boxes, from the floor up, none of them a super.
std::vector<DrawnComb> drawnCombs(const std::vector<book::CombRecord>& combs,
                                  const std::vector<hive::CombFormat>& boxes, double openFactor,
                                  const stores::CombSpreads& spreads);

//! The comb as stores are reckoned from it.
stores::Comb storesComb(const DrawnComb& drawn);

//! The comb with other records in the same place, as while it is dragged.
DrawnComb redrawn(const DrawnComb& comb, const book::CombRecord& record);

//! Where the combs hang.
std::vector<CombPlace> placesOf(const std::vector<DrawnComb>& combs);

} // namespace winterlarder::desk
