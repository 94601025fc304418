// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"
#include "quantity/quantity.h"
#include "support/outcome.h"

#include <array>

namespace winterlarder::climate {

//! Daily and monthly means of a place lie between these: the limits of site.monthly_mean_c in shared/fields.csv, which a test holds equal
//! (tests/climate/climate_curve_test.cpp).
inline constexpr double coldestMeanC = -60, hottestMeanC = 45;
inline bool isMeanOfEarth(Temperature mean) { return mean >= celsius(coldestMeanC) && mean <= celsius(hottestMeanC); }

//! How daily means scatter round the annual curve. Standard deviations in K.
struct Variability {
    double dailySdWinter = 0;  //!< sw: of daily means in the cold season
    double dailySdSummer = 0;  //!< ss
    double lag1 = 0;           //!< rho1: correlation of consecutive days in the cold season
    double seasonOffsetSd = 0; //!< so: of a whole season's mean beyond what the daily process explains
    bool operator==(const Variability&) const = default;
};

//! The normal of each day of a 365-day year at one place: the mean-preserving periodic cubic spline through twelve
//! monthly means (the mean over each month of its daily normals is the month's mean, to 1e-9), with the scatter round it
//! and the latitude that sets day length. Immutable. Tested: tests/climate/climate_curve_test.cpp.
class ClimateCurve {
public:
    //! monthlyMeans January first. Input problems: a mean outside -60..45 degC or not finite, latitude outside -90..90,
    //! a standard deviation negative or not finite, a lag-1 correlation outside -1..1. All are listed.
    static Outcome<ClimateCurve> fromMonthlyMeans(const std::array<Temperature, 12>& monthlyMeans, double latitude,
                                                  const Variability& variability);
    //! Every day the same: an indoor winter, and the closed-form twin of the simulation.
    static ClimateCurve constant(Temperature everyDay, double latitude, const Variability& variability);

    double latitude() const { return latitude_; }
    Hemisphere hemisphere() const { return hemisphereOf(latitude_); }
    const Variability& variability() const { return variability_; }
    //! Normal (long-term mean) of a day.
    Temperature normal(SeasonDay day) const;
    //! The lowest of the 365 normals.
    Temperature coldestNormal() const;
    //! Standard deviation of one day's mean within a season [K]: sqrt(max(0.25, (ss + (sw - ss) c)^2 - so^2)),
    //! c = 0.5 + 0.5 cos(2 pi (w - 14) / 365).
    TemperatureDifference dailySd(SeasonDay day) const;
    //! Correlation of the daily process within a season: clamp((rho1 sw^2 - so^2) / (sw^2 - so^2), 0, 0.95);
    //! 0 where the season offset leaves the daily process no variance (so >= sw).
    double dailyPersistence() const;
    //! Hours from sunrise to sunset (Forsythe et al. 1995, p = 0.8333 degrees); 0 or 24 beyond the polar circles.
    Hours dayLength(SeasonDay day) const;

private:
    std::array<double, daysInYear> normalC_{}; //!< by day of year
    double latitude_ = 0;
    Variability variability_;
};

//! Time the sun's centre is higher than p degrees below the horizon on a day of the year (0..364) at a latitude [degrees
//! north]: the CBM formula of Forsythe, Rykiel, Stahl, Wu and Schoolfield 1995, Ecological Modelling 80:87-95. p = 0.8333 is
//! sunrise to sunset as almanacs print it (upper limb, refraction). 0 or 24 beyond the polar circles.
//! Tested: tests/climate/day_length_test.cpp.
Hours dayLength(double latitude, int dayOfYear, double p = 0.8333);

} // namespace winterlarder::climate
