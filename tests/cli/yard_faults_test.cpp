// SPDX-License-Identifier: GPL-3.0-or-later
// One colony that cannot be computed never ends or empties the answer for a yard.
#include "cli/program.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gmock/gmock.h>

namespace winterlarder::yard_faults_test {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::SizeIs;
using namespace winterlarder::testing;

std::string combs(int count, double capped) {
    std::string list;
    for (int i = 0; i < count; ++i) list += (i ? "," : "") + std::string("{\"capped\":") + std::to_string(capped) + "}";
    return "[" + list + "]";
}

class YardFaults : public ::testing::Test {
protected:
    Ran book(const std::string& command, const std::string& arguments = "", const std::string& input = "") {
        return runProgram("book " + command + " '" + (folder.path() / "orchard.larder").string() + "' " + arguments,
                          input, "USER=ada LOGNAME=ada");
    }
    void import(const std::string& colonies, const std::string& records, const std::string& station = "ca-halifax") {
        book("new", "--yard Orchard --station " + station);
        const auto file =
            folder.file("yard.json", R"({"larder": 1, "yards": [{"id": 1, "name": "Orchard", "site_station": ")" +
                                         station + "\"}], \"colonies\": [" + colonies + "], " + records + "}");
        const auto ran = book("import", "'" + file.string() + "' --sure");
        ASSERT_EQ(ran.status, 0) << ran.err;
    }
    static std::string colony(int id, const std::string& name) {
        return R"({"id": )" + std::to_string(id) + R"(, "yard": 1, "name": ")" + name +
               R"(", "boxes": [{"format": "langstroth-deep"}, {"format": "langstroth-deep"}]})";
    }
    static inline int nextId = 1; // of a record; any number will do, each once
    static std::string look(int colony, const std::string& date, double capped = 0.6) {
        return R"({"id": )" + std::to_string(nextId++) + R"(, "colony": )" + std::to_string(colony) + R"(, "date": ")" +
               date + R"(", "bees_covered_combs": 9, "combs_form": "listed", "combs": )" + combs(20, capped) + "}";
    }
    // Russet: more was taken than was there, and stores were weighed later. Pippin: an ordinary winter.
    void russetFitsNoWinter() {
        import(colony(1, "Russet") + "," + colony(2, "Pippin"),
               R"("looks": [)" + look(1, "2026-09-17", 0.12) + "," + look(2, "2026-09-17") +
                   R"(, {"id": 900, "colony": 1, "date": "2027-01-03", "combs_form": "listed", "combs": )" +
                   combs(20, 0.12) +
                   R"(}], "harvests": [{"id": 900, "colony": 1, "date": "2026-10-20", "kg": 60, "sure": true}])");
    }
    TemporaryFolder folder;
};

TEST_F(YardFaults, RecordsThatFitNoWinterAreToldAndTheOthersAnswered) {
    russetFitsNoWinter();
    const auto ran = book("follow", "--json --winters 100 --as-of 2027-01-30");
    EXPECT_EQ(ran.status, 0) << ran.err;
    const auto lines = linesOf(ran.out);
    ASSERT_THAT(lines, SizeIs(2));
    const auto russet = jsonOf(lines[0]), pippin = jsonOf(lines[1]);
    EXPECT_EQ(at(russet, "state").text, "cannot_say");
    EXPECT_EQ(memberOf(russet, "stores_kg"), nullptr) << "no number where there is no answer";
    EXPECT_THAT(lines[0], HasSubstr("fits-no-winter"));
    EXPECT_THAT(lines[0], HasSubstr("2026-09-17"));
    EXPECT_GT(at(pippin, "stores_kg.typical").number, 1);
    const auto words = book("follow", "--winters 100 --as-of 2027-01-30");
    EXPECT_EQ(words.status, 0) << words.err;
    EXPECT_THAT(words.out, HasSubstr("The records fit no winter"));
}

TEST_F(YardFaults, ACalendarLeavesOutWhatFitsNoWinterAndSaysSo) {
    russetFitsNoWinter();
    const auto ran = book("calendar", "--winters 100 --as-of 2027-01-30");
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("END:VCALENDAR"));
    EXPECT_THAT(ran.out, Not(HasSubstr("Russet")));
    EXPECT_THAT(ran.err, HasSubstr("Russet: the records of its winter fit none"));
}

TEST_F(YardFaults, NothingIsLearnedFromWhatFitsNoWinterAndItIsSaid) {
    russetFitsNoWinter();
    const auto ran = book("learned", "--json --winters 100 --as-of 2027-10-01");
    EXPECT_EQ(ran.status, 0) << ran.err;
    ASSERT_THAT(at(jsonOf(ran.out), "not_learned_from").items, SizeIs(1));
    EXPECT_THAT(at(jsonOf(ran.out), "not_learned_from.0").text, HasSubstr("the winter of 2026 of Russet"));
}

// Sixty covered combs of a hive of six boxes are more bees than the model knows: a fault of one colony.
TEST_F(YardFaults, AColonyThatCannotBeReadHasItsLineAndTheOthersTheirs) {
    std::string six = R"({"format": "langstroth-deep"})";
    for (int box = 1; box < 6; ++box) six += R"(, {"format": "langstroth-deep"})";
    import(
        R"({"id": 1, "yard": 1, "name": "Russet", "boxes": [)" + six + "]}," + colony(2, "Pippin"),
        R"("looks": [{"id": 900, "colony": 1, "date": "2026-09-17", "bees_covered_combs": 60, "combs_form": "quick", "combs_full_of_stores": 9, "combs_half": 2, "combs_capped_share": 1},)" +
            look(2, "2026-09-17") + "]");
    for (const std::string command : {"advise", "follow"}) {
        const auto ran = book(command, "--json --winters 100 --as-of 2026-09-20");
        EXPECT_EQ(ran.status, 2) << command;
        const auto lines = linesOf(ran.out);
        ASSERT_THAT(lines, SizeIs(2)) << command << ran.err;
        EXPECT_EQ(at(jsonOf(lines[0]), "colony").text, "Russet");
        EXPECT_THAT(at(jsonOf(lines[0]), "faults.0").text, HasSubstr("132000 bees"));
        EXPECT_EQ(at(jsonOf(lines[1]), "colony").text, "Pippin");
        EXPECT_EQ(memberOf(jsonOf(lines[1]), "faults"), nullptr);
        EXPECT_THAT(ran.err, HasSubstr("orchard.larder: Russet"));
    }
    const auto calendar = book("calendar", "--winters 100 --as-of 2026-09-20");
    EXPECT_EQ(calendar.status, 2);
    EXPECT_THAT(calendar.out, HasSubstr("END:VCALENDAR"));
}

TEST_F(YardFaults, MoreCoveredCombsThanPlacesAreRefusedWhereTheyAreWritten) {
    book("new", "--yard Orchard --station ca-halifax");
    book("add-colony", "--name Pear --format langstroth-deep --boxes 2");
    const auto ran = book("add-look", "--colony Pear --date 2026-09-15 --covered-combs 40");
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("--covered-combs is 40, but the hive has 20 places"));
    EXPECT_EQ(book("add-look", "--colony Pear --date 2026-09-15 --covered-combs 20").status, 0);
}

// A weighing of the last day before the season's first, within the sixty days, counts as of that day.
TEST_F(YardFaults, AWeighingOfTheSummerCountsAsOfTheSeasonsFirstDay) {
    import(colony(1, "Russet") + "," + colony(2, "Pippin"),
           R"("looks": [{"id": 900, "colony": 1, "date": "2026-07-20", "bees_covered_combs": 9},)" +
               look(2, "2026-08-17") +
               R"(], "weighings": [{"id": 900, "colony": 1, "date": "2026-07-31", "gross_kg": 54}])");
    for (const std::string command : {"advise", "follow"}) {
        const auto ran = book(command, "--json --winters 100 --as-of 2026-09-01");
        EXPECT_EQ(ran.status, 0) << ran.err;
        EXPECT_THAT(linesOf(ran.out), SizeIs(2)) << command;
    }
    EXPECT_EQ(book("calendar", "--winters 100 --as-of 2026-09-01").status, 0);
    const auto storesWeighedOn = [&](const std::string& date) {
        SQLite::Database((folder.path() / "orchard.larder").string(), SQLite::OPEN_READWRITE)
            .exec("UPDATE weighings SET date = '" + date + "'");
        const auto ran = book("advise", "--json --winters 100 --as-of 2026-09-01 --colony Russet");
        EXPECT_EQ(ran.status, 0) << ran.err;
        return at(jsonOf(ran.out), "stores_kg.typical").number;
    };
    const double july = storesWeighedOn("2026-07-31");
    EXPECT_EQ(july, storesWeighedOn("2026-08-01"));
    EXPECT_NE(july, storesWeighedOn("2026-08-12"));
}

TEST_F(YardFaults, ASummersWeighingIsTakenByTheCommandsOfACase) {
    const std::string before =
        R"({"case":1,"as_of":"2026-09-01","site":{"station":"ca-halifax"},"hive":{"format":"langstroth-deep","boxes":2},"bees":{"covered_combs":8},"weighings":[{"date":")";
    const auto asked = [&](const std::string& command, const std::string& day) {
        return runProgram(command + " - --json --winters 100" +
                              (command == "use" ? " --from 2026-09-01 --to 2026-10-01" : ""),
                          before + day + "\",\"gross_kg\":54}]}\n");
    };
    for (const std::string command : {"advise", "stores", "use"}) {
        const auto july = asked(command, "2026-07-31"), june = asked(command, "2026-07-04"),
                   august = asked(command, "2026-08-01");
        EXPECT_EQ(july.status, 0) << command << july.err;
        EXPECT_EQ(june.status, 0) << command << june.err;
        if (command == "use") continue;
        const std::string path = "stores_kg.typical";
        EXPECT_EQ(at(jsonOf(july.out), path).number, at(jsonOf(august.out), path).number) << command;
    }
}

// A weighing and a feed of the same day, weeks after the simulated winter's end.
TEST_F(YardFaults, AWeighingAfterTheRunsEndIsNoForecastsMeasure) {
    import(
        colony(1, "Russet"),
        R"("looks": [)" + look(1, "2025-09-12") +
            R"(], "weighings": [{"id": 900, "colony": 1, "date": "2026-05-25", "gross_kg": 38}], "feeds": [{"id": 900, "colony": 1, "date": "2026-05-25", "kind": "syrup", "sugar_kg": 2, "ratio": "1:1"}])",
        "fr-lyon");
    const auto ran = book("learned", "--json --winters 100 --as-of 2026-09-20");
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(at(jsonOf(ran.out), "forecasts.count").number, 0) << "the model has no forecast for that day";
}

TEST_F(YardFaults, DaysOfAnyYearsAreRefusedAlike) {
    book("new", "--yard Orchard --station ca-halifax");
    book("add-colony", "--name Pear --format langstroth-deep");
    for (const std::string day : {"1400-01-01", "1799-12-31", "2201-01-01", "9999-12-31"}) {
        for (const std::string command : {"advise", "follow", "learned", "calendar"}) {
            const auto ran = book(command, "--as-of " + day);
            EXPECT_EQ(ran.status, 2) << command << day;
            EXPECT_THAT(ran.err, HasSubstr("from 1800 to 2200")) << command << day;
        }
        EXPECT_THAT(book("add-weighing", "--colony Pear --gross 30 --date " + day).err, HasSubstr("from 1800 to 2200"));
    }
    for (const std::string command : {"advise", "follow", "learned", "calendar"})
        for (const std::string day : {"1800-01-01", "2200-12-31"})
            EXPECT_EQ(book(command, "--as-of " + day).status, 0) << command << day;
}

TEST(CommandLine, NumbersThatAreNoneAreToldAsTheyAre) {
    EXPECT_THAT(runProgram("heat --bees nan --temperature 5").err, HasSubstr("--bees is nan, which is no number"));
    EXPECT_THAT(runProgram("heat --bees 9000 --temperature inf").err,
                HasSubstr("--temperature is inf, which is no number"));
}

// The plan of a leap day begins on that day.
TEST(CommandLine, NothingIsPlannedBeforeTheDayOfTheQuestion) {
    std::string months;
    for (const double mean : {-12, -10, -4, 3, 9, 15, 18, 17, 12, 6, -1, -8})
        months += (months.empty() ? "" : ",") + std::to_string(mean);
    const auto ran = runProgram(
        "advise - --json --winters 100",
        R"({"case":1,"as_of":"2028-02-29","site":{"latitude":46,"monthly_mean_c":[)" + months +
            R"(]},"hive":{"format":"langstroth-deep","boxes":2},"bees":{"count":12000},"combs":[{}]})" + "\n");
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto visits = at(jsonOf(ran.out), "feed.visits");
    ASSERT_FALSE(visits.items.empty());
    EXPECT_EQ(at(visits, "0.date").text, "2028-02-29");
}

TEST(CommandLine, EndlessInputIsRefused) {
    for (const std::string command :
         {"advise /dev/zero", "stores /dev/zero", "use /dev/zero --from 2026-09-01 --to 2026-10-01",
          "advise light.json /dev/zero"}) {
        const auto ran = runProgram(command);
        EXPECT_EQ(ran.status, 2) << command;
        EXPECT_THAT(ran.err, HasSubstr("/dev/zero: this is larger than a case may be; at most 4 MiB")) << command;
    }
    EXPECT_THAT(runProgram("climate /dev/zero --latitude 45").err,
                HasSubstr("larger than a table may be; at most 256 MiB"));
    EXPECT_THAT(runProgram("scale /dev/zero").err, HasSubstr("this is no text"));
    const auto line = runProgram("advise -", std::string(5 << 20, ' ') + "{}");
    EXPECT_EQ(line.status, 2);
    EXPECT_THAT(line.err, HasSubstr("<stdin>:1:1: the line is too long to be a case; at most 4 MiB"));
}

} // namespace
} // namespace winterlarder::yard_faults_test
