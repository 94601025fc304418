// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/followed_colony.h"

#include "advice/reckoning.h"
#include "answer/doubts.h"
#include "answer/question_of_case.h"
#include "answer/site_of_case.h"
#include "book/case_of.h"
#include "stores/bees.h"
#include "stores/evidence.h"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>

namespace winterlarder::answer {

namespace {

constexpr int weighingEveryDays = 10; // nearer ones tell little more and would be counted as if they did
constexpr SeasonDay solstice{-11};

// ---- the day the winter is followed from -------------------------------------------------------------------------------------

bool sawAll(const book::Look& look) { return look.bees.known() && !std::holds_alternative<std::monostate>(look.combs); }

Date decidedOn(const WinterRecords& records, const Winter& winter, Date asOf) {
    std::optional<Date> acted, autumn, later;
    for (const auto& advice : records.advices)
        if (winter.contains(advice.date)) acted = advice.date;
    for (const auto& look : records.looks) {
        if (!winter.contains(look.date) || !sawAll(look)) continue;
        if (winter.seasonDay(look.date) <= solstice)
            autumn = look.date;
        else if (!later)
            later = look.date;
    }
    return acted ? *acted : autumn ? *autumn : later.value_or(asOf);
}

// ---- what was written down afterwards ---------------------------------------------------------------------------------------

// Records of a winter after a day become plain values by way of a case that holds nothing else.
class Afterwards {
public:
    Afterwards(const WinterRecords& winterRecords, const book::ColonyCase& autumn, const Winter& season, Date decided, Date asOf,
               const ReferenceData& data)
        : records(winterRecords), base(autumn), winter(season), decided_(decided), asOf_(asOf), reference(data) {}

    Outcome<bool> fill(tracking::FollowQuestion& question, const advice::ColonyQuestion& asked) {
        book::ColonyCase later = bare();
        const auto weighings = kept();
        for (const auto& entry : weighings) later.weighings.push_back(entry.weighing);
        for (const auto& entry : records.feeds)
            if (counts(entry.feed.date)) later.feeds.push_back(book::oneAmount(entry.feed));
        for (const auto& entry : records.harvests)
            if (counts(entry.harvest.date)) later.harvests.push_back(entry.harvest);
        later = believedLater(std::move(later), question);
        const auto plain = questionOf(later, {}, reference, 0);
        if (!plain) return plain.problems();
        fillSteps(question, *plain);
        fillWeighings(question, *plain, wetOf(later.weighings, weighings));
        fillSightings(question, asked);
        fillDeath(question);
        return fillLooks(question);
    }

    Outcome<bool> fillPlan(tracking::FollowQuestion& question) {
        book::ColonyCase planned = bare();
        for (const auto& visit : records.visits) {
            if (!visit.advice || !accepted(*visit.advice) || !winter.contains(visit.date) || visit.date < decided_) continue;
            if (visit.doneOn && *visit.doneOn <= decided_) continue; // what was fed by then is in the stores of the decision
            if (visit.fondant) planned.feeds.push_back({visit.date, book::FeedKind::Fondant, {}, {}, {}, visit.fondant});
            if (visit.sugar) planned.feeds.push_back({visit.date, book::FeedKind::Syrup, visit.sugar, {}, {}, {}});
        }
        const auto plain = questionOf(planned, {}, reference, 0);
        if (!plain) return plain.problems();
        for (const auto& feed : plain->feeds) question.planned.push_back({feed.day, feed.stores});
        if (!actedOn()) planWhatWasDone(question);
        return true;
    }

private:
    //! Without weights, feeds and harvests that are in doubt; what was seen at the autumn's look is its answer's to say.
    book::ColonyCase believedLater(book::ColonyCase later, tracking::FollowQuestion& question) const {
        auto sound = believed(std::move(later), reference);
        for (auto& remark : sound.setAside) {
            const auto& record = std::get<std::string>(remark.details.at("record"));
            if (record == "weighing" || record == "feed" || record == "harvest") question.setAside.push_back(std::move(remark));
        }
        sound.record.sure = true; // they were judged
        return std::move(sound.record);
    }
    //! Those of `believed` in their order, which is that of `all`.
    static std::vector<bool> wetOf(const std::vector<book::WeighingRecord>& believed, const std::vector<book::Weighing>& all) {
        std::vector<bool> wet;
        for (const auto& entry : all)
            if (wet.size() < believed.size() && believed[wet.size()] == entry.weighing) wet.push_back(entry.wet);
        return wet;
    }
    book::ColonyCase bare() const {
        book::ColonyCase empty = base;
        empty.weighings.clear();
        empty.feeds.clear();
        empty.harvests.clear();
        return empty;
    }
    bool counts(Date date) const { return date > decided_ && date <= asOf_ && winter.contains(date); }
    bool accepted(book::ActedAdviceId id) const {
        return std::any_of(records.advices.begin(), records.advices.end(),
                           [&](const book::ActedAdvice& each) { return each.id == id && each.date == decided_; });
    }
    bool actedOn() const {
        return std::any_of(records.advices.begin(), records.advices.end(),
                           [&](const book::ActedAdvice& each) { return each.date == decided_; });
    }
    // Nothing was planned in the book: what was fed and taken before the solstice is what the keeper had in mind.
    static void planWhatWasDone(tracking::FollowQuestion& question) {
        for (const auto& step : question.steps)
            if (step.kind != tracking::KnownStep::Kind::Equipment && step.day <= solstice)
                question.planned.push_back({step.day, step.change});
    }

    // The last weighing of every ten days, hefts apart from scales.
    std::vector<book::Weighing> kept() const {
        std::vector<book::Weighing> result;
        for (const auto& entry : records.weighings) {
            if (!counts(entry.weighing.date)) continue;
            const bool replaces = !result.empty() && result.back().weighing.reading.index() == entry.weighing.reading.index() &&
                                  entry.weighing.date.daysSince(groupStart_) < weighingEveryDays;
            if (replaces) result.back() = entry;
            else {
                groupStart_ = entry.weighing.date;
                result.push_back(entry);
            }
        }
        return result;
    }

    void fillSteps(tracking::FollowQuestion& question, const advice::ColonyQuestion& plain) const {
        using Kind = tracking::KnownStep::Kind;
        for (const auto& feed : plain.feeds) question.steps.push_back({feed.day, Kind::Feed, feed.stores, std::nullopt});
        for (const auto& harvest : plain.harvests) question.steps.push_back({harvest.day, Kind::Harvest, -harvest.honey, std::nullopt});
        for (const auto& change : records.manipulations)
            if (change.weightChange && counts(change.date))
                question.steps.push_back({winter.seasonDay(change.date), Kind::Equipment, *change.weightChange, std::nullopt});
    }

    void fillWeighings(tracking::FollowQuestion& question, const advice::ColonyQuestion& plain, const std::vector<bool>& wet) const {
        using Kind = advice::WeighedHive::Kind;
        for (std::size_t i = 0; i < plain.weighings.size(); ++i) {
            const auto& seen = plain.weighings[i];
            tracking::Observation observation{seen.day, seen.date, tracking::HeftSeen{seen.heftFactor * plain.usualStores}, wet[i]};
            if (seen.kind != Kind::Heft) {
                const auto kind = seen.kind == Kind::Scale          ? stores::WeighingKind::Scale
                                  : seen.kind == Kind::TwoSidedLift ? stores::WeighingKind::TwoSidedLift
                                                                    : stores::WeighingKind::OneSidedLift;
                observation.what = tracking::WeightSeen{kind, seen.reading};
            }
            question.observations.push_back(observation);
        }
    }

    void fillSightings(tracking::FollowQuestion& question, const advice::ColonyQuestion& asked) const {
        for (const auto& sighting : records.sightings) {
            if (!counts(sighting.date)) continue;
            const auto add = [&](auto what) {
                question.observations.push_back({winter.seasonDay(sighting.date), sighting.date, std::move(what)});
            };
            switch (sighting.saw) {
            case book::SightingKind::Flying: add(tracking::FlyingSeen{}); break;
            case book::SightingKind::Cluster: add(tracking::ClusterSeen{believedBees(sighting, asked, question)}); break;
            case book::SightingKind::Dead: add(tracking::DeadOut{}); break;
            case book::SightingKind::Stores: break;
            }
            if (sighting.stores && sighting.saw != book::SightingKind::Dead) add(tracking::CombGlimpsed{*sighting.stores});
        }
    }

    std::optional<BeeCount> believedBees(const book::Sighting& sighting, const advice::ColonyQuestion& asked, tracking::FollowQuestion& question) const {
        const auto doubt = sighting.seams ? stores::doubtOfSeams(*sighting.seams, boundsOfCase(base, reference), reference.constants) : std::nullopt;
        if (!doubt || (sighting.sure && !doubt->impossible)) return beesIn(sighting, asked);
        question.setAside.push_back(setAsideRemark(*doubt, "glance", sighting.date));
        return std::nullopt;
    }
    static std::optional<BeeCount> beesIn(const book::Sighting& sighting, const advice::ColonyQuestion& asked) {
        if (!sighting.seams || asked.boxes.empty()) return std::nullopt;
        return stores::beesFrom(stores::BeesSeen::Seams, *sighting.seams, asked.combs, asked.boxes.front());
    }

    void fillDeath(tracking::FollowQuestion& question) const {
        for (const auto& fate : records.fates)
            if (fate.fate == book::FateKind::Dead && counts(fate.date))
                question.observations.push_back({winter.seasonDay(fate.date), fate.date, tracking::DeadOut{}});
    }

    // A later look is evidence of its own day: its combs, its bees.
    Outcome<bool> fillLooks(tracking::FollowQuestion& question) const {
        for (const auto& look : records.looks) {
            if (!counts(look.date)) continue;
            book::ColonyCase seen = bare();
            seen.asOf = look.date;
            seen.lookedOn = look.date;
            seen.hive = book::hiveOn(records.colony, records.housings, look.date);
            seen.season = {};
            seen.bees = look.bees;
            seen.bees.sure = look.sure;
            seen.combs = look.combs;
            const auto plain = questionOf(seen, {}, reference, 0);
            if (!plain) return plain.problems();
            question.setAside.insert(question.setAside.end(), plain->setAside.begin(), plain->setAside.end());
            const SeasonDay day = winter.seasonDay(look.date);
            const double factor = stores::openFactor(false);
            const auto spreads = stores::combSpreads(reference.constants);
            std::optional<stores::Evidence> evidence = stores::evidenceOfVisit(plain->combs, factor, spreads, look.date);
            if (plain->quick && plain->quickFullComb)
                evidence = stores::evidenceOfCount(*plain->quick, *plain->quickFullComb, factor, look.date);
            if (evidence) {
                const Mass sd = std::max(kilograms(0.3), evidence->sd(evidence->typical));
                question.observations.push_back({day, look.date, tracking::StoresSeen{evidence->typical, sd}});
            }
            if (plain->bees && plain->bees->count > 0)
                question.observations.push_back({day, look.date, tracking::BeesSeen{*plain->bees, std::max(0.03, plain->beesLogSd)}});
        }
        return true;
    }

    const WinterRecords& records;
    const book::ColonyCase& base;
    const Winter& winter;
    Date decided_, asOf_;
    const ReferenceData& reference;
    mutable Date groupStart_ = decided_;
};

// ---- the question -----------------------------------------------------------------------------------------------------------

tracking::StoresAtDecision storesOf(const advice::Advice& advice) {
    tracking::StoresAtDecision stores{std::max(kilograms(0), advice.estimate->mean), advice.storesSd};
    for (const auto& share : advice.estimate->shares) {
        const std::string& kind = share.evidence.kind;
        if (kind == "heft") stores.heftShare += share.weight;
        if (kind == "one-sided lift") stores.oneSideShare += share.weight;
        if (kind == "scale" || kind == "two-sided lift" || kind == "one-sided lift") stores.weighedShare += share.weight;
    }
    return stores;
}

std::vector<winter::MeasuredDay> measuredDays(const WinterRecords& records, const Winter& winter) {
    std::vector<winter::MeasuredDay> days;
    for (const auto& day : records.weather) {
        if (!winter.contains(day.date)) continue;
        const SeasonDay at = winter.seasonDay(day.date);
        if (at <= lastSimulatedDay && (days.empty() || days.back().day < at)) days.push_back({at, day.meanC}); // 29 February: the first
    }
    return days;
}

tracking::FollowQuestion questionFrom(const advice::ColonyQuestion& asked, const advice::Advice& advice, SeasonDay today,
                                      const ModelConstants& constants) {
    tracking::FollowQuestion q{advice::winterQuestion(asked, constants)};
    q.winter.keepBrood = true;
    q.year = asked.winter;
    q.decided = asked.asOf;
    q.today = today;
    q.stores = storesOf(advice);
    q.flow = advice::autumnFlow(asked, advice.freeRoom);
    q.tare = {asked.tare, asked.tareSd};
    if (asked.beeBread) q.beeBread = *asked.beeBread;
    q.longHive = asked.longHive;
    q.shortRisk = advice.shortRisk;
    q.reserve = advice.reserve;
    q.feeder = asked.feeder;
    q.freeRoom = advice.freeRoom;
    q.visitEveryDays = asked.visitEveryDays;
    q.visitWeekdays = asked.visitWeekdays;
    q.boxes = asked.boxes;
    q.combs = asked.combs;
    q.coveredCombs = asked.coveredCombs;
    q.treated = asked.treated;
    q.learnedFrom = asked.learnedFrom;
    q.setAside = asked.setAside;
    return q;
}

//! What was found at the end of a winter, without what is in doubt of it.
book::WinterOutcome believedOutcome(book::WinterOutcome outcome, const stores::HiveBounds& hive, const ModelConstants& constants,
                                    std::vector<Remark>& setAside) {
    const auto aside = [&](const std::optional<stores::Doubt>& doubt) {
        if (!doubt || (outcome.sure && !doubt->impossible)) return false;
        setAside.push_back(setAsideRemark(*doubt, "outcome", outcome.date));
        return true;
    };
    if (outcome.coveredCombs && aside(stores::doubtOfCoveredCombs(*outcome.coveredCombs, hive, constants))) outcome.coveredCombs.reset();
    if (outcome.storesLeft && aside(stores::doubtOfStoresLeft(*outcome.storesLeft, hive, constants))) outcome.storesLeft.reset();
    return outcome;
}

std::optional<learning::WinterEnd> endOf(const WinterRecords& records, const advice::ColonyQuestion& asked, Date decided,
                                         const stores::HiveBounds& hive, const ModelConstants& constants, std::vector<Remark>& setAside) {
    std::optional<learning::WinterEnd> end;
    const auto& winter = asked.winter;
    for (const auto& written : records.outcomes) {
        if (!winter.contains(written.date) || written.date <= decided) continue;
        const auto outcome = believedOutcome(written, hive, constants, setAside);
        end = learning::WinterEnd{winter.seasonDay(outcome.date), outcome.date, outcome.alive, std::nullopt,
                                  stores::defaultLogSd(stores::BeesSeen::CoveredCombs, constants), outcome.storesLeft};
        if (outcome.coveredCombs && *outcome.coveredCombs > 0 && !asked.boxes.empty())
            end->bees = stores::beesFrom(stores::BeesSeen::CoveredCombs, *outcome.coveredCombs, asked.combs, asked.boxes.front());
    }
    for (const auto& fate : records.fates)
        if (!end && fate.fate == book::FateKind::Dead && winter.contains(fate.date) && fate.date > decided)
            end = learning::WinterEnd{winter.seasonDay(fate.date), fate.date, false, std::nullopt, 0.15, std::nullopt};
    return end;
}

void tellEnd(tracking::FollowQuestion& question, const std::optional<learning::WinterEnd>& end) {
    if (!end) return;
    if (!end->alive) {
        question.observations.push_back({end->day, end->date, tracking::DeadOut{}});
        return;
    }
    const SeasonDay today = question.today;
    question = learning::asTold({question, end});
    question.today = today;
}

} // namespace

std::optional<book::LearnedRecord> learnedOf(const BookLearned& learned, book::YardId yard, book::ColonyId colony) {
    if (!learned.yards.contains(yard.number)) return std::nullopt;
    book::LearnedRecord record;
    const auto factors = learned.bees.multipliers(static_cast<std::uint64_t>(yard.number), static_cast<std::uint64_t>(colony.number));
    if (factors && learned.winters > 0) {
        record.winters = learned.winters;
        record.use = factors->use, record.useLogSd = factors->useLogSd;
        record.death = factors->death, record.deathLogSd = factors->deathLogSd;
    }
    if (const auto shift = learned.forage.find(yard.number); shift != learned.forage.end() && shift->second.years > 0) {
        record.forageYears = shift->second.years;
        record.forageShiftDays = shift->second.meanDays, record.forageShiftSdDays = shift->second.sdDays;
    }
    return record == book::LearnedRecord{} ? std::nullopt : std::optional(record);
}

Outcome<book::ColonyCase> learnedCase(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned) {
    auto record = book::caseOf(from, colony, asOf);
    if (!record || !learned) return record;
    const auto kept = from.find(colony);
    const auto moves = from.of<book::Move>(colony);
    if (!kept) return kept.problems();
    if (!moves) return moves.problems();
    if (*kept) record->learned = learnedOf(*learned, book::yardOn(**kept, *moves, asOf), colony);
    return record;
}

Outcome<FollowReading> readToFollow(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned) {
    auto records = winterRecordsOf(from, colony, asOf);
    if (!records) return records.problems();
    auto now = book::caseOf(from, colony, asOf);
    if (!now) return now.problems();
    const auto where = siteAndSeasonOf(*now, {}, from.reference());
    if (!where) return where.problems();
    const Date decided = decidedOn(*records, where->winter, asOf);
    auto autumn = learnedCase(from, colony, decided, learned);
    if (!autumn) return autumn.problems();
    const auto then = siteOf(autumn->site, {}, from.reference());
    if (then && then->curve.hemisphere() != where->winter.hemisphere())
        return Problem{ProblemKind::Input, {}, fmt::format("it was moved to the other half of the earth after {}", decided.iso()),
                       "a look after the move: the winter there is another one"};
    return FollowReading{std::move(records).value(), asOf, decided, where->winter, std::move(now).value(), std::move(autumn).value()};
}

Outcome<FollowedColony> followedColony(const FollowReading& reading, const ReferenceData& reference, winter::Sampling sampling, int threads,
                                       bool withEnd, std::stop_token stop) {
    const auto& records = reading.records;
    const Winter& winter = reading.winter;
    auto question = questionOf(reading.autumn, {}, reference, static_cast<std::uint64_t>(records.colony.id.number));
    if (!question) return question.problems();
    FollowedColony result{records.colony, std::move(*question), {}, std::nullopt, std::nullopt};
    auto weighed = advice::weigh(result.autumn, reference.constants, sampling, threads, stop);
    if (!weighed) return result;
    result.advice = std::move(weighed->advice);
    if (!result.advice.refusals.empty() || !result.advice.estimate) return result;
    std::vector<Remark> ofEnd;
    result.end = endOf(records, result.autumn, reading.decided, boundsOfCase(reading.autumn, reference), reference.constants, ofEnd);
    tracking::FollowQuestion follow =
        questionFrom(result.autumn, result.advice, std::max(result.autumn.asOf, winter.seasonDay(reading.asOf)), reference.constants);
    follow.year = winter;
    follow.setAside.insert(follow.setAside.end(), ofEnd.begin(), ofEnd.end());
    follow.treated = follow.treated || reading.now.hive.treated || !reading.now.treatments.empty();
    follow.winter.weatherSoFar = measuredDays(records, winter);
    Afterwards afterwards(records, reading.autumn, winter, reading.decided, reading.asOf, reference);
    for (const auto& filled : {afterwards.fill(follow, result.autumn), afterwards.fillPlan(follow)})
        if (!filled) return filled.problems();
    if (withEnd) tellEnd(follow, result.end);
    result.question = std::move(follow);
    return result;
}

Outcome<FollowedColony> followedColony(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned,
                                       winter::Sampling sampling, int threads, bool withEnd) {
    const auto reading = readToFollow(from, colony, asOf, learned);
    if (!reading) return reading.problems();
    return followedColony(*reading, from.reference(), sampling, threads, withEnd);
}

} // namespace winterlarder::answer
