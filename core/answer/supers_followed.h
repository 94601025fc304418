// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "tracking/observation.h"

#include <vector>

namespace winterlarder::answer {

//! Honey in supers kept for people while a winter is followed: it hangs on the scale and is none of the bees' stores, as in the autumn's answer
//! (advice::honeyApart). What is harvested is taken from it first, and from the stores beyond it; a later look says how much of it there is; once the
//! hive stands without supers it is gone, and the supers with it. Where supers are the bees' a harvest is of the stores alone.
//! Tested: tests/answer/supers_followed_test.cpp.
class SupersFollowed {
public:
    //! `autumn`: of the day the winter is followed from.
    explicit SupersFollowed(const advice::ColonyQuestion& autumn);

    void harvested(SeasonDay day, Mass honey);
    void seen(SeasonDay day, Mass apart);
    void off(SeasonDay day);
    //! All of it as changes of weight alone (equipment) and of stores (harvests), by day.
    std::vector<tracking::KnownStep> steps() const;

private:
    struct Event {
        SeasonDay day;
        enum class Kind { Harvested, Seen, Off } kind;
        Mass kg;
    };
    SeasonDay decided_;
    bool apart_; //!< the keeper said that supers are for people
    Mass honey_; //!< in supers for people on the day of the decision
    Mass tare_;  //!< of those supers, empty
    std::vector<Event> events_;
};

} // namespace winterlarder::answer
