// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/winters.h"

#include "numerics/normal.h"

#include <cmath>
#include <random>

namespace winterlarder::tracking::belief_test {
namespace {

TEST(Belief, WithoutObservationsEveryWinterCountsTheSame) {
    const auto q = oxfordColony(15, 2, 0);
    const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    EXPECT_NEAR(belief.effectiveWinters, quick.winters, 1e-6);
    EXPECT_NEAR(believed(belief, [&](std::size_t p) { return belief.stores()[p]; }), 15,
                4 * 2 / std::sqrt(8.0 * quick.winters));
}

TEST(Belief, TheSameQuestionGivesTheSameDigits) {
    auto q = oxfordColony(15, 2, 0);
    q.observations = {weighed(q, -20, expectedGross(q, -20) - 2)};
    const auto a = reweigh(q, oxfordPaths(), {}, 1, constants()), b = reweigh(q, oxfordPaths(), {}, 1, constants());
    EXPECT_EQ(a.weight, b.weight);
    EXPECT_EQ(a.stores(), b.stores());
}

// The posterior by rejection: draw a winter, stores and errors at random, keep them with the probability of what was seen over its
// largest possible value. Nothing of the code under test is in it but the winters themselves.
struct Kept {
    std::vector<double> stores, loss, life;
    int alive = 0;
};

Kept reject(const FollowQuestion& q, int draws, int day) {
    std::mt19937_64 generator(7);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> uniform;
    std::uniform_int_distribution<std::size_t> winter(0, oxfordPaths().winters() - 1);
    const double tareSd = std::sqrt(q.tare.sd.value() * q.tare.sd.value() - 0.09);
    Kept kept;
    for (int draw = 0; draw < draws; ++draw) {
        const std::size_t i = winter(generator);
        const double s = q.stores.mean.value() + q.stores.sd.value() * normal(generator),
                     t = tareSd * normal(generator);
        double chance = 1;
        for (const auto& seen : q.observations) {
            bool starved = s <= 0;
            for (SeasonDay d{-92}; d < seen.day; d = d + 1)
                starved = starved || s - static_cast<double>(oxfordPaths().lossUntil(d, i)) <= 0;
            const double left = starved ? 0 : s - static_cast<double>(oxfordPaths().lossUntil(seen.day - 1, i));
            if (const auto* weight = std::get_if<WeightSeen>(&seen.what)) {
                const double gross = 15 + 0.7 + t + left + oxfordPaths().lifeKg(seen.day, i);
                chance *= std::exp(-0.5 * std::pow((weight->reading.value() - gross) / 0.3, 2));
            }
            if (std::holds_alternative<FlyingSeen>(seen.what)) chance *= starved ? 0.05 : 1;
            if (std::holds_alternative<ClusterSeen>(seen.what)) chance *= starved ? 0 : 1;
            if (const auto* comb = std::get_if<CombGlimpsed>(&seen.what)) {
                const double shown = 0.5 * std::erfc(-(left - 3) / 2 / std::sqrt(2.0));
                chance *= comb->stores ? shown : std::max(0.1, 1 - shown); // in a tenth the food is elsewhere
            }
            if (const auto* bees = std::get_if<BeesSeen>(&seen.what))
                chance *= starved
                              ? 0
                              : std::exp(-0.5 * std::pow(std::log(bees->bees.count / oxfordPaths().bees(seen.day, i)) /
                                                             bees->logSd,
                                                         2));
        }
        if (uniform(generator) >= chance) continue;
        kept.stores.push_back(s);
        kept.loss.push_back(static_cast<double>(oxfordPaths().lossUntil({day}, i)));
        kept.life.push_back(oxfordPaths().lifeKg({day}, i));
    }
    return kept;
}

struct Moments {
    double mean, sd;
};
Moments momentsOf(const std::vector<double>& values) {
    double sum = 0, squares = 0;
    for (double v : values) sum += v, squares += v * v;
    const double n = static_cast<double>(values.size());
    return {sum / n, std::sqrt(std::max(0.0, squares / n - sum / n * sum / n))};
}

// Means within four standard errors: of the accepted draws, and of the nodes (as many as winters that count, times nodes).
void expectSame(const FollowQuestion& q, int draws, std::size_t least) {
    const int day = 60;
    const auto kept = reject(q, draws, day);
    ASSERT_GT(kept.stores.size(), least);
    const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    const auto check = [&](const char* what, const std::vector<double>& values, auto of) {
        const auto m = momentsOf(values);
        const double error =
            m.sd * std::sqrt(1 / static_cast<double>(values.size()) + 1 / (belief.effectiveWinters * belief.nodes));
        EXPECT_NEAR(believed(belief, of), m.mean, 4 * error) << what;
        const double spread = believed(belief, [&](std::size_t p) { return std::pow(of(p) - m.mean, 2); });
        EXPECT_NEAR(std::sqrt(spread), m.sd, 4 * error)
            << what; // of a spread it is smaller, by 1/sqrt(2), where tails are normal
    };
    check("stores", kept.stores, [&](std::size_t p) { return belief.stores()[p]; });
    check("loss", kept.loss,
          [&](std::size_t p) { return static_cast<double>(oxfordPaths().lossUntil({day}, belief.winterOf(p))); });
    check("bees and brood", kept.life, [&](std::size_t p) { return oxfordPaths().lifeKg({day}, belief.winterOf(p)); });
}

TEST(Belief, OneWeighingAsByRejection) {
    auto q = oxfordColony(15, 2, 60);
    q.observations = {weighed(q, 0, expectedGross(q, 0) - 2.5)};
    expectSame(q, 400000, 10000);
}

TEST(Belief, TwoWeighingsOnOneScaleAsByRejection) {
    auto q = oxfordColony(15, 2, 60);
    q.observations = {weighed(q, -60, expectedGross(q, -60) + 1), weighed(q, 20, expectedGross(q, 20) - 1)};
    expectSame(q, 4000000, 10000);
}

TEST(Belief, SignsOfLifeAsByRejection) {
    auto q = oxfordColony(8, 2.5, 90); // many winters starve
    q.observations = {on(q, 75, FlyingSeen{}), on(q, 60, CombGlimpsed{true})};
    expectSame(q, 200000, 10000);
    q.observations = {on(q, 75, ClusterSeen{}), on(q, 40, CombGlimpsed{false}), on(q, 30, BeesSeen{{7700}, 0.2})};
    expectSame(q, 400000, 10000);
}

TEST(Belief, AWeighingOfAStarvedHiveAsByRejection) {
    auto q = oxfordColony(7, 2, 90);
    q.tare.sd = kilograms(0.6);
    q.observations = {weighed(q, 80, 16.6)}; // all but empty: starved weeks ago or just about to
    expectSame(q, 1500000, 5000);
}

// Two weighings on one scale tell the loss between them far better than either tells the stores.
TEST(Belief, ADifferenceOfWeighingsIsSharperThanAWeighing) {
    auto q = oxfordColony(15, 3, 60);
    const auto spread = [&](auto of) {
        const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
        const double mean = believed(belief, [&](std::size_t p) { return of(belief, p); });
        return std::sqrt(believed(belief, [&](std::size_t p) { return std::pow(of(belief, p) - mean, 2); }));
    };
    const auto stores = [](const Belief& b, std::size_t p) { return b.stores()[p]; };
    const auto between = [](const Belief& b, std::size_t p) {
        return static_cast<double>(oxfordPaths().lossUntil({19}, b.winterOf(p)) -
                                   oxfordPaths().lossUntil({-61}, b.winterOf(p))) -
               oxfordPaths().lifeKg({20}, b.winterOf(p)) + oxfordPaths().lifeKg({-60}, b.winterOf(p));
    };
    q.observations = {weighed(q, -60, expectedGross(q, -60)), weighed(q, 20, expectedGross(q, 20))};
    EXPECT_LT(spread(between), 0.43); // the difference itself is known to 0.3 x sqrt(2) kg
    EXPECT_GT(spread(stores), 1.4);   // a tare known to 2 kg leaves stores open: 1 / sqrt(1/9 + 1/4) = 1.66
}

TEST(Belief, BeesSeenMoveTheBees) {
    auto q = oxfordColony(15, 2, 60);
    const auto bees = [&] {
        const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
        return believed(belief, [&](std::size_t p) { return oxfordPaths().bees({30}, belief.winterOf(p)); });
    };
    const double before = bees();
    q.observations = {on(q, 30, ClusterSeen{BeeCount{before * 0.6}})};
    const double few = bees();
    q.observations = {on(q, 30, BeesSeen{{before * 0.6}, 0.15})};
    EXPECT_LT(few, before);
    EXPECT_LT(bees(), few); // a count moves more than a cluster glimpsed
}

TEST(Belief, AContradictionIsSaidAndAllowedFor) {
    auto q = oxfordColony(15, 2, 60);
    q.observations = {weighed(q, -30, expectedGross(q, -30)), weighed(q, 0, expectedGross(q, 0) - 9)};
    auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    ASSERT_EQ(belief.judged.size(), 2u);
    EXPECT_FALSE(belief.judged[0].contradicts);
    EXPECT_TRUE(belief.judged[1].contradicts);
    EXPECT_FALSE(belief.judged[1].confirmed);
    EXPECT_LT(belief.judged[1].deviations, -4);
    ASSERT_EQ(belief.changes.size(), 1u);
    EXPECT_NEAR(believed(belief, [&](std::size_t p) { return belief.changes[0].kg[p]; }), -9, 1);

    q.observations.push_back(weighed(q, 20, expectedGross(q, 20) - 9));
    belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    EXPECT_TRUE(belief.judged[1].confirmed);
    EXPECT_FALSE(belief.judged[2].contradicts);
}

TEST(Belief, ASignNoWinterExplainsIsLeftOutAndSaid) {
    auto q = oxfordColony(2, 0.2, 60);
    q.observations = {on(q, 50, ClusterSeen{})};
    const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    ASSERT_EQ(belief.judged.size(), 1u);
    EXPECT_TRUE(belief.judged[0].contradicts);
    EXPECT_NEAR(belief.effectiveWinters, quick.winters, 1e-6);
}

// More was taken than was there, and stores were weighed later: no particle can be, and that is said instead of counted.
TEST(Belief, RecordsThatFitNoWinterAreSaid) {
    auto q = oxfordColony(15, 1, 60);
    q.steps = {{{-60}, KnownStep::Kind::Harvest, kilograms(-40), std::nullopt}};
    q.observations = {weighed(q, 30, expectedGross(q, 30))};
    const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    EXPECT_TRUE(belief.fitsNoWinter);
    double sum = 0;
    for (double weight : belief.weight) sum += weight;
    EXPECT_NEAR(sum, 1, 1e-9) << "every particle counts for as much as its readings say";
    q.steps.front().change = kilograms(-2);
    EXPECT_FALSE(reweigh(q, oxfordPaths(), {}, 1, constants()).fitsNoWinter);
}

// The roster the particles were drawn by is the one they are read by.
TEST(Belief, KeepsItsRoster) {
    auto q = oxfordColony(15, 1, 30);
    q.steps = {{{-60}, KnownStep::Kind::Feed, kilograms(5), std::nullopt},
               {{20}, KnownStep::Kind::Feed, kilograms(1), std::nullopt},
               {{40}, KnownStep::Kind::Feed, kilograms(1), std::nullopt}};
    const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    ASSERT_TRUE(belief.roster);
    EXPECT_EQ(belief.roster->belief().size(), belief.unknowns.size());
    EXPECT_EQ(belief.roster->changes().size(), 2u) << "the feed of a day after today is none of it";
}

// Two fixed error sizes: the smaller pulls more. Rain on the hive, a heft word, a look at the combs.
TEST(Belief, BetterEvidenceCountsForMore) {
    auto q = oxfordColony(15, 3, 0);
    const auto likely = [&](Observation seen) {
        q.observations = {std::move(seen)};
        const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
        return believed(belief, [&](std::size_t p) { return belief.stores()[p]; });
    };
    const double low = expectedGross(q, -10) - 4;
    const double dry = likely(weighed(q, -10, low)), wet = likely(weighed(q, -10, low + 1, true));
    EXPECT_LT(dry, 15);
    EXPECT_GT(wet, dry);
    EXPECT_LT(wet, 15);
    EXPECT_LT(likely(on(q, -10, HeftSeen{kilograms(5)})), 15);
    EXPECT_LT(likely(on(q, -10, StoresSeen{kilograms(7), kilograms(0.5)})),
              likely(on(q, -10, StoresSeen{kilograms(7), kilograms(3)})));
    EXPECT_LT(likely(on(q, 0, CombGlimpsed{false})), likely(on(q, 0, CombGlimpsed{true})));
}

// Light says that no more is there, heavy that no less is; fair as much, and with an error of its own hardly anything.
TEST(Belief, AWordPullsNoFurtherThanItSays) {
    auto q = oxfordColony(15, 3, 0);
    const auto likely = [&](double standsFor, std::optional<stores::HeftWord> word, std::optional<double> sd = {}) {
        q.observations = {on(q, -10, HeftSeen{kilograms(standsFor), word, sd})};
        const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
        return believed(belief, [&](std::size_t p) { return belief.stores()[p]; });
    };
    using enum stores::HeftWord;
    EXPECT_NEAR(likely(40, Light), 15, 0.2);
    EXPECT_LT(likely(5, Light), 13.5);
    EXPECT_NEAR(likely(5, Heavy), 15, 0.2);
    EXPECT_GT(likely(20, Heavy), 15.3);
    EXPECT_GT(likely(7, Fair, 0.9), likely(7, Fair));
    EXPECT_LT(likely(7, Fair, 0.9), 15);
}

// Light, a week after a scale said otherwise: it moves what is believed a little, contradicts nothing and allows for no change.
TEST(Belief, AWordBeyondAllThatWasExpectedErrsSoMuchMore) {
    auto q = oxfordColony(20, 2, 10);
    q.tare.sd = kilograms(0.5);
    const auto likely = [](const Belief& of) { return believed(of, [&](std::size_t p) { return of.stores()[p]; }); };
    q.observations = {weighed(q, 0, expectedGross(q, 0))};
    const double weighedAlone = likely(reweigh(q, oxfordPaths(), {}, 1, constants()));
    q.observations.push_back(on(q, 7, HeftSeen{kilograms(3), stores::HeftWord::Light}));
    const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    ASSERT_EQ(belief.judged.size(), 2U);
    EXPECT_FALSE(belief.judged[1].contradicts);
    EXPECT_GT(belief.judged[1].widened, 0);
    EXPECT_EQ(belief.judged[1].deviations, -constants().contradictionLimit);
    EXPECT_LT(likely(belief), weighedAlone - 0.1);
    EXPECT_GT(likely(belief), weighedAlone - 2);
}

} // namespace
} // namespace winterlarder::tracking::belief_test
