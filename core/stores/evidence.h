// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "hive/hive.h"
#include "quantity/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace winterlarder::stores {

//! One built comb as seen. Shares are of the built face area and sum to at most 1; the rest is empty cells.
struct Comb {
    hive::CombFormat format; //!< pitch already the comb's own (bar width)
    int box = 0;             //!< from the floor, 0-based
    int place = 0;           //!< in the box, 0-based
    double built = 1;
    double capped = 0, open = 0, brood = 0, pollen = 0;
    bool broodSaid = false; //!< the record speaks of brood at all
    int facesSeen = 2;
    bool inSuper = false;
    bool fed = false;
    bool oldNest = false;
    double empty() const { return 1 - capped - open - brood - pollen; }
};

//! "About so many combs full, so many half, so much of it capped."
struct QuickCount {
    double full = 0;
    double half = 0;
    double cappedShare = 1;
};

//! The factor on open stores (ripe equivalent): 0.25 when under 7 days have passed since the last feed or income, else 0.65.
double openFactor(bool freshlyFilled);

struct CombStores {
    Mass capped;
    Mass open; //!< as ripe-honey equivalent
    double relativeSd = 0.15;
};
//! Stores of each comb, in order; combs not looked at get the mean shares of their box's looked-at combs (else of all looked-at combs).
//! Nothing where no comb was looked at.
std::optional<std::vector<CombStores>> storesOfCombs(const std::vector<Comb>& combs, double openFactor);

//! What one piece of evidence says about the stores on its day: typical with one standard deviation. `relative` part scales with the combined value.
struct Evidence {
    std::string kind; //!< "combs", "quick count", "scale", "two-sided lift", "one-sided lift", "heft"
    Date date;
    Mass typical;
    double relativeSd = 0; //!< of the stores
    Mass absoluteSd{0};    //!< in quadrature
    Mass sd(Mass at) const;
};

} // namespace winterlarder::stores
