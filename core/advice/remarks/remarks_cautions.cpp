// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/remarks/remarks.h"

#include "advice/harvest_rules.h"
#include "advice/health.h"
#include "hive/opening.h"
#include "stores/bees.h"
#include "stores/cluster.h"
#include "stores/harvest.h"
#include "stores/weighing.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

constexpr double gramsInAPercent = 10; // of a kilogram

//! Mean use a day in the coldest days of the normal that are simulated [kg/d]: what a cluster that cannot move needs within reach, times the days
//! it is locked in.
Mass coldestUsePerDay(const AdviceBasis& r) {
    const auto& ensemble = r.ensemble;
    const int length = std::min(static_cast<int>(r.rules().coldestDays), ensemble.days());
    double coldest = 1e9, useG = 0;
    for (int first = 0; first + length <= ensemble.days(); ++first) {
        double warmth = 0, use = 0;
        for (int day = first; day < first + length; ++day) {
            warmth += r.question.site->curve.normal(ensemble.firstDay() + day).value();
            use += ensemble.means(ensemble.firstDay() + day).useG;
        }
        if (warmth >= coldest) continue;
        coldest = warmth;
        useG = use / length;
    }
    return grams(useG);
}

// Collects cautions, the most telling first.
class Cautions {
public:
    Cautions(const AdviceBasis& basis, const Advice& advice) : r(basis), q(basis.question), a(advice) {}

    std::vector<Remark> all() {
        danger();
        mites();
        opening();
        if (a.feed) feeding();
        if (a.harvest) harvest();
        honeySafety();
        colony();
        winter();
        next();
        say("local-rules");
        return std::move(said);
    }

private:
    void say(std::string id, std::map<std::string, Detail> details = {}) {
        said.push_back({std::move(id), std::move(details)});
    }
    double maximumToday() const { return q.site->curve.normal(q.asOf).value() + r.constants.diurnalHalfRange; }
    bool syrup() const { return a.feed && a.feed->syrup.sugar.value() > 0; }
    bool disease() const { return a.decidedBy == DecidedBy::Disease; }
    bool coldSeason() const { return r.phase >= Phase::Winter && q.season.winterClass != climate::WinterClass::Dearth; }
    bool anySuper() const {
        return std::any_of(q.combs.begin(), q.combs.end(), [](const stores::Comb& comb) { return comb.inSuper; });
    }
    bool superOfTheBees() const { return anySuper() && q.answers.supersFor == SupersFor::Bees; }
    bool frameless() const { return !q.boxes.empty() && q.longHive && !hive::hasFrames(q.boxes.front()); }
    std::string half() const { return q.winter.hemisphere() == Hemisphere::South ? "south" : "north"; }

    void danger() {
        if (disease()) say("disease");
        if (a.decidedBy == DecidedBy::NoQueen) say("queen-in-doubt");
        if (a.decidedBy == DecidedBy::Weak)
            say("weak-unite", {{"day", a.unite->by}, {"class", std::string(nothingGoesOnTop(q) ? "long" : "boxes")}});
        const bool urgent = a.decidedBy == DecidedBy::ActNow || a.decidedBy == DecidedBy::NoFoodInReach ||
                            a.decidedBy == DecidedBy::WinterVisit;
        if ((urgent || a.decidedBy == DecidedBy::Heft) && a.feed && a.feed->fondant > Mass(0)) say("emergency");
        if (urgent && q.asOf > r.days.quietFrom) say("no-super-yet");
        reach();
        if (a.needIfStopped) layingStopped();
        const bool weak = r.phase >= Phase::Late && !disease() && a.decidedBy != DecidedBy::Weak && tooWeak(r);
        if (weak) say("weak-too-late");
        if (a.verdict != Verdict::CannotSay && r.phase >= Phase::Late &&
            r.stores() < *a.need + kilograms(r.rules().narrowMargin) && !disease())
            say("spring-starvation", {{"class", springComesAsUsual() ? half() : std::string("any")}});
    }

    //! Brood grows in March and April, in the south in August and September, where spring forage starts after them, and they are still to come.
    bool springComesAsUsual() const {
        const double from = r.rules().springUsualFrom;
        return q.season.forage && q.season.forage->day.w >= from && q.season.forage->day.w <= r.rules().springUsualTo &&
               q.asOf.w < from;
    }

    // Where laying goes on through winter, or should have stopped since the look, there is no day to name.
    void layingStopped() {
        say("laying-stopped", {{"need", *a.needIfStopped}});
        if (const auto& stop = q.season.broodStop; stop && stop->day >= q.asOf)
            said.back().details.insert({"day", r.on(stop->day)});
    }

    void mites() {
        if (disease() || r.phase > Phase::Closing) return;
        const bool tooMany = q.answers.mitesPer100.value_or(0) > r.rules().manyMites;
        if (q.answers.mitesTreated == true) say("varroa-first", {{"class", std::string("treated")}});
        else if (tooMany) say("varroa-first", {{"class", std::string("many")}, {"mites", *q.answers.mitesPer100}});
        else if (q.answers.mitesCounted == true) say("varroa-first", {{"class", std::string("counted")}});
        else if (r.phase == Phase::Summer)
            say("varroa-first", {{"class", std::string(superOfTheBees() ? "summer-bees" : "summer")}});
        else if (r.phase == Phase::Closing) say("varroa-first", {{"class", half()}});
    }

    void opening() {
        if (disease()) return;
        const bool opens = a.harvest || a.unite || (a.anotherLook.worthIt && a.anotherLook.which != LookKind::Weigh) ||
                           (a.feed && !coldSeason());
        if (a.decidedBy == DecidedBy::Contradiction) say("check-scale");
        if (!opens) return;
        if (maximumToday() < hive::fullLookFromC) say("opening-cold");
        if (!a.feed && maximumToday() >= r.rules().waspsFrom && !coldSeason()) say("robbing-and-wasps");
        say("stings");
        if (!nothingGoesOnTop(q) && (q.boxes.size() > 1 || a.harvest)) say("lifting");
        if (frameless()) say("soft-comb");
    }

    void feeding() {
        if (syrup() || (maximumToday() >= r.rules().waspsFrom && !coldSeason())) say("robbing-and-wasps");
        if (q.longHive) say("long-hive-feeding");
        say("sugar-kind");
        say("unknown-honey");
        if (!syrup()) return;
        say("hmf-and-acid");
        say("hot-syrup");
        say("drowning");
        if (a.feed->crystallisingGPerKg >= gramsInAPercent && q.season.winterClass != climate::WinterClass::Dearth)
            say("crystallising", {{"percent", a.feed->crystallisingGPerKg / gramsInAPercent}});
    }

    void harvest() {
        const auto order = stores::harvestOrder(q.combs, q.boxes, q.coveredCombs, stores::openFactor(q.freshlyFilled));
        bool low = q.combs.empty(), check = false;
        for (const auto& comb : order) {
            const auto& taken = a.harvest->combs;
            if (std::find(taken.begin(), taken.end(), comb.position) == taken.end()) continue;
            low = low || comb.lowCapped;
            check = check || comb.checkComb;
        }
        if (check) say("check-comb");
        if (low) say("capped-share");
        if (q.moisturePercent) say("moisture", {{"water", *q.moisturePercent}});
        else say("moisture");
        say("infants");
    }

    void honeySafety() {
        if (syrup() && anySuper() && !superOfTheBees()) say("no-supers-while-feeding");
        if (a.feed || q.treated || wasFed(q, r.days)) say("not-for-people");
    }

    void colony() {
        if (!a.gifts.empty()) say("move-combs");
        if (q.queenSeen == false && q.eggsSeen != true && r.phase <= Phase::Closing) say("queen-in-doubt");
        if (!q.brood && q.season.broodRestart && q.lookedOn >= q.season.broodRestart->day && r.phase == Phase::Spring)
            say("brood-not-said");
        if (q.beeBread && q.beeBread->value() < r.rules().beeBreadLow && beforeLayingStops())
            say("pollen-short", {{"pollen", *q.beeBread}});
        if (q.flowStrength > 0 && r.phase <= Phase::Closing) {
            say("flow-not-sure");
            say("setting-stores");
        }
        if (r.phase == Phase::Closing && q.asOf.w < r.rules().earlyLookBefore && nectarComesIn()) say("early-look");
    }

    bool nectarComesIn() const { return q.season.lastIncome && q.asOf <= q.season.lastIncome->day; }

    bool beforeLayingStops() const {
        return q.season.broodStop && q.asOf < q.season.broodStop->day &&
               q.season.broodStop->day - q.asOf < r.rules().beeBreadDays;
    }

    void winter() {
        const bool autumn = r.phase == Phase::Closing || r.phase == Phase::Late;
        if (anySuper() && autumn && a.verdict != Verdict::Harvest) say("excluder-off");
        if (autumn && q.season.winterClass == climate::WinterClass::Confined) say("mouse-guard");
        if (autumn && r.lockedInDays >= r.rules().longColdDays) {
            say("top-insulation");
            say("condensation");
        }
        if (r.phase == Phase::Spring && r.target.toSpare.value() > 2 * r.rules().narrowMargin) say("honey-bound");
        if (r.phase >= Phase::Closing) say("heft");
        if (r.phase == Phase::Spring) say("dead-out");
    }

    void reach() {
        const auto within = stores::clusterReach(q.combs, q.boxes, q.coveredCombs, stores::openFactor(q.freshlyFilled));
        const bool ahead = r.phase == Phase::Closing || r.phase == Phase::Late || r.phase == Phase::Winter;
        if (!within || !ahead || q.season.winterClass == climate::WinterClass::Dearth || disease()) return;
        const double coldDays =
            std::min<double>(r.lockedInDays, std::max(0, r.days.winter - q.asOf)); // none after build-up
        const Mass needed = coldDays * coldestUsePerDay(r);
        const Mass fed =
            a.feed && r.phase == Phase::Closing ? a.feed->stores : kilograms(0); // bees store syrup round the nest
        const bool split = q.longHive && (within->gap || within->bothSides) &&
                           r.lockedInDays >= r.rules().longColdDays && r.phase != Phase::Winter;
        const bool isShort = within->within + fed < needed;
        if (!isShort && !split) return;
        const char* how = split ? "split" : r.phase == Phase::Winter ? "winter" : "autumn";
        say("cluster-gap", {{"within", within->within}, {"needed", needed}, {"class", std::string(how)}});
    }

    void next() {
        if (!a.nextLook || a.nextLook->what == NextLookAt::Inspector) return;
        const char* what = a.nextLook->what == NextLookAt::CountMites   ? "mites"
                           : a.nextLook->what == NextLookAt::CheckFeed  ? "feed"
                           : a.nextLook->what == NextLookAt::QueenCells ? "queen"
                                                                        : "weigh";
        say("next-look", {{"day", a.nextLook->date}, {"class", std::string(what)}});
    }

    const AdviceBasis& r;
    const ColonyQuestion& q;
    const Advice& a;
    std::vector<Remark> said;
};

} // namespace

std::vector<Remark> cautionsOf(const AdviceBasis& basis, const Advice& advice) { return Cautions(basis, advice).all(); }

} // namespace winterlarder::advice
