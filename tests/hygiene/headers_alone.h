// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hygiene/source_tree.h"

#include <cstdlib>
#include <fmt/format.h>
#include <future>
#include <map>
#include <rapidjson/document.h>

//! Headers compiled each by itself, with the flags of the library they belong to: what a header uses, it includes. (Sources of a folder
//! are compiled together, so the build does not show it.)
namespace hygiene {

//! A compile command of each target, without what belongs to one file.
inline std::map<std::string, std::string> commandsByTarget() {
    std::ifstream stream(std::filesystem::path(BUILD_FOLDER) / "compile_commands.json");
    const std::string json((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
    rapidjson::Document document;
    document.Parse(json.c_str());
    std::map<std::string, std::string> commands;
    if (!document.IsArray()) return commands;
    const std::regex ofOneFile(R"(\s-o\s+\S+|\s-c\s+\S+|\s-M[DFT]\s+\S*|^.*ccache\s+|\s-MD\b)"),
        target(R"(CMakeFiles/([^/]+)\.dir/)");
    for (const auto& entry : document.GetArray()) {
        const std::string command = entry["command"].GetString();
        std::smatch found;
        if (std::regex_search(command, found, target))
            commands.emplace(found[1], std::regex_replace(command, ofOneFile, ""));
    }
    return commands;
}

inline std::string targetOf(const std::string& header) {
    if (header.starts_with("core/book/")) return "winterlarder_book";
    if (header.starts_with("core/")) return "winterlarder_core";
    if (header.starts_with("app/cli/")) return "winterlarder-cli";
    return header.starts_with("app/answer/") || header.starts_with("app/text/") ? "winterlarder_answer"
                                                                                : "winterlarder_desk";
}

//! What the compiler says of the header alone; empty where it compiles.
inline std::string complaint(const std::string& header, const std::string& command) {
    const std::string log =
        fmt::format("{}/header_alone_{}.log", BUILD_FOLDER, std::regex_replace(header, std::regex("/"), "_"));
    const std::string line = fmt::format("cd '{}' && {} -fsyntax-only -include '{}' -x c++ /dev/null > '{}' 2>&1",
                                         BUILD_FOLDER, command, (projectFolder() / header).string(), log);
    const int status = std::system(line.c_str());
    std::ifstream stream(log);
    const std::string said((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
    std::filesystem::remove(log);
    return status == 0 ? std::string() : line + "\n" + said;
}

//! What is said of the headers below a folder, two compiled at a time.
inline std::vector<std::string> complaintsBelow(const std::string& root) {
    const auto commands = commandsByTarget();
    std::vector<std::string> headers;
    for (const std::string& path : cppFiles(root))
        if (path.ends_with(".h")) headers.push_back(path);
    const auto half = [&](std::size_t first) {
        std::vector<std::string> complaints;
        for (std::size_t i = first; i < headers.size(); i += 2)
            if (std::string said = complaint(headers[i], commands.at(targetOf(headers[i]))); !said.empty())
                complaints.push_back(std::move(said));
        return complaints;
    };
    auto other = std::async(std::launch::async, half, std::size_t{1});
    auto all = half(0);
    for (auto& said : other.get()) all.push_back(std::move(said));
    if (headers.size() < 50) all.push_back(fmt::format("only {} headers below {}", headers.size(), root));
    return all;
}

} // namespace hygiene
