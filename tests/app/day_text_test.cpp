// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/day_text.h"

#include "app/invented.h"

#include <gtest/gtest.h>

namespace winterlarder::text {

using desk::invented::day;

namespace {

const QLocale british(QLocale::English, QLocale::UnitedKingdom), american(QLocale::English, QLocale::UnitedStates),
    german(QLocale::German, QLocale::Germany);

DayLimits upTo(const char* last) { return {std::nullopt, day(last), day("2026-09-14"), day("2026-09-14")}; }

std::string read(const char* typed, const QLocale& locale = british, const DayLimits& limits = upTo("2026-12-31")) {
    const auto read = readDay(QString::fromUtf8(typed), limits, locale);
    EXPECT_EQ(read.day.has_value(), read.fault.isEmpty()) << typed << ": a day or a fault, never both or neither";
    return read.day ? read.day->iso() : std::string("not read");
}

std::string fault(const char* typed, const DayLimits& limits) {
    return readDay(QString::fromUtf8(typed), limits, british).fault.toStdString();
}

} // namespace

TEST(DayText, TakesADayAsPeopleWriteIt) {
    for (const char* typed :
         {"2026-09-05", "20260905", "5 September 2026", "5 Sep 2026", "5. sept. 2026", "5th of September, 2026",
          "Sep 5, 2026", "september 5 2026", "SEPT 5th 2026", "2026 Sep 5", "5-Sep-26", "Saturday, 5 September 2026",
          "Sat 5 Sep 2026", " 5  Sep 2026 ", "05/09/2026", "5.9.2026", "5.9.26", "5 9 2026"})
        EXPECT_EQ(read(typed), "2026-09-05") << typed;
    EXPECT_EQ(read("today"), "2026-09-14");
    EXPECT_EQ(read("Yesterday"), "2026-09-13");
}

TEST(DayText, NumbersStandInTheOrderOfTheLocale) {
    EXPECT_EQ(read("9/5/2026", american), "2026-09-05");
    EXPECT_EQ(read("9/5/2026", british), "2026-05-09");
    EXPECT_EQ(read("9/5/26", american), "2026-09-05");
    EXPECT_EQ(read("9/5", american), "2026-09-05");
    EXPECT_EQ(read("25/8/2026", american), "2026-08-25") << "there is no month 25";
    EXPECT_EQ(read("8/25/2026", british), "2026-08-25");
    EXPECT_EQ(read("2026-09-05", american), "2026-09-05");
}

TEST(DayText, EveryLocaleReadsItsOwnFormsAndTheMonthsOfItsLanguage) {
    EXPECT_EQ(read("5. M\u00e4rz 2026", german), "2026-03-05");
    EXPECT_EQ(read("5 Dez 2025", german), "2025-12-05");
    EXPECT_EQ(read("5 March 2026", german), "2026-03-05") << "English is known everywhere";
    for (const auto& locale : {british, american, german, QLocale(QLocale::French), QLocale(QLocale::Japanese),
                               QLocale(QLocale::Swedish), QLocale(QLocale::Spanish, QLocale::Mexico)})
        for (const auto form : {QLocale::LongFormat, QLocale::ShortFormat})
            EXPECT_EQ(read(locale.toString(QDate(2026, 9, 15), form).toUtf8(), locale), "2026-09-15")
                << locale.toString(QDate(2026, 9, 15), form).toStdString();
}

TEST(DayText, ADayWithoutAYearIsTheLastOnePermitted) {
    EXPECT_EQ(read("5 Sep", british, upTo("2026-09-14")), "2026-09-05");
    EXPECT_EQ(read("14 Sep", british, upTo("2026-09-14")), "2026-09-14");
    EXPECT_EQ(read("15 Sep", british, upTo("2026-09-14")), "2025-09-15");
    EXPECT_EQ(read("15 Sep"), "2025-09-15") << "of what is past, where later days are permitted too";
    EXPECT_EQ(read("29 Feb"), "2024-02-29");
    DayLimits from{day("2026-09-20"), std::nullopt, day("2026-09-14"), day("2026-09-20")};
    EXPECT_EQ(read("25 Sep", british, from), "2026-09-25")
        << "the first one permitted, where the last one is too early";
}

TEST(DayText, SaysWhatIsWrongAndWhatWouldBeRight) {
    const auto limits = upTo("2026-09-14");
    EXPECT_EQ(fault("6 October 2026", limits),
              "6 October 2026 is too late here. Type 14 September 2026 or a day before it.");
    EXPECT_EQ(fault("31 June 2026", limits), "There is no day 31 in June 2026; it ends with day 30.");
    EXPECT_EQ(fault("30 Feb", limits), "There is no day 30 in February; it ends with day 28.");
    for (const char* strange : {"", "soon", "5", "5 Sep soon", "September", "September 2026", "13/13/2026", "5 Ju 2026",
                                "1 2 3 4", "0 Sep 2026", "5 Sep 12026", "5 % 2026", "5 Sep 0012"})
        EXPECT_EQ(
            fault(strange, limits),
            "This cannot be read as a day. Type it as 14 September 2026, as 2026-09-14, or \u201cyesterday\u201d.")
            << strange;
    auto both = limits;
    both.first = day("2026-07-16");
    EXPECT_EQ(fault("1 July 2026", both),
              "1 July 2026 is too early here. Type a day from 16 July 2026 to 14 September 2026.");
    EXPECT_EQ(fault("tomorrow", both).substr(0, 21), "This cannot be read a");
}

TEST(DayText, ADayOfEveryYearHasNone) {
    const DayLimits every{std::nullopt, std::nullopt, day("2026-09-14"), day("2001-10-01"), true};
    EXPECT_EQ(read("5 November", british, every), "2001-11-05");
    EXPECT_EQ(read("5 Nov 2026", british, every), "2001-11-05");
    EXPECT_EQ(fault("29 Feb", every), "There is no day 29 in February; it ends with day 28.");
    EXPECT_EQ(fault("late", every), "This cannot be read as a day of the year. Type it as 5 September.");
}

} // namespace winterlarder::text
