// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/random_books.h"

namespace winterlarder::random_books_test {
namespace {

// In ten parts, so that they run beside each other and none is long.
class RandomBooksTest : public ::testing::TestWithParam<int> {};

TEST_P(RandomBooksTest, EndInAnAnswerOrARefusalWithAPlace) {
    winterlarder::testing::RandomBooks books;
    for (int seed = 0; seed < 30; ++seed) books.put(static_cast<std::uint64_t>(30 * GetParam() + seed));
    for (const char* command : {"advise 0", "follow 0", "learned 0", "calendar 0"})
        EXPECT_GT(books.ended[command], 15) << command << ": the books are too odd to test anything";
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomBooksTest, ::testing::Range(0, 10));

} // namespace
} // namespace winterlarder::random_books_test
