// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/step_words.h"

#include "book/form/row.h"
#include "text/field_words.h"

#include <gtest/gtest.h>

namespace winterlarder::text {

TEST(StepWords, TheWindowsOwnVerbsHaveWordsToo) {
    EXPECT_EQ(verbName("open case files").toStdString(), "case files opened");
    EXPECT_EQ(verbName("add look").toStdString(), "look added");
    EXPECT_EQ(verbName("eat honey").toStdString(), "eat honey");
}

TEST(StepWords, EveryColumnOfTheBookHasWords) {
    for (const auto& table : book::tables()) {
        for (const auto& column : table.columns)
            EXPECT_TRUE(hasFieldName(column.name)) << table.name << "." << column.name;
        for (const auto& list : table.lists)
            for (const auto& column : list.columns)
                EXPECT_TRUE(hasFieldName(list.name + ".0." + column.name)) << list.table << "." << column.name;
    }
    EXPECT_FALSE(hasFieldName("honeydew"));
}

TEST(StepWords, OneChangedValueIsNamed) {
    book::Step step;
    step.verb = "change comb";
    step.changes = {
        {book::Kind::Look, 1, book::ChangeHow::Change, {{"combs.3.capped", "0.6"}}, {{"combs.3.capped", "0.8"}}}};
    EXPECT_EQ(stepName(step, {}).toStdString(), "comb 4: capped 80 %");
    EXPECT_EQ(stepName(step, {.wording = {.frames = true}}).toStdString(), "frame 4: capped 80 %");
    EXPECT_EQ(stepLines(step, {}).join(QStringLiteral("|")).toStdString(), "comb 4: capped: from 60 % to 80 %");
    step.changes[0].after["combs.3.capped"] = std::nullopt;
    EXPECT_EQ(stepName(step, {}).toStdString(), "comb 4: capped taken out");
}

TEST(StepWords, ManyChangedValuesAreCounted) {
    book::Step step;
    step.verb = "change look";
    book::StepChange change{book::Kind::Look, 1, book::ChangeHow::Change, {}, {}};
    for (int i = 0; i < 9; ++i) {
        change.before["combs." + std::to_string(i) + ".capped"] = "0";
        change.after["combs." + std::to_string(i) + ".capped"] = "1";
    }
    step.changes = {change};
    EXPECT_EQ(stepName(step, {}).toStdString(), "look changed");
    const auto lines = stepLines(step, {}, 4);
    ASSERT_EQ(lines.size(), 5);
    EXPECT_EQ(lines.last().toStdString(), "and 5 more");
}

TEST(StepWords, ValuesHaveTheirUnits) {
    EXPECT_EQ(fieldValue("gross_kg", "41.5", {}).toStdString(), "41.5 kg");
    EXPECT_EQ(fieldValue("date", "\"2026-09-14\"", {}).toStdString(), "14 September 2026");
    EXPECT_EQ(fieldValue("bees_queen_seen", "1", {}).toStdString(), "yes");
    EXPECT_EQ(fieldValue("note", "\"a \\\"quoted\\\" word\"", {}).toStdString(), "a \"quoted\" word");
    WordStyle pounds;
    pounds.numbers.system = UnitSystem::Imperial;
    EXPECT_EQ(fieldValue("gross_kg", "10", pounds).toStdString(), "22.0 lb");
}

} // namespace winterlarder::text
