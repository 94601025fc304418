// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/step_words.h"

#include "text/contexts.h"
#include "text/field_words.h"
#include "text/story.h"

#include <algorithm>
#include <iterator>

namespace winterlarder::text {

namespace {

struct VerbWords {
    const char* verb;
    const char* words;
};

// What only the window does; all else is in text/story.h.
constexpr VerbWords verbsWithValues[] = {
    {"open case files", QT_TRANSLATE_NOOP("Steps", "case files opened")},
    {"begin the yard", QT_TRANSLATE_NOOP("Steps", "yard begun")},
};

const VerbWords* wordsOfVerb(const std::string& verb) {
    const auto* found = std::find_if(std::begin(verbsWithValues), std::end(verbsWithValues),
                                     [&](const VerbWords& each) { return verb == each.verb; });
    return found == std::end(verbsWithValues) ? nullptr : found;
}

constexpr std::size_t fewValues = 3;

QString changedTo(const std::string& name, const std::optional<std::string>& value, const WordStyle& style) {
    return value ? say::Steps::tr("%1 %2").arg(fieldName(name, style), fieldValue(name, *value, style))
                 : say::Steps::tr("%1 taken out").arg(fieldName(name, style));
}

QString lineOf(const std::string& name, const book::StepChange& change, const WordStyle& style) {
    const auto before = change.before.find(name);
    const auto after = change.after.find(name);
    const bool was = before != change.before.end() && before->second;
    const bool is = after != change.after.end() && after->second;
    const QString field = fieldName(name, style);
    if (was && is)
        return say::Steps::tr("%1: from %2 to %3")
            .arg(field, fieldValue(name, *before->second, style), fieldValue(name, *after->second, style));
    if (is) return say::Steps::tr("%1: %2").arg(field, fieldValue(name, *after->second, style));
    if (was) return say::Steps::tr("%1: was %2").arg(field, fieldValue(name, *before->second, style));
    return field;
}

} // namespace

QString verbName(const std::string& verb, const WordStyle& style) {
    const auto* words = wordsOfVerb(verb);
    return words ? say::Steps::tr(words->words) : verbTitle(verb, style);
}

QString stepName(const book::Step& step, const WordStyle& style) {
    const bool one = step.changes.size() == 1 && step.changes[0].how == book::ChangeHow::Change;
    if (!one || step.changes[0].after.empty() || step.changes[0].after.size() > fewValues)
        return verbName(step.verb, style);
    QStringList said;
    for (const auto& [name, value] : step.changes[0].after) said << changedTo(name, value, style);
    return said.join(say::Steps::tr(", "));
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
    if (more > 0) lines << (more == 1 ? say::Steps::tr("and one more") : say::Steps::tr("and %n more", nullptr, more));
    return lines;
}

} // namespace winterlarder::text
