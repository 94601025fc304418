// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/question_of_case.h"

#include "answer/bees_of_case.h"
#include "answer/doubts.h"
#include "answer/events_of_case.h"
#include "answer/site_of_case.h"
#include "answer/united_case.h"
#include "answer/units_of_place.h"
#include "answer/usual_of_place.h"
#include "answer/ways_of_case.h"
#include "exchange/case/hive_room.h"
#include "exchange/json/json_tree.h"

#include <fmt/format.h>

namespace winterlarder::answer {

namespace {

using advice::ColonyQuestion;
using advice::RefusalKind;

void fillPlaceAndTime(ColonyQuestion& question, const book::ColonyCase& record, const SiteAndSeason& where) {
    question.winter = where.winter;
    question.asOf = where.winter.seasonDay(record.asOf);
    question.lookedOn = where.winter.nearestSeasonDay(record.lookedOn.value_or(record.asOf));
    question.site = where.site;
    if (where.site) question.season = where.season;
    else question.refusals.push_back(RefusalKind::FarFromStations);
}

} // namespace

Problems unknownFormats(const book::ColonyCase& record, const exchange::CasePlaces& places,
                        const ReferenceData& reference) {
    Problems problems;
    const auto check = [&](const std::string& id, const char* path, std::size_t i) {
        if (!reference.format(id))
            problems.push_back({ProblemKind::Input, places.of(fmt::format("{}[{}].format", path, i)),
                                fmt::format("there is no hive format {}", exchange::inQuotes(id)),
                                "one that winterlarder-cli hive-formats lists"});
    };
    for (std::size_t i = 0; i < record.hive.boxes.size(); ++i)
        if (const auto* id = std::get_if<std::string>(&record.hive.boxes[i].format)) check(*id, "hive.boxes", i);
    if (const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record.combs))
        for (std::size_t i = 0; i < combs->size(); ++i)
            if ((*combs)[i].format) check(*(*combs)[i].format, "combs", i);
    return problems;
}

Outcome<ColonyQuestion> questionOf(const book::ColonyCase& said, const exchange::CasePlaces& places,
                                   const ReferenceData& reference, std::uint64_t positionInBatch,
                                   const std::vector<HiveChange>& changes) {
    Problems problems = unknownFormats(said, places, reference);
    if (!problems.empty()) return problems;
    if (said.hive.boxes.empty())
        return Problem{ProblemKind::Input, places.of("hive"), "the hive has no box", "its boxes, from the floor up"};
    auto [record, setAside] = believed(said, reference, changes);
    const auto where = siteAndSeasonOf(record, places, reference);
    if (!where) problems = where.problems();
    ColonyQuestion question;
    question.setAside = std::move(setAside);
    question.united = unitedRemarks(said);
    fillHive(question, record.hive, reference);
    fillCombs(question, record, reference);
    fillTare(question, record.hive);
    fillBees(question, record.bees, places, reference, problems);
    checkFeeds(said, places, problems);
    for (Problem& problem : exchange::roomFaults(record, places, &reference)) problems.push_back(std::move(problem));
    if (!problems.empty()) {
        sortByPlace(problems);
        return problems;
    }
    fillPlaceAndTime(question, record, *where);
    question.place = whereaboutsOf(record.site, question.site, reference);
    fillWays(question, record, reference, positionInBatch);
    fillEvents(question, record, reference.decisions);
    fillAnswers(question.answers, record, reference.decisions);
    question.decisions = reference.decisions;
    question.steps = stepsFor(unitsOf(question));
    fillUsual(question, reference);
    return question;
}

Outcome<ReadQuestion> readQuestion(std::string_view text, std::string file, const ReferenceData& reference,
                                   std::uint64_t positionInBatch, const DoubtInWords& inWords, int firstLine) {
    exchange::CaseReading reading = exchange::readCaseWithPlaces(text, std::move(file), reference, firstLine);
    if (reading.problems.empty()) {
        if (auto impossible = impossibleRecords(*reading.record, reading.places, reference, inWords);
            !impossible.empty()) {
            sortByPlace(impossible);
            return impossible;
        }
        auto question = questionOf(*reading.record, reading.places, reference, positionInBatch);
        if (!question) return question.problems();
        auto asked = askedOfCase(*reading.record, reading.places, reference, inWords);
        return ReadQuestion{*std::move(reading.record), *std::move(question), std::move(asked)};
    }
    if (reading.datesSound) {
        const auto where = siteAndSeasonOf(*reading.record, reading.places, reference);
        if (!where) reading.problems.insert(reading.problems.end(), where.problems().begin(), where.problems().end());
        sortByPlace(reading.problems);
    }
    return reading.problems;
}

} // namespace winterlarder::answer
