// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/yard/yard_plan.h"
#include "answer/doubt_words.h"
#include "cli/session.h"

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <vector>

namespace winterlarder::cli {

//! One case of a batch, not yet read.
struct BatchItem {
    std::uint64_t position = 0; //!< in the batch, from 0
    std::string file;           //!< name for messages: "<stdin>" or the file's
    int line = 0;               //!< of standard input; 0: the whole file is the case
    std::string text;
    Problems problems;                        //!< what kept the text from being got at all
    std::vector<Remark> setAside{};           //!< records of a book that are in doubt: not in the text
    std::optional<book::ColonyCase> record{}; //!< of a book, as it stands there; nothing: what the text says
    //! chosen on the command line; nothing: as the case says, else those of its place
    std::optional<UnitSystem> units{};
    std::string at() const; //!< "FILE" or "<stdin>:LINE"
};

//! A colony and its answer: alone, or in the plan of its yard.
struct WeighedColony {
    advice::ColonyQuestion question;
    advice::Advice advice;
};

//! What became of it: faults, or an answer that stands alone, or one that waits for its yard.
struct BatchAnswer {
    std::string at;
    Problems problems;
    std::optional<book::ColonyCase> record;
    std::optional<WeighedColony> member;
    Problems asked{}; //!< of a case file that is answered all the same
};

//! Reads and weighs one case, on one thread.
BatchAnswer answerOf(const BatchItem& item, const ReferenceData& reference, winter::Sampling sampling, int threads);

//! What the plans of yards are made with.
struct YardPlanning {
    const ReferenceData& reference;
    winter::Sampling sampling;
    int threads = 1;
    advice::MovingCombs combs = advice::MovingCombs::Allowed;
};

//! Puts answers back into the order of their cases. Answers of a yard are held, and what follows them, until finish():
//! only then is the last of a yard known, and its colonies are answered in the yard's plan.
class OrderedAnswers {
public:
    //! Shows one answer.
    using Show = std::function<void(const BatchAnswer&)>;
    OrderedAnswers(const YardPlanning& planning, Show show) : planning_(planning), show_(std::move(show)) {}
    void put(std::uint64_t position, BatchAnswer answer);
    void finish();

private:
    void plan(const std::vector<BatchAnswer*>& yard) const;
    YardPlanning planning_;
    Show show_;
    std::uint64_t next_ = 0;
    bool yardsOpen_ = false;
    std::map<std::uint64_t, BatchAnswer> waiting_;
};

//! Answers cases on several threads at once. At most a few cases a thread wait to be answered, so memory stays bounded
//! however many come. Every case is computed on one thread: the number of threads changes no digit.
class Batch {
public:
    Batch(const ReferenceData& reference, winter::Sampling sampling, int threads, OrderedAnswers& answers);
    ~Batch();
    Batch(const Batch&) = delete;
    Batch& operator=(const Batch&) = delete;
    //! Hands a case over; waits while too many are unanswered.
    void add(BatchItem item);
    //! Waits until all are answered.
    void finish();

private:
    void work();
    const ReferenceData& reference_;
    winter::Sampling sampling_;
    OrderedAnswers& answers_;
    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<BatchItem> queue_;
    std::size_t unanswered_ = 0, most_;
    bool closed_ = false;
    std::vector<std::thread> workers_;
};

} // namespace winterlarder::cli
