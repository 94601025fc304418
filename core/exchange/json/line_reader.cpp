// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json/line_reader.h"

namespace winterlarder::exchange {

// False at the end of the stream.
bool LineReader::readOne(TextLine& line) {
    line = {};
    if (ended_) return false;
    std::streambuf& buffer = *stream_.rdbuf();
    constexpr int end = std::char_traits<char>::eof();
    int c = buffer.sbumpc();
    if (c == end) return false;
    std::size_t length = 0;
    for (; c != end && c != '\n'; c = buffer.sbumpc()) {
        ended_ = ++length > passedOver_;
        if (ended_) break;
        if (line.tooLong) continue;
        if (line.text.size() >= longest_) {
            line.tooLong = true;
            line.text = {};
        } else {
            line.text += static_cast<char>(c);
        }
    }
    line.number = ++number_;
    return true;
}

std::optional<TextLine> LineReader::next() {
    TextLine line;
    while (readOne(line))
        if (line.tooLong || line.text.find_first_not_of(" \t\r") != std::string::npos) return line;
    return std::nullopt;
}

} // namespace winterlarder::exchange
