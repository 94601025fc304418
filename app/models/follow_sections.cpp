// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/follow_sections.h"

#include "answer/follow_json.h"
#include "models/words.h"
#include "text/contexts.h"
#include "text/follow_words.h"
#include "text/remarks.h"
#include "text/seen_words.h"
#include "text/task_words.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

// What the answers to the questions after a death point to; nothing where it lives.
std::vector<answer::PointsTo> foundAfterDeath(const FollowedWinter& followed) {
    const bool dead = followed.following && followed.following->state == tracking::FollowState::Dead;
    return dead && followed.colony.deadHive ? answer::pointsTo(*followed.colony.deadHive)
                                            : std::vector<answer::PointsTo>{};
}

class Sections {
public:
    explicit Sections(const FollowedWinter& followed)
        : q(*followed.colony.question), f(*followed.following), style_(words::styleOf(followed.colony.autumn)),
          found_(foundAfterDeath(followed)) {}

    std::vector<FollowSection> all() {
        if (f.state != tracking::FollowState::Dead) {
            add(say::FollowSections::tr("Dates that matter"), dates());
            add(say::FollowSections::tr("To feed"), feeding());
        } else {
            add(say::FollowSections::tr("What was found points to"), found());
            add(say::FollowSections::tr("Look, and write it down with how the winter went"), toLookFor());
        }
        add(say::FollowSections::tr("The safe way"), remarks(f.cautions));
        if (f.spring) add(say::FollowSections::tr("In spring"), spring());
        add(say::FollowSections::tr("Seen since the decision"), seen());
        return std::move(sections);
    }

private:
    QString on(SeasonDay day) const { return words::date(q.year.date(std::clamp(day, firstSeasonDay, lastSeasonDay))); }
    void add(const QString& heading, const QStringList& lines) {
        if (!lines.isEmpty()) sections.push_back({heading, lines});
    }

    QStringList dates() const {
        QStringList lines;
        const auto& now = f.now;
        const QString reserve = text::amount(q.reserve, style_);
        if (now.reserveBy.low)
            lines << (now.reserveBy.typical
                          ? say::FollowSections::tr(
                                "It falls below %1 from %2 on in a tenth of these winters, by %3 in half.")
                                .arg(reserve, on(*now.reserveBy.low), on(*now.reserveBy.typical))
                          : say::FollowSections::tr("It falls below %1 from %2 on in a tenth of these winters.")
                                .arg(reserve, on(*now.reserveBy.low)));
        if (now.outBy.low)
            lines << (now.outBy.typical
                          ? say::FollowSections::tr("Nothing is left from %1 in a tenth, by %2 in half.")
                                .arg(on(*now.outBy.low), on(*now.outBy.typical))
                          : say::FollowSections::tr("Nothing is left from %1 in a tenth.").arg(on(*now.outBy.low)));
        lines << say::FollowSections::tr("Spring forage starts around %1 (%2 to %3); about %4 left by then.")
                     .arg(on(now.forage.typical), on(now.forage.low), on(now.forage.high), words::spread(now.atForage));
        return lines;
    }

    QStringList feeding() const {
        QStringList lines;
        if (f.feed) lines << visits(*f.feed);
        const QString later = text::expectedLaterSentence(q, f, style_);
        if (!later.isEmpty()) lines << later;
        return lines;
    }

    QStringList visits(const tracking::WinterFeed& feed) const {
        QStringList lines;
        for (const auto& visit : feed.lots)
            lines << say::FollowSections::tr("%1: %2 of fondant touching the cluster")
                         .arg(words::dateWithWeekday(visit.date), text::amount(visit.fondant, style_));
        if (feed.plan) lines << visitLines(feed.plan->visits);
        if (feed.by > feed.begins()) lines << say::FollowSections::tr("It is wanted by %1.").arg(on(feed.by));
        return lines;
    }

    static QStringList visitLines(const std::vector<feeding::Visit>& visits) {
        std::vector<report::Task> tasks;
        for (const auto& visit : visits) tasks.push_back(report::taskOf(visit));
        tasks = text::asShown(std::move(tasks), words::style());
        QStringList lines;
        for (std::size_t i = 0; i < visits.size(); ++i)
            lines << visitLine(visits[i].date, visits[i].kind, tasks[i].syrup, tasks[i].fondant);
        return lines;
    }
    static QString visitLine(Date day, feeding::VisitKind kind, Volume syrup, Mass fondant) {
        const QString amount = syrup > Volume(0)   ? text::amount(syrup, words::style())
                               : fondant > Mass(0) ? words::amount(fondant)
                                                   : QString();
        return say::FollowSections::tr("%1: %2 %3")
            .arg(words::dateWithWeekday(day), words::visitKind(kind), amount)
            .trimmed();
    }

    QStringList found() const {
        QStringList lines;
        for (const auto& each : found_) lines << text::sentence(each.says, style_);
        return lines;
    }

    QStringList toLookFor() const {
        QStringList lines;
        for (const auto id : answer::deathQuestions)
            if (std::none_of(found_.begin(), found_.end(), [id](const auto& each) { return each.question == id; }))
                lines << text::deathQuestion(id);
        return lines;
    }

    QStringList remarks(const std::vector<Remark>& remarks) const {
        QStringList lines;
        for (const auto& remark : remarks) lines << text::sentence(remark, style_);
        return lines;
    }

    QStringList spring() const {
        const auto& s = *f.spring;
        QStringList lines;
        lines << say::FollowSections::tr("Spring forage should carry it from about %1 (%2 to %3).")
                     .arg(on(s.carries.typical), on(s.carries.low), on(s.carries.high));
        lines << say::FollowSections::tr("Leave %1 for a cold spell until forage is steady.")
                     .arg(text::amount(s.leave, style_));
        if (s.surplus.low < kilograms(0.5)) return lines << say::FollowSections::tr("Nothing is to come out.");
        lines << say::FollowSections::tr("Above that %1 or more are left in 9 winters of 10, and may come out.")
                     .arg(text::amount(s.surplus.low, style_));
        if (s.queenRoom)
            lines << worded(say::FollowSections::tr(
                                "Take out about %1 of full %{combs}, so that the queen finds cells to lay in."),
                            style_)
                         .arg(words::amount(*s.queenRoom));
        if (!s.mayTake) lines << say::FollowSections::tr("None of it is honey to eat: the hive was treated meanwhile.");
        else if (!s.combs.empty())
            lines << worded(say::FollowSections::tr(
                                "%{Combs} that may be taken: %1 (they took no syrup and were not in a treated hive)."),
                            style_)
                         .arg(places(s.combs));
        else
            lines << worded(
                say::FollowSections::tr(
                    "No %{comb} is known to be honey that may be taken: %{combs} that took syrup are for the bees."),
                style_);
        return lines;
    }
    static QString places(const std::vector<int>& combs) {
        QStringList places;
        for (int comb : combs) places << QString::number(comb + 1);
        return places.join(QStringLiteral(", "));
    }

    QStringList seen() const {
        QStringList lines;
        for (std::size_t i = 0; i < q.observations.size(); ++i) {
            const auto& observation = q.observations[i];
            const auto judged =
                std::find_if(f.judged.begin(), f.judged.end(), [&](const auto& each) { return each.observation == i; });
            const QString day = words::date(observation.date),
                          kind = text::seenKind(tracking::seenKind(observation), style_);
            if (judged == f.judged.end() || !tracking::isWeighed(observation)) {
                lines << say::FollowSections::tr("%1: %2").arg(day, kind);
                continue;
            }
            const QString line =
                judged->contradicts
                    ? say::FollowSections::tr("%1: %2, %3, where %4 was expected: it contradicts every winter.")
                    : say::FollowSections::tr("%1: %2, %3, where %4 was expected.");
            lines << line.arg(day, kind, text::seenRead(observation, style_),
                              text::seenExpected(q, observation, *judged, style_));
        }
        return lines;
    }

    const tracking::FollowQuestion& q;
    const tracking::Following& f;
    const text::WordStyle style_;
    const std::vector<answer::PointsTo> found_;
    std::vector<FollowSection> sections;
};

} // namespace

std::vector<Remark> followReasons(const FollowedWinter& followed) {
    if (!followed.following) return {};
    auto reasons = followed.following->reasons;
    for (const auto& found : foundAfterDeath(followed)) reasons.push_back(found.says);
    return reasons;
}

std::vector<FollowSection> followSections(const FollowedWinter& followed) {
    if (!followed.following || !followed.colony.question) return {};
    return Sections(followed).all();
}

} // namespace winterlarder::desk
