// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/plausible.h"

#include "quantity/text.h"
#include "stores/bees.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace winterlarder::stores {

namespace {

const double kilogramsPerPound = massOf(1, MassUnit::Pound).value();

enum class How { Unlikely, Impossible };
How impossibleIf(bool impossible) { return impossible ? How::Impossible : How::Unlikely; }

Doubt doubt(How how, std::string id, std::map<std::string, Detail> details) {
    return {how == How::Impossible, {std::move(id), std::move(details)}};
}

// What is more than most is not likely; far more is impossible.
How beyond(double value, double most, const ModelConstants& constants) {
    return impossibleIf(value > constants.entryImpossibleAbove * most);
}

Mass placeHolds(const hive::CombFormat& format) { return hive::fullComb(format, hive::phiFor(format.pitch, true)); }

//! What the listed combs hold more than their places would.
Mass holdMore(const TareQuestion& parts) {
    Mass more{0};
    for (const Comb& comb : parts.combs) {
        const auto& place = parts.boxes[static_cast<std::size_t>(comb.box)];
        more += std::max(kilograms(0), placeHolds(comb.format) - placeHolds(place));
    }
    return more;
}

//! The weight that may be meant by one too heavy for the hive, and how it went wrong.
void addMeant(std::map<std::string, Detail>& details, Mass gross, const HiveBounds& hive) {
    const auto fits = [&](double kg) { return kg >= hive.likelyEmpty.value() && kg <= hive.heaviest.value() * 1.1; };
    const double pounds = gross.value() * kilogramsPerPound, tenth = gross.value() / 10, tenfold = gross.value() * 10;
    const auto mean = [&](const char* how, double kg) {
        details["class"] = std::string(how);
        details["meant"] = kilograms(kg);
    };
    if (gross > hive.heaviest && fits(pounds)) return mean("pounds", pounds);
    if (gross > hive.heaviest && fits(tenth)) return mean("comma", tenth);
    if (gross < hive.heaviest && fits(tenfold)) return mean("comma", tenfold);
    details["class"] = std::string("plain");
}

std::optional<Doubt> tooMany(const char* id, const char* name, double value, double most, const HiveBounds& hive,
                             const ModelConstants& constants) {
    if (value <= most) return std::nullopt;
    return doubt(beyond(value, most, constants), id, {{name, value}, {"most", most}, {"boxes", hive.boxes}});
}

} // namespace

HiveBounds boundsOf(const TareQuestion& parts, std::optional<Mass> weighedTare, const ModelConstants& constants) {
    require(!parts.boxes.empty(), "a hive without a box");
    HiveBounds hive;
    hive.boxes = static_cast<double>(parts.boxes.size());
    for (const hive::CombFormat& box : parts.boxes) {
        hive.places += box.combsPerBox;
        hive.seams += box.combsPerBox + 1;
        hive.bees += 2 * box.beesPerSide.count * box.combsPerBox;
        hive.cells += facesPerComb * cellsPerSquareDecimetre * hive::faceArea(box.outline).value() * box.combsPerBox;
        hive.holds += placeHolds(box) * box.combsPerBox;
    }
    hive.holds += holdMore(parts);
    TareQuestion allBuilt = parts;
    allBuilt.combs.clear();
    const Tare full = tareFromParts(allBuilt), listed = tareFromParts(parts);
    hive.lightest = std::max(kilograms(1), std::min(weighedTare.value_or(listed.mass), listed.mass - 2 * listed.sd));
    hive.likelyEmpty = weighedTare ? *weighedTare - kilograms(1) : listed.mass - listed.sd;
    hive.likelyEmpty = std::max(hive.likelyEmpty, kilograms(1));
    hive.empty = weighedTare.value_or(listed.mass);
    hive.heaviest = std::max(weighedTare.value_or(full.mass), full.mass + full.sd) + hive.holds +
                    kilograms(constants.beeMass * hive.bees);
    return hive;
}

std::optional<Doubt> doubtOfWeight(Mass gross, const HiveBounds& hive, const ModelConstants& constants) {
    const bool heavy = gross > hive.heaviest, light = gross < hive.likelyEmpty;
    if (!heavy && !light) return std::nullopt;
    std::map<std::string, Detail> details{{"weight", gross}, {"boxes", hive.boxes}, {"number", gross.value()}};
    addMeant(details, gross, hive);
    if (heavy) {
        details["most"] = hive.heaviest;
        return doubt(beyond(gross.value(), hive.heaviest.value(), constants), "doubt-heavy", std::move(details));
    }
    details["least"] = hive.likelyEmpty;
    return doubt(impossibleIf(gross < hive.lightest * constants.entryImpossibleBelow), "doubt-light",
                 std::move(details));
}

std::optional<Doubt> doubtOfOneSide(Mass side, const HiveBounds& hive, const ModelConstants& constants) {
    const Mass gross = 2 * side;
    if (gross >= hive.empty) return doubtOfWeight(gross, hive, constants);
    return doubt(
        impossibleIf(gross < hive.lightest * constants.entryImpossibleBelow), "doubt-light",
        {{"class", std::string("one-side")}, {"side", side}, {"least", hive.empty / 2}, {"boxes", hive.boxes}});
}

std::optional<Doubt> doubtOfTwoWeights(const TwoWeights& weights, const ModelConstants& constants) {
    if (weights.daysApart > constants.entrySameScaleDays || weights.judged.value() <= 0 || weights.other.value() <= 0)
        return std::nullopt;
    const double times = std::max(weights.judged / weights.other, weights.other / weights.judged);
    const auto near = [&](double factor, double within) {
        return times >= factor * (1 - within) && times <= factor * (1 + within);
    };
    const bool comma = near(10, 0.12), pounds = near(1 / kilogramsPerPound, 0.05);
    const Mass change = std::max(weights.judged - weights.other, weights.other - weights.judged);
    const Mass explained = weights.fed + weights.taken + mostFlow(weights.daysApart, weights.flowDays, constants);
    if (!comma && !(pounds && change > explained)) return std::nullopt;
    return doubt(How::Unlikely, "doubt-two-weights",
                 {{"weight", weights.judged},
                  {"other", weights.other},
                  {"day", weights.otherDay},
                  {"class", std::string(comma ? "comma" : "pounds")}});
}

std::optional<Doubt> doubtOfHarvest(Mass honey, const HiveBounds& hive, const ModelConstants& constants) {
    if (honey <= hive.holds) return std::nullopt;
    return doubt(beyond(honey.value(), hive.holds.value(), constants), "doubt-harvest",
                 {{"taken", honey}, {"most", hive.holds}, {"boxes", hive.boxes}});
}

std::optional<Doubt> doubtOfHarvestOf(Mass honey, const ThereBefore& before, const ModelConstants& constants) {
    const Mass flow = mostFlow(before.daysSince, before.flowDays, constants);
    const Mass there = std::max(kilograms(0), before.stores + before.fed + flow - before.taken);
    if (honey <= there) return std::nullopt;
    const bool weighed = before.gross.value() > 0;
    const bool impossible = weighed && honey > before.gross + before.fed + 2 * flow;
    return doubt(
        impossibleIf(impossible), "doubt-harvest-there",
        {{"taken", honey}, {"most", there}, {"day", before.day}, {"class", std::string(weighed ? "weighed" : "seen")}});
}

std::optional<Doubt> doubtOfFeed(const GivenAtOnce& feed, const HiveBounds& hive, const ModelConstants& constants) {
    if (beyond(feed.stores.value(), hive.holds.value(), constants) == How::Impossible)
        return doubt(How::Impossible, "doubt-feed",
                     {{"stores", feed.stores}, {"most", hive.holds}, {"boxes", hive.boxes}});
    if (feed.syrup && feed.syrup->value() > constants.entrySyrupAtOnce)
        return doubt(How::Unlikely, "doubt-feed-at-once",
                     {{"given", *feed.syrup}, {"most", litres(constants.entrySyrupAtOnce)}});
    if (feed.solid && feed.solid->value() > constants.entrySolidFeedAtOnce)
        return doubt(How::Unlikely, "doubt-feed-at-once",
                     {{"given", *feed.solid}, {"most", kilograms(constants.entrySolidFeedAtOnce)}});
    if (feed.recently <= hive.holds) return std::nullopt;
    return doubt(How::Unlikely, "doubt-feed-recently",
                 {{"stores", feed.recently}, {"most", hive.holds}, {"days", constants.entryFeedDays}});
}

std::optional<Doubt> doubtOfCoveredCombs(double combs, const HiveBounds& hive, const ModelConstants& constants) {
    return tooMany("doubt-covered", "covered", combs, hive.places, hive, constants);
}

std::optional<Doubt> doubtOfSeams(double seams, const HiveBounds& hive, const ModelConstants& constants) {
    return tooMany("doubt-seams", "seams", seams, hive.seams, hive, constants);
}

std::optional<Doubt> doubtOfBees(double bees, const HiveBounds& hive, const ModelConstants& constants) {
    return tooMany("doubt-bees", "bees", bees, constants.entryBeesOver * hive.bees, hive, constants);
}

std::optional<Doubt> doubtOfBrood(double cells, const HiveBounds& hive, const ModelConstants& constants) {
    const double likely = constants.entryBroodShare * hive.cells;
    if (cells <= likely) return std::nullopt;
    return doubt(beyond(cells, hive.cells, constants), "doubt-brood",
                 {{"cells", cells}, {"most", hive.cells}, {"boxes", hive.boxes}});
}

std::optional<Doubt> doubtOfFullCombs(double combs, const HiveBounds& hive, const ModelConstants& constants) {
    return tooMany("doubt-full-combs", "combs", combs, hive.places, hive, constants);
}

std::optional<Doubt> doubtOfStoresLeft(Mass stores, const HiveBounds& hive, const ModelConstants& constants) {
    if (stores <= hive.holds) return std::nullopt;
    return doubt(beyond(stores.value(), hive.holds.value(), constants), "doubt-stores-left",
                 {{"stores", stores}, {"most", hive.holds}, {"boxes", hive.boxes}});
}

std::optional<Doubt> doubtOfMoisture(double percent, const ModelConstants& constants) {
    if (percent >= constants.entryDriestHoney && percent <= constants.entryWettestHoney) return std::nullopt;
    return doubt(How::Unlikely, "doubt-moisture",
                 {{"water", percent}, {"low", constants.entryDriestHoney}, {"high", constants.entryWettestHoney}});
}

std::optional<Doubt> doubtOfTare(Mass tare, const TareQuestion& parts, const ModelConstants& constants) {
    require(!parts.boxes.empty(), "a hive without a box");
    TareQuestion built = parts, bare = parts;
    built.combs.clear();
    bare.combs.assign(1, Comb{.format = parts.boxes.front(), .built = 0});
    const Tare full = tareFromParts(built), shell = tareFromParts(bare);
    const Mass most = full.mass + 3 * full.sd, least = std::max(kilograms(1), shell.mass - 2 * shell.sd);
    const double boxes = static_cast<double>(parts.boxes.size());
    if (tare > most)
        return doubt(impossibleIf(tare > boundsOf(parts, {}, constants).heaviest), "doubt-tare-heavy",
                     {{"weight", tare}, {"most", most}, {"boxes", boxes}});
    if (tare >= least) return std::nullopt;
    return doubt(impossibleIf(tare < constants.entryImpossibleBelow * least), "doubt-tare-light",
                 {{"weight", tare}, {"least", least}});
}

std::optional<Doubt> doubtOfDay(Date day, Date today, std::optional<Date> colonySince) {
    constexpr int otherClocks = 1; // where the hive stands it may be tomorrow already
    constexpr int aYear = 366;     // further off it is rather the year that is mistyped
    if (const int ahead = day.daysSince(today); ahead > otherClocks) {
        auto later = doubt(How::Unlikely, "doubt-later", {{"day", day}, {"today", today}});
        later.takenMeanwhile = ahead <= aYear;
        return later;
    }
    if (colonySince && day < *colonySince)
        return doubt(How::Unlikely, "doubt-before", {{"day", day}, {"since", *colonySince}});
    return std::nullopt;
}

Mass mostFlow(int days, int flowDays, const ModelConstants& constants) {
    return kilograms(constants.entryFlowPerDay * flowDays +
                     constants.entryGainPerColdDay * std::max(0, days - flowDays));
}

int flowDaysBetween(Date from, Date to, double latitude) {
    constexpr double tropics = 24;
    int days = 0;
    for (Date day = from; day < to; day = day.plusDays(1)) {
        const bool northernSummer = day.month() >= 4 && day.month() <= 9;
        days += std::abs(latitude) < tropics || northernSummer == (latitude >= 0) ? 1 : 0;
    }
    return days;
}

} // namespace winterlarder::stores
