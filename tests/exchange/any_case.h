// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "exchange/case/case_file.h"

#include <rapidcheck.h>

//! Arbitrary cases that the reader could have given: within the limits, alternatives respected.
namespace winterlarder::testing {

inline double within(int low, int high) { return *rc::gen::inRange(low * 100, high * 100 + 1) / 100.0; }
inline bool coin() { return *rc::gen::arbitrary<bool>(); }

template <class T, class Make> std::optional<T> maybe(Make make) {
    return coin() ? std::optional<T>(make()) : std::nullopt;
}
template <class T> std::vector<T> some(int most, T (*make)()) {
    std::vector<T> list;
    for (int n = *rc::gen::inRange(0, most + 1); n > 0; --n) list.push_back(make());
    return list;
}

inline Date asOf() { return *Date::of(2026, 9, 12); }
inline Date before() { return asOf().plusDays(-*rc::gen::inRange(0, exchange::oldestObservationDays + 1)); }

inline book::SiteRecord anySite() {
    book::SiteRecord site;
    const int sort = *rc::gen::inRange(0, 3);
    if (sort == 0) site.where = std::string("ca-halifax");
    if (sort == 1) site.where = book::Coordinates{within(1, 90), within(-180, 180)};
    if (sort == 2) {
        book::OwnClimateRecord own;
        own.latitude = within(1, 90);
        for (double& mean : own.monthlyMeanC) mean = within(-60, 45);
        own.longitude = maybe<double>([] { return within(-180, 180); });
        own.dailySdWinter = maybe<double>([] { return within(0, 15); });
        own.lag1 = maybe<double>([] { return within(0, 0) + 0.7; });
        own.seasonOffsetSd = maybe<double>([] { return within(0, 5); });
        site.where = own;
    } else {
        site.elevationM = maybe<double>([] { return within(0, 3000); });
    }
    site.autumnFlow = *rc::gen::element<std::optional<book::FlowStrength>>(
        std::nullopt, book::FlowStrength::None, book::FlowStrength::Trickle, book::FlowStrength::Fair,
        book::FlowStrength::Strong);
    return site;
}

inline book::FormatChoice anyFormat() {
    if (coin()) return std::string("langstroth-deep");
    book::OwnFormat own{millimetres(within(50, 1000)),
                        millimetres(within(50, 1000)),
                        {},
                        *rc::gen::inRange(10, 61),
                        millimetres(within(25, 60))};
    if (coin()) own.bottomWidth = millimetres(within(50, 1000));
    return own;
}

inline book::BoxRecord anyBox() {
    return {anyFormat(), maybe<int>([] { return *rc::gen::inRange(0, 61); }), coin(), maybe<Date>(before)};
}

inline book::HiveRecord anyHive() {
    book::HiveRecord hive;
    hive.boxes = some<book::BoxRecord>(4, anyBox);
    hive.boxes.push_back({anyFormat(), {}, false}); // at least ten places
    if (coin()) hive.boxes.assign(3, hive.boxes.back());
    hive.shell = *rc::gen::element(book::Shell::Timber, book::Shell::Straw, book::Shell::Polystyrene);
    hive.topInsulation = coin();
    hive.treated = coin();
    hive.nucleus = coin();
    hive.tare = maybe<Mass>([] { return kilograms(within(0, 150)); });
    hive.supersFor =
        maybe<book::SupersFor>([] { return *rc::gen::element(book::SupersFor::People, book::SupersFor::Bees); });
    return hive;
}

inline book::BeesRecord anyBees() {
    book::BeesRecord bees;
    const int sort = *rc::gen::inRange(0, 4);
    if (sort == 1) bees.count = within(0, 100000);
    if (sort == 2) bees.seams = within(0, 10);
    bees.logSd = maybe<double>([] { return within(0, 1); });
    bees.broodCells = maybe<double>([] { return within(0, 9000); });
    if (coin()) bees.kind = *rc::gen::element(book::BeeKind::Dark, book::BeeKind::Carniolan, book::BeeKind::Italian);
    bees.queenSeen = maybe<bool>(coin);
    bees.eggsSeen = maybe<bool>(coin);
    bees.trouble = coin();
    bees.mitesCounted = maybe<bool>(coin);
    bees.mitesPer100 = maybe<double>([] { return within(0, 100); });
    bees.mitesTreated = maybe<bool>(coin);
    bees.foodBeside = maybe<bool>(coin);
    bees.sure = coin();
    return bees;
}

inline book::CombRecord anyComb() {
    book::CombRecord comb;
    const auto quarter = [] { return within(0, 0) + *rc::gen::inRange(0, 26) / 100.0; };
    comb.capped = maybe<double>(quarter);
    comb.open = maybe<double>(quarter);
    comb.brood = maybe<double>(quarter);
    comb.pollen = maybe<double>(quarter);
    if (coin()) comb.format = "dadant-blatt-10";
    comb.width = maybe<Length>([] { return millimetres(within(25, 60)); });
    comb.built = within(0, 1);
    comb.facesSeen = *rc::gen::inRange(0, 3);
    comb.throughWindow = coin();
    comb.measured = coin();
    comb.inSuper = coin();
    comb.fed = coin();
    comb.oldNest = coin();
    return comb;
}

inline book::CombsRecord anyCombs() {
    const int sort = *rc::gen::inRange(0, 3);
    if (sort == 0) return std::monostate();
    if (sort == 1) return book::QuickCountRecord{within(0, 6), within(0, 4), within(0, 1)};
    return some<book::CombRecord>(10, anyComb);
}

inline book::WeighingRecord anyWeighing() {
    const int sort = *rc::gen::inRange(0, 4);
    if (sort == 0) return {before(), book::ScaleReading{kilograms(within(0, 500))}};
    if (sort == 1) return {before(), book::LiftReading{{kilograms(within(0, 250))}}};
    if (sort == 2) return {before(), book::LiftReading{{kilograms(within(0, 250)), kilograms(within(0, 250))}}};
    return {before(), book::HeftWord::Heavy, coin()};
}

inline book::FeedRecord anyFeed() {
    const int sort = *rc::gen::inRange(0, 4);
    const auto kg = kilograms(within(0, 100));
    if (sort == 0)
        return {before(), book::FeedKind::Syrup, kg, {}, maybe<std::string>([] { return std::string("1:0.63"); }), {}};
    if (sort == 1) return {before(), book::FeedKind::Syrup, {}, litres(within(0, 100)), "3:2", {}};
    if (sort == 2) return {before(), book::FeedKind::Fondant, {}, {}, {}, kg};
    return {before(), book::FeedKind::DrySugar, kg, {}, {}, {}, coin(), maybe<bool>(coin)};
}

inline book::HarvestRecord anyHarvest() { return {before(), kilograms(within(0, 300)), coin(), maybe<bool>(coin)}; }

inline book::TreatmentRecord anyTreatment() {
    return {before(), maybe<Date>([] { return asOf().plusDays(*rc::gen::inRange(0, 90)); }),
            coin() ? "formic acid" : ""};
}

inline std::optional<Date> anyWinterDay() {
    return maybe<Date>([] { return Date::of(2026, 8, 1)->plusDays(*rc::gen::inRange(0, 334)); });
}

inline book::SeasonRecord anySeason() {
    return {anyWinterDay(), anyWinterDay(), anyWinterDay(), anyWinterDay(),
            anyWinterDay(), anyWinterDay(), anyWinterDay(), anyWinterDay()};
}

inline book::WishRecord anyWish() {
    book::WishRecord wish;
    wish.shortRisk = maybe<double>([] { return coin() ? 0.2 : 0.1; });
    wish.reserve = maybe<Mass>([] { return kilograms(within(0, 50)); });
    wish.visitsInWinter = maybe<bool>(coin);
    wish.visitEveryDays = *rc::gen::inRange(1, 61);
    if (coin()) wish.visitWeekdays = {6, 7};
    return wish;
}

inline book::LearnedRecord anyLearned() {
    book::LearnedRecord learned{.winters = *rc::gen::inRange(1, 20), .use = within(1, 3), .useLogSd = within(0, 1)};
    learned.death = within(1, 3);
    learned.deathLogSd = within(0, 1);
    learned.forageYears = *rc::gen::inRange(0, 20);
    if (learned.forageYears == 0) return learned;
    learned.forageShiftDays = within(-20, 20);
    learned.forageShiftSdDays = within(0, 9);
    return learned;
}

// Combs of a super need one to hang in.
inline book::ColonyCase withRoomInSupers(book::ColonyCase record) {
    const auto* list = std::get_if<std::vector<book::CombRecord>>(&record.combs);
    for (int supers = 0; list && supers < 2; ++supers) record.hive.boxes.push_back({"langstroth-medium", 5, true});
    return record;
}

inline book::ColonyCase anyCase() {
    return withRoomInSupers(
        {.colony = maybe<std::string>([] { return std::string("Row 2 \"east\" \xC3\xA9\n"); }),
         .yard = maybe<std::string>([] { return std::string("Orchard"); }),
         .asOf = asOf(),
         .lookedOn = maybe<Date>(before),
         .site = anySite(),
         .hive = anyHive(),
         .bees = anyBees(),
         .combs = anyCombs(),
         .weighings = some<book::WeighingRecord>(3, anyWeighing),
         .moisturePercent = maybe<double>([] { return within(10, 40); }),
         .feeds = some<book::FeedRecord>(3, anyFeed),
         .harvests = some<book::HarvestRecord>(3, anyHarvest),
         .season = anySeason(),
         .feeder = maybe<book::FeederRecord>([] {
             return book::FeederRecord{book::FeederKind::Frame, maybe<Volume>([] { return litres(within(1, 50)); })};
         }),
         .wish = anyWish(),
         .learned = maybe<book::LearnedRecord>(anyLearned),
         .sure = coin(),
         .treatments = some<book::TreatmentRecord>(3, anyTreatment),
         .honeyKind = maybe<book::HoneyKind>([] {
             return *rc::gen::element(book::HoneyKind::Blossom, book::HoneyKind::Honeydew, book::HoneyKind::Heather);
         }),
         .fedOrTreated = maybe<bool>(coin),
         .fullCombs = maybe<double>([] { return within(0, 100); }),
         .units = maybe<book::UnitSystem>([] {
             return *rc::gen::element(book::UnitSystem::Metric, book::UnitSystem::UnitedStates,
                                      book::UnitSystem::Imperial);
         })});
}

} // namespace winterlarder::testing
