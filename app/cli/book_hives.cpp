// SPDX-License-Identifier: GPL-3.0-or-later
// Commands that write colonies, their names and their boxes into a book.
#include "cli/book_commands.h"
#include "cli/choice_option.h"
#include "cli/record_of_colony.h"

#include "book/case_of.h"

namespace winterlarder::cli {
namespace {

std::vector<book::BoxRecord> boxesOf(const BoxOptions& options) {
    std::vector<book::BoxRecord> boxes(static_cast<std::size_t>(options.boxes.value_or(1)),
                                       book::BoxRecord{.format = options.format});
    for (const auto& super : options.supers) boxes.push_back({.format = super, .super = true});
    return boxes;
}

book::HiveRecord hiveOf(const NewColony& options, std::optional<book::Shell> shell) {
    book::HiveRecord hive;
    hive.boxes = boxesOf(options.boxes);
    hive.shell = shell.value_or(book::Shell::Timber);
    hive.topInsulation = options.topInsulation;
    if (options.tare) hive.tare = kilograms(*options.tare);
    return hive;
}

constexpr int mostBoxes = 12; // as in a case file

void checkFormat(const Session& session, const std::string& format, Problems& problems) {
    if (session.reference.format(format)) return;
    problems.push_back(argumentProblem(fmt::format("there is no hive format {}", exchange::inQuotes(format)),
                                       exchange::suggestion(format, idsOf(session.reference.formats))));
}

void checkBoxes(const Session& session, const BoxOptions& options, Problems& problems) {
    checkFormat(session, options.format, problems);
    for (const auto& super : options.supers) checkFormat(session, super, problems);
    const int boxes = options.boxes.value_or(1);
    if (boxes < 1 || boxes > mostBoxes)
        problems.push_back(argumentProblem(fmt::format("--boxes is {}", boxes), fmt::format("1 to {}", mostBoxes)));
    else if (const auto all = static_cast<std::size_t>(boxes) + options.supers.size(); all > mostBoxes)
        problems.push_back(
            argumentProblem(fmt::format("{} boxes with the supers", all), fmt::format("at most {}", mostBoxes)));
}

//! Two colonies of one name could not be told apart on the command line.
Problems nameTaken(book::Book& in, const std::string& name, std::optional<book::ColonyId> self = {}) {
    const auto colonies = in.all<book::Colony>();
    if (!colonies) return colonies.problems();
    for (const auto& colony : *colonies)
        if (colony.name == name && colony.id != self)
            return {argumentProblem(
                fmt::format("there is a colony {} already, #{}", exchange::inQuotes(name), colony.id.number),
                "another name, such as the place where it stands")};
    return {};
}

} // namespace

Status addColony(Session& session, const NewColony& options) {
    Problems problems;
    book::Colony colony;
    colony.name = options.name;
    colony.hive = hiveOf(options, choiceOption<book::Shell>("--shell", options.shell, problems));
    colony.hive.supersFor = choiceOption<book::SupersFor>("--supers-for", options.supersFor, problems);
    colony.beeKind = choiceOption<book::BeeKind>("--kind", options.kind, problems);
    if (const auto feeder = choiceOption<book::FeederKind>("--feeder", options.feeder, problems))
        colony.feeder = book::FeederRecord{*feeder, {}};
    if (options.since) colony.since = orTell(dayOf("--since", *options.since), problems);
    colony.queenYear = options.queenYear;
    colony.origin = options.origin.value_or("");
    checkBoxes(session, options.boxes, problems);
    if (!problems.empty()) return session.fail(problems);
    auto opened = openBook(session, options, For::Writing);
    if (!opened) return session.fail(opened.problems());
    if (const auto taken = nameTaken(*opened, options.name); !taken.empty()) return session.fail(taken);
    const auto yard = yardFor(*opened, options.yard);
    if (!yard) return session.fail(yard.problems());
    colony.yard = *yard;
    return judgeAndAdd(session, *opened, options, std::move(colony));
}

//! What is not said stays as it was on that day.
Status addBoxes(Session& session, const NewBoxes& options) {
    Problems problems;
    checkBoxes(session, options.boxes, problems);
    if (!problems.empty()) return session.fail(problems);
    return withColony(session, options, [&](book::Book& to, const About& about) {
        auto hive = hiveOnDay(to, about);
        if (!hive) return session.fail(hive.problems());
        hive->boxes = boxesOf(options.boxes);
        hive->tare = options.tare ? std::optional(kilograms(*options.tare)) : std::nullopt;
        return judgeAndAdd(
            session, to, options,
            book::Housing{
                .colony = about.colony, .date = about.date, .hive = std::move(hive).value(), .note = options.note});
    });
}

Status renameColony(Session& session, const RenamedColony& options) {
    auto opened = openBook(session, options, For::Writing);
    if (!opened) return session.fail(opened.problems());
    auto colony = colonyOf(*opened, options.colony);
    if (!colony) return session.fail(colony.problems());
    if (const auto taken = nameTaken(*opened, options.name, colony->id); !taken.empty()) return session.fail(taken);
    colony->name = options.name;
    const auto applied = opened->apply(book::SingleEdit(book::ChangeColony{std::move(colony).value()}),
                                       session.moment.now, writerOf(session, options));
    if (!applied) return session.fail(applied.problems());
    for (const auto& notice : applied->notices) session.tell(notice);
    return Status::Done;
}

} // namespace winterlarder::cli
