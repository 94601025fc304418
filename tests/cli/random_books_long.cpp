// SPDX-License-Identifier: GPL-3.0-or-later
// Twenty thousand books, or as many as WINTERLARDER_BOOKS says, from the seed WINTERLARDER_SEED on.
#include "cli/random_books.h"

#include <cstdlib>
#include <iostream>

namespace winterlarder {
namespace {

std::uint64_t fromEnvironment(const char* name, std::uint64_t otherwise) {
    const char* text = std::getenv(name);
    return text ? std::strtoull(text, nullptr, 10) : otherwise;
}

TEST(ManyRandomBooks, EndInAnAnswerOrARefusalWithAPlace) {
    winterlarder::testing::RandomBooks books;
    const auto first = fromEnvironment("WINTERLARDER_SEED", 1000), count = fromEnvironment("WINTERLARDER_BOOKS", 20000);
    for (std::uint64_t seed = first; seed < first + count; ++seed) {
        books.put(seed);
        if ((seed - first + 1) % 100 == 0) std::cout << seed - first + 1 << " books" << std::endl;
    }
    for (const auto& [how, often] : books.ended) std::cout << how << ": " << often << '\n';
}

} // namespace
} // namespace winterlarder
