// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/step_words.h"

#include "text/field_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

namespace winterlarder::text {

namespace {

struct VerbWords {
    const char* verb;
    const char* words;
};

constexpr VerbWords verbs[] = {
    {"add yard", QT_TRANSLATE_NOOP("Steps", "add a yard")},
    {"change yard", QT_TRANSLATE_NOOP("Steps", "change the yard")},
    {"remove yard", QT_TRANSLATE_NOOP("Steps", "remove a yard")},
    {"add colony", QT_TRANSLATE_NOOP("Steps", "add a colony")},
    {"change colony", QT_TRANSLATE_NOOP("Steps", "change the colony")},
    {"remove colony", QT_TRANSLATE_NOOP("Steps", "remove a colony")},
    {"add move", QT_TRANSLATE_NOOP("Steps", "move a colony")},
    {"change move", QT_TRANSLATE_NOOP("Steps", "change a move")},
    {"remove move", QT_TRANSLATE_NOOP("Steps", "remove a move")},
    {"add fate", QT_TRANSLATE_NOOP("Steps", "write what became of a colony")},
    {"change fate", QT_TRANSLATE_NOOP("Steps", "change what became of a colony")},
    {"remove fate", QT_TRANSLATE_NOOP("Steps", "take a colony back into the book")},
    {"add housing", QT_TRANSLATE_NOOP("Steps", "give another hive")},
    {"change housing", QT_TRANSLATE_NOOP("Steps", "change the hive")},
    {"remove housing", QT_TRANSLATE_NOOP("Steps", "remove a change of hive")},
    {"add look", QT_TRANSLATE_NOOP("Steps", "add a look")},
    {"change look", QT_TRANSLATE_NOOP("Steps", "change the look")},
    {"remove look", QT_TRANSLATE_NOOP("Steps", "remove a look")},
    {"add weighing", QT_TRANSLATE_NOOP("Steps", "add a weighing")},
    {"change weighing", QT_TRANSLATE_NOOP("Steps", "change a weighing")},
    {"remove weighing", QT_TRANSLATE_NOOP("Steps", "remove a weighing")},
    {"add feed", QT_TRANSLATE_NOOP("Steps", "write down a feed")},
    {"change feed", QT_TRANSLATE_NOOP("Steps", "change a feed")},
    {"remove feed", QT_TRANSLATE_NOOP("Steps", "remove a feed")},
    {"add harvest", QT_TRANSLATE_NOOP("Steps", "write down a harvest")},
    {"change harvest", QT_TRANSLATE_NOOP("Steps", "change a harvest")},
    {"remove harvest", QT_TRANSLATE_NOOP("Steps", "remove a harvest")},
    {"add treatment", QT_TRANSLATE_NOOP("Steps", "write down a treatment")},
    {"change treatment", QT_TRANSLATE_NOOP("Steps", "change a treatment")},
    {"remove treatment", QT_TRANSLATE_NOOP("Steps", "remove a treatment")},
    {"add manipulation", QT_TRANSLATE_NOOP("Steps", "write down work on the hive")},
    {"change manipulation", QT_TRANSLATE_NOOP("Steps", "change work on the hive")},
    {"remove manipulation", QT_TRANSLATE_NOOP("Steps", "remove work on the hive")},
    {"add acted_advice", QT_TRANSLATE_NOOP("Steps", "keep an advice")},
    {"change acted_advice", QT_TRANSLATE_NOOP("Steps", "change a kept advice")},
    {"remove acted_advice", QT_TRANSLATE_NOOP("Steps", "remove a kept advice")},
    {"add planned_visit", QT_TRANSLATE_NOOP("Steps", "plan a visit")},
    {"change planned_visit", QT_TRANSLATE_NOOP("Steps", "change a planned visit")},
    {"remove planned_visit", QT_TRANSLATE_NOOP("Steps", "remove a planned visit")},
    {"add winter_outcome", QT_TRANSLATE_NOOP("Steps", "write how the winter went")},
    {"change winter_outcome", QT_TRANSLATE_NOOP("Steps", "change how the winter went")},
    {"remove winter_outcome", QT_TRANSLATE_NOOP("Steps", "remove how the winter went")},
    {"change comb", QT_TRANSLATE_NOOP("Steps", "change a comb")},
    {"mark visit done", QT_TRANSLATE_NOOP("Steps", "tick off a visit")},
    {"skip visit", QT_TRANSLATE_NOOP("Steps", "skip a visit")},
    {"accept advice", QT_TRANSLATE_NOOP("Steps", "make the advice the plan")},
    {"change hive", QT_TRANSLATE_NOOP("Steps", "change boxes or combs")},
    {"move combs", QT_TRANSLATE_NOOP("Steps", "move combs to another colony")},
    {"unite colonies", QT_TRANSLATE_NOOP("Steps", "unite two colonies")},
    {"restore backup", QT_TRANSLATE_NOOP("Steps", "restore a backup")},
    {"import document", QT_TRANSLATE_NOOP("Steps", "import a book")},
    {"salvage", QT_TRANSLATE_NOOP("Steps", "salvage a damaged book")},
    {"open case files", QT_TRANSLATE_NOOP("Steps", "open case files")},
    {"begin the yard", QT_TRANSLATE_NOOP("Steps", "begin the yard")},
    {"remove records", QT_TRANSLATE_NOOP("Steps", "remove records")},
};

QString tr(const char* words, int n = -1) { return QCoreApplication::translate("Steps", words, nullptr, n); }

const VerbWords* find(const std::string& verb) {
    const auto* found = std::find_if(std::begin(verbs), std::end(verbs), [&](const VerbWords& each) { return verb == each.verb; });
    return found == std::end(verbs) ? nullptr : found;
}

constexpr std::size_t fewValues = 3;

QString changedTo(const std::string& name, const std::optional<std::string>& value, const WordStyle& style) {
    return value ? tr("%1 %2").arg(fieldName(name), fieldValue(name, *value, style)) : tr("%1 taken out").arg(fieldName(name));
}

QString lineOf(const std::string& name, const book::StepChange& change, const WordStyle& style) {
    const auto before = change.before.find(name);
    const auto after = change.after.find(name);
    const bool was = before != change.before.end() && before->second;
    const bool is = after != change.after.end() && after->second;
    const QString field = fieldName(name);
    if (was && is) return tr("%1: from %2 to %3").arg(field, fieldValue(name, *before->second, style), fieldValue(name, *after->second, style));
    if (is) return tr("%1: %2").arg(field, fieldValue(name, *after->second, style));
    if (was) return tr("%1: was %2").arg(field, fieldValue(name, *before->second, style));
    return field;
}

bool isTableImport(const std::string& verb) { return verb.starts_with("import ") && !find(verb); }

} // namespace

bool hasVerbName(const std::string& verb) { return find(verb) != nullptr || isTableImport(verb); }

QString verbName(const std::string& verb) {
    const auto* words = find(verb);
    if (isTableImport(verb)) return tr("import a table");
    return words ? tr(words->words) : QString::fromStdString(verb);
}

QString stepName(const book::Step& step, const WordStyle& style) {
    const bool one = step.changes.size() == 1 && step.changes[0].how == book::ChangeHow::Change;
    if (!one || step.changes[0].after.empty() || step.changes[0].after.size() > fewValues) return verbName(step.verb);
    QStringList said;
    for (const auto& [name, value] : step.changes[0].after) said << changedTo(name, value, style);
    return said.join(tr(", "));
}

QStringList stepLines(const book::Step& step, const WordStyle& style, int most) {
    QStringList lines;
    int more = 0;
    for (const auto& change : step.changes)
        for (const auto& [name, value] : change.before.empty() ? change.after : change.before) {
            if (name == "by" || name == "colony") continue;
            if (lines.size() < most) lines << lineOf(name, change, style);
            else ++more;
        }
    if (more > 0) lines << (more == 1 ? tr("and one more") : tr("and %n more", more));
    return lines;
}

} // namespace winterlarder::text
