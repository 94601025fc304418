// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/united_case.h"

#include "answer/bees_of_case.h"
#include "answer/hive_of_case.h"
#include "stores/tare.h"
#include "stores/weighing.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::answer {

namespace {

using book::ColonyCase;
using book::ColonyHistory;
using book::CombRecord;
using CombList = std::vector<CombRecord>;

//! What a case tells of its hive and bees in the models' measures.
advice::ColonyQuestion measured(const ColonyCase& record, const ReferenceData& reference) {
    advice::ColonyQuestion question;
    Problems unused; // told where the case is answered
    fillHive(question, record.hive, reference);
    fillCombs(question, record, reference);
    fillTare(question, record.hive);
    fillBees(question, record.bees, {}, reference, unused);
    return question;
}

// ---- combs ------------------------------------------------------------------------------------------------------------------

//! Combs full of stores, in combs of the other's first box, as a quick count tells them; what was listed but not looked at is like the rest.
book::QuickCountRecord counted(const advice::ColonyQuestion& question, const hive::CombFormat& first) {
    if (question.quick) {
        const double area = (hive::faceArea(question.boxes.front().outline) / hive::faceArea(first.outline)).value();
        return {question.quick->full * area, question.quick->half * area, question.quick->cappedShare};
    }
    double full = 0, capped = 0, seen = 0, built = 0;
    for (const auto& comb : question.combs) {
        const double area = comb.built * (hive::faceArea(comb.format.outline) / hive::faceArea(first.outline)).value();
        built += area;
        if (!comb.lookedAt()) continue;
        seen += area;
        full += area * (comb.capped + comb.open);
        capped += area * comb.capped;
    }
    if (seen <= 0) return {};
    return {full * built / seen, 0, full > 0 ? capped / full : 1};
}

book::QuickCountRecord together(const book::QuickCountRecord& a, const book::QuickCountRecord& b) {
    const auto all = [](const book::QuickCountRecord& each) { return each.fullOfStores + each.half / 2; };
    const double sum = all(a) + all(b);
    const double capped = sum > 0 ? (all(a) * a.cappedShare + all(b) * b.cappedShare) / sum : 1;
    return {a.fullOfStores + b.fullOfStores, a.half + b.half, capped};
}

std::size_t placesIn(const book::HiveRecord& hive, const ReferenceData& reference) {
    std::size_t places = 0;
    for (const auto& box : boxesOf(hive, reference)) places += static_cast<std::size_t>(std::max(0, box.combsPerBox));
    return places;
}

double filled(const CombRecord& comb) { return comb.capped.value_or(0) + comb.open.value_or(0); }

//! Where there are more combs than places the emptiest are those that were taken away.
void keepFullest(CombList& combs, std::size_t places) {
    while (combs.size() > places)
        combs.erase(std::min_element(combs.begin(), combs.end(),
                                     [](const auto& a, const auto& b) { return filled(a) < filled(b); }));
}

bool countedCombs(const ColonyCase& record) { return !std::holds_alternative<std::monostate>(record.combs); }

//! Whether nothing but weights made since the day tells of the stores.
bool weighedSince(const ColonyCase& record, Date day) {
    return std::any_of(record.weighings.begin(), record.weighings.end(),
                       [&](const book::WeighingRecord& each) { return each.date > day; });
}

// ---- weights ----------------------------------------------------------------------------------------------------------------

//! Of the whole hive, by a scale or both sides lifted; one side, or a word, is too rough to add up.
std::optional<Mass> wholeWeight(const book::WeighingRecord& weighing) {
    if (const auto* scale = std::get_if<book::ScaleReading>(&weighing.reading)) return scale->gross;
    const auto* lift = std::get_if<book::LiftReading>(&weighing.reading);
    if (!lift || lift->sides.size() != 2) return std::nullopt;
    return (lift->sides[0] + lift->sides[1]) / stores::twoSidesRead;
}

const book::WeighingRecord* lastWhole(const ColonyCase& record) {
    const book::WeighingRecord* last = nullptr;
    for (const auto& each : record.weighings)
        if (wholeWeight(each) && (!last || each.date >= last->date)) last = &each;
    return last;
}

struct WeighedTogether {
    book::WeighingRecord weighing;
    Date own; //!< the day of the own one
};
//! What both weigh when one stands on the other without its floor and lids; nothing where either was not weighed, or more than three weeks before the other.
//! The earlier day counts.
std::optional<WeighedTogether> weighedTogether(const ColonyCase& onto, const ColonyCase& from) {
    const auto* own = lastWhole(onto);
    const auto* other = lastWhole(from);
    if (!own || !other || std::abs(own->date.daysSince(other->date)) > 21) return std::nullopt;
    const Mass both = *wholeWeight(*own) + *wholeWeight(*other) - stores::floorAndLids;
    return WeighedTogether{{std::min(own->date, other->date), book::ScaleReading{both}, own->sure || other->sure},
                           own->date};
}

// ---- bees -------------------------------------------------------------------------------------------------------------------

std::optional<double> sum(const std::optional<double>& a, const std::optional<double>& b) {
    return a && b ? std::optional(*a + *b) : std::nullopt;
}

//! Counts of one kind add up; of two kinds the bees they stand for.
void addBees(ColonyCase& onto, const ColonyCase& from, const advice::ColonyQuestion& own,
             const advice::ColonyQuestion& other) {
    auto& bees = onto.bees;
    const bool listed = std::holds_alternative<CombList>(onto.combs) && std::holds_alternative<CombList>(from.combs);
    if (own.brood && other.brood && (bees.broodCells || from.bees.broodCells || !listed))
        bees.broodCells = own.brood->count + other.brood->count;
    const auto count = sum(bees.count, from.bees.count), combs = sum(bees.coveredCombs, from.bees.coveredCombs),
               seams = sum(bees.seams, from.bees.seams);
    bees.count = count, bees.coveredCombs = combs, bees.seams = seams;
    if (bees.known()) return;
    bees.count = own.bees->count + other.bees->count;
    bees.logSd = std::max(own.beesLogSd, other.beesLogSd);
}

//! One of the two queens is there.
void addQueen(book::BeesRecord& onto, const book::BeesRecord& from) {
    if (from.queenSeen == true) onto.queenSeen = true;
    if (from.eggsSeen == true) onto.eggsSeen = true;
    onto.trouble = onto.trouble || from.trouble;
}

// ---- what was done ----------------------------------------------------------------------------------------------------------

//! Feeds and harvests of the one that came: those since its own look change its stores; earlier ones, where they would be taken for later than the look
//! of the other, are in what was seen.
template <class Given>
void addChanges(std::vector<Given>& onto, const std::vector<Given>& from, const ColonyCase& into,
                const ColonyCase& joined) {
    for (Given each : from) {
        const bool sinceLook = !joined.lookedOn || each.date > *joined.lookedOn ||
                               (each.date == *joined.lookedOn && each.afterLook.value_or(false));
        const bool countsThere = into.lookedOn && each.date >= *into.lookedOn;
        if (!sinceLook && countsThere) continue;
        each.afterLook.reset();
        if (sinceLook && each.date == into.lookedOn) each.afterLook = true;
        onto.push_back(std::move(each));
    }
    std::stable_sort(onto.begin(), onto.end(), [](const Given& a, const Given& b) { return a.date < b.date; });
}

//! Adds one colony that came to the case of another.
class Uniting {
public:
    Uniting(ColonyCase& onto, const ColonyHistory& history, const ReferenceData& reference, Date asOf)
        : onto_(onto), history_(history), reference_(reference), asOf_(asOf) {}

    void add(const ColonyCase& from, Date day) {
        book::UnitedRecord united{from.colony.value_or(""), day, from.lookedOn};
        united.bees = onto_.bees.known() && from.bees.known();
        united.boxesOnTop = !housedSince(day);
        const auto weighed = united.boxesOnTop ? weighedTogether(onto_, from) : std::nullopt;
        keepWeightsSince(day);
        const auto own = measured(onto_, reference_), other = measured(from, reference_);
        if (united.bees) addBees(onto_, from, own, other);
        addQueen(onto_.bees, from.bees);
        united.stores = addCombsOf(from, day, own, other);
        if (!united.stores && weighed) united.stores = countByWeight(*weighed);
        addChanges(onto_.feeds, from.feeds, onto_, from);
        addChanges(onto_.harvests, from.harvests, onto_, from);
        onto_.treatments.insert(onto_.treatments.end(), from.treatments.begin(), from.treatments.end());
        onto_.hive.treated = onto_.hive.treated || from.hive.treated;
        if (from.fedOrTreated == true) onto_.fedOrTreated = true;
        onto_.united.insert(onto_.united.end(), from.united.begin(), from.united.end());
        onto_.united.push_back(std::move(united));
    }

private:
    bool housedSince(Date day) const {
        return std::any_of(history_.housings.begin(), history_.housings.end(),
                           [&](const book::Housing& each) { return each.date >= day && each.date <= asOf_; });
    }
    const book::HiveRecord& hiveOn(Date day) const { return book::hiveOn(history_.colony, history_.housings, day); }

    // Those of the hive as it stands now.
    void keepWeightsSince(Date day) {
        std::erase_if(onto_.weighings, [&](const book::WeighingRecord& each) {
            const bool before = each.date <= day;
            if (before) onto_.weighedInOtherHive.push_back(each.date);
            return before;
        });
        if (!housedSince(day)) return;
        std::erase_if(onto_.weighedInOtherHive, [&](Date each) { return each > day && hiveOn(each) == hiveOn(asOf_); });
        onto_.weighings.clear();
        for (const auto& entry : history_.weighings)
            if (entry.weighing.date > day && entry.weighing.date <= asOf_ &&
                hiveOn(entry.weighing.date) == hiveOn(asOf_))
                onto_.weighings.push_back(entry.weighing);
    }

    // Combs of one of the two alone tell less than the weights of both.
    bool countByWeight(const WeighedTogether& weighed) {
        onto_.combs = std::monostate{};
        onto_.weighings.insert(onto_.weighings.begin(), weighed.weighing);
        std::erase(onto_.weighedInOtherHive, weighed.own);
        return true;
    }

    void standTogether(const ColonyCase& from, Date day, Mass tareOfOther) {
        auto& hive = onto_.hive;
        if (housedSince(day)) {
            hive = hiveOn(asOf_);
            return;
        }
        if (hive.tare) {
            const Mass more = tareOfOther - stores::floorAndLids;
            hive.tare = *hive.tare + std::max(kilograms(0), more);
        }
        hive.boxes.insert(hive.boxes.end(), from.hive.boxes.begin(), from.hive.boxes.end());
    }

    // Whether its combs are counted with the others. Where one of them has only a count no comb can be named, so both have.
    bool addCombsOf(const ColonyCase& from, Date day, const advice::ColonyQuestion& asOwn,
                    const advice::ColonyQuestion& asOther) {
        const auto* own = std::get_if<CombList>(&onto_.combs);
        const auto* other = std::get_if<CombList>(&from.combs);
        const std::size_t ownPlaces = placesIn(onto_.hive, reference_);
        const auto first = boxesOf(onto_.hive, reference_).front();
        std::optional<book::QuickCountRecord> count;
        if (countedCombs(onto_) && countedCombs(from) && !(own && other))
            count = together(counted(asOwn, first), counted(asOther, first));
        CombList combs = own ? *own : CombList{};
        standTogether(from, day, asOther.tare);
        if (!countedCombs(onto_)) return weighedSince(onto_, day);
        if (!countedCombs(from)) {
            if (!weighedSince(onto_, day)) return false;
            onto_.combs = std::monostate{};
            return true;
        }
        if (count) {
            onto_.combs = *count;
            return true;
        }
        CombRecord notBuilt;
        notBuilt.built = 0;
        if (!housedSince(day)) combs.resize(std::max(ownPlaces, combs.size()), notBuilt);
        combs.insert(combs.end(), other->begin(), other->end());
        keepFullest(combs, placesIn(onto_.hive, reference_));
        onto_.combs = std::move(combs);
        return true;
    }

    ColonyCase& onto_;
    const ColonyHistory& history_;
    const ReferenceData& reference_;
    Date asOf_;
};

} // namespace

ColonyCase caseWithUnited(const ColonyHistory& history, const std::vector<book::Yard>& yards,
                          const ReferenceData& reference, Date asOf) {
    ColonyCase record = book::caseOf(history, yards, reference, asOf);
    const Date since = record.lookedOn.value_or(asOf.plusDays(-book::oldestObservationDays));
    Uniting uniting(record, history, reference, asOf);
    for (const auto& joined : history.united) {
        const auto day = book::unitedOn(joined, history.colony.id);
        if (day && *day >= since && *day <= asOf) uniting.add(caseWithUnited(joined, yards, reference, *day), *day);
    }
    return record;
}

std::vector<Remark> unitedRemarks(const ColonyCase& record) {
    std::vector<Remark> remarks;
    for (const auto& each : record.united) {
        const auto say = [&](std::string id) {
            Remark remark{std::move(id), {{"from", each.colony}, {"day", each.date}}};
            if (each.lookedOn) remark.details["seen"] = *each.lookedOn;
            remarks.push_back(std::move(remark));
        };
        if (each.bees && each.stores) say("united-counted");
        if (!each.bees) say("united-bees-unknown");
        if (!each.stores) say("united-stores-unknown");
        if (each.boxesOnTop) say("united-box-on-top");
    }
    return remarks;
}

} // namespace winterlarder::answer
