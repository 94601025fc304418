// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/places.h"

#include <array>
#include <cmath>

namespace winterlarder::winter {

// The worked three-day example of the model: constant 6 degC, laying stops at -72, start -92, 10,000 bees, 2,100 cells.
TEST(CentralWinter, ThreeDaysAtSixDegrees) {
    const auto curve = climate::ClimateCurve::constant(celsius(6), 51.76, {4, 3, 0.8, 0.5});
    auto question = questionAt("gb-oxford", 10000, -92);
    question.curve = curve;
    question.season.broodStop = climate::SeasonDate{{-72}, 12};
    question.brood = BeeCount{2100};
    const auto run = simulateCentral(question, constants());
    struct Row {
        double eggs, brood, use, beesNext;
    };
    const std::array<Row, 3> rows{{{93.333, 2093.333, 69.882, 9931.333},
                                   {88.058, 2081.391, 69.676, 9867.067},
                                   {82.883, 2064.275, 69.443, 9807.087}}};
    for (int i = 0; i < 3; ++i) {
        const auto& day = run.means({-92 + i});
        const auto& row = rows[static_cast<std::size_t>(i)];
        EXPECT_NEAR(day.eggs, row.eggs, 0.001);
        EXPECT_NEAR(day.broodCells, row.brood, 0.001);
        EXPECT_NEAR(day.useG, row.use, 0.001);
        EXPECT_NEAR(run.means({-91 + i}).bees, row.beesNext, 0.001);
    }
    EXPECT_NEAR(usedBetween(run, -92, -90), 0.20900, 0.00001);
}

// The worked winter of Oxford, 13,000 bees on 1 October: printed digits held to half a unit of the last one, and 1 g in the sums.
TEST(CentralWinter, Oxford) {
    const auto run = simulateCentral(questionAt("gb-oxford", 13000, -92), constants());
    struct Row {
        int w;
        double t, eggs, bees, brood, adults, broodHeat, use, income, loss;
    };
    const std::array<Row, 15> rows{{
        {-92, 13.265, 121.33, 13000.0, 2548.0, 8.804, 2.575, 93.79, 0.00, 0.0938},
        {-91, 13.150, 114.41, 12902.9, 2541.1, 8.718, 2.584, 93.27, 0.00, 0.1871},
        {-72, 10.913, 0.00, 12028.5, 1228.8, 7.441, 1.759, 67.17, 0.00, 1.7414},
        {-60, 9.441, 0.00, 11952.0, 203.7, 6.783, 0.564, 49.98, 0.00, 2.4206},
        {-30, 6.171, 0.00, 11235.9, 0.0, 5.380, 0.000, 36.60, 0.00, 3.6498},
        {0, 5.084, 0.00, 10517.5, 0.0, 4.979, 0.000, 33.87, 0.00, 4.6937},
        {30, 5.190, 45.37, 9681.4, 683.5, 4.891, 1.478, 48.46, 0.00, 5.8723},
        {62, 6.571, 84.10, 9111.0, 1514.5, 5.078, 2.394, 61.22, 0.00, 7.6492},
        {63, 6.655, 97.83, 9100.7, 1552.3, 5.086, 2.426, 61.66, 0.00, 7.7109},
        {80, 7.969, 316.37, 8649.4, 4038.3, 5.305, 4.373, 98.88, 0.00, 9.0269},
        {100, 9.361, 545.40, 8145.0, 8830.7, 5.566, 6.981, 147.22, 31.67, 11.4258},
        {107, 9.964, 615.78, 8796.8, 10550.8, 5.985, 7.672, 168.87, 106.93, 12.0462},
        {108, 10.056, 624.05, 8915.1, 10789.7, 6.057, 7.758, 172.38, 122.20, 12.0964},
        {120, 11.293, 756.05, 10800.7, 13598.0, 7.191, 8.594, 199.43, 440.35, 11.0835},
        {140, 13.437, 1095.94, 15656.2, 19324.7, 10.679, 9.859, 272.87, 1135.01, -0.1241},
    }};
    for (const auto& row : rows) {
        SCOPED_TRACE(row.w);
        const auto& day = run.means({row.w});
        EXPECT_NEAR(day.temperatureC, row.t, 0.0006);
        EXPECT_NEAR(day.eggs, row.eggs, 0.006);
        EXPECT_NEAR(day.bees, row.bees, 0.06);
        EXPECT_NEAR(day.broodCells, row.brood, 0.06);
        EXPECT_NEAR(day.adultPowerW, row.adults, 0.0006);
        EXPECT_NEAR(day.broodPowerW, row.broodHeat, 0.0006);
        EXPECT_NEAR(day.useG, row.use, 0.006);
        EXPECT_NEAR(day.incomeG, row.income, 0.006);
        EXPECT_NEAR(run.netLoss({row.w})[0], row.loss, 0.0001);
    }
    const auto losses = lossesFrom(run, {-92}, {});
    EXPECT_NEAR(losses.largest[0], 12.153, 0.0006);
    EXPECT_NEAR(losses.used[0], 12.639, 0.0006);
}

namespace {

struct StationRow {
    const char* station;
    double bees;
    int start, forage;
    double use, largest, beesAtForage, broodAtForage, useMinus60, use0, use60;
};

} // namespace

// The worked table of eight stations: dates exact, amounts to 0.5 %.
TEST(CentralWinter, EightStations) {
    const std::array<StationRow, 8> rows{{
        {"gb-oxford", 13000, -92, 108, 12.639, 12.153, 8797, 10790, 49.98, 33.87, 60.51},
        {"se-stockholm", 14000, -92, 128, 10.872, 10.391, 8433, 5653, 36.84, 32.48, 59.79},
        {"de-jena", 14000, -92, 104, 10.357, 9.883, 8347, 6770, 41.62, 31.73, 58.52},
        {"ca-toronto", 20000, -92, 118, 14.255, 13.725, 12655, 5848, 55.87, 43.92, 76.17},
        {"ca-winnipeg", 20000, -92, 131, 15.937, 15.322, 12202, 6861, 47.16, 58.72, 89.02},
        {"us-ga-atlanta", 16000, -92, 64, 13.312, 12.373, 12446, 5415, 121.83, 46.11, 112.65},
        {"pt-lisbon", 14000, -92, 67, 18.400, 8.916, 13890, 5087, 161.69, 78.15, 107.90},
        {"au-melbourne", 16000, -91, 72, 12.765, 11.669, 11671, 4744, 96.99, 50.92, 83.43},
    }};
    for (const auto& row : rows) {
        SCOPED_TRACE(row.station);
        const auto question = questionAt(row.station, row.bees, row.start);
        const auto run = simulateCentral(question, constants());
        const auto losses = lossesFrom(run, {row.start}, {});
        const auto near = [](double value, double expected) { EXPECT_NEAR(value, expected, 0.005 * expected); };
        EXPECT_EQ(question.season.forage->day.w, row.forage);
        near(losses.used[0], row.use);
        near(losses.largest[0], row.largest);
        near(run.means({row.forage - 1}).bees, row.beesAtForage);
        near(run.means({row.forage}).broodCells, row.broodAtForage);
        near(run.means({-60}).useG, row.useMinus60);
        near(run.means({0}).useG, row.use0);
        near(run.means({60}).useG, row.use60);
    }
}

// An analytic twin: at a constant temperature, without brood or the reach of autumn, N falls by the same share every day and
// every bee (above the size law's mass, cold enough for the cold branch all day) eats the same, so use is a geometric sum.
TEST(CentralWinter, MeetsItsClosedForm) {
    auto question = questionAt("gb-oxford", 30000, -40);
    question.curve = climate::ClimateCurve::constant(celsius(-10), 51.76, {4, 3, 0.8, 0.5});
    question.season.broodStop = climate::SeasonDate{{-90}, 12};
    question.season.broodRestart = climate::SeasonDate{{60}, 20};
    question.season.buildup = climate::SeasonDate{{80}, 9};
    question.season.forage = climate::SeasonDate{{120}, 9};
    question.brood = BeeCount{0};
    const auto run = simulateCentral(question, constants());
    const auto& k = constants();
    const double perBee = k.clusterConductance * (k.coreTemperature + 10) * k.beeMass * 86400 / k.honeyEnergy / 1000;
    const double stays = 1 - k.winterDeath;
    const int days = 90; // bees stay above 1.5 kg / 0.115 g = 13,043
    const double expected = 30000 * perBee * (1 - std::pow(stays, days)) / (1 - stays);
    EXPECT_NEAR(usedBetween(run, -40, -40 + days - 1), expected, 1e-10 * expected);
    EXPECT_NEAR(run.means({-40 + days}).bees, 30000 * std::pow(stays, days), 1e-7);
}

TEST(CentralWinter, RefusesWhatTheModelCannotRun) {
    auto question = questionAt("gb-oxford", 13000, -92);
    question.start = {-154};
    EXPECT_THROW(simulateCentral(question, constants()), ContractViolation);
    question = questionAt("gb-oxford", 13000, -92);
    question.season.forage.reset();
    EXPECT_THROW(simulateCentral(question, constants()), ContractViolation);
    question = questionAt("gb-oxford", -1, -92);
    EXPECT_THROW(simulateCentral(question, constants()), ContractViolation);
}

} // namespace winterlarder::winter
