// SPDX-License-Identifier: GPL-3.0-or-later
// Every C++ file is laid out as .clang-format says.
#include "hygiene/source_tree.h"

#include <cstdlib>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <gtest/gtest.h>

namespace hygiene::format_test {
namespace {

// What clang-format says of files, given as words of a shell; empty where it would leave them as they are.
std::string changesWanted(const std::string& files) {
    const auto log = std::filesystem::path(BUILD_FOLDER) / "format.log";
    const std::string command = fmt::format("cd '{}' && clang-format --style=file --dry-run --Werror {} > '{}' 2>&1",
                                            projectFolder().string(), files, log.string());
    const bool same = std::system(command.c_str()) == 0;
    std::ifstream stream(log);
    const std::string said((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
    std::filesystem::remove(log);
    return same ? std::string() : "clang-format -i of it would change: " + said.substr(0, 1000);
}

TEST(Format, EveryFileIsAsClangFormatMakesIt) {
    std::string files;
    int seen = 0;
    for (const std::string root : {"app", "core", "tests"})
        for (const std::string& path : cppFiles(root)) {
            ++seen;
            files += " '" + path + "'";
        }
    EXPECT_EQ(changesWanted(files), "");
    EXPECT_GT(seen, 500);
}

TEST(Format, AnotherLayoutIsSeen) {
    const auto file = std::filesystem::path(BUILD_FOLDER) / "badly_laid_out.cpp";
    std::ofstream(file) << "int  f( ){return 1 ;}\n";
    EXPECT_NE(changesWanted("'" + file.string() + "'"), "");
    std::filesystem::remove(file);
}

} // namespace
} // namespace hygiene::format_test
