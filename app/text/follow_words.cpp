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

QString at(const tracking::FollowQuestion& q, SeasonDay day, AskedNumber number, const WordStyle& style,
           NumberForm form) {
    return form(number, on(q, day, style));
}

QString fed(const tracking::WinterFeed& feed, const WordStyle& style, NumberForm form) {
    if (feed.plan)
        return say::Following::tr("feed %1 of sugar as syrup")
            .arg(form(AskedNumber::FeedNow, amount(feed.plan->syrup.sugar, style)));
    return say::Following::tr("lay %1 of fondant on the bees")
        .arg(form(AskedNumber::FeedNow, amount(feed.fondant, style)));
}

// What is fed next, and when: a sentence of its own, or nothing.
QString feedSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style,
                     NumberForm form) {
    if (!f.feed) return {};
    const QString what = fed(*f.feed, style, form);
    if (f.feed->begins() <= q.today) return say::Following::tr(" Today %1.").arg(what);
    return say::Following::tr(" On %2 %1.").arg(what, at(q, f.feed->begins(), AskedNumber::FeedBy, style, form));
}

QString fasterSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style,
                       NumberForm form) {
    const auto& by = f.now.reserveBy;
    const QString reserve = form(AskedNumber::Reserve, amount(q.reserve, style));
    const QString check = f.faster && f.faster->checkScale ? say::Following::tr(" Check the scale.") : QString();
    if (by.typical)
        return say::Following::tr("Eating faster than planned: likely below %1 by %2.")
                   .arg(reserve, at(q, *by.typical, AskedNumber::ReserveGone, style, form)) +
               check;
    if (by.low)
        return say::Following::tr("Eating faster than planned: perhaps below %1 from %2 on.")
                   .arg(reserve, at(q, *by.low, AskedNumber::ReserveGone, style, form)) +
               check;
    return say::Following::tr("Eating faster than planned, but it should last.") + check;
}

QString actSentence(const tracking::Following& f, const WordStyle& style, NumberForm form) {
    if (!f.feed) return say::Following::tr("Act now: food for less than three weeks is left.");
    const QString what = fed(*f.feed, style, form);
    if (f.light && !f.light->weighed)
        return say::Following::tr("It was light when it was lifted on %1: %2 today, then weigh both sides.",
                                  "day, feed")
            .arg(date(f.light->day, style), what);
    if (f.now.out.share > 0.5)
        return say::Following::
            tr("Act now: the stores have most likely run out. See today from outside whether it lives; if so %1 at once.")
                .arg(what);
    return say::Following::tr("Act now: %1 today, then weigh again.").arg(what);
}

QString reachSentence(const tracking::Following& f, const WordStyle& style, NumberForm form) {
    const QString start = say::Following::tr("The food is out of the cluster's reach.");
    return f.feed ? start + say::Following::tr(" Today %1.").arg(fed(*f.feed, style, form)) : start;
}

// Eaten as expected, but not enough.
QString shortSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style,
                      NumberForm form) {
    const QString start =
        (f.now.touchReserve.share > 0.5
             ? say::Following::tr("Not enough to reach spring forage without feeding: %1 winters fall below %2.")
             : say::Following::tr(
                   "It may not be enough to reach spring forage without feeding: %1 winters fall below %2."))
            .arg(form(AskedNumber::TouchesNow, ofHundred(f.now.touchReserve, style)),
                 form(AskedNumber::Reserve, amount(q.reserve, style)));
    if (f.feed) return start + feedSentence(q, f, style, form);
    if (!f.nextWeighing) return start + say::Following::tr(" Nothing is fed today.");
    return start + say::Following::tr(" Nothing is fed today; weigh it by %1.")
                       .arg(form(AskedNumber::WeighBy, date(f.nextWeighing->date, style)));
}

// It is asked about, and the day is told without it.
QString notRecordedSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style,
                            NumberForm form) {
    const QString asked =
        say::Following::tr("Was the feed planned from %1 on given? Write it down; until then it is not counted.", "day")
            .arg(date(q.unticked.front().date, style));
    const QString then =
        f.fallsShort ? shortSentence(q, f, style, form) : say::Following::tr("Without it there is enough as well.");
    return asked + QLatin1Char(' ') + then;
}

} // namespace

QString followHeadline(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style,
                       NumberForm form) {
    using State = tracking::FollowState;
    switch (f.state) {
    case State::Dead: return say::Following::tr("The colony is dead.");
    case State::CannotSay:
        if (f.heavier)
            return say::Following::tr(
                       "It is heavier than can be explained: check the scale, and what was added, then weigh it again.") +
                   feedSentence(q, f, style, form);
        return say::Following::tr("It cannot be said: what was seen contradicts every winter.") +
               feedSentence(q, f, style, form);
    case State::FoodOutOfReach: return reachSentence(f, style, form);
    case State::ActNow: return actSentence(f, style, form);
    case State::Dwindling:
        return worded(
                   say::Following::tr(
                       "Dwindling: far fewer bees than a winter leaves. On a day of %1 put them together in a small space between two full %{combs}."),
                   style)
                   .arg(quantity(QStringLiteral("10 °C"), style)) +
               feedSentence(q, f, style, form);
    case State::LessThanThought:
        return say::Following::tr("Less was in the hive than was thought.") + feedSentence(q, f, style, form);
    case State::FeedNotRecorded: return notRecordedSentence(q, f, style, form);
    case State::EatingFaster: return fasterSentence(q, f, style, form) + feedSentence(q, f, style, form);
    case State::MoreThanNeeded:
        if (!f.spring) return say::Following::tr("More is there than is needed: nothing to do before spring.");
        return f.spring->queenRoom
                   ? worded(
                         say::Following::tr(
                             "More is there than is needed: feed nothing, and once forage has begun make room for the queen to lay."),
                         style)
                   : say::Following::tr("More is there than is needed: feed nothing.");
    case State::OnCourse:
        if (f.light)
            return say::Following::tr("It was light when it was lifted on %1: weigh it again before anything is fed.")
                .arg(date(f.light->day, style));
        return f.fallsShort ? shortSentence(q, f, style, form) : say::Following::tr("On course.");
    }
    return {};
}

QString followState(tracking::FollowState state) {
    using State = tracking::FollowState;
    switch (state) {
    case State::Dead: return say::Following::tr("dead");
    case State::CannotSay: return say::Following::tr("cannot say");
    case State::FoodOutOfReach: return say::Following::tr("food out of reach");
    case State::ActNow: return say::Following::tr("act now");
    case State::Dwindling: return say::Following::tr("dwindling");
    case State::LessThanThought: return say::Following::tr("less than thought");
    case State::FeedNotRecorded: return say::Following::tr("feed not written down");
    case State::EatingFaster: return say::Following::tr("eating faster");
    case State::MoreThanNeeded: return say::Following::tr("more than needed");
    case State::OnCourse: return say::Following::tr("on course");
    }
    return {};
}

QString expectedLaterSentence(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style) {
    if (!f.expectedLater) return {};
    const auto day = [&q](SeasonDay on) { return q.year.date(std::clamp(on, firstSeasonDay, lastSeasonDay)); };
    const auto& later = *f.expectedLater;
    return laterSentence({later.sugar, later.fondant, day(later.from), day(later.until)}, style);
}

QString followRisk(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style,
                   NumberForm form) {
    if (f.state == tracking::FollowState::Dead || f.fitsNoWinter) return {};
    return say::Following::
        tr("About %1 left today, where the autumn expected %2. If nothing is done, %4 winters that fit what was seen fall below %3 "
           "and %5 run out (as forecast in autumn: %6 and %7).")
            .arg(form(AskedNumber::LeftToday, amount(f.now.today, style)),
                 form(AskedNumber::ExpectedToday, amount(f.autumn.today.typical, style)),
                 form(AskedNumber::Reserve, amount(q.reserve, style)),
                 form(AskedNumber::TouchesNow, ofHundred(f.now.touchReserve, style)),
                 form(AskedNumber::RunsOutNow, ofHundred(f.now.runOut, style)),
                 form(AskedNumber::TouchedInAutumn, ofHundred(f.autumn.touchReserve, style)),
                 form(AskedNumber::RanOutInAutumn, ofHundred(f.autumn.runOut, style)));
}

QString followNext(const tracking::FollowQuestion& q, const tracking::Following& f, const WordStyle& style,
                   NumberForm form) {
    if (f.state == tracking::FollowState::Dead) return {};
    if (f.fitsNoWinter)
        return say::Following::tr(
            "Look through what was written down of this winter: something was harvested, fed or weighed on another day or in another amount.");
    if (f.state == tracking::FollowState::CannotSay)
        return say::Following::tr(
            "Weigh it again, and look for a feed that was not written down or ticked off, and for a lid, a box or a stone that was on or off.");
    if (f.nextWeighing && f.nextWeighing->forAVisit)
        return say::Following::tr("Weigh on %1, before more is fed.")
            .arg(form(AskedNumber::WeighBy, date(f.nextWeighing->date, style)));
    if (f.nextWeighing)
        return say::Following::tr("Weigh again by %1: in %2 of 100 cases that would change what to do.")
            .arg(form(AskedNumber::WeighBy, date(f.nextWeighing->date, style)),
                 form(AskedNumber::WeighingChanges, count(100 * f.nextWeighing->changes, style)));
    const auto forage = form(AskedNumber::ForageNow, on(q, f.now.forage.typical, style));
    return say::Following::tr("No further weighing before forage (around %1) would change what to do.").arg(forage);
}

QString deathQuestion(std::string_view id) {
    if (id == "food_left") return say::Following::tr("Was food left within reach of the bees?");
    if (id == "heads_in_cells") return say::Following::tr("Were dead bees head down in the cells?");
    if (id == "mites_on_floor") return say::Following::tr("Were there many mites on the floor?");
    if (id == "brood_pattern") return say::Following::tr("Was there brood, and was it solid or patchy?");
    return say::Following::tr("Was the queen found?");
}

} // namespace winterlarder::text
