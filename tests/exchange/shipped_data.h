// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"
#include "support/outcome.h"

#include <stdexcept>
#include <string>

namespace winterlarder::testing {

//! The shipped data, read once for a test program.
inline const ReferenceData& shippedData() {
    static const ReferenceData data = [] {
        auto loaded = loadReference(SHARED_FOLDER);
        if (!loaded) throw std::runtime_error(describe(loaded.problems().front()));
        return *std::move(loaded);
    }();
    return data;
}

//! A text with a mark '@' before the place a fault must be shown at: the text without it, and that place.
struct MarkedText {
    std::string text;
    int line = 1;
    int column = 1;
};

inline MarkedText marked(const std::string& with) {
    MarkedText result;
    const auto at = with.find('@');
    if (at == std::string::npos) throw std::runtime_error("no mark in: " + with);
    for (char c : with.substr(0, at)) {
        result.column = c == '\n' ? 1 : result.column + 1;
        if (c == '\n') ++result.line;
    }
    result.text = with.substr(0, at) + with.substr(at + 1);
    return result;
}

} // namespace winterlarder::testing
