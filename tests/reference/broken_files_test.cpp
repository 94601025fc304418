// SPDX-License-Identifier: GPL-3.0-or-later
// Each test breaks one thing in a copy of shared/ and expects the file, line, column, fault and remedy that belong to it.
#include "reference/csv_table.h"
#include "reference/reference.h"

#include <fmt/format.h>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

namespace winterlarder::broken_files_test {
namespace {

namespace fs = std::filesystem;

class BrokenFile : public testing::Test {
protected:
    void SetUp() override {
        const auto* test = testing::UnitTest::GetInstance()->current_test_info();
        folder_ = fs::path(BUILD_FOLDER) / "broken_files" / test->name();
        fs::remove_all(folder_);
        fs::create_directories(folder_);
        fs::copy(SHARED_FOLDER, folder_, fs::copy_options::recursive);
    }
    void TearDown() override { fs::remove_all(folder_); }

    std::string text(const std::string& file) const { return textOfFile(folder_ / file).value(); }
    void write(const std::string& file, const std::string& content) const {
        std::ofstream(folder_ / file, std::ios::binary) << content;
    }
    void replace(const std::string& file, const std::string& from, const std::string& to) const {
        std::string content = text(file);
        const auto at = content.find(from);
        ASSERT_NE(at, std::string::npos) << file << " has no " << from;
        write(file, content.replace(at, from.size(), to));
    }
    // Line of the row that begins so.
    int lineOf(const std::string& file, const std::string& begin) const {
        std::istringstream content(text(file));
        int number = 1;
        for (std::string line; std::getline(content, line); ++number)
            if (line.starts_with(begin)) return number;
        ADD_FAILURE() << file << " has no row " << begin;
        return 0;
    }
    std::string at(const std::string& file, int line, int column) const {
        return fmt::format("{}:{}:{}: ", (folder_ / file).string(), line, column);
    }
    std::vector<std::string> faults() const {
        const auto loaded = loadReference(folder_);
        std::vector<std::string> described;
        if (loaded.ok()) return described;
        for (const Problem& problem : loaded.problems()) described.push_back(describe(problem));
        return described;
    }

    fs::path folder_;
};

const std::string stations = "climate/stations.csv";
const std::string formats = "hives/formats.csv";
const std::string constants = "model/constants.csv";
const std::string rules = "rules/feeding.csv";
const std::string cautions = "rules/cautions.csv";

TEST_F(BrokenFile, AnUntouchedCopyLoads) { EXPECT_THAT(faults(), testing::IsEmpty()); }

TEST_F(BrokenFile, ANumberThatIsNone) {
    replace(formats, "warre,\"Warre box, fixed comb on bars\",FR/world,300,",
            "warre,\"Warre box, fixed comb on bars\",FR/world,3oo,");
    EXPECT_THAT(faults(), testing::ElementsAre(at(formats, lineOf(formats, "warre,"), 48) +
                                               "comb_width_mm \"3oo\" is not a number; a number from 50 to 1000"));
}

TEST_F(BrokenFile, ANumberOutOfRange) {
    replace(stations, "gb-oxford,",
            "gb-oxford,\"x\",y,151.76,-1.26,63,5.2,5.5,7.5,9.8,12.9,15.9,18.1,17.8,15.0,11.5,7.9,-5.4e3,"
            "3.33,2.58,0.79,0.51,b,p,m,gsod-dayton,c,measured\ngb-oxford-2,");
    EXPECT_THAT(faults(), testing::ElementsAre(at(stations, lineOf(stations, "gb-oxford,"), 17) +
                                                   "latitude 151.76 is out of range; a number from -90 to 90",
                                               at(stations, lineOf(stations, "gb-oxford,"), 83) +
                                                   "dec -5.4e3 is out of range; a number from -60 to 45"));
}

TEST_F(BrokenFile, AnEmptyCellThatMustNotBe) {
    replace(formats, ",1716,", ",,");
    EXPECT_THAT(faults(), testing::ElementsAre(
                              testing::AllOf(testing::StartsWith((folder_ / formats).string() + ":" +
                                                                 std::to_string(lineOf(formats, "nagy-boczonadi,"))),
                                             testing::EndsWith("bees_per_side is empty; a number from 50 to 10000"))));
}

TEST_F(BrokenFile, AFeederThatIsMissingOrOneNobodyKnows) {
    const std::string feeders = "hives/feeders.csv";
    replace(feeders, "box,4,no,no,no,", "bucket,4,no,no,perhaps,");
    const int line = lineOf(feeders, "bucket,");
    EXPECT_THAT(faults(),
                testing::ElementsAre(
                    testing::StartsWith(at(feeders, line, 16) + "slow \"perhaps\" is not known"),
                    testing::StartsWith(at(feeders, line, 1) + "feeder bucket is not known; one of round, top, box,"),
                    testing::HasSubstr("no row for feeder box; ")));
}

TEST_F(BrokenFile, AMissingColumnAndAnUnknownOne) {
    replace(rules, "id,topic,region,", "id,topic,regoin,");
    const int header = lineOf(rules, "id,topic,");
    const std::string right = "; the columns are id, topic, region, condition, value, unit, source, quality, mark";
    EXPECT_THAT(faults(), testing::ElementsAre(at(rules, header, 1) + "column region is missing" + right,
                                               at(rules, header, 10) + "column regoin is not known" + right));
}

TEST_F(BrokenFile, AMissingColumnOfCheckValuesIsNoFaultButAnUnknownSourceIs) {
    const std::string file = "reference/comb_checks.csv";
    replace(file, ",bertrand,", ",bertrant,");
    const std::vector<std::string> found = faults();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_THAT(found.front(), testing::HasSubstr("comb_checks.csv:" + std::to_string(lineOf(file, "comb-03,"))));
    EXPECT_THAT(found.front(), testing::EndsWith("source bertrant is not a source; an id of sources.csv"));
}

TEST_F(BrokenFile, FiguresOfWhatIsUsualThatCannotBe) {
    const std::string usual = "rules/usual_stores.csv";
    replace(usual, "US010,DE,,51,10,confined,two boxes,15,20,kg,15,20,",
            "US010,Germany,,51,10,cold,three boxes,15,20,kg,15,14,");
    replace(usual, "US012,DE,Lower Bavaria (Passau),48.6,13.4,confined,one box,15,15,kg,15,15,",
            "US012,DE,Lower Bavaria (Passau),48.6,13.4,confined,one box,15,15,kg,,,");
    const auto said = faults();
    using testing::HasSubstr;
    ASSERT_EQ(said.size(), 5U);
    EXPECT_THAT(said[0], HasSubstr("country Germany is no country code; two capital letters, such as CA"));
    EXPECT_THAT(said[1], HasSubstr("winter_class \"cold\" is not known"));
    EXPECT_THAT(said[2], HasSubstr("hive \"three boxes\" is not known"));
    EXPECT_THAT(said[3], HasSubstr("high_kg is 14 without a low figure that is not above it"));
    EXPECT_THAT(said[4], HasSubstr("use is target, but neither low_kg nor gross_low_kg is given"));
}

TEST_F(BrokenFile, AFlowOnADayThatIsNone) {
    const std::string flows = "rules/late_flows.csv";
    replace(flows, ",09-10,11-10,fair,", ",09-31,2-28,some,");
    const auto said = faults();
    ASSERT_EQ(said.size(), 3U);
    EXPECT_THAT(said[0], testing::HasSubstr("from 09-31 is no day; month and day as MM-DD"));
    EXPECT_THAT(said[1], testing::HasSubstr("to 2-28 is no day"));
    EXPECT_THAT(said[2], testing::HasSubstr("typical \"some\" is not known"));
}

TEST_F(BrokenFile, ASourceThatIsNotThere) {
    replace(cautions, "infants,caution,inspq;", "infants,caution,inspk;");
    EXPECT_THAT(faults(), testing::ElementsAre(at(cautions, lineOf(cautions, "infants,"), 17) +
                                               "sources inspk is not a source; an id of sources.csv"));
}

TEST_F(BrokenFile, AnIdThatIsThereTwice) {
    const int first = lineOf("sources.csv", "omholt-1987,");
    replace("sources.csv", "\nbaudoux,", "\nomholt-1987,Again,1987,paper,page\nbaudoux,");
    EXPECT_THAT(faults(), testing::ElementsAre(at("sources.csv", lineOf("sources.csv", "omholt-1987,Again"), 1) +
                                               "id omholt-1987 is already in line " + std::to_string(first) +
                                               "; give every row a name of its own"));
}

TEST_F(BrokenFile, AConstantThatIsMissingUnknownOrOfAnotherUnit) {
    replace(constants, "beeMass,m_b,0.000115,kg,", "beeMess,m_b,0.000115,kg,");
    replace(constants, "honeyEnergy,e_h,12700,J/g,", "honeyEnergy,e_h,12700,J/kg,");
    EXPECT_THAT(faults(),
                testing::ElementsAre(at(constants, lineOf(constants, "honeyEnergy,"), 23) +
                                         "honeyEnergy has the unit J/kg; give it in J/g",
                                     at(constants, lineOf(constants, "beeMess,"), 1) +
                                         "constant beeMess is not known; the name of a constant of the model",
                                     at(constants, lineOf(constants, "name,symbol,"), 1) +
                                         "constant beeMass is missing; a row for every constant of the model"));
}

TEST_F(BrokenFile, AConstantOutsideItsOwnRange) {
    replace(constants, "restingFloor,q0,3.1,", "restingFloor,q0,5.4,");
    EXPECT_THAT(faults(),
                testing::ElementsAre(at(constants, lineOf(constants, "restingFloor,"), 17) +
                                     "restingFloor 5.4 lies outside its own range; a number from 2.8 to 4.4"));
}

TEST_F(BrokenFile, AWordThatIsNotAMark) {
    replace(constants, ",judgement,judgement;norrstrom-2021,spread of the heat",
            ",guessed,judgement;norrstrom-2021,spread of the heat");
    EXPECT_THAT(
        faults(),
        testing::ElementsAre(testing::HasSubstr(
            "mark \"guessed\" is not known; one of: measured, handbook, published, derived, fitted, common practice, memory, judgement")));
}

TEST_F(BrokenFile, ADictionaryAtOddsWithItself) {
    replace("fields.csv", "bees.count,number,bees,0,100000,", "bees.count,number,bees,200000,100000,");
    replace("fields.csv", ",round,round;top;", ",square,round;top;");
    const int count = lineOf("fields.csv", "bees.count,"), feeder = lineOf("fields.csv", "feeder.kind,");
    EXPECT_THAT(faults(),
                testing::ElementsAre(at("fields.csv", count, 24) + "min 200000 is above max 100000; min not above max",
                                     at("fields.csv", feeder, 24) +
                                         "default square is not one of the choices; one of the choices"));
}

TEST_F(BrokenFile, AWholeNumberThatIsNot) {
    replace(formats, "langstroth-deep,Langstroth deep 10-frame,world,428,205,428,10,",
            "langstroth-deep,Langstroth deep 10-frame,world,428,205,428,9.5,");
    EXPECT_THAT(faults(), testing::ElementsAre(testing::HasSubstr(
                              "combs_per_box 9.5 is out of range or not whole; a whole number from 1 to 60")));
}

TEST_F(BrokenFile, AFileThatIsGoneDoesNotHideTheOthers) {
    fs::remove(folder_ / rules);
    replace(stations, "gb-london,", "gb-belfast,");
    const auto loaded = loadReference(folder_);
    ASSERT_FALSE(loaded.ok());
    ASSERT_EQ(loaded.problems().size(), 2U);
    EXPECT_THAT(describe(loaded.problems()[0]), testing::HasSubstr("id gb-belfast is already in line"));
    EXPECT_EQ(loaded.problems()[1].kind, ProblemKind::File);
    EXPECT_EQ(loaded.problems()[1].place.file, (folder_ / rules).string());
}

TEST_F(BrokenFile, FaultsOfSeveralFilesAreListedTogether) {
    replace(formats, ",bertrand,", ",bertrant,");
    replace(constants, "restingFloor,q0,3.1,", "restingFloor,q0,,");
    replace("reference/syrup_checks.csv", "\nD01,", "\nD01,\"");
    EXPECT_EQ(faults().size(), 3U);
}

TEST_F(BrokenFile, AnEmptyFolderListsEveryFile) {
    fs::remove_all(folder_);
    const auto loaded = loadReference(folder_);
    ASSERT_FALSE(loaded.ok());
    EXPECT_EQ(loaded.problems().size(), 19U);
    for (const Problem& problem : loaded.problems()) EXPECT_EQ(problem.kind, ProblemKind::File);
}

} // namespace
} // namespace winterlarder::broken_files_test
