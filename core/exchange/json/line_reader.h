// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/input_limits.h"

#include <cstddef>
#include <istream>
#include <optional>
#include <string>

namespace winterlarder::exchange {

//! One line of JSON Lines, without its line end. `number` counts from 1.
struct TextLine {
    int number = 0;
    std::string text;
    bool tooLong = false; //!< longer than limits::caseText: text is empty
};

//! Reads a stream line by line, holding one line at a time, however long the lines are. Blank lines are passed over,
//! their numbers counted. Tested: tests/exchange/line_reader_test.cpp.
class LineReader {
public:
    explicit LineReader(std::istream& stream, std::size_t longest = limits::caseText.bytes,
                        std::size_t passedOver = limits::passedOver)
        : stream_(stream), longest_(longest), passedOver_(passedOver) {}
    //! The next line that holds anything; nothing at the end.
    std::optional<TextLine> next();

private:
    bool readOne(TextLine& line);
    std::istream& stream_;
    std::size_t longest_, passedOver_;
    bool ended_ = false;
    int number_ = 0;
};

} // namespace winterlarder::exchange
