// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/remarks/remarks.h"

#include "advice/capacity.h"
#include "advice/harvest_rules.h"
#include "advice/health.h"
#include "advice/looking/evidence_first.h"
#include "advice/summer.h"
#include "advice/target.h"
#include "advice/winter_rules.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

constexpr double shownStepKg = 0.5; // what people weigh and buy

const char* wordOf(stores::HeftWord word) {
    switch (word) {
    case stores::HeftWord::Light: return "light";
    case stores::HeftWord::Fair: return "fair";
    case stores::HeftWord::Heavy: break;
    }
    return "heavy";
}

// Says which rule gave the verdict, and what follows.
class DecisionWords {
public:
    DecisionWords(const AdviceBasis& basis, const Advice& advice) : r(basis), q(basis.question), a(advice) {}

    std::vector<Remark> all() {
        yard();
        decided();
        if (a.needIfStopped) say("no-brood-seen", {{"need", *a.need}, {"stopped", *a.needIfStopped}});
        if (r.phase > Phase::Closing && q.queenSeen == false && q.eggsSeen == false) say("no-eggs-normal");
        if (a.decidedBy != DecidedBy::Disease) holds();
        return std::move(said);
    }

private:
    void say(std::string id, std::map<std::string, Detail> details = {}) {
        said.push_back({std::move(id), std::move(details)});
    }

    //! What the plan of the yard does first.
    void yard() {
        if (!q.plan) return;
        if (q.joined && q.plan->uniteBy) { // an advice acted on says no day
            say("united-here", {{"from", q.joined->name}, {"day", *q.plan->uniteBy}});
            if (!nothingGoesOnTop(q)) say("united-sort");
        }
        for (const CombGift& gift : q.plan->received)
            say("move-combs-first", {{"from", gift.from}, {"kg", gift.honey}, {"combs", double(gift.combs.size())}});
        for (const CombGift& gift : q.plan->given) say("combs-given", {{"receiver", gift.to}, {"kg", gift.honey}});
    }

    void decided() {
        switch (a.decidedBy) {
        case DecidedBy::CannotSay: break;
        case DecidedBy::Disease: say("disease-first"); break;
        case DecidedBy::NoFoodInReach:
            noneOrLittle("no-food-in-reach",
                         {{"within", foodInReach(r).value_or(kilograms(0))}, {"stores", r.stores()}},
                         foodInReach(r).value_or(kilograms(0)));
            break;
        case DecidedBy::ActNow:
            noneOrLittle("act-now", {{"stores", r.stores()}, {"days", r.rules().actNowDays}}, r.stores());
            break;
        case DecidedBy::NoQueen: say("no-queen"); break;
        case DecidedBy::Contradiction: contradiction(); break;
        case DecidedBy::Heft:
            say("heft-alone", {{"class", std::string(wordOf(heftAlone(q).value_or(stores::HeftWord::Fair)))},
                               {"stores", r.stores()}});
            break;
        case DecidedBy::Weak: say("weak-colony", {{"bees", beesThatDecide(r)}}); break;
        case DecidedBy::SummerPortion:
            say("summer-portion", {{"safety", safetyAmount(r)}, {"stores", r.stores()}});
            break;
        case DecidedBy::SummerHarvest: summerHarvest(); break;
        case DecidedBy::SummerSafe: say("summer-safe", {{"safety", safetyAmount(r)}, {"stores", r.stores()}}); break;
        case DecidedBy::Full: say("hive-full", {{"room", r.capacity}}); break;
        case DecidedBy::Feed: missing(); break;
        case DecidedBy::SmallPortions:
            missing(), say("small-portions", {{"class", std::string(syrupIsPast() ? "late" : "dearth")}});
            break;
        case DecidedBy::Board: missing(), say("winter-board", {{"days", r.lockedInDays}}); break;
        case DecidedBy::LateBoard: missing(), say("late-board", {{"days", r.lockedInDays}}); break;
        case DecidedBy::WinterVisit: say("visit-due", {{"stores", r.stores()}, {"reserve", r.today.reserve}}); break;
        case DecidedBy::ShortLater: missing(), say("short-later"); break;
        case DecidedBy::Harvest: surplus(); break;
        case DecidedBy::Enough: enough(); break;
        }
        if (a.bees->typical.count < r.rules().fewestMeasuredBees)
            say("small-colony", {{"bees", a.bees->typical.count}});
    }

    bool syrupIsPast() const { return q.season.syrupDeadline && q.asOf > q.season.syrupDeadline->day; }

    //! Honey of a super that was never among the stores leaves them as they are.
    bool apart() const { return a.harvest && a.harvest->fromStores <= kilograms(0); }

    void summerHarvest() {
        if (apart()) return say("super-apart", {{"stores", r.stores()}});
        say("summer-harvest", {{"safety", safetyAmount(r)}});
    }

    void surplus() {
        if (apart()) return say("super-apart", {{"stores", r.stores()}});
        say("surplus", {{"spare", honeyToSpare(r)}, {"class", std::string(usualHoldsBack(q) ? "usual" : "alone")}});
    }

    void missing() {
        say("short-of-stores",
            {{"missing", std::max(kilograms(0), r.target.missing.typical)}, {"day", r.on(r.target.day)}});
    }

    //! Where more is to spare than is left out of account, what is usual here, the season or the combs keep it in the hive: other
    //! reasons say of the last two which.
    void enough() {
        const bool more = -r.target.missing.typical > r.target.deadBand;
        const bool usual = r.phase == Phase::Closing && usualHoldsBack(q) && r.target.toSpare < r.target.deadBand;
        std::map<std::string, Detail> details{{"stores", std::max(kilograms(0), r.stores() - r.target.netLoss)},
                                              {"need", r.target.stores},
                                              {"dead", r.target.deadBand},
                                              {"class", std::string(!more   ? "same"
                                                                    : usual ? "usual"
                                                                            : "more")}};
        if (more && usual) details["usual"] = q.usual->low;
        say("enough", std::move(details));
    }

    //! What is shown as no food at all is said in words.
    void noneOrLittle(const char* id, std::map<std::string, Detail> details, Mass food) {
        if (food < kilograms(shownStepKg / 2)) details["class"] = std::string("none");
        say(id, std::move(details));
    }

    void contradiction() {
        say("contradiction", {{"first", stores::idOf(r.estimate.firstContradicting)},
                              {"second", stores::idOf(r.estimate.secondContradicting)},
                              {"low", saidBy(r.estimate.firstContradicting)},
                              {"high", saidBy(r.estimate.secondContradicting)}});
    }

    Mass saidBy(stores::EvidenceKind kind) const {
        for (const auto& share : r.estimate.shares)
            if (share.evidence.kind == kind) return std::max(kilograms(0), share.evidence.typical);
        return kilograms(0);
    }

    //! Where the hive cannot hold the target: what to do about it, in order.
    void holds() {
        if (r.phase > Phase::Closing || r.capacity.value() <= 0 ||
            r.target.stores < r.capacity + kilograms(shownStepKg))
            return;
        const auto& deadline = q.season.syrupDeadline;
        const bool time = deadline && deadline->day - q.asOf >= static_cast<int>(r.rules().combsNeedDays);
        const bool weighFirst = a.anotherLook.worthIt && a.anotherLook.which == LookKind::Weigh;
        say("more-than-it-holds",
            {{"need", r.target.stores},
             {"room", r.capacity},
             {"class", std::string(time ? "comb" : "full-combs") + (weighFirst ? "" : "-weighed")}});
    }

    const AdviceBasis& r;
    const ColonyQuestion& q;
    const Advice& a;
    std::vector<Remark> said;
};

} // namespace

std::vector<Remark> decisionRemarks(const AdviceBasis& basis, const Advice& advice) {
    return DecisionWords(basis, advice).all();
}

} // namespace winterlarder::advice
