// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/words.h"

#include "text/ask_words.h"
#include "text/contexts.h"
#include "text/words.h"

namespace winterlarder::desk::words {

namespace {

using text::AskedNumber;

QString cannotSay(const advice::Advice& advice, const text::WordStyle& style) {
    if (advice.refusals.empty()) return say::WindowWords::tr("It cannot be said yet.");
    switch (advice.refusals.front()) {
    case advice::RefusalKind::FarFromStations:
        return say::WindowWords::tr("It cannot be said: no weather station is near enough to speak for this place.");
    case advice::RefusalKind::NoColony: return say::WindowWords::tr("There are no bees to winter.");
    case advice::RefusalKind::BeesUnknown:
        return worded(say::WindowWords::tr("To answer, first: how many %{combs} do the bees cover?"), style);
    case advice::RefusalKind::StoresUnknown:
        return worded(say::WindowWords::tr("To answer, first: look at the %{combs}, or heft or weigh the hive."),
                      style);
    case advice::RefusalKind::OutOfSeason:
        return say::WindowWords::tr("It is too early: winter stores are judged from August on.");
    case advice::RefusalKind::SeasonNotDerivable:
        return say::WindowWords::tr(
            "It cannot be said: this place's season cannot be told from its climate. Give the dates.");
    case advice::RefusalKind::AfterForage:
        return say::WindowWords::tr("The bees have forage again: this winter is over.");
    }
    return {};
}

// What goes to neighbours is said before what is left to take.
QString givenLine(const AnsweredColony& colony, const text::WordStyle& style, text::NumberForm form) {
    QStringList lines;
    for (const auto& gift : colony.answer.advice.gifts)
        if (gift.from == colony.question.colony)
            lines << worded(say::WindowWords::tr("First %2, who is short, is to have %1 of it in %{combs}."), style)
                         .arg(form(AskedNumber::Given, amount(gift.honey)), QString::fromStdString(gift.to));
    return lines.join(QLatin1Char(' '));
}

bool said(const advice::Advice& advice) {
    return advice.verdict != advice::Verdict::CannotSay && ((advice.estimate && advice.need) || advice.heft);
}

} // namespace

QString answerSentence(const AnsweredColony& colony, text::NumberForm form) {
    const auto& advice = colony.answer.advice;
    const auto style = styleOf(colony.question);
    return said(advice) ? text::headline(advice, style, form) : cannotSay(advice, style);
}

QString targetLine(const AnsweredColony& colony, text::NumberForm form) {
    return said(colony.answer.advice) ? text::targetSentence(colony.answer.advice, styleOf(colony.question), form)
                                      : QString();
}

QString riskLine(const AnsweredColony& colony, text::NumberForm form) {
    const auto style = styleOf(colony.question);
    const QString given = givenLine(colony, style, form), risk = text::riskSentence(colony.answer.advice, style, form);
    return given.isEmpty() ? risk : risk + QLatin1Char(' ') + given;
}

QString lookLine(const AnsweredColony& colony, text::NumberForm form) {
    const auto& advice = colony.answer.advice;
    if (!said(advice)) return {};
    const auto style = styleOf(colony.question);
    const QString there = text::thereSentence(advice, style, form), look = text::lookSentence(advice, style, form);
    return there + QLatin1Char(' ') + look;
}

} // namespace winterlarder::desk::words
