// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "book/entries/records.h"
#include "calendar/season_day.h"
#include "climate/season.h"
#include "climate/site.h"
#include "exchange/case/case_file.h"
#include "reference/reference.h"
#include "support/outcome.h"

#include <optional>

namespace winterlarder::answer {

//! Where and when a case is: the winter asked about, the place made ready for the model, the dates of its season.
struct SiteAndSeason {
    Winter winter{Hemisphere::North, 2000};
    std::optional<climate::Site> site; //!< nothing where the nearest station is too far to speak for the place
    std::optional<double> stationKm;   //!< how far that station is, where the place was given by coordinates
    climate::SeasonDates season;
};

//! The climate of the place a record names; a problem at "site" where it is outside the model's limits.
Outcome<climate::Site> siteOf(const book::SiteRecord& record, const exchange::CasePlaces& places,
                              const ReferenceData& reference);

//! Site, derived dates and given dates of a case. Problems at the dates at fault, both named.
//! Tested: tests/answer/question_of_case_test.cpp.
Outcome<SiteAndSeason> siteAndSeasonOf(const book::ColonyCase& record, const exchange::CasePlaces& places,
                                       const ReferenceData& reference);

//! Where tables of places look for it: its coordinates, and the country of the station used (none for an own climate without longitude).
advice::Whereabouts whereaboutsOf(const book::SiteRecord& record, const std::optional<climate::Site>& site,
                                  const ReferenceData& reference);

} // namespace winterlarder::answer
