// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/place_words.h"

#include "support/require.h"
#include "text/contexts.h"
#include "text/words.h"

#include <cmath>

namespace winterlarder::text {

namespace {

constexpr double nearlyLevelK = 0.05; // no tenth of a degree
constexpr std::size_t mostLikeSpelled = 3;

QString away(double kilometres, const WordStyle& style) {
    return kilometres < 1 ? say::Places::tr("under 1 km") : distance(kilometres, style);
}

} // namespace

QString weatherOf(const climate::Site& site, const ReferenceData& reference, std::optional<double> heightM,
                  const WordStyle& style) {
    const Station* station = reference.station(site.stationId);
    require(station != nullptr && site.distanceKm.has_value(), "a place without a station");
    const QString name = town(station->id), far = away(*site.distanceKm, style);
    if (*site.distanceKm > climate::farthestStationKm)
        return say::Places::
            tr("no weather station is near enough: the nearest, %1, is %2 away. Give monthly temperatures of your own")
                .arg(name, far);
    if (!heightM) return say::Places::tr("weather of %1, %2 away, at its height").arg(name, far);
    const QString shift = kelvins(std::abs(site.heightShiftK), style),
                  difference = height(std::round(std::abs(*heightM - station->elevationM)), style);
    if (std::abs(site.heightShiftK) < nearlyLevelK)
        return say::Places::tr("weather of %1, %2 away, about as high").arg(name, far);
    return site.heightShiftK > 0 ? say::Places::tr("weather of %1, %2 away, %3 higher: here it is %4 warmer")
                                       .arg(name, far, difference, shift)
                                 : say::Places::tr("weather of %1, %2 away, %3 lower: here it is %4 colder")
                                       .arg(name, far, difference, shift);
}

QString foundName(const climate::FoundPlace& found, const climate::Gazetteer& gazetteer) {
    const QString name = QString::fromStdString(gazetteer.fullName(*found.place));
    return found.otherName.empty() ? name
                                   : say::Places::tr("%1 (%2)").arg(name, QString::fromStdString(found.otherName));
}

QStringList likeSpelled(const climate::Gazetteer& gazetteer, const QString& typed) {
    QStringList names;
    for (const auto* place : gazetteer.spelledLike(typed.toStdString(), mostLikeSpelled))
        names << QString::fromStdString(gazetteer.fullName(*place));
    return names;
}

} // namespace winterlarder::text
