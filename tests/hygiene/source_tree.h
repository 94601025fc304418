// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <string>
#include <string_view>
#include <vector>

//! The project's own files, read by the tests that hold its rules. Paths are relative to the project folder, with '/'.
namespace hygiene {

inline std::filesystem::path projectFolder() { return SOURCE_FOLDER; }

inline bool isSetAside(const std::filesystem::path& path) {
    const std::string name = path.filename().string();
    return name == ".git" || name == "build" || name == ".cache";
}

//! Every file of the project below a folder ("" = all), sorted; build trees and .git left out.
inline std::vector<std::string> files(const std::string& below = "") {
    std::vector<std::string> found;
    const auto root = projectFolder() / below;
    if (!std::filesystem::exists(root)) return found;
    for (auto entry = std::filesystem::recursive_directory_iterator(root); entry != std::filesystem::end(entry);
         ++entry) {
        if (isSetAside(entry->path())) entry.disable_recursion_pending();
        else if (entry->is_regular_file())
            found.push_back(entry->path().lexically_relative(projectFolder()).generic_string());
    }
    std::sort(found.begin(), found.end());
    return found;
}

inline bool endsWithAny(const std::string& path, const std::vector<std::string>& endings) {
    return std::any_of(endings.begin(), endings.end(),
                       [&](const std::string& ending) { return path.ends_with(ending); });
}

//! C++ files below a folder.
inline std::vector<std::string> cppFiles(const std::string& below) {
    std::vector<std::string> found = files(below);
    std::erase_if(found, [](const std::string& path) { return !endsWithAny(path, {".h", ".cpp"}); });
    return found;
}

inline std::string text(const std::string& path) {
    std::ifstream stream(projectFolder() / path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

//! C++ with comments and the insides of string literals blanked out; line breaks stay.
inline std::string codeOnly(const std::string& code) {
    std::string out;
    for (std::size_t i = 0; i < code.size(); ++i) {
        if (code.compare(i, 2, "//") == 0) {
            i = std::min(code.find('\n', i), code.size());
            if (i < code.size()) out += '\n';
        } else if (code.compare(i, 2, "/*") == 0) {
            const auto end = std::min(code.find("*/", i + 2), code.size());
            out.append(static_cast<std::size_t>(std::count(code.begin() + static_cast<std::ptrdiff_t>(i),
                                                           code.begin() + static_cast<std::ptrdiff_t>(end), '\n')),
                       '\n');
            i = end + 1;
        } else if (code[i] == '"') {
            out += "\"\"";
            for (++i; i < code.size() && code[i] != '"'; ++i)
                if (code[i] == '\\') ++i;
        } else {
            out += code[i];
        }
    }
    return out;
}

//! What a file includes: "climate/site.h" or <vector>, with the delimiters kept.
inline std::vector<std::string> includes(const std::string& path) {
    static const std::regex include(R"re(^\s*#\s*include\s+([<"][^>"]+[>"]))re");
    std::vector<std::string> found;
    std::ifstream stream(projectFolder() / path);
    std::smatch match;
    for (std::string line; std::getline(stream, line);)
        if (std::regex_search(line, match, include)) found.push_back(match[1]);
    return found;
}

//! "core/winter/demand.h" -> "winter"; empty where the path has no such folder.
inline std::string folderBelow(const std::string& root, const std::string& path) {
    if (!path.starts_with(root + "/")) return {};
    const auto begin = root.size() + 1, end = path.find('/', begin);
    return end == std::string::npos ? std::string() : path.substr(begin, end - begin);
}

} // namespace hygiene
