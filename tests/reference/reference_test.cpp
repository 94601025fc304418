// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/reference.h"

#include "reference/csv_table.h"
#include "reference/mark.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace winterlarder::reference_test {
namespace {

const ReferenceData& shipped() {
    static const ReferenceData data = [] {
        auto loaded = loadReference(SHARED_FOLDER);
        if (!loaded)
            for (const Problem& problem : loaded.problems()) ADD_FAILURE() << describe(problem);
        return loaded ? std::move(loaded).value() : ReferenceData{};
    }();
    return data;
}

CsvTable table(const std::string& shown) {
    auto read = CsvTable::read(std::filesystem::path(SHARED_FOLDER) / shown);
    if (!read)
        for (const Problem& problem : read.problems()) ADD_FAILURE() << describe(problem);
    return std::move(read).value();
}

TEST(Reference, EverythingShippedLoads) {
    EXPECT_EQ(shipped().stations.size(), 180U);
    EXPECT_EQ(shipped().formats.size(), 73U);
    EXPECT_EQ(shipped().rules.size(), 207U);
    EXPECT_GE(shipped().sources.size(), 100U);
    EXPECT_GE(shipped().cautions.size(), 70U);
    EXPECT_GE(shipped().fields.size(), 80U);
}

TEST(Reference, LooksUpByIdAndSaysWhenThereIsNone) {
    ASSERT_NE(shipped().station("ca-halifax"), nullptr);
    EXPECT_EQ(shipped().station("ca-halifax")->country, "Canada");
    ASSERT_NE(shipped().format("langstroth-deep"), nullptr);
    EXPECT_EQ(shipped().format("langstroth-deep")->combsPerBox, 10);
    EXPECT_DOUBLE_EQ(shipped().format("langstroth-deep")->combWidth.value(), 428.0);
    ASSERT_NE(shipped().caution("infants"), nullptr);
    ASSERT_NE(shipped().field("bees.count"), nullptr);
    ASSERT_NE(shipped().source("southwick-1985"), nullptr);
    EXPECT_EQ(shipped().station("nowhere"), nullptr);
    EXPECT_EQ(shipped().format(""), nullptr);
    EXPECT_EQ(shipped().source("SOUTHWICK-1985"), nullptr);
    EXPECT_EQ(shipped().caution("nothing"), nullptr);
    EXPECT_EQ(shipped().field("bees"), nullptr);
}

// Met Office historic station data, Oxford, means 1991-2020 as shipped and as quoted with the model's description.
TEST(Reference, OxfordIsAsPublished) {
    const Station* oxford = shipped().station("gb-oxford");
    ASSERT_NE(oxford, nullptr);
    EXPECT_EQ(oxford->source, "met-office-historic");
    EXPECT_EQ(oxford->mark, Mark::Measured);
    EXPECT_THAT(oxford->monthlyMeanC,
                testing::ElementsAre(5.2, 5.5, 7.5, 9.8, 12.9, 15.9, 18.1, 17.8, 15.0, 11.5, 7.9, 5.4));
}

TEST(Reference, EverySourceIsUsedAndEveryUseIsAFileThatExists) {
    for (const Source& source : shipped().sources) {
        EXPECT_FALSE(source.usedBy.empty()) << source.id << " is named by no file";
        for (const std::string& file : source.usedBy)
            EXPECT_TRUE(std::filesystem::exists(std::filesystem::path(SHARED_FOLDER) / file))
                << source.id << ": " << file;
    }
}

TEST(Reference, UsesNameEveryFileOnce) {
    const Source* judgement = shipped().source("judgement");
    ASSERT_NE(judgement, nullptr);
    EXPECT_EQ(judgement->usedBy, (std::vector<std::string>{"fields.csv", "model/constants.csv", "rules/decisions.csv",
                                                           "hives/feeders.csv", "rules/cautions.csv"}));
}

TEST(Reference, EverySourceInMemoryResolves) {
    const auto resolves = [](const std::string& id) { return shipped().source(id) != nullptr; };
    for (const Station& station : shipped().stations) EXPECT_TRUE(resolves(station.source)) << station.id;
    for (const PublishedRule& rule : shipped().rules) EXPECT_TRUE(resolves(rule.source)) << rule.id;
    for (const CautionRule& caution : shipped().cautions) {
        EXPECT_FALSE(caution.sources.empty()) << caution.id;
        for (const std::string& id : caution.sources) EXPECT_TRUE(resolves(id)) << caution.id << ": " << id;
    }
}

TEST(Reference, MarkOfASourceFollowsItsKindAndWhatWasRead) {
    EXPECT_EQ(shipped().source("southwick-1985")->mark, Mark::Published);
    EXPECT_EQ(shipped().source("white-1962")->mark, Mark::Memory);
    EXPECT_EQ(shipped().source("crc-sucrose")->mark, Mark::Handbook);
    EXPECT_EQ(shipped().source("common-practice")->mark, Mark::CommonPractice);
    EXPECT_EQ(shipped().source("judgement")->mark, Mark::Judgement);
    EXPECT_EQ(shipped().source("southwick-1985")->year, 1985);
    EXPECT_EQ(shipped().source("bocquet")->year, std::nullopt);
}

TEST(Reference, MarksAreNamedBothWays) {
    EXPECT_EQ(name(Mark::Measured), "measured");
    EXPECT_EQ(name(Mark::CommonPractice), "common practice");
    EXPECT_EQ(name(Mark::Judgement), "judgement");
    for (const std::string& word : markNames()) EXPECT_EQ(name(markFrom(word).value()), word);
    EXPECT_EQ(markFrom("guess"), std::nullopt);
}

TEST(Reference, CommonPracticeNamesNoPage) {
    for (const PublishedRule& rule : shipped().rules) {
        EXPECT_EQ(rule.quality == 'C', rule.source == "common-practice") << rule.id;
        EXPECT_EQ(rule.quality == 'C', rule.mark == Mark::CommonPractice) << rule.id;
    }
}

TEST(Reference, RefusalsReasonsAndCautionsAreToldApart) {
    EXPECT_EQ(shipped().caution("robbing-and-wasps")->kind, CautionRule::Kind::Caution);
    EXPECT_EQ(shipped().caution("need")->kind, CautionRule::Kind::Reason);
    EXPECT_EQ(shipped().caution("out-of-season")->kind, CautionRule::Kind::Refusal);
    EXPECT_EQ(shipped().caution("infants")->sources.front(), "inspq");
}

// The constants a reader of the sources knows; the rest is held by the worked examples of the model.
TEST(Reference, ConstantsArriveInTheirMembers) {
    const ModelConstants& constants = shipped().constants;
    EXPECT_EQ(constants.honeyEnergy, 12700);       // usda-food-energy: 304 kcal per 100 g
    EXPECT_EQ(constants.coreTemperature, 25);      // omholt-1987; stabentheiner-2003
    EXPECT_EQ(constants.broodTemperature, 34.5);   // stabentheiner-2010
    EXPECT_EQ(constants.incomeEndTemperature, 13); // regional-calendars
    EXPECT_EQ(constants.broodRestartDay, 10);
    EXPECT_EQ(constants.summerDeath, 0.0495);
    EXPECT_EQ(constants.longLivedAll, -17);
    EXPECT_EQ(constants.autumnTrickle, 0.05);
    EXPECT_EQ(constants.broodRestartSd, 18);
    EXPECT_EQ(constants.deathSd, 0.25);
    EXPECT_EQ(constants.eggFloor, 0.2);
    EXPECT_EQ(constants.confinedBelow, 5);
}

TEST(Reference, ConstantsLieWithinTheirRanges) {
    const CsvTable constants = table("model/constants.csv");
    EXPECT_EQ(constants.rows() * sizeof(double), sizeof(ModelConstants));
    int ranged = 0;
    for (std::size_t row = 0; row < constants.rows(); ++row) {
        const double value = numberFrom(constants.cell(row, "value").text).value();
        const auto low = numberFrom(constants.cell(row, "low").text),
                   high = numberFrom(constants.cell(row, "high").text);
        EXPECT_EQ(low.has_value(), high.has_value()) << constants.cell(row, "name").text;
        if (!low) continue;
        ++ranged;
        EXPECT_LE(*low, value) << constants.cell(row, "name").text;
        EXPECT_GE(*high, value) << constants.cell(row, "name").text;
    }
    EXPECT_GE(ranged, 20);
}

TEST(Reference, EveryKindOfFeederHasItsRow) {
    for (const auto& word : shipped().field("feeder.kind")->choices) EXPECT_NE(shipped().feeder(word), nullptr) << word;
    EXPECT_EQ(shipped().feeder("contact")->capacity, litres(2.8)) << "rule-063";
    EXPECT_TRUE(shipped().feeder("contact")->slow && shipped().feeder("contact")->atCluster);
    EXPECT_TRUE(shipped().feeder("top")->overAll && !shipped().feeder("round")->overAll);
}

TEST(Reference, FormatsAreSane) {
    for (const HiveFormat& format : shipped().formats) {
        EXPECT_LE(format.bottomWidth, format.combWidth) << format.id;
        const double area =
            (format.combWidth.value() + format.bottomWidth.value()) / 2 * format.combHeight.value() / 1e4;
        // 130 bees per dm2 of one covered face; formats with a figure of their own lie within a third of it.
        EXPECT_NEAR(format.beesPerSide.count / (130 * area), 1.0, 0.34) << format.id;
    }
}

TEST(Reference, SeasonDatesAreThereForEveryStation) {
    const CsvTable dates = table("reference/season_dates.csv");
    EXPECT_EQ(dates.rows(), shipped().stations.size());
    for (std::size_t row = 0; row < dates.rows(); ++row)
        EXPECT_NE(shipped().station(dates.cell(row, "id").text), nullptr) << dates.cell(row, "id").text;
}

TEST(Reference, CheckValuesNameShippedThings) {
    const CsvTable combs = table("reference/comb_checks.csv");
    for (std::size_t row = 0; row < combs.rows(); ++row) {
        const std::string& id = combs.cell(row, "format_id").text;
        EXPECT_TRUE(id.empty() || shipped().format(id)) << id;
    }
    const CsvTable winter = table("reference/winter_checks.csv");
    EXPECT_EQ(winter.rows(), 384U);
    int disagreements = 0;
    for (std::size_t row = 0; row < winter.rows(); ++row) {
        const std::string& inputs = winter.cell(row, "inputs").text;
        if (!winter.cell(row, "known_disagreement").text.empty()) ++disagreements;
        if (!inputs.starts_with("station=")) continue;
        const std::string id = inputs.substr(8, inputs.find(';') - 8);
        EXPECT_NE(shipped().station(id), nullptr) << inputs;
    }
    EXPECT_GT(disagreements, 10);
}

} // namespace
} // namespace winterlarder::reference_test
