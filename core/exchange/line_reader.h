// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <istream>
#include <optional>
#include <string>

namespace winterlarder::exchange {

//! No case comes near this; a longer line is passed over without being kept.
inline constexpr std::size_t longestLine = 4 * 1024 * 1024;

//! One line of JSON Lines, without its line end. `number` counts from 1.
struct TextLine {
    int number = 0;
    std::string text;
    bool tooLong = false; //!< longer than longestLine: text is empty
};

//! Reads a stream line by line, holding one line at a time, however long the lines are. Blank lines are passed over,
//! their numbers counted. Tested: tests/exchange/line_reader_test.cpp.
class LineReader {
public:
    explicit LineReader(std::istream& stream, std::size_t longest = longestLine) : stream_(stream), longest_(longest) {}
    //! The next line that holds anything; nothing at the end.
    std::optional<TextLine> next();

private:
    bool readOne(TextLine& line);
    std::istream& stream_;
    std::size_t longest_;
    int number_ = 0;
};

} // namespace winterlarder::exchange
