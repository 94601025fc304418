// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/csv_table.h"
#include "reference/reference.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace winterlarder::fields_test {
namespace {

const ReferenceData& shipped() {
    static const ReferenceData data = loadReference(SHARED_FOLDER).value();
    return data;
}

const FieldLimits& field(std::string_view name) {
    const FieldLimits* found = shipped().field(name);
    if (!found) throw std::runtime_error("no field " + std::string(name));
    return *found;
}

TEST(Fields, EveryKeyOfTheCaseFileIsThere) {
    for (const char* key : {"case",
                            "colony",
                            "yard",
                            "as_of",
                            "looked_on",
                            "fed_after_look",
                            "site.station",
                            "site.latitude",
                            "site.longitude",
                            "site.elevation_m",
                            "site.monthly_mean_c",
                            "site.daily_sd_winter_c",
                            "site.daily_sd_summer_c",
                            "site.lag1",
                            "site.season_offset_sd_c",
                            "site.autumn_flow",
                            "hive.format",
                            "hive.format.comb_width_mm",
                            "hive.format.comb_height_mm",
                            "hive.format.bottom_width_mm",
                            "hive.format.combs_per_box",
                            "hive.format.pitch_mm",
                            "hive.boxes",
                            "hive.boxes.format",
                            "hive.boxes.combs",
                            "hive.boxes.super",
                            "hive.shell",
                            "hive.top_insulation",
                            "hive.treated",
                            "hive.nucleus",
                            "hive.tare_kg",
                            "bees.count",
                            "bees.covered_combs",
                            "bees.seams",
                            "bees.spread",
                            "bees.brood_cells",
                            "bees.kind",
                            "bees.queen_seen",
                            "bees.eggs_seen",
                            "bees.trouble",
                            "combs.capped",
                            "combs.open",
                            "combs.brood",
                            "combs.pollen",
                            "combs.format",
                            "combs.width_mm",
                            "combs.built",
                            "combs.faces_seen",
                            "combs.through_window",
                            "combs.measured",
                            "combs.in_super",
                            "combs.fed",
                            "combs.old_nest",
                            "combs.full_of_stores",
                            "combs.half",
                            "combs.capped_share",
                            "weighings.date",
                            "weighings.gross_kg",
                            "weighings.lift_kg",
                            "weighings.heft",
                            "moisture_percent",
                            "season.last_income",
                            "season.brood_stop",
                            "season.brood_restart",
                            "season.buildup",
                            "season.forage",
                            "season.feed_advised_by",
                            "season.syrup_deadline",
                            "season.syrup_refused",
                            "feeder.kind",
                            "feeder.capacity_l",
                            "feeds.date",
                            "feeds.kind",
                            "feeds.sugar_kg",
                            "feeds.syrup_l",
                            "feeds.ratio",
                            "feeds.fondant_kg",
                            "harvests.date",
                            "harvests.kg",
                            "wish.short_risk",
                            "wish.reserve_kg",
                            "wish.visit_every_days",
                            "wish.visit_weekdays",
                            "wish.visits_in_winter",
                            "hive.boxes.put_on",
                            "hive.supers_for",
                            "bees.mites_counted",
                            "bees.mites_per_100_bees",
                            "bees.mites_treated",
                            "bees.food_beside",
                            "feeds.after_look",
                            "harvests.after_look",
                            "treatments.date",
                            "treatments.until",
                            "treatments.what",
                            "honey_kind",
                            "fed_or_treated",
                            "full_combs",
                            "units"})
        EXPECT_NE(shipped().field(key), nullptr) << key;
}

TEST(Fields, LimitsAreThoseOfTheCaseFile) {
    EXPECT_EQ(field("bees.count").maximum, 100000);
    EXPECT_EQ(field("hive.boxes").maximum, 12);
    EXPECT_EQ(field("hive.format.comb_width_mm").minimum, 50);
    EXPECT_EQ(field("hive.format.comb_width_mm").maximum, 1000);
    EXPECT_EQ(field("combs.width_mm").minimum, 25);
    EXPECT_EQ(field("combs.width_mm").maximum, 60);
    EXPECT_EQ(field("site.monthly_mean_c").minimum, -60);
    EXPECT_EQ(field("site.monthly_mean_c").maximum, 45);
    EXPECT_EQ(field("combs.faces_seen").maximum, 2);
}

TEST(Fields, DefaultsAreThoseOfTheCaseFile) {
    for (const char* asked :
         {"wish.short_risk", "wish.reserve_kg", "wish.visits_in_winter", "site.autumn_flow", "hive.supers_for",
          "full_combs", "fed_or_treated", "bees.mites_counted", "bees.mites_treated", "bees.food_beside", "honey_kind"})
        EXPECT_EQ(field(asked).defaultText, "") << asked << ": not said is not known";
    EXPECT_EQ(field("wish.visit_every_days").defaultText, "3");
    EXPECT_EQ(field("hive.shell").defaultText, "timber");
    EXPECT_EQ(field("feeder.kind").defaultText, "round");
    EXPECT_EQ(field("combs.faces_seen").defaultText, "2");
    EXPECT_EQ(field("combs.brood").defaultText, "") << "not said is never zero";
    EXPECT_EQ(field("run.winters").defaultText, "2500");
}

TEST(Fields, ChoicesAreThoseOfTheCaseFile) {
    EXPECT_THAT(field("hive.shell").choices,
                testing::ElementsAre("timber", "thick-timber", "wrapped", "polystyrene", "straw"));
    EXPECT_THAT(field("site.autumn_flow").choices, testing::ElementsAre("none", "trickle", "fair", "strong"));
    EXPECT_THAT(field("bees.kind").choices, testing::ElementsAre("dark", "carniolan", "buckfast", "italian"));
    EXPECT_THAT(field("weighings.heft").choices, testing::ElementsAre("light", "fair", "heavy"));
    EXPECT_THAT(field("feeds.kind").choices, testing::ElementsAre("syrup", "fondant", "dry-sugar"));
}

TEST(Fields, UnitsStandInTheNamesToo) {
    const std::vector<std::pair<std::string, std::string>> endings = {
        {"_per_kg", "1/kg"}, {"_kg", "kg"}, {"_mm", "mm"}, {"_l", "L"}, {"_m", "m"}};
    int named = 0;
    for (const FieldLimits& each : shipped().fields)
        for (const auto& [ending, unit] : endings)
            if (each.name.ends_with(ending)) {
                EXPECT_EQ(each.unit, unit) << each.name;
                ++named;
                break;
            }
    EXPECT_GE(named, 14);
}

TEST(Fields, EveryStepFitsBetweenTheLimits) {
    for (const FieldLimits& each : shipped().fields)
        if (each.step && *each.maximum > *each.minimum) {
            EXPECT_LE(*each.step, *each.maximum - *each.minimum) << each.name;
        }
}

TEST(Fields, ShippedFormatsLieWithinThem) {
    for (const HiveFormat& format : shipped().formats) {
        EXPECT_LE(format.combWidth.value(), field("hive.format.comb_width_mm").maximum) << format.id;
        EXPECT_GE(format.bottomWidth.value(), field("hive.format.bottom_width_mm").minimum) << format.id;
    }
}

} // namespace
} // namespace winterlarder::fields_test
