// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "exchange/json/json_tree.h"
#include "reference/reference.h"
#include "support/outcome.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace winterlarder::exchange {

//! The form of case file this program writes and reads: the value of its key "case".
inline constexpr int caseFileForm = 1;

//! Nothing may have been looked at or weighed longer before as_of than this; earlier feeds and harvests are no fault.
using book::oldestObservationDays;

//! Where each value of a case file stood, by its path: "season.forage", "combs[3].capped". Lets faults found later, by
//! the models, be shown at their place.
struct CasePlaces {
    std::string file;
    std::map<std::string, Position, std::less<>> byPath;

    //! The place of the path; where it was not written, of what would hold it; the file alone where nothing is known.
    Place of(std::string_view path) const;
};

//! What came of reading one case.
struct CaseReading {
    //! There where as_of could be read. To be trusted only where problems is empty; see datesSound.
    std::optional<book::ColonyCase> record;
    CasePlaces places;
    Problems problems; //!< every fault of the text, by place
    //! as_of, site and season were read without fault: the order of given dates can be checked whatever else is wrong.
    bool datesSound = false;
};

//! Latitude of a site [deg]; nothing where its station is not a shipped one.
std::optional<double> latitudeOf(const book::SiteRecord& site, const ReferenceData& reference);

//! "3:2": two numbers above 0, at most 1000, with a colon between.
bool isRatio(std::string_view text);

//! Reads a case file strictly: unknown and doubled keys, wrong types, numbers outside the limits of shared/fields.csv,
//! alternatives both given or none, shares summing to more than 1, more combs than places, dates that cannot be - all
//! faults are listed, each with file, line and column. `firstLine` numbers the lines (JSON Lines).
//! Tested: tests/exchange/case_file_test.cpp, case_faults_test.cpp.
CaseReading readCaseWithPlaces(std::string_view text, std::string file, const ReferenceData& reference,
                               int firstLine = 1);

//! The same where places are not needed afterwards.
Outcome<book::ColonyCase> readCase(std::string_view text, std::string file, const ReferenceData& reference);

//! The case as JSON, keys in the order of the manual, only what was said or differs from its default.
//! readCase(writeCase(c)) == c for every case that readCase can give (a property test holds it).
std::string writeCase(const book::ColonyCase& record);
//! The same on one line, for JSON Lines.
std::string writeCaseLine(const book::ColonyCase& record);

} // namespace winterlarder::exchange
