// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every answer, over random colonies of many places and days.
#include "advice/colonies.h"
#include "advice/harvest_rules.h"

#include <random>

namespace winterlarder::advice::advice_properties_test {

namespace {

const winter::Sampling rough{1, 200};

struct Drawn {
    ColonyQuestion question;
    std::string what;
};

// Any place, any day of its year, any filling; sometimes fed, weighed, hefted, with a super, a nucleus.
Drawn drawnColony(unsigned seed) {
    std::mt19937 random(seed);
    const auto between = [&](double low, double high) { return std::uniform_real_distribution<double>(low, high)(random); };
    const auto chance = [&](double p) { return between(0, 1) < p; };
    static const char* const stations[] = {"ca-halifax", "gb-london", "de-munich", "ca-winnipeg", "us-ga-atlanta", "pt-lisbon", "au-hobart", "fr-paris", "us-co-denver"};
    Made made;
    made.station = stations[std::uniform_int_distribution<std::size_t>(0, std::size(stations) - 1)(random)];
    made.capped = between(0, 0.95);
    made.combs = chance(0.5) ? 20 : 10;
    made.covered = between(2, 10);
    if (std::string(made.station) == "au-hobart") made.asOf = "2027-03-10";
    auto q = colony(made);
    q.asOf = q.lookedOn = SeasonDay{std::uniform_int_distribution<int>(-150, q.season.forage->day.w - 1)(random)};
    if (chance(0.5)) q.brood.reset();
    for (auto& comb : q.combs) {
        comb.capped = std::clamp(made.capped + between(-0.2, 0.2), 0.0, 0.98);
        if (!q.brood) comb.broodSaid = false;
    }
    if (made.combs == 20 && chance(0.4))
        for (std::size_t i = 10; i < 20; ++i) q.combs[i].inSuper = true;
    if (chance(0.2)) q.nucleus = made.covered < 5;
    if (chance(0.2)) q.feeds.push_back({q.lookedOn - 10, kilograms(2), true, q.winter.date(q.lookedOn).plusDays(-10)});
    if (chance(0.2)) {
        q.combs.clear();
        q.weighings.push_back({WeighedHive::Kind::Heft, q.asOf, q.winter.date(q.asOf), kilograms(0)});
        q.weighings.back().heftWord = static_cast<stores::HeftWord>(std::uniform_int_distribution<int>(0, 2)(random));
    }
    q.queenSeen = chance(0.5) ? std::optional(chance(0.8)) : std::nullopt;
    q.eggsSeen = q.queenSeen;
    q.trouble = chance(0.05);
    return {q, std::string(made.station) + " on day " + std::to_string(q.asOf.w) + ", seed " + std::to_string(seed)};
}

Advice roughly(const ColonyQuestion& q) { return weigh(q, constants(), rough, 2)->advice; }

bool offers(const Advice& a, OptionKind kind) { return option(a, kind) != nullptr; }

void noDayIsPast(const Advice& a, const std::vector<Remark>& remarks, const std::string& what) {
    for (const auto& remark : remarks)
        for (const auto& detail : remark.details)
            if (const Date* day = std::get_if<Date>(&detail.second)) EXPECT_GE(*day, a.asOf) << what << ": " << remark.id;
}

} // namespace

TEST(AdviceProperties, HoldOfEveryAnswer) {
    for (unsigned seed = 1; seed <= 150; ++seed) {
        const Drawn drawn = drawnColony(seed);
        const auto a = roughly(drawn.question);
        ASSERT_NE(a.verdict, Verdict::CannotSay) << drawn.what;
        // room
        if (a.feed && a.feed->syrup.sugar > kilograms(0)) EXPECT_LE(a.feed->stores, *a.room + kilograms(0.01)) << drawn.what;
        // honey
        const bool workSeason = a.phase == Phase::Summer || a.phase == Phase::Closing;
        if (a.harvest) EXPECT_TRUE(workSeason) << drawn.what;
        if (a.harvest || offers(a, OptionKind::TakeInSpring))
            EXPECT_FALSE(wasFed(drawn.question, phaseDays(drawn.question.season, drawn.question.decisions))) << drawn.what;
        // verdict, feed, harvest and options agree
        EXPECT_EQ(a.verdict == Verdict::Harvest, a.harvest.has_value()) << drawn.what;
        if (a.verdict == Verdict::Feed) EXPECT_TRUE(a.feed) << drawn.what;
        EXPECT_EQ(offers(a, OptionKind::Feed), a.feed.has_value()) << drawn.what;
        EXPECT_EQ(offers(a, OptionKind::TakeNow), a.harvest.has_value()) << drawn.what;
        EXPECT_EQ(offers(a, OptionKind::Unite), a.verdict == Verdict::Unite) << drawn.what;
        EXPECT_FALSE(a.feed && a.harvest) << drawn.what;
        // cautions
        EXPECT_LE(a.cautions.size(), 5u) << drawn.what;
        for (const auto& caution : a.cautions) EXPECT_FALSE(says(a.goodPractice, caution.id)) << drawn.what << ": " << caution.id;
        // days
        noDayIsPast(a, a.cautions, drawn.what);
        noDayIsPast(a, a.goodPractice, drawn.what);
        noDayIsPast(a, a.reasons, drawn.what);
        ASSERT_TRUE(a.nextLook) << drawn.what;
        EXPECT_GE(a.nextLook->date, a.asOf) << drawn.what;
        if (a.feed)
            for (const auto& visit : a.feed->visits) EXPECT_GE(visit.date, a.asOf) << drawn.what;
        // a season's own cautions
        if (a.phase == Phase::Winter && a.season.winterClass != climate::WinterClass::Dearth)
            for (const char* id : {"mouse-guard", "robbing-and-wasps", "drowning", "hot-syrup", "varroa-first"})
                EXPECT_FALSE(says(a.cautions, id) || says(a.goodPractice, id)) << drawn.what << ": " << id;
        // parts
        EXPECT_NEAR((a.needParts->typicalUse + a.needParts->harderWinter + a.needParts->reserve).value(), a.need->value(), 1e-9) << drawn.what;
    }
}

namespace {

// What is asked of the keeper now, and what typically later, as stores.
double askedInAll(const Advice& a) {
    double sum = a.feed ? a.feed->stores.value() : 0;
    if (a.expectedLater) sum += 1.08 * a.expectedLater->sugar.typical.value() + feeding::storesPerKgFondant * a.expectedLater->fondant.typical.value();
    return sum;
}

} // namespace

TEST(AdviceProperties, NoDaysChangeOfPhaseMakesMoreThanThreeKilograms) {
    for (const char* station : {"ca-halifax", "gb-london", "de-munich"})
        for (const double capped : {0.2, 0.45, 0.7}) {
            auto q = colony({.station = station, .capped = capped});
            q.brood.reset();
            q.queenSeen = true;
            const auto days = phaseDays(q.season, q.decisions);
            for (const SeasonDay last : {days.summer, days.closing, days.late, days.winter}) {
                q.asOf = q.lookedOn = last;
                const auto before = roughly(q);
                q.asOf = q.lookedOn = last + 1;
                const auto after = roughly(q);
                EXPECT_NEAR(askedInAll(before), askedInAll(after), 3) << station << ", " << capped << ", day " << last.w;
            }
        }
}

TEST(AdviceProperties, VaguerEvidenceAsksForNoMore) {
    for (unsigned seed = 1; seed <= 30; ++seed) {
        const Drawn drawn = drawnColony(1000 + seed);
        auto vague = drawn.question;
        if (vague.combs.empty()) continue;
        for (auto& comb : vague.combs) comb.facesSeen = 1;
        const auto a = roughly(drawn.question), b = roughly(vague);
        EXPECT_LE(b.feed ? b.feed->stores.value() : 0, (a.feed ? a.feed->stores.value() : 0) + 1e-6) << drawn.what;
    }
}

} // namespace winterlarder::advice::advice_properties_test
