// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"

#include <optional>
#include <string>
#include <vector>

namespace winterlarder::report {

//! What may be done at a colony on a visit.
enum class TaskKind {
    Syrup,
    Fondant,
    Check,
    TakeHoney,
    Unite,
    WeighAgain,
    CountMites,
    CallInspector,
    CountBees,
    RecordStores,
    MoveCombs,
    HangInEggs,    //!< a comb with eggs, to see whether there is a queen ...
    SeeQueenCells, //!< ... and the look at it
};
std::string idOf(TaskKind kind); //!< "syrup", "take-honey"
TaskKind taskKindOf(VisitKind kind);

//! One thing to do at one colony; nothing for a date = no day is pressing.
struct Task {
    std::optional<Date> date;
    TaskKind kind = TaskKind::Check;
    Mass sugar{0};
    Volume syrup{0};
    Mass fondant{0};
    Mass honey{0};
    int combs = 0;           //!< to hang in ...
    std::string from;        //!< ... from this colony; of uniting: the other colony, empty where none is known
    bool cannotWait = false; //!< food that goes on before anything is weighed
    bool longHive = false, queenless = false; //!< of uniting: see advice::UniteAdvice
    bool operator==(const Task&) const = default;
};

//! A visit of a feeding plan, whoever made it: syrup, fondant, or the check after them.
Task taskOf(const feeding::Visit& visit);

//! All an answer asks to be done, by day: combs that come from a neighbour, then every feeding visit and the check after it; honey to take by the advised end of
//! feeding; a comb with eggs for a colony without a queen and the look at it, then uniting by its last day; then the next look the answer names. Where nothing can be said, what must be found out first.
//! Tested: tests/report/sheets_test.cpp.
std::vector<Task> tasksOf(const advice::ColonyQuestion& question, const advice::Advice& advice);

//! Why an answer wants nothing fed, whatever was planned before: the hive is full, honey comes off, or the inspector is waited for;
//! or no bees are left.
enum class NoFeed { HiveFull, HoneyComesOff, Disease, NoBees };
//! Nothing where what was planned stands. What it forbids is in no sum and no calendar; the window shows it struck out with the reason.
//! Tested: tests/report/sheets_test.cpp, tests/app/plan/forbidden_feed_test.cpp, tests/cli/calendar_test.cpp.
std::optional<NoFeed> feedForbidden(const advice::Advice& advice);

} // namespace winterlarder::report
