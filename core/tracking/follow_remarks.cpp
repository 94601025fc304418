// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/opening.h"
#include "tracking/answer_parts.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

constexpr Mass leastSurplus = kilograms(0.5);
constexpr double fewWinters = 100;

const Observation* lastFlight(const FollowQuestion& q) {
    const Observation* last = nullptr;
    for (const auto& seen : q.observations)
        if (seen.day <= q.today && (!last || seen.day >= last->day)) last = &seen;
    return last && std::holds_alternative<FlyingSeen>(last->what) ? last : nullptr;
}

class Reasons {
public:
    explicit Reasons(const FollowBasis& basis) : q(basis.question), f(basis.following), tracked(basis.tracked) {}

    std::vector<Remark> all() {
        said = q.setAside;
        state();
        said.insert(said.end(), q.united.begin(), q.united.end());
        if (q.asFound && f.state != FollowState::Dead) say("follow-as-found", {{"day", date(q.decided)}});
        if (f.state != FollowState::Dead && !f.fitsNoWinter) ahead();
        evidence();
        model();
        if (f.spring) spring();
        return std::move(said);
    }

private:
    void say(std::string id, std::map<std::string, Detail> details = {}) {
        said.push_back({std::move(id), std::move(details)});
    }
    Date date(SeasonDay day) const { return q.year.date(std::clamp(day, firstSeasonDay, lastSeasonDay)); }

    // The state first; then whatever else of it is true.
    void state() {
        switch (f.state) {
        case FollowState::Dead: return sayDead();
        case FollowState::CannotSay: heavier(); return notRecorded();
        case FollowState::ActNow:
            if (lightAlone(f)) break;
            say("follow-act-now", {{"stores", f.now.today.typical}, {"days", q.decisions.actNowDays}});
            break;
        case FollowState::LessThanThought: lessThanThought(); break;
        case FollowState::MoreThanNeeded: say("follow-more", {{"stores", f.now.atForage.low}}); break;
        case FollowState::OnCourse: course(); break;
        default: break;
        }
        light();
        if (f.outOfReach) say(f.outOfReach->gap ? "follow-gap" : "follow-out-of-reach", {{"day", f.outOfReach->day}});
        if (f.dwindled)
            say("follow-dwindling", {{"day", f.dwindled->day},
                                     {"seen", toHundreds(f.dwindled->seen)},
                                     {"least", toHundreds(f.dwindled->least)}});
        notRecorded();
        faster();
    }

    // What counts comes first: whether it will do.
    void course() {
        if (f.fallsShort) reserveBy();
        const bool less = f.now.today.typical < f.autumn.today.low;
        say("follow-course", {{"stores", f.now.today.typical},
                              {"planned", f.autumn.today.typical},
                              {"class", std::string(!f.fallsShort ? "well"
                                                    : less        ? "less"
                                                                  : "short")}});
    }

    void light() {
        if (!f.light) return;
        if (f.light->weighed) say("follow-light-weighed", {{"day", f.light->day}, {"weighed", *f.light->weighed}});
        else say("follow-light", {{"day", f.light->day}});
    }

    void heavier() {
        if (!f.heavier) return;
        const auto& seen = *f.heavier;
        say("follow-heavier", {{"day", seen.day}, {"seen", seen.seen}, {"low", seen.low}, {"high", seen.high}});
    }

    static double toHundreds(BeeCount bees) { return 100 * std::round(bees.count / 100); }

    void lessThanThought() {
        say("follow-less-than-thought", {{"day", date(q.decided)}, {"thought", q.stores.mean}, {"now", atStart()}});
    }

    // Median of the stores at the start, as now believed.
    Mass atStart() const {
        WeightedKilograms kilos;
        const auto& belief = tracked.belief;
        for (std::size_t p = 0; p < belief.particles(); ++p)
            if (belief.weight[p] > 0) kilos.add(std::max(0.0, belief.stores()[p]), belief.weight[p]);
        return kilograms(kilos.quantile(0.5));
    }

    void notRecorded() {
        if (q.unticked.empty()) return;
        Mass all{0};
        for (const auto& visit : q.unticked) all += visit.stores;
        say("feed-not-recorded", {{"day", q.unticked.front().date}, {"stores", all}});
    }

    void faster() {
        if (!f.faster) return;
        const auto& seen = *f.faster;
        say("follow-faster",
            {{"from", seen.from}, {"until", seen.until}, {"lost", seen.lost}, {"expected", seen.expected}});
        if (seen.checkScale) say("check-the-scale", {{"day", seen.until}});
    }

    void sayDead() {
        for (const auto& seen : q.observations)
            if (isDead(seen)) return say("follow-dead", {{"day", seen.date}});
    }

    void ahead() {
        const bool told = f.state == FollowState::OnCourse && f.fallsShort;
        if (!told && (f.now.reserveBy.typical || f.fallsShort)) reserveBy();
        if (f.nextWeighing)
            say(f.nextWeighing->forAVisit ? "next-weighing-visit" : "next-weighing", {{"day", f.nextWeighing->date}});
        else say("no-more-weighing");
    }

    void reserveBy() {
        const auto& by = f.now.reserveBy;
        const SeasonDay day = by.typical.value_or(by.low.value_or(q.today));
        say("follow-reserve-by", {{"day", date(day)}, {"in", 100 * f.now.touchReserve.share}, {"reserve", q.reserve}});
    }

    // The steps by which everything was gone, and the weighing that showed stores afterwards.
    void fitsNoWinter() {
        const Observation* weighed = nullptr;
        double taken = 0, given = 0;
        for (const auto& seen : q.observations)
            if (isWeighed(seen) && seen.day <= q.today && (!weighed || seen.day > weighed->day)) weighed = &seen;
        const SeasonDay until = weighed ? weighed->day : q.today;
        for (const auto& step : q.steps)
            if (step.day <= until && step.kind != KnownStep::Kind::Equipment)
                (step.change.value() < 0 ? taken : given) += std::abs(step.change.value());
        say("fits-no-winter", {{"day", date(until)},
                               {"had", std::max(kilograms(0), q.stores.mean)},
                               {"decided", date(q.decided)},
                               {"taken", kilograms(taken)},
                               {"given", kilograms(given)}});
    }

    void evidence() {
        if (f.fitsNoWinter) fitsNoWinter();
        for (const Judged& each : f.judged) {
            if (!each.contradicts || (f.faster && f.faster->second == each.observation)) continue;
            const Observation& seen = q.observations[each.observation];
            if (!isWeighed(seen)) {
                say("sign-contradicts", {{"day", seen.date}});
            } else if (each.confirmed) {
                say("unexplained-change",
                    {{"day", seen.date}, {"change", kilograms(std::abs(each.seen - each.expected.typical))}});
            } else {
                say("weighing-contradicts", {{"day", seen.date},
                                             {"seen", kilograms(each.seen)},
                                             {"low", kilograms(std::max(0.0, each.expected.low))},
                                             {"high", kilograms(std::max(0.0, each.expected.high))}});
            }
        }
        for (const auto& seen : q.observations)
            if (seen.wet && isWeighed(seen) && seen.day <= q.today) say("wet-weighing", {{"day", seen.date}});
    }

    void model() {
        if (f.drawnAgain > 0) say("drawn-again");
        if (f.effectiveWinters < std::min(fewWinters, 0.5 * f.winters))
            say("few-winters", {{"winters", std::floor(f.effectiveWinters)}});
        if (!q.winter.weatherSoFar.empty())
            say("weather-so-far", {{"days", static_cast<double>(q.winter.weatherSoFar.size())}});
        for (auto& remark : winter::learnedRemarks(q.winter.learned, q.learnedFrom)) said.push_back(std::move(remark));
    }

    void spring() {
        say("spring-carries", {{"day", date(f.spring->carries.typical)}});
        say("spring-leave", {{"leave", f.spring->leave}});
        if (f.spring->surplus.low >= leastSurplus)
            say("spring-surplus",
                {{"surplus", f.spring->surplus.low}, {"class", std::string(f.spring->mayTake ? "take" : "bees")}});
        if (f.spring->queenRoom) say("queen-room", {{"room", *f.spring->queenRoom}});
    }

    const FollowQuestion& q;
    const Following& f;
    const Tracked& tracked;
    std::vector<Remark> said;
};

class Cautions {
public:
    explicit Cautions(const FollowBasis& basis) : r(basis), q(basis.question), f(basis.following) {}

    std::vector<Remark> all() {
        if (f.state == FollowState::Dead) return {{"dead-out", {}}, {"local-rules", {}}};
        if (f.outOfReach) say("comb-against-cluster");
        if (f.dwindled) say("when-dwindling");
        if (soonFed()) feeding();
        if (lastFlight(q)) say("flight-may-be-robbers");
        if (f.spring) spring();
        if (maximumToday() < hive::fullLookFromC)
            say("look-from-outside",
                {{"temperature", celsius(maximumToday())}, {"class", std::string(howFarToOpen())}});
        say("heft");
        if (soonFed()) say("unknown-honey");
        say("local-rules");
        return std::move(said);
    }

private:
    void say(std::string id, std::map<std::string, Detail> details = {}) {
        said.push_back({std::move(id), std::move(details)});
    }
    double maximumToday() const { return q.winter.curve.normal(q.today).value() + r.constants.diurnalHalfRange; }

    // The lid comes off for food that cannot wait, whatever the weather.
    const char* howFarToOpen() const {
        if (f.feed && !f.feed->plan && f.feed->begins() <= q.today) return "fed";
        const double warmest = maximumToday();
        return warmest < hive::lidFromC ? "closed" : warmest < hive::momentFromC ? "lid" : "moment";
    }

    // How to feed is told when it is to be done, not months ahead.
    bool soonFed() const { return f.feed && f.feed->begins() <= q.today + static_cast<int>(q.decisions.dueDays); }

    void feeding() {
        if (f.feed->plan) {
            say("feed-inside");
            say("robbing-and-wasps");
            return;
        }
        say(q.longHive ? "fondant-long-hive" : "fondant-on-cluster");
        say("dry-sugar", {{"sugar", f.feed->drySugar}});
    }

    void spring() {
        if (f.spring->surplus.low >= leastSurplus || f.spring->queenRoom) {
            say(q.treated ? "treated-honey" : "spring-not-this-honey");
            say("old-feed-stays-down");
        }
        say("cold-spell", {{"leave", f.spring->leave}});
    }

    const FollowBasis& r;
    const FollowQuestion& q;
    const Following& f;
    std::vector<Remark> said;
};

} // namespace

std::vector<Remark> followReasons(const FollowBasis& r) { return Reasons(r).all(); }
std::vector<Remark> followCautions(const FollowBasis& r) { return Cautions(r).all(); }

} // namespace winterlarder::tracking
