// SPDX-License-Identifier: GPL-3.0-or-later
// Whole books: what they hold, their story, copies, backups, documents.
#include "answer/doubts_of_import.h"
#include "answer/style_of_place.h"
#include "book/salvage.h"
#include "cli/book_commands.h"
#include "cli/open_book.h"
#include "cli/table.h"
#include "exchange/book/book_csv.h"
#include "exchange/book/book_document.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"
#include "text/contexts.h"
#include "text/step_words.h"
#include "text/story.h"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>
#include <ostream>

namespace winterlarder::cli {
namespace {

namespace files = std::filesystem;
using exchange::Json;

QString of(const std::string& text) { return QString::fromStdString(text); }

//! Says what an edit without a new id did: how many entries it touched.
Status printTouched(Session& session, const Outcome<book::Applied>& applied) {
    if (!applied) return session.fail(applied.problems());
    for (const auto& notice : applied->notices) session.tell(notice);
    const auto count = static_cast<int>(applied->touched.size());
    if (session.json) session.print(Json::object().add("touched", count));
    else
        session.print(count == 1 ? say::CommandLine::tr("One entry changed\n")
                                 : say::CommandLine::tr("%n entries changed\n", nullptr, count));
    return Status::Done;
}

// ---- story and content ----------------------------------------------------------------------------------------------

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
        table.add({of(step.at.iso()), text::stepName(step, style), shown(step.who), text::stepState(step.state)});
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
    facts.add(say::CommandLine::tr("File"), shown(info.file.string()));
    facts.add(say::CommandLine::tr("Size"), say::CommandLine::tr("%1 bytes").arg(info.bytes));
    facts.add(say::CommandLine::tr("Form"), QString::number(info.schemaVersion));
    if (info.madeAt)
        facts.add(say::CommandLine::tr("Begun"),
                  say::CommandLine::tr("%1 by %2").arg(of(info.madeAt->iso()), shown(info.madeBy)));
    facts.add(say::CommandLine::tr("Steps"), QString::number(info.steps));
    for (const auto& [kind, count] : info.entries)
        if (count > 0) facts.add(text::kindPlural(kind), QString::number(count));
    return facts.text();
}

// ---- documents ------------------------------------------------------------------------------------------------------

bool isCsv(const BookImport& options) { return options.table || files::path(options.source).extension() == ".csv"; }

std::string tableIn(const BookImport& options) {
    return options.table.value_or(files::path(options.source).stem().string());
}

Problem noTable(const std::string& table) {
    return argumentProblem(fmt::format("there is no table {}", exchange::inQuotes(table)),
                           exchange::suggestion(table, exchange::csvTables()));
}

bool isTable(const std::string& table) {
    const auto all = exchange::csvTables();
    return std::find(all.begin(), all.end(), table) != all.end();
}

constexpr const char* asItStands = "To take the book as it stands: --sure; no answer believes this";

Status showPreview(Session& session, const exchange::CsvPreview& preview, const Problems& doubts) {
    const auto lines = [](const std::vector<int>& all) {
        Json list = Json::list();
        for (const int line : all) list.push(line);
        return list;
    };
    if (session.json) {
        auto document = Json::object()
                            .add("added", lines(preview.added))
                            .add("changed", lines(preview.changed))
                            .add("duplicates", lines(preview.duplicates));
        if (!doubts.empty()) document.add("asked", problemsJson(doubts));
        session.print(document);
    } else
        session.print(say::CommandLine::tr("new: %1 lines, changed: %2, already in the book and left out: %3\n")
                          .arg(preview.added.size())
                          .arg(preview.changed.size())
                          .arg(preview.duplicates.size()));
    if (!session.json) session.ask(doubts);
    return Status::Done;
}

Status importTable(Session& session, book::Book& into, const BookImport& options, const std::string& text) {
    const auto table = tableIn(options);
    if (!isTable(table)) return session.fail({noTable(table)});
    auto preview = exchange::previewCsv(into, table, text, shownName(options.source), writerOf(session, options));
    if (!preview) return session.fail(preview.problems());
    const auto doubts =
        answer::doubtsOfRows(into, *preview, shownName(options.source), session.moment.today, options.sure, ifSure);
    if (options.preview) return showPreview(session, *preview, doubts);
    if (!doubts.empty()) return session.fail(doubts);
    return printTouched(session, exchange::importCsv(into, *preview, session.moment.now, writerOf(session, options)));
}

Status importDocument(Session& session, book::Book& into, const BookImport& options, const std::string& text) {
    std::vector<Place> places;
    auto document = exchange::readBook(text, shownName(options.source), session.reference, &places);
    if (!document) return session.fail(document.problems());
    if (!options.sure)
        if (const auto doubts =
                answer::doubtsOfDocument(*document, places, session.moment.today, session.reference, asItStands);
            !doubts.empty())
            return session.fail(doubts);
    return printTouched(session, exchange::importBook(into, std::move(document).value(), session.moment.now,
                                                      writerOf(session, options)));
}

//! A book made for an import that then failed is taken away again.
Status importIntoNew(Session& session, const BookImport& options, const std::string& text) {
    auto made = book::Book::create(options.file, session.reference, openingOf(session, options, For::Writing));
    if (!made) return session.fail(made.problems());
    const Status status = importDocument(session, *made, options, text);
    if (status != Status::Done) files::remove(options.file);
    return status;
}

//! The backup of that file, or of that file name among the book's own.
files::path backupNamed(const BookAndFile& options) {
    if (files::exists(options.other)) return options.other;
    return book::backupFolderOf(options.file) / options.other;
}

} // namespace

namespace {

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

Status exportBook(Session& session, const BookExport& options) {
    if (session.json == options.table.has_value())
        return session.fail({argumentProblem("what to export was not said",
                                             "--json for the whole book, or --table NAME for one table as CSV")});
    if (options.table && !isTable(*options.table)) return session.fail({noTable(*options.table)});
    auto opened = openBook(session, options, For::Reading);
    if (!opened) return session.fail(opened.problems());
    if (options.table) {
        const auto csv = exchange::writeCsv(*opened, *options.table);
        if (!csv) return session.fail(csv.problems());
        session.out << *csv;
        return Status::Done;
    }
    const auto written = exchange::writeBook(*opened, [&](std::string_view part) { session.out << part; });
    return written ? Status::Done : session.fail(written.problems());
}

Status importBook(Session& session, const BookImport& options) {
    const auto text = textOf(options.source, session.in, isCsv(options) ? limits::tableText : limits::documentText);
    if (!text) return session.fail(text.problems());
    if (!files::exists(options.file) && !isCsv(options) && !options.preview)
        return importIntoNew(session, options, *text);
    if (options.preview && !isCsv(options))
        return session.fail({argumentProblem("--preview is for tables", "a JSON document replaces the whole book")});
    auto opened = openBook(session, options, options.preview ? For::Reading : For::Writing);
    if (!opened) return session.fail(opened.problems());
    return isCsv(options) ? importTable(session, *opened, options, *text)
                          : importDocument(session, *opened, options, *text);
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
        table.add({of(backup.at.iso()), QString::number(backup.bytes), shown(backup.file.filename().string())});
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
    for (const auto& sentence : saved->lost) session.print(say::CommandLine::tr("lost: %1\n").arg(shown(sentence)));
    return Status::Done;
}

} // namespace winterlarder::cli
