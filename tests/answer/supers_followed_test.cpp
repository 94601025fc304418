// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/supers_followed.h"

#include "answer/followed_book.h"
#include "exchange/shipped_data.h"

namespace winterlarder::answer {
namespace {

using Kind = tracking::KnownStep::Kind;
using tracking::KnownStep;

Mass sumOf(const std::vector<KnownStep>& steps, Kind kind) {
    Mass sum{0};
    for (const auto& step : steps)
        if (step.kind == kind) sum += step.change;
    return sum;
}

//! A nest below a super full of honey for people, looked at on 20 September.
class SupersFollowedTest : public FollowedColonyTest {
protected:
    ColonyId supered;

    book::HiveRecord nest() const {
        book::HiveRecord hive;
        hive.boxes = {book::BoxRecord{std::string("langstroth-deep"), {}, false}};
        hive.supersFor = book::SupersFor::People;
        return hive;
    }
    book::HiveRecord withSuper() const {
        auto hive = nest();
        hive.boxes.push_back(book::BoxRecord{std::string("langstroth-medium"), {}, true});
        return hive;
    }
    void SetUp() override {
        FollowedColonyTest::SetUp();
        auto kept = colonyIn({1}, "Apple");
        kept.hive = withSuper();
        supered = *edit(book, book::AddColony{kept}).added<book::Colony>();
        lookInto("2026-09-20", 8);
    }
    void lookInto(const char* date, int superCombs) {
        auto seen = lookAt(supered, day(date));
        std::vector<book::CombRecord> combs(10, comb(0.6));
        combs.insert(combs.end(), static_cast<std::size_t>(superCombs), comb(0.9));
        seen.combs = combs;
        edit(book, book::AddLook{seen});
    }
    void weigh(const char* date, double kg) { edit(book, book::AddWeighing{weighingOf(supered, day(date), kg)}); }
    void harvest(const char* date, double kg) {
        edit(book, book::AddHarvest{{.colony = supered, .harvest = {day(date), kilograms(kg)}}});
    }
    tracking::FollowQuestion asked(const char* date) {
        return *must(followedColony(book, supered, day(date), nullptr, few, 2)).question;
    }
    double honeyInSuper() { return sumOf(asked("2026-09-25").steps, Kind::Equipment).value(); }
    Spread<Mass> storesOn(const char* date) {
        return tracking::follow(asked(date), winterlarder::testing::shippedData().constants, few, 2)->now.today;
    }
};

TEST_F(SupersFollowedTest, TheirHoneyHangsOnTheScaleAndIsNoneOfTheStores) {
    EXPECT_GT(honeyInSuper(), 8);
    EXPECT_LT(honeyInSuper(), 16);
    EXPECT_EQ(asked("2026-09-25").steps.size(), 1U);
}

TEST_F(SupersFollowedTest, AWeightWithTheSuperOnSaysTheSameAsNone) {
    const auto unweighed = storesOn("2026-11-02");
    const auto q = asked("2026-11-02");
    const double gross = q.tare.mass.value() + q.beeBread.value() + honeyInSuper() + unweighed.typical.value() + 1.5;
    weigh("2026-11-01", gross);
    EXPECT_NEAR(storesOn("2026-11-02").typical.value(), unweighed.typical.value(), 1);
    EXPECT_EQ(tracking::follow(asked("2026-11-02"), winterlarder::testing::shippedData().constants, few, 2)->state,
              tracking::FollowState::OnCourse);
}

TEST_F(SupersFollowedTest, AHarvestIsTakenFromThemFirst) {
    const double before = storesOn("2026-10-06").typical.value(), apart = honeyInSuper();
    harvest("2026-10-05", apart + 2);
    EXPECT_NEAR(sumOf(asked("2026-10-06").steps, Kind::Equipment).value(), 0, 1e-9);
    EXPECT_NEAR(sumOf(asked("2026-10-06").steps, Kind::Harvest).value(), -2, 1e-9);
    EXPECT_NEAR(storesOn("2026-10-06").typical.value(), before - 2, 0.3);
}

TEST_F(SupersFollowedTest, ALaterLookSaysHowMuchThereIsAndCountsTheNestAlone) {
    lookInto("2026-12-28", 4);
    EXPECT_NEAR(sumOf(asked("2026-12-29").steps, Kind::Equipment).value(), honeyInSuper() / 2, 0.01);
    const auto seen = std::get<tracking::StoresSeen>(asked("2026-12-29").observations.at(0).what).typical;
    lookInto("2027-01-10", 0);
    EXPECT_NEAR(std::get<tracking::StoresSeen>(asked("2027-01-11").observations.at(2).what).typical.value(),
                seen.value(), 4);
}

TEST_F(SupersFollowedTest, OnceTheyAreOffTheyWeighNothing) {
    edit(book, book::AddHousing{{.colony = supered, .date = day("2026-10-05"), .hive = nest()}});
    const auto steps = asked("2026-10-06").steps;
    EXPECT_LT(sumOf(steps, Kind::Equipment).value(), -3) << "the empty super is off too";
    EXPECT_EQ(sumOf(steps, Kind::Harvest), kilograms(0));
}

TEST_F(SupersFollowedTest, WhereTheyAreTheBeesAHarvestIsOfTheStores) {
    auto bees = withSuper();
    bees.supersFor = book::SupersFor::Bees;
    edit(book, book::AddHousing{{.colony = supered, .date = day("2026-09-19"), .hive = bees}});
    harvest("2026-10-05", 5);
    EXPECT_EQ(sumOf(asked("2026-10-06").steps, Kind::Equipment), kilograms(0));
    EXPECT_NEAR(sumOf(asked("2026-10-06").steps, Kind::Harvest).value(), -5, 1e-9);
}

} // namespace
} // namespace winterlarder::answer
