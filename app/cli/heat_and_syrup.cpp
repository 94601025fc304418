// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/bees_of_case.h"
#include "answer/hive_of_case.h"
#include "answer/json_values.h"
#include "book/entries/words.h"
#include "cli/commands.h"
#include "cli/table.h"
#include "exchange/json/suggestion.h"
#include "feeding/syrup.h"
#include "text/contexts.h"
#include "winter/heat.h"

#include <cmath>
#include <fmt/format.h>

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

using exchange::Json;

void checkRange(const char* option, double value, NumberRange allowed, Problems& problems) {
    if (allowed.holds(value)) return;
    problems.push_back(argumentProblem(fmt::format("{} is {}", option,
                                                   std::isfinite(value) ? exchange::shortestNumber(value)
                                                                        : fmt::format("{}, which is no number", value)),
                                       fmt::format("a number from {} to {}", allowed.least, allowed.most)));
}

// ---- heat -----------------------------------------------------------------------------------------------------------

struct Warmth {
    winter::HivePower power;
    Mass food;
    double bees, beeMass;
};

Json heatJson(const Warmth& warmth) {
    const double grams = warmth.food.value() * 1000;
    const bool any = warmth.bees > 0;
    return Json::object()
        .add("power_w", warmth.power.total().value())
        .add("adult_power_w", warmth.power.adults.value())
        .add("brood_power_w", warmth.power.brood.value())
        .add("food_g_per_day", grams)
        .add("food_mg_per_bee_per_day", any ? Json(grams * 1000 / warmth.bees) : Json())
        .add("power_w_per_kg_bees", any ? Json(warmth.power.total().value() / (warmth.bees * warmth.beeMass)) : Json());
}

QString heatText(const Warmth& warmth, const text::WordStyle& style) {
    const auto watts = [&](Power power) { return QString::fromStdString(format(power, style.numbers, 2)); };
    const double grams = warmth.food.value() * 1000;
    FactList facts;
    facts.add(say::CommandLine::tr("Power"), watts(warmth.power.total()));
    facts.add(say::CommandLine::tr("  adult bees"), watts(warmth.power.adults));
    facts.add(say::CommandLine::tr("  brood nest"), watts(warmth.power.brood));
    facts.add(say::CommandLine::tr("Food"), say::CommandLine::tr("%1 g a day").arg(text::number(grams, 1, style)));
    if (warmth.bees > 0) {
        facts.add(say::CommandLine::tr("Food for each bee"),
                  say::CommandLine::tr("%1 mg a day").arg(text::number(grams * 1000 / warmth.bees, 2, style)));
        facts.add(say::CommandLine::tr("Power for each kg of bees"),
                  say::CommandLine::tr("%1 W").arg(
                      text::number(warmth.power.total().value() / (warmth.bees * warmth.beeMass), 2, style)));
    }
    return facts.text();
}

// ---- syrup ----------------------------------------------------------------------------------------------------------

std::optional<feeding::RatioBasis> basisOf(const std::string& word) {
    if (word == "mass") return feeding::RatioBasis::ByMass;
    if (word == "volume") return feeding::RatioBasis::ByVolume;
    if (word == "kg-l") return feeding::RatioBasis::KgPerL;
    return std::nullopt;
}

Outcome<feeding::Syrup> mix(const SyrupOptions& options, const feeding::Ratio& ratio) {
    if (options.sugarKg) return feeding::mixForSugar(kilograms(*options.sugarKg), ratio);
    return feeding::mixForStores(kilograms(*options.storesKg), ratio);
}

Problems atArguments(Problems problems) {
    for (Problem& problem : problems) problem.place = {"winterlarder-cli", 0, 0};
    return problems;
}

Problems syrupArgumentProblems(const SyrupOptions& options) {
    Problems problems;
    if (options.sugarKg.has_value() == options.storesKg.has_value())
        problems.push_back(argumentProblem("--sugar and --stores", "exactly one of the two"));
    if (options.sugarKg) checkRange("--sugar", *options.sugarKg, {0, 10000}, problems);
    if (options.storesKg) checkRange("--stores", *options.storesKg, {0, 10000}, problems);
    if (!basisOf(options.basis))
        problems.push_back(argumentProblem(fmt::format("--by is {}", options.basis),
                                           exchange::suggestion(options.basis, {"mass", "volume", "kg-l"})));
    return problems;
}

Json syrupJson(const feeding::Syrup& syrup) {
    return Json::object()
        .add("sugar_kg", json(syrup.sugar))
        .add("water_l", syrup.water.value())
        .add("syrup_kg", json(syrup.mass))
        .add("syrup_l", syrup.volume.value())
        .add("mass_percent", syrup.massPercent)
        .add("density_kg_per_l", syrup.densityKgPerL)
        .add("stores_kg", json(syrup.stores));
}

QString syrupText(const feeding::Syrup& syrup, const feeding::Ratio& ratio, const text::WordStyle& style) {
    const auto kg = [&](Mass mass) { return QString::fromStdString(format(mass, style.numbers, 2)); };
    const auto l = [&](Volume volume) { return QString::fromStdString(format(volume, style.numbers, 2)); };
    FactList facts;
    facts.add(say::CommandLine::tr("Ratio"),
              say::CommandLine::tr("%1 sugar to water, by mass").arg(QString::fromStdString(ratio.printed)));
    facts.add(say::CommandLine::tr("Sugar"), kg(syrup.sugar));
    facts.add(say::CommandLine::tr("Water"), l(syrup.water));
    facts.add(say::CommandLine::tr("Syrup"), say::CommandLine::tr("%1, %2").arg(l(syrup.volume), kg(syrup.mass)));
    facts.add(say::CommandLine::tr("Strength"),
              say::CommandLine::tr("%1 % sugar by mass, %2 kg/L at 20 °C")
                  .arg(text::number(syrup.massPercent, 1, style), text::number(syrup.densityKgPerL, 4, style)));
    facts.add(say::CommandLine::tr("Stores gained"), say::CommandLine::tr("%1, ripened").arg(kg(syrup.stores)));
    return facts.text();
}

} // namespace

Status heat(Session& session, const HeatOptions& options) {
    Problems problems;
    const ReferenceData& fields = session.reference;
    checkRange("--bees", options.bees, fields.range("bees.count"), problems);
    checkRange("--temperature", options.temperatureC, fields.range("site.monthly_mean_c"), problems);
    checkRange("--brood", options.broodCells, fields.range("bees.brood_cells"), problems);
    const auto shell = book::choiceOf<book::Shell>(options.shell);
    if (!shell)
        problems.push_back(argumentProblem(fmt::format("--shell is {}", options.shell),
                                           exchange::suggestion(options.shell, book::allWords<book::Shell>())));
    const auto kind = book::choiceOf<book::BeeKind>(options.kind);
    if (!kind)
        problems.push_back(argumentProblem(fmt::format("--kind is {}", options.kind),
                                           exchange::suggestion(options.kind, book::allWords<book::BeeKind>())));
    if (!problems.empty()) return session.fail(problems);
    const ModelConstants& k = session.reference.constants;
    const auto power =
        winter::hivePower({options.bees}, {options.broodCells}, celsius(options.temperatureC),
                          kelvins(options.steady ? 0 : k.diurnalHalfRange),
                          answer::shellFactor(*shell, options.topInsulation, k), answer::raceFactor(kind, k), k);
    const Warmth warmth{power, winter::foodPerDay(power.total(), k), options.bees, k.beeMass};
    if (session.json) session.print(heatJson(warmth));
    else session.print(heatText(warmth, session.style));
    return Status::Done;
}

Status syrup(Session& session, const SyrupOptions& options) {
    Problems problems = syrupArgumentProblems(options);
    const auto ratio = feeding::parseRatio(options.ratio, basisOf(options.basis).value_or(feeding::RatioBasis::ByMass));
    if (!ratio)
        for (Problem problem : atArguments(ratio.problems())) {
            problem.detail = fmt::format("--ratio {}: {}", options.ratio, problem.detail);
            problems.push_back(std::move(problem));
        }
    if (!problems.empty()) return session.fail(problems);
    const auto mixed = mix(options, *ratio);
    if (!mixed) return session.fail(atArguments(mixed.problems()));
    if (session.json) session.print(syrupJson(*mixed));
    else session.print(syrupText(*mixed, *ratio, session.style));
    return Status::Done;
}

} // namespace winterlarder::cli
