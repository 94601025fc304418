// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/outcome.h"

#include <exception>
#include <fmt/format.h>

namespace winterlarder {

//! A surprise told as a problem of kind Internal: what was being made, and why it broke.
inline Problem internalProblem(Place place, std::string_view what, const std::exception& surprise) {
    return {ProblemKind::Internal, std::move(place), fmt::format("{} could not be computed: {}", what, surprise.what()),
            "this is an error of the program, not of the records; please report it with them"};
}

//! The outcome of `make`; an exception out of it becomes a problem of kind Internal. For work on one of many (a colony, a case, a past
//! winter): one that breaks never ends the others. Tested: tests/support/outcome_test.cpp.
template <class Make> auto caught(Place place, std::string_view what, Make make) -> decltype(make()) {
    try {
        return make();
    } catch (const std::exception& surprise) {
        return internalProblem(std::move(place), what, surprise);
    }
}

} // namespace winterlarder
