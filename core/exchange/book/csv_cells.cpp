// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/book/csv_cells.h"

namespace winterlarder::exchange {
namespace {

std::string csvCell(const std::string& text) {
    const bool plain =
        text.find_first_of(",\"\r\n") == text.npos && (text.empty() || (text.front() > ' ' && text.back() > ' '));
    if (plain) return text;
    std::string quoted = "\"";
    for (const char sign : text) {
        if (sign == '"') quoted += '"';
        quoted += sign;
    }
    return quoted + "\"";
}

bool needsGuard(std::string_view text) {
    const auto first = text.find_first_not_of('\'');
    return first != text.npos && std::string_view("=+-@\t\r\n").find(text[first]) != std::string_view::npos;
}

} // namespace

std::string csvLine(const std::vector<std::string>& cells) {
    std::string text;
    for (const auto& cell : cells) {
        if (&cell != &cells.front()) text += ',';
        text += csvCell(cell);
    }
    return text + "\n";
}

std::string guarded(const std::string& text) { return needsGuard(text) ? "'" + text : text; }

std::string withoutGuard(const std::string& text) {
    return text.starts_with('\'') && needsGuard(text) ? text.substr(1) : text;
}

} // namespace winterlarder::exchange
