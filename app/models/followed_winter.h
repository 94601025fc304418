// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/learned_book.h"
#include "models/colony.h"
#include "tracking/follow.h"

#include <memory>
#include <vector>

namespace winterlarder::desk {

//! How the winter of one colony goes on a day: one immutable whole, made in the background and swapped in.
struct FollowedWinter {
    answer::FollowReading reading; //!< exactly what it was computed from
    answer::FollowedColony colony;
    std::optional<tracking::Following> following; //!< nothing where the autumn's question cannot be answered
    bool begun() const { return following && reading.asOf > reading.decided; }
    bool leads() const { return begun() && answer::followLeads(reading); }
};
using FollowedPointer = std::shared_ptr<const FollowedWinter>;

//! One past forecast beside what happened.
struct PastForecast {
    book::ColonyId colony{};
    QString name;
    int autumn = 0;
    Date date; //!< of the observation
    learning::ForecastScore score;
    answer::HandbookFigure handbook;
};

//! All a book's past winters taught.
struct PastLearned {
    std::optional<Date> asOf; //!< the day asked about; winters before the one that contains it count
    answer::BookLearned learned;
    std::vector<PastForecast> forecasts;
    learning::ScoreSummary summary;
};
using PastPointer = std::shared_ptr<const PastLearned>;

} // namespace winterlarder::desk
