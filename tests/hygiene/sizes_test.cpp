// SPDX-License-Identifier: GPL-3.0-or-later
// A file has one subject and at most 300 lines, a folder at most 40 files. What is larger stands here with its reason, and leaves the
// list once it is smaller.
#include "hygiene/source_tree.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <map>

namespace hygiene::sizes_test {
namespace {

constexpr long mostLines = 300, mostLinesOfAll = 450;
constexpr int mostFiles = 40, mostFilesOfAll = 70;

using Reasons = std::map<std::string, std::string>;

const Reasons& longFiles() {
    static const Reasons reasons = {
        {"app/cli/book_line.cpp", "a short function a command on a book: its words and options"},
        {"app/cli/command_line.cpp", "a short function a command: its words and options"},
        {"app/desk/book_actions.cpp", "one class: what the menus do with the book"},
        {"app/models/open_book.cpp", "one class: the book that is open, and what is asked of it"},
        {"app/pages/look_page.cpp", "one page: what was seen on the day of a look"},
        {"app/pages/what_if_page.cpp", "one page: what is tried out, and what would come of it"},
        {"app/photograph/photograph_view.cpp", "one class: a picture with what mouse and keys do to it"},
        {"tests/cli/follow_test.cpp", "what a followed winter says, an answer a test"},
        {"app/text/headline.cpp", "one class: a sentence for every rule"},
        {"app/text/reason_texts.cpp", "a list: a sentence a reason"},
        {"core/exchange/book/book_csv.cpp", "both ways of one form of table, whose rules belong together"},
        {"core/exchange/logs/scale_log.cpp", "one reader, from bytes to readings"},
        {"core/exchange/logs/scale_log_columns.cpp", "how a table of any form is told: one guess leans on the other"},
        {"core/quantity/text_parse.cpp", "one grammar: all ways a quantity is written"},
        {"tests/answer/doubts_test.cpp", "one rule, all entries in doubt"},
        {"tests/answer/followed_colony_test.cpp", "one fixture: a colony followed without a window"},
        {"tests/answer/question_of_case_test.cpp", "one rule a test: what a question takes from a case"},
        {"tests/app/following_test.cpp", "one fixture: a winter followed in the window"},
        {"tests/app/pages_test.cpp", "one fixture: the pages of a colony"},
        {"tests/app/photograph_window_test.cpp", "one fixture: a photograph traced from end to end"},
        {"tests/app/work_test.cpp", "one rule, all ways work ends"},
        {"tests/cli/book_test.cpp", "one fixture: the commands on a book"},
        {"tests/climate/given_dates_test.cpp", "one rule, all dates it may be given"},
        {"tests/exchange/case_faults_test.cpp", "a list: every fault of a case, with its place"},
        {"tests/exchange/book_csv_test.cpp", "one form of table, both ways"},
        {"tests/feeding/schedule_test.cpp", "one rule, all branches of a plan"},
        {"tests/support/random_yards.cpp", "one generator, a short function a kind of record"},
        {"tests/winter/published_checks_test.cpp", "a list: a check a published value"},
    };
    return reasons;
}

const Reasons& fullFolders() {
    static const Reasons reasons = {
        {"app/cli", "a command a file, beside what they share"},
        {"app/desk", "the main window and the services that live as long as it does"},
        {"app/text", "a file a part of what is said"},
        {"app/models", "the lists and edits of the window, a pair of small files each"},
        {"core/answer", "a pair of files for each part of a case and of what came after it"},
        {"tests/app", "a file a part of the window; rooms would part them from their fixtures"},
    };
    return reasons;
}

bool hasLines(const std::string& path) {
    return endsWithAny(path, {".h", ".cpp", ".cmake", "CMakeLists.txt", ".sh", ".py"}) || text(path).starts_with("#!");
}

std::map<std::string, int> filesByFolder() {
    std::map<std::string, int> counts;
    for (const std::string root : {"app", "core", "tests"})
        for (const std::string& path : cppFiles(root)) ++counts[path.substr(0, path.rfind('/'))];
    return counts;
}

TEST(Sizes, FilesOfOver300LinesHaveAReason) {
    for (const std::string& path : files()) {
        if (!hasLines(path)) continue;
        const std::string content = text(path);
        const auto lines = std::count(content.begin(), content.end(), '\n');
        EXPECT_LE(lines, mostLinesOfAll) << path;
        if (lines > mostLines)
            EXPECT_TRUE(longFiles().contains(path)) << path << " has " << lines << " lines: part it, or say why not";
        else
            EXPECT_FALSE(longFiles().contains(path))
                << path << " has " << lines << " lines: it needs no reason any more";
    }
    for (const auto& [path, reason] : longFiles()) EXPECT_TRUE(std::filesystem::exists(projectFolder() / path)) << path;
}

TEST(Sizes, FoldersOfOver40FilesHaveAReason) {
    const auto counts = filesByFolder();
    for (const auto& [folder, count] : counts) {
        EXPECT_LE(count, mostFilesOfAll) << folder;
        if (count > mostFiles)
            EXPECT_TRUE(fullFolders().contains(folder))
                << folder << " has " << count << " files: make rooms, or say why not";
        else
            EXPECT_FALSE(fullFolders().contains(folder))
                << folder << " has " << count << " files: it needs no reason any more";
    }
    for (const auto& [folder, reason] : fullFolders()) EXPECT_TRUE(counts.contains(folder)) << folder;
    EXPECT_GT(counts.size(), 30U);
}

} // namespace
} // namespace hygiene::sizes_test
