// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json/line_reader.h"

#include <gmock/gmock.h>
#include <sstream>

namespace winterlarder::exchange::line_reader_test {
namespace {

TEST(LineReader, NumbersLinesAndPassesOverBlankOnes) {
    std::istringstream stream("one\n\n  \r\ntwo\r\nthree");
    LineReader reader(stream);
    auto line = reader.next();
    EXPECT_EQ(line->number, 1);
    EXPECT_EQ(line->text, "one");
    line = reader.next();
    EXPECT_EQ(line->number, 4);
    EXPECT_EQ(line->text, "two\r");
    line = reader.next();
    EXPECT_EQ(line->number, 5);
    EXPECT_EQ(line->text, "three");
    EXPECT_FALSE(reader.next());
}

TEST(LineReader, ALineTooLongIsToldAndNotKept) {
    std::istringstream stream("short\n" + std::string(100, 'x') + "\nnext\n" + std::string(10, 'y'));
    LineReader reader(stream, 10);
    EXPECT_FALSE(reader.next()->tooLong);
    const auto line = reader.next();
    EXPECT_TRUE(line->tooLong);
    EXPECT_TRUE(line->text.empty());
    EXPECT_EQ(line->number, 2);
    EXPECT_EQ(reader.next()->text, "next");
    EXPECT_EQ(reader.next()->text, std::string(10, 'y')) << "as long as is allowed";
}

TEST(LineReader, ALineThatDoesNotEndEndsTheReading) {
    std::istringstream stream("short\n" + std::string(100, 'x') + "\nnext\n");
    LineReader reader(stream, 10, 50);
    EXPECT_FALSE(reader.next()->tooLong);
    EXPECT_TRUE(reader.next()->tooLong);
    EXPECT_FALSE(reader.next());
}

TEST(LineReader, NothingInAnEmptyStream) {
    std::istringstream stream("");
    EXPECT_FALSE(LineReader(stream).next());
}

} // namespace
} // namespace winterlarder::exchange::line_reader_test
