// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/follow_words.h"

#include "text/contexts.h"
#include "text/words.h"

#include <algorithm>

namespace winterlarder::text {

namespace {

QString on(const tracking::FollowQuestion& q, SeasonDay day, const WordStyle& style) {
    return date(q.year.date(std::clamp(day, firstSeasonDay, lastSeasonDay)), style);
}

QString fasterSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style, NumberForm form) {
    if (f.now.reserveBy.typical)
        return say::Following::tr("Eating faster than planned: the reserve is likely gone by %1.").arg(form(AskedNumber::ReserveGone, on(q, *f.now.reserveBy.typical, style)));
    if (f.now.reserveBy.low)
        return say::Following::tr("Eating faster than planned: the reserve may be gone from %1 on.").arg(form(AskedNumber::ReserveGone, on(q, *f.now.reserveBy.low, style)));
    return say::Following::tr("Eating faster than planned, but it should last.");
}

QString actSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style, NumberForm form) {
    const QString by = form(AskedNumber::FeedBy, on(q, f.feed->by, style));
    if (f.now.out.share > 0.5)
        return say::Following::tr("Act now: the stores have most likely run out. See today from outside whether it lives; if so lay on %1 of fondant at once.")
            .arg(form(AskedNumber::FeedNow, mass(f.feed->lots.empty() ? f.feed->fondant : f.feed->lots.front().fondant, style)));
    if (f.feed->plan) return say::Following::tr("Act now: feed %1 of stores, begin by %2.").arg(form(AskedNumber::FeedNow, mass(f.feed->stores, style)), by);
    if (f.feed->lots.size() > 1)
        return say::Following::tr("Act now: %1 of fondant, the first %2 by %3.").arg(form(AskedNumber::FeedNow, mass(f.feed->fondant, style)), form(AskedNumber::FeedNow, mass(f.feed->lots.front().fondant, style)), by);
    return say::Following::tr("Act now: %1 of fondant by %2.").arg(form(AskedNumber::FeedNow, mass(f.feed->fondant, style)), by);
}

// What autumn already left short stays short, however well the winter goes.
QString shortSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style, NumberForm form, bool less) {
    const QString by = form(AskedNumber::FeedBy, on(q, f.feed->by, style));
    if (f.feed->plan)
        return (less ? say::Following::tr("Eating less than planned, but still short: feed %1 of stores, begin by %2.") : say::Following::tr("On course, but short: feed %1 of stores, begin by %2."))
            .arg(form(AskedNumber::FeedNow, mass(f.feed->stores, style)), by);
    return (less ? say::Following::tr("Eating less than planned, but still short: %1 of fondant, begin by %2.") : say::Following::tr("On course, but short: %1 of fondant, begin by %2."))
        .arg(form(AskedNumber::FeedNow, mass(f.feed->fondant, style)), by);
}

} // namespace

QString followHeadline(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style, NumberForm form) {
    switch (f.state) {
    case tracking::FollowState::OnCourse: return f.feed ? shortSentence(q, f, style, form, false) : say::Following::tr("On course.");
    case tracking::FollowState::EatingFaster: return fasterSentence(q, f, style, form);
    case tracking::FollowState::EatingSlower:
        if (f.feed) return shortSentence(q, f, style, form, true);
        return say::Following::tr("Eating less than planned: more is left than was forecast.");
    case tracking::FollowState::ActNow: return actSentence(q, f, style, form);
    case tracking::FollowState::Dead: return say::Following::tr("The colony is dead.");
    case tracking::FollowState::CannotSay: return say::Following::tr("It cannot be said: what was seen contradicts every winter.");
    }
    return {};
}

QString followState(tracking::FollowState state) {
    switch (state) {
    case tracking::FollowState::OnCourse: return say::Following::tr("on course");
    case tracking::FollowState::EatingFaster: return say::Following::tr("eating faster");
    case tracking::FollowState::EatingSlower: return say::Following::tr("eating less");
    case tracking::FollowState::ActNow: return say::Following::tr("act now");
    case tracking::FollowState::Dead: return say::Following::tr("dead");
    case tracking::FollowState::CannotSay: return say::Following::tr("cannot say");
    }
    return {};
}

QString followRisk(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style, NumberForm form) {
    if (f.state == tracking::FollowState::Dead || f.fitsNoWinter) return {};
    return say::Following::tr("About %1 left today, where the autumn expected %2. If nothing is done, %4 winters that fit what was seen touch the %3 reserve "
              "and %5 run out (as forecast in autumn: %6 and %7).")
        .arg(form(AskedNumber::LeftToday, mass(f.now.today, style)), form(AskedNumber::ExpectedToday, mass(f.autumn.today.typical, style)),
             form(AskedNumber::Reserve, mass(q.reserve, style)), form(AskedNumber::TouchesNow, ofHundred(f.now.touchReserve, style)),
             form(AskedNumber::RunsOutNow, ofHundred(f.now.runOut, style)), form(AskedNumber::TouchedInAutumn, ofHundred(f.autumn.touchReserve, style)),
             form(AskedNumber::RanOutInAutumn, ofHundred(f.autumn.runOut, style)));
}

QString followNext(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style, NumberForm form) {
    if (f.state == tracking::FollowState::Dead) return {};
    if (f.fitsNoWinter) return say::Following::tr("Look through what was written down of this winter: something was harvested, fed or weighed on another day or in another amount.");
    if (f.state == tracking::FollowState::CannotSay) return say::Following::tr("Weigh it again, and look for a feed that was not written down or ticked off, and for a lid, a box or a stone that was on or off.");
    if (f.nextWeighing)
        return say::Following::tr("Weigh again by %1: in %2 of 100 cases that would change what to do.")
            .arg(form(AskedNumber::WeighBy, date(f.nextWeighing->date, style)), form(AskedNumber::WeighingChanges, count(100 * f.nextWeighing->changes, style)));
    const auto forage = form(AskedNumber::ForageNow, on(q, f.now.forage.typical, style));
    return say::Following::tr("No further weighing before forage (around %1) would change what to do.").arg(forage);
}

QString seenKind(std::string_view kind) {
    if (kind == "scale") return say::Following::tr("scale");
    if (kind == "two-sided lift") return say::Following::tr("lifted on two sides");
    if (kind == "one-sided lift") return say::Following::tr("lifted on one side");
    if (kind == "heft") return say::Following::tr("hefted");
    if (kind == "combs") return say::Following::tr("combs looked at");
    if (kind == "bees") return say::Following::tr("bees counted");
    if (kind == "cluster") return say::Following::tr("cluster seen");
    if (kind == "flying") return say::Following::tr("bees flying");
    if (kind == "glimpse") return say::Following::tr("comb glimpsed");
    return say::Following::tr("dead");
}

QString dueVisit(const book::PlannedVisit& visit, const WordStyle& style) {
    switch (visit.what) {
    case book::VisitKind::Syrup: return visit.syrup ? say::Following::tr("Syrup, %1").arg(volume(*visit.syrup, style)) : say::Following::tr("Syrup");
    case book::VisitKind::Fondant: return visit.fondant ? say::Following::tr("Fondant, %1").arg(mass(*visit.fondant, style)) : say::Following::tr("Fondant");
    case book::VisitKind::Check: break;
    }
    return say::Following::tr("Check the feeding");
}

QString dueWeighing() { return say::Following::tr("weigh again"); }
QString dueFeeding() { return say::Following::tr("feed"); }
QString nothingDue(const std::string& colony) {
    return say::Following::tr("%1: the records of its winter fit none, so it is not known when to weigh or feed").arg(QString::fromStdString(colony));
}
std::string calendarName() { return say::Following::tr("Bees").toStdString(); }

} // namespace winterlarder::text
