// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/usual_here.h"

#include "numerics/median.h"

#include <algorithm>
#include <array>
#include <tuple>
#include <utility>

namespace winterlarder::advice {

namespace {

std::string_view wordOf(climate::WinterClass winter) {
    switch (winter) {
    case climate::WinterClass::Confined: return "confined";
    case climate::WinterClass::Flying: return "flying";
    case climate::WinterClass::Dearth: return "dearth";
    case climate::WinterClass::NotDerivable: return {};
    }
    return {};
}

//! A row, and how far it is from the place.
struct Candidate {
    const UsualStores* row = nullptr;
    double distanceKm = 0;
};

class Search {
public:
    Search(const UsualAsked& asked, std::span<const UsualStores> rows, const ModelConstants& constants)
        : asked_(asked), rows_(rows), constants_(constants) {}

    std::optional<UsualFigure> found() const {
        using From = UsualFigure::From;
        // What keepers of a region say does not stand before what is published for the country.
        constexpr std::array<std::pair<From, Told>, 6> steps{{{From::Region, Told::Published},
                                                              {From::Country, Told::Published},
                                                              {From::Region, Told::ByKeepers},
                                                              {From::Country, Told::ByKeepers},
                                                              {From::RegionOfOtherWinter, Told::Either},
                                                              {From::Neighbour, Told::Either}}};
        for (const auto& [from, told] : steps)
            if (const auto best = nearest(from, told)) return figure(from, *best);
        return median();
    }

private:
    enum class Told { Published, ByKeepers, Either };
    static bool isTold(const UsualStores& row, Told told) {
        return told == Told::Either || (row.quality == 'C') == (told == Told::ByKeepers);
    }

    std::optional<double> distance(const UsualStores& row) const {
        if (!asked_.place.longitude) return std::nullopt;
        return climate::distanceKm(asked_.place.latitude, *asked_.place.longitude, row.latitude, row.longitude);
    }
    bool sameWinter(const UsualStores& row) const {
        return !row.winterClass.empty() && row.winterClass == wordOf(asked_.winterClass);
    }
    // Confined and flying winters pass into each other; where there is a dearth instead of a winter, stores are for another time.
    bool bothOfWinter(const UsualStores& row) const {
        using climate::WinterClass;
        const auto ofWinter = [](std::string_view word) {
            return word == wordOf(WinterClass::Confined) || word == wordOf(WinterClass::Flying);
        };
        return ofWinter(row.winterClass) && ofWinter(wordOf(asked_.winterClass));
    }
    bool sameCountry(const UsualStores& row) const {
        return !asked_.place.country.empty() && row.country == asked_.place.country;
    }
    bool within(const UsualStores& row, double km) const {
        const auto far = distance(row);
        return far && *far <= km;
    }
    bool ofOwnRegion(const UsualStores& row) const {
        return !row.region.empty() && sameCountry(row) && within(row, constants_.usualRegionKm);
    }
    bool sameHemisphere(const UsualStores& row) const { return (row.latitude < 0) == (asked_.place.latitude < 0); }

    bool ofPlace(const UsualStores& row, UsualFigure::From from) const {
        switch (from) {
        case UsualFigure::From::Region: return sameWinter(row) && ofOwnRegion(row);
        case UsualFigure::From::RegionOfOtherWinter: return bothOfWinter(row) && ofOwnRegion(row);
        case UsualFigure::From::Country: return row.region.empty() && sameCountry(row);
        case UsualFigure::From::Neighbour:
            return sameHemisphere(row) && sameWinter(row) && within(row, constants_.usualNeighbourKm);
        case UsualFigure::From::ClassMedian: return sameWinter(row);
        }
        return false;
    }

    //! Sizes that may speak for this hive, the fitting one first. What any hive needs is far too much for a small nucleus.
    std::vector<HiveSize> sizes() const {
        if (asked_.size == HiveSize::Nucleus) return {HiveSize::Nucleus};
        return {asked_.size, HiveSize::Any};
    }

    std::optional<Candidate> nearest(UsualFigure::From from, Told told) const {
        for (const HiveSize size : sizes()) {
            std::vector<Candidate> candidates;
            for (const UsualStores& row : rows_)
                if (row.use == UsualStores::Use::Target && row.size == size && isTold(row, told) && ofPlace(row, from))
                    candidates.push_back({&row, from == UsualFigure::From::Country ? 0 : distance(row).value_or(0)});
            const auto order = [](const Candidate& each) {
                return std::tuple(each.distanceKm, !each.row->low, each.row->quality);
            };
            const auto best =
                std::min_element(candidates.begin(), candidates.end(),
                                 [&](const Candidate& a, const Candidate& b) { return order(a) < order(b); });
            if (best != candidates.end()) return *best;
        }
        return std::nullopt;
    }

    UsualFigure figure(UsualFigure::From from, const Candidate& best) const {
        const UsualStores& row = *best.row;
        UsualFigure usual;
        usual.from = from;
        usual.row = &row;
        if (from != UsualFigure::From::Country) usual.distanceKm = best.distanceKm;
        usual.fromGross = !row.low;
        usual.low = row.low ? *row.low : storesOfGross(*row.grossLow);
        usual.high = row.low ? row.high.value_or(*row.low) : storesOfGross(row.grossHigh.value_or(*row.grossLow));
        usual.forAnySize = row.size == HiveSize::Any;
        usual.twoBoxesForMore = asked_.moreThanTwoBoxes && !usual.forAnySize;
        usual.holdsBackHarvest = row.quality != 'C';
        usual.shown = furtherFigures();
        return usual;
    }
    Mass storesOfGross(Mass gross) const { return std::max(kilograms(0), gross - asked_.withoutStores); }

    // Half of the rows of this winter are above, half below; far countries are no reason to leave honey.
    std::optional<UsualFigure> median() const {
        for (const HiveSize size : sizes()) {
            std::vector<double> low, high;
            for (const UsualStores& row : rows_)
                if (row.use == UsualStores::Use::Target && row.size == size && row.low &&
                    ofPlace(row, UsualFigure::From::ClassMedian)) {
                    low.push_back(row.low->value());
                    high.push_back(row.high.value_or(*row.low).value());
                }
            if (low.empty()) continue;
            UsualFigure usual;
            usual.low = kilograms(numerics::median(low));
            usual.high = kilograms(numerics::median(high));
            usual.forAnySize = size == HiveSize::Any;
            usual.twoBoxesForMore = asked_.moreThanTwoBoxes && !usual.forAnySize;
            usual.shown = furtherFigures();
            return usual;
        }
        return std::nullopt;
    }

    std::vector<const UsualStores*> furtherFigures() const {
        std::vector<Candidate> found;
        for (const UsualStores& row : rows_) {
            const auto fitting = sizes();
            if (row.use != UsualStores::Use::Shown ||
                std::find(fitting.begin(), fitting.end(), row.size) == fitting.end())
                continue;
            if (ofPlace(row, UsualFigure::From::Region)) found.push_back({&row, *distance(row)});
            else if (ofPlace(row, UsualFigure::From::Country)) found.push_back({&row, constants_.usualRegionKm});
        }
        std::stable_sort(found.begin(), found.end(),
                         [](const Candidate& a, const Candidate& b) { return a.distanceKm < b.distanceKm; });
        std::vector<const UsualStores*> rows;
        for (const Candidate& each : found) rows.push_back(each.row);
        return rows;
    }

    const UsualAsked& asked_;
    std::span<const UsualStores> rows_;
    const ModelConstants& constants_;
};

//! As one number that grows through the year: 101 to 1231.
int inYear(MonthDay day) { return 100 * day.month + day.day; }

bool runsOn(const LateFlow& flow, Date date) {
    const int from = inYear(flow.from), to = inYear(flow.to), day = 100 * date.month() + date.day();
    return from <= to ? from <= day && day <= to : day >= from || day <= to;
}

bool runsBetween(const LateFlow& flow, Date from, Date to) {
    for (Date day = from; day <= to; day = day.plusDays(1))
        if (runsOn(flow, day)) return true;
    return false;
}

} // namespace

SizeOfHive sizeOfHive(const ColonyQuestion& question) {
    if (question.nucleus) return {HiveSize::Nucleus, false};
    const std::size_t supers = static_cast<std::size_t>(
        std::count_if(question.boxUses.begin(), question.boxUses.end(), [](const BoxUse& use) { return use.super; }));
    const std::size_t boxes = question.boxes.size() - std::min(supers, question.boxes.size());
    return {boxes > 1 ? HiveSize::TwoBoxes : HiveSize::OneBox, boxes > 2};
}

std::optional<UsualFigure> usualHere(const UsualAsked& asked, std::span<const UsualStores> rows,
                                     const ModelConstants& constants) {
    return Search(asked, rows, constants).found();
}

std::string placeOf(const UsualFigure& usual, std::span<const Station> stations) {
    if (!usual.row) return {};
    std::string country = usual.row->country;
    for (const Station& station : stations)
        if (climate::countryCodeOf(station.id) == usual.row->country) {
            country = station.country;
            break;
        }
    return usual.row->region.empty() ? country : usual.row->region + ", " + country;
}

std::vector<NearFlow> lateFlowsNear(const Whereabouts& place, Date from, Date to, std::span<const LateFlow> flows,
                                    const ModelConstants& constants) {
    std::vector<NearFlow> found;
    for (const LateFlow& flow : flows) {
        if (!runsBetween(flow, from, to)) continue;
        if (flow.region.empty() && !place.country.empty() && flow.country == place.country)
            found.push_back({&flow, std::nullopt});
        if (flow.region.empty() || !place.longitude) continue;
        const double far = climate::distanceKm(place.latitude, *place.longitude, flow.latitude, flow.longitude);
        if (far <= constants.lateFlowKm) found.push_back({&flow, far});
    }
    const auto order = [&](const NearFlow& each) { return each.distanceKm.value_or(constants.lateFlowKm); };
    std::stable_sort(found.begin(), found.end(),
                     [&](const NearFlow& a, const NearFlow& b) { return order(a) < order(b); });
    std::vector<NearFlow> once;
    for (const NearFlow& each : found)
        if (std::none_of(once.begin(), once.end(),
                         [&](const NearFlow& other) { return other.flow->plant == each.flow->plant; }))
            once.push_back(each);
    return once;
}

} // namespace winterlarder::advice
