// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_sections.h"

#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

// Rounding of ten shares written with a few decimals never adds up to more.
constexpr double shareTolerance = 1e-9;

void checkShares(const book::CombRecord& comb, Position position, const std::string& path, CaseContext& context) {
    const double sum =
        comb.capped.value_or(0) + comb.open.value_or(0) + comb.brood.value_or(0) + comb.pollen.value_or(0);
    if (sum > 1 + shareTolerance)
        context.fault(position, fmt::format("the shares of {} add up to {:.6g}", path, sum),
                      "capped, open, brood and pollen together at most 1");
}

std::optional<book::CombRecord> readComb(const JsonValue& value, const std::string& path, CaseContext& context) {
    if (value.kind != JsonValue::Kind::Object) {
        context.wrongType(value, path, "a comb: {\"capped\": 0.5, \"open\": 0.1, ...}");
        return std::nullopt;
    }
    ObjectReader reader(value, path, "combs", context);
    book::CombRecord comb;
    comb.capped = reader.number("capped");
    comb.open = reader.number("open");
    comb.brood = reader.number("brood");
    comb.pollen = reader.number("pollen");
    if (const JsonValue* format = reader.find("format")) comb.format = checkedFormat(*format, "format", context);
    if (const auto width = reader.number("width_mm")) comb.width = millimetres(*width);
    comb.built = reader.number("built").value_or(1);
    comb.facesSeen = reader.integer("faces_seen").value_or(2);
    comb.throughWindow = reader.flag("through_window", false);
    comb.measured = reader.flag("measured", false);
    comb.inSuper = reader.flag("in_super", false);
    comb.fed = reader.flag("fed", false);
    comb.oldNest = reader.flag("old_nest", false);
    reader.finish();
    checkShares(comb, value.position, path, context);
    return comb;
}

book::CombsRecord quickCount(const JsonValue& value, CaseContext& context) {
    ObjectReader reader(value, "combs", "combs", context);
    book::QuickCountRecord quick;
    reader.demand("full_of_stores", "the number of combs full of stores; a list of combs is the other way to say it");
    quick.fullOfStores = reader.number("full_of_stores").value_or(0);
    quick.half = reader.number("half").value_or(0);
    quick.cappedShare = reader.number("capped_share").value_or(1);
    reader.finish();
    return quick;
}

} // namespace

book::BeesRecord readBees(const JsonValue& value, CaseContext& context) {
    ObjectReader reader(value, "bees", "bees", context);
    reader.oneOf({"count", "covered_combs", "seams"}, false, "one of count, covered_combs and seams");
    book::BeesRecord bees;
    bees.count = reader.number("count");
    bees.coveredCombs = reader.number("covered_combs");
    bees.seams = reader.number("seams");
    bees.logSd = reader.number("spread");
    bees.broodCells = reader.number("brood_cells");
    bees.kind = reader.choice("kind", beeKindWords);
    bees.queenSeen = reader.flag("queen_seen");
    bees.eggsSeen = reader.flag("eggs_seen");
    bees.trouble = reader.flag("trouble", false);
    bees.mitesCounted = reader.flag("mites_counted");
    bees.mitesPer100 = reader.number("mites_per_100_bees");
    bees.mitesTreated = reader.flag("mites_treated");
    bees.foodBeside = reader.flag("food_beside");
    bees.sure = reader.flag("sure", false);
    reader.finish();
    return bees;
}

book::CombsRecord readCombs(const JsonValue& value, CaseContext& context) {
    if (value.kind == JsonValue::Kind::Object) return quickCount(value, context);
    if (value.kind != JsonValue::Kind::List) {
        context.wrongType(value, "combs",
                          "a list of combs, or {\"full_of_stores\": ..., \"half\": ..., \"capped_share\": ...}");
        return std::monostate();
    }
    std::vector<book::CombRecord> combs;
    for (std::size_t i = 0; i < value.items.size(); ++i)
        combs.push_back(readComb(value.items[i], fmt::format("combs[{}]", i), context).value_or(book::CombRecord{}));
    return combs;
}

} // namespace winterlarder::exchange
