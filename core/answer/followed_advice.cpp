// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/followed_advice.h"

#include "advice/options.h"
#include "feeding/visits.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

using tracking::FollowState;

feeding::FeedingPlan planOf(const tracking::WinterFeed& feed, const tracking::FollowQuestion& q) {
    if (feed.plan) return *feed.plan;
    feeding::FeedingQuestion laid{feed.stores, q.year, feed.begins()};
    laid.curve = &q.winter.curve;
    laid.season = q.winter.season;
    return feeding::planFondant(laid, feed.fondant);
}

advice::Verdict verdictOf(const tracking::Following& f, const tracking::FollowQuestion& q) {
    if (f.feed && f.feed->begins() <= q.today) return advice::Verdict::Feed;
    const bool nothingSaid = f.state == FollowState::Dead || f.state == FollowState::CannotSay;
    return nothingSaid ? advice::Verdict::CannotSay : advice::Verdict::Leave;
}

std::optional<advice::ExpectedLater> laterOf(const tracking::Following& f, const Winter& year) {
    if (!f.expectedLater) return std::nullopt;
    const auto& later = *f.expectedLater;
    return advice::ExpectedLater{later.sugar, later.fondant, year.date(later.from), year.date(later.until)};
}

void tellStores(advice::Advice& told, const tracking::Following& f, const tracking::FollowQuestion& q) {
    told.shortRisk = q.shortRisk;
    told.reserve = q.reserve;
    told.estimate.reset();
    if (f.fitsNoWinter || f.state == FollowState::Dead) return;
    told.estimate.emplace();
    told.estimate->mean = f.now.today.typical;
    told.estimate->spread = f.now.today;
    told.runOut = f.now.runOut;
    told.touchReserve = f.now.touchReserve;
    told.springReserve = f.now.atForage;
}

} // namespace

advice::Advice followedAdvice(advice::Advice alone, const FollowedColony& colony, const tracking::Following& f) {
    const tracking::FollowQuestion& q = *colony.question;
    advice::Advice told = std::move(alone);
    told.phase = advice::phaseOn(advice::phaseDays(colony.autumn.season, colony.autumn.decisions), q.today);
    told.verdict = verdictOf(f, q);
    tellStores(told, f, q);
    told.feed = f.feed ? std::optional(planOf(*f.feed, q)) : std::nullopt;
    told.expectedLater = laterOf(f, q.year);
    told.nextLook.reset();
    told.anotherLook = {};
    if (f.nextWeighing) {
        told.nextLook = advice::NextLook{f.nextWeighing->date, advice::NextLookAt::Weigh};
        told.anotherLook = {.worthIt = true, .which = advice::LookKind::Weigh, .about = advice::LookAbout::Stores};
    }
    told.reasons = f.reasons;
    told.cautions = f.cautions;
    told.goodPractice = f.goodPractice;
    return told;
}

bool adviceLeads(const FollowReading& reading, const tracking::Following& following, const advice::Advice& advice) {
    switch (following.state) {
    case FollowState::Dead:
    case FollowState::FoodOutOfReach:
    case FollowState::Dwindling: return false;
    default: return !followLeads(reading) && advice.refusals.empty();
    }
}

namespace {

std::optional<tracking::WinterFeed> feedOf(const advice::Advice& advice, const tracking::Following& f,
                                           const tracking::FollowQuestion& q) {
    if (!advice.feed) return std::nullopt;
    tracking::WinterFeed feed;
    for (const auto& step : advice::stepsOf(*advice.feed)) feed.stores += step.change;
    feed.fondant = advice.feed->fondant;
    for (const auto& visit : advice.feed->visits)
        if (visit.fondant > Mass(0)) feed.lots.push_back({visit.day, visit.date, visit.fondant});
    if (advice.feed->syrup.sugar > Mass(0)) feed.plan = advice.feed;
    feed.by = advice.feed->visits.empty() ? q.today : advice.feed->visits.front().day;
    feed.until = std::max(q.today, f.now.forage.high);
    return feed;
}

std::optional<tracking::LaterFeed> laterOf(const advice::Advice& advice, const Winter& year) {
    if (!advice.expectedLater) return std::nullopt;
    const auto& later = *advice.expectedLater;
    return tracking::LaterFeed{later.sugar, later.fondant, year.nearestSeasonDay(later.from),
                               year.nearestSeasonDay(later.until)};
}

std::optional<tracking::NextWeighing> weighingOf(const advice::Advice& advice, const Winter& year) {
    if (!advice.nextLook || advice.nextLook->what != advice::NextLookAt::Weigh) return std::nullopt;
    return tracking::NextWeighing{year.nearestSeasonDay(advice.nextLook->date), advice.nextLook->date, 0, false};
}

} // namespace

void askAboutFeeds(advice::Advice& advice, const FollowReading& reading, const ReferenceData& reference) {
    if (auto asked = feedNotRecorded(reading, reference))
        advice.reasons.insert(advice.reasons.begin(), *std::move(asked));
}

tracking::Following asAdvised(tracking::Following f, const FollowReading& reading, const tracking::FollowQuestion& q,
                              const advice::Advice& advice) {
    f.feed = feedOf(advice, f, q);
    f.missing = advice.missing ? std::max(kilograms(0), advice.missing->typical) : kilograms(0);
    f.expectedLater = laterOf(advice, q.year);
    f.nextWeighing = weighingOf(advice, q.year);
    f.reasons = advice.reasons;
    const Date from = std::max(leadsFrom(reading.winter), reading.decided.plusDays(1));
    f.reasons.insert(f.reasons.begin(), {"follow-not-begun", {{"day", from}}});
    f.cautions = advice.cautions;
    f.goodPractice = advice.goodPractice;
    return f;
}

} // namespace winterlarder::answer
