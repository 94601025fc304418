// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/session.h"
#include "climate/gazetteer.h"
#include "exchange/json/json_output.h"

#include <string>
#include <vector>

namespace winterlarder::cli {

//! The places of the world, read where a command asks for one.
Outcome<climate::Gazetteer> placesOf(const Session& session);

//! A place that was meant, as far as its name says.
struct NamedPlace {
    climate::GazetteerPlace place;
    std::vector<std::string>
        others;             //!< full names of smaller places the text names as well, the larger first, five at most
    bool nameAlone = false; //!< no state or country was said
};

//! The one place a text names in full: its name, where several have it the state or country too; of several the one at least ten times as
//! large as the next. Problem: none, or several, with the names nearest to it. Tested: tests/cli/places_test.cpp.
Outcome<NamedPlace> placeNamed(const climate::Gazetteer& places, const std::string& text);

//! "no climate station lies within 600 km of the place": the detail of a problem.
std::string noStationNear(const std::string& place = "the place");

//! The place a command works for, said on standard error: its full name, whose weather it has, and which others have its name; where none is
//! known to and no country was said, that another may be meant.
Status tellPlace(Session& session, const climate::Gazetteer& places, const NamedPlace& named);

//! The same for an answer: full_name, country, station, distance_km, height_shift_c, other_places.
exchange::Json placeTaken(const Session& session, const climate::Gazetteer& places, const NamedPlace& named);

} // namespace winterlarder::cli
