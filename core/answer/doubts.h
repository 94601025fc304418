// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"
#include "exchange/case/case_file.h"
#include "stores/plausible.h"

#include <functional>
#include <string>
#include <vector>

//! The one place where entries are judged: records of a case, or of a book, held against their hive, their day and each
//! other by the rules of core/stores/plausible.h. Tested: tests/answer/doubts_test.cpp.
namespace winterlarder::answer {

enum class DoubtedPart { Weighing, Feed, Harvest, Bees, Brood, Combs, Moisture };

struct DoubtedRecord {
    DoubtedPart part = DoubtedPart::Weighing;
    std::size_t index = 0; //!< in its list; 0 of the rest
    Date day;              //!< of the record
    std::string path;      //!< in the case: "weighings[0].gross_kg"
    stores::Doubt doubt;
    bool sure = false;     //!< the keeper said that it is right
};

//! Every record of a case that is in doubt, impossible ones first within their list's order. `hiveChanges`: days from which
//! the hive was another; weights before and after them are not held against each other.
std::vector<DoubtedRecord> doubtsOf(const book::ColonyCase& record, const ReferenceData& reference,
                                    const std::vector<Date>& hiveChanges = {});

//! The case without its records that are in doubt, and what is to be said of each: impossible ones, and those not likely of
//! which the keeper is not sure.
struct BelievedCase {
    book::ColonyCase record;
    std::vector<Remark> setAside;
};
BelievedCase believed(book::ColonyCase record, const ReferenceData& reference);

//! The doubt as a reason of an answer that does without the record: "weighing", "feed", "harvest", "bees", "brood", "combs",
//! "moisture", "glance" or "outcome" of a day.
Remark setAsideRemark(const stores::Doubt& doubt, std::string record, Date day);

//! The bounds of a case's hive. Its formats must be known.
stores::HiveBounds boundsOfCase(const book::ColonyCase& record, const ReferenceData& reference);

//! A doubt in words, at the place of its record: the core knows what is wrong, not how it is said.
using DoubtInWords = std::function<Problem(const stores::Doubt&, Place)>;

//! A fault for every impossible record of a case file, at its place, with what would be possible.
Problems impossibleRecords(const book::ColonyCase& record, const exchange::CasePlaces& places, const ReferenceData& reference,
                           const DoubtInWords& inWords);

//! What a new or changed entry of a book is held against: everything else the book has of its colony.
struct Surroundings {
    book::Colony colony;
    book::SiteRecord site{};
    std::vector<book::Housing> housings{};
    std::vector<book::Look> looks{};
    std::vector<book::Weighing> weighings{};
    std::vector<book::Feed> feeds{};
    std::vector<book::Harvest> harvests{};
};
Outcome<Surroundings> surroundingsOf(book::Book& from, book::ColonyId colony);

//! What is in doubt of an entry, the gravest first; nothing where it is likely. An entry of the same id among the
//! surroundings does not count. The entry's own `sure` is not asked.
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

} // namespace winterlarder::answer
