// SPDX-License-Identifier: GPL-3.0-or-later
// Where the figures for feeding come from: sugar, fondant, the last day for syrup.
#include "feeding/syrup.h"
#include "numerics/normal_law.h"
#include "text/contexts.h"
#include "text/grounds/autumn_writer.h"

#include <cmath>

namespace winterlarder::text {

// What is missing is not just the need less the stores.
void AutumnWriter::missing() {
    reasons({"short-of-stores"});
    if (a_.estimate && a_.need)
        line(
            say::Grounds::tr(
                "That is the target less what will be there when winter begins: about %1 now, %2 wanted from today on.")
                .arg(amount(a_.estimate->spread, style_), amount(*a_.need, style_)));
    reasons({"move-combs-first"});
}

std::optional<Grounds> AutumnWriter::sugar() {
    if (!a_.feed || a_.feed->syrup.sugar <= Mass(0)) return std::nullopt;
    const auto& syrup = a_.feed->syrup;
    missing();
    line(
        say::Grounds::tr(
            "A kilogram of white sugar fed as %1 becomes %2 kg of ripe stores: the water goes down to 18 parts of 100, and driving it off costs the bees food.")
            .arg(QString::fromStdString(a_.feed->ratio.printed),
                 number(feeding::storesPerKgSugar(syrup.massPercent / 100), 2, style_)),
        {"curth-1981"});
    line(say::Grounds::tr("%1 of sugar in %2 of water make %3 of syrup, which become %4 of stores.")
             .arg(amount(syrup.sugar, style_), volume(syrup.water, style_), volume(syrup.volume, style_),
                  amount(syrup.stores, style_)),
         {"crc-sucrose"});
    reasons({"ratio-thin", "ratio-thick", "room-full", "too-slow", "after-advised", "small-portions"});
    return under(say::Grounds::tr("White sugar to feed: %1").arg(amount(syrup.sugar, style_)));
}

std::optional<Grounds> AutumnWriter::fondant() {
    if (!a_.feed || a_.feed->fondant <= Mass(0)) return std::nullopt;
    missing();
    reasons({"act-now", "visit-due", "too-slow"});
    line(say::Grounds::tr("Fondant is for what can no longer be had as syrup."));
    fondantLine();
    return under(say::Grounds::tr("Fondant to feed: %1").arg(amount(a_.feed->fondant, style_)));
}

std::optional<Grounds> AutumnWriter::lastDay() {
    if (!a_.feed || !a_.feed->lastDay) return std::nullopt;
    const auto& deadline = a_.season.syrupDeadline;
    if (deadline && deadline->origin == climate::DateOrigin::Case)
        line(say::Grounds::tr("The day was given in the yard's Place and not derived from the climate."));
    else
        line(
            say::Grounds::tr(
                "The rule: the first day on which the air's daily mean of usual years is below %1. Later syrup is no longer taken and ripened for certain.")
                .arg(temperatureAt(reference_.constants.syrupTemperature, style_)),
            {"moeller-1977", "common-practice"});
    reasons({"station-used", "own-climate", "height-shift", "after-advised"});
    if (deadline && deadline->sdDays > 0 && !deadline->exact)
        line(say::Grounds::tr("A warm or a cold autumn moves it by some %1 days.")
                 .arg(count(std::round(tenthPercentile * deadline->sdDays), style_)),
             {"winter-model"});
    return under(say::Grounds::tr("Last day for syrup: %1").arg(day(*a_.feed->lastDay)));
}

} // namespace winterlarder::text
