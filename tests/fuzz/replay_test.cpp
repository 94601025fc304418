// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/targets.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <random>
#include <sstream>

namespace winterlarder::fuzz {

void PrintTo(const Target& target, std::ostream* to);
void PrintTo(const Target& target, std::ostream* to) { *to << target.name; }

namespace {

namespace files = std::filesystem;

std::vector<std::pair<std::string, std::string>> kept(const std::string& target) {
    std::vector<std::pair<std::string, std::string>> inputs;
    for (const auto& each : files::directory_iterator(files::path(SOURCE_FOLDER) / "tests/fuzz/corpus" / target)) {
        std::ostringstream bytes;
        bytes << std::ifstream(each.path(), std::ios::binary).rdbuf();
        inputs.emplace_back(each.path().filename().string(), bytes.str());
    }
    std::sort(inputs.begin(), inputs.end());
    return inputs;
}

// As damage does: some bytes others, some gone, some twice, the end cut off.
std::string damaged(std::string text, std::mt19937& dice) {
    const auto below = [&](std::size_t end) { return end == 0 ? 0 : dice() % end; };
    for (std::size_t times = 1 + below(4); times > 0 && !text.empty(); --times) {
        const std::size_t at = below(text.size()), many = std::min(text.size() - at, 1 + below(8));
        switch (below(4)) {
        case 0: text[at] = static_cast<char>(dice()); break;
        case 1: text.erase(at, many); break;
        case 2: text.insert(at, text.substr(at, many)); break;
        default: text.resize(at);
        }
    }
    return text;
}

class Fuzz : public ::testing::TestWithParam<Target> {};

} // namespace

TEST_P(Fuzz, WhatIsKeptHolds) {
    const auto inputs = kept(GetParam().name);
    ASSERT_FALSE(inputs.empty());
    for (const auto& [name, text] : inputs) EXPECT_NO_THROW(GetParam().run(text)) << name;
}

TEST_P(Fuzz, WhatIsKeptAndThenDamagedHolds) {
    std::mt19937 dice(1);
    const int copies = std::string(GetParam().name).starts_with("book_") ? 6 : 60;
    for (const auto& [name, text] : kept(GetParam().name))
        for (int copy = 0; copy < copies; ++copy) {
            const auto input = damaged(text, dice);
            EXPECT_NO_THROW(GetParam().run(input)) << name << ", copy " << copy << ": " << input.substr(0, 400);
        }
}

INSTANTIATE_TEST_SUITE_P(Targets, Fuzz, ::testing::ValuesIn(targets()),
                         [](const auto& one) { return std::string(one.param.name); });

} // namespace winterlarder::fuzz
