// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/usual_here.h"
#include "answer/bees_of_case.h"
#include "answer/hive_of_case.h"
#include "learning/keeper.h"
#include "reference/csv_table.h"
#include "stores/bees.h"
#include "stores/plausible.h"
#include "tracking/winters.h"

#include <array>
#include <bit>
#include <gtest/gtest.h>

// A constant that moves nothing is a number nobody reads: each one, moved, must change some answer of a handful of
// questions.
namespace winterlarder::constants_used_test {
namespace {

using Digits = std::vector<double>;

Digits seasons(const ModelConstants& k) {
    Digits digits;
    for (const auto& station : shipped().stations) {
        const auto season = climate::deriveSeason(winter::curveOf(station.id), k);
        digits.push_back(static_cast<double>(season.winterClass));
        for (const auto& date : {season.lastIncome, season.broodStop, season.broodRestart, season.buildup,
                                 season.forage, season.feedAdvisedBy, season.syrupDeadline, season.syrupRefused})
            digits.insert(digits.end(), {date ? date->day.w : 999.0, date ? date->sdDays : 0});
    }
    return digits;
}

void add(Digits& digits, const winter::DemandEnsemble& run) {
    digits.push_back(run.days());
    for (SeasonDay day = run.firstDay(); day <= run.lastDay(); day = day + 9)
        digits.insert(digits.end(), {static_cast<double>(run.netLoss(day)[0]), static_cast<double>(run.bees(day)[0])});
}

// An early look, one that found laying stopped, the coldest place, one that never stops laying, a look in spring.
Digits noiselessWinters(const ModelConstants& k) {
    Digits digits;
    const auto asked = [&](const char* station, double bees, int start, std::optional<double> brood) {
        auto question = winter::questionAt(station, bees, start);
        if (brood) question.brood = BeeCount{*brood};
        add(digits, simulateCentral(question, k));
    };
    asked("gb-oxford", 17500, -118, 16000);
    asked("gb-oxford", 17500, -118, 600);
    asked("ca-winnipeg", 20000, -92, {});
    asked("pt-lisbon", 14000, -60, {});
    asked("gb-oxford", 25000, 41, 9000);
    return digits;
}

Digits drawnWinters(const ModelConstants& k) {
    Digits digits;
    auto question = winter::questionAt("ca-halifax", 14000, -120);
    question.brood = BeeCount{9000};
    for (const bool learned : {false, true}) {
        if (learned) question.learned = winter::LearnedMultipliers{1, 0.1, 1, 0.1};
        const auto run = *winter::simulate(question, k, {1, 24});
        for (float kg : run.netLoss({80})) digits.push_back(static_cast<double>(kg));
        for (const auto& draw : run.draws())
            digits.insert(digits.end(), {double(draw.longestLockedIn), double(draw.forage)});
    }
    return digits;
}

Digits looks(const ModelConstants& k) {
    Digits digits;
    for (const auto how : {stores::BeesSeen::Counted, stores::BeesSeen::CoveredCombs, stores::BeesSeen::Seams})
        digits.push_back(stores::defaultLogSd(how, k));
    for (const int faces : {1, 2})
        for (const bool measured : {false, true}) {
            stores::Comb comb;
            comb.facesSeen = faces, comb.measured = measured;
            digits.push_back(stores::relativeSdOf(comb, stores::combSpreads(k)));
        }
    const auto spreads = stores::combSpreads(k);
    digits.insert(digits.end(), {spreads.unseen, spreads.counted, spreads.rounding.value()});
    return digits;
}

tracking::FollowQuestion watched() {
    using namespace tracking;
    auto q = oxfordColony(14, 2, 40);
    q.steps = {{{-60}, KnownStep::Kind::Feed, kilograms(3), {}}, {{-58}, KnownStep::Kind::Equipment, kilograms(2), {}}};
    q.observations = {weighed(q, -50, 33.0, true),
                      on(q, -40, WeightSeen{stores::WeighingKind::TwoSidedLift, kilograms(31)}),
                      on(q, -30, WeightSeen{stores::WeighingKind::OneSidedLift, kilograms(30)}),
                      on(q, -20, HeftSeen{kilograms(12)}),
                      on(q, -10, ClusterSeen{BeeCount{8000}}),
                      on(q, 30, FlyingSeen{}),
                      on(q, 35, CombGlimpsed{false})};
    return q;
}

Digits watchedWinters(const ModelConstants& k) {
    Digits digits;
    for (const bool longHive : {false, true})
        for (const double lastKg : {26.0, 33.0, 37.0, 42.0}) { // from the expected to what is beyond belief
            auto q = watched();
            q.longHive = longHive;
            q.observations.push_back(tracking::weighed(q, 38, lastKg));
            const auto tracked = *tracking::track(q, k, {1, 60});
            digits.insert(digits.end(), {tracked.belief.logEvidence, double(tracked.drawnAgain)});
            for (const auto& judged : tracked.belief.judged) digits.push_back(judged.contradicts);
            digits.push_back(
                tracking::believed(tracked.belief, [&](std::size_t p) { return tracked.belief.stores()[p]; }));
        }
    return digits;
}

Digits lastingWays(const ModelConstants& k) {
    learning::WinterEvidence evidence;
    evidence.useUse = 30, evidence.use = 5, evidence.deathDeath = 20, evidence.death = -3;
    const auto learned = learning::learn({{1, 1, evidence}, {1, 2, evidence}, {2, 3, evidence}}, k);
    Digits digits{learned.keeper.use.logMean, learned.yards.at(1).use.logMean, learned.keeper.death.logMean,
                  learned.colonies.at(3).death.logSd};
    const auto turn = learning::forageTurn({{{90}, kilograms(30)}, {{100}, kilograms(28)}, {{110}, kilograms(33)}}, k);
    const auto season = climate::deriveSeason(winter::curveOf("gb-oxford"), k);
    const auto shift = learning::learnForage({*turn}, season, 0.5, k);
    digits.insert(digits.end(), {turn->sdDays, shift.meanDays, shift.sdDays});
    return digits;
}

// From which value on an entry is asked about, and from which it cannot be.
Digits doubtedEntries(const ModelConstants& k) {
    stores::HiveBounds hive;
    hive.places = 20, hive.seams = 22, hive.bees = 48000, hive.cells = 130000;
    hive.holds = kilograms(50), hive.lightest = kilograms(14), hive.likelyEmpty = kilograms(17),
    hive.heaviest = kilograms(76);
    Digits digits;
    const auto add = [&](const std::optional<stores::Doubt>& doubt) {
        digits.push_back(!doubt ? 0 : doubt->impossible ? 2 : 1);
        if (doubt && doubt->says.details.contains("days"))
            digits.push_back(std::get<double>(doubt->says.details.at("days")));
    };
    for (int step = 1; step <= 400; ++step) {
        add(stores::doubtOfWeight(kilograms(step), hive, k));
        add(stores::doubtOfTwoWeights(
            {kilograms(100), kilograms(10), *Date::parse("2026-09-01"), step, 0, kilograms(0), kilograms(0)}, k));
        add(stores::doubtOfFeed({kilograms(1), kilograms(1), litres(step), {}}, hive, k));
        add(stores::doubtOfFeed({kilograms(1), kilograms(1), {}, kilograms(step)}, hive, k));
        add(stores::doubtOfBees(step * 1000.0, hive, k));
        add(stores::doubtOfBrood(step * 1000.0, hive, k));
        add(stores::doubtOfMoisture(step * 0.25, k));
    }
    add(stores::doubtOfFeed({kilograms(1), kilograms(60), {}, {}}, hive, k));
    digits.push_back(stores::mostFlow(30, 20, k).value());
    return digits;
}

// How far published figures and flows of other places reach.
Digits whatIsUsual(const ModelConstants& k) {
    Digits digits;
    for (const Station& station : shipped().stations)
        for (const char* country : {"GB", "US", "DE", "SE", "XX"}) {
            const advice::Whereabouts place{station.latitude, station.longitude, country};
            const auto usual = advice::usualHere({place, climate::WinterClass::Confined}, shipped().usualStores, k);
            digits.push_back(static_cast<double>(usual->from));
            digits.push_back(
                static_cast<double>(advice::lateFlowsNear(place, *Date::parse("2026-08-01"), *Date::parse("2026-10-31"),
                                                          shipped().lateFlows, k)
                                        .size()));
        }
    return digits;
}

// What a record says of walls and kind of bee.
Digits wallsAndKinds(const ModelConstants& k) {
    Digits digits;
    for (const auto shell : {book::Shell::Timber, book::Shell::ThickTimber, book::Shell::Wrapped,
                             book::Shell::Polystyrene, book::Shell::Straw})
        for (const bool insulated : {false, true}) digits.push_back(answer::shellFactor(shell, insulated, k));
    for (const auto kind : {book::BeeKind::Dark, book::BeeKind::Italian}) digits.push_back(answer::raceFactor(kind, k));
    return digits;
}

constexpr std::array answers{seasons,     noiselessWinters, drawnWinters, looks,        watchedWinters,
                             lastingWays, doubtedEntries,   whatIsUsual,  wallsAndKinds};
using AsNumbers = std::array<double, sizeof(ModelConstants) / sizeof(double)>;

bool movesAnything(std::size_t constant, const std::vector<Digits>& usual) {
    for (const double factor : {1.3, 0.8, 3.0, 0.3}) {
        auto numbers = std::bit_cast<AsNumbers>(shipped().constants);
        numbers[constant] *= factor;
        const auto moved = std::bit_cast<ModelConstants>(numbers);
        for (std::size_t i = 0; i < answers.size(); ++i)
            if (answers[i](moved) != usual[i]) return true;
    }
    return false;
}

} // namespace

TEST(Constants, EachMovesSomeAnswer) {
    std::vector<Digits> usual;
    for (const auto answer : answers) usual.push_back(answer(shipped().constants));
    for (std::size_t i = 0; i < answers.size(); ++i)
        EXPECT_EQ(answers[i](shipped().constants), usual[i]) << "not even itself";
    const auto numbers = std::bit_cast<AsNumbers>(shipped().constants);
    for (std::size_t i = 0; i < numbers.size(); ++i)
        EXPECT_TRUE(movesAnything(i, usual))
            << "the constant that is " << numbers[i] << ", number " << i + 1 << " of model_constants.h";
}

} // namespace winterlarder::constants_used_test
