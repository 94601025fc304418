// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"
#include "book/entries/words.h"

#include <string_view>

//! The parts that entries of a book (describe.h) and case files (describe_case.h) share, each described once: its
//! members, and which row of shared/fields.csv limits each. `V::nested`: the visitor walks a tree, where a part may
//! be an object or a list of its own; else it walks a row, which has a column for every value.
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

struct OwnFormatColumns {
    std::optional<Length> combWidth, combHeight, bottomWidth;
    std::optional<int> combsPerBox;
    std::optional<Length> pitch;
};
struct FormatColumns {
    std::optional<std::string> format;
    OwnFormatColumns own;
};
FormatColumns columnsOf(const FormatChoice& format);
FormatChoice formatOf(const FormatColumns& columns);

enum class CombsForm { None, Listed, Quick };
template <> inline constexpr std::array<std::string_view, 3> wordsOf<CombsForm>{"none", "listed", "quick"};
struct QuickCountColumns {
    std::optional<double> fullOfStores, half, cappedShare;
};
QuickCountColumns columnsOf(const QuickCountRecord& quick);
QuickCountRecord quickCountOf(const QuickCountColumns& columns);

struct CombsColumns {
    CombsForm form = CombsForm::None;
    QuickCountColumns quick;
    std::vector<CombRecord> combs;
};
CombsColumns columnsOf(const CombsRecord& combs);
CombsRecord combsOf(CombsColumns columns);

struct ReadingColumns {
    std::optional<Mass> gross;
    std::array<std::optional<Mass>, 2> lift; //!< one side, or two
    std::optional<HeftWord> heft;
};
using WeighingReading = decltype(WeighingRecord::reading);
ReadingColumns columnsOf(const WeighingReading& reading);
WeighingReading readingOf(const ReadingColumns& columns);

struct FeederColumns {
    std::optional<FeederKind> kind;
    std::optional<Volume> capacity;
};
FeederColumns columnsOf(const std::optional<FeederRecord>& feeder);
std::optional<FeederRecord> feederOf(const FeederColumns& columns);

//! Several values of one field: a column for each in a row, one list in a tree. At least so many of them are written;
//! where that is one, it may stand for the list.
struct SeriesForm {
    std::size_t least;
    std::string_view inWords;
};
template <class V, class T, std::size_t N>
void describeSeries(V& v, std::string_view field, std::array<std::optional<T>, N>& values, SeriesForm form) {
    if constexpr (V::nested) {
        v.series(field, values, form);
    } else {
        for (std::size_t at = 0; at < N; ++at) v.field(field, values[at], static_cast<int>(at) + 1);
    }
}

//! Said by the keeper of an entry that was asked about; nothing else is written, so entries of old books stay as they
//! are.
template <class V> void describeSure(V& v, bool& sure) {
    std::optional<bool> said = sure ? std::optional(true) : std::nullopt;
    v.field("records.sure", said);
    if constexpr (V::reads) sure = said.value_or(false);
}

// ---- parts that several entries share -----------------------------------------------------------------------------

template <class V> void describe(V& v, SiteRecord& site) {
    WhereColumns where = columnsOf(site.where);
    v.field("site.station", where.station);
    v.field("site.latitude", where.latitude);
    v.field("site.longitude", where.longitude);
    describeSeries(v, "site.monthly_mean_c", where.monthlyMean, {12, "12 values, January first"});
    v.field("site.daily_sd_winter_c", where.dailySdWinter);
    v.field("site.daily_sd_summer_c", where.dailySdSummer);
    v.field("site.lag1", where.lag1);
    v.field("site.season_offset_sd_c", where.seasonOffsetSd);
    v.field("site.elevation_m", site.elevationM);
    v.field("site.autumn_flow", site.autumnFlow);
    if constexpr (V::reads) site.where = whereOf(where);
}

//! Days of every year (`prefix` "yards.") or of one winter ("season.").
template <class V, class Season> void describeSeason(V& v, const std::string& prefix, Season& season) {
    v.field(prefix + "last_income", season.lastIncome);
    v.field(prefix + "brood_stop", season.broodStop);
    v.field(prefix + "brood_restart", season.broodRestart);
    v.field(prefix + "buildup", season.buildup);
    v.field(prefix + "forage", season.forage);
    v.field(prefix + "feed_advised_by", season.feedAdvisedBy);
    v.field(prefix + "syrup_deadline", season.syrupDeadline);
    v.field(prefix + "syrup_refused", season.syrupRefused);
}

template <class V> void describe(V& v, WishRecord& wish) {
    v.field("wish.short_risk", wish.shortRisk);
    v.field("wish.reserve_kg", wish.reserve);
    v.field("wish.visit_every_days", wish.visitEveryDays);
    v.field("wish.visit_weekdays", wish.visitWeekdays);
    v.field("wish.visits_in_winter", wish.visitsInWinter);
}

template <class V> void describe(V& v, OwnFormatColumns& own) {
    v.field("hive.format.comb_width_mm", own.combWidth);
    v.field("hive.format.comb_height_mm", own.combHeight);
    v.field("hive.format.bottom_width_mm", own.bottomWidth);
    v.field("hive.format.combs_per_box", own.combsPerBox);
    v.field("hive.format.pitch_mm", own.pitch);
}

//! A tree has own measures in the place of the id.
template <class V> void describeFormat(V& v, std::string_view field, FormatChoice& choice) {
    FormatColumns format = columnsOf(choice);
    if constexpr (V::nested) {
        v.textOrPart(field, format.format, format.own);
    } else {
        v.field(field, format.format);
        describe(v, format.own);
    }
    if constexpr (V::reads) choice = formatOf(format);
}

template <class V> void describe(V& v, BoxRecord& box) {
    describeFormat(v, "hive.boxes.format", box.format);
    v.field("hive.boxes.combs", box.combs);
    v.field("hive.boxes.super", box.super);
    v.field("hive.boxes.put_on", box.putOn);
}

template <class V> void describe(V& v, HiveRecord& hive) {
    v.list("boxes", hive.boxes);
    v.field("hive.shell", hive.shell);
    v.field("hive.top_insulation", hive.topInsulation);
    v.field("hive.treated", hive.treated);
    v.field("hive.nucleus", hive.nucleus);
    v.field("hive.tare_kg", hive.tare);
    v.field("hive.supers_for", hive.supersFor);
}

template <class V> void describe(V& v, BeesRecord& bees) {
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
    if constexpr (V::nested) v.field("bees.sure", bees.sure); // a row says it of the whole look
}

template <class V> void describe(V& v, CombRecord& comb) {
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

template <class V> void describe(V& v, QuickCountColumns& quick) {
    v.field("combs.full_of_stores", quick.fullOfStores);
    v.field("combs.half", quick.half);
    v.field("combs.capped_share", quick.cappedShare);
}

template <class V> void describe(V& v, CombsRecord& combs) {
    CombsColumns columns = columnsOf(combs);
    v.field("looks.combs_form", columns.form);
    describe(v, columns.quick);
    v.list("combs", columns.combs);
    if constexpr (V::reads) combs = combsOf(std::move(columns));
}

template <class V> void describe(V& v, WeighingReading& said) {
    ReadingColumns reading = columnsOf(said);
    v.field("weighings.gross_kg", reading.gross);
    describeSeries(v, "weighings.lift_kg", reading.lift, {1, "one value, or [left, right]"});
    v.field("weighings.heft", reading.heft);
    if constexpr (V::reads) said = readingOf(reading);
}

//! What was given, without its day.
template <class V> void describeAmounts(V& v, FeedRecord& feed) {
    v.field("feeds.kind", feed.kind);
    v.field("feeds.sugar_kg", feed.sugar);
    v.field("feeds.syrup_l", feed.syrup);
    v.field("feeds.ratio", feed.ratio);
    v.field("feeds.fondant_kg", feed.fondant);
}

template <class V> void describe(V& v, FeederColumns& feeder) {
    v.field("feeder.kind", feeder.kind);
    v.field("feeder.capacity_l", feeder.capacity);
}

//! A treatment of a book or of a case.
template <class V, class Treated> void describeTreatment(V& v, Treated& treatment) {
    v.field("treatments.until", treatment.until);
    v.field("treatments.what", treatment.what);
}

} // namespace winterlarder::book
