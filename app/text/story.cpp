// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/story.h"

#include "book/form/row.h"
#include "text/contexts.h"

#include <array>
#include <map>

namespace winterlarder::text {
namespace {

struct KindWords {
    const char *one, *many, *added, *changed, *removed;
};

const std::array<KindWords, book::kindCount> kindWords{{
    {QT_TRANSLATE_NOOP("Story", "yard"), QT_TRANSLATE_NOOP("Story", "yards"), QT_TRANSLATE_NOOP("Story", "yard added"),
     QT_TRANSLATE_NOOP("Story", "yard changed"), QT_TRANSLATE_NOOP("Story", "yard removed")},
    {QT_TRANSLATE_NOOP("Story", "colony"), QT_TRANSLATE_NOOP("Story", "colonies"),
     QT_TRANSLATE_NOOP("Story", "colony added"), QT_TRANSLATE_NOOP("Story", "colony changed"),
     QT_TRANSLATE_NOOP("Story", "colony removed")},
    {QT_TRANSLATE_NOOP("Story", "move"), QT_TRANSLATE_NOOP("Story", "moves"), QT_TRANSLATE_NOOP("Story", "move added"),
     QT_TRANSLATE_NOOP("Story", "move changed"), QT_TRANSLATE_NOOP("Story", "move removed")},
    {QT_TRANSLATE_NOOP("Story", "end of a colony"), QT_TRANSLATE_NOOP("Story", "ends of colonies"),
     QT_TRANSLATE_NOOP("Story", "end of a colony recorded"), QT_TRANSLATE_NOOP("Story", "end of a colony changed"),
     QT_TRANSLATE_NOOP("Story", "end of a colony removed")},
    {QT_TRANSLATE_NOOP("Story", "hive from a day on"), QT_TRANSLATE_NOOP("Story", "hives from a day on"),
     QT_TRANSLATE_NOOP("Story", "new hive recorded"), QT_TRANSLATE_NOOP("Story", "new hive changed"),
     QT_TRANSLATE_NOOP("Story", "new hive removed")},
    {QT_TRANSLATE_NOOP("Story", "look"), QT_TRANSLATE_NOOP("Story", "looks"), QT_TRANSLATE_NOOP("Story", "look added"),
     QT_TRANSLATE_NOOP("Story", "look changed"), QT_TRANSLATE_NOOP("Story", "look removed")},
    {QT_TRANSLATE_NOOP("Story", "weighing"), QT_TRANSLATE_NOOP("Story", "weighings"),
     QT_TRANSLATE_NOOP("Story", "weighing added"), QT_TRANSLATE_NOOP("Story", "weighing changed"),
     QT_TRANSLATE_NOOP("Story", "weighing removed")},
    {QT_TRANSLATE_NOOP("Story", "feed"), QT_TRANSLATE_NOOP("Story", "feeds"), QT_TRANSLATE_NOOP("Story", "feed added"),
     QT_TRANSLATE_NOOP("Story", "feed changed"), QT_TRANSLATE_NOOP("Story", "feed removed")},
    {QT_TRANSLATE_NOOP("Story", "harvest"), QT_TRANSLATE_NOOP("Story", "harvests"),
     QT_TRANSLATE_NOOP("Story", "harvest added"), QT_TRANSLATE_NOOP("Story", "harvest changed"),
     QT_TRANSLATE_NOOP("Story", "harvest removed")},
    {QT_TRANSLATE_NOOP("Story", "treatment"), QT_TRANSLATE_NOOP("Story", "treatments"),
     QT_TRANSLATE_NOOP("Story", "treatment added"), QT_TRANSLATE_NOOP("Story", "treatment changed"),
     QT_TRANSLATE_NOOP("Story", "treatment removed")},
    {QT_TRANSLATE_NOOP("Story", "work on the hive"), QT_TRANSLATE_NOOP("Story", "work on hives"),
     QT_TRANSLATE_NOOP("Story", "work on the hive recorded"), QT_TRANSLATE_NOOP("Story", "work on the hive changed"),
     QT_TRANSLATE_NOOP("Story", "work on the hive removed")},
    {QT_TRANSLATE_NOOP("Story", "advice acted on"), QT_TRANSLATE_NOOP("Story", "advice acted on"),
     QT_TRANSLATE_NOOP("Story", "advice kept"), QT_TRANSLATE_NOOP("Story", "kept advice changed"),
     QT_TRANSLATE_NOOP("Story", "kept advice removed")},
    {QT_TRANSLATE_NOOP("Story", "planned visit"), QT_TRANSLATE_NOOP("Story", "planned visits"),
     QT_TRANSLATE_NOOP("Story", "visit planned"), QT_TRANSLATE_NOOP("Story", "planned visit changed"),
     QT_TRANSLATE_NOOP("Story", "planned visit removed")},
    {QT_TRANSLATE_NOOP("Story", "outcome of a winter"), QT_TRANSLATE_NOOP("Story", "outcomes of winters"),
     QT_TRANSLATE_NOOP("Story", "outcome of the winter recorded"),
     QT_TRANSLATE_NOOP("Story", "outcome of the winter changed"),
     QT_TRANSLATE_NOOP("Story", "outcome of the winter removed")},
    {QT_TRANSLATE_NOOP("Story", "winter sighting"), QT_TRANSLATE_NOOP("Story", "winter sightings"),
     QT_TRANSLATE_NOOP("Story", "winter sighting added"), QT_TRANSLATE_NOOP("Story", "winter sighting changed"),
     QT_TRANSLATE_NOOP("Story", "winter sighting removed")},
    {QT_TRANSLATE_NOOP("Story", "log of temperatures"), QT_TRANSLATE_NOOP("Story", "logs of temperatures"),
     QT_TRANSLATE_NOOP("Story", "temperatures added"), QT_TRANSLATE_NOOP("Story", "temperatures changed"),
     QT_TRANSLATE_NOOP("Story", "temperatures removed")},
}};

const KindWords& wordsFor(book::Kind kind) { return kindWords[static_cast<std::size_t>(kind)]; }

std::map<std::string, const char*> allVerbs() {
    std::map<std::string, const char*> verbs{
        {"change comb", QT_TRANSLATE_NOOP("Story", "%{comb} changed")},
        {"mark visit done", QT_TRANSLATE_NOOP("Story", "visit made")},
        {"skip visit", QT_TRANSLATE_NOOP("Story", "visit skipped")},
        {"accept advice", QT_TRANSLATE_NOOP("Story", "advice made the plan")},
        {"change hive", QT_TRANSLATE_NOOP("Story", "hive changed")},
        {"move combs", QT_TRANSLATE_NOOP("Story", "%{combs} moved")},
        {"unite colonies", QT_TRANSLATE_NOOP("Story", "colonies united")},
        {"import document", QT_TRANSLATE_NOOP("Story", "whole book imported")},
        {"restore backup", QT_TRANSLATE_NOOP("Story", "backup restored")},
        {"salvage", QT_TRANSLATE_NOOP("Story", "salvaged from a damaged book")},
    };
    for (const auto& table : book::tables()) {
        verbs["add " + table.singular] = wordsFor(table.kind).added;
        verbs["change " + table.singular] = wordsFor(table.kind).changed;
        verbs["remove " + table.singular] = wordsFor(table.kind).removed;
    }
    return verbs;
}

//! The table an import filled; nothing where the verb is none of an import.
std::optional<book::Kind> importedKind(const std::string& verb) {
    constexpr std::string_view begin = "import ";
    if (!verb.starts_with(begin)) return std::nullopt;
    const std::string_view name = std::string_view(verb).substr(begin.size());
    for (const auto& table : book::tables()) {
        if (table.name == name) return table.kind;
        for (const auto& list : table.lists)
            if (list.table == name) return table.kind;
    }
    return std::nullopt;
}

} // namespace

QString verbTitle(const std::string& verb, const WordStyle& style) {
    static const auto verbs = allVerbs();
    const auto known = verbs.find(verb);
    if (known != verbs.end()) return worded(say::Story::tr(known->second), style);
    if (const auto kind = importedKind(verb)) return say::Story::tr("imported: %1").arg(kindPlural(*kind));
    return QString::fromStdString(verb);
}

QString stepState(book::StepState state) {
    switch (state) {
    case book::StepState::Done: return say::Story::tr("done");
    case book::StepState::Undone: return say::Story::tr("undone");
    case book::StepState::Abandoned: return say::Story::tr("undone for good");
    }
    return {};
}

QString kindName(book::Kind kind) { return say::Story::tr(wordsFor(kind).one); }
QString kindPlural(book::Kind kind) { return say::Story::tr(wordsFor(kind).many); }

std::string_view wordOf(book::StepState state) {
    constexpr std::string_view words[] = {"done", "undone", "abandoned"};
    return words[static_cast<std::size_t>(state)];
}

std::string_view wordOf(book::ChangeHow how) {
    constexpr std::string_view words[] = {"add", "change", "remove"};
    return words[static_cast<std::size_t>(how)];
}

} // namespace winterlarder::text
