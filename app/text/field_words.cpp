// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/field_words.h"

#include "text/contexts.h"

#include <QStringList>

#include <algorithm>
#include <iterator>

namespace winterlarder::text {

namespace {

enum class Form { Plain, Share, Mass, Volume, Flag, Day };

struct FieldWords {
    const char* column;
    const char* words;
    Form form = Form::Plain;
};

constexpr FieldWords fields[] = {
    {"name", QT_TRANSLATE_NOOP("Fields", "name")},
    {"yard", QT_TRANSLATE_NOOP("Fields", "yard")},
    {"colony", QT_TRANSLATE_NOOP("Fields", "colony")},
    {"date", QT_TRANSLATE_NOOP("Fields", "day"), Form::Day},
    {"note", QT_TRANSLATE_NOOP("Fields", "note")},
    {"by", QT_TRANSLATE_NOOP("Fields", "written by")},
    {"site_station", QT_TRANSLATE_NOOP("Fields", "climate station")},
    {"site_latitude", QT_TRANSLATE_NOOP("Fields", "latitude")},
    {"site_longitude", QT_TRANSLATE_NOOP("Fields", "longitude")},
    {"site_monthly_mean_c", QT_TRANSLATE_NOOP("Fields", "mean temperature of a month")},
    {"site_daily_sd_winter_c", QT_TRANSLATE_NOOP("Fields", "scatter of winter days")},
    {"site_daily_sd_summer_c", QT_TRANSLATE_NOOP("Fields", "scatter of summer days")},
    {"site_lag1", QT_TRANSLATE_NOOP("Fields", "likeness of one day to the next")},
    {"site_season_offset_sd_c", QT_TRANSLATE_NOOP("Fields", "scatter of whole winters")},
    {"site_elevation_m", QT_TRANSLATE_NOOP("Fields", "height above the sea")},
    {"site_autumn_flow", QT_TRANSLATE_NOOP("Fields", "autumn flow still to come")},
    {"last_income", QT_TRANSLATE_NOOP("Fields", "last nectar coming in")},
    {"brood_stop", QT_TRANSLATE_NOOP("Fields", "laying stops")},
    {"brood_restart", QT_TRANSLATE_NOOP("Fields", "laying restarts")},
    {"buildup", QT_TRANSLATE_NOOP("Fields", "build-up")},
    {"forage", QT_TRANSLATE_NOOP("Fields", "spring forage starts")},
    {"feed_advised_by", QT_TRANSLATE_NOOP("Fields", "advised end of feeding")},
    {"syrup_deadline", QT_TRANSLATE_NOOP("Fields", "last day for syrup")},
    {"syrup_refused", QT_TRANSLATE_NOOP("Fields", "syrup no longer taken")},
    {"wish_short_risk", QT_TRANSLATE_NOOP("Fields", "accepted risk"), Form::Share},
    {"wish_reserve_kg", QT_TRANSLATE_NOOP("Fields", "reserve"), Form::Mass},
    {"wish_visit_every_days", QT_TRANSLATE_NOOP("Fields", "days between visits")},
    {"wish_visit_weekdays", QT_TRANSLATE_NOOP("Fields", "weekdays for visits")},
    {"wish_visits_in_winter", QT_TRANSLATE_NOOP("Fields", "can be reached in winter"), Form::Flag},
    {"forage_notes", QT_TRANSLATE_NOOP("Fields", "what flowers here")},
    {"currency", QT_TRANSLATE_NOOP("Fields", "currency")},
    {"sugar_price_per_kg", QT_TRANSLATE_NOOP("Fields", "price of a kilogram of sugar")},
    {"bag_kg", QT_TRANSLATE_NOOP("Fields", "a bag of sugar"), Form::Mass},
    {"full_combs", QT_TRANSLATE_NOOP("Fields", "full %{combs} in store")},
    {"units", QT_TRANSLATE_NOOP("Fields", "units")},
    {"hive_shell", QT_TRANSLATE_NOOP("Fields", "walls of the hive")},
    {"hive_top_insulation", QT_TRANSLATE_NOOP("Fields", "insulation on top"), Form::Flag},
    {"hive_treated", QT_TRANSLATE_NOOP("Fields", "medicine was in the hive"), Form::Flag},
    {"hive_nucleus", QT_TRANSLATE_NOOP("Fields", "kept small on purpose"), Form::Flag},
    {"hive_tare_kg", QT_TRANSLATE_NOOP("Fields", "empty weight"), Form::Mass},
    {"hive_supers_for", QT_TRANSLATE_NOOP("Fields", "the supers are for")},
    {"feeder_kind", QT_TRANSLATE_NOOP("Fields", "feeder")},
    {"feeder_capacity_l", QT_TRANSLATE_NOOP("Fields", "what the feeder holds"), Form::Volume},
    {"bees_kind", QT_TRANSLATE_NOOP("Fields", "kind of bees")},
    {"queen_year", QT_TRANSLATE_NOOP("Fields", "year of the queen")},
    {"queen_colour", QT_TRANSLATE_NOOP("Fields", "colour of the queen's mark")},
    {"origin", QT_TRANSLATE_NOOP("Fields", "where it came from")},
    {"since", QT_TRANSLATE_NOOP("Fields", "here since"), Form::Day},
    {"fate", QT_TRANSLATE_NOOP("Fields", "what became of it")},
    {"into", QT_TRANSLATE_NOOP("Fields", "united into")},
    {"cause", QT_TRANSLATE_NOOP("Fields", "cause")},
    {"bees_count", QT_TRANSLATE_NOOP("Fields", "number of bees")},
    {"bees_covered_combs", QT_TRANSLATE_NOOP("Fields", "%{combs} covered with bees")},
    {"bees_seams", QT_TRANSLATE_NOOP("Fields", "seams of bees")},
    {"bees_spread", QT_TRANSLATE_NOOP("Fields", "how unsure the count is")},
    {"bees_brood_cells", QT_TRANSLATE_NOOP("Fields", "brood cells")},
    {"bees_queen_seen", QT_TRANSLATE_NOOP("Fields", "queen seen"), Form::Flag},
    {"bees_eggs_seen", QT_TRANSLATE_NOOP("Fields", "eggs seen"), Form::Flag},
    {"bees_trouble", QT_TRANSLATE_NOOP("Fields", "signs of disease"), Form::Flag},
    {"bees_mites_counted", QT_TRANSLATE_NOOP("Fields", "mites counted"), Form::Flag},
    {"bees_mites_per_100_bees", QT_TRANSLATE_NOOP("Fields", "mites on 100 bees")},
    {"bees_mites_treated", QT_TRANSLATE_NOOP("Fields", "mites treated"), Form::Flag},
    {"bees_food_beside", QT_TRANSLATE_NOOP("Fields", "food beside the bees"), Form::Flag},
    {"honey_kind", QT_TRANSLATE_NOOP("Fields", "kind of honey")},
    {"fed_or_treated", QT_TRANSLATE_NOOP("Fields", "fed or treated while this honey was made"), Form::Flag},
    {"combs_form", QT_TRANSLATE_NOOP("Fields", "how the %{combs} were looked at")},
    {"combs_full_of_stores", QT_TRANSLATE_NOOP("Fields", "%{combs} full of stores")},
    {"combs_half", QT_TRANSLATE_NOOP("Fields", "%{combs} half full")},
    {"combs_capped_share", QT_TRANSLATE_NOOP("Fields", "share of it capped"), Form::Share},
    {"sealed_brood", QT_TRANSLATE_NOOP("Fields", "sealed brood seen"), Form::Flag},
    {"pollen_coming_in", QT_TRANSLATE_NOOP("Fields", "pollen coming in"), Form::Flag},
    {"temper", QT_TRANSLATE_NOOP("Fields", "temper")},
    {"moisture_percent", QT_TRANSLATE_NOOP("Fields", "water in the honey, per cent")},
    {"trouble_signs", QT_TRANSLATE_NOOP("Fields", "signs of trouble")},
    {"gross_kg", QT_TRANSLATE_NOOP("Fields", "weight"), Form::Mass},
    {"lift_kg_1", QT_TRANSLATE_NOOP("Fields", "weight of one side"), Form::Mass},
    {"lift_kg_2", QT_TRANSLATE_NOOP("Fields", "weight of the other side"), Form::Mass},
    {"heft", QT_TRANSLATE_NOOP("Fields", "heft")},
    {"sure", QT_TRANSLATE_NOOP("Fields", "said to be right, however unlikely"), Form::Flag},
    {"kind", QT_TRANSLATE_NOOP("Fields", "kind")},
    {"sugar_kg", QT_TRANSLATE_NOOP("Fields", "sugar"), Form::Mass},
    {"syrup_l", QT_TRANSLATE_NOOP("Fields", "syrup"), Form::Volume},
    {"ratio", QT_TRANSLATE_NOOP("Fields", "sugar to water")},
    {"fondant_kg", QT_TRANSLATE_NOOP("Fields", "fondant"), Form::Mass},
    {"after_look", QT_TRANSLATE_NOOP("Fields", "after the look of that day"), Form::Flag},
    {"kg", QT_TRANSLATE_NOOP("Fields", "honey"), Form::Mass},
    {"combs", QT_TRANSLATE_NOOP("Fields", "%{combs}")},
    {"until", QT_TRANSLATE_NOOP("Fields", "until"), Form::Day},
    {"what", QT_TRANSLATE_NOOP("Fields", "what")},
    {"count", QT_TRANSLATE_NOOP("Fields", "how many")},
    {"to_colony", QT_TRANSLATE_NOOP("Fields", "to the colony")},
    {"verdict", QT_TRANSLATE_NOOP("Fields", "advice")},
    {"inputs", QT_TRANSLATE_NOOP("Fields", "what it was computed from")},
    {"answer", QT_TRANSLATE_NOOP("Fields", "the whole answer")},
    {"run_seed", QT_TRANSLATE_NOOP("Fields", "seed")},
    {"learn", QT_TRANSLATE_NOOP("Fields", "past winters are learned from"), Form::Flag},
    {"learn_since", QT_TRANSLATE_NOOP("Fields", "learned from since"), Form::Day},
    {"wet", QT_TRANSLATE_NOOP("Fields", "wet hive"), Form::Flag},
    {"weight_change_kg", QT_TRANSLATE_NOOP("Fields", "change of weight"), Form::Mass},
    {"saw", QT_TRANSLATE_NOOP("Fields", "seen")},
    {"stores", QT_TRANSLATE_NOOP("Fields", "stores in sight"), Form::Flag},
    {"cluster_from", QT_TRANSLATE_NOOP("Fields", "first %{comb} of the cluster")},
    {"mean_c", QT_TRANSLATE_NOOP("Fields", "mean temperature")},
    {"run_winters", QT_TRANSLATE_NOOP("Fields", "simulated winters")},
    {"program_version", QT_TRANSLATE_NOOP("Fields", "version of the program")},
    {"feeds_sugar_kg", QT_TRANSLATE_NOOP("Fields", "sugar"), Form::Mass},
    {"feeds_syrup_l", QT_TRANSLATE_NOOP("Fields", "syrup"), Form::Volume},
    {"feeds_fondant_kg", QT_TRANSLATE_NOOP("Fields", "fondant"), Form::Mass},
    {"state", QT_TRANSLATE_NOOP("Fields", "state")},
    {"done_on", QT_TRANSLATE_NOOP("Fields", "done on"), Form::Day},
    {"advice", QT_TRANSLATE_NOOP("Fields", "from the advice")},
    {"alive", QT_TRANSLATE_NOOP("Fields", "alive in spring"), Form::Flag},
    {"stores_left_kg", QT_TRANSLATE_NOOP("Fields", "stores left"), Form::Mass},
    {"food_left", QT_TRANSLATE_NOOP("Fields", "food within reach of the dead bees"), Form::Flag},
    {"heads_in_cells", QT_TRANSLATE_NOOP("Fields", "bees head down in the cells"), Form::Flag},
    {"mites_on_floor", QT_TRANSLATE_NOOP("Fields", "many mites on the floor"), Form::Flag},
    {"brood_pattern", QT_TRANSLATE_NOOP("Fields", "brood in the dead hive")},
    {"queen", QT_TRANSLATE_NOOP("Fields", "queen found"), Form::Flag},
    {"capped", QT_TRANSLATE_NOOP("Fields", "capped"), Form::Share},
    {"open", QT_TRANSLATE_NOOP("Fields", "open nectar"), Form::Share},
    {"brood", QT_TRANSLATE_NOOP("Fields", "brood"), Form::Share},
    {"pollen", QT_TRANSLATE_NOOP("Fields", "bee bread"), Form::Share},
    {"format", QT_TRANSLATE_NOOP("Fields", "hive format")},
    {"width_mm", QT_TRANSLATE_NOOP("Fields", "bar width, mm")},
    {"built", QT_TRANSLATE_NOOP("Fields", "built"), Form::Share},
    {"faces_seen", QT_TRANSLATE_NOOP("Fields", "faces seen")},
    {"through_window", QT_TRANSLATE_NOOP("Fields", "seen through a window"), Form::Flag},
    {"measured", QT_TRANSLATE_NOOP("Fields", "measured on a photograph"), Form::Flag},
    {"in_super", QT_TRANSLATE_NOOP("Fields", "in a super"), Form::Flag},
    {"fed", QT_TRANSLATE_NOOP("Fields", "took syrup"), Form::Flag},
    {"old_nest", QT_TRANSLATE_NOOP("Fields", "old nest"), Form::Flag},
    {"file", QT_TRANSLATE_NOOP("Fields", "photograph")},
    {"format_comb_width_mm", QT_TRANSLATE_NOOP("Fields", "comb width, mm")},
    {"format_comb_height_mm", QT_TRANSLATE_NOOP("Fields", "comb height, mm")},
    {"format_bottom_width_mm", QT_TRANSLATE_NOOP("Fields", "comb width at the bottom, mm")},
    {"format_combs_per_box", QT_TRANSLATE_NOOP("Fields", "%{combs} in a box")},
    {"format_pitch_mm", QT_TRANSLATE_NOOP("Fields", "bar width, mm")},
    {"super", QT_TRANSLATE_NOOP("Fields", "a super"), Form::Flag},
    {"put_on", QT_TRANSLATE_NOOP("Fields", "put on"), Form::Day},
};

const FieldWords* plainField(const QString& column) {
    // The twelve months share their words.
    const QString name =
        column.startsWith(QLatin1String("site_monthly_mean_c")) ? QStringLiteral("site_monthly_mean_c") : column;
    const auto same = [&](const FieldWords& field) { return name == QLatin1String(field.column); };
    const auto* found = std::find_if(std::begin(fields), std::end(fields), same);
    return found != std::end(fields) ? found : nullptr;
}

// "combs.3.capped" is three parts: list, place, column; "combs.size" two.
QStringList parts(const std::string& column) { return QString::fromStdString(column).split(QLatin1Char('.')); }

QString asText(const std::string& text) {
    QString plain = QString::fromStdString(text);
    if (plain.size() >= 2 && plain.startsWith(QLatin1Char('"')) && plain.endsWith(QLatin1Char('"')))
        plain = plain.mid(1, plain.size() - 2);
    return plain.replace(QLatin1String("\\n"), QLatin1String(" "))
        .replace(QLatin1String("\\\""), QLatin1String("\""))
        .replace(QLatin1String("\\\\"), QLatin1String("\\"));
}

} // namespace

bool hasFieldName(const std::string& column) {
    const auto all = parts(column);
    return all.size() == 2 ? all[1] == QLatin1String("size") : plainField(all.last()) != nullptr;
}

QString fieldName(const std::string& column, const WordStyle& style) {
    const auto all = parts(column);
    if (all.size() == 2 && all[1] == QLatin1String("size"))
        return all[0] == QLatin1String("boxes")   ? say::Fields::tr("number of boxes")
               : all[0] == QLatin1String("combs") ? worded(say::Fields::tr("number of %{combs}"), style)
               : all[0] == QLatin1String("days")  ? say::Fields::tr("number of days")
                                                  : say::Fields::tr("number of photographs");
    const auto* field = plainField(all.last());
    const QString name = field ? worded(say::Fields::tr(field->words), style) : QString::fromStdString(column);
    if (all.size() < 3) return name;
    const QString place = QString::number(all[1].toInt() + 1);
    if (all[0] == QLatin1String("combs")) return worded(say::Fields::tr("%{comb} %1: %2"), style).arg(place, name);
    if (all[0] == QLatin1String("boxes")) return say::Fields::tr("box %1: %2").arg(place, name);
    if (all[0] == QLatin1String("days")) return say::Fields::tr("day %1: %2").arg(place, name);
    return say::Fields::tr("%2 %1").arg(place, name);
}

QString fieldValue(const std::string& column, const std::string& text, const WordStyle& style) {
    const auto* field = plainField(parts(column).last());
    const QString plain = asText(text);
    if (!field) return plain;
    const double value = plain.toDouble();
    switch (field->form) {
    case Form::Share: return say::Fields::tr("%1 %").arg(count(100 * value, style));
    case Form::Mass: return mass(Mass(value), style);
    case Form::Volume: return QString::fromStdString(format(Volume(value), style.numbers, 1));
    case Form::Flag: return value != 0 ? say::Fields::tr("yes") : say::Fields::tr("no");
    case Form::Day:
        if (const auto day = Date::parse(plain.toStdString())) return date(*day, style);
        return plain;
    case Form::Plain: return plain;
    }
    return plain;
}

} // namespace winterlarder::text
