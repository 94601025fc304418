// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/comb_checks.h"

#include "stores/tare.h"
#include "stores/weighing.h"

#include <cmath>
#include <gmock/gmock.h>
#include <set>

// Every row of shared/reference/comb_checks.csv; each carries its source, printed on failure.
namespace winterlarder::stores::comb_checks_test {
namespace {

using checks::CombCheck;
using checks::CombChecks;
using checks::says;
using testing::ElementsAreArray;

// One standard deviation of a comb record with both faces seen: area 10 %, fill 11 %.
constexpr double fillSd = 0.15;

// Rows the formula misses by more than that, and by how much: a Dadant comb printed lighter than others print it, one
// eighths rule and two regional rules at 250 g/dm2 where the rest say 300 to 333, a super comb that looks like an
// average one, and a New Zealand figure that needs wider spacing. Kept as they are: asserted to the value the formula
// does give, to 1 %.
const std::map<std::string, double> knownDisagreements = {
    {"comb-21", 1.20}, {"comb-28", 1.16}, {"comb-29", 1.15}, {"comb-48", 1.18},
    {"comb-51", 1.42}, {"comb-54", 1.18}, {"comb-55", 0.81},
};

bool isSuper(const CombCheck& row) {
    return row.format.find("super") != std::string::npos || row.condition.find("super") != std::string::npos;
}

double computedKg(const CombCheck& row) {
    const Length pitch = millimetres(row.pitch.value());
    return hive::honeyPerSquareDecimetre(pitch, hive::phiFor(pitch, isSuper(row))).value() * row.area.value();
}

//! What share of the format's comb the row's area is.
double partOfComb(const CombCheck& row) {
    if (row.id == "comb-28") return 1 / 16.0; // an eighth of one side: half of an eighth of both
    return row.id == "comb-18" ? 10 : 1;      // a box of ten combs
}

TEST_F(CombChecks, EveryRowBelongsToATestHere) {
    std::set<std::string> tests;
    for (const auto& [id, row] : rows) tests.insert(row.test);
    EXPECT_THAT(tests, ElementsAreArray({"gross", "mass", "nest", "none", "tare"}));
    EXPECT_EQ(rows.size(), 65U);
    EXPECT_EQ(rowsOf("mass").size(), 35U);
    EXPECT_EQ(rowsOf("nest").size(), 4U);
    EXPECT_EQ(rowsOf("gross").size(), 10U);
    EXPECT_EQ(rowsOf("tare").size(), 6U);
    EXPECT_EQ(rowsOf("none").size(), 10U);
}

TEST_F(CombChecks, FullCombsWeighWhatIsPublished) {
    for (const CombCheck& row : rowsOf("mass")) {
        const double ratio = computedKg(row) / row.published.value();
        const auto known = knownDisagreements.find(row.id);
        if (known == knownDisagreements.end()) EXPECT_NEAR(ratio, 1, fillSd) << says(row);
        else EXPECT_NEAR(ratio, known->second, 0.01) << "known disagreement, " << says(row);
    }
}

TEST_F(CombChecks, KnownDisagreementsAreStillDisagreements) {
    for (const auto& [id, ratio] : knownDisagreements) {
        EXPECT_EQ(row(id).test, "mass");
        EXPECT_GT(std::abs(computedKg(row(id)) / row(id).published.value() - 1), fillSd) << says(row(id));
    }
}

// Published areas are printed to two or three figures or rounded by their authors: within 3 %.
TEST_F(CombChecks, ShippedFormatsHaveThePublishedAreaAndSpacing) {
    int compared = 0;
    for (const auto& [id, row] : rows) {
        if (row.formatId.empty() || !row.area) continue;
        const hive::CombFormat shipped = format(row.formatId);
        EXPECT_NEAR(row.area.value() / (hive::faceArea(shipped.outline).value() * partOfComb(row)), 1, 0.035)
            << says(row);
        EXPECT_EQ(shipped.pitch.value(), row.pitch.value()) << says(row);
        ++compared;
    }
    EXPECT_GE(compared, 30);
}

// Combs with a brood arc: 170-230 g/dm2 as printed, so they must come out heavier when computed as full.
TEST_F(CombChecks, NestCombsAreLighterThanFullOnes) {
    for (const CombCheck& row : rowsOf("nest")) {
        EXPECT_GT(computedKg(row), row.published.value()) << says(row);
        const double gramsPerArea = row.published.value() / row.area.value() * 1000;
        EXPECT_GE(gramsPerArea, 170) << says(row);
        EXPECT_LE(gramsPerArea, 230) << says(row);
    }
}

// Gross weights: full combs plus the wood of box and frames. The honey may be one standard deviation of the fill off
// (15 %); the wood of a box, by parts or by rule, half the spread of a whole hive's tare (1 kg), of a single comb in
// its frame 0.1 kg.
class GrossWeights : public CombChecks {
protected:
    double boxKg(const std::string& formatId, int combs) const {
        hive::CombFormat one = format(formatId);
        one.combsPerBox = combs;
        const double floorAndLids = 1.8 + 0.8 + 3.9;
        return tareFromParts({{one}, {}}).mass.value() - floorAndLids;
    }
    void expectBox(const std::string& id, const std::string& formatId, int combs) const {
        const double honey = combs * fullKg(formatId);
        const double gross = honey + boxKg(formatId, combs);
        const double band = fillSd * honey + 1;
        EXPECT_GE(gross, row(id).low.value_or(row(id).published.value()) - band) << says(row(id));
        EXPECT_LE(gross, row(id).high.value_or(row(id).published.value()) + band) << says(row(id));
    }
    void expectComb(const std::string& id, const std::string& formatId) const {
        const double honey = fullKg(formatId);
        const double frame = drawnComb(hive::faceArea(format(formatId).outline), CombAge::Light).value();
        EXPECT_NEAR(honey + frame, row(id).published.value(), fillSd * honey + 0.1) << says(row(id));
    }
};

TEST_F(GrossWeights, FullLangstrothBoxes) {
    expectBox("comb-41", "langstroth-deep", 10);
    expectBox("comb-42", "langstroth-medium", 10);
    expectBox("comb-43", "langstroth-shallow", 10);
    expectBox("comb-44", "langstroth-deep-8", 8);
    expectBox("comb-45", "langstroth-deep", 10);
    expectBox("comb-46", "langstroth-medium", 10);
    expectBox("comb-47", "langstroth-shallow", 10);
}

TEST_F(GrossWeights, ANorwegianBoxCanExceedWhatIsPrinted) {
    EXPECT_GT(10 * fullKg("norwegian") + boxKg("norwegian", 10), row("comb-20").published.value())
        << says(row("comb-20"));
}

TEST_F(GrossWeights, SingleCombsInTheirFrames) {
    expectComb("comb-33", "russian-dadant");
    expectComb("comb-34", "ruta-230");
}

// Empty combs in their frames: a whole box of them must lie within the spread of a tare made of parts (2 kg).
class TareWeights : public CombChecks {
protected:
    void expectBoxful(const std::string& id, const std::string& formatId, CombAge age) const {
        const hive::CombFormat one = format(formatId);
        const double ours = drawnComb(hive::faceArea(one.outline), age).value() * one.combsPerBox;
        EXPECT_NEAR(ours, row(id).published.value() * one.combsPerBox, 2) << says(row(id));
    }
};

TEST_F(TareWeights, DrawnCombsInTheirFrames) {
    expectBoxful("comb-57", "zander", CombAge::Light);
    expectBoxful("comb-58", "zander", CombAge::Old);
    expectBoxful("comb-61", "deutsch-normal", CombAge::Light);
    expectBoxful("comb-62", "langstroth-deep", CombAge::Light);
    expectBoxful("comb-63", "langstroth-deep", CombAge::Old);
    expectBoxful("comb-64", "russian-dadant", CombAge::Light);
}

// Both weights are printed to 10 g, so their difference is good to 14 g.
TEST_F(TareWeights, YearsInTheNestAddNineteenGramsADecimetre) {
    const double published = row("comb-58").published.value() - row("comb-57").published.value();
    const double area = hive::faceArea(format("zander").outline).value();
    EXPECT_NEAR((oldWax - newWax).value() * area, published, 0.014) << says(row("comb-58"));
}

// Rows without a size, or about something else than a full comb: what each can say.
class OtherRows : public CombChecks {};

TEST_F(OtherRows, ANormalSuperCombLiesAmongTheSwedishOnes) {
    const double published =
        row("comb-19").published.value(); // size not said: between the smallest and the largest in use
    EXPECT_GT(published, fullKg("svea-half", hive::phiSuper)) << says(row("comb-19"));
    EXPECT_LT(published, fullKg("lagnormal-svea", hive::phiSuper)) << says(row("comb-19"));
}

TEST_F(OtherRows, OneSideOfAZanderCombIsAKilogram) {
    // Size not said; the same rule as the Zander eighths.
    EXPECT_NEAR(fullKg("zander") / 2 / row("comb-30").published.value(), 1, fillSd) << says(row("comb-30"));
}

TEST_F(OtherRows, WinterFoodPerNestCombIsLessThanAFullComb) {
    for (const char* id : {"zander", "dadant-blatt-10"})
        EXPECT_GT(fullKg(id), row("comb-31").published.value()) << says(row("comb-31"));
}

TEST_F(OtherRows, FourKilogramsIsTheLargestZanderComb) {
    // "Standard comb", size not said: too much for the common Zander comb, within the fill of the tallest.
    EXPECT_LT(fullKg("zander"), row("comb-36").published.value()) << says(row("comb-36"));
    EXPECT_NEAR(fullKg("zander-1.5") / row("comb-36").published.value(), 1, fillSd) << says(row("comb-36"));
}

TEST_F(OtherRows, AMediumCombLiesInItsPrintedRange) {
    const CombCheck& printed = row("comb-40");
    EXPECT_GE(fullKg("langstroth-medium"), printed.low.value()) << says(printed);
    EXPECT_LE(fullKg("langstroth-medium"), printed.high.value()) << says(printed);
}

TEST_F(OtherRows, WetCombsAreEmptyToTheRoundingOfARecord) {
    EXPECT_LT(row("comb-53").published.value() / 11, 0.1) << says(row("comb-53")); // honey left in each of eleven combs
}

TEST_F(OtherRows, AWideSectionHoldsMoreThanACombAndLessThanItsWidth) {
    // 52 mm is the wooden section; separators and the bees' way take some of it, how much is not printed.
    const CombCheck& section = row("comb-56");
    const auto kgAt = [&](double pitch) {
        return hive::honeyPerSquareDecimetre(millimetres(pitch), hive::phiSuper).value() * section.area.value();
    };
    EXPECT_LT(section.published.value(), kgAt(52)) << says(section);
    EXPECT_GT(section.published.value(), kgAt(38)) << says(section);
}

TEST_F(OtherRows, BeeBreadOfACombSide) {
    Comb side;
    side.format = format("zander");
    side.pollen = 0.5 / 8; // an eighth of one side of two
    EXPECT_NEAR(beeBreadOnCombs({side})->value() / row("comb-59").published.value(), 1, fillSd) << says(row("comb-59"));
    side.pollen = 0.5;
    const double inFrame = beeBreadOnCombs({side})->value() + row("comb-57").published.value();
    EXPECT_NEAR(inFrame / row("comb-60").published.value(), 1, fillSd) << says(row("comb-60"));
}

TEST_F(OtherRows, CellByCell) {
    // 400 cells per dm2 of one face, both faces.
    const double perArea = row("comb-65").published.value() * 800;
    EXPECT_NEAR(hive::honeyPerSquareDecimetre(millimetres(35), hive::phiComb).value() / perArea, 1, fillSd)
        << says(row("comb-65"));
}

} // namespace
} // namespace winterlarder::stores::comb_checks_test
