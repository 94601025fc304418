// SPDX-License-Identifier: GPL-3.0-or-later
// What holds for every file of the project: licence line, words, packages, scripts.
#include "hygiene/source_tree.h"

#include <cstdlib>
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <map>
#include <sstream>

namespace hygiene::files_test {
namespace {

bool isScript(const std::string& path) { return hygiene::text(path).starts_with("#!"); }

bool isSource(const std::string& path) {
    return hygiene::endsWithAny(path, {".h", ".cpp", ".cmake", "CMakeLists.txt", ".sh", ".py"}) || isScript(path);
}

bool isBinary(const std::string& path) {
    return hygiene::endsWithAny(path, {".png", ".larder", ".pdf", ".qm", ".ico"}) || path == "LICENSE";
}

TEST(Files, EverySourceFileNamesItsLicence) {
    int sources = 0;
    for (const std::string& path : hygiene::files()) {
        if (!isSource(path)) continue;
        ++sources;
        const std::string content = hygiene::text(path);
        const auto at = content.find("SPDX-License-Identifier: GPL-3.0-or-later");
        EXPECT_NE(at, std::string::npos) << path;
        EXPECT_LT(std::count(content.begin(),
                             content.begin() + static_cast<std::ptrdiff_t>(std::min(at, content.size())), '\n'),
                  2)
            << path << " names it too late";
    }
    EXPECT_GT(sources, 20);
}

TEST(Files, NamesSayWhatIsInThem) {
    const std::regex vague(R"((^|[/_])(utils?|helpers?|managers?|misc|common|stuff)([_./]|$))");
    for (const std::string& path : hygiene::files()) EXPECT_FALSE(std::regex_search(path, vague)) << path;
}

// Words that speak of anything but the project; written in two halves so that this file passes its own test.
std::vector<std::string> foreignWords() {
    const std::vector<std::pair<std::string, std::string>> halves = {
        {"trans", "cript"},     {"seed ", "document"},  {"steering ", "repo"},  {"this ", "session"},
        {"before", "-stop"},    {"/work/", "main"},     {"/work/", "shared"},   {"/work/", "h/"},
        {"../", "shared"},      {"deb.deb", "ian.org"}, {"registry", ".npmjs"}, {"SPEC", ".md"},
        {"checks-", "visible"}, {"language ", "model"}, {"chat", "bot"},        {"co-authored", "-by"},
        {"pypi", ".org"}};
    std::vector<std::string> words;
    for (const auto& [first, second] : halves) words.push_back(first + second);
    return words;
}

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(c < 128 ? std::tolower(c) : c); });
    return text;
}

TEST(Files, SpeakOfTheProjectAlone) {
    const std::vector<std::string> words = foreignWords();
    for (const std::string& path : hygiene::files()) {
        if (isBinary(path)) continue;
        const std::string content = lower(path + "\n" + hygiene::text(path));
        for (const std::string& word : words) {
            const auto at = content.find(lower(word));
            EXPECT_EQ(at, std::string::npos)
                << path << ": " << word << ", line "
                << std::count(content.begin(),
                              content.begin() + static_cast<std::ptrdiff_t>(std::min(at, content.size())), '\n');
        }
    }
}

std::vector<std::string> packagesOf(const std::string& path) {
    std::vector<std::string> packages;
    std::istringstream lines(hygiene::text(path));
    for (std::string line; std::getline(lines, line);)
        if (!line.empty() && !line.starts_with('#')) packages.push_back(line);
    return packages;
}

TEST(Packages, AreListedOnce) {
    std::map<std::string, std::string> where;
    for (const std::string& list : hygiene::files("resources/packages"))
        for (const std::string& package : packagesOf(list)) {
            EXPECT_TRUE(std::regex_match(package, std::regex("[a-z0-9][a-z0-9.+-]+"))) << list << ": " << package;
            EXPECT_TRUE(where.emplace(package, list).second)
                << package << " is in " << where[package] << " and in " << list;
        }
    EXPECT_GT(where.size(), 20U);
    for (const std::string& path : hygiene::files()) {
        if (!isScript(path) && !hygiene::endsWithAny(path, {".sh", ".yml", ".yaml", ".cmake", "CMakeLists.txt"}))
            continue;
        const std::string content = hygiene::text(path);
        for (const auto& [package, list] : where)
            EXPECT_FALSE(package.ends_with("-dev") && content.find(package) != std::string::npos)
                << path << " repeats " << package << " of " << list;
    }
}

std::string quoted(const std::string& path) { return fmt::format("'{}'", (hygiene::projectFolder() / path).string()); }
int statusOf(const std::string& command) { return std::system(command.c_str()); }

const std::vector<std::string> runScripts = {"demo/run", "tests/run", ".ci/run"};

TEST(Scripts, AreThereAndCanBeRun) {
    for (const std::string& path : runScripts) {
        ASSERT_TRUE(std::filesystem::exists(hygiene::projectFolder() / path)) << path;
        const auto mode = std::filesystem::status(hygiene::projectFolder() / path).permissions();
        EXPECT_NE(mode & std::filesystem::perms::owner_exec, std::filesystem::perms::none) << path;
    }
}

TEST(Scripts, AreStrictAndParse) {
    for (const std::string& path : hygiene::files()) {
        if (!isScript(path) || hygiene::text(path).find("bash") > 40) continue;
        EXPECT_NE(hygiene::text(path).find("set -euo pipefail"), std::string::npos) << path;
        EXPECT_EQ(statusOf("bash -n " + quoted(path)), 0) << path;
    }
}

TEST(Scripts, KnowTheirOptions) {
    for (const std::string& path : runScripts) {
        EXPECT_EQ(statusOf("cd / && " + quoted(path) + " --help > /dev/null"), 0) << path;
        EXPECT_NE(statusOf("cd / && " + quoted(path) + " --no-such-option > /dev/null 2>&1"), 0) << path;
    }
}

TEST(Files, TestsThatCommentsNameAreThere) {
    static const std::regex named(R"(tests/[a-z0-9_/]+\.cpp)");
    int seen = 0;
    for (const char* below : {"core", "app"})
        for (const std::string& path : hygiene::cppFiles(below)) {
            const std::string text = hygiene::text(path);
            for (auto name = std::sregex_iterator(text.begin(), text.end(), named); name != std::sregex_iterator();
                 ++name, ++seen)
                EXPECT_TRUE(std::filesystem::exists(hygiene::projectFolder() / name->str()))
                    << path << " names " << name->str();
        }
    EXPECT_GT(seen, 50);
}

} // namespace
} // namespace hygiene::files_test
