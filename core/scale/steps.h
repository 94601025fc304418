// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/levels.h"
#include "scale/reading.h"

#include <vector>

namespace winterlarder::scale {

//! A sudden change that stays: something was put on, taken off or poured in.
struct Jump {
    std::int64_t begin = 0; //!< moment of the last reading before it
    std::int64_t end = 0;   //!< moment of the first reading after it
    Mass change{0};
    Mass error{0}; //!< its standard error, from the scatter of the readings
    std::int64_t middle() const { return begin + (end - begin) / 2; }
    bool operator==(const Jump&) const = default;
};

//! A stretch whose readings say nothing of the hive's weight, ends included: somebody leaned on it, boxes were off, rain lay on the lid.
struct Stretch {
    enum class Kind {
        Disturbed, //!< the weight went away and came back
        Wet,       //!< it rose at once and the rise was gone within a day and a half: rain or snow
    };
    Kind kind = Kind::Disturbed;
    std::int64_t begin = 0, end = 0;
    Mass most{0}; //!< farthest from the weight before, with its sign
    bool operator==(const Stretch&) const = default;
};

struct Jumps {
    std::vector<Jump> jumps;        //!< by time, not overlapping
    std::vector<Stretch> disturbed; //!< by time
};

//! What bees and weather do to the weight at most within so many hours, rising and falling [kg]; a larger change is a jump. Judgement:
//! 0.25 kg and 0.75 kg an hour (foragers leaving or coming home, the best hour of a flow), up to 6 kg of rise and 2.5 kg of fall in a day,
//! then 4 kg and 0.5 kg a day. Within-day patterns: Meikle et al. 2008, Apidologie 39:694; Holst and Meikle 2018, Insects 9:176.
double naturalRise(double hours);
double naturalFall(double hours);

//! Smallest jump that is looked for [kg]: less is not told from dew, rain and foragers.
inline constexpr double smallestJumpKg = 0.5;

//! Finds jumps. From one level to the next (or the next but one) the weight changes by more than the largest of smallestJumpKg, what is
//! natural in that time, and 2.5 times the usual largest change of these days. Changes within an hour of each other are one disturbance;
//! one that is undone within three hours, or by the next reading of a sparse log, leaves no jump, nor
//! does a rise that goes on for more than two hours with no part that stands out, a flow. A jump's size is the distance
//! of what the two sides say of its middle (scale/side.h; levels alone where a gap of more than three hours lies between).
//! Tested: tests/scale/steps_test.cpp.
Jumps findJumps(const std::vector<Reading>& readings, const std::vector<Level>& levels);

//! Takes rises of at most 2 kg out of the jumps whose level a day to a day and a half later (jumps in between taken out) is back by six
//! tenths, and makes them wet stretches. A feed never goes that fast: its water does not.
void setRainApart(Jumps& found, const std::vector<Level>& levels);

//! The weight without its jumps, stretch by stretch: sum of the changes of all jumps that end at or before a moment.
//! Moments must be asked in rising order.
class JumpSum {
public:
    explicit JumpSum(const std::vector<Jump>& jumps) : jumps_(jumps) {}
    Mass upTo(std::int64_t moment) {
        for (; next_ < jumps_.size() && jumps_[next_].end <= moment; ++next_) sum_ += jumps_[next_].change;
        return sum_;
    }

private:
    const std::vector<Jump>& jumps_;
    std::size_t next_ = 0;
    Mass sum_{0};
};

} // namespace winterlarder::scale
