// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/follow_question.h"
#include "tracking/hive_paths.h"
#include "tracking/linear_belief.h"

#include <vector>

namespace winterlarder::tracking {

//! One standard deviation of what a step changed: as given, else feeds and harvests feedStepSd of the amount, equipment equipmentSd.
Mass stepSd(const KnownStep& step, const ModelConstants& constants);

//! The error of a weighing or heft in two parts [kg]: one that is the same each time and one new each time.
struct ErrorParts {
    double lastingSd = 0;
    double freshSd = 0;
};
//! Scale: the tare's SD (1 kg where the keeper weighed it) is the whole; scaleReadingSd of it is new, the rest lasts. Two sides: the
//! same and liftTwoSidesSd new. One side: besides the scale's, liftOneSideSd (long hive: liftOneSideLongHiveSd) of the weight, of
//! whose variance lastingErrorShare lasts. Heft: heftSd of what the word stands for, split in the same way. Rain or snow adds
//! wetHiveSd to the new part. What a
//! heft of its own error has beyond heftSd is new each time. Only the part beyond the tare is told here for one-sided lifts and hefts.
ErrorParts tareError(const stores::Tare& tare, const ModelConstants& constants);
ErrorParts oneSideError(Mass gross, bool longHive, const ModelConstants& constants);
ErrorParts heftError(Mass standsFor, const ModelConstants& constants, std::optional<double> relativeSd = {});

//! Which unknown of the belief is what. Stores at the start of the decision's day come first.
//! Tested: tests/tracking/error_model_test.cpp.
class Unknowns {
public:
    Unknowns(const FollowQuestion& question, std::size_t winters, const ModelConstants& constants);

    LinearBelief& belief() { return belief_; }
    const LinearBelief& belief() const { return belief_; }
    static constexpr std::size_t stores = 0, tare = 1, oneSide = 2, heft = 3;

    //! A change of the stores or of the equipment: what is known of it, and the unknown that holds its error, if any.
    struct Change {
        SeasonDay day;
        double kg = 0;
        std::optional<std::size_t> error;
        bool ofStores = true;
    };
    const std::vector<Change>& changes() const { return changes_; }

    //! A change nobody recorded, unexplainedSd wide, in force from the start of a day on.
    void allowUnexplained(SeasonDay before, const ModelConstants& constants);

    //! The observation as a sum of unknowns, what the winters make of the rest, and the variance new to it.
    struct Reading {
        LinearBelief::Sum sum;
        double value = 0;      //!< as read, corrected for what is known of the method [kg]
        double known = 0;      //!< the part that no winter changes [kg]
        bool ofWeight = false; //!< bees and brood are on the scale too
        bool starved = false;  //!< nothing was left by then: neither stores nor what changed them is in it
        double freshVariance = 0;
    };
    Reading reading(const Observation& observation, const FollowQuestion& question, const ModelConstants& constants,
                    bool starved = false) const;
    //! What one winter makes of a reading, all unknowns at their means of that winter [kg].
    static double winterPart(const Reading& reading, const HivePaths& paths, SeasonDay day, std::size_t winter);

private:
    void shareErrors(const FollowQuestion& question, double tareVariance, double sideVariance, double heftVariance);
    void addChanges(const FollowQuestion& question, const ModelConstants& constants);
    LinearBelief belief_;
    std::vector<Change> changes_;
};

} // namespace winterlarder::tracking
