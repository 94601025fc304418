// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/follow_words.h"

#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace winterlarder::text {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("Following", text); }

QString on(const tracking::FollowQuestion& q, SeasonDay day, const WordStyle& style) {
    return date(q.year.date(std::clamp(day, firstSeasonDay, lastSeasonDay)), style);
}

QString fasterSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style) {
    if (f.now.reserveBy.typical)
        return tr("Eating faster than planned: the reserve is likely gone by %1.").arg(on(q, *f.now.reserveBy.typical, style));
    if (f.now.reserveBy.low)
        return tr("Eating faster than planned: the reserve may be gone from %1 on.").arg(on(q, *f.now.reserveBy.low, style));
    return tr("Eating faster than planned, but it should last.");
}

QString actSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style) {
    const QString by = on(q, f.feed->by, style);
    if (f.now.out.share > 0.5)
        return tr("Act now: the stores have most likely run out. See today from outside whether it lives; if so lay on %1 of fondant at once.")
            .arg(mass(f.feed->lots.empty() ? f.feed->fondant : f.feed->lots.front().fondant, style));
    if (f.feed->plan) return tr("Act now: feed %1 of stores, begin by %2.").arg(mass(f.feed->stores, style), by);
    if (f.feed->lots.size() > 1)
        return tr("Act now: %1 of fondant, the first %2 by %3.").arg(mass(f.feed->fondant, style), mass(f.feed->lots.front().fondant, style), by);
    return tr("Act now: %1 of fondant by %2.").arg(mass(f.feed->fondant, style), by);
}

// What autumn already left short stays short, however well the winter goes.
QString shortSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style, bool less) {
    const QString by = on(q, f.feed->by, style);
    if (f.feed->plan)
        return (less ? tr("Eating less than planned, but still short: feed %1 of stores, begin by %2.") : tr("On course, but short: feed %1 of stores, begin by %2."))
            .arg(mass(f.feed->stores, style), by);
    return (less ? tr("Eating less than planned, but still short: %1 of fondant, begin by %2.") : tr("On course, but short: %1 of fondant, begin by %2."))
        .arg(mass(f.feed->fondant, style), by);
}

} // namespace

QString followHeadline(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style) {
    switch (f.state) {
    case tracking::FollowState::OnCourse: return f.feed ? shortSentence(q, f, style, false) : tr("On course.");
    case tracking::FollowState::EatingFaster: return fasterSentence(q, f, style);
    case tracking::FollowState::EatingSlower:
        if (f.feed) return shortSentence(q, f, style, true);
        return tr("Eating less than planned: more is left than was forecast.");
    case tracking::FollowState::ActNow: return actSentence(q, f, style);
    case tracking::FollowState::Dead: return tr("The colony is dead.");
    case tracking::FollowState::CannotSay: return tr("It cannot be said: what was seen contradicts every winter.");
    }
    return {};
}

QString followState(tracking::FollowState state) {
    switch (state) {
    case tracking::FollowState::OnCourse: return tr("on course");
    case tracking::FollowState::EatingFaster: return tr("eating faster");
    case tracking::FollowState::EatingSlower: return tr("eating less");
    case tracking::FollowState::ActNow: return tr("act now");
    case tracking::FollowState::Dead: return tr("dead");
    case tracking::FollowState::CannotSay: return tr("cannot say");
    }
    return {};
}

QString followRisk(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style) {
    if (f.state == tracking::FollowState::Dead) return {};
    return tr("About %1 left today, where the autumn expected %2. If nothing is done, %4 winters that fit what was seen touch the %3 reserve "
              "and %5 run out (as forecast in autumn: %6 and %7).")
        .arg(mass(f.now.today, style), mass(f.autumn.today.typical, style), mass(q.reserve, style), ofHundred(f.now.touchReserve, style),
             ofHundred(f.now.runOut, style), ofHundred(f.autumn.touchReserve, style), ofHundred(f.autumn.runOut, style));
}

QString followNext(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style) {
    if (f.state == tracking::FollowState::Dead) return {};
    if (f.state == tracking::FollowState::CannotSay) return tr("Weigh it again, and look for a lid, a box or a stone that was on or off.");
    if (f.nextWeighing)
        return tr("Weigh again by %1: in %2 of 100 cases that would change what to do.")
            .arg(date(f.nextWeighing->date, style), count(100 * f.nextWeighing->changes, style));
    const auto forage = on(q, f.now.forage.typical, style);
    return tr("No further weighing before forage (around %1) would change what to do.").arg(forage);
}

QString seenKind(std::string_view kind) {
    if (kind == "scale") return tr("scale");
    if (kind == "two-sided lift") return tr("lifted on two sides");
    if (kind == "one-sided lift") return tr("lifted on one side");
    if (kind == "heft") return tr("hefted");
    if (kind == "combs") return tr("combs looked at");
    if (kind == "bees") return tr("bees counted");
    if (kind == "cluster") return tr("cluster seen");
    if (kind == "flying") return tr("bees flying");
    if (kind == "glimpse") return tr("comb glimpsed");
    return tr("dead");
}

QString dueVisit(const book::PlannedVisit& visit, const WordStyle& style) {
    switch (visit.what) {
    case book::VisitKind::Syrup: return visit.syrup ? tr("Syrup, %1").arg(volume(*visit.syrup, style)) : tr("Syrup");
    case book::VisitKind::Fondant: return visit.fondant ? tr("Fondant, %1").arg(mass(*visit.fondant, style)) : tr("Fondant");
    case book::VisitKind::Check: break;
    }
    return tr("Check the feeding");
}

QString dueWeighing() { return tr("weigh again"); }
QString dueFeeding() { return tr("feed"); }
std::string calendarName() { return tr("Bees").toStdString(); }

} // namespace winterlarder::text
