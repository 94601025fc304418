// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/entries/plain_text.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <utility>

namespace winterlarder::book {
namespace {

using Range = std::pair<char32_t, char32_t>;

constexpr std::array<Range, 4> lineBreaks{{{0x0A, 0x0A}, {0x0D, 0x0D}, {0x85, 0x85}, {0x2028, 0x2029}}};
constexpr std::array<Range, 3> controls{{{0x00, 0x1F}, {0x7F, 0x9F}, {0xFFF9, 0xFFFB}}};
constexpr std::array<Range, 2> turningMarks{{{0x202A, 0x202E}, {0x2066, 0x2069}}};
//! Blanks of any width, and signs nobody sees.
constexpr std::array<Range, 10> blanks{{{0x20, 0x20},
                                        {0xA0, 0xA0},
                                        {0xAD, 0xAD},
                                        {0x1680, 0x1680},
                                        {0x2000, 0x200F},
                                        {0x202F, 0x202F},
                                        {0x205F, 0x2060},
                                        {0x2800, 0x2800},
                                        {0x3000, 0x3000},
                                        {0xFEFF, 0xFEFF}}};

template <std::size_t count> bool isIn(const std::array<Range, count>& ranges, char32_t sign) {
    return std::any_of(ranges.begin(), ranges.end(),
                       [&](const Range& range) { return range.first <= sign && sign <= range.second; });
}

bool continues(unsigned char byte) { return (byte & 0xC0) == 0x80; }

//! Bytes of the well-formed sequence at the start of the text; 0 where there is none.
std::size_t sequence(std::string_view text) {
    const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
    const auto first = byte(0);
    if (first < 0x80) return 1;
    const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || text.size() < length) return 0;
    for (std::size_t at = 1; at < length; ++at)
        if (!continues(byte(at))) return 0;
    if (first == 0xE0 && byte(1) < 0xA0) return 0;
    if (first == 0xED && byte(1) > 0x9F) return 0; // surrogates
    if (first == 0xF0 && byte(1) < 0x90) return 0;
    if (first == 0xF4 && byte(1) > 0x8F) return 0;
    return length;
}

//! The character a well-formed sequence stands for.
char32_t signOf(std::string_view bytes) {
    const auto first = static_cast<unsigned char>(bytes[0]);
    char32_t sign = bytes.size() == 1 ? first : first & (0x7Fu >> bytes.size());
    for (const char byte : bytes.substr(1)) sign = (sign << 6) | (static_cast<unsigned char>(byte) & 0x3Fu);
    return sign;
}

std::string writtenOut(char32_t sign) { return fmt::format("\\u{{{:x}}}", static_cast<std::uint32_t>(sign)); }

} // namespace

bool isText(std::string_view text) {
    while (!text.empty()) {
        const auto length = text.front() == '\0' ? 0 : sequence(text);
        if (length == 0) return false;
        text.remove_prefix(length);
    }
    return true;
}

std::size_t characters(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char byte) { return !continues(static_cast<unsigned char>(byte)); }));
}

std::optional<std::string> faultOfName(std::string_view text) {
    bool onlyBlanks = !text.empty();
    for (std::size_t length = 0; !text.empty(); text.remove_prefix(length)) {
        length = std::max(sequence(text), std::size_t{1});
        const auto sign = signOf(text.substr(0, length));
        if (isIn(lineBreaks, sign)) return "holds a line break";
        if (isIn(controls, sign)) return fmt::format("holds a control character ({})", writtenOut(sign));
        if (isIn(turningMarks, sign))
            return fmt::format("holds a mark that turns the direction of reading ({})", writtenOut(sign));
        onlyBlanks = onlyBlanks && isIn(blanks, sign);
    }
    return onlyBlanks ? std::optional<std::string>("is only blanks") : std::nullopt;
}

std::string visible(std::string_view text) {
    std::string shown;
    while (!text.empty()) {
        const auto length = sequence(text);
        const auto bytes = text.substr(0, std::max(length, std::size_t{1}));
        const auto sign = signOf(bytes);
        if (length == 0) shown += fmt::format("\\x{{{:x}}}", static_cast<unsigned char>(bytes[0]));
        else if (isIn(lineBreaks, sign) || isIn(controls, sign) || isIn(turningMarks, sign)) shown += writtenOut(sign);
        else shown += bytes;
        text.remove_prefix(bytes.size());
    }
    return shown;
}

} // namespace winterlarder::book
