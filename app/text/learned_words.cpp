// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/learned_words.h"

#include "text/contexts.h"
#include "text/words.h"

#include <cmath>

namespace winterlarder::text {

namespace {

struct FactorWords {
    const char *more, *less, *same;
};

QString factorLine(const FactorWords& words, const learning::Lasting& lasting, const WordStyle& style) {
    const double percent = std::round(100 * (lasting.median() - 1));
    const QString doubt = number(100 * lasting.logSd, 0, style);
    if (percent == 0) return say::Learned::tr(words.same).arg(doubt);
    return say::Learned::tr(percent > 0 ? words.more : words.less).arg(number(std::abs(percent), 0, style), doubt);
}

} // namespace

QString nothingLearned() {
    return say::Learned::tr(
        "Nothing has been learned yet. A winter counts once it is over: what was weighed and how it went is used from July on (January in the south).");
}

QString learnedHeading(int winters) {
    return winters == 1 ? say::Learned::tr("Learned from one winter of a colony")
                        : say::Learned::tr("Learned from %n winters of colonies", nullptr, winters);
}

QStringList learnedLines(const learning::LastingPair& keeper, const WordStyle& style) {
    return {
        factorLine({QT_TRANSLATE_NOOP("Learned", "They eat %1 % more than the model says (give or take %2 %)."),
                    QT_TRANSLATE_NOOP("Learned", "They eat %1 % less than the model says (give or take %2 %)."),
                    QT_TRANSLATE_NOOP("Learned", "They eat as the model says (give or take %1 %).")},
                   keeper.use, style),
        factorLine(
            {QT_TRANSLATE_NOOP("Learned", "They lose bees %1 % faster than the model says (give or take %2 %)."),
             QT_TRANSLATE_NOOP("Learned", "They lose bees %1 % more slowly than the model says (give or take %2 %)."),
             QT_TRANSLATE_NOOP("Learned", "They lose bees as the model says (give or take %1 %).")},
            keeper.death, style)};
}

QString learnedOfColonies() {
    return say::Learned::tr(
        "So much holds of all the bees of this keeper. Each colony differs from them by what its own winters and its yard's told; all of it together, times what "
        "the model says, is what its next answer counts with:");
}

QString forageShiftLine(const learning::ForageShift& shift, const WordStyle& style) {
    const QString days = number(std::abs(shift.meanDays), 1, style), sd = number(shift.sdDays, 1, style);
    const char* later = QT_TRANSLATE_N_NOOP(
        "Learned", "Spring forage starts %1 days later than the climate says (give or take %2; %n springs).");
    const char* earlier = QT_TRANSLATE_N_NOOP(
        "Learned", "Spring forage starts %1 days earlier than the climate says (give or take %2; %n springs).");
    const char* laterOnce = QT_TRANSLATE_NOOP(
        "Learned", "Spring forage starts %1 days later than the climate says (give or take %2; one spring).");
    const char* earlierOnce = QT_TRANSLATE_NOOP(
        "Learned", "Spring forage starts %1 days earlier than the climate says (give or take %2; one spring).");
    const bool once = shift.years == 1;
    return say::Learned::tr(shift.meanDays >= 0 ? (once ? laterOnce : later) : (once ? earlierOnce : earlier), nullptr,
                            shift.years)
        .arg(days, sd);
}

QString learnedNothingFrom(const std::string& colony, int autumn) {
    return say::Learned::tr("the winter of %1 of %2: its records fit no winter, so nothing was learned from it")
        .arg(QString::number(autumn), QString::fromStdString(colony));
}

constexpr int enoughToJudge = 5; // judgement

QString scoreSentence(const learning::ScoreSummary& summary, const WordStyle& style) {
    const QString inside = count(summary.inside * summary.forecasts, style);
    const QString own = mass(kilograms(summary.score), style), handbook = mass(kilograms(summary.handbookScore), style);
    const QString said =
        summary.forecasts == 1
            ? say::Learned::tr(
                  "One forecast can be compared with what happened: %1 lay within its band of nine in ten. Its score is %2, that of the region's "
                  "handbook figure %3 (how far off, smaller is better).")
            : say::Learned::tr(
                  "%n forecasts can be compared with what happened: %1 lay within their bands of nine in ten. Their mean score is %2, that of the "
                  "region's handbook figure %3 (how far off, smaller is better).",
                  nullptr, summary.forecasts);
    const QString told = said.arg(inside, own, handbook);
    return summary.forecasts >= enoughToJudge
               ? told
               : told + QLatin1Char(' ') + say::Learned::tr("That is too few to judge by: it takes five or more.");
}

} // namespace winterlarder::text
