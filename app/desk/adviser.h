// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/yard/yard_plan.h"
#include "models/colony.h"

#include <stop_token>
#include <vector>

namespace winterlarder::desk {

//! Turns records into an answer; called from a worker thread, so an adviser is used through const calls only.
class Adviser {
public:
    virtual ~Adviser() = default;

    //! The whole answer; a null pointer when stopped; problems where the records contradict each other.
    virtual Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int position,
                                            std::stop_token stop) const = 0;

    //! The same over few winters, for a first sight of what is tried out.
    virtual Outcome<AnsweredPointer> preview(const book::ColonyCase& record, int position, std::stop_token stop) const {
        return answer(record, position, std::move(stop));
    }

    //! An answer again, the same but for its winters, which it had let go, and the picture of all its options; nothing where stopped.
    virtual AnsweredPointer recall(const AnsweredPointer& answered, std::stop_token stop) const {
        (void)stop;
        return answered;
    }

    //! Looks over a yard's answers together (who is united, and combs that could be given from one colony to another): as many answers, in their order.
    virtual std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>& yard,
                                                  advice::MovingCombs combs) const = 0;
};

} // namespace winterlarder::desk
