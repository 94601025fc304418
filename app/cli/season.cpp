// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/season.h"
#include "answer/doubt_words.h"
#include "answer/json_values.h"
#include "cli/commands.h"
#include "cli/named_place.h"
#include "cli/table.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"
#include "text/contexts.h"
#include "text/place_words.h"
#include "text/words.h"

#include <cmath>
#include <fmt/format.h>

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

using exchange::Json;

constexpr int usualWinter = 2026;

// What is shown: a climate, the dates of its season, the winter they are told for.
struct Shown {
    climate::ClimateCurve curve;
    climate::SeasonDates dates;
    Winter winter;
    std::string station;
    std::string place{}; //!< its full name, where one was named
    Json taken{};        //!< which place that is
    QString weather{};   //!< whose weather it has
};

Problems neitherStationNorPlace(const Session& session, const std::string& id, Problems ofPlace) {
    std::vector<std::string> known;
    for (const Station& each : session.reference.stations) known.push_back(each.id);
    if (!exchange::nearWords(id, known).empty())
        ofPlace.front().remedy = exchange::suggestion(id, known) + " " + ofPlace.front().remedy;
    ofPlace.front().detail = fmt::format("no station {} and {}", exchange::inQuotes(id), ofPlace.front().detail);
    return ofPlace;
}

// The climate of the nearest station, corrected for the height.
Outcome<Shown> ofPlace(Session& session, const std::string& name, int autumn) {
    const auto places = placesOf(session);
    if (!places) return places.problems();
    const auto place = placeNamed(*places, name);
    if (!place) return neitherStationNorPlace(session, name, place.problems());
    const auto& town = place->place;
    const auto site = climate::siteNear(session.reference, town.latitude, town.longitude, town.heightM);
    if (!site) return site.problems();
    if (*site->distanceKm > climate::farthestStationKm)
        return argumentProblem(noStationNear(places->fullName(town)), "a climate of your own");
    tellPlace(session, *places, *place);
    return Shown{site->curve,
                 climate::deriveSeason(site->curve, session.reference.constants),
                 Winter(site->curve.hemisphere(), autumn),
                 site->stationId,
                 places->fullName(town),
                 placeTaken(session, *places, *place),
                 text::weatherOf(*site, session.reference, town.heightM, session.style)};
}

Outcome<Shown> ofStation(Session& session, const std::string& id, int autumn) {
    const Station* station = session.reference.station(id);
    if (!station) return ofPlace(session, id, autumn);
    const auto site = climate::siteAtStation(*station, {});
    if (!site) return site.problems();
    return Shown{site->curve, climate::deriveSeason(site->curve, session.reference.constants),
                 Winter(site->curve.hemisphere(), autumn), id};
}

Outcome<Shown> ofCase(const Session& session, const std::string& file, const std::optional<int>& autumn) {
    const auto text = textOf(file, session.in, limits::caseText);
    if (!text) return text.problems();
    const auto read = answer::readQuestion(*text, shownName(file), session.reference, 0);
    if (!read) return read.problems();
    const advice::ColonyQuestion& question = read->question;
    if (!question.site)
        return Problem{ProblemKind::Input, {shownName(file), 0, 0}, noStationNear(), "a climate of your own"};
    const Winter winter = autumn ? Winter(question.winter.hemisphere(), *autumn) : question.winter;
    return Shown{question.site->curve, question.season, winter, question.site->stationId};
}

// Scatter of one day's mean round its normal, the whole season's offset included.
double wholeSd(const climate::ClimateCurve& curve, SeasonDay day) {
    return std::hypot(curve.dailySd(day).value(), curve.variability().seasonOffsetSd);
}

Json daysJson(const Shown& shown) {
    Json list = Json::list();
    for (SeasonDay day = firstSeasonDay; day <= lastSeasonDay; day = day + 1)
        list.push(Json::object()
                      .add("date", shown.winter.date(day).iso())
                      .add("mean_c", shown.curve.normal(day).value())
                      .add("sd_c", wholeSd(shown.curve, day))
                      .add("day_length_h", shown.curve.dayLength(day).value()));
    return list;
}

QString note(const climate::SeasonDates& dates) {
    QStringList said;
    if (dates.winterClass == climate::WinterClass::NotDerivable)
        said << say::CommandLine::tr(
            "Neither temperature nor day length ever falls far enough: no season can be derived here, give its "
            "dates yourself.");
    else if (!dates.broodless())
        said << say::CommandLine::tr("Laying never stops here, so there are no dates for its end and new start.");
    if (dates.derivable() && !dates.syrupDeadline)
        said << say::CommandLine::tr("It never gets too cold for syrup to be taken and ripened.");
    if (dates.derivable() && dates.syrupDeadline && !dates.syrupRefused)
        said << say::CommandLine::tr("It never gets too cold for syrup to be taken.");
    if (dates.atEdgeOfRules)
        said << say::CommandLine::tr("The season lies at the edge of the rules: compare its dates with your own.");
    return said.join(QLatin1Char(' '));
}

Json seasonJson(const Shown& shown, bool daily) {
    Json answer = Json::object();
    answer.add("station", shown.station.empty() ? Json() : Json(shown.station));
    if (!shown.place.empty()) answer.add("place", shown.place).add("place_taken", shown.taken);
    answer.add("winter", shown.winter.autumn());
    answer.add("winter_class", word(shown.dates.winterClass));
    addSeasonDates(answer, shown.dates, shown.winter, true);
    const QString why = note(shown.dates);
    answer.add("note", why.isEmpty() ? Json() : Json(why.toStdString()));
    if (daily) answer.add("days", daysJson(shown));
    return answer;
}

QString curveText(const Shown& shown, const text::WordStyle& style, bool daily) {
    TextTable table({say::CommandLine::tr("Day"), say::CommandLine::tr(">Mean °C"), say::CommandLine::tr(">± SD"),
                     say::CommandLine::tr(">Day length h")});
    for (SeasonDay day = firstSeasonDay; day <= lastSeasonDay; day = day + 1) {
        const Date date = shown.winter.date(day);
        if (!daily && date.day() != 1 && date.day() != 15) continue;
        table.add({text::date(date, style), text::number(shown.curve.normal(day).value(), 1, style),
                   text::number(wholeSd(shown.curve, day), 1, style),
                   text::number(shown.curve.dayLength(day).value(), 1, style)});
    }
    return table.text();
}

QString seasonText(const Shown& shown, bool daily, const Session& session) {
    QString text = session.strong(
        shown.station.empty() ? say::CommandLine::tr("Own climate: %1").arg(text::winterClass(shown.dates.winterClass))
                              : say::CommandLine::tr("%1: %2").arg(
                                    QString::fromStdString(shown.place.empty() ? shown.station : shown.place),
                                    text::winterClass(shown.dates.winterClass)));
    text += QLatin1Char('\n');
    if (!shown.weather.isEmpty())
        text += say::CommandLine::tr("  The %1", "weather of a station").arg(shown.weather) + QLatin1Char('\n');
    FactList facts;
    for (const NamedDate& named : seasonDateKeys) {
        const auto& date = shown.dates.*(named.date);
        QString name = text::seasonDate(named.key);
        name[0] = name[0].toUpper();
        if (!date) continue;
        facts.add(name,
                  say::CommandLine::tr("%1 ± %2 days (%3)")
                      .arg(text::date(shown.winter.date(date->day), session.style),
                           text::count(date->exact ? 0 : date->sdDays, session.style), text::origin(date->origin)));
    }
    text += facts.text();
    const QString why = note(shown.dates);
    if (!why.isEmpty()) text += wrapped(why, QStringLiteral("  "));
    return text + QLatin1Char('\n') + curveText(shown, session.style, daily);
}

} // namespace

Status season(Session& session, const SeasonOptions& options) {
    Problems problems;
    if (options.station.has_value() == options.caseFile.has_value())
        problems.push_back(argumentProblem("a station and --case", "exactly one of the two"));
    if (options.winter && (*options.winter < firstKnownYear || *options.winter > lastKnownYear))
        problems.push_back(argumentProblem(fmt::format("--winter is {}", *options.winter),
                                           fmt::format("a year from {} to {}", firstKnownYear, lastKnownYear)));
    if (!problems.empty()) return session.fail(problems);
    const auto shown = options.station ? ofStation(session, *options.station, options.winter.value_or(usualWinter))
                                       : ofCase(session, *options.caseFile, options.winter);
    if (!shown) return session.fail(shown.problems());
    if (session.json) session.print(seasonJson(*shown, options.daily));
    else session.print(seasonText(*shown, options.daily, session));
    return Status::Done;
}

} // namespace winterlarder::cli
