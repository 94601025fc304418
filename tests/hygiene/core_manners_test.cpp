// SPDX-License-Identifier: GPL-3.0-or-later
// The core never prints, aborts, reads the clock or the environment, and keeps no mutable state of its own.
#include "hygiene/source_tree.h"

#include <array>
#include <cstdio>
#include <gtest/gtest.h>
#include <set>
#include <sstream>

namespace hygiene::core_manners_test {
namespace {

std::string outputOf(const std::string& command) {
    std::string output;
    FILE* pipe = popen(command.c_str(), "r");
    if (!pipe) return output;
    std::array<char, 4096> piece{};
    while (const std::size_t got = std::fread(piece.data(), 1, piece.size(), pipe)) output.append(piece.data(), got);
    EXPECT_EQ(pclose(pipe), 0) << command;
    return output;
}

const std::string library = std::string(BUILD_FOLDER) + "/libwinterlarder_core.a";

// Lines of code of the core that match a pattern, with their place.
std::vector<std::string> linesMatching(const std::regex& pattern) {
    std::vector<std::string> found;
    for (const std::string& path : hygiene::cppFiles("core")) {
        std::istringstream code(hygiene::codeOnly(hygiene::text(path)));
        int number = 0;
        for (std::string line; std::getline(code, line);)
            if (++number; std::regex_search(line, pattern))
                found.push_back(path + ":" + std::to_string(number) + ": " + line);
    }
    return found;
}

void expectNone(const std::string& pattern, const char* why) {
    for (const std::string& line : linesMatching(std::regex(pattern))) ADD_FAILURE() << why << ": " << line;
}

TEST(CoreManners, PrintsNothing) {
    expectNone(R"(\b(std::)?(cout|cerr|clog|wcout|wcerr)\b|#\s*include\s*<iostream>)", "prints");
    expectNone(R"(\b(f|v|vf|w)?printf\s*\(|\bf?puts\s*\(|\bf?putc(har)?\s*\(|\bperror\s*\(|\bfmt::print\b|\bqDebug\b)",
               "prints");
}

TEST(CoreManners, ReadsNeitherClockNorEnvironment) {
    expectNone(
        R"(\b(system|steady|high_resolution|utc|file)_clock\b|\bclock_gettime\b|\bgettimeofday\b|\blocaltime|\bgmtime)",
        "reads the clock");
    expectNone(
        R"(\bstd::(time|clock)\s*\(|\btime\s*\(\s*(nullptr|NULL|0)\s*\)|\bday_clock\b|\b(second|microsec)_clock\b)",
        "reads the clock");
    expectNone(R"(\b(secure_)?getenv\b|\bsetenv\b|\benviron\b|\bsetlocale\b|\bcurrent_path\s*\(\s*\))",
               "reads the environment");
    expectNone(R"(\brandom_device\b|\bs?rand\s*\(|\bmt19937)", "draws numbers of its own");
}

TEST(CoreManners, NeverEndsTheProgram) {
    expectNone(R"(\bstd::(abort|exit|_Exit|quick_exit|terminate)\b|\b(abort|exit|_exit)\s*\(|\bassert\s*\()",
               "ends the program");
}

TEST(CoreManners, DeclaresNoMutableStatics) {
    // static or thread_local data that is neither const nor constexpr; functions have an opening parenthesis before '=' or ';'.
    const std::regex declared(
        R"(\b(static|thread_local|extern)\s+(?!const\b|constexpr\b|inline constexpr\b|constinit const\b)[\w:<>,\s\*&]+?\s[\w]+\s*(=|;|\{|\[))");
    for (const std::string& line : linesMatching(declared)) ADD_FAILURE() << "mutable: " << line;
}

// A constant at namespace scope that is set up before main: const gives it internal linkage, which its name shows by an L
// before its last part. A static that is not const would show the same; DeclaresNoMutableStatics finds it. std's own object
// comes with a header of the random numbers.
bool isConstant(const std::string& mangled) {
    return mangled == "_ZStL8__ioinit" ||
           std::regex_match(mangled, std::regex(R"(_ZN?(\d+\w+?|12_GLOBAL__N_1)*L\d+\w+)"));
}

// What the compiler made of it: no object in a writable section but constants, set up before main or once under a guard.
TEST(CoreManners, TheLibraryHasNoWritableObjects) {
    std::istringstream table(outputOf("objdump -t '" + library + "'"));
    const std::regex object(
        R"(\sO\s+(\.t?(?:bss|data)(?:\.\S+)?)\s+[0-9a-f]+\s+(?:0x[0-9a-f]+\s+|\.\w+\s+)?(\S+)\s*$)");
    std::vector<std::string> writable;
    std::set<std::string> guarded;
    std::smatch match;
    int symbols = 0;
    for (std::string line; std::getline(table, line); ++symbols) {
        if (!std::regex_search(line, match, object)) continue;
        const std::string section = match[1], name = match[2];
        if (section.starts_with(".data.rel.ro")) continue;
        if (name.starts_with("_ZGV")) guarded.insert("_Z" + name.substr(4));
        else writable.push_back(name);
    }
    EXPECT_GT(symbols, 100) << library;
    const std::regex instrumentation(
        "^(\\.?L?ASAN|__asan|__odr_asan|__tsan|__ubsan|__gcov|__prof|DW\\.ref|\\.L|\\.Lubsan).*");
    for (const std::string& name : writable)
        EXPECT_TRUE(guarded.contains(name) || isConstant(name) || std::regex_match(name, instrumentation))
            << "writable: " << name;
}

TEST(CoreManners, TheLibraryCallsNothingItMustNot) {
    std::istringstream table(outputOf("nm -u '" + library + "'"));
    std::set<std::string> forbidden = {"getenv",
                                       "secure_getenv",
                                       "setlocale",
                                       "time",
                                       "localtime",
                                       "localtime_r",
                                       "gmtime",
                                       "gmtime_r",
                                       "gettimeofday",
                                       "clock",
                                       "clock_gettime",
                                       "printf",
                                       "fprintf",
                                       "vprintf",
                                       "vfprintf",
                                       "puts",
                                       "putchar",
                                       "perror",
                                       "exit",
                                       "_exit",
                                       "abort",
                                       "rand",
                                       "srand",
                                       "__assert_fail",
                                       "_ZSt4cout",
                                       "_ZSt4cerr",
                                       "_ZSt4clog",
                                       "_ZNSt6chrono3_V212system_clock3nowEv",
                                       "_ZNSt6chrono3_V212steady_clock3nowEv",
                                       "_ZNSt13random_device9_M_getvalEv"};
#ifndef NDEBUG
    forbidden.erase("__assert_fail"); // of the JSON library's headers, which check themselves in such builds
#endif
    std::string object, kind, name;
    int symbols = 0;
    for (std::string line; std::getline(table, line);) {
        if (line.ends_with(":")) object = line;
        std::istringstream words(line);
        if (!(words >> kind >> name) || kind != "U") continue;
        ++symbols;
        EXPECT_FALSE(forbidden.contains(name)) << object << " calls " << name;
    }
    EXPECT_GT(symbols, 100) << library;
}

TEST(CoreManners, NamesOfConstantsAreToldFromOthers) {
    EXPECT_TRUE(isConstant("_ZN12winterlarder7climate12_GLOBAL__N_1L6fieldsE"));
    EXPECT_TRUE(isConstant("_ZN12winterlarderL6fieldsE"));
    EXPECT_FALSE(isConstant("_ZN12winterlarder7climate12_GLOBAL__N_16fieldsE"));
    EXPECT_FALSE(isConstant("_ZN12winterlarder6LadderE"));
    EXPECT_FALSE(isConstant("_ZN12winterlarder6fieldsE"));
}

// The checks above see what they are for.
TEST(CoreManners, CommentsAndWordsInQuotationMarksAreNoCode) {
    EXPECT_EQ(hygiene::codeOnly("a; // std::cout\nb(\"printf( \\\" \"); /* exit(\n) */ c"), "a; \nb(\"\"); \n c");
}

} // namespace
} // namespace hygiene::core_manners_test
