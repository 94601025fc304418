// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/follow_text.h"

#include "answer/dead_hive.h"
#include "answer/follow_json.h"
#include "answer/style_of_place.h"
#include "cli/table.h"
#include "text/contexts.h"
#include "text/follow_words.h"
#include "text/foreign_text.h"
#include "text/remarks.h"
#include "text/seen_words.h"
#include "text/task_words.h"
#include "text/words.h"

#include <algorithm>

namespace winterlarder::cli {

namespace {

class FollowText {
public:
    FollowText(const answer::FollowedColony& colony, const tracking::Following& following, const Session& session)
        : q(*colony.question), f(following), style_(answer::styleFor(session.style, colony.autumn)), inTables_(style_),
          session_(session) {
        inTables_.poundsBeside = false; // a table has one unit
    }

    QString all() {
        if (!f.fitsNoWinter) figures();
        feeding();
        seen();
        return text_;
    }

private:
    void heading(const QString& words) { text_ += QLatin1Char('\n') + session_.strong(words) + QLatin1Char('\n'); }
    QString on(SeasonDay day) const {
        return text::date(q.year.date(std::clamp(day, firstSeasonDay, lastSeasonDay)), style_);
    }

    void figures() {
        TextTable table(
            {QString(), say::CommandLine::tr(">Forecast in autumn"), say::CommandLine::tr(">Forecast now")});
        const auto& then = f.autumn;
        const auto& now = f.now;
        table.add(
            {say::CommandLine::tr("Stores today"), text::amount(then.today, style_), text::amount(now.today, style_)});
        table.add(
            {say::CommandLine::tr("Lost since"), text::amount(then.lost, style_), text::amount(now.lost, style_)});
        table.add({say::CommandLine::tr("Left when spring forage starts"), text::amount(then.atForage, style_),
                   text::amount(now.atForage, style_)});
        table.add({say::CommandLine::tr("Fall below %1").arg(text::amount(q.reserve, style_)),
                   text::ofHundred(then.touchReserve, style_), text::ofHundred(now.touchReserve, style_)});
        table.add({say::CommandLine::tr("Run out"), text::ofHundred(then.runOut, style_),
                   text::ofHundred(now.runOut, style_)});
        text_ += table.text();
        FactList facts;
        if (now.reserveBy.low)
            facts.add(say::CommandLine::tr("Below %1").arg(text::amount(q.reserve, style_)), between(now.reserveBy));
        if (now.outBy.low) facts.add(say::CommandLine::tr("Nothing left"), between(now.outBy));
        facts.add(
            say::CommandLine::tr("Spring forage starts"),
            say::CommandLine::tr("%1 (%2 to %3)").arg(on(now.forage.typical), on(now.forage.low), on(now.forage.high)));
        text_ += facts.text();
    }

    // A tenth, half and nine tenths of what is believed, as far as it comes to that.
    QString between(const tracking::DaySpread& days) const {
        if (days.typical && *days.typical <= q.today) return say::CommandLine::tr("most likely by now");
        const QString early = *days.low <= q.today
                                  ? say::CommandLine::tr("perhaps by now")
                                  : say::CommandLine::tr("from %1").arg(on(*days.low)); // no day that is past
        return days.typical ? say::CommandLine::tr("%1, half by %2").arg(early, on(*days.typical)) : early;
    }

    void feeding() {
        if (f.feed) feedTable();
        const QString later = text::expectedLaterSentence(q, f, style_);
        if (!later.isEmpty()) text_ += QLatin1Char('\n') + wrapped(later, {});
    }

    void feedTable() {
        heading(say::CommandLine::tr("Feed"));
        FactList facts;
        if (f.feed->plan && f.feed->plan->syrup.sugar > Mass(0))
            facts.add(say::CommandLine::tr("Sugar"), text::amount(f.feed->plan->syrup.sugar, style_));
        facts.add(say::CommandLine::tr("Becomes stores"), text::amount(f.feed->stores, style_));
        if (f.feed->by > f.feed->begins()) facts.add(say::CommandLine::tr("Needed by"), on(f.feed->by));
        text_ += facts.text();
        TextTable table({say::CommandLine::tr("Day"), say::CommandLine::tr("What"), say::CommandLine::tr(">Amount")});
        for (const auto& lot : f.feed->lots)
            table.add(
                {text::date(lot.date, style_), say::CommandLine::tr("fondant"), text::amount(lot.fondant, inTables_)});
        if (f.feed->plan) visits(table, f.feed->plan->visits);
        text_ += table.text();
    }

    void visits(TextTable& table, const std::vector<feeding::Visit>& planned) const {
        std::vector<report::Task> tasks;
        for (const auto& visit : planned) tasks.push_back(report::taskOf(visit));
        tasks = text::asShown(std::move(tasks), style_);
        for (std::size_t i = 0; i < tasks.size(); ++i)
            table.add({text::date(planned[i].date, style_), text::visit(planned[i].kind, style_, text::Register::Brief),
                       tasks[i].syrup > Volume(0) ? text::amount(tasks[i].syrup, style_) : QString()});
    }

    void seen() {
        if (q.observations.empty()) return;
        heading(say::CommandLine::tr("Seen since"));
        TextTable table({say::CommandLine::tr("Day"), say::CommandLine::tr("What"), say::CommandLine::tr(">Read"),
                         say::CommandLine::tr(">Expected")});
        for (std::size_t i = 0; i < q.observations.size(); ++i) {
            const auto& observation = q.observations[i];
            const auto judged =
                std::find_if(f.judged.begin(), f.judged.end(), [&](const auto& each) { return each.observation == i; });
            const bool known = judged != f.judged.end();
            table.add({text::date(observation.date, style_), text::seenKind(tracking::seenKind(observation), style_),
                       text::seenRead(observation, style_),
                       known ? text::seenExpected(q, observation, *judged, style_) : QString()});
        }
        text_ += table.text();
    }

    const tracking::FollowQuestion& q;
    const tracking::Following& f;
    const text::WordStyle style_;
    text::WordStyle inTables_;
    const Session& session_;
    QString text_;
};

QString remarks(const QString& words, const std::vector<Remark>& remarks, const text::WordStyle& style,
                const Session& session) {
    if (remarks.empty()) return {};
    QString text = QLatin1Char('\n') + session.strong(words) + QLatin1Char('\n');
    for (const Remark& remark : remarks) {
        const auto sources = session.reference.sourcesOf(remark);
        const QString source =
            sources.empty() ? QString() : QStringLiteral(" [%1]").arg(QString::fromStdString(sources.front()));
        text += wrapped(text::shown(text::sentence(remark, style).toStdString()) + source, QStringLiteral("  - "));
    }
    return text;
}

// What is asked after a death, and what was found points to.
QString deadHive(const answer::FollowedColony& colony, const Session& session) {
    const auto found = colony.deadHive ? answer::pointsTo(*colony.deadHive) : std::vector<answer::PointsTo>{};
    const auto answered = [&](std::string_view id) {
        return std::any_of(found.begin(), found.end(), [&](const auto& each) { return each.question == id; });
    };
    QString asked;
    for (const auto id : answer::deathQuestions)
        if (!answered(id)) asked += wrapped(text::deathQuestion(id), QStringLiteral("  - "));
    std::vector<Remark> says;
    for (const auto& each : found) says.push_back(each.says);
    QString text = remarks(say::CommandLine::tr("What was found points to"), says,
                           answer::styleFor(session.style, colony.autumn), session);
    if (!asked.isEmpty())
        text += QLatin1Char('\n') + session.strong(say::CommandLine::tr("Look, and write it down with the outcome")) +
                QLatin1Char('\n') + asked;
    return text;
}

QString title(const answer::FollowedColony& colony, Date asOf, const Session& session) {
    return session.strong(say::CommandLine::tr("%1, %2, %3")
                              .arg(text::shown(colony.colony.name), text::shown(colony.autumn.yard),
                                   text::date(asOf, session.style))) +
           QLatin1Char('\n');
}

} // namespace

QString followText(const answer::FollowedColony& colony, const tracking::Following& following, const QString& headline,
                   Date asOf, const Session& session) {
    const auto style = answer::styleFor(session.style, colony.autumn);
    QString text = title(colony, asOf, session);
    text += session.strong(wrapped(headline, {}).trimmed()) + QLatin1Char('\n');
    if (following.state == tracking::FollowState::Dead) text += deadHive(colony, session);
    else text += FollowText(colony, following, session).all();
    text += remarks(say::CommandLine::tr("Reasons"), following.reasons, style, session);
    text += remarks(say::CommandLine::tr("Cautions"), following.cautions, style, session);
    return text + remarks(say::CommandLine::tr("Good practice"), following.goodPractice, style, session);
}

QString notFollowedText(const answer::FollowedColony& colony, Date asOf, const Session& session) {
    return title(colony, asOf, session) + session.strong(say::CommandLine::tr("It cannot be followed.")) +
           QLatin1Char('\n') +
           remarks(say::CommandLine::tr("Reasons"), colony.advice.reasons,
                   answer::styleFor(session.style, colony.autumn), session);
}

} // namespace winterlarder::cli
