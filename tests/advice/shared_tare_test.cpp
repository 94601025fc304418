// SPDX-License-Identifier: GPL-3.0-or-later
// Weighings by one empty weight, lifts of one side, hefts: however many there are, an answer is no surer than what their errors share.
#include "advice/colonies.h"
#include "advice/looking/another_look.h"
#include "stores/weighing.h"

namespace winterlarder::advice::shared_tare_test {

namespace {

ColonyQuestion weighed(int times, double tareSd, stores::WeighingKind kind = stores::WeighingKind::Scale) {
    auto q = colony({.asOf = "2026-09-20", .covered = 8});
    q.combs.clear();
    q.tareSd = kilograms(tareSd);
    q.weighings.assign(static_cast<std::size_t>(times), onScale(q, kilograms(36)));
    for (auto& weighing : q.weighings) weighing.kind = kind;
    return q;
}

double lasting(const ColonyQuestion& q) { return stores::splitTareSd({q.tare, q.tareSd}, constants()).lasting.value(); }

} // namespace

TEST(SharedTare, TwoWeighingsByAnAssumedTareAreNoSurerThanItIs) {
    const auto once = weighed(1, 2), twice = weighed(2, 2);
    const auto one = adviceFor(once), two = adviceFor(twice);
    EXPECT_EQ(one.estimate->sd.value(), 2);
    EXPECT_GE(two.estimate->sd.value(), lasting(twice));
    EXPECT_LT(two.estimate->sd, one.estimate->sd) << "the reading is surer";
    EXPECT_GT((two.estimate->spread.high - two.estimate->spread.low).value(), 2 * 1.2815 * lasting(twice));
    EXPECT_GT(*two.need, kilograms(0));
    EXPECT_GT((two.missing->high - two.missing->low).value(), 0.95 * (one.missing->high - one.missing->low).value());
}

TEST(SharedTare, AWeighedTareIsSharedToo) {
    const auto q = weighed(5, 0);
    EXPECT_GE(storesToday(q, constants(), quick, 1).estimate->sd.value(), lasting(q));
}

TEST(SharedTare, WeighingAfterALiftGainsOnlyWhatTheTareLeaves) {
    const auto q = weighed(1, 3, stores::WeighingKind::OneSidedLift);
    const auto look = adviceFor(q).anotherLook;
    ASSERT_EQ(look.which, LookKind::Weigh);
    EXPECT_GE(look.narrowsToKg, 2 * 1.2815 * lasting(q));
    EXPECT_LT(look.narrowsToKg, look.narrowsFromKg);
}

TEST(SharedLean, LiftsOfOneSideAreNoSurerThanWhatLastsOfThem) {
    const auto one = adviceFor(weighed(1, 0, stores::WeighingKind::OneSidedLift)),
               four = adviceFor(weighed(4, 0, stores::WeighingKind::OneSidedLift));
    const auto side = stores::splitOneSideSd(kilograms(36), false, constants());
    const auto tare = stores::splitTareSd({kilograms(0), kilograms(0)}, constants());
    EXPECT_GE(four.estimate->sd.value(), std::hypot(side.lasting.value(), tare.lasting.value()));
    EXPECT_LT(four.estimate->sd, one.estimate->sd);
    EXPECT_EQ(four.anotherLook.which, LookKind::Weigh) << "both sides tell more than the same one once more";
}

TEST(SharedLean, HeftsAreNoSurerThanWhatLastsOfThem) {
    const auto hefted = [](int times) {
        auto q = weighed(times, 0);
        for (auto& each : q.weighings) each.heft = stores::HeftWord::Fair;
        return adviceFor(q).estimate;
    };
    const auto one = hefted(1), four = hefted(4);
    EXPECT_GE(four->sd.value(), four->mean.value() * stores::splitHeftSd(kilograms(1), constants()).lasting.value());
    EXPECT_LT(four->sd, one->sd);
}

} // namespace winterlarder::advice::shared_tare_test
