// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/session.h"
#include "climate/gazetteer.h"

#include <string>

namespace winterlarder::cli {

//! The places of the world, read where a command asks for one.
Outcome<climate::Gazetteer> placesOf(const Session& session);

//! The one place a text names in full: its name, where several have it the state or country too; of several the one at least ten times as
//! large as the next. Problem: none, or several, with the names nearest to it. Tested: tests/cli/places_test.cpp.
Outcome<climate::GazetteerPlace> placeNamed(const climate::Gazetteer& places, const std::string& text);

//! "no climate station lies within 600 km of the place": the detail of a problem.
std::string noStationNear(const std::string& place = "the place");

//! Where a command worked for a place, said on standard error: its full name and whose weather it has.
Status tellPlace(Session& session, const climate::Gazetteer& places, const climate::GazetteerPlace& place);

} // namespace winterlarder::cli
