// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/date_of.h"
#include "book/entries/entries.h"
#include "book/entries/words.h"

#include <string_view>

//! The one description of every entry: which members it has, and which entry of shared/fields.csv limits each. A visitor
//! walks it to list columns, to write a row, or to read one (book/visitors.h). `V::reads` is true for the last.
//! A visitor has field(field name, member, number behind the name where one field fills several columns), reference(name, id)
//! and list(name, items).
namespace winterlarder::book {

// ---- parts that are variants in records.h and columns side by side in the file ----------------------------------------

struct WhereColumns {
    std::optional<std::string> station;
    std::optional<double> latitude, longitude;
    std::array<std::optional<double>, 12> monthlyMean;
    std::optional<double> dailySdWinter, dailySdSummer, lag1, seasonOffsetSd;
};
WhereColumns columnsOf(const decltype(SiteRecord::where)& where);
decltype(SiteRecord::where) whereOf(const WhereColumns& columns);

struct FormatColumns {
    std::optional<std::string> format;
    std::optional<Length> combWidth, combHeight, bottomWidth;
    std::optional<int> combsPerBox;
    std::optional<Length> pitch;
};
FormatColumns columnsOf(const FormatChoice& format);
FormatChoice formatOf(const FormatColumns& columns);

enum class CombsForm { None, Listed, Quick };
template <> inline constexpr std::array<std::string_view, 3> wordsOf<CombsForm>{"none", "listed", "quick"};
struct CombsColumns {
    CombsForm form = CombsForm::None;
    std::optional<double> fullOfStores, half, cappedShare;
    std::vector<CombRecord> combs;
};
CombsColumns columnsOf(const CombsRecord& combs);
CombsRecord combsOf(CombsColumns columns);

struct ReadingColumns {
    std::optional<Mass> gross, firstLift, secondLift;
    std::optional<HeftWord> heft;
};
ReadingColumns columnsOf(const decltype(WeighingRecord::reading)& reading);
decltype(WeighingRecord::reading) readingOf(const ReadingColumns& columns);

struct FeederColumns {
    std::optional<FeederKind> kind;
    std::optional<Volume> capacity;
};
FeederColumns columnsOf(const std::optional<FeederRecord>& feeder);
std::optional<FeederRecord> feederOf(const FeederColumns& columns);

//! Said by the keeper of an entry that was asked about; nothing else is written, so entries of old books stay as they are.
template <class V>
void describeSure(V& v, bool& sure) {
    std::optional<bool> said = sure ? std::optional(true) : std::nullopt;
    v.field("records.sure", said);
    if constexpr (V::reads) sure = said.value_or(false);
}

// ---- parts that several entries share -----------------------------------------------------------------------------

template <class V>
void describe(V& v, SiteRecord& site) {
    WhereColumns where = columnsOf(site.where);
    v.field("site.station", where.station);
    v.field("site.latitude", where.latitude);
    v.field("site.longitude", where.longitude);
    for (std::size_t month = 0; month < 12; ++month)
        v.field("site.monthly_mean_c", where.monthlyMean[month], static_cast<int>(month) + 1);
    v.field("site.daily_sd_winter_c", where.dailySdWinter);
    v.field("site.daily_sd_summer_c", where.dailySdSummer);
    v.field("site.lag1", where.lag1);
    v.field("site.season_offset_sd_c", where.seasonOffsetSd);
    v.field("site.elevation_m", site.elevationM);
    v.field("site.autumn_flow", site.autumnFlow);
    if constexpr (V::reads) site.where = whereOf(where);
}

template <class V>
void describe(V& v, YardSeason& season) {
    v.field("yards.last_income", season.lastIncome);
    v.field("yards.brood_stop", season.broodStop);
    v.field("yards.brood_restart", season.broodRestart);
    v.field("yards.buildup", season.buildup);
    v.field("yards.forage", season.forage);
    v.field("yards.feed_advised_by", season.feedAdvisedBy);
    v.field("yards.syrup_deadline", season.syrupDeadline);
    v.field("yards.syrup_refused", season.syrupRefused);
}

template <class V>
void describe(V& v, WishRecord& wish) {
    v.field("wish.short_risk", wish.shortRisk);
    v.field("wish.reserve_kg", wish.reserve);
    v.field("wish.visit_every_days", wish.visitEveryDays);
    v.field("wish.visit_weekdays", wish.visitWeekdays);
    v.field("wish.visits_in_winter", wish.visitsInWinter);
}

template <class V>
void describe(V& v, BoxRecord& box) {
    FormatColumns format = columnsOf(box.format);
    v.field("hive.boxes.format", format.format);
    v.field("hive.format.comb_width_mm", format.combWidth);
    v.field("hive.format.comb_height_mm", format.combHeight);
    v.field("hive.format.bottom_width_mm", format.bottomWidth);
    v.field("hive.format.combs_per_box", format.combsPerBox);
    v.field("hive.format.pitch_mm", format.pitch);
    v.field("hive.boxes.combs", box.combs);
    v.field("hive.boxes.super", box.super);
    v.field("hive.boxes.put_on", box.putOn);
    if constexpr (V::reads) box.format = formatOf(format);
}

template <class V>
void describe(V& v, HiveRecord& hive) {
    v.field("hive.shell", hive.shell);
    v.field("hive.top_insulation", hive.topInsulation);
    v.field("hive.treated", hive.treated);
    v.field("hive.nucleus", hive.nucleus);
    v.field("hive.tare_kg", hive.tare);
    v.field("hive.supers_for", hive.supersFor);
    v.list("boxes", hive.boxes);
}

template <class V>
void describe(V& v, BeesRecord& bees) {
    v.field("bees.count", bees.count);
    v.field("bees.covered_combs", bees.coveredCombs);
    v.field("bees.seams", bees.seams);
    v.field("bees.spread", bees.logSd);
    v.field("bees.brood_cells", bees.broodCells);
    v.field("bees.kind", bees.kind);
    v.field("bees.queen_seen", bees.queenSeen);
    v.field("bees.eggs_seen", bees.eggsSeen);
    v.field("bees.trouble", bees.trouble);
    v.field("bees.mites_counted", bees.mitesCounted);
    v.field("bees.mites_per_100_bees", bees.mitesPer100);
    v.field("bees.mites_treated", bees.mitesTreated);
    v.field("bees.food_beside", bees.foodBeside);
}

template <class V>
void describe(V& v, CombRecord& comb) {
    v.field("combs.capped", comb.capped);
    v.field("combs.open", comb.open);
    v.field("combs.brood", comb.brood);
    v.field("combs.pollen", comb.pollen);
    v.field("combs.format", comb.format);
    v.field("combs.width_mm", comb.width);
    v.field("combs.built", comb.built);
    v.field("combs.faces_seen", comb.facesSeen);
    v.field("combs.through_window", comb.throughWindow);
    v.field("combs.measured", comb.measured);
    v.field("combs.in_super", comb.inSuper);
    v.field("combs.fed", comb.fed);
    v.field("combs.old_nest", comb.oldNest);
}

template <class V>
void describe(V& v, CombsRecord& combs) {
    CombsColumns columns = columnsOf(combs);
    v.field("looks.combs_form", columns.form);
    v.field("combs.full_of_stores", columns.fullOfStores);
    v.field("combs.half", columns.half);
    v.field("combs.capped_share", columns.cappedShare);
    v.list("combs", columns.combs);
    if constexpr (V::reads) combs = combsOf(std::move(columns));
}

//! One photograph of a look: where its file lies.
struct Photograph {
    std::string file;
};
template <class V>
void describe(V& v, Photograph& photograph) {
    v.field("photographs.file", photograph.file);
}

// ---- the entries --------------------------------------------------------------------------------------------------

template <class V>
void describe(V& v, Yard& yard) {
    v.field("yards.name", yard.name);
    describe(v, yard.site);
    describe(v, yard.season);
    describe(v, yard.wish);
    v.field("yards.forage_notes", yard.forageNotes);
    v.field("yards.currency", yard.currency);
    v.field("yards.sugar_price_per_kg", yard.sugarPricePerKg);
    v.field("yards.bag_kg", yard.bag);
    v.field("yards.learn", yard.learn);
    v.field("yards.learn_since", yard.learnSince);
    v.field("full_combs", yard.fullCombs);
    v.field("units", yard.units);
}

template <class V>
void describe(V& v, Colony& colony) {
    FeederColumns feeder = columnsOf(colony.feeder);
    v.reference("yard", colony.yard);
    v.field("colonies.name", colony.name);
    describe(v, colony.hive);
    v.field("feeder.kind", feeder.kind);
    v.field("feeder.capacity_l", feeder.capacity);
    v.field("bees.kind", colony.beeKind);
    v.field("colonies.queen_year", colony.queenYear);
    v.field("colonies.queen_colour", colony.queenColour);
    v.field("colonies.origin", colony.origin);
    v.field("colonies.since", colony.since);
    if constexpr (V::reads) colony.feeder = feederOf(feeder);
}

template <class V>
void describe(V& v, Move& move) {
    v.reference("yard", move.yard);
}

template <class V>
void describe(V& v, Fate& fate) {
    v.field("fates.fate", fate.fate);
    v.reference("into", fate.into);
    v.field("fates.cause", fate.cause);
}

template <class V>
void describe(V& v, Housing& housing) {
    describe(v, housing.hive);
}

template <class V>
void describe(V& v, Look& look) {
    describe(v, look.bees);
    describe(v, look.combs);
    v.field("looks.sealed_brood", look.sealedBrood);
    v.field("looks.pollen_coming_in", look.pollenComingIn);
    v.field("looks.temper", look.temper);
    v.field("moisture_percent", look.moisturePercent);
    v.field("looks.trouble_signs", look.troubleSigns);
    v.field("honey_kind", look.honeyKind);
    v.field("fed_or_treated", look.fedOrTreated);
    describeSure(v, look.sure);
    std::vector<Photograph> photographs;
    for (const auto& file : look.photographs) photographs.push_back({file});
    v.list("photographs", photographs);
    if constexpr (V::reads) {
        look.photographs.clear();
        for (auto& photograph : photographs) look.photographs.push_back(std::move(photograph.file));
    }
}

template <class V>
void describe(V& v, Weighing& entry) {
    ReadingColumns reading = columnsOf(entry.weighing.reading);
    v.field("weighings.gross_kg", reading.gross);
    v.field("weighings.lift_kg", reading.firstLift, 1);
    v.field("weighings.lift_kg", reading.secondLift, 2);
    v.field("weighings.heft", reading.heft);
    v.field("weighings.wet", entry.wet);
    describeSure(v, entry.weighing.sure);
    if constexpr (V::reads) entry.weighing.reading = readingOf(reading);
}

template <class V>
void describe(V& v, Feed& entry) {
    v.field("feeds.kind", entry.feed.kind);
    v.field("feeds.sugar_kg", entry.feed.sugar);
    v.field("feeds.syrup_l", entry.feed.syrup);
    v.field("feeds.ratio", entry.feed.ratio);
    v.field("feeds.fondant_kg", entry.feed.fondant);
    v.field("feeds.after_look", entry.feed.afterLook);
    describeSure(v, entry.feed.sure);
}

template <class V>
void describe(V& v, Harvest& entry) {
    v.field("harvests.kg", entry.harvest.honey);
    v.field("harvests.combs", entry.combs);
    v.field("moisture_percent", entry.moisturePercent);
    v.field("harvests.after_look", entry.harvest.afterLook);
    describeSure(v, entry.harvest.sure);
}

template <class V>
void describe(V& v, Treatment& treatment) {
    v.field("treatments.until", treatment.until);
    v.field("treatments.what", treatment.what);
}

template <class V>
void describe(V& v, Manipulation& manipulation) {
    v.field("manipulations.what", manipulation.what);
    v.field("manipulations.count", manipulation.count);
    v.reference("to_colony", manipulation.toColony);
    v.field("manipulations.weight_change_kg", manipulation.weightChange);
}

template <class V>
void describe(V& v, ActedAdvice& advice) {
    v.field("acted_advice.verdict", advice.verdict);
    v.field("acted_advice.inputs", advice.inputs);
    v.field("acted_advice.answer", advice.answer);
    v.field("run.seed", advice.seed);
    v.field("run.winters", advice.winters);
    v.field("acted_advice.program_version", advice.programVersion);
}

template <class V>
void describe(V& v, PlannedVisit& visit) {
    v.field("planned_visits.what", visit.what);
    v.field("feeds.sugar_kg", visit.sugar);
    v.field("feeds.syrup_l", visit.syrup);
    v.field("feeds.fondant_kg", visit.fondant);
    v.field("planned_visits.state", visit.state);
    v.field("planned_visits.done_on", visit.doneOn);
    v.reference("advice", visit.advice);
}

template <class V>
void describe(V& v, WinterOutcome& outcome) {
    v.field("winter_outcomes.alive", outcome.alive);
    v.field("bees.covered_combs", outcome.coveredCombs);
    v.field("winter_outcomes.stores_left_kg", outcome.storesLeft);
    v.field("winter_outcomes.food_left", outcome.foodLeft);
    v.field("winter_outcomes.heads_in_cells", outcome.headsInCells);
    v.field("winter_outcomes.mites_on_floor", outcome.mitesOnFloor);
    v.field("winter_outcomes.brood_pattern", outcome.broodPattern);
    v.field("winter_outcomes.queen", outcome.queen);
    describeSure(v, outcome.sure);
}

template <class V>
void describe(V& v, Sighting& sighting) {
    v.field("sightings.saw", sighting.saw);
    v.field("bees.seams", sighting.seams);
    v.field("sightings.stores", sighting.stores);
    v.field("sightings.cluster_from", sighting.clusterFrom);
    describeSure(v, sighting.sure);
}

template <class V>
void describe(V& v, DayTemperature& day) {
    v.field("records.date", day.date);
    v.field("weather_logs.mean_c", day.meanC);
}

template <class V>
void describe(V& v, WeatherLog& log) {
    v.reference("yard", log.yard);
    v.field("weather_logs.origin", log.origin);
    v.list("days", log.days);
}

template <class Entry>
inline constexpr bool isRecord = requires(Entry entry) { entry.colony; };

//! The whole entry: of which colony and day where it is a record, what it says, note and writer.
template <class V, class Entry>
void describeWhole(V& v, Entry& entry) {
    if constexpr (isRecord<Entry>) {
        v.reference("colony", entry.colony);
        v.field("records.date", dateOf(entry));
    }
    describe(v, entry);
    v.field("records.note", entry.note);
    v.field("records.by", entry.by);
}

} // namespace winterlarder::book
