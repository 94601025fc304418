// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"

#include <stdexcept>

namespace winterlarder {

//! Shipped data, read once by each test program; a test that cannot read them fails.
inline const ReferenceData& shipped() {
    static const ReferenceData data = [] {
        auto loaded = loadReference(SHARED_FOLDER);
        if (!loaded) throw std::runtime_error(describe(loaded.problems().front()));
        return std::move(loaded).value();
    }();
    return data;
}

inline const ModelConstants& constants() { return shipped().constants; }

} // namespace winterlarder
