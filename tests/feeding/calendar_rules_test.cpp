// SPDX-License-Identifier: GPL-3.0-or-later
// The last dates for syrup that associations, institutes and common practice give for a region
// (shared/rules/feeding.csv, topic "last syrup date"; each row names its source, printed on failure) beside what the
// season rules make of the climate there. "Finished by" is held against the advised date, "at the latest" against the
// last day.
#include "climate/season.h"
#include "climate/site.h"
#include "reference/reference.h"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <set>

namespace winterlarder::feeding::calendar_rules_test {
namespace {

const ReferenceData& reference() {
    static const ReferenceData loaded = loadReference(SHARED_FOLDER).value();
    return loaded;
}

enum class Means { FinishedBy, AtTheLatest };

//! A published date, or span of dates, as month-day of the autumn (south: April is autumn), at a station of the region.
struct PublishedDate {
    const char* rule;
    const char* station;
    Means means;
    const char* from;
    const char* to;
    int knownDays =
        0; //!< where the season rules are known to disagree: by so many days, else within two SD of the rule
};

// "Mid-September" is the 15th, "late August" from the 21st, "early September" to the 10th, the first days the 1st to
// 5th.
const std::vector<PublishedDate> publishedDates{
    {"rule-077", "gb-lowestoft", Means::FinishedBy, "09-30", "09-30"},
    {"rule-078", "gb-leuchars", Means::FinishedBy, "09-15", "09-15"},
    {"rule-078", "gb-braemar", Means::AtTheLatest, "09-15", "09-15"},
    {"rule-078", "gb-braemar", Means::FinishedBy, "09-15", "09-15", -44}, // uplands: hardly ever above 13.5 C
    {"rule-079", "ie-valentia", Means::FinishedBy, "09-15", "09-15"},
    {"rule-079", "ie-mullingar", Means::FinishedBy, "09-15", "09-15"},
    {"rule-080", "gb-armagh", Means::FinishedBy, "09-01", "09-30"},
    {"rule-080", "gb-belfast", Means::FinishedBy, "09-01", "09-30"},
    {"rule-081", "nl-debilt", Means::FinishedBy, "09-15", "09-15"},
    {"rule-081", "nl-amsterdam", Means::FinishedBy, "09-15", "09-15"},
    {"rule-081", "nl-debilt", Means::AtTheLatest, "10-15", "10-15"},
    {"rule-083", "de-jena", Means::FinishedBy, "09-15", "10-01"},
    {"rule-083", "de-hamburg", Means::FinishedBy, "09-15", "10-01"},
    {"rule-083", "de-frankfurt", Means::FinishedBy, "09-15", "10-01"},
    {"rule-083", "de-munich", Means::FinishedBy, "09-15", "10-01"},
    {"rule-084", "at-vienna", Means::FinishedBy, "09-15", "09-15"},
    {"rule-085", "ch-zurich", Means::FinishedBy, "09-15", "09-21"}, // the third Sunday
    {"rule-086", "it-milan", Means::FinishedBy, "09-26", "09-30"},
    {"rule-086", "it-bolzano", Means::FinishedBy, "09-26", "09-30"},
    {"rule-087", "fr-paris", Means::FinishedBy, "09-15", "09-15", 27},
    {"rule-088", "dk-copenhagen", Means::FinishedBy, "09-15", "09-15"},
    {"rule-089", "dk-copenhagen", Means::FinishedBy, "09-01", "09-30"}, // across the sound from Skane
    {"rule-090", "se-lulea", Means::FinishedBy, "08-15", "09-05"},
    {"rule-091", "no-oslo", Means::FinishedBy, "08-21", "09-10"},
    {"rule-091", "no-trondheim", Means::FinishedBy, "08-21", "09-10"},
    {"rule-092", "fi-helsinki", Means::FinishedBy, "08-15", "08-31"},
    {"rule-093", "pl-warsaw", Means::FinishedBy, "09-15", "09-15"},
    {"rule-099", "ca-kamloops", Means::FinishedBy, "09-01", "09-30"},
    {"rule-100", "ca-toronto", Means::AtTheLatest, "10-15", "10-15"},
    {"rule-100", "ca-ottawa", Means::AtTheLatest, "10-15", "10-15"},
    {"rule-100", "us-wi-madison", Means::AtTheLatest, "10-15", "10-15"},
    {"rule-100", "us-ny-albany", Means::AtTheLatest, "10-15", "10-15"},
    {"rule-100", "us-mi-grandrapids", Means::AtTheLatest, "10-15", "10-15"},
    {"rule-100", "us-vt-burlington", Means::AtTheLatest, "10-15", "10-15"},
    {"rule-102", "us-mn-minneapolis", Means::AtTheLatest, "10-01", "10-05"},
    {"rule-103", "us-ma-boston", Means::AtTheLatest, "10-15", "10-31"},
    {"rule-105", "us-tn-nashville", Means::FinishedBy, "10-01", "10-31"},
    {"rule-107", "au-melbourne", Means::FinishedBy, "04-25", "04-25"},
    {"rule-107", "au-canberra", Means::FinishedBy, "04-25", "04-25"},
    {"rule-107", "au-adelaide", Means::FinishedBy, "04-25", "04-25", 30}, // no winter by the rule: syrup all year
    {"rule-108", "au-hobart", Means::FinishedBy, "03-01", "04-24"},
    {"rule-109", "nz-christchurch", Means::FinishedBy, "03-01", "04-30"},
};

// What the other rules of the topic say instead of a date on which feeding ends.
const std::map<std::string, std::string> withoutEndDate{
    {"rule-082", "when to begin"},   {"rule-094", "when to begin"},
    {"rule-095", "the time of day"}, {"rule-096", "right after the last flow"},
    {"rule-097", "a temperature"},   {"rule-098", "when to begin"},
    {"rule-101", "when to weigh"},   {"rule-104", "freezing nights"},
    {"rule-106", "a temperature"},   {"rule-110", "another species"},
};

climate::SeasonDates seasonAt(const std::string& id) {
    const auto site = climate::siteAtStation(*reference().station(id), std::nullopt).value();
    return climate::deriveSeason(site.curve, reference().constants);
}

const PublishedRule& ruleOf(const std::string& id) {
    for (const PublishedRule& rule : reference().rules)
        if (rule.id == id) return rule;
    throw std::out_of_range(id);
}

std::string about(const PublishedDate& published) {
    const PublishedRule& rule = ruleOf(published.rule);
    const Source* source = reference().source(rule.source);
    return rule.id + " at " + published.station + ", " + rule.region + ": " + rule.value + " (" +
           (source ? source->citation : rule.source) + ")";
}

SeasonDay seasonDayOf(const char* monthDay, Hemisphere hemisphere) {
    const Date date = Date::parse(std::string("2026-") + monthDay).value();
    return Winter::containing(date, hemisphere).seasonDay(date);
}

// Days from the nearest end of the published span; 0 within it.
int daysOutside(SeasonDay derived, SeasonDay from, SeasonDay to) {
    if (derived < from) return derived - from;
    return derived > to ? derived - to : 0;
}

TEST(LastSyrupDates, OfTheSeasonRulesMeetThePublishedOnes) {
    for (const PublishedDate& published : publishedDates) {
        const Hemisphere hemisphere = hemisphereOf(reference().station(published.station)->latitude);
        const auto season = seasonAt(published.station);
        const auto& derived = published.means == Means::FinishedBy ? season.feedAdvisedBy : season.syrupDeadline;
        ASSERT_TRUE(derived) << about(published);
        const int days =
            daysOutside(derived->day, seasonDayOf(published.from, hemisphere), seasonDayOf(published.to, hemisphere));
        const double twoSd = 2 * derived->sdDays;
        if (published.knownDays == 0) {
            EXPECT_LE(std::abs(days), twoSd) << about(published);
        } else {
            EXPECT_EQ(days, published.knownDays) << about(published);
            EXPECT_GT(std::abs(days), twoSd) << about(published) << " is no disagreement";
        }
    }
}

// Without the known disagreements the advised dates lie evenly round the published ones: a shift would be a fault of
// the rules. Their mean is held to twice the standard error of so many dates of the rule's own SD.
TEST(LastSyrupDates, AreNotShiftedAsAWhole) {
    double sum = 0, variance = 0;
    int dates = 0;
    for (const PublishedDate& published : publishedDates) {
        if (published.means != Means::FinishedBy || published.knownDays != 0) continue;
        const Hemisphere hemisphere = hemisphereOf(reference().station(published.station)->latitude);
        const auto derived = seasonAt(published.station).feedAdvisedBy.value();
        sum += daysOutside(derived.day, seasonDayOf(published.from, hemisphere), seasonDayOf(published.to, hemisphere));
        variance += derived.sdDays * derived.sdDays;
        ++dates;
    }
    EXPECT_GT(dates, 25);
    EXPECT_LE(std::abs(sum / dates), 2 * std::sqrt(variance) / dates);
}

TEST(LastSyrupDates, EveryPublishedRuleIsComparedOrSaysNoDate) {
    std::set<std::string> known;
    for (const PublishedDate& published : publishedDates) known.insert(published.rule);
    for (const auto& [rule, why] : withoutEndDate) known.insert(rule);
    std::set<std::string> shipped;
    for (const PublishedRule& rule : reference().rules)
        if (rule.topic == "last syrup date") shipped.insert(rule.id);
    EXPECT_EQ(known, shipped);
}

// Ontario, a beekeeping checklist: feed before days of 13 C. Texas, common practice: several weeks before the highs
// reach 10 C. A day's high is the normal plus half the daily range.
TEST(LastSyrupDates, LieBeforeTheTemperaturesPublishedInsteadOfDates) {
    const auto toronto = climate::siteAtStation(*reference().station("ca-toronto"), std::nullopt).value().curve;
    const double halfRange = reference().constants.diurnalHalfRange;
    const auto last = seasonAt("ca-toronto").syrupDeadline.value().day;
    EXPECT_GT(toronto.normal(last).value() + halfRange, 13);
    const auto dallas = climate::siteAtStation(*reference().station("us-tx-dallas"), std::nullopt).value().curve;
    const auto lastInTexas = seasonAt("us-tx-dallas").syrupDeadline.value().day;
    for (int days = 0; days <= 21; ++days) EXPECT_GT(dallas.normal(lastInTexas + days).value() + halfRange, 10) << days;
}

} // namespace
} // namespace winterlarder::feeding::calendar_rules_test
