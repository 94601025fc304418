// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_yards.h"

#include "book/form/entry_rows.h"
#include "calendar/season_day.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::book::support {
namespace {

class Yards {
public:
    explicit Yards(std::uint64_t seed) : dice_(seed) {}

    void furnish() {
        for (auto count = 1 + dice_.below(2); count > 0; --count) addYard();
        for (auto count = 1 + dice_.below(3); count > 0; --count) addColony();
        for (const ColonyId colony : colonies_)
            for (auto year = first_; year < first_ + years_; ++year) addWinter(colony, year);
        if (dice_.once(4)) addOddOnes();
    }
    std::vector<Target> targets;
    std::vector<Date> days;

private:
    // ---- numbers ---------------------------------------------------------------------------------------------------------------
    double between(double low, double high) { return low + dice_.share() * (high - low); }
    bool in(int times, int of) {
        return dice_.below(static_cast<std::uint64_t>(of)) < static_cast<std::uint64_t>(times);
    }
    //! Mostly sensible, now and then at an end of what the book takes, or as if typed in another unit.
    double amount(double low, double high, const char* field) {
        const auto* limits = shipped().field(field);
        const double least = *limits->minimum, most = *limits->maximum;
        if (dice_.once(12)) return dice_.once(2) ? least : most;
        const double sensible = std::round(between(low, high) * 100) / 100;
        return std::clamp(dice_.once(15) ? sensible * 10 : sensible, least, most);
    }
    template <class T> T of(std::initializer_list<T> choices) {
        return *(choices.begin() + dice_.below(choices.size()));
    }

    template <class Entry> Id<Entry> add(Entry entry) {
        const auto id = static_cast<std::int64_t>(++next_[static_cast<std::size_t>(kindOf<Entry>)]);
        if (entry.by.empty()) entry.by = "Ada";
        targets.push_back({kindOf<Entry>, id, rowOf<Entry>(std::move(entry))});
        return {id};
    }

    // ---- yards and hives -------------------------------------------------------------------------------------------------------
    SiteRecord somewhere() {
        SiteRecord site;
        const auto& stations = shipped().stations;
        if (in(8, 10)) {
            site.where = stations[dice_.below(stations.size())].id;
        } else if (dice_.once(2)) {
            const auto& near = stations[dice_.below(stations.size())];
            site.where = Coordinates{std::clamp(near.latitude + between(-4, 4), -89.0, 89.0),
                                     std::clamp(near.longitude + between(-4, 4), -179.0, 179.0)};
        } else {
            OwnClimateRecord own;
            own.latitude = std::round(between(-66, 66));
            const double mean = between(-5, 24), swing = between(0, 16);
            for (int month = 0; month < 12; ++month)
                own.monthlyMeanC[static_cast<std::size_t>(month)] =
                    mean - (own.latitude < 0 ? -1 : 1) * swing * std::cos(6.2832 * month / 12);
            site.where = own;
        }
        site.autumnFlow = of(
            {FlowStrength::None, FlowStrength::None, FlowStrength::Trickle, FlowStrength::Fair, FlowStrength::Strong});
        if (dice_.once(4)) site.elevationM = std::round(between(0, 900));
        return site;
    }
    bool southern(const SiteRecord& site) const {
        if (const auto* id = std::get_if<std::string>(&site.where)) return shipped().station(*id)->latitude < 0;
        if (const auto* place = std::get_if<Coordinates>(&site.where)) return place->latitude < 0;
        return std::get<OwnClimateRecord>(site.where).latitude < 0;
    }
    std::optional<DayOfYear> someDayOfYear() {
        if (!dice_.once(16)) return std::nullopt;
        return DayOfYear{1 + static_cast<int>(dice_.below(12)), 1 + static_cast<int>(dice_.below(28))};
    }
    void addYard() {
        Yard yard;
        yard.name = "Yard " + std::to_string(yards_.size() + 1);
        yard.site = somewhere();
        yard.season.lastIncome = someDayOfYear(), yard.season.broodStop = someDayOfYear(),
        yard.season.broodRestart = someDayOfYear();
        yard.season.buildup = someDayOfYear(), yard.season.forage = someDayOfYear(),
        yard.season.syrupDeadline = someDayOfYear();
        yard.wish.shortRisk = amount(0.05, 0.4, "wish.short_risk");
        yard.wish.reserve = kilograms(amount(1, 8, "wish.reserve_kg"));
        if (dice_.once(4)) yard.wish.visitWeekdays = {6, 7};
        yard.learn = !dice_.once(5);
        if (dice_.once(6)) yard.learnSince = Date::of(first_ + 1, 6, 1);
        yards_.push_back({add(yard), southern(yard.site) ? Hemisphere::South : Hemisphere::North});
    }
    BoxRecord box() {
        BoxRecord one;
        if (in(9, 10)) {
            one.format = shipped().formats[dice_.below(shipped().formats.size())].id;
        } else {
            OwnFormat own;
            own.combWidth = millimetres(std::round(between(200, 450)));
            own.combHeight = millimetres(std::round(between(150, 350)));
            own.combsPerBox = 4 + static_cast<int>(dice_.below(12));
            own.pitch = millimetres(36);
            one.format = own;
        }
        one.super = dice_.once(8);
        return one;
    }
    HiveRecord hive() {
        HiveRecord record;
        const BoxRecord first = box();
        for (auto count = 1 + dice_.below(3); count > 0; --count) record.boxes.push_back(dice_.once(6) ? box() : first);
        record.shell =
            of({Shell::Timber, Shell::Timber, Shell::ThickTimber, Shell::Wrapped, Shell::Polystyrene, Shell::Straw});
        record.topInsulation = dice_.once(4);
        record.nucleus = dice_.once(15);
        if (dice_.once(3)) record.tare = kilograms(amount(12, 30, "hive.tare_kg"));
        return record;
    }
    int placesIn(const HiveRecord& record) const {
        int places = 0;
        for (const auto& one : record.boxes) {
            const auto* id = std::get_if<std::string>(&one.format);
            places += id ? shipped().format(*id)->combsPerBox : std::get<OwnFormat>(one.format).combsPerBox;
        }
        return places;
    }
    void addColony() {
        Colony colony;
        const auto& yard = yards_[dice_.below(yards_.size())];
        colony.yard = yard.id;
        colony.name = "Colony " + std::to_string(colonies_.size() + 1);
        colony.hive = hive();
        if (dice_.once(3))
            colony.feeder =
                FeederRecord{of({FeederKind::Round, FeederKind::Top, FeederKind::Contact, FeederKind::Frame}), {}};
        if (dice_.once(4))
            colony.beeKind = of({BeeKind::Dark, BeeKind::Carniolan, BeeKind::Buckfast, BeeKind::Italian});
        hive_ = colony.hive;
        hives_.push_back(colony.hive);
        hemispheres_.push_back(yard.hemisphere);
        colonies_.push_back(add(colony));
    }

    // ---- a winter of a colony --------------------------------------------------------------------------------------------------
    Date on(int firstDay, int lastDay) {
        const int w = firstDay + static_cast<int>(dice_.below(static_cast<std::uint64_t>(lastDay - firstDay + 1)));
        Date date = winter_.date({std::clamp(w, firstSeasonDay.w, lastSeasonDay.w)});
        if (w < firstSeasonDay.w) date = date.plusDays(w - firstSeasonDay.w); // the summer before
        if (date.month() == 2 && date.day() == 28 && dice_.once(2)) date = Date::of(date.year(), 2, 29).value_or(date);
        if (dice_.once(10)) days.push_back(date.plusDays(static_cast<int>(dice_.below(3))));
        return date;
    }

    void addWinter(ColonyId colony, int autumn) {
        const auto at = static_cast<std::size_t>(colony.number - 1);
        winter_ = Winter(hemispheres_[at], autumn);
        hive_ = hives_[at];
        if (dice_.once(10)) return;
        for (auto count = dice_.below(3) + (in(9, 10) ? 1 : 0); count > 0; --count) addLook(colony, on(-190, -60));
        for (auto count = dice_.below(3); count > 0; --count) addWeighing(colony, on(-200, -40));
        for (auto count = dice_.below(4); count > 0; --count) addFeed(colony, on(-150, -30));
        if (dice_.once(3)) addHarvest(colony, on(-170, -60));
        for (auto count = dice_.below(5); count > 0; --count) addWeighing(colony, on(-60, 160));
        for (auto count = dice_.below(3); count > 0; --count) addSighting(colony, on(-30, 120));
        if (dice_.once(3)) addLook(colony, on(40, 150));
        if (dice_.once(3)) addFeed(colony, on(-20, 170));
        if (dice_.once(8)) addHarvest(colony, on(-60, 180));
        if (in(5, 10)) addOutcome(colony, on(20, 150));
        if (dice_.once(12))
            add(Move{.colony = colony, .date = on(-150, 150), .yard = yards_[dice_.below(yards_.size())].id});
        if (dice_.once(8)) add(Housing{.colony = colony, .date = on(-150, 150), .hive = hive()});
        if (dice_.once(6)) add(Treatment{.colony = colony, .date = on(-180, 0), .what = "formic acid"});
        if (dice_.once(6)) addManipulation(colony, on(-100, 120));
        if (dice_.once(25))
            add(Fate{.colony = colony, .date = on(-60, 160), .fate = of({FateKind::Dead, FateKind::Sold})});
        if (dice_.once(5)) addAdvice(colony, on(-120, -40));
        if (dice_.once(6)) addWeather(on(-150, 60));
    }

    BeesRecord bees() {
        BeesRecord record;
        const double most = placesIn(hive_);
        switch (dice_.below(8)) {
        case 0: break;
        case 1: record.count = std::round(amount(3000, 30000, "bees.count")); break;
        case 2: record.seams = amount(2, std::min(12.0, most), "bees.seams"); break;
        default: record.coveredCombs = dice_.once(20) ? most + 1 : std::round(2 * between(0, most)) / 2;
        }
        if (dice_.once(6)) record.broodCells = std::round(amount(0, 20000, "bees.brood_cells"));
        if (dice_.once(10)) record.logSd = dice_.once(4) ? 0 : between(0.02, 0.5);
        record.trouble = dice_.once(15);
        if (dice_.once(6)) record.queenSeen = dice_.once(2);
        return record;
    }
    CombsRecord combs() {
        if (dice_.once(8)) return {};
        const int places = placesIn(hive_);
        if (dice_.once(5)) {
            const double full = std::floor(between(0, places)), half = std::floor(between(0, places - full));
            return QuickCountRecord{full, half, dice_.once(5) ? 0 : between(0.5, 1)};
        }
        std::vector<CombRecord> list;
        const double fullness = dice_.share();
        for (int place = 0; place < places; ++place) {
            CombRecord one;
            if (dice_.once(30)) break;
            if (!dice_.once(8)) one.capped = std::round(100 * fullness * dice_.share()) / 100;
            if (dice_.once(4)) one.open = std::min(0.1, 1 - one.capped.value_or(0)) * dice_.share();
            if (dice_.once(4)) one.brood = (1 - one.capped.value_or(0) - one.open.value_or(0)) * dice_.share() * 0.9;
            if (dice_.once(6)) one.facesSeen = static_cast<int>(dice_.below(3));
            if (dice_.once(20)) one.built = dice_.share();
            one.fed = dice_.once(10);
            list.push_back(one);
        }
        return list;
    }
    void addLook(ColonyId colony, Date date) {
        Look look{.colony = colony, .date = date};
        look.bees = bees();
        look.combs = combs();
        if (dice_.once(8)) look.moisturePercent = amount(16, 22, "moisture_percent");
        days.push_back(date.plusDays(static_cast<int>(dice_.below(12))));
        add(look);
    }
    void addWeighing(ColonyId colony, Date date) {
        WeighingRecord record{date, ScaleReading{kilograms(0)}};
        const double gross = amount(22, 70, "weighings.gross_kg");
        if (in(6, 10)) record.reading = ScaleReading{kilograms(gross)};
        else if (dice_.once(3)) record.reading = of({HeftWord::Light, HeftWord::Fair, HeftWord::Heavy});
        else if (dice_.once(2)) record.reading = LiftReading{{kilograms(gross / 2)}};
        else record.reading = LiftReading{{kilograms(gross / 2), kilograms(gross / 2.1)}};
        add(Weighing{.colony = colony, .weighing = record, .wet = dice_.once(8)});
    }
    void addFeed(ColonyId colony, Date date) {
        FeedRecord record{date, FeedKind::Syrup, {}, {}, {}, {}};
        switch (dice_.below(4)) {
        case 0: record.kind = FeedKind::Fondant, record.fondant = kilograms(amount(1, 15, "feeds.fondant_kg")); break;
        case 1: record.kind = FeedKind::DrySugar, record.sugar = kilograms(amount(1, 5, "feeds.sugar_kg")); break;
        case 2:
            record.syrup = litres(amount(1, 10, "feeds.syrup_l")),
            record.ratio = of({"3:2", "1:1", "2:1", "5:3", "1:9", "9:1"});
            break;
        default: record.sugar = kilograms(amount(1, 8, "feeds.sugar_kg"));
        }
        if (record.sugar && dice_.once(3)) record.ratio = of({"3:2", "1:1"});
        if (dice_.once(25)) record.kind = of({FeedKind::Syrup, FeedKind::Fondant, FeedKind::DrySugar});
        if (dice_.once(15)) days.push_back(date);
        add(Feed{.colony = colony, .feed = record});
    }
    void addHarvest(ColonyId colony, Date date) {
        add(Harvest{.colony = colony, .harvest = {date, kilograms(amount(1, 25, "harvests.kg"))}});
    }
    void addSighting(ColonyId colony, Date date) {
        Sighting seen{.colony = colony, .date = date};
        seen.saw = of({SightingKind::Flying, SightingKind::Cluster, SightingKind::Cluster, SightingKind::Stores,
                       SightingKind::Stores, SightingKind::Dead});
        if (seen.saw == SightingKind::Dead && !dice_.once(3)) seen.saw = SightingKind::Flying;
        if (seen.saw == SightingKind::Cluster && dice_.once(2)) seen.seams = amount(1, 10, "bees.seams");
        if (seen.saw == SightingKind::Stores || dice_.once(4)) seen.stores = !dice_.once(4);
        add(seen);
    }
    void addOutcome(ColonyId colony, Date date) {
        WinterOutcome outcome{.colony = colony, .date = date, .alive = !dice_.once(4)};
        if (outcome.alive && dice_.once(2)) outcome.coveredCombs = amount(1, 10, "bees.covered_combs");
        if (dice_.once(2)) outcome.storesLeft = kilograms(amount(0, 12, "winter_outcomes.stores_left_kg"));
        add(outcome);
    }
    void addManipulation(ColonyId colony, Date date) {
        Manipulation done{.colony = colony, .date = date};
        done.what = of({ManipulationKind::CombsAdded, ManipulationKind::CombsRemoved, ManipulationKind::BoxesAdded});
        if (!dice_.once(3)) done.weightChange = kilograms(amount(-8, 8, "manipulations.weight_change_kg"));
        add(done);
    }
    void addAdvice(ColonyId colony, Date date) {
        const auto advice = add(ActedAdvice{.colony = colony,
                                            .date = date,
                                            .verdict = "feed",
                                            .inputs = "{}",
                                            .answer = "{}",
                                            .seed = 1,
                                            .winters = 50,
                                            .programVersion = "1"});
        for (auto count = dice_.below(4); count > 0; --count) {
            PlannedVisit visit{.colony = colony, .date = date.plusDays(static_cast<int>(dice_.below(40)))};
            visit.what = of({VisitKind::Syrup, VisitKind::Fondant, VisitKind::Check});
            if (visit.what == VisitKind::Syrup)
                visit.sugar = kilograms(amount(1, 5, "feeds.sugar_kg")), visit.syrup = litres(5);
            if (visit.what == VisitKind::Fondant) visit.fondant = kilograms(amount(1, 5, "feeds.fondant_kg"));
            visit.state = of({VisitState::Planned, VisitState::Done, VisitState::Skipped});
            if (visit.state == VisitState::Done) visit.doneOn = visit.date.plusDays(static_cast<int>(dice_.below(5)));
            if (!dice_.once(4)) visit.advice = advice;
            add(visit);
        }
    }
    void addWeather(Date from) {
        WeatherLog log{.yard = yards_[dice_.below(yards_.size())].id};
        const double mean = between(-10, 15);
        for (auto day = 0; day < 60; ++day)
            if (!dice_.once(10))
                log.days.push_back(
                    {from.plusDays(day), std::round(10 * amount(mean - 6, mean + 6, "weather_logs.mean_c")) / 10});
        add(log);
    }

    // Entries of any sort, on any day the book takes.
    void addOddOnes() {
        Known known;
        for (const auto& yard : yards_) known.of(Kind::Yard).push_back(yard.id.number);
        for (const auto& colony : colonies_) known.of(Kind::Colony).push_back(colony.number);
        for (const Kind kind : {Kind::Look, Kind::Weighing, Kind::Feed, Kind::Harvest, Kind::Sighting,
                                Kind::WinterOutcome, Kind::Housing})
            if (dice_.once(3)) {
                auto row = someRow(dice_, kind, limits(), known);
                const auto column = tableOf(kind).column("date");
                if (dice_.once(2)) row.values[*column] = on(-180, 180).iso();
                else days.push_back(*Date::parse(std::get<std::string>(row.values[*column])));
                targets.push_back({kind, ++next_[static_cast<std::size_t>(kind)], std::move(row)});
            }
    }

    struct Place {
        YardId id;
        Hemisphere hemisphere;
    };
    Dice dice_;
    std::int64_t next_[kindCount] = {};
    int first_ = 2023, years_ = 1 + static_cast<int>(dice_.below(4));
    std::vector<Place> yards_;
    std::vector<ColonyId> colonies_;
    std::vector<HiveRecord> hives_;
    std::vector<Hemisphere> hemispheres_;
    HiveRecord hive_;
    Winter winter_{Hemisphere::North, 2023};
};

} // namespace

RandomYards randomYards(const std::filesystem::path& file, std::uint64_t seed) {
    Yards yards(seed);
    yards.furnish();
    std::stable_sort(yards.targets.begin(), yards.targets.end(),
                     [](const Target& a, const Target& b) { return a.kind < b.kind; });
    RandomYards made{newBook(file), std::move(yards.days)};
    must(made.book.apply(PutEntries{"import document", std::move(yards.targets)}, morning, "Ada"));
    return made;
}

} // namespace winterlarder::book::support
