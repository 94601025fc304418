// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/comb_edits.h"
#include "theme/colours.h"

#include <QBrush>
#include <optional>

namespace winterlarder::desk {

//! The pattern and colour a zone of a comb is filled with; no zone = empty cells. Capped cells are drawn shut, open ones hatched,
//! brood domed, bee bread cross-hatched, so that they can be told apart in grey.
QBrush patternOf(std::optional<Zone> zone, const Colours& colours, double pixelRatio, double cell = 5);

} // namespace winterlarder::desk
