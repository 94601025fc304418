// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/case/case_file.h"

#include <vector>

//! What a hive has room for, and where its combs hang. Tested: tests/exchange/case_faults_test.cpp,
//! tests/answer/question_of_case_test.cpp.
namespace winterlarder::exchange {

//! A box as room for combs.
struct BoxRoom {
    int places = 0; //!< of an unknown format none
    bool super = false;
};
//! Of every box, from the floor up.
std::vector<BoxRoom> roomOfBoxes(const book::HiveRecord& hive, const ReferenceData& reference);
//! Places for combs, all boxes together; an unknown format counts none.
int placesOf(const book::HiveRecord& hive, const ReferenceData& reference);
//! The combs said to be there, listed or counted.
double combsSaid(const book::CombsRecord& combs);

//! Where a comb hangs: its box from the floor and its place from the left, from 0.
struct CombAt {
    int box = 0, place = 0;
    bool operator==(const CombAt&) const = default;
};
//! Of listed combs, in the list's order: those said to be in a super hang in the boxes that are supers, all others fill the boxes from the floor up.
//! What finds no super hangs in the next free place; the list is cut where the hive is full.
std::vector<CombAt> whereCombsHang(const std::vector<book::CombRecord>& combs, const std::vector<BoxRoom>& boxes);
std::vector<CombAt> whereCombsHang(const std::vector<book::CombRecord>& combs, const book::HiveRecord& hive,
                                   const ReferenceData& reference);

//! Combs that may be covered with bees: those listed; all the hive has where none or only combs of supers are.
double combsThere(const book::CombsRecord& combs, const book::HiveRecord& hive, const ReferenceData& reference);

//! A comb said to be in a super of a hive that has none, or not so many places in its supers. Where no box is said to be a super, a box whose combs
//! are all of a super is one, as long as other boxes are listed.
std::optional<Problem> superFault(const book::CombsRecord& combs, const book::HiveRecord& hive,
                                  const CasePlaces& places, const ReferenceData& reference);

//! What a hive has no room for: more combs, or more of them covered with bees, than there are places. Places that are not known are left
//! out of the words. `reference` may be nothing where the hive could not be read.
Problems roomFaults(const book::ColonyCase& record, const CasePlaces& places, const ReferenceData* reference);
//! The same of a case that lists every comb: no more can be covered than are listed, and combs of a super need a super with so many places. (In a book
//! they may still be being written down, or the super may be off.)
Problems hiveFaults(const book::ColonyCase& record, const CasePlaces& places, const ReferenceData* reference);

} // namespace winterlarder::exchange
