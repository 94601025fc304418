// SPDX-License-Identifier: GPL-3.0-or-later
// One target as a program of libFuzzer: fuzz_NAME [FOLDER...] (preset fuzz). FUZZ_TARGET: its name.
#include "fuzz/targets.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t count) {
    static const winterlarder::fuzz::Target target = winterlarder::fuzz::targetNamed(FUZZ_TARGET);
    target.run({reinterpret_cast<const char*>(bytes), count});
    return 0;
}
