// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/outcome.h"

#include <QObject>
#include <QPointer>

#include <exception>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <type_traits>
#include <utility>

namespace winterlarder::desk {

//! An exception that came out of work, as a problem: an error of ours, whatever the user wrote.
inline Problem internalProblem(const char* what) { return {ProblemKind::Internal, {}, what, {}}; }

template <class T> struct AsOutcome { using Type = Outcome<T>; };
template <class T> struct AsOutcome<Outcome<T>> { using Type = Outcome<T>; };

//! What `Work`, called with `Given`, brings: Outcome<T> for a T, an Outcome as it is.
template <class Work, class... Given>
using OutcomeOf = typename AsOutcome<std::decay_t<std::invoke_result_t<Work&, Given...>>>::Type;

//! Calls work; an exception becomes a problem of kind Internal. Nothing is thrown.
template <class Work, class... Given> OutcomeOf<Work, Given...> outcomeOf(Work& work, Given&&... given) {
    try {
        return work(std::forward<Given>(given)...);
    } catch (const std::exception& error) {
        return internalProblem(error.what());
    } catch (...) {
        return internalProblem("an exception of no known kind");
    }
}

//! Work for another thread, and what follows it on the thread that asked.
struct Task {
    std::function<void(const std::stop_token&)> work; //!< may be run again where it was interrupted
    std::function<void()> then;
};

//! `then` gets the Outcome of the last run of `work`; it is left out once `context` is gone.
template <class Work, class Then> Task taskOf(QObject* context, Work work, Then then) {
    using Result = OutcomeOf<Work, const std::stop_token&>;
    const auto result = std::make_shared<std::optional<Result>>();
    Task task;
    task.work = [result, work = std::move(work)](const std::stop_token& stop) mutable {
        result->emplace(outcomeOf(work, stop));
    };
    task.then = [result, context = QPointer<QObject>(context), then = std::move(then)]() mutable {
        if (context) then(std::move(**result));
    };
    return task;
}

} // namespace winterlarder::desk
