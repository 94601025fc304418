// SPDX-License-Identifier: GPL-3.0-or-later
// The words and numbers of the guide.
#include "app/invented.h"
#include "feeding/syrup.h"
#include "stores/bees.h"
#include "stores/evidence.h"
#include "stores/weighing.h"
#include "text/guide/guide.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

#include <fmt/format.h>
#include <set>

namespace winterlarder::text {

namespace {

const ReferenceData& reference() { return *desk::invented::shipped(); }

WordStyle styleIn(UnitSystem system) {
    WordStyle style;
    style.numbers.system = system;
    return style;
}

GuideReader keeperOf(const char* format, UnitSystem system = UnitSystem::Metric) {
    const auto* shipped = reference().format(format);
    return {reference(), styleIn(system), {{QString::fromStdString(shipped->name), hive::combFormat(*shipped)}}};
}

// What is read of a page: its paragraphs and points.
QString readOf(const GuideText& page) {
    QString all;
    for (const auto& part : page.parts) {
        if (const auto* paragraph = std::get_if<GuideParagraph>(&part)) all += paragraph->words + QLatin1Char('\n');
        if (const auto* point = std::get_if<GuidePoint>(&part))
            all += point->name + QLatin1Char(' ') + point->words + QLatin1Char('\n');
    }
    return all;
}

GuideTable tableOf(const GuideText& page) {
    for (const auto& part : page.parts)
        if (const auto* table = std::get_if<GuideTable>(&part)) return *table;
    throw std::runtime_error("no table");
}

qsizetype wordsIn(const QString& text) {
    return text.split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts).size();
}

} // namespace

TEST(Guide, EveryPageIsShortAndHasWordsAndOneOrTwoDrawings) {
    std::set<GuideDrawing> shown;
    for (const GuidePage id : allGuidePages) {
        const auto page = guideText(id, {reference(), {}});
        EXPECT_GE(wordsIn(readOf(page)), 130) << guideId(id);
        EXPECT_LE(wordsIn(readOf(page)), 260) << guideId(id);
        EXPECT_FALSE(page.title.isEmpty());
        int drawings = 0;
        for (const auto& part : page.parts)
            if (const auto* picture = std::get_if<GuidePicture>(&part)) {
                ++drawings;
                EXPECT_GT(wordsIn(picture->says), 5) << guideId(id);
                EXPECT_TRUE(shown.insert(picture->drawing).second) << guideId(id) << " shows a drawing of another page";
            }
        EXPECT_GE(drawings, 1) << guideId(id);
        EXPECT_LE(drawings, 2) << guideId(id);
    }
    EXPECT_EQ(shown.size(), allGuideDrawings.size()) << "a drawing no page shows";
}

TEST(Guide, EveryPlaceholderIsFilledInAllUnits) {
    for (const UnitSystem system : {UnitSystem::Metric, UnitSystem::UnitedStates, UnitSystem::Imperial})
        for (const GuidePage id : allGuidePages) {
            const auto page = guideText(id, keeperOf("national-deep", system));
            EXPECT_FALSE(readOf(page).contains(QRegularExpression(QStringLiteral("%[1-9]"))))
                << readOf(page).toStdString();
            if (system == UnitSystem::UnitedStates)
                EXPECT_FALSE(readOf(page).contains(QRegularExpression(QStringLiteral("[0-9] (kg|mm|\u00b0C|L)\\b"))))
                    << readOf(page).toStdString();
        }
}

TEST(Guide, PagesAreFoundByTheirNames) {
    std::set<std::string> names;
    for (const GuidePage id : allGuidePages) {
        EXPECT_EQ(guideCalled(guideId(id)), id);
        EXPECT_TRUE(names.insert(guideId(id)).second);
    }
    EXPECT_FALSE(guideCalled("nothing"));
}

TEST(Guide, SourcesAreShippedOnesAndNamedOnce) {
    for (const GuidePage id : allGuidePages) {
        const auto page = guideText(id, {reference(), {}});
        EXPECT_FALSE(page.sources.empty());
        std::set<std::string> once;
        for (const auto& source : page.sources) {
            EXPECT_NE(reference().source(source), nullptr) << source;
            EXPECT_TRUE(once.insert(source).second) << source;
        }
    }
}

TEST(Guide, NumbersOfRulesStandInTheirRows) {
    int seen = 0;
    for (const GuidePage id : allGuidePages)
        for (const auto& ruled : guideText(id, {reference(), {}}).rules) {
            const auto rule = std::find_if(reference().rules.begin(), reference().rules.end(),
                                           [&](const PublishedRule& each) { return each.id == ruled.rule; });
            ASSERT_NE(rule, reference().rules.end()) << ruled.rule;
            const QRegularExpression whole(
                QStringLiteral("(?<![0-9.])%1(?![0-9])").arg(QRegularExpression::escape(ruled.number)));
            EXPECT_TRUE(whole.match(QString::fromStdString(rule->value)).hasMatch())
                << ruled.rule << " says " << rule->value << ", not " << ruled.number.toStdString();
            ++seen;
        }
    EXPECT_GT(seen, 10);
}

TEST(Guide, WhatACombHoldsIsTheCoresForEveryHive) {
    const auto table = tableOf(guideText(GuidePage::FullComb, {reference(), {}}));
    ASSERT_EQ(table.rows.size(), reference().formats.size());
    for (std::size_t at = 0; at < table.rows.size(); ++at) {
        const auto format = hive::combFormat(reference().formats[at]);
        const Mass full = hive::fullComb(format, hive::phiFor(format.pitch, false));
        EXPECT_EQ(table.rows[at][0].toStdString(), reference().formats[at].name);
        EXPECT_EQ(table.rows[at][1].toStdString(), fmt::format("{:.1f} kg", full.value()));
        EXPECT_EQ(table.rows[at][2].toStdString(), fmt::format("{:.1f} kg", full.value() / 2));
        EXPECT_EQ(table.rows[at][3].toStdString(), fmt::format("{:.2f} kg", full.value() / 16))
            << "one field of eight, one face of two";
    }
}

TEST(Guide, TablesListOnlyTheReadersHivesUnlessAllAreWanted) {
    auto reader = keeperOf("zander");
    EXPECT_EQ(tableOf(guideText(GuidePage::FullComb, reader)).rows.size(), 1U);
    EXPECT_EQ(tableOf(guideText(GuidePage::Bees, reader)).rows.size(), 1U);
    reader.everyHive = true;
    EXPECT_EQ(tableOf(guideText(GuidePage::FullComb, reader)).rows.size(), reference().formats.size());
}

TEST(Guide, BeesOfASeamAreTheCores) {
    const auto table = tableOf(guideText(GuidePage::Bees, keeperOf("langstroth-deep")));
    const auto& format = *reference().format("langstroth-deep");
    EXPECT_EQ(QString(table.rows[0][1]).remove(QLatin1Char(',')).toDouble(), 2 * format.beesPerSide.count);
}

TEST(Guide, HowSureAWayIsIsWhatTheAnswersReckonWith) {
    const auto& k = reference().constants;
    stores::Comb seen;
    const auto percent = [](double share) { return fmt::format("{:.0f} %", 100 * share); };
    const auto rows = tableOf(guideText(GuidePage::When, {reference(), {}})).rows;
    EXPECT_EQ(rows[0][1].toStdString(), percent(stores::relativeSdOf(seen, stores::combSpreads(k))));
    EXPECT_EQ(rows[2][1].toStdString(), percent(k.quickCountSd));
    EXPECT_EQ(rows[3][1].toStdString(), fmt::format("{:.1f} kg", stores::weighedTareSd.value()));
    EXPECT_EQ(rows[5][1].toStdString(), percent(k.heftSd));
}

TEST(Guide, BothSidesMakeTheWeightTheCoreReads) {
    const QString words = readOf(guideText(GuidePage::Weight, {reference(), {}}));
    EXPECT_TRUE(words.contains(QStringLiteral("23.5 kg and 26.5 kg make 51.0 kg"))) << words.toStdString();
    EXPECT_NEAR((23.5 + 26.5) / stores::twoSidesRead, 51.0, 0.05);
    stores::HiveLoad load{stores::Tare{kilograms(10)}, {0}, Mass(0), {0}, Mass(0), Mass(0)};
    const auto read = stores::evidenceOfWeighing(stores::WeighingKind::TwoSidedLift, kilograms(50), load, false,
                                                 reference().constants, *Date::of(2026, 9, 1));
    EXPECT_NEAR(read.typical.value() + 10, 51.0, 0.05);
}

TEST(Guide, RecipesAreThoseOfTheCore) {
    const auto rows = tableOf(guideText(GuidePage::Feeding, {reference(), {}})).rows;
    ASSERT_EQ(rows.size(), 3U);
    for (const auto& row : rows) {
        const auto mixed = *feeding::mixForSugar(kilograms(5), *feeding::parseRatio(row[0].toStdString()));
        EXPECT_EQ(row[1].toStdString(), "5.0 kg");
        EXPECT_EQ(row[2].toStdString(), fmt::format("{:.1f} L", mixed.water.value()));
        EXPECT_EQ(row[3].toStdString(), fmt::format("{:.1f} L", mixed.volume.value()));
        EXPECT_EQ(row[4].toStdString(), fmt::format("{:.1f} kg", mixed.stores.value()));
    }
    EXPECT_EQ(tableOf(guideText(GuidePage::Feeding, {reference(), styleIn(UnitSystem::UnitedStates)}))
                  .rows[0][1]
                  .toStdString(),
              "10.0 lb");
}

TEST(Guide, SaysWhatMustNotBeMissing) {
    const auto said = [](GuidePage page, const char* words) {
        EXPECT_TRUE(readOf(guideText(page, {reference(), {}})).contains(QString::fromUtf8(words)))
            << guideId(page) << ": " << words;
    };
    for (const char* words : {"bee inspector", "vet", "Local codes", "under twelve months"})
        said(GuidePage::Winter, words);
    said(GuidePage::Weight, "the whole hive, never half of it");
    said(GuidePage::Cells, "bee inspector");
    said(GuidePage::Feeding, "the same evening");
    said(GuidePage::Feeding, "by weight");
    said(GuidePage::Opening, "15 \u00b0C");
}

} // namespace winterlarder::text
