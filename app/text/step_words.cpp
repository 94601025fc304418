// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/step_words.h"

#include "text/field_words.h"
#include "text/story.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

namespace winterlarder::text {

namespace {

struct VerbWords {
    const char* verb;
    const char* words;
};

// What only the window does; all else is in text/story.h.
constexpr VerbWords verbs[] = {
    {"open case files", QT_TRANSLATE_NOOP("Steps", "case files opened")},
    {"begin the yard", QT_TRANSLATE_NOOP("Steps", "yard begun")},
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

} // namespace

QString verbName(const std::string& verb) {
    const auto* words = find(verb);
    return words ? tr(words->words) : verbTitle(verb);
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
