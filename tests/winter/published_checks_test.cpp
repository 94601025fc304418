// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/csv_table.h"
#include "winter/check_row.h"
#include "winter/heat.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <map>

// Every row of shared/reference/winter_checks.csv: published facts the model is held against, with the tolerance each
// row states and
// its source printed on failure. A row the model misses carries the value the model does give; it is asserted to that
// value, and to be
// a miss, so that neither side can change unseen. README lists those rows as known disagreements.
namespace winterlarder::winter::published_checks_test {

namespace {

using Check = std::function<double()>;

climate::ClimateCurve forez() {
    const std::array<double, 12> means{2.8, 3.8, 7.2, 9.8, 14, 17.5, 20, 19.5, 16, 11.8, 6.4, 3.3};
    std::array<Temperature, 12> monthly{};
    for (std::size_t i = 0; i < 12; ++i) monthly[i] = celsius(means[i]);
    return climate::ClimateCurve::fromMonthlyMeans(monthly, 45.6, curveOf("fr-lyon").variability()).value();
}

DemandEnsemble central(WinterQuestion question, double offset = 0) {
    question.offset = kelvins(offset);
    return simulateCentral(question, constants());
}
DemandEnsemble central(const char* station, double bees, const char* start, double offset = 0) {
    const auto curve = curveOf(station);
    return central(questionAt(curve, bees, seasonDayOf(start, curve.hemisphere())), offset);
}

int day(const char* monthDay) { return seasonDayOf(monthDay, Hemisphere::North); }
double used(const DemandEnsemble& run, const char* from, const char* to) {
    return usedBetween(run, day(from), day(to));
}
double usedADay(const DemandEnsemble& run, const char* from, const char* to) {
    return 1000 * used(run, from, to) / (day(to) - day(from) + 1);
}

// P80 of the largest net loss + 4 kg: the stores to have.
double target(const climate::ClimateCurve& curve, double bees, const char* date) {
    const int start = seasonDayOf(date, curve.hemisphere());
    const auto ensemble = simulate(questionAt(curve, bees, start), constants(), {1, 8000}, 2); // standard error 0.08 kg
    return quantile(lossesFrom(*ensemble, {start}, {}).largest, 0.8) + 4;
}
double target(const char* station, double bees, const char* date) { return target(curveOf(station), bees, date); }

climate::SeasonDates season(const char* station) { return climate::deriveSeason(curveOf(station), constants()); }

double perBee(double bees, double t) {
    const auto power = hivePower({bees}, {0}, celsius(t), kelvins(constants().diurnalHalfRange), 1, 1, constants());
    return foodPerDay(power.total(), constants()).value() * 1e6 / bees;
}
double power(double bees, double t) {
    return hivePower({bees}, {0}, celsius(t), kelvins(constants().diurnalHalfRange), 1, 1, constants()).total().value();
}

bool perBeeUseFallsWithSize() {
    double before = 1e9;
    for (double bees = 2000; bees <= 40000; bees += 500) {
        const double now = perBee(bees, 2);
        if (now > before * (1 + 1e-12)) return false;
        if (bees > 18000 && std::abs(now / before - 1) > 1e-12) return false;
        before = now;
    }
    return true;
}

bool leastHeatBetweenZeroAndTen() {
    double best = 1e9, at = -99;
    for (double t = -25; t <= 15; t += 0.25)
        if (power(13000, t) < best) {
            best = power(13000, t);
            at = t;
        }
    return at > 0 && at < 10 && power(13000, 15) > best && power(13000, -25) > best;
}

DemandEnsemble forezWinter() { return central(questionAt(forez(), 10000, day("10-01"))); }

double monthlyPower(const DemandEnsemble& run, const char* from, const char* to) {
    double sum = 0;
    for (int w = day(from); w <= day(to); ++w) sum += run.means({w}).adultPowerW + run.means({w}).broodPowerW;
    return sum / (day(to) - day(from) + 1);
}

double warmerWinter() {
    auto question = questionAt("gb-oxford", 13000, -92);
    const auto forage = question.season.forage->day;
    const auto kept = [&](double offset) {
        auto asked = question;
        asked.season.buildup->exact = asked.season.forage->exact = true;
        return usedBetween(central(asked, offset), -92, forage.w - 1);
    };
    return kept(2) / kept(0) - 1;
}

double outdoorLessIndoor() {
    auto question = questionAt("ca-winnipeg", 20000, day("11-15"));
    const auto outdoor = central(question);
    question.curve =
        climate::ClimateCurve::constant(celsius(5), question.curve.latitude(), question.curve.variability());
    return used(outdoor, "11-15", "03-31") - used(central(question), "11-15", "03-31");
}

double mirroredOxford() {
    const Station station = *shipped().station("gb-oxford");
    std::array<Temperature, 12> rolled{};
    for (std::size_t i = 0; i < 12; ++i) rolled[i] = celsius(station.monthlyMeanC[(i + 6) % 12]);
    const auto north = curveOf("gb-oxford");
    const auto south = climate::ClimateCurve::fromMonthlyMeans(rolled, -station.latitude, north.variability()).value();
    const auto largest = [](const climate::ClimateCurve& curve) {
        return lossesFrom(central(questionAt(curve, 13000, -92)), {-92}, {}).largest[0];
    };
    return largest(south) / largest(north);
}

double pathDifference() {
    const auto ensemble = *simulate(questionAt("gb-oxford", 13000, -92), constants(), {1, 500});
    int starved = 0;
    for (std::size_t i = 0; i < 500; ++i) {
        bool dead = false;
        for (SeasonDay d = ensemble.firstDay(); d <= ensemble.lastDay(); d = d + 1)
            dead = dead || 14 - static_cast<double>(ensemble.netLoss(d)[i]) <= 0;
        starved += dead;
    }
    const auto losses = lossesFrom(ensemble, {-92}, {});
    return shareShort(losses.largest, kilograms(14), kilograms(0), kilograms(0), Short::Reached).share -
           starved / 500.0;
}

double worstMonthlyMean() {
    const Station station = *shipped().station("fr-bordeaux");
    const auto curve = curveOf("fr-bordeaux");
    const std::array<int, 12> lengths{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    double worst = 0;
    int start = 0;
    for (std::size_t m = 0; m < 12; ++m) {
        double sum = 0;
        for (int d = start; d < start + lengths[m]; ++d) sum += curve.normal({d >= 212 ? d - 365 : d}).value();
        worst = std::max(worst, std::abs(sum / lengths[m] - station.monthlyMeanC[m]));
        start += lengths[m];
    }
    return worst;
}

double monthEarlierBrood() {
    auto question = questionAt("lt-vilnius", 13000, day("10-01"));
    const auto withRestart = [&](int on) {
        auto asked = question;
        asked.season.broodRestart->day = {on};
        const auto run = central(asked);
        return usedBetween(run, day("10-01"), question.season.forage->day.w);
    };
    return withRestart(15) - withRestart(45);
}

double emptyHive() {
    const auto run = central(questionAt("gb-oxford", 0, -92));
    return usedBetween(run, run.firstDay().w, run.lastDay().w);
}

std::map<std::string, Check> heatChecks() {
    return {
        {"V01", [] { return foodPerDay(watts(1), constants()).value() * 1000; }},
        {"V02", [] { return power(1.2 / constants().beeMass, 2); }},
        {"V03a", [] { return perBee(4400, 12); }},
        {"V03b", [] { return perBee(8900, 12); }},
        {"V03c", [] { return perBee(34000, 12); }},
        {"V04", [] { return double(perBeeUseFallsWithSize()); }},
        {"V05", [] { return double(leastHeatBetweenZeroAndTen()); }},
        {"V06", [] { return (power(13100, -20) - power(13100, -15)) / 5 / (13100 * constants().beeMass); }},
    };
}

std::map<std::string, Check> useChecks() {
    std::map<std::string, Check> checks{
        {"V07", [] { return usedADay(central("dk-copenhagen", 12000, "11-01", 1.4), "11-01", "03-31"); }},
        {"V09-10", [] { return used(forezWinter(), "10-01", "10-31"); }},
        {"V09-11", [] { return used(forezWinter(), "11-01", "11-30"); }},
        {"V09-12", [] { return used(forezWinter(), "12-01", "12-31"); }},
        {"V09-01", [] { return used(forezWinter(), "01-01", "01-31"); }},
        {"V09-02", [] { return used(forezWinter(), "02-01", "02-28"); }},
        {"V09-03", [] { return used(forezWinter(), "03-01", "03-31"); }},
        {"V09-04", [] { return used(forezWinter(), "04-01", "04-30"); }},
        {"V09-sum", [] { return used(forezWinter(), "10-01", "04-30"); }},
        {"V14", [] { return monthlyPower(central("cz-prague", 12000, "10-01"), "12-01", "12-31"); }},
        {"V15", [] { return 1 - central("de-frankfurt", 12000, "10-15").means({day("03-15")}).bees / 12000; }},
        {"V18", [] { return central("de-jena", 10000, "10-01").means(season("de-jena").buildup->day - 1).broodCells; }},
        {"V25", warmerWinter},
        {"V26", [] { return used(central("us-nc-asheville", 10000, "11-10"), "11-10", "01-14"); }},
        {"V27", [] { return used(central("us-mn-minneapolis", 30000, "10-01"), "01-01", "01-31"); }},
        {"V28", [] { return used(central("hr-zagreb", 12000, "10-01"), "12-01", "12-31"); }},
        {"V29", [] { return used(central("us-ny-albany", 16000, "10-01"), "10-01", "04-15"); }},
        {"V30", outdoorLessIndoor},
        {"V31", [] { return used(central("dk-copenhagen", 12000, "10-01"), "10-01", "10-31"); }},
        {"N24b", monthEarlierBrood},
    };
    return checks;
}

std::map<std::string, Check> otherChecks() {
    const auto gap = [](const char* station) {
        const auto s = season(station);
        return double(s.broodRestart->day - s.broodStop->day);
    };
    return {
        {"V19a", [=] { return gap("us-al-montgomery") - 21; }},
        {"V19b", [=] { return gap("us-wi-madison") - 21; }},
        {"N34", [=] { return gap("au-canberra"); }},
        {"V20", [] { return target("gb-oxford", 13000, "10-01"); }},
        {"R08", [] { return target(forez(), 10000, "10-01"); }},
    };
}

std::map<std::string, Check> propertyChecks() {
    return {
        {"P01", mirroredOxford},
        {"P02", emptyHive},
        {"P03", pathDifference},
        {"P04", worstMonthlyMean},
        {"P05", [] { return climate::dayLength(51.5, 171).value(); }},
    };
}

// Rows of a form of their own; all others say in their inputs what is to be computed (check_row.h).
std::map<std::string, Check> checksApart() {
    auto checks = heatChecks();
    for (auto&& part : {useChecks(), otherChecks(), propertyChecks()}) checks.insert(part.begin(), part.end());
    return checks;
}

struct Bounds {
    double low, high;
};

// "true"; "a..b" with "range"; a number with "+-x" or "x%".
Bounds boundsOf(const std::string& expected, const std::string& tolerance) {
    if (expected == "true") return {1, 1};
    if (const auto dots = expected.find(".."); dots != std::string::npos)
        return {std::stod(expected.substr(0, dots)), std::stod(expected.substr(dots + 2))};
    const double value = std::stod(expected);
    if (tolerance.back() == '%') {
        const double share = std::abs(value) * std::stod(tolerance.substr(0, tolerance.size() - 1)) / 100;
        return {value - share, value + share};
    }
    if (tolerance.rfind("+-", 0) != 0) throw std::runtime_error("tolerance '" + tolerance + "' is not understood");
    const double width = std::stod(tolerance.substr(2));
    return {value - width, value + width};
}

// Drawn winters of another compiler or processor lie within 1 % of the recorded value, noiseless ones within the
// digits recorded.
double recordedTolerance(bool ensemble) { return ensemble ? 0.01 : 0.001; }

} // namespace

TEST(PublishedChecks, EveryRow) {
    const auto table = CsvTable::read(std::string(SHARED_FOLDER) + "/reference/winter_checks.csv");
    ASSERT_TRUE(table) << describe(table.problems().front());
    const auto checks = checksApart();
    const bool showing = std::getenv("WINTERLARDER_SHOW_CHECKS") != nullptr; // id and value of every row
    std::size_t done = 0;
    for (std::size_t row = 0; row < table->rows(); ++row) {
        const auto text = [&](const char* column) { return table->cell(row, column).text; };
        const std::string id = text("id");
        SCOPED_TRACE(id + ": " + text("description") + " [" + text("source") + ", " + text("mark") + "]");
        const auto apart = checks.find(id);
        const auto usual = apart == checks.end()
                               ? valueOf(checkRow(id, text("description"), text("inputs"), text("quantity")))
                               : std::nullopt;
        if (apart == checks.end() && !usual) {
            ADD_FAILURE() << "no computation for this row";
            continue;
        }
        const bool ensemble = usual ? usual->ensemble : id == "V20" || id == "R08";
        const double value = usual ? usual->value : apart->second();
        if (showing) std::printf("%s,%.7g\n", id.c_str(), value);
        done += apart != checks.end();
        const Bounds bounds = boundsOf(text("expected"), text("tolerance"));
        const std::string recorded = text("known_disagreement");
        if (recorded.empty()) {
            EXPECT_GE(value, bounds.low);
            EXPECT_LE(value, bounds.high);
        } else {
            const double known = std::stod(recorded);
            EXPECT_NEAR(value, known, recordedTolerance(ensemble) * std::abs(known));
            EXPECT_TRUE(value < bounds.low || value > bounds.high) << value << " is no disagreement any more";
        }
    }
    EXPECT_EQ(done, checks.size()) << "a computation without a row";
}

} // namespace winterlarder::winter::published_checks_test
