// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/shipped_files.h"

namespace winterlarder {

namespace {

constexpr auto cautionsFile = "rules/cautions.csv";
constexpr auto rulesFile = "rules/feeding.csv";

CautionRule::Kind kindFrom(const std::string& word) {
    if (word == "reason") return CautionRule::Kind::Reason;
    if (word == "refusal") return CautionRule::Kind::Refusal;
    return CautionRule::Kind::Caution;
}

} // namespace

std::vector<CautionRule> readCautions(ShippedFolder& folder, SourceUses& uses) {
    std::vector<CautionRule> cautions;
    auto table = folder.table(cautionsFile);
    if (!table) return cautions;
    CheckedTable checked(std::move(*table), {"id", "kind", "sources", "quality", "when"}, folder.problems);
    for (std::size_t row = 0; row < checked.rows(); ++row) {
        CautionRule caution;
        caution.id = checked.uniqueId(row, "id");
        caution.kind = kindFrom(checked.oneOf(row, "kind", {"caution", "reason", "refusal"}));
        checked.text(row, "sources");
        caution.sources = uses.refer(checked, row, "sources", cautionsFile);
        checked.oneOf(row, "quality", {"A", "B", "C"});
        checked.text(row, "when");
        cautions.push_back(std::move(caution));
    }
    return cautions;
}

std::vector<PublishedRule> readRules(ShippedFolder& folder, SourceUses& uses) {
    std::vector<PublishedRule> rules;
    auto table = folder.table(rulesFile);
    if (!table) return rules;
    CheckedTable checked(std::move(*table),
                         {"id", "topic", "region", "condition", "value", "unit", "source", "quality", "mark"},
                         folder.problems);
    for (std::size_t row = 0; row < checked.rows(); ++row) {
        PublishedRule rule;
        rule.id = checked.uniqueId(row, "id");
        rule.topic = checked.text(row, "topic");
        rule.region = checked.text(row, "region");
        rule.condition = checked.text(row, "condition");
        rule.value = checked.text(row, "value");
        rule.unit = checked.text(row, "unit");
        rule.source = checked.text(row, "source");
        uses.refer(checked, row, "source", rulesFile);
        rule.quality = checked.oneOf(row, "quality", {"A", "B", "C"}).front();
        rule.mark = checked.mark(row, "mark");
        rules.push_back(std::move(rule));
    }
    return rules;
}

} // namespace winterlarder
