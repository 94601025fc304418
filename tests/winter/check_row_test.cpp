// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/check_row.h"

#include <algorithm>
#include <array>
#include <map>
#include <regex>

namespace winterlarder::winter {

namespace {

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(' '), last = text.find_last_not_of(' ');
    return first == std::string::npos ? "" : text.substr(first, last - first + 1);
}

climate::ClimateCurve curveFor(const CheckRow& row) {
    const auto curve = curveOf(row.after("station=").value());
    const auto constant = row.number("constant normal ");
    return constant ? climate::ClimateCurve::constant(celsius(*constant), curve.latitude(), curve.variability())
                    : curve;
}

// bees=13000 on 10-01, or bees=13000 with start w=-92.
WinterQuestion questionFor(const CheckRow& row) {
    const auto curve = curveFor(row);
    const std::string bees = row.after("bees=").value();
    const auto on = bees.find(" on ");
    const int start = on != std::string::npos ? seasonDayOf(bees.substr(on + 4, 5), curve.hemisphere())
                                              : static_cast<int>(row.number("start w=").value());
    auto question = questionAt(curve, std::stod(bees), start);
    question.season = climate::deriveSeason(curveOf(row.after("station=").value()), constants());
    if (const auto brood = row.number("brood=")) question.brood = BeeCount{*brood};
    question.offset = kelvins(row.number("O=").value_or(0));
    return question;
}

int northDay(const std::string& monthDay) { return seasonDayOf(monthDay, Hemisphere::North); }

// Food eaten over the days a row names [kg]; with `days` their number.
std::optional<double> useOver(const CheckRow& row, const DemandEnsemble& run, double& days) {
    const std::regex span(R"((sum|mean) (\d\d-\d\d)\.\.(\d\d-\d\d))");
    constexpr std::array<int, 12> lengths{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    for (const auto& part : row.parts) {
        std::smatch found;
        int first = 0, last = 0;
        if (std::regex_match(part, found, span)) {
            first = northDay(found[2]), last = northDay(found[3]);
        } else if (const auto month = row.number("sum of month "); month && part.rfind("sum of month ", 0) == 0) {
            const std::string number = (*month < 10 ? "0" : "") + std::to_string(static_cast<int>(*month));
            first = northDay(number + "-01"), last = first + lengths[static_cast<std::size_t>(*month) - 1] - 1;
        } else {
            continue;
        }
        days = last - first + 1;
        return usedBetween(run, first, last);
    }
    return std::nullopt;
}

std::optional<double> useIn(const CheckRow& row) {
    constexpr std::array units{"kg", "g/day", "kg/week", "kg/month"};
    if (std::find(units.begin(), units.end(), row.quantity) == units.end()) return std::nullopt;
    double days = 1;
    const auto kg = useOver(row, simulateCentral(questionFor(row), constants()), days);
    if (!kg || row.quantity == "kg") return kg;
    const double perDay = *kg / days;
    return row.quantity == "g/day" ? 1000 * perDay : row.quantity == "kg/week" ? 7 * perDay : 30.4 * perDay;
}

// "N on 11-15", "N0", "B on 09-15".
double countOn(const std::string& what, const DemandEnsemble& run, double seen) {
    if (what == "N0") return seen;
    const auto& day = run.means({northDay(what.substr(5, 5))});
    return what[0] == 'N' ? day.bees : day.broodCells;
}

std::optional<double> countsIn(const CheckRow& row) {
    const std::regex form(R"(((?:N|B) on \d\d-\d\d)(?: / ((?:N|B) on \d\d-\d\d|N0))?)");
    for (const auto& part : row.parts) {
        std::smatch found;
        if (!std::regex_match(part, found, form)) continue;
        const auto question = questionFor(row);
        const auto run = simulateCentral(question, constants());
        const double above = countOn(found[1], run, question.bees.count);
        return found[2].matched ? above / countOn(found[2], run, question.bees.count) : above;
    }
    return std::nullopt;
}

std::optional<double> dateIn(const CheckRow& row) {
    const std::regex described(R"(season rule (\w+): .*)"), asked(R"(rule (\w+)(?: - 5 d/K x ([\d.]+) K)?)");
    const std::map<std::string, std::optional<climate::SeasonDate> climate::SeasonDates::*> rules{
        {"forage", &climate::SeasonDates::forage},      {"spring", &climate::SeasonDates::buildup},
        {"off", &climate::SeasonDates::broodStop},      {"on", &climate::SeasonDates::broodRestart},
        {"end", &climate::SeasonDates::lastIncome},     {"feed_by", &climate::SeasonDates::feedAdvisedBy},
        {"syrup", &climate::SeasonDates::syrupDeadline}};
    const auto season = climate::deriveSeason(curveOf(row.after("station=").value()), constants());
    std::smatch found;
    if (std::regex_match(row.description, found, described)) return (season.*rules.at(found[1]))->day.w;
    for (const auto& part : row.parts)
        if (std::regex_match(part, found, asked)) {
            const double warmer = found[2].matched ? std::stod(found[2]) : 0;
            return (season.*rules.at(found[1]))->day.w - constants().springShift * warmer;
        }
    return std::nullopt;
}

const WinterLosses& lossesOf(const CheckRow& row, int winters) {
    static std::map<std::string, WinterLosses> known;
    std::string key = std::to_string(winters);
    for (const auto& part : row.parts) key += ';' + part;
    const auto found = known.find(key);
    if (found != known.end()) return found->second;
    const auto question = questionFor(row);
    return known[key] = lossesFrom(*simulate(question, constants(), {1, winters}, 2), question.start, {});
}

// P80 of the largest net loss + 4 kg: the stores to have. Standard error 0.08 kg.
std::optional<double> storesToHave(const CheckRow& row) {
    if (row.description.find("P80") == std::string::npos || row.quantity != "kg") return std::nullopt;
    return quantile(lossesOf(row, 8000).largest, 0.8) + 4;
}

std::optional<double> workedEnsemble(const CheckRow& row) {
    const std::regex form(R"(P(\d\d) of largest net loss kg)");
    std::smatch found;
    if (!std::regex_match(row.quantity, found, form)) return std::nullopt;
    return quantile(lossesOf(row, 2500).largest, std::stod(found[1]) / 100);
}

std::optional<double> meanBrood(const CheckRow& row) {
    const auto day = row.after("ensemble mean of B on ");
    if (!day) return std::nullopt;
    return simulate(questionFor(row), constants(), {1, 2500}, 2)->means({northDay(*day)}).broodCells;
}

std::optional<double> workedRun(const CheckRow& row) {
    const std::regex form(R"((bees|long-lived bees|brood) on w=(-?\d+))");
    const auto question = questionFor(row);
    const SeasonDay forage = question.season.forage->day;
    const auto run = simulateCentral(question, constants());
    const auto losses = lossesFrom(run, question.start, {});
    std::smatch found;
    if (row.quantity == "forage day w") return forage.w;
    if (row.quantity == "use to forage kg") return losses.used[0];
    if (row.quantity == "largest net loss kg") return losses.largest[0];
    if (row.quantity == "bees at forage") return run.means(forage - 1).bees;
    if (!std::regex_match(row.quantity, found, form)) return std::nullopt;
    const auto& day = run.means({std::stoi(found[2])});
    return found[1] == "bees" ? day.bees : found[1] == "brood" ? day.broodCells : day.longLivedBees;
}

} // namespace

std::optional<std::string> CheckRow::after(std::string_view beginning) const {
    for (const auto& part : parts)
        if (part.rfind(beginning, 0) == 0) return part.substr(beginning.size());
    return std::nullopt;
}

std::optional<double> CheckRow::number(std::string_view beginning) const {
    const auto text = after(beginning);
    return text ? std::optional(std::stod(*text)) : std::nullopt;
}

bool CheckRow::says(std::string_view part) const { return std::find(parts.begin(), parts.end(), part) != parts.end(); }

CheckRow checkRow(const std::string& id, const std::string& description, const std::string& inputs,
                  const std::string& quantity) {
    CheckRow row{id, description, quantity, {}};
    std::size_t from = 0;
    while (from <= inputs.size()) {
        const std::size_t to = std::min(inputs.find(';', from), inputs.size());
        row.parts.push_back(trimmed(inputs.substr(from, to - from)));
        from = to + 1;
    }
    return row;
}

std::optional<CheckValue> valueOf(const CheckRow& row) {
    if (!row.after("station=")) return std::nullopt;
    if (row.quantity == "day w") {
        if (const auto value = dateIn(row)) return CheckValue{*value};
        return std::nullopt;
    }
    if (!row.after("bees=")) return std::nullopt;
    for (const auto drawn : {storesToHave, workedEnsemble, meanBrood})
        if (const auto value = drawn(row)) return CheckValue{*value, true};
    for (const auto noiseless : {useIn, countsIn, workedRun})
        if (const auto value = noiseless(row)) return CheckValue{*value};
    return std::nullopt;
}

TEST(CheckRow, IsTakenApart) {
    const auto row = checkRow("X", "", "station=gb-oxford; bees=13000 on 10-01;O=-0.5 K (spring);no income", "kg");
    EXPECT_EQ(row.after("station="), "gb-oxford");
    EXPECT_EQ(row.number("O="), -0.5);
    EXPECT_TRUE(row.says("no income"));
    EXPECT_FALSE(row.says("no"));
    EXPECT_EQ(row.number("brood="), std::nullopt);
}

TEST(CheckRow, OfAnUnknownFormHasNoValue) {
    EXPECT_FALSE(valueOf(checkRow("X", "", "station=gb-oxford;bees=13000 on 10-01", "furlongs")));
    EXPECT_FALSE(valueOf(checkRow("X", "", "N0=0", "kg")));
}

} // namespace winterlarder::winter
