// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/followed_advice.h"

#include "feeding/visits.h"

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

} // namespace winterlarder::answer
