// SPDX-License-Identifier: GPL-3.0-or-later
// Books as documents: written out and taken in, whole or a table.
#include "answer/doubts_of_import.h"
#include "cli/book_commands.h"
#include "cli/open_book.h"
#include "exchange/book/book_csv.h"
#include "exchange/book/book_document.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"
#include "text/contexts.h"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>
#include <ostream>

namespace winterlarder::cli {
namespace {

namespace files = std::filesystem;
using exchange::Json;

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

} // namespace

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

} // namespace winterlarder::cli
