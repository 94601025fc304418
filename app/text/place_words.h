// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/gazetteer.h"
#include "climate/site.h"
#include "text/style.h"

#include <QStringList>
#include <optional>

namespace winterlarder::text {

//! Whose weather a place has, how far that is, and what the difference in height does: "weather of Halifax, 120 km away, 134 m higher:
//! here it is 0.9 °C warmer". `heightM` of the place, where it is known. Beyond farthestStationKm it says that none speaks for the place.
//! Tested: tests/app/first_run_test.cpp.
QString weatherOf(const climate::Site& site, const ReferenceData& reference, std::optional<double> heightM,
                  const WordStyle& style);

//! A place in a list: its full name, and in brackets the name it was found by, where that is another: "Prague, Czechia (Praha)".
QString foundName(const climate::FoundPlace& found, const climate::Gazetteer& gazetteer);

//! Names like the one that was typed and not found: "Edmonton, Alberta, Canada" or nothing.
QStringList likeSpelled(const climate::Gazetteer& gazetteer, const QString& typed);

} // namespace winterlarder::text
