// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/looking/another_look.h"

#include "hive/opening.h"
#include "numerics/normal_law.h"
#include "stores/bees.h"
#include "stores/weighing.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace winterlarder::advice {

namespace {

double bandOf(double sd) { return 2 * tenthPercentile * sd; }

bool hasEvidence(const AdviceBasis& r, std::initializer_list<stores::EvidenceKind> kinds) {
    return std::any_of(r.estimate.shares.begin(), r.estimate.shares.end(), [&](const stores::EvidenceShare& share) {
        return std::find(kinds.begin(), kinds.end(), share.evidence.kind) != kinds.end();
    });
}

stores::Tare tareOf(const AdviceBasis& r) { return {r.question.tare, r.question.tareSd}; }

// Error of stores told by lifting both sides, or by counting combs, where that was not done already.
std::optional<double> ownSd(const AdviceBasis& r, LookKind look) {
    if (look == LookKind::Weigh && !hasEvidence(r, {stores::EvidenceKind::Scale, stores::EvidenceKind::TwoSidedLift}))
        return std::hypot(stores::scaleSd(tareOf(r)).value(), r.constants.liftTwoSidesSd);
    if (look == LookKind::CountCombs &&
        !hasEvidence(r, {stores::EvidenceKind::Combs, stores::EvidenceKind::QuickCount}))
        return std::max(r.rules().countSdLeast, r.constants.quickCountSd * r.estimate.mean.value());
    return std::nullopt;
}

bool mayOpen(const AdviceBasis& r) {
    return r.question.site->curve.normal(r.question.asOf).value() + r.constants.diurnalHalfRange >= hive::momentFromC;
}

// A hive weighed once more errs by the tare it was lifted with before.
double sdAfter(const AdviceBasis& r, LookKind look, double own) {
    const double now = r.estimate.sd.value(), ofTare = look == LookKind::Weigh ? stores::shareOfTare(r.estimate) : 0;
    const double lasting = stores::splitTareSd(tareOf(r), r.constants).lasting.value();
    return now > 0 ? stores::sdTogether(now, own, ofTare * lasting * lasting) : 0;
}

std::optional<AnotherLook> lookForStores(const AdviceBasis& r) {
    const double now = r.estimate.sd.value();
    for (const LookKind look : {LookKind::Weigh, LookKind::CountCombs}) {
        const auto own = ownSd(r, look);
        if (!own || (look == LookKind::CountCombs && !mayOpen(r))) continue;
        const double after = sdAfter(r, look, *own);
        if (bandOf(now) - bandOf(after) >= r.rules().worthLookingGain)
            return AnotherLook{true, look, LookAbout::Stores, bandOf(now), bandOf(after)};
    }
    return std::nullopt;
}

std::optional<AnotherLook> lookForBees(const AdviceBasis& r) {
    const double countedLogSd = stores::defaultLogSd(stores::BeesSeen::Seams, r.constants);
    const double perLog = r.target.perLogBees, now = perLog * r.question.beesLogSd;
    const double gain = bandOf(now) - bandOf(perLog * countedLogSd);
    if (bandOf(now) <= r.rules().worthLookingBand || gain < r.rules().worthLookingGain || !mayOpen(r))
        return std::nullopt;
    return AnotherLook{true, LookKind::CountSeams, LookAbout::Bees, bandOf(now), bandOf(now) - gain};
}

// Whichever end of the band is true, nothing is fed or taken at this time of the year; bees to be united are not fed for winter.
bool nothingHangsOnIt(const AdviceBasis& r, const Decided& decided) {
    if (decided.by == DecidedBy::Weak || decided.by == DecidedBy::NoQueen) return true;
    return r.phase >= Phase::Late && r.target.missing.high <= r.target.deadBand;
}

bool mustWeigh(const AdviceBasis& r, const Decided& decided) {
    return decided.by == DecidedBy::Contradiction || decided.by == DecidedBy::Heft || !r.question.setAside.empty();
}

bool onlySetAside(const AdviceBasis& r, const char* id) {
    const auto& aside = r.question.setAside;
    return !aside.empty() &&
           std::all_of(aside.begin(), aside.end(), [id](const Remark& each) { return each.id == id; });
}

} // namespace

AnotherLook anotherLook(const AdviceBasis& r, const Decided& decided) {
    if (decided.by == DecidedBy::Disease) return {};
    // Brood is counted again, and a hive that is another one is looked at; for anything else that was set aside the scale tells what is there.
    if (onlySetAside(r, "doubt-brood")) return {true, LookKind::Open, LookAbout::Bees, 0, 0};
    if (onlySetAside(r, "doubt-other-hive")) return {true, LookKind::Open, LookAbout::Stores, 0, 0};
    if (mustWeigh(r, decided)) {
        auto weigh = lookForStores(r);
        return weigh && weigh->which == LookKind::Weigh
                   ? *weigh
                   : AnotherLook{true, LookKind::Weigh, LookAbout::Stores, bandOf(r.estimate.sd.value()), 0};
    }
    if (nothingHangsOnIt(r, decided)) return {};
    const double band = (r.target.missing.high - r.target.missing.low).value();
    if (band <= r.rules().worthLookingBand) return {};
    if (const auto stores = lookForStores(r); stores && bandOf(r.estimate.sd.value()) > r.rules().worthLookingBand)
        return *stores;
    return lookForBees(r).value_or(AnotherLook{});
}

} // namespace winterlarder::advice
