// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/task_words.h"

#include "text/contexts.h"
#include "text/words.h"

#include <algorithm>

namespace winterlarder::text {

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
    case TaskKind::HangInEggs:
        return worded(say::Following::tr("hang in a %{comb} with eggs from another colony"), style);
    case TaskKind::SeeQueenCells:
        return worded(say::Following::tr("look for queen cells on the %{comb} with eggs"), style);
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

namespace {

QString unitingDetails(const report::Task& task, const WordStyle& style) {
    const QString how =
        task.longHive ? worded(say::Following::tr(
                                   "%{Combs} side by side behind a sheet of newspaper, the bees misted with water."),
                               style)
                      : say::Following::tr("Newspaper between.");
    return (task.queenless ? say::Following::tr("%1 Only once it is certain that it has no queen, on a warm evening.",
                                                "how to unite")
                           : say::Following::tr("%1 The better queen stays. Earlier is better, on a warm evening.",
                                                "how to unite"))
        .arg(how);
}

} // namespace

QString dueDetails(const report::Task& task, const WordStyle& style) {
    using report::TaskKind;
    switch (task.kind) {
    case TaskKind::Syrup:
        return task.sugar > Mass(0)
                   ? say::Following::tr("%1 of sugar. Inside the hive, all colonies of the yard the same evening.")
                         .arg(amount(task.sugar, style))
                   : say::Following::tr("Inside the hive, all colonies of the yard the same evening.");
    case TaskKind::Fondant:
        return task.cannotWait
                   ? say::Following::tr("So that it touches the bees, at once. Weigh both sides afterwards.")
                   : say::Following::tr("Weigh both sides from outside first. Lay it so that it touches the bees.");
    case TaskKind::Check: return say::Following::tr("Taken and sealed? Weigh; feeder off, mouse guard on.");
    case TaskKind::TakeHoney: return say::Following::tr("Before feeding and treating.");
    case TaskKind::Unite: return unitingDetails(task, style);
    case TaskKind::WeighAgain: return say::Following::tr("Both sides, without opening. Write it down and ask again.");
    case TaskKind::CountMites: return {};
    case TaskKind::CallInspector: return say::Following::tr("There are signs of disease.");
    case TaskKind::CountBees:
    case TaskKind::RecordStores: return say::Following::tr("Until then nothing can be said of this colony's winter.");
    case TaskKind::MoveCombs: return say::Following::tr("Before anything is fed.");
    case TaskKind::HangInEggs: return say::Following::tr("From a healthy colony. It shows whether there is a queen.");
    case TaskKind::SeeQueenCells:
        return say::Following::tr(
            "Queen cells mean that the queen is gone: unite it. None mean that there is one: look for eggs, and ask again.");
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

QString howToUnite(const advice::UniteAdvice& unite, const WordStyle& style) {
    const QString partner = QString::fromStdString(unite.partner);
    const QString other =
        partner.isEmpty() ? say::Words::tr("a healthy queenright colony that is strong enough") : partner;
    if (unite.longHive)
        return worded(
                   unite.queenless
                       ? say::Words::tr(
                             "Once it is certain that it has no queen: in the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water.")
                       : say::Words::tr(
                             "In the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water; the better queen is kept."),
                   style)
            .arg(other);
    return (unite.queenless
                ? say::Words::tr(
                      "Once it is certain that it has no queen: in the evening, with a sheet of newspaper between, above %1.")
                : say::Words::tr(
                      "In the evening, with a sheet of newspaper between, above %1; the better queen is kept."))
        .arg(other);
}

namespace {

// Syrup goes with the sugar that is shown of it, so that no visit seems thicker than it is; together they stay the whole.
std::vector<Volume> syrupOf(const std::vector<report::Task>& tasks, const std::vector<Mass>& sugar) {
    Volume syrup{0};
    Mass whole{0};
    for (const auto& task : tasks) syrup += task.syrup;
    for (std::size_t i = 0; i < tasks.size(); ++i)
        if (tasks[i].syrup > Volume(0)) whole += sugar[i];
    std::vector<Volume> parts;
    for (std::size_t i = 0; i < tasks.size(); ++i)
        parts.push_back(tasks[i].syrup > Volume(0) && whole > Mass(0) ? syrup * (sugar[i].value() / whole.value())
                                                                      : tasks[i].syrup);
    return parts;
}

// Visits with as much sugar get as much syrup: nobody pours two amounts for equal visits, though they may then fall a glass short of the whole.
void makeEqual(std::vector<Volume>& syrup, const std::vector<report::Task>& tasks, const std::vector<Mass>& sugar,
               const WordStyle& style) {
    std::vector<std::size_t> fed;
    for (std::size_t i = 0; i < tasks.size(); ++i)
        if (tasks[i].syrup > Volume(0)) fed.push_back(i);
    const auto differs = [&](std::size_t i) { return sugar[i] != sugar[fed.front()]; };
    if (fed.empty() || sugar[fed.front()] <= Mass(0) || std::any_of(fed.begin(), fed.end(), differs)) return;
    Volume whole{0};
    for (const std::size_t i : fed) whole += tasks[i].syrup;
    const Volume each = shownParts(std::vector{whole / static_cast<double>(fed.size())}, style).front();
    for (const std::size_t i : fed) syrup[i] = each;
}

} // namespace

std::vector<report::Task> asShown(std::vector<report::Task> tasks, const WordStyle& style) {
    std::vector<Mass> sugar;
    for (const auto& task : tasks) sugar.push_back(task.sugar);
    sugar = shownParts(sugar, style);
    std::vector<Volume> syrup = shownParts(syrupOf(tasks, sugar), style);
    makeEqual(syrup, tasks, sugar, style);
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        tasks[i].sugar = sugar[i];
        tasks[i].syrup = syrup[i];
    }
    return tasks;
}

} // namespace winterlarder::text
