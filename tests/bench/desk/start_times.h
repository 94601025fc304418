// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace winterlarder::bench {

//! From exec to the first painted window: an empty one, the demo's, and that of the given book of as many colonies; medians of `times` starts.
void showStart(const std::filesystem::path& book, int colonies, int times);

} // namespace winterlarder::bench
