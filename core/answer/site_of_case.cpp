// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/site_of_case.h"

#include "learning/keeper.h"
#include "support/require.h"

#include <array>
#include <fmt/format.h>
#include <utility>

namespace winterlarder::answer {

namespace {

climate::OwnClimate ownClimate(const book::OwnClimateRecord& record) {
    climate::OwnClimate own;
    own.latitude = record.latitude;
    own.longitude = record.longitude;
    own.monthlyMeanC = record.monthlyMeanC;
    own.dailySdWinterK = record.dailySdWinter;
    own.dailySdSummerK = record.dailySdSummer;
    own.lag1 = record.lag1;
    own.seasonOffsetSdK = record.seasonOffsetSd;
    return own;
}

Outcome<climate::Site> placeless(const book::SiteRecord& record, const ReferenceData& reference) {
    if (const auto* id = std::get_if<std::string>(&record.where)) {
        if (const Station* station = reference.station(*id)) return climate::siteAtStation(*station, record.elevationM);
        return Problem{
            ProblemKind::Input, {}, fmt::format("no station \"{}\"", *id), "an id that the command \"stations\" lists"};
    }
    if (const auto* place = std::get_if<book::Coordinates>(&record.where))
        return climate::siteNear(reference, place->latitude, place->longitude, record.elevationM);
    return climate::siteFromOwnClimate(reference, ownClimate(std::get<book::OwnClimateRecord>(record.where)));
}

using DateKey = std::pair<std::string_view, std::optional<Date> book::SeasonRecord::*>;
constexpr std::array<std::pair<DateKey, std::optional<SeasonDay> climate::GivenDates::*>, 8> dateKeys{{
    {{"last_income", &book::SeasonRecord::lastIncome}, &climate::GivenDates::lastIncome},
    {{"brood_stop", &book::SeasonRecord::broodStop}, &climate::GivenDates::broodStop},
    {{"brood_restart", &book::SeasonRecord::broodRestart}, &climate::GivenDates::broodRestart},
    {{"buildup", &book::SeasonRecord::buildup}, &climate::GivenDates::buildup},
    {{"forage", &book::SeasonRecord::forage}, &climate::GivenDates::forage},
    {{"feed_advised_by", &book::SeasonRecord::feedAdvisedBy}, &climate::GivenDates::feedAdvisedBy},
    {{"syrup_deadline", &book::SeasonRecord::syrupDeadline}, &climate::GivenDates::syrupDeadline},
    {{"syrup_refused", &book::SeasonRecord::syrupRefused}, &climate::GivenDates::syrupRefused},
}};

// Days of the winter asked about; one outside it is a problem here, since it has no season day.
Outcome<climate::GivenDates> givenDates(const book::SeasonRecord& record, const Winter& winter,
                                        const exchange::CasePlaces& places) {
    climate::GivenDates given;
    Problems problems;
    for (const auto& row : dateKeys) {
        const auto& date = record.*(row.first.second);
        if (!date) continue;
        if (winter.contains(*date)) given.*(row.second) = winter.seasonDay(*date);
        else
            problems.push_back(
                {ProblemKind::Input, places.of(fmt::format("season.{}", row.first.first)),
                 fmt::format("\"{}\" {} is not a day of the winter asked about", row.first.first, date->iso()),
                 fmt::format("a day from {} to {}", winter.date(firstSeasonDay).iso(),
                             winter.date(lastSimulatedDay).iso())});
    }
    if (!problems.empty()) return problems;
    return given;
}

bool isKeyByte(char c) { return (c >= 'a' && c <= 'z') || c == '_'; }

// Season problems begin with the key at fault and name others on the way: the first gives the place, the others get
// theirs in brackets.
Problem placed(Problem problem, const exchange::CasePlaces& places) {
    std::string detail;
    bool first = true;
    for (std::size_t i = 0; i < problem.detail.size();) {
        std::size_t end = i;
        while (end < problem.detail.size() && isKeyByte(problem.detail[end])) ++end;
        const std::string word = problem.detail.substr(i, end - i);
        const auto found = word.empty() ? places.byPath.end() : places.byPath.find("season." + word);
        if (found != places.byPath.end()) {
            const Place place = places.of("season." + word);
            detail += first ? word : fmt::format("{} (at {}:{})", word, place.line, place.column);
            if (first) problem.place = place;
            first = false;
        } else {
            detail += word;
        }
        i = end;
        if (i < problem.detail.size()) detail += problem.detail[i++];
    }
    if (first) problem.place = places.of("season");
    problem.detail = detail;
    return problem;
}

} // namespace

Outcome<climate::Site> siteOf(const book::SiteRecord& record, const exchange::CasePlaces& places,
                              const ReferenceData& reference) {
    auto site = placeless(record, reference);
    if (site) return site;
    Problems problems = site.problems();
    for (Problem& problem : problems) problem.place = places.of("site");
    return problems;
}

Outcome<SiteAndSeason> siteAndSeasonOf(const book::ColonyCase& record, const exchange::CasePlaces& places,
                                       const ReferenceData& reference) {
    auto site = siteOf(record.site, places, reference);
    if (!site) return site.problems();
    SiteAndSeason result;
    result.winter = Winter::containing(record.asOf, site->curve.hemisphere());
    const auto given = givenDates(record.season, result.winter, places);
    if (!given) return given.problems();
    const auto dates =
        climate::applyGivenDates(climate::deriveSeason(site->curve, reference.constants), *given,
                                 result.winter.seasonDay(record.asOf), reference.constants, result.winter);
    if (!dates) {
        Problems problems;
        for (const Problem& problem : dates.problems()) problems.push_back(placed(problem, places));
        return problems;
    }
    result.season = *dates;
    if (record.learned)
        result.season = learning::withForage(
            *dates, {record.learned->forageShiftDays, record.learned->forageShiftSdDays, record.learned->forageYears},
            reference.constants);
    const bool ownClimateGiven = std::holds_alternative<book::OwnClimateRecord>(record.site.where);
    if (!ownClimateGiven) result.stationKm = site->distanceKm;
    if (!result.stationKm || *result.stationKm <= climate::farthestStationKm) result.site = *std::move(site);
    return result;
}

advice::Whereabouts whereaboutsOf(const book::SiteRecord& record, const std::optional<climate::Site>& site,
                                  const ReferenceData& reference) {
    advice::Whereabouts place;
    if (site) place.country = climate::countryCodeOf(site->stationId);
    if (const auto* id = std::get_if<std::string>(&record.where)) {
        const Station* station = reference.station(*id);
        require(station != nullptr, "no station {}", *id);
        place.latitude = station->latitude, place.longitude = station->longitude;
    } else if (const auto* coordinates = std::get_if<book::Coordinates>(&record.where)) {
        place.latitude = coordinates->latitude, place.longitude = coordinates->longitude;
    } else {
        const auto& own = std::get<book::OwnClimateRecord>(record.where);
        place.latitude = own.latitude, place.longitude = own.longitude;
        if (!own.longitude) place.country.clear();
    }
    return place;
}

} // namespace winterlarder::answer
