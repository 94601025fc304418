// SPDX-License-Identifier: GPL-3.0-or-later
// Commands that write one entry into a book: yards, colonies and their records.
#include "cli/book_commands.h"
#include "cli/choice_option.h"
#include "cli/measured_days.h"
#include "cli/named_place.h"
#include "cli/record_of_colony.h"

#include "book/case_of.h"
#include "book/entries/words.h"
#include "exchange/case/combs_file.h"
#include "exchange/case/hive_room.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"

#include <fmt/format.h>

namespace winterlarder::cli {
namespace {

//! A town's coordinates and height; a height given beside it is the yard's own.
Outcome<book::SiteRecord> siteOfPlace(Session& session, const NewBook& options, std::optional<exchange::Json>& taken) {
    const auto places = placesOf(session);
    if (!places) return places.problems();
    auto place = placeNamed(*places, *options.place);
    if (!place) return place.problems();
    place->place.heightM = options.elevation.value_or(place->place.heightM);
    tellPlace(session, *places, *place);
    book::SiteRecord site;
    site.where = book::Coordinates{place->place.latitude, place->place.longitude};
    site.elevationM = place->place.heightM;
    taken = placeTaken(session, *places, *place);
    return site;
}

Outcome<book::SiteRecord> siteOf(Session& session, const NewBook& options, std::optional<exchange::Json>& taken) {
    book::SiteRecord site;
    site.elevationM = options.elevation;
    const bool coordinates = options.latitude || options.longitude;
    if (int{options.station.has_value()} + int{options.place.has_value()} + int{coordinates} > 1)
        return argumentProblem("where the yard is was said twice",
                               "one of --station ID, --place NAME, or --latitude D and --longitude D");
    if (options.place) return siteOfPlace(session, options, taken);
    if (options.station) {
        if (!session.reference.station(*options.station))
            return argumentProblem(fmt::format("there is no station {}", exchange::inQuotes(*options.station)),
                                   exchange::suggestion(*options.station, idsOf(session.reference.stations)) +
                                       " A town is named with --place");
        site.where = *options.station;
        return site;
    }
    if (!options.latitude || !options.longitude)
        return argumentProblem("where the yard is was not said",
                               "--place NAME, --station ID, or --latitude D and --longitude D");
    site.where = book::Coordinates{*options.latitude, *options.longitude};
    return site;
}

// A yard as its options say it, with what was taken for its place where that was named.
struct SaidYard {
    book::Yard yard;
    std::optional<exchange::Json> taken;
};

Outcome<SaidYard> yardOf(Session& session, const NewBook& options) {
    SaidYard said;
    auto site = siteOf(session, options, said.taken);
    if (!site) return site.problems();
    Problems problems;
    book::Yard& yard = said.yard;
    yard.name = options.yard;
    yard.site = std::move(site).value();
    yard.site.autumnFlow = choiceOption<book::FlowStrength>("--autumn-flow", options.autumnFlow, problems);
    yard.wish.visitsInWinter = options.visitsInWinter;
    yard.fullCombs = options.fullCombs;
    yard.units = choiceOption<book::UnitSystem>("--units", options.units, problems);
    if (!problems.empty()) return problems;
    return said;
}

Status addAndPrintYard(Session& session, book::Book& to, const BookFile& options, SaidYard said) {
    const auto applied = to.apply(book::SingleEdit(book::Add<book::Yard>{std::move(said.yard)}), session.moment.now,
                                  writerOf(session, options));
    return printId(session, applied, book::Kind::Yard, std::move(said.taken));
}

Outcome<book::CombsRecord> combsOfLook(Session& session, book::Book& from, const About& about, const NewLook& options) {
    if (!options.combs) return book::CombsRecord{};
    const auto text = textOf(*options.combs, session.in, limits::caseText);
    if (!text) return text.problems();
    const auto hive = hiveOnDay(from, about);
    if (!hive) return hive.problems();
    return exchange::readCombsFile(*text, shownName(*options.combs), *hive, session.reference);
}

Problems coveredFault(book::Book& from, const About& about, const NewLook& options, const book::CombsRecord& record) {
    const auto hive = hiveOnDay(from, about);
    if (!hive) return hive.problems();
    const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record);
    const double most = exchange::combsThere(record, *hive, from.reference());
    if (!options.coveredCombs || *options.coveredCombs <= most) return {};
    return {argumentProblem(
        combs && static_cast<double>(combs->size()) == most
            ? fmt::format("--covered-combs is {}, but {} combs are listed", *options.coveredCombs, most)
            : fmt::format("--covered-combs is {}, but the hive has {} places", *options.coveredCombs, most),
        "combs fully covered on both sides: not more than there are")};
}

Outcome<decltype(book::WeighingRecord::reading)> readingOf(const NewWeighing& options) {
    const int given = int(options.gross.has_value()) + int(!options.lift.empty()) + int(options.heft.has_value());
    if (given != 1)
        return argumentProblem("a weighing is said in one way",
                               "one of --gross KG, --lift KG [KG], --heft light|fair|heavy");
    if (options.gross) return decltype(book::WeighingRecord::reading)(book::ScaleReading{kilograms(*options.gross)});
    if (options.heft) {
        Problems problems;
        if (const auto word = choiceOption<book::HeftWord>("--heft", options.heft, problems))
            return decltype(book::WeighingRecord::reading)(*word);
        return problems;
    }
    book::LiftReading lift;
    for (const double side : options.lift) lift.sides.push_back(kilograms(side));
    return decltype(book::WeighingRecord::reading)(std::move(lift));
}

Outcome<book::FeedKind> kindOfFeed(const NewFeed& options) {
    const int given =
        int(options.sugar.has_value()) + int(options.syrup.has_value()) + int(options.fondant.has_value());
    if (given != 1) return argumentProblem("a feed is said in one way", "one of --sugar KG, --syrup L, --fondant KG");
    Problems problems;
    const auto kind = choiceOption<book::FeedKind>("--kind", options.kind, problems);
    if (!problems.empty()) return problems;
    if (options.fondant && kind.value_or(book::FeedKind::Fondant) != book::FeedKind::Fondant)
        return argumentProblem("--fondant is given for another kind of feed", "--kind fondant");
    if (options.syrup && kind.value_or(book::FeedKind::Syrup) != book::FeedKind::Syrup)
        return argumentProblem("--syrup is given for another kind of feed", "--kind syrup");
    if (options.ratio && !exchange::isRatio(*options.ratio))
        return argumentProblem(fmt::format("--ratio is {}", exchange::inQuotes(*options.ratio)),
                               "A:B, sugar to water by mass, such as 3:2");
    if (options.syrup && !options.ratio)
        return argumentProblem("--syrup is given without its ratio", "--ratio A:B, sugar to water by mass");
    if (kind == book::FeedKind::Fondant && !options.fondant)
        return argumentProblem("fondant without its amount", "--fondant KG");
    return kind.value_or(options.fondant ? book::FeedKind::Fondant : book::FeedKind::Syrup);
}

} // namespace

Status newBook(Session& session, const NewBook& options) {
    auto yard = yardOf(session, options);
    if (!yard) return session.fail(yard.problems());
    auto made = book::Book::create(options.file, session.reference, openingOf(session, options, For::Writing));
    if (!made) return session.fail(made.problems());
    const Status status = addAndPrintYard(session, *made, options, std::move(yard).value());
    if (status != Status::Done) std::filesystem::remove(options.file);
    return status;
}

Status addYard(Session& session, const NewYard& options) {
    auto yard = yardOf(session, options);
    if (!yard) return session.fail(yard.problems());
    auto opened = openBook(session, options, For::Writing);
    if (!opened) return session.fail(opened.problems());
    return addAndPrintYard(session, *opened, options, std::move(yard).value());
}

Status addLook(Session& session, const NewLook& options) {
    Problems problems;
    const auto honeyKind = choiceOption<book::HoneyKind>("--honey-kind", options.honeyKind, problems);
    if (!problems.empty()) return session.fail(problems);
    return withColony(session, options, [&](book::Book& to, const About& about) {
        auto combs = combsOfLook(session, to, about, options);
        if (!combs) return session.fail(combs.problems());
        if (const auto fault = coveredFault(to, about, options, *combs); !fault.empty()) return session.fail(fault);
        book::Look look{.colony = about.colony, .date = about.date};
        look.combs = std::move(combs).value();
        look.bees.coveredCombs = options.coveredCombs;
        look.bees.seams = options.seams;
        look.bees.count = options.count;
        look.bees.broodCells = options.broodCells;
        look.bees.trouble = options.trouble;
        look.bees.queenSeen = options.queenSeen;
        look.bees.eggsSeen = options.eggsSeen;
        look.bees.mitesCounted = options.mitesCounted;
        look.bees.mitesPer100 = options.mites;
        look.bees.mitesTreated = options.mitesTreated;
        look.bees.foodBeside = options.foodBeside;
        look.moisturePercent = options.moisture;
        look.honeyKind = honeyKind;
        look.fedOrTreated = options.fedOrTreated;
        look.note = options.note;
        look.sure = options.sure;
        return judgeAndAdd(session, to, options, std::move(look));
    });
}

Status addWeighing(Session& session, const NewWeighing& options) {
    const auto reading = readingOf(options);
    if (!reading) return session.fail(reading.problems());
    return withColony(session, options, [&](book::Book& to, const About& about) {
        return judgeAndAdd(session, to, options,
                           book::Weighing{.colony = about.colony,
                                          .weighing = {about.date, *reading, options.sure},
                                          .wet = options.wet,
                                          .note = options.note});
    });
}

Status addFeed(Session& session, const NewFeed& options) {
    const auto kind = kindOfFeed(options);
    if (!kind) return session.fail(kind.problems());
    return withColony(session, options, [&](book::Book& to, const About& about) {
        book::FeedRecord feed{.date = about.date,
                              .kind = *kind,
                              .ratio = options.ratio,
                              .sure = options.sure,
                              .afterLook = options.afterLook};
        if (options.sugar) feed.sugar = kilograms(*options.sugar);
        if (options.syrup) feed.syrup = Volume(*options.syrup);
        if (options.fondant) feed.fondant = kilograms(*options.fondant);
        return judgeAndAdd(session, to, options,
                           book::Feed{.colony = about.colony, .feed = std::move(feed), .note = options.note});
    });
}

Status addHarvest(Session& session, const NewHarvest& options) {
    return withColony(session, options, [&](book::Book& to, const About& about) {
        book::Harvest harvest{.colony = about.colony,
                              .harvest = {about.date, kilograms(options.kg), options.sure, options.afterLook},
                              .note = options.note};
        harvest.combs = options.combs;
        harvest.moisturePercent = options.moisture;
        return judgeAndAdd(session, to, options, std::move(harvest));
    });
}

Status addTreatment(Session& session, const NewTreatment& options) {
    Problems problems;
    std::optional<Date> until;
    if (options.until) until = orTell(dayOf("--until", *options.until), problems);
    if (!problems.empty()) return session.fail(problems);
    return withColony(session, options, [&](book::Book& to, const About& about) {
        return judgeAndAdd(session, to, options,
                           book::Treatment{.colony = about.colony,
                                           .date = about.date,
                                           .until = until,
                                           .what = options.what,
                                           .note = options.note});
    });
}

Status addSighting(Session& session, const NewSighting& options) {
    Problems problems;
    const auto saw = choiceOption<book::SightingKind>("--saw", options.saw, problems);
    if (!saw) return session.fail(problems);
    return withColony(session, options, [&](book::Book& to, const About& about) {
        book::Sighting sighting{
            .colony = about.colony, .date = about.date, .saw = *saw, .seams = options.seams, .note = options.note};
        if (options.storesInSight || options.noStoresInSight) sighting.stores = options.storesInSight;
        sighting.clusterFrom = options.clusterFrom;
        sighting.sure = options.sure;
        return judgeAndAdd(session, to, options, std::move(sighting));
    });
}

Status addWeather(Session& session, const NewWeather& options) {
    const auto columns = exchange::temperatureColumns(options.columns);
    if (!columns)
        return session.fail(
            {argumentProblem("--columns: " + columns.problems().front().detail, columns.problems().front().remedy)});
    const auto scale = temperatureScale(options.unit);
    if (!scale) return session.fail(scale.problems());
    const auto days = measuredDays(session, options.source, *columns, *scale, options.sure);
    if (!days) return session.fail(days.problems());
    auto opened = openBook(session, options, For::Writing);
    if (!opened) return session.fail(opened.problems());
    const auto yard = yardFor(*opened, options.yard);
    if (!yard) return session.fail(yard.problems());
    book::WeatherLog log{.yard = *yard, .origin = shownName(options.source)};
    for (const auto& day : *days) log.days.push_back({day.date, day.meanC});
    return addAndPrint(session, *opened, options, std::move(log));
}

Status addFate(Session& session, const NewFate& options) {
    Problems problems;
    const auto fate = choiceOption<book::FateKind>("--fate", options.fate, problems);
    if (!fate) return session.fail(problems);
    return withColony(session, options, [&](book::Book& to, const About& about) {
        book::Fate entry{
            .colony = about.colony, .date = about.date, .fate = *fate, .cause = options.cause, .note = options.note};
        if (options.into) {
            const auto into = colonyOf(to, *options.into);
            if (!into) return session.fail(into.problems());
            entry.into = into->id;
        }
        return judgeAndAdd(session, to, options, std::move(entry));
    });
}

} // namespace winterlarder::cli
