// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/judged_entries.h"
#include "answer/question_of_case.h"
#include "answer/surroundings.h"
#include "exchange/case/case_file.h"
#include "stores/plausible.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

//! The one place where entries are judged: records of a case, or of a book, held against their hive, their day and each
//! other by the rules of core/stores/plausible.h. Tested: tests/answer/doubts_test.cpp.
namespace winterlarder::answer {

enum class DoubtedPart { Weighing, Feed, Harvest, Bees, Brood, Combs, Moisture, Tare };

struct DoubtedRecord {
    DoubtedPart part = DoubtedPart::Weighing;
    std::size_t index = 0; //!< in its list; 0 of the rest
    Date day;              //!< of the record
    std::string path;      //!< in the case: "weighings[0].gross_kg"
    stores::Doubt doubt;
    bool sure = false; //!< the keeper said that it is right
};

//! The hives a colony lived in: the one it began in, as of the first day there is, and every later one.
std::vector<HiveChange> hivesOf(const book::Colony& colony, const std::vector<book::Housing>& housings);

//! Every record of a case that is in doubt, impossible ones first within their list's order. Weights, feeds and harvests are held against
//! the hive of their day by `changes` (the larger one on the day of a change), else against that of the case; weights before and after a
//! change are not held against each other.
std::vector<DoubtedRecord> doubtsOf(const book::ColonyCase& record, const ReferenceData& reference,
                                    const std::vector<HiveChange>& changes = {});

//! The case without its records that are in doubt, and what is to be said of each: impossible ones, and those not likely of
//! which the keeper is not sure.
struct BelievedCase {
    book::ColonyCase record;
    std::vector<Remark> setAside;
};
BelievedCase believed(book::ColonyCase record, const ReferenceData& reference,
                      const std::vector<HiveChange>& changes = {});

//! The doubt as a reason of an answer that does without the record: "weighing", "feed", "harvest", "bees", "brood", "combs",
//! "moisture", "tare", "glance" or "outcome" of a day.
Remark setAsideRemark(const stores::Doubt& doubt, std::string record, Date day);

//! The bounds of a case's hive. Its formats must be known.
stores::HiveBounds boundsOfCase(const book::ColonyCase& record, const ReferenceData& reference);

//! A fault for every impossible record of a case file, at its place, with what would be possible.
Problems impossibleRecords(const book::ColonyCase& record, const exchange::CasePlaces& places,
                           const ReferenceData& reference, const DoubtInWords& inWords);

//! What is asked of a case file although it is counted as it stands: an empty weight that is not likely, unless all of the case is sure.
//! A book asks before it takes one, and is not asked again.
Problems askedOfCase(const book::ColonyCase& record, const exchange::CasePlaces& places, const ReferenceData& reference,
                     const DoubtInWords& inWords);

//! A book's case as it is written to a file. That an empty weight is right, though not likely, a file can say of the whole case only: `sure` is set
//! where the book took such a one, unless another record of the case is in doubt and nobody said that it is right.
book::ColonyCase caseToWrite(book::ColonyCase record, const ReferenceData& reference);

//! What is in doubt of an entry of a kind that is judged (judged_entries.h), the gravest first; nothing where it is likely. An entry of
//! the same id among the surroundings does not count. The entry's own `sure` is not asked. `today`: the keeper's, from the clock.
std::optional<stores::Doubt> doubtOf(const book::Weighing& entry, const Surroundings& around, Date today,
                                     const ReferenceData& reference);
std::optional<stores::Doubt> doubtOf(const book::Feed& entry, const Surroundings& around, Date today,
                                     const ReferenceData& reference);
std::optional<stores::Doubt> doubtOf(const book::Harvest& entry, const Surroundings& around, Date today,
                                     const ReferenceData& reference);
std::optional<stores::Doubt> doubtOf(const book::Look& entry, const Surroundings& around, Date today,
                                     const ReferenceData& reference);
std::optional<stores::Doubt> doubtOf(const book::Sighting& entry, const Surroundings& around, Date today,
                                     const ReferenceData& reference);
std::optional<stores::Doubt> doubtOf(const book::WinterOutcome& entry, const Surroundings& around, Date today,
                                     const ReferenceData& reference);
std::optional<stores::Doubt> doubtOf(const book::Colony& entry, const Surroundings& around, Date today,
                                     const ReferenceData& reference);
std::optional<stores::Doubt> doubtOf(const book::Housing& entry, const Surroundings& around, Date today,
                                     const ReferenceData& reference);
//! Of these only the day.
template <class Entry>
requires isHeldAgainstDay<Entry> std::optional<stores::Doubt> doubtOf(const Entry& entry, const Surroundings& around,
                                                                      Date today, const ReferenceData&) {
    return stores::doubtOfDay(entry.date, today, around.colony.since);
}
//! Of a table of measured days (each with its `date`): the last of them, where it is still to come.
template <class Days> std::optional<stores::Doubt> doubtOfDays(const Days& days, Date today) {
    std::optional<Date> last;
    for (const auto& day : days) last = last ? std::max(*last, day.date) : day.date;
    return last ? stores::doubtOfDay(*last, today, {}) : std::nullopt;
}

} // namespace winterlarder::answer
