// SPDX-License-Identifier: GPL-3.0-or-later
// Every header can be the first a file includes. Where some .cpp includes it first the build has shown that already; the
// others are compiled here, two at a time, with the flags of a neighbour.
#include "hygiene/source_tree.h"

#include <cstdlib>
#include <fmt/format.h>
#include <future>
#include <gtest/gtest.h>
#include <map>
#include <rapidjson/document.h>
#include <set>

namespace {

// Headers that the .cpp files of programs and tests include before anything else.
std::set<std::string> includedFirst() {
    std::set<std::string> headers;
    for (const std::string root : {"core", "app", "tests"})
        for (const std::string& path : hygiene::cppFiles(root)) {
            const std::vector<std::string> included = hygiene::includes(path);
            if (!path.ends_with(".cpp") || included.empty() || !included.front().starts_with('"')) continue;
            const std::string named = included.front().substr(1, included.front().size() - 2);
            for (const std::string folder : {"core/", "app/"})
                if (std::filesystem::exists(hygiene::projectFolder() / (folder + named))) headers.insert(folder + named);
        }
    return headers;
}

// A compile command for each folder, without what belongs to one file.
std::map<std::string, std::string> commandsByFolder() {
    std::ifstream stream(std::filesystem::path(BUILD_FOLDER) / "compile_commands.json");
    const std::string json((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
    rapidjson::Document document;
    document.Parse(json.c_str());
    std::map<std::string, std::string> commands;
    if (!document.IsArray()) return commands;
    const std::regex ofOneFile(R"(\s-o\s+\S+|\s-c\s+\S+|\s-M[DFT]\s+\S*|^.*ccache\s+|\s-MD\b|\s-include\s+\S*cmake_pch\.hxx|\s-Winvalid-pch\b)");
    for (const auto& entry : document.GetArray()) {
        const auto file = std::filesystem::path(entry["file"].GetString()).lexically_relative(hygiene::projectFolder());
        const std::string folder = file.parent_path().generic_string();
        if (folder.starts_with("core/") || folder.starts_with("app/"))
            commands.emplace(folder, std::regex_replace(std::string(entry["command"].GetString()), ofOneFile, ""));
    }
    return commands;
}

std::string commandFor(const std::string& header, const std::map<std::string, std::string>& commands) {
    const auto exact = commands.find(header.substr(0, header.rfind('/')));
    if (exact != commands.end()) return exact->second;
    const auto near = commands.lower_bound(header.substr(0, header.find('/') + 1));
    return near == commands.end() ? std::string() : near->second;
}

// What the compiler says of the header alone; empty where it compiles.
std::string complaint(const std::string& header, const std::string& command) {
    const std::string log = fmt::format("{}/header_alone_{}.log", BUILD_FOLDER, std::regex_replace(header, std::regex("/"), "_"));
    const std::string line = fmt::format("cd '{}' && {} -fsyntax-only -include '{}' -x c++ /dev/null > '{}' 2>&1", BUILD_FOLDER,
                                         command, (hygiene::projectFolder() / header).string(), log);
    const int status = std::system(line.c_str());
    std::ifstream stream(log);
    const std::string said((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
    std::filesystem::remove(log);
    return status == 0 ? std::string() : line + "\n" + said;
}

TEST(Headers, EveryOneCompilesAlone) {
    const auto commands = commandsByFolder();
    ASSERT_FALSE(commands.empty()) << "compile_commands.json names no file of the project";
    const std::set<std::string> shown = includedFirst();
    EXPECT_GT(shown.size(), 5U);
    std::vector<std::string> alone;
    for (const char* root : {"core", "app"})
        for (const std::string& path : hygiene::cppFiles(root))
            if (path.ends_with(".h") && !shown.contains(path)) alone.push_back(path);
    const auto half = [&](std::size_t first) {
        std::vector<std::string> complaints;
        for (std::size_t i = first; i < alone.size(); i += 2)
            if (std::string said = complaint(alone[i], commandFor(alone[i], commands)); !said.empty()) complaints.push_back(std::move(said));
        return complaints;
    };
    auto other = std::async(std::launch::async, half, std::size_t{1});
    for (const std::string& said : half(0)) ADD_FAILURE() << said;
    for (const std::string& said : other.get()) ADD_FAILURE() << said;
}

TEST(Headers, AFaultyOneIsSeen) {
    const auto commands = commandsByFolder();
    const std::string name = "build_folder_header.h";
    const auto path = std::filesystem::path(BUILD_FOLDER) / name;
    std::ofstream(path) << "inline std::string words() { return {}; }\n";
    const std::string relative = path.lexically_relative(hygiene::projectFolder()).generic_string();
    EXPECT_NE(complaint(relative, commandFor("core/support/outcome.h", commands)), "");
    std::filesystem::remove(path);
}

TEST(Headers, EveryOneIsReadOnce) {
    for (const char* root : {"core", "app"})
        for (const std::string& path : hygiene::cppFiles(root))
            if (path.ends_with(".h")) {
                EXPECT_NE(hygiene::text(path).find("#pragma once"), std::string::npos) << path;
            }
}

} // namespace
