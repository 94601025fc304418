// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/json/json_tree.h"

#include <atomic>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

namespace winterlarder::testing {

inline std::string textOfFile(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) throw std::runtime_error("cannot read " + path.string());
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

//! A folder of its own for one test, gone afterwards.
class TemporaryFolder {
public:
    TemporaryFolder() {
        static std::atomic<int> number{0};
        path_ = std::filesystem::temp_directory_path() /
                ("winterlarder-test-" + std::to_string(getpid()) + "-" + std::to_string(number++));
        std::filesystem::create_directories(path_);
    }
    ~TemporaryFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    std::filesystem::path file(const std::string& name, const std::string& text) const {
        std::ofstream(path_ / name, std::ios::binary) << text;
        return path_ / name;
    }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

struct Ran {
    int status = -1;
    std::string out, err;
};

//! The day it is for the program under test, whatever the clock says; `environment` may say another.
inline const std::string testDay = "2028-06-01";

//! Runs the built program as a shell would, in the folder of the test cases; `arguments` are shell words.
inline Ran runProgram(const std::string& arguments, const std::string& input = "",
                      const std::string& environment = "") {
    const TemporaryFolder folder;
    const auto in = folder.file("in", input), out = folder.path() / "out", err = folder.path() / "err";
    const std::string command =
        "cd '" SOURCE_FOLDER "/tests/cli/cases' && env -u WINTERLARDER_DATA WINTERLARDER_TODAY=" + testDay + " " +
        environment + " '" BUILD_FOLDER "/winterlarder-cli' " + arguments + " <'" + in.string() + "' >'" +
        out.string() + "' 2>'" + err.string() + "'";
    const int ended = std::system(command.c_str());
    return {WIFEXITED(ended) ? WEXITSTATUS(ended) : -1, textOfFile(out), textOfFile(err)};
}

//! The JSON document in a text; throws where there is none.
inline exchange::JsonValue jsonOf(const std::string& text) {
    auto reading = exchange::readJson(text, "output");
    if (!reading.problems.empty() || !reading.value)
        throw std::runtime_error("not JSON: " + (reading.problems.empty() ? text : describe(reading.problems.front())));
    return std::move(*reading.value);
}

inline const exchange::JsonValue* memberOf(const exchange::JsonValue& object, const std::string& name) {
    for (const auto& member : object.members)
        if (member.name == name) return &member.value;
    return nullptr;
}

//! A member by its path, "feed.visits.0.date"; throws where there is none.
inline const exchange::JsonValue& at(const exchange::JsonValue& whole, const std::string& path) {
    const exchange::JsonValue* value = &whole;
    std::istringstream parts(path);
    for (std::string part; std::getline(parts, part, '.');) {
        if (value->kind == exchange::JsonValue::Kind::List)
            value = std::stoul(part) < value->items.size() ? &value->items[std::stoul(part)] : nullptr;
        else value = memberOf(*value, part);
        if (!value) throw std::runtime_error("no " + path);
    }
    return *value;
}

inline std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

//! A case file on one line, for JSON Lines.
inline std::string oneLine(const std::string& caseName) {
    std::string text = textOfFile(SOURCE_FOLDER "/tests/cli/cases/" + caseName);
    for (char& c : text)
        if (c == '\n') c = ' ';
    return text + "\n";
}

} // namespace winterlarder::testing
