// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/kind_words.h"

#include <QCoreApplication>
#include <array>

namespace winterlarder::text {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Kinds", text); }

constexpr std::array<const char*, book::kindCount> plurals{
    QT_TRANSLATE_NOOP("Kinds", "yards"),
    QT_TRANSLATE_NOOP("Kinds", "colonies"),
    QT_TRANSLATE_NOOP("Kinds", "moves"),
    QT_TRANSLATE_NOOP("Kinds", "ends of colonies"),
    QT_TRANSLATE_NOOP("Kinds", "changes of hive"),
    QT_TRANSLATE_NOOP("Kinds", "looks"),
    QT_TRANSLATE_NOOP("Kinds", "weighings"),
    QT_TRANSLATE_NOOP("Kinds", "feeds"),
    QT_TRANSLATE_NOOP("Kinds", "harvests"),
    QT_TRANSLATE_NOOP("Kinds", "treatments"),
    QT_TRANSLATE_NOOP("Kinds", "works on hives"),
    QT_TRANSLATE_NOOP("Kinds", "advice acted on"),
    QT_TRANSLATE_NOOP("Kinds", "planned visits"),
    QT_TRANSLATE_NOOP("Kinds", "outcomes of winters"),
    QT_TRANSLATE_NOOP("Kinds", "winter sightings"),
    QT_TRANSLATE_NOOP("Kinds", "logs of temperatures"),
};

} // namespace

QString kindPlural(book::Kind kind) { return tr(plurals.at(static_cast<std::size_t>(kind))); }

QString stepState(book::StepState state) {
    switch (state) {
    case book::StepState::Done: return tr("done");
    case book::StepState::Undone: return tr("undone");
    case book::StepState::Abandoned: return tr("undone for good");
    }
    return {};
}

std::string_view wordOf(book::StepState state) {
    constexpr std::string_view words[] = {"done", "undone", "abandoned"};
    return words[static_cast<std::size_t>(state)];
}

std::string_view wordOf(book::ChangeHow how) {
    constexpr std::string_view words[] = {"add", "change", "remove"};
    return words[static_cast<std::size_t>(how)];
}

} // namespace winterlarder::text
