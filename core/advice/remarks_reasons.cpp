// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/remarks.h"

#include "advice/verdict.h"
#include "stores/bees.h"
#include "stores/harvest.h"

#include <algorithm>

namespace winterlarder::advice {

std::string_view idOf(RefusalKind kind) {
    switch (kind) {
    case RefusalKind::FarFromStations: return "far-from-stations";
    case RefusalKind::NoColony: return "no-colony";
    case RefusalKind::BeesUnknown: return "bees-unknown";
    case RefusalKind::StoresUnknown: return "stores-unknown";
    case RefusalKind::OutOfSeason: return "out-of-season";
    case RefusalKind::SeasonNotDerivable: return "season-not-derivable";
    case RefusalKind::AfterForage: return "after-forage";
    }
    return "";
}

std::vector<Remark> refusalRemarks(const ColonyQuestion& question, const std::vector<RefusalKind>& refusals) {
    std::vector<Remark> remarks = question.setAside;
    for (RefusalKind kind : refusals) {
        Remark remark{std::string(idOf(kind)), {}};
        if (kind == RefusalKind::FarFromStations && question.site && question.site->distanceKm)
            remark.details["km"] = *question.site->distanceKm;
        remarks.push_back(std::move(remark));
    }
    return remarks;
}

namespace {

// Collects reasons in the order they are said.
class Reasons {
public:
    Reasons(const Reckoning& reckoning, const Advice& advice) : r(reckoning), q(reckoning.question), a(advice) {}

    std::vector<Remark> all() {
        said = q.setAside;
        verdict();
        numbers();
        feeding();
        harvest();
        colony();
        place();
        for (auto& remark : winter::learnedRemarks(q.learned, q.learnedFrom)) said.push_back(std::move(remark));
        return std::move(said);
    }

private:
    void say(std::string id, std::map<std::string, Detail> details = {}) {
        said.push_back({std::move(id), std::move(details)});
    }
    Date on(SeasonDay day) const { return q.winter.date(day); }

    void verdict() {
        if (r.estimate.contradictory)
            say("contradiction", {{"first", r.estimate.firstContradicting}, {"second", r.estimate.secondContradicting}});
        if (a.verdict == Verdict::Unite) say("weak-colony", {{"bees", a.bees->typical.count}});
        if (a.feed) say("short-of-stores", {{"missing", r.amounts.missing}});
        if (a.verdict == Verdict::Harvest) say("surplus", {{"spare", r.amounts.spare}});
        if (a.verdict == Verdict::Leave) {
            const bool spare = r.amounts.spare.value() >= leastAmountKg;
            say(spare ? "enough" : "nothing-to-spare", {{"stores", r.wish.mean}, {"need", *a.need}});
        }
        if (a.bees->typical.count < 4000) say("small-colony", {{"bees", a.bees->typical.count}});
    }

    void numbers() {
        say("need", {{"need", *a.need}, {"reserve", q.reserve}, {"in", 100 * q.shortRisk}, {"forage", on(q.season.forage->day)}});
        const int since = q.asOf - std::max(q.lookedOn, r.ensemble.firstDay());
        if (since > 0) say("stores-carried-forward", {{"days", double(since)}, {"used", r.carried}});
        if (inMidWinter()) say("middle-winter-class", {{"stores", r.wish.mean}, {"class", std::string(winterClassWord())}});
        if (a.lockedInDays && *a.lockedInDays > 60) say("locked-in-long", {{"days", *a.lockedInDays}});
    }

    //! The three months of meteorological winter, as long as build-up has not begun.
    bool inMidWinter() const {
        constexpr SeasonDay december{-31}, march{59};
        return q.asOf >= december && q.asOf < march && q.season.broodStop && q.asOf < q.season.buildup->day;
    }
    const char* winterClassWord() const {
        const double kg = r.wish.mean.value();
        return kg < 4 ? "feed" : kg <= 8 ? "watch" : "fine";
    }

    void feeding() {
        if (!a.feed) return;
        const auto& plan = *a.feed;
        if (plan.syrup.sugar.value() > 0) {
            if (plan.ratio.printed != plan.advised.ratio.printed)
                say("ratio-own", {{"ratio", plan.ratio.printed}});
            else
                say(plan.advised.thin ? "ratio-thin" : "ratio-thick", {{"days", double(plan.advised.warmDaysLeft)}});
        }
        if (plan.limits.roomFull && r.roomNow) say("room-full", {{"room", *r.roomNow}});
        if (plan.limits.deadlinePassed && plan.lastDay) say("deadline-passed", {{"day", on(*plan.lastDay)}});
        if (plan.limits.tooSlow) say("too-slow", {{"fondant", plan.fondant}});
        if (plan.limits.afterAdvised && q.season.feedAdvisedBy) say("after-advised", {{"day", on(q.season.feedAdvisedBy->day)}});
        if (plan.limits.smallLotsOnly && q.season.syrupRefused) say("small-lots", {{"day", on(q.season.syrupRefused->day)}});
    }

    void harvest() {
        const bool spare = r.amounts.spare.value() >= leastAmountKg;
        if (!spare) return;
        say("take-in-spring", {{"spare", a.options.front().springSurplus.typical}});
        if (q.treated) say("treated-honey");
        if (q.moisturePercent && *q.moisturePercent > mostMoisturePercent) say("moist-honey", {{"water", *q.moisturePercent}});
        if (any([](const stores::Comb& comb) { return comb.fed; })) say("fed-combs");
        if (any([](const stores::Comb& comb) { return comb.oldNest; })) say("old-nest-combs");
        if (q.quick) say("quick-form-no-combs");
        const bool noneNamed = a.harvest ? a.harvest->combs.empty() : true;
        if (!q.combs.empty() && noneNamed) say("no-comb-to-take");
        if (q.flowStrength > 0) say("autumn-flow-not-harvested");
    }

    template <class Predicate>
    bool any(Predicate holds) const {
        return std::any_of(q.combs.begin(), q.combs.end(), holds);
    }

    void colony() {
        if (!q.combs.empty() && stores::nestTooWide(q.combs, q.coveredCombs))
            say("narrow-nest", {{"built", double(q.combs.size())}, {"covered", q.coveredCombs}});
        Mass open{0};
        if (r.combs)
            for (const auto& comb : *r.combs) open += comb.open;
        const bool lateToSeal = q.season.syrupDeadline && q.asOf > q.season.syrupDeadline->day - 21;
        if (open.value() >= 1 && lateToSeal) say("open-stores-late", {{"open", open}});
    }

    void place() {
        if (q.season.winterClass == climate::WinterClass::Dearth) say("dearth-climate");
        if (q.season.atEdgeOfRules) say("edge-of-rules");
        const auto& s = q.season;
        moved("last_income", s.lastIncome);
        moved("brood_stop", s.broodStop);
        moved("brood_restart", s.broodRestart);
        moved("buildup", s.buildup);
        moved("forage", s.forage);
        moved("feed_advised_by", s.feedAdvisedBy);
        moved("syrup_deadline", s.syrupDeadline);
        moved("syrup_refused", s.syrupRefused);
        if (given) say("season-overrides");
        if (q.flowStrength > 0) say("flow-assumed", {{"strength", std::string(flowWord())}});
        if (!q.site->stationId.empty()) {
            std::map<std::string, Detail> details{{"station", q.site->stationId}};
            if (q.site->distanceKm) details["km"] = *q.site->distanceKm;
            say("station-used", std::move(details));
        }
        if (q.site->heightShiftK != 0) say("height-shift", {{"kelvin", q.site->heightShiftK}});
    }

    const char* flowWord() const { return q.flowStrength >= 1 ? "strong" : q.flowStrength >= 0.3 ? "fair" : "trickle"; }

    void moved(const char* which, const std::optional<climate::SeasonDate>& date) {
        if (!date) return;
        given = given || date->origin == climate::DateOrigin::Case;
        if (date->origin == climate::DateOrigin::ClimateMoved)
            say("date-moved", {{"which", std::string(which)}, {"to", on(date->day)}});
    }

    const Reckoning& r;
    const ColonyQuestion& q;
    const Advice& a;
    std::vector<Remark> said;
    bool given = false;
};

} // namespace

std::vector<Remark> reasonsOf(const Reckoning& reckoning, const Advice& advice) {
    return Reasons(reckoning, advice).all();
}

} // namespace winterlarder::advice
