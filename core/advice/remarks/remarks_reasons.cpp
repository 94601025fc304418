// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/remarks/remarks.h"

#include "advice/harvest_rules.h"
#include "advice/reserve.h"
#include "stores/bees.h"
#include "stores/evidence.h"
#include "stores/harvest.h"

#include <algorithm>
#include <cmath>

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

std::string placeOf(const UsualHere& usual) {
    return usual.place + (usual.ofElsewhere ? ", the nearest with such winters" : "");
}

std::vector<Remark> refusalRemarks(const ColonyQuestion& question, const std::vector<RefusalKind>& refusals) {
    std::vector<Remark> remarks = question.setAside;
    remarks.insert(remarks.end(), question.united.begin(), question.united.end());
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
    Reasons(const AdviceBasis& basis, const Advice& advice) : r(basis), q(basis.question), a(advice) {}

    std::vector<Remark> all() {
        said = q.setAside;
        for (auto& remark : decisionRemarks(r, a)) said.push_back(std::move(remark));
        said.insert(said.end(), q.united.begin(), q.united.end());
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

    void numbers() {
        if (a.decidedBy != DecidedBy::NoQueen) winter();
        const int since = q.asOf - std::max(q.lookedOn, r.ensemble.firstDay());
        const bool open = std::any_of(q.combs.begin(), q.combs.end(), [](const auto& comb) { return comb.open > 0; });
        if (q.freshlyFilled && (open || (q.quick && q.quick->cappedShare < 1)))
            say("fresh-nectar", {{"share", 100 * stores::openFactor(true)}});
        if (since > 0) say("stores-carried-forward", {{"days", double(since)}, {"used", r.carried}});
        if (a.decidedBy != DecidedBy::NoQueen) wishes();
    }

    //! What it should winter on.
    void winter() {
        say("target", {{"day", on(a.target->day)},
                       {"need", a.target->stores},
                       {"combs", a.target->combs},
                       {"gross", a.target->gross}});
        usual();
        say("need", {{"need", *a.need},
                     {"reserve", r.today.reserve},
                     {"in", 100 - 100 * r.today.shortRisk},
                     {"forage", on(q.season.forage->day)}});
    }

    //! Why so much is to be left, and in so many winters.
    void wishes() {
        const auto& rules = r.rules();
        if (!q.answers.reserve && broodBoxes(q) > 1 && !q.nucleus &&
            r.today.reserve == kilograms(rules.reserveMoreBoxes))
            say("reserve-of-boxes", {{"reserve", r.today.reserve}, {"one", kilograms(rules.reserveOneBox)}});
        const bool cautious =
            !q.answers.shortRisk && q.answers.visitsInWinter != false && r.today.shortRisk < rules.riskVisited - 0.005;
        if (cautious && r.phase <= Phase::Winter && a.decidedBy != DecidedBy::Board &&
            a.decidedBy != DecidedBy::LateBoard)
            say("locked-in-long", {{"days", r.lockedInDays},
                                   {"in", 100 - 100 * r.today.shortRisk},
                                   {"class", std::string(r.phase == Phase::Winter ? "winter" : "before")}});
    }

    //! What keepers here are told, and whether this answer differs from it by more than a quarter.
    void usual() {
        const auto& usual = a.target->usual;
        if (!usual || r.phase > Phase::Closing) return;
        const double sum = r.target.stores.value();
        const bool differs = sum < 0.75 * usual->low.value() || sum > 1.25 * usual->high.value();
        const std::string how = !differs                ? "agrees"
                                : usual->quality == 'C' ? "differs-by-hearsay"
                                                        : "differs"; // quality C holds back no harvest
        const bool one = usual->high - usual->low < kilograms(0.5);
        say("usual-here", {{"low", usual->low},
                           {"high", usual->high},
                           {"place", placeOf(*usual)},
                           {"need", r.target.stores},
                           {"class", how + (one ? "-one" : "")},
                           {"source", usual->source}});
    }

    void feeding() {
        if (!a.feed || a.feed->syrup.sugar.value() <= 0) return;
        const auto& plan = *a.feed;
        if (r.phase <= Phase::Closing)
            say(plan.advised.thin ? "ratio-thin" : "ratio-thick", {{"days", double(plan.advised.warmDaysLeft)}});
        const bool roomLimits = r.target.missing.typical > r.room() && r.room() - plan.stores < kilograms(1.5);
        if (a.decidedBy == DecidedBy::Feed && roomLimits) say("room-full", {{"room", r.room()}});
        if (plan.limits.tooSlow && a.decidedBy == DecidedBy::Feed) say("too-slow");
        if (plan.limits.afterAdvised && q.season.feedAdvisedBy && q.season.feedAdvisedBy->day >= q.asOf)
            say("after-advised", {{"day", on(q.season.feedAdvisedBy->day)}});
    }

    void harvest() {
        if (a.decidedBy == DecidedBy::Disease || r.target.toSpare < r.target.deadBand) return;
        const bool fed = wasFed(q, r.days), moist = q.moisturePercent && *q.moisturePercent > mostWater(q);
        if (fed) say("fed-combs");
        if (q.treated) say("treated-honey");
        if (moist) say("moist-honey", {{"water", *q.moisturePercent}, {"most", mostWater(q)}});
        if (!moist && q.moisturePercent && *q.moisturePercent >= r.rules().wettishFrom)
            say("wettish-honey", {{"water", *q.moisturePercent}});
        const bool beyondRisk = r.phase == Phase::Closing && !fed && !q.treated && !moist && notSurelyToSpare();
        if (beyondRisk)
            say("spare-not-sure",
                {{"spare", r.target.toSpare}, {"reserve", r.today.reserve}, {"in", 100 * r.today.shortRisk}});
        if ((fed || q.treated) && r.phase <= Phase::Closing) say("surplus-for-bees", {{"spare", r.target.toSpare}});
        if (says(OptionKind::TakeInSpring)) say("take-in-spring", {{"spare", a.options.front().springSurplus.typical}});
        if (r.phase != Phase::Closing || fed || q.treated || moist) return;
        if (any([](const stores::Comb& comb) { return comb.oldNest; })) say("old-nest-combs");
        if (tooLittleCapped(q)) say("too-little-capped", {{"percent", 100 * q.quick->cappedShare}});
        else if (q.quick) say("quick-form-no-combs");
        if (!q.combs.empty() && !a.harvest && !beyondRisk && a.verdict == Verdict::Leave) say("no-comb-to-take");
        if (q.flowStrength > 0) say("autumn-flow-not-harvested");
    }

    //! Worth taking at the middle of what is known, and not with its doubt.
    bool notSurelyToSpare() const {
        const Mass least = kilograms(r.rules().harvestLeast);
        return (a.decidedBy == DecidedBy::Enough || a.decidedBy == DecidedBy::Full) && r.target.toSpare >= least &&
               honeyToSpare(r) < least;
    }

    bool says(OptionKind kind) const {
        return std::any_of(a.options.begin(), a.options.end(),
                           [&](const Option& option) { return option.kind == kind; });
    }

    template <class Predicate> bool any(Predicate holds) const {
        return std::any_of(q.combs.begin(), q.combs.end(), holds);
    }

    void colony() {
        if (a.decidedBy == DecidedBy::Disease) return; // nothing of it is moved
        const bool autumn = r.phase == Phase::Closing || r.phase == Phase::Late;
        if (autumn && !a.feed && stores::nestTooWide(q.combs, q.coveredCombs)) // syrup wants the empty combs
            say("narrow-nest", {{"built", double(q.combs.size())},
                                {"covered", q.coveredCombs},
                                {"empty", double(stores::emptyCombs(q.combs))}});
        Mass open{0};
        if (r.combs)
            for (const auto& comb : *r.combs) open += comb.open;
        const bool lateToSeal =
            q.season.syrupDeadline && q.asOf > q.season.syrupDeadline->day - 21 && r.phase <= Phase::Late;
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
        if (q.flowStrength > 0 && r.phase <= Phase::Closing)
            say("flow-assumed", {{"strength", std::string(flowWord())}});
        if (q.site->own) {
            say("own-climate");
        } else if (!q.site->stationId.empty()) {
            std::map<std::string, Detail> details{{"place", q.site->place}};
            if (q.site->distanceKm) details["km"] = *q.site->distanceKm;
            say("station-used", std::move(details));
        }
        if (std::abs(q.site->heightShiftK) >= r.rules().heightWorthSaying)
            say("height-shift", {{"kelvin", q.site->heightShiftK}});
    }

    const char* flowWord() const { return q.flowStrength >= 1 ? "strong" : q.flowStrength >= 0.3 ? "fair" : "trickle"; }

    void moved(const char* which, const std::optional<climate::SeasonDate>& date) {
        if (!date) return;
        given = given || date->origin == climate::DateOrigin::Case;
        if (date->origin == climate::DateOrigin::ClimateMoved && date->day >= q.asOf)
            say("date-moved", {{"which", std::string(which)}, {"to", on(date->day)}});
    }

    const AdviceBasis& r;
    const ColonyQuestion& q;
    const Advice& a;
    std::vector<Remark> said;
    bool given = false;
};

} // namespace

std::vector<Remark> reasonsOf(const AdviceBasis& basis, const Advice& advice) { return Reasons(basis, advice).all(); }

} // namespace winterlarder::advice
