// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/question_of_case.h"

#include "answer/doubts.h"
#include "answer/site_of_case.h"
#include "answer/units_of_place.h"
#include "answer/usual_of_place.h"
#include "exchange/json/json_tree.h"
#include "stores/bees.h"
#include "stores/tare.h"
#include "stores/weighing.h"
#include "support/require.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::answer {

namespace {

using advice::ColonyQuestion;
using advice::RefusalKind;

// ---- bees ---------------------------------------------------------------------------------------------------------

struct Seen {
    stores::BeesSeen how;
    double amount;
    std::string_view key;
};

std::optional<Seen> beesSeen(const book::BeesRecord& record) {
    if (record.count) return Seen{stores::BeesSeen::Counted, *record.count, "bees.count"};
    if (record.coveredCombs) return Seen{stores::BeesSeen::CoveredCombs, *record.coveredCombs, "bees.covered_combs"};
    if (record.seams) return Seen{stores::BeesSeen::Seams, *record.seams, "bees.seams"};
    return std::nullopt;
}

void countBees(ColonyQuestion& question, const Seen& seen, const exchange::CasePlaces& places, const ModelConstants& constants,
               Problems& problems) {
    const BeeCount bees = stores::beesFrom(seen.how, seen.amount, question.combs, question.boxes.front());
    question.bees = bees;
    question.beesLogSd = stores::defaultLogSd(seen.how, constants);
    question.coveredCombs = seen.how == stores::BeesSeen::CoveredCombs
                                ? seen.amount
                                : stores::coveredCombsOf(bees, question.combs, question.boxes.front());
    if (bees.count > mostBees)
        problems.push_back({ProblemKind::Input, places.of(seen.key),
                            fmt::format("that would be {:.0f} bees", bees.count),
                            fmt::format("at most {:.0f} bees", mostBees)});
}

void fillBees(ColonyQuestion& question, const book::BeesRecord& record, const exchange::CasePlaces& places,
              const ModelConstants& constants, Problems& problems) {
    if (const auto seen = beesSeen(record)) countBees(question, *seen, places, constants, problems);
    question.drawnBeesLogSd = record.logSd.value_or(constants.beesSd);
    if (record.logSd) question.beesLogSd = *record.logSd;
    question.brood =
        record.broodCells ? std::optional(BeeCount{*record.broodCells}) : stores::broodOnCombs(question.combs);
    question.raceFactor = raceFactor(record.kind);
    question.queenSeen = record.queenSeen;
    question.eggsSeen = record.eggsSeen;
    question.trouble = record.trouble;
}

// ---- days ---------------------------------------------------------------------------------------------------------

// One before the season's first day counts on that day, but a feed or harvest later than the look stays later where both fall before the season's first day.
SeasonDay dayOfChange(Date date, Date lookedOn, const Winter& winter) {
    const SeasonDay day = winter.nearestSeasonDay(date);
    return date > lookedOn && day == firstSeasonDay && winter.nearestSeasonDay(lookedOn) == firstSeasonDay ? day + 1 : day;
}

// ---- weighings, feeds, harvests -----------------------------------------------------------------------------------

advice::WeighedHive weighed(const book::WeighingRecord& record, const ColonyQuestion& question) {
    using Kind = advice::WeighedHive::Kind;
    advice::WeighedHive hive{Kind::Scale, question.winter.nearestSeasonDay(record.date), record.date};
    hive.longHive = question.longHive;
    if (const auto* scale = std::get_if<book::ScaleReading>(&record.reading)) {
        hive.reading = scale->gross;
    } else if (const auto* lift = std::get_if<book::LiftReading>(&record.reading)) {
        hive.kind = lift->sides.size() == 2 ? Kind::TwoSidedLift : Kind::OneSidedLift;
        hive.reading = lift->sides.size() == 2 ? lift->sides[0] + lift->sides[1] : 2 * lift->sides[0];
    } else {
        hive.kind = Kind::Heft;
        const auto word = std::get<book::HeftWord>(record.reading);
        hive.heftWord = word == book::HeftWord::Light  ? stores::HeftWord::Light
                        : word == book::HeftWord::Fair ? stores::HeftWord::Fair
                                                       : stores::HeftWord::Heavy;
        hive.heftFactor = stores::heftFactor(hive.heftWord);
    }
    return hive;
}

// Ripe stores a syrup becomes; without a ratio the one for winter stores is taken.
Mass storesOfSyrup(const book::FeedRecord& record) {
    const auto ratio = record.ratio ? feeding::parseRatio(*record.ratio) : Outcome<feeding::Ratio>(feeding::Ratio{});
    if (!ratio || !(record.syrup || record.sugar)) return kilograms(0);
    const auto syrup =
        record.syrup ? feeding::mixForVolume(*record.syrup, *ratio) : feeding::mixForSugar(*record.sugar, *ratio);
    return syrup ? syrup->stores : kilograms(0);
}

// One of the day of the look that came after it counts on top of what was seen.
SeasonDay dayItCounts(Date date, bool afterLook, const ColonyQuestion& question, Date lookedOn) {
    return afterLook && date == lookedOn ? question.lookedOn + 1 : dayOfChange(date, lookedOn, question.winter);
}

advice::GivenFeed given(const book::FeedRecord& record, const ColonyQuestion& question, Date lookedOn) {
    advice::GivenFeed feed;
    feed.day = dayItCounts(record.date, record.afterLook.value_or(false), question, lookedOn);
    feed.date = record.date;
    feed.liquid = record.kind == book::FeedKind::Syrup;
    feed.stores = storesOfFeed(record);
    return feed;
}

bool hasItsAmount(const book::FeedRecord& feed) {
    if (feed.kind == book::FeedKind::Fondant) return feed.fondant.has_value();
    return feed.sugar || (feed.kind == book::FeedKind::Syrup && feed.syrup);
}

// A syrup too thin or too strong to be one has no density, so no stores: a fault of the ratio.
void checkFeeds(const book::ColonyCase& record, const exchange::CasePlaces& places, Problems& problems) {
    for (std::size_t i = 0; i < record.feeds.size(); ++i) {
        const book::FeedRecord& feed = record.feeds[i];
        if (!hasItsAmount(feed))
            problems.push_back({ProblemKind::Input, places.of(fmt::format("feeds[{}]", i)),
                                fmt::format("how much was fed on {} is not said in the measure of its kind", feed.date.iso()),
                                "syrup in kg of sugar or in litres, fondant in kg of fondant, dry sugar in kg of sugar"});
        if (feed.kind != book::FeedKind::Syrup || !feed.ratio) continue;
        const auto ratio = feeding::parseRatio(*feed.ratio);
        const auto syrup =
            ratio ? feeding::mixForSugar(kilograms(1), *ratio) : Outcome<feeding::Syrup>(ratio.problems());
        if (syrup) continue;
        Problem problem = syrup.problems().front();
        problem.place = places.of(fmt::format("feeds[{}].ratio", i));
        problems.push_back(std::move(problem));
    }
}

// Open stores are thin when under a week old: counted from the later of the last feed and, with a flow, the day it ends
// or the question is asked.
bool freshlyFilled(const book::ColonyCase& record, const ColonyQuestion& question) {
    std::optional<SeasonDay> last;
    for (const advice::GivenFeed& feed : question.feeds)
        last = last ? std::max(*last, feed.day) : feed.day;
    if (record.site.autumnFlow.value_or(book::FlowStrength::None) != book::FlowStrength::None) {
        const SeasonDay end =
            question.season.lastIncome ? std::min(question.asOf, question.season.lastIncome->day) : question.asOf;
        last = last ? std::max(*last, end) : end;
    }
    return last && question.asOf - *last < 7;
}

// ---- the keeper's ways --------------------------------------------------------------------------------------------

feeding::Feeder feederOf(const std::optional<book::FeederRecord>& record) {
    feeding::Feeder feeder;
    const book::FeederRecord chosen = record.value_or(book::FeederRecord{});
    switch (chosen.kind) {
    case book::FeederKind::Round:
        feeder.capacity = litres(6);
        break;
    case book::FeederKind::Top:
        feeder.capacity = litres(12), feeder.top = true;
        break;
    case book::FeederKind::Box:
        feeder.capacity = litres(4);
        break;
    case book::FeederKind::Contact:
        feeder.capacity = litres(2.8), feeder.slow = true;
        break;
    case book::FeederKind::Frame:
    case book::FeederKind::End:
        feeder.capacity = litres(3), feeder.slow = true;
        break;
    }
    feeder.touchesCluster = feeder.slow;
    if (chosen.capacity) feeder.capacity = *chosen.capacity;
    return feeder;
}

double strength(book::FlowStrength flow) {
    switch (flow) {
    case book::FlowStrength::None:
        return 0;
    case book::FlowStrength::Trickle:
        return 0.1;
    case book::FlowStrength::Fair:
        return 0.3;
    case book::FlowStrength::Strong:
        return 1;
    }
    return 0;
}

// A strong flow lasts so long at most.
constexpr int strongFlowDays = 14;

// The shift of first forage is in the season already.
void fillLearned(ColonyQuestion& question, const book::LearnedRecord& record) {
    if (record.winters > 0)
        question.learned = winter::LearnedMultipliers{record.use, record.useLogSd, record.death, record.deathLogSd};
    question.learnedFrom = {record.winters, record.forageYears, record.forageShiftDays};
}

void fillWays(ColonyQuestion& question, const book::ColonyCase& record, std::uint64_t positionInBatch) {
    question.flowStrength = strength(record.site.autumnFlow.value_or(book::FlowStrength::None));
    if (record.site.autumnFlow == book::FlowStrength::Strong) question.flowLastDay = question.asOf + strongFlowDays;
    question.feeder = feederOf(record.feeder);
    question.visitEveryDays = record.wish.visitEveryDays;
    question.visitWeekdays = record.wish.visitWeekdays;
    question.moisturePercent = record.moisturePercent;
    question.colony = record.colony.value_or("");
    question.yard = record.yard.value_or("");
    if (record.learned) fillLearned(question, *record.learned);
    question.stream = record.colony ? winter::colonyStream(*record.colony) : positionInBatch;
}

std::optional<advice::SupersFor> supersFor(const book::HiveRecord& hive) {
    if (!hive.supersFor) return std::nullopt;
    return *hive.supersFor == book::SupersFor::People ? advice::SupersFor::People : advice::SupersFor::Bees;
}

std::optional<advice::HoneyKind> honeyKind(const book::ColonyCase& record) {
    if (!record.honeyKind) return std::nullopt;
    switch (*record.honeyKind) {
    case book::HoneyKind::Blossom: return advice::HoneyKind::Blossom;
    case book::HoneyKind::Honeydew: return advice::HoneyKind::Honeydew;
    case book::HoneyKind::Heather: return advice::HoneyKind::Heather;
    }
    return std::nullopt;
}

// Mites that were counted, or medicine with its day, answer their questions without being asked.
void fillMites(advice::KeepersAnswers& answers, const book::ColonyCase& record) {
    answers.mitesPer100 = record.bees.mitesPer100;
    answers.mitesCounted = record.bees.mitesPer100 ? std::optional(true) : record.bees.mitesCounted;
    answers.mitesTreated = record.bees.mitesTreated || record.treatments.empty() ? record.bees.mitesTreated : std::optional(true);
}

void fillAnswers(advice::KeepersAnswers& answers, const book::ColonyCase& record) {
    fillMites(answers, record);
    answers.fedOrTreated = record.fedOrTreated;
    answers.supersFor = supersFor(record.hive);
    if (record.site.autumnFlow) answers.autumnFlow = strength(*record.site.autumnFlow);
    answers.fullCombs = record.fullCombs;
    answers.visitsInWinter = record.wish.visitsInWinter;
    answers.foodBeside = record.bees.foodBeside;
    answers.shortRisk = record.wish.shortRisk;
    answers.reserve = record.wish.reserve;
    answers.honeyKind = honeyKind(record);
    answers.units = record.units;
}

void fillPlaceAndTime(ColonyQuestion& question, const book::ColonyCase& record, const SiteAndSeason& where) {
    question.winter = where.winter;
    question.asOf = where.winter.seasonDay(record.asOf);
    question.lookedOn = where.winter.nearestSeasonDay(record.lookedOn.value_or(record.asOf));
    question.site = where.site;
    if (where.site)
        question.season = where.season;
    else
        question.refusals.push_back(RefusalKind::FarFromStations);
}

void fillEvents(ColonyQuestion& question, const book::ColonyCase& record) {
    const Date lookedOn = record.lookedOn.value_or(record.asOf);
    for (const book::WeighingRecord& weighing : record.weighings)
        question.weighings.push_back(weighed(weighing, question));
    for (const book::FeedRecord& feed : record.feeds)
        question.feeds.push_back(given(feed, question, lookedOn));
    for (const book::HarvestRecord& harvest : record.harvests)
        question.harvests.push_back(
            {dayItCounts(harvest.date, harvest.afterLook.value_or(false), question, lookedOn), harvest.honey, harvest.date});
    for (const book::TreatmentRecord& treatment : record.treatments) question.treatments.push_back({treatment.date, treatment.until});
    question.treated = question.treated || !question.treatments.empty();
    question.freshlyFilled = freshlyFilled(record, question);
    question.usualStores = stores::usualWinterStores(question.boxes);
}

void sortByPlace(Problems& problems) {
    std::stable_sort(problems.begin(), problems.end(), [](const Problem& a, const Problem& b) {
        return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
}

} // namespace

double raceFactor(const std::optional<book::BeeKind>& kind) {
    if (kind == book::BeeKind::Dark) return 0.9;
    return kind == book::BeeKind::Italian ? 1.1 : 1.0;
}

Mass storesOfFeed(const book::FeedRecord& feed) {
    switch (feed.kind) {
    case book::FeedKind::Fondant: return feeding::storesPerKgFondant * feed.fondant.value_or(kilograms(0));
    case book::FeedKind::DrySugar: return feeding::storesPerKgDrySugar * feed.sugar.value_or(kilograms(0));
    case book::FeedKind::Syrup: break;
    }
    return storesOfSyrup(feed);
}

Problems unknownFormats(const book::ColonyCase& record, const exchange::CasePlaces& places, const ReferenceData& reference) {
    Problems problems;
    const auto check = [&](const std::string& id, const char* path, std::size_t i) {
        if (!reference.format(id))
            problems.push_back({ProblemKind::Input, places.of(fmt::format("{}[{}].format", path, i)),
                                fmt::format("there is no hive format {}", exchange::inQuotes(id)), "one that winterlarder-cli hive-formats lists"});
    };
    for (std::size_t i = 0; i < record.hive.boxes.size(); ++i)
        if (const auto* id = std::get_if<std::string>(&record.hive.boxes[i].format)) check(*id, "hive.boxes", i);
    if (const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record.combs))
        for (std::size_t i = 0; i < combs->size(); ++i)
            if ((*combs)[i].format) check(*(*combs)[i].format, "combs", i);
    return problems;
}

Outcome<ColonyQuestion> questionOf(const book::ColonyCase& said, const exchange::CasePlaces& places,
                                   const ReferenceData& reference, std::uint64_t positionInBatch,
                                   const std::vector<HiveChange>& changes) {
    Problems problems = unknownFormats(said, places, reference);
    if (!problems.empty()) return problems;
    if (said.hive.boxes.empty()) return Problem{ProblemKind::Input, places.of("hive"), "the hive has no box", "its boxes, from the floor up"};
    auto [record, setAside] = believed(said, reference, changes);
    const auto where = siteAndSeasonOf(record, places, reference);
    if (!where) problems = where.problems();
    ColonyQuestion question;
    question.setAside = std::move(setAside);
    fillHive(question, record.hive, reference);
    fillCombs(question, record, reference);
    fillTare(question, record.hive);
    fillBees(question, record.bees, places, reference.constants, problems);
    checkFeeds(said, places, problems);
    for (Problem& problem : exchange::roomFaults(record, places, &reference)) problems.push_back(std::move(problem));
    if (!problems.empty()) {
        sortByPlace(problems);
        return problems;
    }
    fillPlaceAndTime(question, record, *where);
    question.place = whereaboutsOf(record.site, question.site, reference);
    fillWays(question, record, positionInBatch);
    fillEvents(question, record);
    fillAnswers(question.answers, record);
    question.decisions = reference.decisions;
    question.steps = stepsFor(unitsOf(question));
    fillUsual(question, reference);
    return question;
}

Outcome<ReadQuestion> readQuestion(std::string_view text, std::string file, const ReferenceData& reference,
                                   std::uint64_t positionInBatch, const DoubtInWords& inWords, int firstLine) {
    exchange::CaseReading reading = exchange::readCaseWithPlaces(text, std::move(file), reference, firstLine);
    if (reading.problems.empty()) {
        if (auto impossible = impossibleRecords(*reading.record, reading.places, reference, inWords); !impossible.empty()) {
            sortByPlace(impossible);
            return impossible;
        }
        auto question = questionOf(*reading.record, reading.places, reference, positionInBatch);
        if (!question) return question.problems();
        auto asked = askedOfCase(*reading.record, reading.places, reference, inWords);
        return ReadQuestion{*std::move(reading.record), *std::move(question), std::move(asked)};
    }
    if (reading.datesSound) {
        const auto where = siteAndSeasonOf(*reading.record, reading.places, reference);
        if (!where) reading.problems.insert(reading.problems.end(), where.problems().begin(), where.problems().end());
        sortByPlace(reading.problems);
    }
    return reading.problems;
}

} // namespace winterlarder::answer
