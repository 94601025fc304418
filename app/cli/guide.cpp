// SPDX-License-Identifier: GPL-3.0-or-later
// The command that prints the guide "Judging stores".
#include "text/guide/guide.h"
#include "cli/commands.h"
#include "cli/table.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"
#include "text/contexts.h"

#include <fmt/format.h>

namespace winterlarder::cli {

namespace {

using exchange::Json;

std::vector<std::string> pageIds() {
    std::vector<std::string> ids;
    for (const auto page : text::allGuidePages) ids.emplace_back(text::guideId(page));
    return ids;
}

// ---- as text --------------------------------------------------------------------------------------------------------

QString tableText(const text::GuideTable& table) {
    QStringList headings;
    for (const QString& heading : table.headings)
        headings << (headings.isEmpty() ? heading : QLatin1Char('>') + heading);
    TextTable lines(headings);
    for (const QStringList& row : table.rows) lines.add(row);
    return lines.text();
}

QString partText(const text::GuidePart& part) {
    const QString indent(QStringLiteral("  "));
    if (const auto* paragraph = std::get_if<text::GuideParagraph>(&part)) return wrapped(paragraph->words, indent);
    if (const auto* point = std::get_if<text::GuidePoint>(&part))
        return wrapped(say::CommandLine::tr("%1: %2", "a point of the guide and what is said of it")
                           .arg(point->name, point->words),
                       QStringLiteral("  - "));
    if (const auto* table = std::get_if<text::GuideTable>(&part)) return tableText(*table);
    return {}; // what is drawn is for the window
}

QString pageText(const text::GuideText& page, const Session& session) {
    QString all = session.strong(page.title) + QStringLiteral("\n");
    for (const auto& part : page.parts) {
        const QString said = partText(part);
        if (!said.isEmpty()) all += QLatin1Char('\n') + said;
    }
    all += QLatin1Char('\n') + say::CommandLine::tr("Sources") + QLatin1Char('\n');
    for (const auto& id : page.sources)
        all += wrapped(QString::fromStdString(session.reference.source(id)->citation), QStringLiteral("  "));
    return all;
}

QString contentsText(const Session& session) {
    FactList pages;
    for (const auto page : text::allGuidePages)
        pages.add(QString::fromLatin1(text::guideId(page)), text::guideTitle(page));
    return session.strong(say::CommandLine::tr("Judging stores")) + QStringLiteral("\n\n") + pages.text();
}

// ---- as JSON --------------------------------------------------------------------------------------------------------

Json rowJson(const QStringList& cells) {
    Json row = Json::list();
    for (const QString& cell : cells) row.push(cell.toStdString());
    return row;
}

Json partJson(const text::GuidePart& part) {
    Json object = Json::object();
    if (const auto* paragraph = std::get_if<text::GuideParagraph>(&part))
        object.add("text", paragraph->words.toStdString());
    if (const auto* point = std::get_if<text::GuidePoint>(&part))
        object.add("name", point->name.toStdString()).add("text", point->words.toStdString());
    if (const auto* picture = std::get_if<text::GuidePicture>(&part))
        object.add("drawing", picture->says.toStdString());
    if (const auto* table = std::get_if<text::GuideTable>(&part)) {
        Json rows = Json::list();
        for (const QStringList& row : table->rows) rows.push(rowJson(row));
        object.add("headings", rowJson(table->headings)).add("rows", std::move(rows));
    }
    return object;
}

Json pageJson(const text::GuideText& page) {
    Json parts = Json::list(), sources = Json::list();
    for (const auto& part : page.parts) parts.push(partJson(part));
    for (const auto& id : page.sources) sources.push(id);
    return Json::object()
        .add("page", text::guideId(page.page))
        .add("title", page.title.toStdString())
        .add("parts", std::move(parts))
        .add("sources", std::move(sources));
}

Json contentsJson() {
    Json pages = Json::list();
    for (const auto page : text::allGuidePages)
        pages.push(Json::object().add("page", text::guideId(page)).add("title", text::guideTitle(page).toStdString()));
    return pages;
}

} // namespace

Status guide(Session& session, const GuideOptions& options) {
    text::GuideReader reader{session.reference, session.style, {}};
    reader.style.numbers.system = session.units.value_or(UnitSystem::Metric);
    if (options.hive) {
        const HiveFormat* format = session.reference.format(*options.hive);
        if (!format)
            return session.fail({argumentProblem(fmt::format("--hive is {}", exchange::inQuotes(*options.hive)),
                                                 "an id that \"hive-formats\" lists")});
        reader.hives.push_back({QString::fromStdString(format->name), hive::combFormat(*format)});
    }
    const auto page = options.page ? text::guideCalled(*options.page) : std::nullopt;
    if (options.page && !page)
        return session.fail({argumentProblem(fmt::format("no page {}", exchange::inQuotes(*options.page)),
                                             exchange::suggestion(*options.page, pageIds()))});
    if (session.json) session.print(page ? pageJson(text::guideText(*page, reader)) : contentsJson());
    else session.print(page ? pageText(text::guideText(*page, reader), session) : contentsText(session));
    return Status::Done;
}

} // namespace winterlarder::cli
