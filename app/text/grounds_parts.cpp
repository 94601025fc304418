// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/grounds_parts.h"

#include "text/contexts.h"
#include "text/remarks.h"

namespace winterlarder::text {

GroundsLine lineOf(const Remark& remark, const ReferenceData& reference, const WordStyle& style) {
    const auto* rule = reference.caution(remark.id);
    return {sentence(remark, style), rule ? rule->sources : std::vector<std::string>{}};
}

std::vector<std::string> sourcesOfEvidence(const std::string& kind) {
    if (kind == "combs") return {"baudoux", "demuth-503", "imdorf-liebefeld"};
    if (kind == "quick count") return {"phillips-bees", "judgement"};
    if (kind == "heft") return {"b-thenet", "judgement"};
    return {"judgement"};
}

QString temperatureAt(double degreesC, const WordStyle& style) {
    return QString::fromStdString(format(celsius(degreesC), style.numbers, 1));
}

QString smallMass(double gram, const WordStyle& style) {
    return winterlarder::say::Grounds::tr("%1 g").arg(number(gram, 2, style));
}

} // namespace winterlarder::text
