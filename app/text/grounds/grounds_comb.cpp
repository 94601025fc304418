// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/contexts.h"
#include "text/grounds/grounds_parts.h"

#include <cmath>

namespace winterlarder::text {

namespace {

QString lengthSaid(Length length, const WordStyle& style) {
    return QString::fromStdString(
        format(length, style.numbers, lengthUnit(style.numbers.system) == LengthUnit::Inch ? 2 : 0));
}

QString measures(const hive::CombFormat& comb, const WordStyle& style) {
    const auto shown = [&](Length length) { return lengthSaid(length, style); };
    const auto& outline = comb.outline;
    if (outline.bottom == outline.top)
        return say::Grounds::tr("%1 wide and %2 high").arg(shown(outline.top), shown(outline.height));
    return say::Grounds::tr("%1 wide at the bar, %2 below, and %3 high")
        .arg(shown(outline.top), shown(outline.bottom), shown(outline.height));
}

QString hundred(double share, const WordStyle& style) { return number(100 * share, 0, style); }

QString howSeen(const stores::Comb& comb) {
    if (comb.throughWindow) return say::Grounds::tr("seen through a window");
    if (comb.facesSeen == 1)
        return comb.measured ? say::Grounds::tr("one face traced on a photograph") : say::Grounds::tr("one face seen");
    return comb.measured ? say::Grounds::tr("both faces traced on a photograph") : say::Grounds::tr("both faces seen");
}

} // namespace

Grounds groundsOfComb(const QString& name, const QString& holds, const stores::Comb& comb, double openFactor,
                      const stores::CombSpreads& spreads, const WordStyle& style) {
    Grounds grounds{say::Grounds::tr("%1: %2").arg(name, holds), {}};
    const auto line = [&](const QString& said, std::vector<std::string> sources = {}) {
        grounds.lines.push_back({said, std::move(sources)});
    };
    const Mass full = stores::capacityOf(comb);
    const QString spacing = lengthSaid(comb.format.pitch, style);
    line(
        say::Grounds::tr(
            "The comb is %1, built to %2 of 100 parts, %3 from its neighbours' middle. Sealed from edge to edge on both faces it would hold %4: honey between the cell bottoms "
            "and the cappings, less the wax.")
            .arg(measures(comb.format, style), hundred(comb.built, style), spacing, mass(full, style)),
        {"demuth-503", "baudoux"});
    if (!comb.lookedAt()) {
        line(
            say::Grounds::tr(
                "It was not looked at and is taken as the mean of the combs that were; how far that may be off is known only roughly."),
            {"judgement"});
        return grounds;
    }
    line(say::Grounds::tr("Capped are %1 of 100 parts: %2.")
             .arg(hundred(comb.capped, style), mass(full * comb.capped, style)));
    if (comb.open > 0)
        line(
            say::Grounds::tr(
                "Open nectar is on %1 of 100 parts. It is thinner and less deep than sealed honey and counts as %2 of it: %3.")
                .arg(hundred(comb.open, style), number(openFactor, 2, style),
                     mass(full * comb.open * openFactor, style)),
            {"judgement"});
    line(say::Grounds::tr(
             "%1: one standard deviation is %2 of 100 parts, from the judged area and from how deep cells are filled.")
             .arg(howSeen(comb), number(100 * stores::relativeSdOf(comb, spreads), 1, style)),
         {"imdorf-liebefeld", "judgement"});
    return grounds;
}

} // namespace winterlarder::text
