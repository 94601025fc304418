// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_file.h"
#include "exchange/case/words_of_records.h"
#include "exchange/json/json_output.h"

#include <algorithm>

namespace winterlarder::exchange {

namespace {

// Adds a member only where there is something to say.
template <class T> void addIf(Json& object, std::string_view name, const std::optional<T>& value) {
    if (value) object.add(name, *value);
}
void addIf(Json& object, std::string_view name, const std::optional<Mass>& value) {
    if (value) object.add(name, value->value());
}
void addIf(Json& object, std::string_view name, const std::optional<Length>& value) {
    if (value) object.add(name, value->value());
}
void addIf(Json& object, std::string_view name, const std::optional<Volume>& value) {
    if (value) object.add(name, value->value());
}
void addIf(Json& object, std::string_view name, const std::optional<Date>& value) {
    if (value) object.add(name, value->iso());
}
void addFlag(Json& object, std::string_view name, bool flag) {
    if (flag) object.add(name, true);
}
void addPart(Json& object, std::string_view name, Json part) {
    if (!part.empty()) object.add(name, std::move(part));
}

Json whereabouts(const book::SiteRecord& record) {
    Json site = Json::object();
    if (const auto* id = std::get_if<std::string>(&record.where)) return std::move(site.add("station", *id));
    if (const auto* place = std::get_if<book::Coordinates>(&record.where))
        return std::move(site.add("latitude", place->latitude).add("longitude", place->longitude));
    const auto& own = std::get<book::OwnClimateRecord>(record.where);
    site.add("latitude", own.latitude);
    addIf(site, "longitude", own.longitude);
    Json means = Json::list();
    for (double mean : own.monthlyMeanC)
        means.push(mean);
    site.add("monthly_mean_c", std::move(means));
    addIf(site, "daily_sd_winter_c", own.dailySdWinter);
    addIf(site, "daily_sd_summer_c", own.dailySdSummer);
    addIf(site, "lag1", own.lag1);
    addIf(site, "season_offset_sd_c", own.seasonOffsetSd);
    return site;
}

Json siteOf(const book::SiteRecord& record) {
    Json site = whereabouts(record);
    addIf(site, "elevation_m", record.elevationM);
    if (record.autumnFlow) site.add("autumn_flow", wordOf(flowWords, *record.autumnFlow));
    return site;
}

Json formatOf(const book::FormatChoice& choice) {
    if (const auto* id = std::get_if<std::string>(&choice)) return *id;
    const auto& own = std::get<book::OwnFormat>(choice);
    Json format = Json::object();
    format.add("comb_width_mm", own.combWidth.value()).add("comb_height_mm", own.combHeight.value());
    addIf(format, "bottom_width_mm", own.bottomWidth);
    format.add("combs_per_box", own.combsPerBox).add("pitch_mm", own.pitch.value());
    return format;
}

Json boxOf(const book::BoxRecord& record) {
    Json box = Json::object();
    box.add("format", formatOf(record.format));
    addIf(box, "combs", record.combs);
    addFlag(box, "super", record.super);
    addIf(box, "put_on", record.putOn);
    return box;
}

Json hiveOf(const book::HiveRecord& record) {
    Json hive = Json::object();
    const bool alike =
        !record.boxes.empty() && std::all_of(record.boxes.begin(), record.boxes.end(), [&](const book::BoxRecord& box) {
            return box == book::BoxRecord{record.boxes.front().format, {}, false};
        });
    if (alike) {
        hive.add("format", formatOf(record.boxes.front().format)).add("boxes", static_cast<int>(record.boxes.size()));
    } else {
        Json boxes = Json::list();
        for (const book::BoxRecord& box : record.boxes)
            boxes.push(boxOf(box));
        hive.add("boxes", std::move(boxes));
    }
    if (record.shell != book::Shell::Timber) hive.add("shell", wordOf(shellWords, record.shell));
    addFlag(hive, "top_insulation", record.topInsulation);
    addFlag(hive, "treated", record.treated);
    addFlag(hive, "nucleus", record.nucleus);
    addIf(hive, "tare_kg", record.tare);
    if (record.supersFor) hive.add("supers_for", wordOf(supersForWords, *record.supersFor));
    return hive;
}

Json beesOf(const book::BeesRecord& record) {
    Json bees = Json::object();
    addIf(bees, "count", record.count);
    addIf(bees, "covered_combs", record.coveredCombs);
    addIf(bees, "seams", record.seams);
    addIf(bees, "spread", record.logSd);
    addIf(bees, "brood_cells", record.broodCells);
    if (record.kind) bees.add("kind", wordOf(beeKindWords, *record.kind));
    addIf(bees, "queen_seen", record.queenSeen);
    addIf(bees, "eggs_seen", record.eggsSeen);
    addFlag(bees, "trouble", record.trouble);
    addIf(bees, "mites_counted", record.mitesCounted);
    addIf(bees, "mites_per_100_bees", record.mitesPer100);
    addIf(bees, "mites_treated", record.mitesTreated);
    addIf(bees, "food_beside", record.foodBeside);
    addFlag(bees, "sure", record.sure);
    return bees;
}

Json combOf(const book::CombRecord& record) {
    Json comb = Json::object();
    addIf(comb, "capped", record.capped);
    addIf(comb, "open", record.open);
    addIf(comb, "brood", record.brood);
    addIf(comb, "pollen", record.pollen);
    addIf(comb, "format", record.format);
    addIf(comb, "width_mm", record.width);
    if (record.built != 1) comb.add("built", record.built);
    if (record.facesSeen != 2) comb.add("faces_seen", record.facesSeen);
    addFlag(comb, "through_window", record.throughWindow);
    addFlag(comb, "measured", record.measured);
    addFlag(comb, "in_super", record.inSuper);
    addFlag(comb, "fed", record.fed);
    addFlag(comb, "old_nest", record.oldNest);
    return comb;
}

void addCombs(Json& object, const book::CombsRecord& record) {
    if (const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record)) {
        Json list = Json::list();
        for (const book::CombRecord& comb : *combs)
            list.push(combOf(comb));
        object.add("combs", std::move(list));
    }
    if (const auto* quick = std::get_if<book::QuickCountRecord>(&record))
        object.add("combs", Json::object()
                                .add("full_of_stores", quick->fullOfStores)
                                .add("half", quick->half)
                                .add("capped_share", quick->cappedShare));
}

Json weighingOf(const book::WeighingRecord& record) {
    Json weighing = Json::object();
    weighing.add("date", record.date.iso());
    if (const auto* scale = std::get_if<book::ScaleReading>(&record.reading))
        weighing.add("gross_kg", scale->gross.value());
    if (const auto* word = std::get_if<book::HeftWord>(&record.reading)) weighing.add("heft", wordOf(heftWords, *word));
    if (const auto* lift = std::get_if<book::LiftReading>(&record.reading)) {
        Json sides = Json::list();
        for (Mass side : lift->sides)
            sides.push(side.value());
        weighing.add("lift_kg", lift->sides.size() == 1 ? Json(lift->sides.front().value()) : std::move(sides));
    }
    addFlag(weighing, "sure", record.sure);
    return weighing;
}

Json feedOf(const book::FeedRecord& record) {
    Json feed = Json::object();
    feed.add("date", record.date.iso()).add("kind", wordOf(feedWords, record.kind));
    addIf(feed, "sugar_kg", record.sugar);
    addIf(feed, "syrup_l", record.syrup);
    addIf(feed, "ratio", record.ratio);
    addIf(feed, "fondant_kg", record.fondant);
    addFlag(feed, "sure", record.sure);
    addIf(feed, "after_look", record.afterLook);
    return feed;
}

Json seasonOf(const book::SeasonRecord& record) {
    Json season = Json::object();
    addIf(season, "last_income", record.lastIncome);
    addIf(season, "brood_stop", record.broodStop);
    addIf(season, "brood_restart", record.broodRestart);
    addIf(season, "buildup", record.buildup);
    addIf(season, "forage", record.forage);
    addIf(season, "feed_advised_by", record.feedAdvisedBy);
    addIf(season, "syrup_deadline", record.syrupDeadline);
    addIf(season, "syrup_refused", record.syrupRefused);
    return season;
}

Json wishOf(const book::WishRecord& record) {
    const book::WishRecord usual;
    Json wish = Json::object();
    addIf(wish, "short_risk", record.shortRisk);
    addIf(wish, "reserve_kg", record.reserve);
    if (record.visitEveryDays != usual.visitEveryDays) wish.add("visit_every_days", record.visitEveryDays);
    Json days = Json::list();
    for (int day : record.visitWeekdays)
        days.push(day);
    if (!days.empty()) wish.add("visit_weekdays", std::move(days));
    addIf(wish, "visits_in_winter", record.visitsInWinter);
    return wish;
}

template <class Record, class Write>
void addList(Json& object, std::string_view name, const std::vector<Record>& records, Write write) {
    if (records.empty()) return;
    Json list = Json::list();
    for (const Record& record : records)
        list.push(write(record));
    object.add(name, std::move(list));
}

Json feederOf(const book::FeederRecord& record) {
    Json feeder = Json::object();
    feeder.add("kind", wordOf(feederWords, record.kind));
    addIf(feeder, "capacity_l", record.capacity);
    return feeder;
}

Json harvestOf(const book::HarvestRecord& record) {
    Json harvest = Json::object();
    harvest.add("date", record.date.iso()).add("kg", record.honey.value());
    addFlag(harvest, "sure", record.sure);
    addIf(harvest, "after_look", record.afterLook);
    return harvest;
}

Json treatmentOf(const book::TreatmentRecord& record) {
    Json treatment = Json::object();
    treatment.add("date", record.date.iso());
    addIf(treatment, "until", record.until);
    if (!record.what.empty()) treatment.add("what", record.what);
    return treatment;
}

Json learnedOf(const book::LearnedRecord& record) {
    Json learned = Json::object();
    if (record.winters > 0)
        learned.add("winters", record.winters)
            .add("use", record.use)
            .add("use_spread", record.useLogSd)
            .add("death", record.death)
            .add("death_spread", record.deathLogSd);
    if (record.forageYears > 0)
        learned.add("forage_years", record.forageYears)
            .add("forage_shift_days", record.forageShiftDays)
            .add("forage_shift_sd_days", record.forageShiftSdDays);
    return learned;
}

Json caseOf(const book::ColonyCase& record) {
    Json whole = Json::object();
    whole.add("case", caseFileForm);
    addIf(whole, "colony", record.colony);
    addIf(whole, "yard", record.yard);
    whole.add("as_of", record.asOf.iso());
    addIf(whole, "looked_on", record.lookedOn);
    addFlag(whole, "sure", record.sure);
    if (record.units) whole.add("units", wordOf(unitWords, *record.units));
    whole.add("site", siteOf(record.site)).add("hive", hiveOf(record.hive));
    addPart(whole, "bees", beesOf(record.bees));
    addCombs(whole, record.combs);
    addList(whole, "weighings", record.weighings, weighingOf);
    addIf(whole, "moisture_percent", record.moisturePercent);
    if (record.honeyKind) whole.add("honey_kind", wordOf(honeyWords, *record.honeyKind));
    addIf(whole, "fed_or_treated", record.fedOrTreated);
    addList(whole, "feeds", record.feeds, feedOf);
    addList(whole, "harvests", record.harvests, harvestOf);
    addList(whole, "treatments", record.treatments, treatmentOf);
    addIf(whole, "full_combs", record.fullCombs);
    addPart(whole, "season", seasonOf(record.season));
    if (record.feeder) whole.add("feeder", feederOf(*record.feeder));
    addPart(whole, "wish", wishOf(record.wish));
    if (record.learned) addPart(whole, "learned", learnedOf(*record.learned));
    return whole;
}

} // namespace

std::string writeCase(const book::ColonyCase& record) { return caseOf(record).pretty(); }

std::string writeCaseLine(const book::ColonyCase& record) { return caseOf(record).compact(); }

} // namespace winterlarder::exchange
