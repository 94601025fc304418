// SPDX-License-Identifier: GPL-3.0-or-later
// The commands that show what the program ships: stations, hive formats, sources.
#include "answer/json_values.h"
#include "cli/commands.h"
#include "cli/named_place.h"
#include "cli/table.h"
#include "climate/site.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"
#include "hive/hive.h"
#include "support/as_number.h"
#include "text/contexts.h"

#include <QRegularExpression>
#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

using exchange::Json;

QString of(const std::string& text) { return QString::fromStdString(text); }
QString of(std::string_view text) { return of(std::string(text)); }

// ---- stations -------------------------------------------------------------------------------------------------------

struct Coordinates {
    double latitude, longitude;
};

std::optional<double> degrees(std::string_view text, double most) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    const auto value = asNumber<double>(text);
    return value && *value >= -most && *value <= most ? value : std::nullopt;
}

// The place of that name, told.
Outcome<Coordinates> coordinatesOfPlace(Session& session, const std::string& text) {
    const auto places = placesOf(session);
    if (!places) return places.problems();
    const auto place = placeNamed(*places, text);
    if (!place) {
        Problems problems = place.problems();
        for (Problem& problem : problems) problem.remedy += ", as --near LAT,LON";
        return problems;
    }
    tellPlace(session, *places, *place);
    return Coordinates{place->place.latitude, place->place.longitude};
}

bool hasLetters(const std::string& text) { return of(text).contains(QRegularExpression(QStringLiteral("\\p{L}"))); }

Outcome<Coordinates> coordinatesOf(Session& session, const std::string& text) {
    const auto comma = text.find(',');
    if (comma != std::string::npos) {
        const auto latitude = degrees(std::string_view(text).substr(0, comma), 90);
        const auto longitude = degrees(std::string_view(text).substr(comma + 1), 180);
        if (latitude && longitude) return Coordinates{*latitude, *longitude};
    }
    if (hasLetters(text)) return coordinatesOfPlace(session, text);
    return argumentProblem(fmt::format("--near is {}", text),
                           "LAT,LON in degrees, north and east positive, such as 44.9,-64.2, or the name of a place");
}

bool holds(const std::string& text, const QString& wanted) { return of(text).contains(wanted, Qt::CaseInsensitive); }

bool matches(const Station& station, const std::optional<std::string>& find) {
    if (!find) return true;
    const QString wanted = of(*find);
    return holds(station.id, wanted) || holds(station.place, wanted) || holds(station.country, wanted);
}

struct ListedStation {
    const Station* station;
    std::optional<double> distanceKm;
};

Json stationJson(const ListedStation& listed) {
    const Station& station = *listed.station;
    Json object = Json::object();
    object.add("id", station.id)
        .add("place", station.place)
        .add("country", station.country)
        .add("latitude", station.latitude)
        .add("longitude", station.longitude)
        .add("elevation_m", station.elevationM);
    if (listed.distanceKm) object.add("distance_km", *listed.distanceKm);
    return std::move(object.add("mark", name(station.mark)));
}

QString stationsText(const std::vector<ListedStation>& stations, const text::WordStyle& style) {
    TextTable table({say::CommandLine::tr("Station"), say::CommandLine::tr("Place"), say::CommandLine::tr("Country"),
                     say::CommandLine::tr(">Latitude"), say::CommandLine::tr(">Longitude"),
                     say::CommandLine::tr(">Height"), say::CommandLine::tr(">Distance"), say::CommandLine::tr("Mark")});
    for (const ListedStation& listed : stations) {
        const Station& s = *listed.station;
        table.add({of(s.id), of(s.place), of(s.country), text::number(s.latitude, 2, style),
                   text::number(s.longitude, 2, style),
                   say::CommandLine::tr("%1 m").arg(text::number(s.elevationM, 0, style)),
                   listed.distanceKm ? say::CommandLine::tr("%1 km").arg(text::number(*listed.distanceKm, 0, style))
                                     : QString(),
                   of(name(s.mark))});
    }
    return table.text();
}

// ---- hive formats ---------------------------------------------------------------------------------------------------

Json formatJson(const HiveFormat& shipped) {
    const hive::CombFormat format = hive::combFormat(shipped);
    return Json::object()
        .add("id", shipped.id)
        .add("name", shipped.name)
        .add("comb_area_dm2", hive::faceArea(format.outline).value())
        .add("combs_per_box", shipped.combsPerBox)
        .add("pitch_mm", shipped.pitch.value())
        .add("full_comb_kg", json(hive::fullComb(format, hive::phiComb)))
        .add("bees_per_comb", 2 * shipped.beesPerSide.count);
}

QString formatsText(const std::vector<HiveFormat>& formats, const text::WordStyle& style) {
    TextTable table({say::CommandLine::tr("Format"), say::CommandLine::tr("Name"), say::CommandLine::tr(">Comb face"),
                     say::CommandLine::tr(">Combs"), say::CommandLine::tr(">Pitch"), say::CommandLine::tr(">Full comb"),
                     say::CommandLine::tr(">Bees a comb")});
    for (const HiveFormat& shipped : formats) {
        const hive::CombFormat format = hive::combFormat(shipped);
        table.add({of(shipped.id), of(shipped.name),
                   of(winterlarder::format(hive::faceArea(format.outline), style.numbers, 2)),
                   QString::number(shipped.combsPerBox), of(winterlarder::format(shipped.pitch, style.numbers, 1)),
                   text::mass(hive::fullComb(format, hive::phiComb), style),
                   text::count(2 * shipped.beesPerSide.count, style)});
    }
    return table.text();
}

// ---- sources --------------------------------------------------------------------------------------------------------

Json sourceJson(const Source& source) {
    Json used = Json::list();
    for (const std::string& file : source.usedBy) used.push(file);
    return Json::object()
        .add("id", source.id)
        .add("citation", source.citation)
        .add("year", source.year)
        .add("mark", name(source.mark))
        .add("used_by", std::move(used));
}

QString sourceText(const Source& source, const Session& session) {
    QString files;
    for (const std::string& file : source.usedBy)
        files += (files.isEmpty() ? QString() : QStringLiteral(", ")) + of(file);
    QString text = session.strong(of(source.id)) + QStringLiteral(" (%1)\n").arg(of(name(source.mark)));
    text += wrapped(of(source.citation), QStringLiteral("  "));
    return files.isEmpty() ? text : text + wrapped(say::CommandLine::tr("used by %1").arg(files), QStringLiteral("  "));
}

} // namespace

Status stations(Session& session, const StationsOptions& options) {
    std::vector<ListedStation> listed;
    if (options.near) {
        const auto place = coordinatesOf(session, *options.near);
        if (!place) return session.fail(place.problems());
        for (const auto& near :
             climate::stationsByDistance(session.reference.stations, place->latitude, place->longitude))
            if (matches(*near.station, options.find)) listed.push_back({near.station, near.distanceKm});
    } else {
        for (const Station& station : session.reference.stations)
            if (matches(station, options.find)) listed.push_back({&station, std::nullopt});
    }
    if (!session.json) {
        session.print(stationsText(listed, session.style));
        return Status::Done;
    }
    Json list = Json::list();
    for (const ListedStation& station : listed) list.push(stationJson(station));
    session.print(list);
    return Status::Done;
}

Status hiveFormats(Session& session) {
    if (!session.json) {
        session.print(formatsText(session.reference.formats, session.style));
        return Status::Done;
    }
    Json list = Json::list();
    for (const HiveFormat& format : session.reference.formats) list.push(formatJson(format));
    session.print(list);
    return Status::Done;
}

Status sources(Session& session, const std::optional<std::string>& id) {
    std::vector<const Source*> listed;
    for (const Source& source : session.reference.sources)
        if (!id || source.id == *id) listed.push_back(&source);
    if (listed.empty()) {
        std::vector<std::string> known;
        for (const Source& source : session.reference.sources) known.push_back(source.id);
        const bool near = !exchange::nearWords(*id, known).empty();
        return session.fail(
            {argumentProblem(fmt::format("no source {}", exchange::inQuotes(*id)),
                             near ? exchange::suggestion(*id, known) : "an id that \"sources\" lists")});
    }
    Json list = Json::list();
    for (const Source* source : listed) {
        if (session.json) list.push(sourceJson(*source));
        else session.print(sourceText(*source, session));
    }
    if (session.json) session.print(list);
    return Status::Done;
}

} // namespace winterlarder::cli
