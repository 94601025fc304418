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
    case State::FeedNotRecorded:
        return say::Following::tr("Was the feed that was planned given? It is not written down.");
    case State::EatingFaster: return fasterSentence(q, f, style, form) + feedSentence(q, f, style, form);
    case State::MoreThanNeeded: return say::Following::tr("More is there than is needed: nothing to do before spring.");
    case State::OnCourse:
        if (f.light)
            return say::Following::tr("It was light when it was lifted on %1: weigh it again before anything is fed.")
                .arg(date(f.light->day, style));
        return f.feed ? say::Following::tr("Eaten as expected, but what is there will not last.") +
                            feedSentence(q, f, style, form)
                      : say::Following::tr("On course.");
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

QString seenKind(std::string_view kind, const WordStyle& style) {
    if (kind == "scale") return say::Following::tr("scale");
    if (kind == "two-sided lift") return say::Following::tr("lifted on two sides");
    if (kind == "one-sided lift") return say::Following::tr("lifted on one side");
    if (kind == "heft") return say::Following::tr("hefted");
    if (kind == "combs") return worded(say::Following::tr("%{combs} looked at"), style);
    if (kind == "bees") return say::Following::tr("bees counted");
    if (kind == "cluster") return say::Following::tr("cluster seen");
    if (kind == "flying") return say::Following::tr("bees flying");
    if (kind == "glimpse") return worded(say::Following::tr("%{comb} glimpsed"), style);
    return say::Following::tr("dead");
}

namespace {

QString dueSyrup(const std::optional<Volume>& syrup, const WordStyle& style) {
    return syrup ? say::Following::tr("Syrup, %1, in the evening").arg(amount(*syrup, style))
                 : say::Following::tr("Syrup, in the evening");
}
QString dueFondant(const std::optional<Mass>& fondant, const WordStyle& style) {
    return fondant ? say::Following::tr("Fondant, %1").arg(amount(*fondant, style)) : say::Following::tr("Fondant");
}
QString dueUniting(const std::string& partner) {
    if (partner.empty())
        return say::Following::tr("unite it with a healthy colony, today at the latest, in the evening");
    return say::Following::tr("unite it with %1, today at the latest, in the evening")
        .arg(QString::fromStdString(partner));
}
QString dueCombs(const report::Task& task, const WordStyle& style) {
    const QString from =
        task.from.empty() ? say::Following::tr("another colony of the yard") : QString::fromStdString(task.from);
    if (task.combs == 1)
        return worded(say::Following::tr("hang in one full %{comb} from %1 (%2)"), style)
            .arg(from, amount(task.honey, style));
    return worded(say::Following::tr("hang in %1 full %{combs} from %2 (%3)"), style)
        .arg(QString::number(task.combs), from, amount(task.honey, style));
}

} // namespace

QString dueVisit(const book::PlannedVisit& visit, const WordStyle& style) {
    switch (visit.what) {
    case book::VisitKind::Syrup: return dueSyrup(visit.syrup, style);
    case book::VisitKind::Fondant: return dueFondant(visit.fondant, style);
    case book::VisitKind::Check: break;
    }
    return say::Following::tr("Check the feeding");
}

QString dueTask(const report::Task& task, const WordStyle& style) {
    using report::TaskKind;
    switch (task.kind) {
    case TaskKind::Syrup: return dueSyrup(task.syrup, style);
    case TaskKind::Fondant: return dueFondant(task.fondant, style);
    case TaskKind::Check: return say::Following::tr("Check the feeding");
    case TaskKind::TakeHoney: return say::Following::tr("take %1 of honey off by today").arg(amount(task.honey, style));
    case TaskKind::Unite: return dueUniting(task.from);
    case TaskKind::WeighAgain: return say::Following::tr("weigh again");
    case TaskKind::CountMites: return say::Following::tr("count the mites, and look at the stores again");
    case TaskKind::CallInspector: return say::Following::tr("call the bee inspector, move nothing");
    case TaskKind::CountBees: return worded(say::Following::tr("count the %{combs} the bees cover"), style);
    case TaskKind::RecordStores: return say::Following::tr("look at the stores, or weigh");
    case TaskKind::MoveCombs: return dueCombs(task, style);
    }
    return {};
}

QString taskOfDay(const report::Task& task, const WordStyle& style) {
    if (task.kind == report::TaskKind::TakeHoney)
        return say::Following::tr("take %1 of honey off, at the latest").arg(amount(task.honey, style));
    if (task.kind == report::TaskKind::Syrup && task.sugar > Mass(0))
        return say::Following::tr("%1 (%2 of sugar)", "syrup").arg(dueTask(task, style), amount(task.sugar, style));
    if (task.kind != report::TaskKind::Unite) return dueTask(task, style);
    if (task.from.empty()) return say::Following::tr("unite it with a healthy colony, at the latest, in the evening");
    return say::Following::tr("unite it with %1, at the latest, in the evening").arg(QString::fromStdString(task.from));
}

QString dueDetails(const report::Task& task, const WordStyle& style) {
    using report::TaskKind;
    switch (task.kind) {
    case TaskKind::Syrup:
        return task.sugar > Mass(0)
                   ? say::Following::tr("%1 of sugar. Inside the hive, all colonies of the yard the same evening.")
                         .arg(amount(task.sugar, style))
                   : say::Following::tr("Inside the hive, all colonies of the yard the same evening.");
    case TaskKind::Fondant: return say::Following::tr("So that it touches the bees. Weigh both sides first.");
    case TaskKind::Check: return say::Following::tr("Taken and sealed? Weigh; feeder off, mouse guard on.");
    case TaskKind::TakeHoney: return say::Following::tr("Before feeding and treating.");
    case TaskKind::Unite:
        return say::Following::tr("Newspaper between, the better queen stays. Earlier is better, on a warm evening.");
    case TaskKind::WeighAgain: return say::Following::tr("Both sides, without opening. Write it down and ask again.");
    case TaskKind::CountMites: return {};
    case TaskKind::CallInspector: return say::Following::tr("There are signs of disease.");
    case TaskKind::CountBees:
    case TaskKind::RecordStores: return say::Following::tr("Until then nothing can be said of this colony's winter.");
    case TaskKind::MoveCombs: return say::Following::tr("Before anything is fed.");
    }
    return {};
}

QString dueSince(Date planned, const WordStyle& style) {
    return say::Following::tr("It was planned for %1 and is not ticked off. If it was given, write it down.")
        .arg(date(planned, style));
}

QString nothingDue(const std::string& colony) {
    return say::Following::tr("%1: the records of its winter fit none, so it is not known when to weigh or feed")
        .arg(QString::fromStdString(colony));
}
std::string calendarName() { return say::Following::tr("Bees").toStdString(); }

} // namespace winterlarder::text
