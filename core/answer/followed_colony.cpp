// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/followed_colony.h"

#include "advice/basis.h"
#include "advice/capacity.h"
#include "advice/reserve.h"
#include "answer/accepted_plan.h"
#include "answer/afterwards.h"
#include "answer/decided_on.h"
#include "answer/doubts.h"
#include "answer/evening_feeds.h"
#include "answer/question_of_case.h"
#include "answer/site_of_case.h"
#include "answer/united_case.h"
#include "book/case_of.h"
#include "stores/bees.h"
#include "stores/evidence.h"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>

namespace winterlarder::answer {

namespace {

// ---- the question -----------------------------------------------------------------------------------------------------------

//! Combs the yard's plan moved that day are in them.
tracking::StoresAtDecision storesOf(const advice::Advice& advice) {
    const Mass brought = advice.plan ? advice.plan->brought() : kilograms(0);
    tracking::StoresAtDecision stores{std::max(kilograms(0), advice.estimate->mean + brought), advice.storesSd};
    stores.weighedShare = stores::shareOfTare(*advice.estimate);
    for (const auto& share : advice.estimate->shares) {
        const auto kind = share.evidence.kind;
        if (kind == stores::EvidenceKind::Heft) stores.heftShare += share.weight;
        if (kind == stores::EvidenceKind::OneSidedLift) stores.oneSideShare += share.weight;
    }
    return stores;
}

std::vector<winter::MeasuredDay> measuredDays(const std::vector<book::DayTemperature>& weather, const Winter& winter) {
    std::vector<winter::MeasuredDay> days;
    for (const auto& day : weather) {
        if (!winter.contains(day.date)) continue;
        const SeasonDay at = winter.seasonDay(day.date);
        if (at <= lastSimulatedDay && (days.empty() || days.back().day < at))
            days.push_back({at, day.meanC}); // 29 February: the first
    }
    return days;
}

//! The last day for a board of fondant where bees are locked in for long (see advice::lateFeedRule).
std::optional<SeasonDay> boardUntil(const advice::ColonyQuestion& asked, const advice::Advice& advice,
                                    SeasonDay closing) {
    if (advice.lockedInDays.value_or(0) <= asked.decisions.lockedInBoard) return std::nullopt;
    const auto& deadline = asked.season.syrupDeadline;
    return (deadline ? deadline->day : closing) + static_cast<int>(asked.decisions.lateDays);
}

void fillRules(tracking::FollowQuestion& q, const advice::ColonyQuestion& asked, const advice::Advice& advice) {
    const auto days = advice::phaseDays(asked.season, asked.decisions);
    q.days = {days.summer,    days.closing,          days.late,
              days.quietFrom, days.portionsInWinter, boardUntil(asked, advice, days.closing)};
    q.reserve = advice::reserveOn(asked, days, q.today);
    q.springReserve = advice::reserveOn(asked, days, days.forage);
    q.decisions = asked.decisions;
    q.bought = asked.steps;
    q.nucleus = asked.nucleus;
    if (!asked.boxes.empty()) q.fullComb = advice::oneFullComb(asked);
}

tracking::FollowQuestion questionFrom(const advice::ColonyQuestion& asked, const advice::Advice& advice,
                                      SeasonDay today, const ModelConstants& constants) {
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
    fillRules(q, asked, advice);
    q.feeder = asked.feeder;
    q.freeRoom = advice.freeRoom;
    if (q.freeRoom && advice.plan) q.freeRoom = std::max(kilograms(0), *q.freeRoom - advice.plan->brought());
    q.visitEveryDays = asked.visitEveryDays;
    q.visitWeekdays = asked.visitWeekdays;
    q.boxes = asked.boxes;
    q.combs = asked.combs;
    q.coveredCombs = asked.coveredCombs;
    q.treated = asked.treated;
    q.learnedFrom = asked.learnedFrom;
    q.setAside = asked.setAside;
    q.united = asked.united;
    return q;
}

//! What was found at the end of a winter, without what is in doubt of it.
book::WinterOutcome believedOutcome(book::WinterOutcome outcome, const stores::HiveBounds& hive,
                                    const ModelConstants& constants, std::vector<Remark>& setAside) {
    const auto aside = [&](const std::optional<stores::Doubt>& doubt) {
        if (!doubt || (outcome.sure && !doubt->impossible)) return false;
        setAside.push_back(setAsideRemark(*doubt, "outcome", outcome.date));
        return true;
    };
    if (outcome.coveredCombs && aside(stores::doubtOfCoveredCombs(*outcome.coveredCombs, hive, constants)))
        outcome.coveredCombs.reset();
    if (outcome.storesLeft && aside(stores::doubtOfStoresLeft(*outcome.storesLeft, hive, constants)))
        outcome.storesLeft.reset();
    return outcome;
}

std::optional<learning::WinterEnd> endOf(const book::ColonyHistory& records, const advice::ColonyQuestion& asked,
                                         Date decided, const stores::HiveBounds& hive, const ModelConstants& constants,
                                         std::vector<Remark>& setAside) {
    std::optional<learning::WinterEnd> end;
    const auto& winter = asked.winter;
    for (const auto& written : records.outcomes) {
        if (!winter.contains(written.date) || written.date <= decided) continue;
        const auto outcome = believedOutcome(written, hive, constants, setAside);
        end = learning::WinterEnd{.day = winter.seasonDay(outcome.date),
                                  .date = outcome.date,
                                  .alive = outcome.alive,
                                  .beesLogSd = stores::defaultLogSd(stores::BeesSeen::CoveredCombs, constants),
                                  .storesLeft = outcome.storesLeft};
        if (outcome.coveredCombs && *outcome.coveredCombs > 0 && !asked.boxes.empty())
            end->bees = stores::beesFrom(stores::BeesSeen::CoveredCombs, *outcome.coveredCombs, asked.combs,
                                         asked.boxes.front());
    }
    for (const auto& fate : records.fates)
        if (!end && fate.fate == book::FateKind::Dead && winter.contains(fate.date) && fate.date > decided)
            end = learning::WinterEnd{.day = winter.seasonDay(fate.date), .date = fate.date, .alive = false};
    return end;
}

std::optional<book::WinterOutcome> deadHiveOf(const book::ColonyHistory& records, const Winter& winter) {
    std::optional<book::WinterOutcome> found;
    for (const auto& outcome : records.outcomes)
        if (winter.contains(outcome.date) && !outcome.alive) found = outcome;
    return found;
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

constexpr SeasonDay november{-61};

} // namespace

bool mayLead(const Winter& winter, Date asOf) { return winter.contains(asOf) && winter.seasonDay(asOf) >= november; }
Date leadsFrom(const Winter& winter) { return winter.date(november); }
bool followLeads(const FollowReading& reading) {
    return reading.asOf > reading.decided && mayLead(reading.winter, reading.asOf);
}

std::optional<book::LearnedRecord> learnedOf(const BookLearned& learned, book::YardId yard, book::ColonyId colony) {
    if (!learned.yards.contains(yard.number)) return std::nullopt;
    book::LearnedRecord record;
    const auto factors =
        learned.bees.multipliers(static_cast<std::uint64_t>(yard.number), static_cast<std::uint64_t>(colony.number));
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

book::ColonyCase learnedCase(const book::ColonyHistory& history, const std::vector<book::Yard>& yards,
                             const ReferenceData& reference, Date asOf, const BookLearned* learned) {
    auto record = caseWithUnited(history, yards, reference, asOf);
    if (learned)
        record.learned = learnedOf(*learned, book::yardOn(history.colony, history.moves, asOf), history.colony.id);
    return record;
}

Outcome<book::ColonyCase> learnedCase(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned) {
    return book::readTogether(from, [&]() -> Outcome<book::ColonyCase> {
        const auto history = book::historyOf(from, colony);
        if (!history) return history.problems();
        const auto yards = from.all<book::Yard>();
        if (!yards) return yards.problems();
        return learnedCase(*history, *yards, from.reference(), asOf, learned);
    });
}

Outcome<FollowReading> followReading(const book::ColonyHistory& history, const book::YardsOfBook& yards,
                                     const ReferenceData& reference, Date asOf, const BookLearned* learned) {
    auto now = caseWithUnited(history, yards.yards, reference, asOf);
    const auto where = siteAndSeasonOf(now, {}, reference);
    if (!where) return where.problems();
    auto records = book::historyUntil(history, asOf);
    Date decided = decidedOn(records, where->winter, asOf);
    auto autumn = learnedCase(history, yards.yards, reference, decided, learned);
    if (const auto weighed = weighedOnceUnited(records, autumn); weighed && where->winter.contains(*weighed)) {
        decided = *weighed;
        autumn = learnedCase(history, yards.yards, reference, decided, learned);
    }
    const auto then = siteOf(autumn.site, {}, reference);
    if (then && then->curve.hemisphere() != where->winter.hemisphere())
        return Problem{ProblemKind::Input,
                       {},
                       fmt::format("it was moved to the other half of the earth after {}", decided.iso()),
                       "a look after the move: the winter there is another one"};
    const auto yard = book::yardOn(history.colony, history.moves, asOf);
    return FollowReading{
        std::move(records), yard, yards.measuredIn(yard, asOf), asOf, decided, where->winter, std::move(now),
        std::move(autumn)};
}

Outcome<FollowReading> readToFollow(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned) {
    return book::readTogether(from, [&]() -> Outcome<FollowReading> {
        const auto history = book::historyOf(from, colony);
        if (!history) return history.problems();
        const auto yards = book::yardsOf(from);
        if (!yards) return yards.problems();
        return followReading(*history, *yards, from.reference(), asOf, learned);
    });
}

namespace {

WinterSpan spanOf(const FollowReading& reading, const ReferenceData& reference) {
    return {reading.records, reading.autumn, reading.winter, reading.decided, reading.asOf, reference};
}

} // namespace

std::vector<book::PlannedVisit> openVisits(const FollowReading& reading, const ReferenceData& reference) {
    return openVisits(spanOf(reading, reference));
}

std::optional<Remark> feedNotRecorded(const FollowReading& reading, const ReferenceData& reference) {
    return feedNotRecorded(spanOf(reading, reference));
}

Outcome<FollowedColony> followedColony(const FollowReading& reading, const ReferenceData& reference,
                                       winter::Sampling sampling, int threads, EndOfWinter end, std::stop_token stop) {
    const auto& records = reading.records;
    const Winter& winter = reading.winter;
    const book::ColonyCase autumn = asDecided(reading.autumn, fedThatEvening(records, reading.decided, reference));
    auto question = questionOf(autumn, {}, reference, static_cast<std::uint64_t>(records.colony.id.number));
    if (!question) return question.problems();
    FollowedColony result{records.colony, std::move(*question), {},
                          std::nullopt,   std::nullopt,         deadHiveOf(records, winter)};
    const auto plan = acceptedPlan(records, autumn, reading.decided, reference);
    if (plan) result.autumn.plan = plan->part;
    auto weighed = advice::weigh(result.autumn, reference.constants, sampling, threads, stop);
    if (!weighed) return result;
    if (auto both = plan ? withColonyJoined(result.autumn, *plan, weighed->advice) : std::nullopt) {
        result.autumn = *std::move(both);
        weighed = advice::weigh(result.autumn, reference.constants, sampling, threads, stop);
        if (!weighed) return result;
    }
    result.advice = std::move(weighed->advice);
    if (!result.advice.refusals.empty() || !result.advice.estimate) return result;
    std::vector<Remark> ofEnd;
    result.end = endOf(records, result.autumn, reading.decided, boundsOfCase(reading.autumn, reference),
                       reference.constants, ofEnd);
    tracking::FollowQuestion follow =
        questionFrom(result.autumn, result.advice, std::max(result.autumn.asOf, winter.seasonDay(reading.asOf)),
                     reference.constants);
    follow.year = winter;
    follow.setAside.insert(follow.setAside.end(), ofEnd.begin(), ofEnd.end());
    follow.treated = follow.treated || reading.now.hive.treated || !reading.now.treatments.empty();
    follow.winter.weatherSoFar = measuredDays(reading.weather, winter);
    const WinterSpan span{
        records, autumn, winter, reading.decided, reading.asOf, reference, weighed->workings.ensemble.get()};
    for (const auto& problems : {fillAfterwards(follow, result.autumn, span), fillPlan(follow, span)})
        if (!problems.empty()) return problems;
    if (end == EndOfWinter::Counts) tellEnd(follow, result.end);
    result.question = std::move(follow);
    return result;
}

Outcome<FollowedColony> followedColony(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned,
                                       winter::Sampling sampling, int threads, EndOfWinter end) {
    const auto reading = readToFollow(from, colony, asOf, learned);
    if (!reading) return reading.problems();
    return followedColony(*reading, from.reference(), sampling, threads, end);
}

} // namespace winterlarder::answer
