// SPDX-License-Identifier: GPL-3.0-or-later
// One target as a program of libFuzzer: fuzz_NAME [FOLDER...] (preset fuzz). FUZZ_TARGET: its function.
#include "fuzz/targets.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t count) {
    winterlarder::fuzz::FUZZ_TARGET({reinterpret_cast<const char*>(bytes), count});
    return 0;
}
