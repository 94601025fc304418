// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/grounds/grounds_parts.h"

#include "text/contexts.h"
#include "text/remarks.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::text {

void GroundsWriter::remarks(const std::vector<Remark>& reasons, std::initializer_list<const char*> ids) {
    for (const auto& remark : reasons) {
        if (std::none_of(ids.begin(), ids.end(), [&](const char* id) { return remark.id == id; })) continue;
        line(sentence(remark, style_), reference_.sourcesOf(remark));
    }
}

void GroundsWriter::bracketsLine() {
    line(say::Grounds::tr(
        "In 80 of 100 cases the truth lies between the two figures in brackets, in 10 below, in 10 above."));
}

void GroundsWriter::otherWintersLine(Share share) {
    line(say::Grounds::tr("Were other winters drawn, it would differ by some %1 of 100.")
             .arg(number(std::max(0.1, 100 * share.standardError), 1, style_)));
}

void GroundsWriter::forageRuleLine() {
    const auto& c = reference_.constants;
    line(
        say::Grounds::tr(
            "The rule: the first day from which the air's daily mean of usual years stays above %1 and the day is longer than %2 hours.")
            .arg(temperatureAt(c.forageTemperature, style_), number(c.forageDayLength, 1, style_)),
        {"regional-calendars", "forsythe-1995"});
}

void GroundsWriter::fondantLine() {
    line(say::Grounds::tr("A kilogram of fondant becomes %1 kg of stores; kept low on purpose.")
             .arg(number(feeding::storesPerKgFondant, 2, style_)),
         {"judgement"});
}

std::optional<Grounds> GroundsWriter::ofReserve(Mass reserve, double shortRisk) {
    line(say::Grounds::tr(
        "The reserve is yours to set, in the yard's Place: what you wish to be left at the worst moment before spring forage starts."));
    line(say::Grounds::tr("You accept that less is left in %1 of 100 winters.")
             .arg(count(std::round(100 * shortRisk), style_)));
    return under(say::Grounds::tr("Reserve: %1").arg(amount(reserve, style_)));
}

std::vector<std::string> sourcesOfEvidence(stores::EvidenceKind kind) {
    using enum stores::EvidenceKind;
    if (kind == Combs) return {"baudoux", "demuth-503", "imdorf-liebefeld"};
    if (kind == QuickCount) return {"phillips-bees", "judgement"};
    if (kind == Heft) return {"b-thenet", "judgement"};
    return {"judgement"};
}

QString temperatureAt(double degreesC, const WordStyle& style) {
    return QString::fromStdString(format(celsius(degreesC), style.numbers, 1));
}

QString smallMass(double gram, const WordStyle& style) { return say::Grounds::tr("%1 g").arg(number(gram, 2, style)); }

} // namespace winterlarder::text
