// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/places.h"

#include <array>
#include <cmath>

namespace winterlarder::winter::central_test {

namespace {

// One day of a worked example: the state used that day, bees at its start; the net loss at its end.
struct WorkedDay {
    int w;
    double t, eggs, shortLived, longLived, bees, brood, adults, broodHeat, use, income, loss;
};

// Printed digits held to half a unit of the last one, and to 1 g in the sums.
void expectDay(const DemandEnsemble& run, const WorkedDay& row) {
    SCOPED_TRACE(row.w);
    const auto& day = run.means({row.w});
    EXPECT_NEAR(day.temperatureC, row.t, 0.0006);
    EXPECT_NEAR(day.eggs, row.eggs, 0.006);
    EXPECT_NEAR(day.bees - day.longLivedBees, row.shortLived, 0.11);
    EXPECT_NEAR(day.longLivedBees, row.longLived, 0.06);
    EXPECT_NEAR(day.bees, row.bees, 0.06);
    EXPECT_NEAR(day.broodCells, row.brood, 0.06);
    EXPECT_NEAR(day.adultPowerW, row.adults, 0.0006);
    EXPECT_NEAR(day.broodPowerW, row.broodHeat, 0.0006);
    EXPECT_NEAR(day.useG, row.use, 0.006);
    EXPECT_NEAR(day.incomeG, row.income, 0.006);
    EXPECT_NEAR(run.netLoss({row.w})[0], row.loss, 0.0001);
}

} // namespace

namespace {

// The worked examples carry the weight of a count of brood, 0.0625 / 0.185, as 0.338.
ModelConstants asPrinted() {
    ModelConstants k = constants();
    k.broodCountSd = k.broodSd * std::sqrt(1 / 0.338 - 1);
    return k;
}

} // namespace

// The worked three-day example of the model: constant 6 degC, laying stops at -72, start -92, 10,000 bees, 2,100
// cells, no income.
TEST(CentralWinter, ThreeDaysAtSixDegrees) {
    const auto curve = climate::ClimateCurve::constant(celsius(6), 51.76, {4, 3, 0.8, 0.5});
    auto question = questionAt("gb-oxford", 10000, -92);
    question.curve = curve;
    question.season.broodStop = climate::SeasonDate{{-72}, 12};
    question.brood = BeeCount{2100};
    const auto run = simulateCentral(question, asPrinted());
    struct Row {
        double eggs, brood, use, beesNext;
    };
    const std::array<Row, 3> rows{{{101.073, 2839.686, 64.735, 9920.074},
                                   {95.252, 2798.007, 64.437, 9843.276},
                                   {89.540, 2750.617, 64.119, 9769.804}}};
    for (int i = 0; i < 3; ++i) {
        const auto& day = run.means({-92 + i});
        const auto& row = rows[static_cast<std::size_t>(i)];
        EXPECT_NEAR(day.eggs, row.eggs, 0.0006);
        EXPECT_NEAR(day.broodCells, row.brood, 0.0006);
        EXPECT_NEAR(day.useG, row.use, 0.0006);
        EXPECT_NEAR(run.means({-91 + i}).bees, row.beesNext, 0.0006);
    }
    EXPECT_NEAR(run.means({-92}).longLivedBees, 4032.258, 0.0006);
    EXPECT_NEAR(run.means({-91}).longLivedBees, 4039.363, 0.0006);
    EXPECT_NEAR(run.means({-92}).adultPowerW, 4.9844, 0.00006);
    EXPECT_NEAR(run.means({-92}).broodPowerW, 2.6290, 0.00006);
    EXPECT_NEAR(usedBetween(run, -92, -90), 0.19329, 0.00001);
}

// The worked winter of Oxford, 13,000 bees on 1 October.
TEST(CentralWinter, Oxford) {
    const auto run = simulateCentral(questionAt("gb-oxford", 13000, -92), constants());
    const std::array<WorkedDay, 15> rows{{
        {-92, 13.265, 162.50, 7758.1, 5241.9, 13000.0, 5037.5, 8.266, 2.871, 98.80, 45.63, 0.0532},
        {-91, 13.150, 153.16, 7675.5, 5222.3, 12897.8, 4946.9, 8.151, 2.851, 97.88, 44.28, 0.1068},
        {-72, 10.913, 0.00, 6550.5, 5746.7, 12297.2, 1644.7, 6.910, 1.512, 61.60, 0.00, 1.5075},
        {-60, 9.441, 0.00, 5755.3, 6422.1, 12177.4, 273.9, 6.024, 0.486, 44.29, 0.00, 2.1302},
        {-30, 6.171, 0.00, 3986.7, 6272.8, 10259.5, 0.0, 4.356, 0.000, 29.64, 0.00, 3.1599},
        {0, 5.084, 0.00, 2744.0, 5907.1, 8651.1, 0.0, 3.850, 0.000, 26.19, 0.00, 3.9841},
        {30, 5.190, 122.58, 1552.7, 5233.3, 6786.0, 1891.9, 4.133, 2.062, 52.11, 0.00, 5.0910},
        {62, 6.571, 233.48, 2889.4, 3434.1, 6323.5, 4119.6, 4.092, 3.302, 70.16, 0.00, 7.0490},
        {63, 6.655, 253.42, 2967.6, 3365.9, 6333.5, 4212.1, 4.100, 3.341, 70.84, 0.00, 7.1198},
        {80, 7.969, 503.61, 4489.5, 2316.0, 6805.5, 8065.9, 4.321, 4.908, 108.65, 0.00, 8.6005},
        {100, 9.361, 732.53, 8414.8, 1484.3, 9899.1, 12376.9, 5.496, 6.187, 138.72, 38.49, 10.9221},
        {107, 9.964, 850.42, 10221.9, 1270.2, 11492.1, 14366.0, 6.135, 6.670, 157.97, 139.69, 11.3359},
        {108, 10.056, 867.11, 10475.3, 1242.3, 11717.6, 14693.7, 6.288, 6.746, 161.13, 160.62, 11.3364},
        {120, 11.293, 1099.12, 13901.7, 951.2, 14852.9, 19035.9, 8.512, 7.611, 201.64, 605.56, 9.1186},
        {140, 13.437, 1200.00, 22009.9, 609.6, 22619.5, 24936.4, 14.518, 8.270, 268.43, 1639.82, -8.5030},
    }};
    for (const auto& row : rows) expectDay(run, row);
    const auto losses = lossesFrom(run, {-92}, {});
    EXPECT_NEAR(losses.largest[0], 11.336, 0.0006);
    EXPECT_NEAR(losses.used[0], 12.261, 0.0006);
}

// The worked early look: Oxford, 17,500 bees and 16,000 cells on 5 September. Until 26 September every emerging bee
// is short-lived.
TEST(CentralWinter, OxfordOnTheFifthOfSeptember) {
    auto question = questionAt("gb-oxford", 17500, -118);
    question.brood = BeeCount{16000};
    const auto run = simulateCentral(question, asPrinted());
    const std::array<WorkedDay, 12> rows{{
        {-118, 16.158, 541.65, 17500.0, 0.0, 17500.0, 14204.2, 12.875, 4.948, 185.81, 70.00, 0.1158},
        {-117, 16.050, 522.26, 17248.6, 0.0, 17248.6, 14043.4, 12.626, 4.940, 184.06, 68.99, 0.2309},
        {-110, 15.285, 404.10, 15804.6, 0.0, 15804.6, 12428.7, 11.151, 4.743, 155.72, 63.22, 0.9688},
        {-100, 14.172, 274.10, 14549.1, 0.0, 14549.1, 8889.3, 9.707, 4.013, 126.16, 58.20, 1.7571},
        {-92, 13.265, 188.26, 13917.4, 72.2, 13989.6, 6363.3, 8.896, 3.354, 107.31, 49.10, 2.2489},
        {-87, 12.689, 136.15, 13144.5, 345.6, 13490.1, 5124.0, 8.310, 2.982, 95.64, 0.00, 2.6118},
        {-72, 10.913, 0.00, 10702.2, 1678.9, 12381.1, 1892.5, 6.957, 1.660, 63.48, 0.00, 3.7840},
        {-60, 9.441, 0.00, 9159.1, 2612.8, 11771.9, 308.1, 5.858, 0.526, 43.43, 0.00, 4.4066},
        {-45, 7.701, 0.00, 7620.4, 2804.5, 10424.8, 0.0, 4.713, 0.000, 32.07, 0.00, 4.9469},
        {0, 5.084, 0.00, 4351.3, 2562.9, 6914.2, 0.0, 3.481, 0.000, 23.68, 0.00, 6.1544},
        {62, 6.571, 170.88, 2861.0, 1437.8, 4298.8, 3007.0, 3.439, 2.677, 56.09, 0.00, 8.6928},
        {107, 9.964, 600.96, 7592.0, 529.1, 8121.1, 10185.4, 5.200, 5.303, 121.67, 98.71, 12.0871},
    }};
    for (const auto& row : rows) expectDay(run, row);
    EXPECT_EQ(run.means({-97}).longLivedBees, 0);
    EXPECT_GT(run.means({-95}).longLivedBees, 0);
    const auto losses = lossesFrom(run, {-118}, {});
    EXPECT_NEAR(losses.largest[0], 12.097, 0.0006);
    EXPECT_NEAR(losses.used[0], 14.387, 0.0006);
    EXPECT_NEAR(run.means({107}).bees, 8121, 0.6);
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
        {"gb-oxford", 13000, -92, 108, 12.261, 11.336, 11492, 14694, 44.29, 26.19, 68.94},
        {"se-stockholm", 14000, -92, 128, 13.596, 13.012, 10792, 14702, 33.61, 30.25, 80.13},
        {"de-jena", 14000, -92, 104, 11.352, 10.853, 9251, 12884, 38.82, 27.07, 72.29},
        {"ca-toronto", 20000, -92, 118, 16.240, 15.370, 12389, 14697, 53.95, 40.94, 93.64},
        {"ca-winnipeg", 20000, -92, 131, 20.721, 19.983, 15018, 19194, 48.08, 62.22, 120.19},
        {"us-ga-atlanta", 16000, -92, 64, 9.708, 7.449, 4811, 5611, 86.30, 26.64, 75.49},
        {"pt-lisbon", 14000, -92, 67, 12.284, 5.704, 5083, 5514, 111.91, 47.55, 70.38},
        {"au-melbourne", 16000, -91, 72, 10.131, 7.969, 5875, 6620, 76.94, 33.28, 69.16},
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

// An analytic twin: at a constant temperature, without brood and long after laying stopped (all bees long-lived), N
// falls by the same share every day and
// every bee (above the size law's mass, cold enough for the cold branch all day) eats the same, so use is a geometric
// sum.
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
    const int days = 90; // bees stay above 1.3 kg / 0.115 g = 11,304
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

} // namespace winterlarder::winter::central_test
