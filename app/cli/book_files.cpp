// SPDX-License-Identifier: GPL-3.0-or-later
// Whole books: what they hold, their story, copies and backups.
#include "answer/style_of_place.h"
#include "book/salvage.h"
#include "cli/book_commands.h"
#include "cli/open_book.h"
#include "cli/table.h"
#include "text/contexts.h"
#include "text/foreign_text.h"
#include "text/step_words.h"
#include "text/story.h"

#include <filesystem>

namespace winterlarder::cli {
namespace {

namespace files = std::filesystem;
using exchange::Json;

QString of(const std::string& text) { return QString::fromStdString(text); }

Json sideJson(const std::map<std::string, std::optional<std::string>>& side) {
    Json values = Json::object();
    for (const auto& [name, value] : side) values.add(name, value);
    return values;
}

Json stepJson(const book::Step& step) {
    Json changes = Json::list();
    for (const auto& change : step.changes)
        changes.push(Json::object()
                         .add("kind", book::tableOf(change.kind).singular)
                         .add("entry", static_cast<double>(change.entry))
                         .add("how", text::wordOf(change.how))
                         .add("before", sideJson(change.before))
                         .add("after", sideJson(change.after)));
    Json object = Json::object();
    object.add("id", static_cast<double>(step.id.number))
        .add("at", step.at.iso())
        .add("who", step.who)
        .add("verb", step.verb);
    object.add("state", text::wordOf(step.state));
    if (step.turnedAt) object.add("turned_at", step.turnedAt->iso()).add("turned_by", step.turnedBy);
    return std::move(object.add("changes", std::move(changes)));
}

QString storyText(const std::vector<book::Step>& steps, const text::WordStyle& style) {
    TextTable table({say::CommandLine::tr("When"), say::CommandLine::tr("What"), say::CommandLine::tr("Who"),
                     say::CommandLine::tr("State")});
    for (const auto& step : steps)
        table.add({of(step.at.iso()), text::stepName(step, style), text::shown(step.who), text::stepState(step.state)});
    return table.text();
}

Json infoJson(const book::BookInfo& info, const book::Book& from) {
    Json entries = Json::object();
    for (const auto& [kind, count] : info.entries) entries.add(book::tableOf(kind).name, static_cast<double>(count));
    Json object = Json::object();
    object.add("file", info.file.string())
        .add("bytes", static_cast<double>(info.bytes))
        .add("schema_version", info.schemaVersion);
    object.add("made_at", info.madeAt ? Json(info.madeAt->iso()) : Json()).add("made_by", info.madeBy);
    object.add("steps", static_cast<double>(info.steps))
        .add("read_only_because", from.writable() ? Json() : Json(from.whyReadOnly()));
    return std::move(object.add("entries", std::move(entries)));
}

QString infoText(const book::BookInfo& info) {
    FactList facts;
    facts.add(say::CommandLine::tr("File"), text::shown(info.file.string()));
    facts.add(say::CommandLine::tr("Size"), say::CommandLine::tr("%1 bytes").arg(info.bytes));
    facts.add(say::CommandLine::tr("Form"), QString::number(info.schemaVersion));
    if (info.madeAt)
        facts.add(say::CommandLine::tr("Begun"),
                  say::CommandLine::tr("%1 by %2").arg(of(info.madeAt->iso()), text::shown(info.madeBy)));
    facts.add(say::CommandLine::tr("Steps"), QString::number(info.steps));
    for (const auto& [kind, count] : info.entries)
        if (count > 0) facts.add(text::kindPlural(kind), QString::number(count));
    return facts.text();
}

//! The backup of that file, or of that file name among the book's own.
files::path backupNamed(const BookAndFile& options) {
    if (files::exists(options.other)) return options.other;
    return book::backupFolderOf(options.file) / options.other;
}

//! With the nouns of the place of its hives: frames where any hive there has them.
text::WordStyle wordedFor(text::WordStyle style, book::Book& from) {
    const auto yards = from.all<book::Yard>();
    const auto colonies = from.all<book::Colony>();
    if (!yards || !colonies) return style;
    for (const auto& colony : *colonies)
        for (const auto& yard : *yards) {
            if (yard.id != colony.yard) continue;
            const auto own = answer::wordingOf(yard.site, colony.hive, from.reference());
            style.wording.frames = style.wording.frames || own.frames;
            style.wording.candyBoard = style.wording.candyBoard || own.candyBoard;
        }
    return style;
}

} // namespace

Status bookStory(Session& session, const BookStory& options) {
    if (options.count < 1) return session.fail({argumentProblem("--count is below 1", "how many steps to show")});
    auto opened = openBook(session, options, For::Reading);
    if (!opened) return session.fail(opened.problems());
    const auto steps = opened->story(options.count);
    if (!steps) return session.fail(steps.problems());
    if (!session.json) return session.print(storyText(*steps, wordedFor(session.style, *opened))), Status::Done;
    Json list = Json::list();
    for (const auto& step : *steps) list.push(stepJson(step));
    session.print(list);
    return Status::Done;
}

Status bookInfo(Session& session, const BookFile& options) {
    auto opened = openBook(session, options, For::Reading);
    if (!opened) return session.fail(opened.problems());
    const auto info = opened->info();
    if (!info) return session.fail(info.problems());
    if (session.json) session.print(infoJson(*info, *opened));
    else session.print(infoText(*info));
    return Status::Done;
}

Status checkBook(Session& session, const BookFile& options) {
    auto opened = openBook(session, options, For::Reading);
    if (!opened) return session.fail(opened.problems());
    const auto faults = opened->check();
    if (!faults) return session.fail(faults.problems());
    Problems problems;
    for (const auto& fault : *faults)
        problems.push_back({ProblemKind::Input, {options.file, 0, 0}, fault, "book salvage, or restore a backup"});
    if (!problems.empty()) return session.fail(problems);
    if (session.json) session.print(Json::object().add("sound", true));
    else session.print(say::CommandLine::tr("sound\n"));
    return Status::Done;
}

Status turnBook(Session& session, const BookFile& options, book::Turned turned) {
    const bool back = turned == book::Turned::Back;
    auto opened = openBook(session, options, For::Writing);
    if (!opened) return session.fail(opened.problems());
    if (back ? !opened->canUndo() : !opened->canRedo())
        return session.fail({argumentProblem(back ? "there is nothing to undo" : "there is nothing to redo",
                                             "book story shows every step")});
    const auto who = writerOf(session, options);
    return printTouched(session, back ? opened->undo(session.moment.now, who) : opened->redo(session.moment.now, who));
}

Status copyBook(Session& session, const BookAndFile& options) {
    auto opened = openBook(session, options, For::Reading);
    if (!opened) return session.fail(opened.problems());
    const auto copied = opened->copyTo(options.other);
    return copied ? Status::Done : session.fail(copied.problems());
}

Status bookBackups(Session& session, const BookBackups& options) {
    if (options.make) {
        auto opened = openBook(session, options, For::Writing);
        if (!opened) return session.fail(opened.problems());
        const auto made = opened->backUp(session.moment.now);
        if (!made) return session.fail(made.problems());
    } else if (!files::exists(options.file))
        return session.fail({{ProblemKind::File, {options.file, 0, 0}, "there is no such file", "name a book"}});
    TextTable table({say::CommandLine::tr("When"), say::CommandLine::tr(">Bytes"), say::CommandLine::tr("File")});
    Json list = Json::list();
    for (const auto& backup : book::backupsOf(options.file)) {
        table.add({of(backup.at.iso()), QString::number(backup.bytes), text::shown(backup.file.filename().string())});
        list.push(Json::object()
                      .add("at", backup.at.iso())
                      .add("bytes", static_cast<double>(backup.bytes))
                      .add("file", backup.file.string()));
    }
    if (session.json) session.print(list);
    else session.print(table.text());
    return Status::Done;
}

Status restoreBook(Session& session, const BookAndFile& options) {
    auto opened = openBook(session, options, For::Writing);
    if (!opened) return session.fail(opened.problems());
    return printTouched(session, opened->restore(backupNamed(options), session.moment.now, writerOf(session, options)));
}

Status salvageBook(Session& session, const BookAndFile& options) {
    const auto saved =
        book::salvage(options.file, options.other, session.reference, openingOf(session, options, For::Writing).opener);
    if (!saved) return session.fail(saved.problems());
    Json entries = Json::object(), lost = Json::list();
    FactList facts;
    for (const auto& [kind, count] : saved->saved) {
        entries.add(book::tableOf(kind).name, static_cast<double>(count));
        if (count > 0) facts.add(text::kindPlural(kind), QString::number(count));
    }
    for (const auto& sentence : saved->lost) lost.push(sentence);
    if (session.json) {
        session.print(Json::object().add("saved", std::move(entries)).add("lost", std::move(lost)));
        return Status::Done;
    }
    session.print(facts.text());
    for (const auto& sentence : saved->lost)
        session.print(say::CommandLine::tr("lost: %1\n").arg(text::shown(sentence)));
    return Status::Done;
}

} // namespace winterlarder::cli
