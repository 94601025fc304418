// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/seen_words.h"

#include "text/choice_words.h"
#include "text/contexts.h"

namespace winterlarder::text {

QString seenKind(tracking::SeenKind kind, const WordStyle& style) {
    using tracking::SeenKind;
    switch (kind) {
    case SeenKind::Scale: return say::Following::tr("scale");
    case SeenKind::TwoSidedLift: return say::Following::tr("lifted on two sides");
    case SeenKind::OneSidedLift: return say::Following::tr("lifted on one side");
    case SeenKind::Heft: return say::Following::tr("hefted");
    case SeenKind::Combs: return worded(say::Following::tr("%{combs} looked at"), style);
    case SeenKind::Bees: return say::Following::tr("bees counted");
    case SeenKind::Cluster: return say::Following::tr("cluster seen");
    case SeenKind::Flying: return say::Following::tr("bees flying");
    case SeenKind::Glimpse: return worded(say::Following::tr("%{comb} glimpsed"), style);
    case SeenKind::Dead: break;
    }
    return say::Following::tr("dead");
}

namespace {

// As it is read: two sides lifted show a little less than the weight.
double readShare(const tracking::Observation& seen) {
    const auto* weight = std::get_if<tracking::WeightSeen>(&seen.what);
    return weight && weight->kind == stores::WeighingKind::TwoSidedLift ? stores::twoSidesRead : 1;
}

QString heftExpected(const tracking::HeftSeen& heft, const Spread<double>& kg, const DecisionConstants& rules) {
    const double wanted = heft.standsFor.value() / stores::heftShare(*heft.word, rules);
    const auto word = [&](double stores) {
        return choice(stores::heftNearest(wanted > 0 ? stores / wanted : 0, rules));
    };
    const QString low = word(kg.low), typical = word(kg.typical), high = word(kg.high);
    if (low == high) return typical;
    return say::Following::tr("%1 (%2 to %3)", "hefts").arg(typical, low, high);
}

} // namespace

QString seenRead(const tracking::Observation& seen, const WordStyle& style) {
    if (const auto* weight = std::get_if<tracking::WeightSeen>(&seen.what)) return mass(weight->reading, style);
    if (const auto* stores = std::get_if<tracking::StoresSeen>(&seen.what)) return mass(stores->typical, style);
    const auto* heft = std::get_if<tracking::HeftSeen>(&seen.what);
    return heft && heft->word ? choice(*heft->word) : QString();
}

QString seenExpected(const tracking::FollowQuestion& question, const tracking::Observation& seen,
                     const tracking::Judged& judged, const WordStyle& style) {
    if (!tracking::isWeighed(seen)) return {};
    const auto* heft = std::get_if<tracking::HeftSeen>(&seen.what);
    if (heft && heft->word && heft->standsFor > Mass(0))
        return heftExpected(*heft, judged.expected, question.decisions);
    const Mass low = kilograms(judged.expected.low * readShare(seen)),
               high = kilograms(judged.expected.high * readShare(seen));
    if (high <= Mass(0)) return say::Following::tr("nothing");
    return low > Mass(0) ? say::Following::tr("%1 to %2", "masses").arg(mass(low, style), mass(high, style))
                         : say::Following::tr("nothing to %1").arg(mass(high, style));
}

} // namespace winterlarder::text
