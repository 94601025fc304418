// SPDX-License-Identifier: GPL-3.0-or-later
// DEVELOPERS.md speaks of the tree as it is, in pieces that can be read at one sitting.
#include "hygiene/source_tree.h"

#include <gtest/gtest.h>
#include <set>
#include <sstream>

namespace hygiene::developers_test {
namespace {

const std::string page = "DEVELOPERS.md";

// The last parts of all folders' names.
std::set<std::string> folderNames() {
    std::set<std::string> names;
    for (const std::string& path : files())
        for (auto folder = std::filesystem::path(path).parent_path(); !folder.empty(); folder = folder.parent_path())
            names.insert(folder.filename().string());
    return names;
}

// The list of folders: the first block set in ```.
std::string listOfFolders() {
    const std::string whole = text(page);
    const auto begin = whole.find("```"), end = whole.find("```", begin + 3);
    return end == whole.npos ? std::string() : whole.substr(begin + 3, end - begin - 3);
}

TEST(Developers, EveryFolderWithSourcesIsListed) {
    int seen = 0;
    for (const std::string root : {"core", "app"})
        for (const std::string& path : cppFiles(root)) {
            const std::string folder = std::filesystem::path(path).parent_path().filename().string();
            EXPECT_TRUE(std::regex_search(listOfFolders(), std::regex("(^|[\\s])" + folder + "/"))) << path;
            ++seen;
        }
    EXPECT_GT(seen, 300);
}

TEST(Developers, EveryListedFolderIsThere) {
    const std::string list = listOfFolders();
    const std::regex name("(^|\\s)([a-z_]+)/");
    const auto there = folderNames();
    int seen = 0;
    for (auto found = std::sregex_iterator(list.begin(), list.end(), name); found != std::sregex_iterator();
         ++found, ++seen)
        EXPECT_TRUE(there.contains((*found)[2])) << (*found)[2];
    EXPECT_GT(seen, 30);
}

// `tests/...`, `core/...`, `app/...`, `shared/...` and `resources/...` in backticks, with or without an ending.
TEST(Developers, FilesItNamesAreThere) {
    const std::string whole = text(page);
    const std::regex named("`((?:tests|core|app|shared|resources|demo)/[a-z0-9_./-]+)`");
    int seen = 0;
    for (auto found = std::sregex_iterator(whole.begin(), whole.end(), named); found != std::sregex_iterator();
         ++found, ++seen) {
        const auto path = projectFolder() / (*found)[1].str();
        const bool there = std::filesystem::exists(path) || std::filesystem::exists(path.string() + ".h") ||
                           std::filesystem::exists(path.string() + ".cpp");
        EXPECT_TRUE(there) << (*found)[1];
    }
    EXPECT_GT(seen, 50);
}

// A screen shows some fifty lines of 120 letters.
TEST(Developers, NoTopicIsLongerThanTwoScreens) {
    std::istringstream lines(text(page));
    std::string topic;
    std::size_t height = 0;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("##")) topic = line, height = 0;
        height += 1 + line.size() / 120;
        EXPECT_LE(height, 100U) << topic;
    }
}

} // namespace
} // namespace hygiene::developers_test
