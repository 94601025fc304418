// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/date_of.h"
#include "book/form/describe_parts.h"

//! The one description of every entry: which members it has, and which row of shared/fields.csv limits each. A visitor
//! walks it to list columns, to write a row, or to read one (book/form/visitors.h). `V::reads` is true for the last.
//! A visitor has field(field name, member, number behind the name where one field fills several columns),
//! reference(name, id) and list(name, items). What entries share with case files: describe_parts.h.
namespace winterlarder::book {

//! One photograph of a look: where its file lies.
struct Photograph {
    std::string file;
};
template <class V> void describe(V& v, Photograph& photograph) { v.field("photographs.file", photograph.file); }

template <class V> void describe(V& v, Yard& yard) {
    v.field("yards.name", yard.name);
    describe(v, yard.site);
    describeSeason(v, "yards.", yard.season);
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

template <class V> void describe(V& v, Colony& colony) {
    FeederColumns feeder = columnsOf(colony.feeder);
    v.reference("yard", colony.yard);
    v.field("colonies.name", colony.name);
    describe(v, colony.hive);
    describe(v, feeder);
    v.field("bees.kind", colony.beeKind);
    v.field("colonies.queen_year", colony.queenYear);
    v.field("colonies.queen_colour", colony.queenColour);
    v.field("colonies.origin", colony.origin);
    v.field("colonies.since", colony.since);
    if constexpr (V::reads) colony.feeder = feederOf(feeder);
}

template <class V> void describe(V& v, Move& move) { v.reference("yard", move.yard); }

template <class V> void describe(V& v, Fate& fate) {
    v.field("fates.fate", fate.fate);
    v.reference("into", fate.into);
    v.field("fates.cause", fate.cause);
}

template <class V> void describe(V& v, Housing& housing) { describe(v, housing.hive); }

template <class V> void describe(V& v, Look& look) {
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

template <class V> void describe(V& v, Weighing& entry) {
    describe(v, entry.weighing.reading);
    v.field("weighings.wet", entry.wet);
    describeSure(v, entry.weighing.sure);
}

template <class V> void describe(V& v, Feed& entry) {
    describeAmounts(v, entry.feed);
    v.field("feeds.after_look", entry.feed.afterLook);
    describeSure(v, entry.feed.sure);
}

template <class V> void describe(V& v, Harvest& entry) {
    v.field("harvests.kg", entry.harvest.honey);
    v.field("harvests.combs", entry.combs);
    v.field("moisture_percent", entry.moisturePercent);
    v.field("harvests.after_look", entry.harvest.afterLook);
    describeSure(v, entry.harvest.sure);
}

template <class V> void describe(V& v, Treatment& treatment) { describeTreatment(v, treatment); }

template <class V> void describe(V& v, Manipulation& manipulation) {
    v.field("manipulations.what", manipulation.what);
    v.field("manipulations.count", manipulation.count);
    v.reference("to_colony", manipulation.toColony);
    v.field("manipulations.weight_change_kg", manipulation.weightChange);
}

template <class V> void describe(V& v, ActedAdvice& advice) {
    v.field("acted_advice.verdict", advice.verdict);
    v.field("acted_advice.inputs", advice.inputs);
    v.field("acted_advice.answer", advice.answer);
    v.field("run.seed", advice.seed);
    v.field("run.winters", advice.winters);
    v.field("acted_advice.program_version", advice.programVersion);
}

template <class V> void describe(V& v, PlannedVisit& visit) {
    v.field("planned_visits.what", visit.what);
    v.field("feeds.sugar_kg", visit.sugar);
    v.field("feeds.syrup_l", visit.syrup);
    v.field("feeds.fondant_kg", visit.fondant);
    v.field("planned_visits.state", visit.state);
    v.field("planned_visits.done_on", visit.doneOn);
    v.reference("advice", visit.advice);
}

template <class V> void describe(V& v, WinterOutcome& outcome) {
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

template <class V> void describe(V& v, Sighting& sighting) {
    v.field("sightings.saw", sighting.saw);
    v.field("bees.seams", sighting.seams);
    v.field("sightings.stores", sighting.stores);
    v.field("sightings.cluster_from", sighting.clusterFrom);
    describeSure(v, sighting.sure);
}

template <class V> void describe(V& v, DayTemperature& day) {
    v.field("records.date", day.date);
    v.field("weather_logs.mean_c", day.meanC);
}

template <class V> void describe(V& v, WeatherLog& log) {
    v.reference("yard", log.yard);
    v.field("weather_logs.origin", log.origin);
    v.list("days", log.days);
}

template <class Entry> inline constexpr bool isRecord = requires(Entry entry) { entry.colony; };

//! The whole entry: of which colony and day where it is a record, what it says, note and writer.
template <class V, class Entry> void describeWhole(V& v, Entry& entry) {
    if constexpr (isRecord<Entry>) {
        v.reference("colony", entry.colony);
        v.field("records.date", dateOf(entry));
    }
    describe(v, entry);
    v.field("records.note", entry.note);
    v.field("records.by", entry.by);
}

} // namespace winterlarder::book
