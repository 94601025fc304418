// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "answer/question_of_case.h"
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
    Problems problems;      //!< what kept the text from being got at all
    std::vector<Remark> setAside{};             //!< records of a book that are in doubt: not in the text
    std::optional<book::ColonyCase> record{};   //!< of a book, as it stands there; nothing: what the text says
    std::optional<advice::UnitSystem> units{};  //!< chosen on the command line; nothing: as the case says, else those of its place
    std::string at() const; //!< "FILE" or "<stdin>:LINE"
};

//! What became of it: faults, or an answer that stands alone, or one that waits for its yard.
struct BatchAnswer {
    std::string at;
    Problems problems;
    std::optional<book::ColonyCase> record;
    std::optional<advice::YardMember> member; //!< losses empty unless the case has a yard
};

//! Reads and weighs one case, on one thread.
BatchAnswer answerOf(const BatchItem& item, const ReferenceData& reference, winter::Sampling sampling, int threads);

//! Puts answers back into the order of their cases. Answers of a yard are held, and what follows them, until finish():
//! only then is the last of a yard known; combs are shared out among its colonies before they are shown.
class OrderedAnswers {
public:
    //! Shows one answer; false: it was faulty.
    using Show = std::function<void(const BatchAnswer&)>;
    explicit OrderedAnswers(Show show) : show_(std::move(show)) {}
    void put(std::uint64_t position, BatchAnswer answer);
    void finish();

private:
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
