// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/yard_text.h"

#include "answer/due_looks.h"
#include "answer/style_of_place.h"
#include "cli/table.h"
#include "report/yard_plan.h"
#include "text/contexts.h"
#include "text/foreign_text.h"
#include "text/task_words.h"
#include "text/words.h"

#include <algorithm>

namespace winterlarder::cli {

namespace {

struct Line {
    report::Task task;
    std::string colony;
};

class YardText {
public:
    YardText(const std::string& yard, const std::vector<ColonyOfYard>& colonies, const Session& session)
        : colonies_(colonies), session_(session),
          style_(answer::styleFor(session.style, colonies.front().weighed.question)) {
        text_ =
            session.strong(say::CommandLine::tr("The yard %1 as a whole").arg(text::shown(yard))) + QLatin1Char('\n');
    }

    QString all() {
        gather();
        toBuy();
        combs();
        inOrder();
        return text_;
    }

private:
    void gather() {
        for (const auto& each : colonies_) {
            report::PlannedColony planned{&each.weighed.question, &each.weighed.advice};
            const auto tasks =
                answer::plannedFirst(each.visits, report::tasksOf(each.weighed.question, each.weighed.advice));
            if (!each.visits.empty()) planned.tasks = tasks;
            report::add(totals_, planned);
            for (const auto& task : text::asShown(tasks, style_))
                lines_.push_back({task, each.weighed.question.colony});
        }
        std::stable_sort(lines_.begin(), lines_.end(), [](const Line& a, const Line& b) {
            return a.task.date && (!b.task.date || *a.task.date < *b.task.date);
        });
    }

    void toBuy() {
        FactList facts;
        const auto add = [&](const QString& what, Mass mass) {
            if (mass > Mass(0)) facts.add(what, text::amount(mass, style_));
        };
        add(say::CommandLine::tr("Sugar"), totals_.sugar);
        add(say::CommandLine::tr("Fondant"), totals_.fondant);
        add(say::CommandLine::tr("Honey to take"), totals_.honey);
        if (totals_.lastSyrupDay)
            facts.add(say::CommandLine::tr("Last day for syrup"), text::date(*totals_.lastSyrupDay, style_));
        const bool nothing = totals_.sugar <= Mass(0) && totals_.fondant <= Mass(0);
        text_ += session_.strong(nothing ? say::CommandLine::tr("Nothing to buy") : say::CommandLine::tr("To buy")) +
                 QLatin1Char('\n') + facts.text();
    }

    void combs() {
        QString said;
        for (const auto& each : colonies_)
            for (const auto& gift : each.weighed.advice.gifts)
                if (gift.to == each.weighed.question.colony)
                    said +=
                        wrapped(say::CommandLine::tr("From %1 to %2: %3 (%4).")
                                    .arg(text::shown(gift.from), text::shown(gift.to),
                                         text::combPlaces(gift.places, static_cast<std::size_t>(gift.boxes), style_),
                                         text::amount(gift.honey, style_)),
                                QStringLiteral("  "));
        if (!said.isEmpty())
            text_ += session_.strong(worded(say::CommandLine::tr("%{Combs} to move first"), style_)) +
                     QLatin1Char('\n') + said;
    }

    void inOrder() {
        if (lines_.empty()) return;
        TextTable table({say::CommandLine::tr("Day"), say::CommandLine::tr("Colony"), say::CommandLine::tr("What")});
        for (const auto& line : lines_)
            table.add({line.task.date ? text::date(*line.task.date, style_) : say::CommandLine::tr("any day"),
                       text::shown(line.colony), text::shown(text::taskOfDay(line.task, style_).toStdString())});
        text_ += session_.strong(say::CommandLine::tr("What to do, by day")) + QLatin1Char('\n') + table.text();
    }

    const std::vector<ColonyOfYard>& colonies_;
    const Session& session_;
    const text::WordStyle style_;
    report::YardTotals totals_;
    std::vector<Line> lines_;
    QString text_;
};

} // namespace

QString yardText(const std::string& yard, const std::vector<ColonyOfYard>& colonies, const Session& session) {
    return colonies.size() < 2 ? QString() : YardText(yard, colonies, session).all();
}

} // namespace winterlarder::cli
