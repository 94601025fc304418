// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/remarks.h"

#include "advice/locked_in.h"
#include "advice/verdict.h"
#include "stores/bees.h"
#include "stores/cluster.h"
#include "stores/harvest.h"
#include "stores/weighing.h"
#include "winter/seen_brood.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

constexpr double fullLookFromC = 15;   // daily maximum
constexpr double lowBeeBreadKg = 0.5;
constexpr double longColdDays = 30;
constexpr double narrowMarginKg = 4;   // stores within this of the need are to be watched
constexpr double waspsFromC = 13;      // daily maximum at which robbers still fly

// Collects cautions in the order of the work.
class Cautions {
public:
    Cautions(const Reckoning& reckoning, const Advice& advice) : r(reckoning), q(reckoning.question), a(advice) {}

    std::vector<Remark> all() {
        if (q.asOf < SeasonDay{-92}) say("early-look");
        opening();
        if (a.feed) feeding();
        if (a.verdict == Verdict::Harvest) harvest();
        colony();
        winter();
        say("varroa-first");
        say("local-rules");
        return std::move(said);
    }

private:
    void say(std::string id, std::map<std::string, Detail> details = {}) {
        said.push_back({std::move(id), std::move(details)});
    }
    double maximumToday() const { return q.site->curve.normal(q.asOf).value() + r.constants.diurnalHalfRange; }
    bool syrup() const { return a.feed && a.feed->syrup.sugar.value() > 0; }
    bool anySuper() const {
        return std::any_of(q.combs.begin(), q.combs.end(), [](const stores::Comb& comb) { return comb.inSuper; });
    }
    bool frameless() const { return !q.boxes.empty() && q.longHive && q.boxes.front().id.rfind("topbar", 0) == 0; }

    void opening() {
        const bool opens = a.verdict != Verdict::Leave || (a.anotherLook.worthIt && a.anotherLook.which == Look::Open);
        if (!opens) return;
        if (maximumToday() < fullLookFromC) say("opening-cold");
        if (!a.feed && maximumToday() >= waspsFromC) say("robbing-and-wasps");
        say("stings");
        if (q.boxes.size() > 1 || a.verdict == Verdict::Harvest) say("lifting");
        if (frameless()) say("soft-comb");
    }

    void feeding() {
        say("robbing-and-wasps");
        say("feed-inside");
        say("sugar-kind");
        say("unknown-honey");
        say("not-for-people");
        if (syrup()) {
            if (anySuper()) say("no-supers-while-feeding");
            say("hmf-and-acid");
            say("hot-syrup");
            say("drowning");
            if (a.feed->crystallisingGPerKg >= 1) say("crystallising", {{"g", a.feed->crystallisingGPerKg}});
        }
        if (q.longHive) say("long-hive-feeding");
    }

    void harvest() {
        if (q.moisturePercent)
            say("moisture", {{"water", *q.moisturePercent}});
        else
            say("moisture");
        const auto order = stores::harvestOrder(q.combs, q.boxes, q.coveredCombs, stores::openFactor(q.freshlyFilled));
        bool low = q.combs.empty(), check = false;
        for (const auto& comb : order) {
            const auto& taken = a.harvest->combs;
            if (std::find(taken.begin(), taken.end(), comb.position) == taken.end()) continue;
            low = low || comb.lowCapped;
            check = check || comb.checkComb;
        }
        if (low) say("capped-share");
        if (check) say("check-comb");
        say("infants");
        if (std::any_of(q.combs.begin(), q.combs.end(), [](const stores::Comb& comb) { return comb.fed; }) || !q.feeds.empty())
            say("not-for-people");
    }

    void colony() {
        if (a.verdict == Verdict::Unite) say("weak-unite");
        if (!a.gifts.empty()) say("move-combs");
        const bool doubt = q.queenSeen == false && q.eggsSeen != true;
        if (doubt) say("queen-in-doubt");
        brood();
        if (q.beeBread && q.beeBread->value() < lowBeeBreadKg && beforeLayingStops())
            say("pollen-short", {{"pollen", *q.beeBread}});
        if (q.flowStrength > 0) {
            say("flow-not-sure");
            say("setting-stores");
        }
    }

    void brood() {
        const auto& stops = q.season.broodStop;
        if (stops && winter::seenToHaveStopped(winterQuestion(q), r.constants))
            say("laying-stopped", {{"day", q.winter.date(stops->day)}});
        if (!q.brood && q.season.broodRestart && q.lookedOn >= q.season.broodRestart->day) say("brood-not-said");
    }

    bool beforeLayingStops() const {
        return q.season.broodStop && q.asOf < q.season.broodStop->day && q.asOf > q.season.broodStop->day - 45;
    }
    bool beforeForageSoon() const { return q.asOf >= q.season.buildup->day - 30; }

    void winter() {
        reach();
        if (anySuper() && a.verdict != Verdict::Harvest) say("excluder-off");
        const bool coldAhead = q.season.winterClass == climate::WinterClass::Confined;
        if (coldAhead && q.asOf < q.season.buildup->day) say("mouse-guard");
        if (a.lockedInDays && *a.lockedInDays >= longColdDays) {
            say("top-insulation");
            say("condensation");
        }
        const bool inWinter = q.season.syrupRefused && q.asOf >= q.season.syrupRefused->day;
        if (inWinter && a.feed) say("emergency");
        if (r.wish.mean.value() < a.need->value() + narrowMarginKg) say("spring-starvation");
        if (r.amounts.spare.value() > 2 * narrowMarginKg) say("honey-bound");
        say("heft");
        if (inWinter && beforeForageSoon()) say("dead-out");
    }

    void reach() {
        const auto within = stores::clusterReach(q.combs, q.boxes, q.coveredCombs, stores::openFactor(q.freshlyFilled));
        if (!within || !a.lockedInDays || q.season.winterClass == climate::WinterClass::Dearth) return;
        const Mass needed = *a.lockedInDays * coldestUsePerDay(r);
        const bool split = q.longHive && (within->gap || within->bothSides);
        if (within->within < needed || (split && *a.lockedInDays >= longColdDays))
            say("cluster-gap", {{"within", within->within}, {"needed", needed}});
    }

    const Reckoning& r;
    const ColonyQuestion& q;
    const Advice& a;
    std::vector<Remark> said;
};

} // namespace

std::vector<Remark> cautionsOf(const Reckoning& reckoning, const Advice& advice) {
    return Cautions(reckoning, advice).all();
}

} // namespace winterlarder::advice
