// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/quantity.h"

#include <array>
#include <cstdlib>
#include <fstream>
#include <gtest/gtest.h>
#include <string>
#include <type_traits>

namespace winterlarder::quantity_test {
namespace {

template <class A, class B>
concept SameDimension = units::traits::is_convertible_unit_t<A, B>::value;
template <class A, class B>
concept SumExists = requires(A a, B b) {
    a + b;
};

// Sums, comparisons and assignments of the units library exist between quantities of one dimension only.
static_assert(SameDimension<Mass, units::mass::pound_t>);
static_assert(SameDimension<Length, units::length::inch_t>);
static_assert(!SameDimension<Mass, Volume>);
static_assert(!SameDimension<Mass, Length>);
static_assert(!SameDimension<Mass, Power>);
static_assert(!SameDimension<Length, Area>);
static_assert(!SameDimension<Temperature, Power>);
static_assert(!SameDimension<Hours, Mass>);
static_assert(SumExists<Mass, Mass>);
static_assert(!SumExists<BeeCount, double>);
static_assert(!SumExists<Share, double>);
// A bare number never becomes a quantity by itself.
static_assert(!std::is_convertible_v<double, Mass>);
static_assert(!std::is_convertible_v<double, Temperature>);
static_assert(!std::is_convertible_v<double, BeeCount>);

TEST(Quantity, EntersAndLeavesInItsUnit) {
    EXPECT_DOUBLE_EQ(kilograms(18).value(), 18);
    EXPECT_DOUBLE_EQ(grams(250).value(), 0.25);
    EXPECT_DOUBLE_EQ(millimetres(232).value(), 232);
    EXPECT_DOUBLE_EQ(litres(6).value(), 6);
    EXPECT_DOUBLE_EQ(watts(5.3).value(), 5.3);
    EXPECT_DOUBLE_EQ(celsius(-12.5).value(), -12.5);
    EXPECT_DOUBLE_EQ(kelvins(3.2).value(), 3.2);
    EXPECT_DOUBLE_EQ(squareDecimetres(8.8).value(), 8.8);
}

TEST(Quantity, ConvertsWithinADimension) {
    EXPECT_DOUBLE_EQ(Mass(units::mass::gram_t(250)).value(), 0.25);
    EXPECT_DOUBLE_EQ(Length(units::length::inch_t(1)).value(), 25.4);
    EXPECT_DOUBLE_EQ(Area(millimetres(200) * millimetres(400)).value(), 8.0);
    EXPECT_DOUBLE_EQ((kilograms(4) + grams(500)).value(), 4.5);
}

// The library holds dimensions apart inside its functions, where no concept can look: so the compiler itself is asked.
std::string compilerOfThisBuild() {
    std::ifstream cache(std::string(BUILD_FOLDER) + "/CMakeCache.txt");
    for (std::string line; std::getline(cache, line);)
        if (line.starts_with("CMAKE_CXX_COMPILER:")) return line.substr(line.find('=') + 1);
    return "c++";
}

int compile(const std::string& statement) {
    const std::string source = BUILD_FOLDER "/quantity_statement.cpp";
    std::ofstream(source) << "#include \"quantity/quantity.h\"\nusing namespace winterlarder;\nvoid f() { " << statement
                          << " }\n";
    const std::string command =
        compilerOfThisBuild() + " -std=c++20 -fsyntax-only -I" SOURCE_FOLDER "/core " + source + " 2>/dev/null";
    return std::system(command.c_str());
}

TEST(Quantity, MeaninglessArithmeticDoesNotCompile) {
    ASSERT_EQ(compile("(void)(kilograms(1) + grams(1)); Mass m = units::mass::pound_t(1); (void)m;"), 0)
        << "the statement that should compile does not";
    for (const char* statement : {"(void)(kilograms(1) + litres(1));", "(void)(kilograms(1) < millimetres(1));",
                                  "Mass m = litres(1); (void)m;", "(void)(BeeCount{1} + kilograms(1));"})
        EXPECT_NE(compile(statement), 0) << statement;
}

} // namespace
} // namespace winterlarder::quantity_test
