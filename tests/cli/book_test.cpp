// SPDX-License-Identifier: GPL-3.0-or-later
// A book kept by script: every command of `book`, as a shell would run it.
#include "book/book.h"
#include "cli/program.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>
#include <gmock/gmock.h>

namespace winterlarder::book_test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using ::testing::StartsWith;
using namespace winterlarder::testing;

const std::string combs =
    R"([{"capped": 0.7, "open": 0.1}, {"capped": 0.35, "brood": 0.3}, {"capped": 0.5, "brood": 0.2},
    {"capped": 0.6}, {"capped": 0.4}, {"capped": 0.7}, {"capped": 0.8}, {"capped": 0.5}, {"open": 0.2}, {"capped": 0.1}])";

class BookCommands : public ::testing::Test {
protected:
    Ran book(const std::string& command, const std::string& arguments = "", const std::string& input = "") {
        return runProgram("book " + command + " '" + file() + "' " + arguments, input, "USER=ada LOGNAME=ada");
    }
    //! What the command printed, which must have gone well.
    std::string done(const std::string& command, const std::string& arguments = "", const std::string& input = "") {
        const auto ran = book(command, arguments, input);
        EXPECT_EQ(ran.status, 0) << command << ' ' << arguments << '\n' << ran.err;
        return ran.out;
    }
    void furnish() {
        EXPECT_EQ(done("new", "--yard Orchard --station ca-halifax"), "1\n");
        EXPECT_EQ(done("add-colony", "--name 'Row 2 east' --format langstroth-deep --boxes 2 --since 2025-05-01"),
                  "1\n");
        EXPECT_EQ(done("add-colony", "--name Pear --format langstroth-deep"), "2\n");
        const auto file = folder.file("combs.json", combs);
        EXPECT_EQ(done("add-look",
                       "--colony 'Row 2 east' --date 2026-09-10 --covered-combs 8.5 --combs '" + file.string() + "'"),
                  "1\n");
        EXPECT_EQ(done("add-weighing", "--colony 'Row 2 east' --date 2026-09-08 --gross 54.5"), "1\n");
    }
    std::string file() const { return (folder.path() / "windfall.larder").string(); }
    std::string dump() { return done("export", "--json"); }

    TemporaryFolder folder;
};

TEST_F(BookCommands, EachPrintsTheNewRecordsId) {
    furnish();
    EXPECT_EQ(done("add-weighing", "--colony Pear --date 2026-09-08 --lift 20 19.5 --wet"), "2\n");
    EXPECT_EQ(done("add-weighing", "--colony '#2' --date 2026-09-09 --heft light"), "3\n");
    EXPECT_EQ(done("add-feed", "--colony Pear --date 2026-09-11 --sugar 3 --ratio 3:2"), "1\n");
    EXPECT_EQ(done("add-feed", "--colony 2 --date 2026-09-12 --syrup 4 --ratio 2:1"), "2\n");
    EXPECT_EQ(done("add-feed", "--colony Pear --date 2026-09-13 --fondant 2.5"), "3\n");
    EXPECT_EQ(done("add-harvest", "--colony Pear --date 2026-08-01 --kg 11.5 --combs 5 --moisture 17.5"), "1\n");
    EXPECT_EQ(done("add-treatment", "--colony Pear --date 2026-08-20 --what 'formic acid' --until 2026-09-01"), "1\n");
    EXPECT_EQ(done("add-fate", "--colony Pear --date 2026-09-20 --fate united --into 'Row 2 east'"), "1\n");
    EXPECT_EQ(done("add-yard", "--yard Hill --latitude 45 --longitude -64.5 --elevation 120"), "2\n");
    EXPECT_EQ(jsonOf(done("add-weighing", "--json --colony Pear --date 2026-09-15 --gross 31")).members.front().name,
              "id");
    EXPECT_EQ(done("check"), "sound\n");
}

TEST_F(BookCommands, WinterIsWrittenDownToo) {
    furnish();
    EXPECT_EQ(done("add-sighting", "--colony Pear --date 2027-01-10 --saw cluster --seams 4.5 --stores-in-sight"),
              "1\n");
    EXPECT_EQ(done("add-sighting", "--colony Pear --date 2027-02-10 --saw flying"), "2\n");
    EXPECT_EQ(book("add-sighting", "--colony Pear --date 2027-02-10 --saw flying --seams 3").status, 2)
        << "seams are of a cluster";
    const auto csv = folder.file("weather.csv", "date;min;max\n2026-11-01;0;8\n2026-11-02;-2,5;6\n");
    EXPECT_EQ(book("add-weather", "'" + csv.string() + "'").status, 2) << "a decimal comma is no number here";
    const auto good = folder.file("good.csv", "date;min;max\n2026-11-01;0;8\n2026-11-02;-2.5;6\n");
    EXPECT_EQ(done("add-weather", "'" + good.string() + "'"), "1\n");
    EXPECT_EQ(at(jsonOf(dump()), "weather_logs.0.days.1.mean_c").number, 1.75);
}

//! Six weeks of hourly weights: 40 kg, 30 g less a day, and a box of 6 kg taken off on 21 September.
std::string scaleLog() {
    std::string log = "time,weight_kg\n";
    for (int hour = 0; hour < 45 * 24; ++hour) {
        const auto day = Date::of(2026, 9, 1)->plusDays(hour / 24);
        const double weight = 40 - 0.03 * hour / 24 - (hour >= 20 * 24 + 15 ? 6 : 0);
        log += fmt::format("{} {:02}:00,{:.3f}\n", day.iso(), hour % 24, weight);
    }
    return log;
}

TEST_F(BookCommands, AScalesLogBecomesAFewRecordsAsOneStep) {
    furnish();
    const auto before = dump();
    const auto log = "'" + folder.file("scale.csv", scaleLog()).string() + "' --colony Pear ";
    const auto preview = jsonOf(done("add-scale-log", log + "--preview --json"));
    EXPECT_EQ(dump(), before);
    EXPECT_GE(at(preview, "weighings").number, 4);
    EXPECT_EQ(at(preview, "harvests").number + at(preview, "manipulations").number, 1);
    EXPECT_EQ(jsonOf(done("add-scale-log", log + "--json")).members.front().value.number,
              at(preview, "weighings").number);
    const auto again = jsonOf(done("add-scale-log", log + "--json"));
    EXPECT_EQ(at(again, "weighings").number, 0) << "what is there already is not added twice";
    EXPECT_EQ(at(again, "left_out").number, at(preview, "weighings").number + 1);
    EXPECT_EQ(done("check"), "sound\n");
    done("undo");
    EXPECT_EQ(dump(), before);
}

TEST_F(BookCommands, AdviseAnswersEveryLivingColonyOnALine) {
    furnish();
    const auto lines = linesOf(done("advise", "--as-of 2026-09-12 --json --winters 300"));
    ASSERT_THAT(lines, SizeIs(2));
    const auto east = jsonOf(lines[0]), pear = jsonOf(lines[1]);
    EXPECT_EQ(at(east, "colony").text, "Row 2 east");
    EXPECT_NE(at(east, "verdict").text, "cannot_say");
    EXPECT_EQ(at(pear, "verdict").text, "cannot_say") << "nothing was seen of it";
    EXPECT_THAT(linesOf(done("advise", "--as-of 2026-09-12 --json --winters 300 --colony Pear")), SizeIs(1));
    EXPECT_THAT(done("advise", "--as-of 2026-09-12 --winters 300"), HasSubstr("Row 2 east"));
    EXPECT_THAT(linesOf(done("advise", "--as-of 2024-09-12 --json --winters 300 --colony Pear")), SizeIs(1));
    done("add-fate", "--colony Pear --date 2026-09-11 --fate dead --cause wasps");
    EXPECT_THAT(linesOf(done("advise", "--as-of 2026-09-12 --json --winters 300")), SizeIs(1));
}

TEST_F(BookCommands, TheSameAnswerAsTheCaseFileGives) {
    furnish();
    const auto caseFile = folder.file("case.json", done("case", "--colony 'Row 2 east' --as-of 2026-09-12"));
    const auto alone = runProgram("advise '" + caseFile.string() + "' --json --winters 300");
    ASSERT_EQ(alone.status, 0) << alone.err;
    const auto fromBook = jsonOf(done("advise", "--colony 'Row 2 east' --as-of 2026-09-12 --json --winters 300"));
    for (const char* key : {"need_kg", "stores_kg.typical", "run_out.share"})
        EXPECT_EQ(at(fromBook, key).number, at(jsonOf(alone.out), key).number) << key;
}

TEST_F(BookCommands, AdviceActedOnIsFrozenAndItsVisitsPlanned) {
    furnish();
    EXPECT_EQ(done("accept", "--colony 'Row 2 east' --as-of 2026-09-12 --winters 300"), "1\n");
    const auto document = jsonOf(dump());
    const auto& frozen = at(document, "acted_advice.0");
    EXPECT_EQ(at(frozen, "run_seed").text, "1");
    EXPECT_EQ(at(frozen, "run_winters").number, 300);
    const auto answer = jsonOf(at(frozen, "answer").text);
    EXPECT_EQ(at(answer, "verdict").text, at(frozen, "verdict").text);
    const auto& feed = at(answer, "feed");
    const auto planned = feed.kind == exchange::JsonValue::Kind::Null ? 0u : at(feed, "visits").items.size();
    const auto* visits = memberOf(document, "planned_visits");
    EXPECT_EQ(visits ? visits->items.size() : 0u, planned);
    EXPECT_EQ(at(frozen, "verdict").text, "feed") << "the example needs a plan to be one";
    const auto again = folder.file("again.json", at(frozen, "inputs").text);
    EXPECT_EQ(at(jsonOf(runProgram("advise '" + again.string() + "' --json --winters 300").out), "need_kg").number,
              at(answer, "need_kg").number);
    EXPECT_EQ(book("accept", "--colony Pear --as-of 2026-09-12 --winters 300").status, 2);
}

TEST_F(BookCommands, ExportAndImportGiveTheSameBytes) {
    furnish();
    const auto document = dump();
    const auto json = folder.file("book.json", document);
    const auto other = (folder.path() / "other.larder").string();
    EXPECT_EQ(runProgram("book import '" + other + "' '" + json.string() + "'").status, 0);
    EXPECT_EQ(runProgram("book export '" + other + "' --json").out, document);
    const auto broken = folder.file("broken.json", "{\"larder\": 1, \"yards\": [{\"id\": 1}]}");
    const auto none = (folder.path() / "none.larder").string();
    const auto failed = runProgram("book import '" + none + "' '" + broken.string() + "'");
    EXPECT_EQ(failed.status, 2);
    EXPECT_THAT(failed.err, HasSubstr("broken.json:1:"));
    EXPECT_FALSE(std::filesystem::exists(none)) << "nothing half made stays behind";
}

TEST_F(BookCommands, TablesGoOutAndComeInAsCsv) {
    furnish();
    const auto csv =
        folder.file("weighings.csv", "colony,date,gross_kg\nPear,2026-09-14,33.5\nRow 2 east,2026-09-08,54.5\n");
    EXPECT_THAT(done("import", "'" + csv.string() + "' --preview"),
                HasSubstr("new: 1 lines, changed: 0, already in the book and left out: 1"));
    EXPECT_THAT(linesOf(done("export", "--table weighings")), SizeIs(2)) << "a preview writes nothing";
    done("import", "'" + csv.string() + "'");
    EXPECT_THAT(done("export", "--table weighings"), HasSubstr("2,Pear,2026-09-14,33.5"));
    done("undo");
    EXPECT_THAT(linesOf(done("export", "--table weighings")), SizeIs(2)) << "one step";
    EXPECT_EQ(book("export", "--table wieghings").status, 2);
    EXPECT_EQ(book("export").status, 2);
}

TEST_F(BookCommands, StoryUndoAndRedo) {
    furnish();
    const auto before = dump();
    EXPECT_THAT(linesOf(done("story")).at(1), HasSubstr("weighing added"));
    const auto newest = jsonOf(done("story", "--json --count 1"));
    ASSERT_THAT(newest.items, SizeIs(1));
    EXPECT_EQ(at(newest, "0.verb").text, "add weighing");
    EXPECT_EQ(at(newest, "0.who").text, "ada");
    done("undo", "--by Bo");
    EXPECT_NE(dump(), before);
    EXPECT_THAT(done("story"), HasSubstr("undone"));
    done("redo");
    EXPECT_EQ(dump(), before);
    EXPECT_EQ(book("redo").status, 2);
    for (int step = 0; step < 5; ++step) done("undo");
    EXPECT_EQ(book("undo").status, 2) << "a book begins with nothing";
}

TEST_F(BookCommands, CopiesBackupsAndRestoring) {
    furnish();
    const auto before = dump();
    done("backups", "--make");
    done("add-weighing", "--colony Pear --date 2026-09-14 --gross 33");
    const auto backups = jsonOf(done("backups", "--json"));
    ASSERT_FALSE(backups.items.empty());
    done("restore", "'" + std::filesystem::path(at(backups, "0.file").text).filename().string() + "'");
    EXPECT_EQ(dump(), before);
    done("undo");
    EXPECT_NE(dump(), before) << "restoring is a step like any other";
    const auto copy = (folder.path() / "copy.larder").string();
    done("copy", "'" + copy + "'");
    EXPECT_EQ(runProgram("book export '" + copy + "' --json").out, dump());
    EXPECT_EQ(book("copy", "'" + copy + "'").status, 3) << "never over a file that is there";
    EXPECT_EQ(at(jsonOf(done("info", "--json")), "entries.weighings").number, 2);
}

TEST_F(BookCommands, MistakesAreNamedAndWriteNothing) {
    furnish();
    const auto before = dump();
    const auto refused = [&](const std::string& command, const std::string& arguments, const std::string& because,
                             int status = 2) {
        const auto ran = book(command, arguments);
        EXPECT_EQ(ran.status, status) << command << ' ' << arguments;
        EXPECT_THAT(ran.out, IsEmpty());
        EXPECT_THAT(ran.err, HasSubstr(because)) << command << ' ' << arguments;
    };
    refused("add-weighing", "--colony Paer --date 2026-09-14 --gross 33", "did you mean \"Pear\"?");
    refused("add-weighing", "--colony Pear --date 2026-02-30 --gross 33", "a day of the calendar as");
    refused("add-weighing", "--colony Pear --date 2026-09-14", "one of --gross");
    refused("add-weighing", "--colony Pear --date 2026-09-14 --gross -3", "weighings.gross_kg is -3");
    refused("add-feed", "--colony Pear --date 2026-09-14 --syrup 3", "--ratio");
    refused("add-feed", "--colony Pear --date 2026-09-14 --sugar 3 --ratio 3-2", "3:2");
    refused("add-colony", "--name Plum --format langstroth-dep", "langstroth-deep");
    refused("add-colony", "--name Plum --format langstroth-deep --boxes 13", "1 to 12");
    refused("new", "--yard Orchard --station ca-halifax", "", 3);
    const auto combsFile = folder.file("combs.json", "[{\"capped\": 0.5, \"oepn\": 0.2}]");
    refused("add-look", "--colony Pear --date 2026-09-14 --covered-combs 1 --combs '" + combsFile.string() + "'",
            "combs.json:1:18: ");
    const auto one = folder.file("one.json", "[{\"capped\": 0.5}]");
    refused("add-look", "--colony Pear --date 2026-09-14 --covered-combs 2 --combs '" + one.string() + "'",
            "1 combs are listed");
    refused("frobnicate", "", "");
    EXPECT_EQ(dump(), before);
    EXPECT_EQ(runProgram("book info nowhere.larder").status, 3);
    const auto foreign =
        folder.file("foreign.larder", "not a database at all, but long enough to look at: " + std::string(2000, 'x'));
    EXPECT_EQ(runProgram("book check '" + foreign.string() + "'").status, 3);
    EXPECT_EQ(runProgram("book new '" + (folder.path() / "x.larder").string() + "' --yard X --station nowhere").status,
              2);
}

TEST_F(BookCommands, WhileAWindowHasItOpenItCanStillBeRead) {
    furnish();
    auto reference = loadReference(SHARED_FOLDER);
    ASSERT_TRUE(reference);
    const auto opened = book::Book::open(file(), *reference, {{"Bo", "kitchen", book::Timestamp{1790000000}}});
    ASSERT_TRUE(opened && opened->writable());
    EXPECT_EQ(book("info").status, 0);
    EXPECT_EQ(book("advise", "--as-of 2026-09-12 --winters 200 --json").status, 0);
    const auto refused = book("add-weighing", "--colony Pear --date 2026-09-14 --gross 33");
    EXPECT_EQ(refused.status, 3);
    EXPECT_THAT(refused.err, HasSubstr("Bo"));
}

TEST_F(BookCommands, AnotherMachinesSignIsTakenOverWhenSaidToBeStale) {
    furnish();
    folder.file("windfall.larder.lock", "Bo\nthe \x1b[31mold laptop\x07\n2026-09-11T07:00:00Z\n");
    const auto refused = book("add-weighing", "--colony Pear --date 2026-09-14 --gross 33");
    EXPECT_EQ(refused.status, 3);
    EXPECT_THAT(refused.err, HasSubstr("by Bo on the \\u{1b}[31mold laptop\\u{7} since 2026-09-11T07:00:00Z"));
    EXPECT_THAT(
        refused.err,
        HasSubstr("where it is closed there, or that machine is gone or has another name now, say --take-over"));
    EXPECT_THAT(refused.err, ::testing::Not(HasSubstr("\x1b"))) << "a sign cannot steer the terminal";
    EXPECT_EQ(done("add-weighing", "--take-over --colony Pear --date 2026-09-14 --gross 33"), "2\n");
    EXPECT_EQ(done("add-weighing", "--colony Pear --date 2026-09-15 --gross 33"), "3\n") << "once is enough";
}

TEST_F(BookCommands, WhatIsOpenHereIsNotTakenOver) {
    furnish();
    auto reference = loadReference(SHARED_FOLDER);
    ASSERT_TRUE(reference);
    char machine[256] = {};
    ASSERT_EQ(gethostname(machine, sizeof machine - 1), 0);
    const auto opened = book::Book::open(file(), *reference, {{"Bo", machine, book::Timestamp{1790000000}}});
    ASSERT_TRUE(opened && opened->writable());
    const auto refused = book("undo", "--take-over");
    EXPECT_EQ(refused.status, 3);
    EXPECT_THAT(refused.err, ::testing::AllOf(HasSubstr("Bo"), ::testing::Not(HasSubstr("--take-over"))));
}

TEST_F(BookCommands, NamesThatCannotBeShownAreRefusedAndThoseOfOlderBooksAreWrittenOut) {
    furnish();
    const auto refused = book("add-colony", "--format langstroth-deep --name \"$(printf 'P\\033[2Jlum')\"");
    EXPECT_EQ(refused.status, 2);
    EXPECT_THAT(
        refused.err,
        HasSubstr("colonies.name holds a control character (\\u{1b}); one line of letters, digits, blanks and signs"));
    EXPECT_EQ(book("add-colony", "--format langstroth-deep --name ' '").status, 2);
    const auto blank = folder.path() / "blank.larder";
    const auto unnamed = runProgram("book new '" + blank.string() + "' --station ca-halifax --yard ' '");
    EXPECT_EQ(unnamed.status, 2);
    EXPECT_THAT(unnamed.err, HasSubstr("name"));
    EXPECT_FALSE(std::filesystem::exists(blank));
    SQLite::Database(file(), SQLite::OPEN_READWRITE)
        .exec("UPDATE colonies SET name = 'Row' || char(27) || '[2J' || char(10) || char(8238) || '2'");
    for (const std::string& command :
         {std::string("info"), std::string("check"), std::string("story"),
          std::string("advise --as-of 2026-09-12 --winters 200"),
          std::string("follow --as-of 2026-12-12 --winters 200"), std::string("learned --as-of 2026-12-12")}) {
        const auto space = command.find(' ');
        const auto ran = book(command.substr(0, space), space == command.npos ? "" : command.substr(space));
        EXPECT_EQ(ran.status, 0) << command << ran.err;
        EXPECT_THAT(ran.out + ran.err, ::testing::Not(::testing::AnyOf(HasSubstr("\x1b"), HasSubstr("\xE2\x80\xAE"))))
            << command;
        if (command.starts_with("advise") || command.starts_with("follow"))
            EXPECT_THAT(ran.out, HasSubstr("Row\\u{1b}[2J\\u{a}\\u{202e}2")) << command;
    }
}

TEST_F(BookCommands, NumbersNearTheEndAreRefusedWithTheirPlaceAndFound) {
    furnish();
    const auto csv = folder.file("weighings.csv", "id,colony,date,gross_kg\n9223372036854775807,Pear,2026-09-12,34\n");
    const auto refused = book("import", "'" + csv.string() + "'");
    EXPECT_EQ(refused.status, 2);
    EXPECT_THAT(refused.err, HasSubstr("weighings.csv:2:1: \"9223372036854775807\" is not a number of an entry"));
    SQLite::Database(file(), SQLite::OPEN_READWRITE)
        .exec("UPDATE sqlite_sequence SET seq = 9223372036854775807 WHERE name = 'weighings'");
    EXPECT_EQ(done("add-weighing", "--colony Pear --date 2026-09-14 --gross 30"), "2\n");
    EXPECT_EQ(done("add-weighing", "--colony Pear --date 2026-09-15 --gross 31"), "3\n");
    const auto checked = book("check");
    EXPECT_EQ(checked.status, 2);
    EXPECT_THAT(checked.err, HasSubstr("weighings: the count of numbers given is not from 0 to 9007199254740991"));
}

TEST_F(BookCommands, ABookIsTheSameThroughALink) {
    furnish();
    const auto link = folder.path() / "link.larder";
    std::filesystem::create_symlink(file(), link);
    const auto before = jsonOf(done("backups", "--json")).items.size();
    EXPECT_EQ(runProgram("book backups '" + link.string() + "' --make").status, 0);
    EXPECT_EQ(jsonOf(done("backups", "--json")).items.size(), before + 1);
    EXPECT_FALSE(std::filesystem::exists(link.string() + "-backups"));
    const auto name = std::filesystem::path(at(jsonOf(done("backups", "--json")), "0.file").text).filename().string();
    EXPECT_EQ(runProgram("book restore '" + link.string() + "' " + name).status, 0);
}

TEST_F(BookCommands, ADamagedBookIsSalvaged) {
    furnish();
    for (int day = 10; day < 28; ++day)
        done("add-weighing", "--colony Pear --gross 33 --date 2026-09-" + std::to_string(day));
    auto bytes = textOfFile(file());
    for (std::size_t at = bytes.size() / 2; at < bytes.size() / 2 + 3000; ++at) bytes[at] = 'x';
    folder.file("windfall.larder", bytes);
    const auto checked = book("check");
    EXPECT_NE(checked.status, 0);
    for (const auto& line : linesOf(checked.err))
        EXPECT_THAT(line, ::testing::AllOf(StartsWith(file()), ::testing::Not(HasSubstr("\\u{a}"))));
    const auto saved = (folder.path() / "saved.larder").string();
    const auto report = jsonOf(done("salvage", "'" + saved + "' --json"));
    EXPECT_GE(at(report, "saved.yards").number, 1);
    EXPECT_EQ(textOfFile(file()), bytes) << "the damaged one is not touched";
    EXPECT_EQ(runProgram("book check '" + saved + "'").status, 0);
}

} // namespace
} // namespace winterlarder::book_test
