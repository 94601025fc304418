// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"
#include "winter/question.h"
#include "work/newest_work.h"

#include <QTimer>

#include <deque>

namespace winterlarder::desk {

//! Follows the winters of the yard's colonies, the one being looked at first: read on the book's thread, computed on one of its own. In
//! autumn, while the winter is still decided, only that one. What the records, the day or what was learned have overtaken is never
//! shown. Tested: tests/app/following_test.cpp.
class WinterFollower : public QObject {
    Q_OBJECT

public:
    WinterFollower(Yard* yard, winter::Sampling sampling, int threads, QObject* parent = nullptr);
    bool idle() const { return reading_ == 0 && current_ == ColonyId{} && queue_.empty(); }

signals:
    void idleAgain();
    void failed(const winterlarder::Problems& problems); //!< a winter could not be read or followed

private:
    void forget(); //!< another book, or none
    void want(ColonyId id);
    void keepOnlyThere();
    void next();
    void take(quint64 number, ColonyId id, const Outcome<answer::FollowReading>& read);
    void compute(const answer::FollowReading& reading, ColonyId id, quint64 number);
    void finished(quint64 number, ColonyId id, const FollowedPointer& followed);

    Yard* yard_;
    winter::Sampling sampling_;
    int threads_;
    std::deque<ColonyId> queue_;
    ColonyId current_{}; //!< being read or computed; 0: none
    int reading_ = 0;
    quint64 asked_ = 0;
    NewestWork work_;
};

//! Learns from the past winters of the book at hand, again after every change; a winter whose records are as they were is not computed
//! again, and one that breaks is told and left out. Tested: tests/app/following_test.cpp.
class Learning : public QObject {
    Q_OBJECT

public:
    Learning(Yard* yard, winter::Sampling sampling, int threads, QObject* parent = nullptr);
    bool idle() const { return !soon_.isActive() && reading_ == 0 && work_.idle(); }

signals:
    void idleAgain();
    void failed(const winterlarder::Problems& problems); //!< past winters could not be read or learned from

private:
    struct Known {
        answer::PastReading reading;
        std::optional<answer::ToldWinter> told; //!< nothing: it says nothing
    };
    using Cache = std::vector<std::shared_ptr<const Known>>;
    struct Lesson {
        std::shared_ptr<const Cache> cache;
        PastPointer past;
        Problems problems{}; //!< of winters that could not be computed: they are left out
    };

    void forget(); //!< another book, or none
    void learnSoon();
    void read();
    void compute(const answer::BookPast& past, Date day);
    //! Nothing where it was stopped.
    static std::optional<Lesson> learn(const answer::BookPast& past, Date day, const Cache& known,
                                       const ReferenceData& reference, winter::Sampling sampling, int threads,
                                       const std::stop_token& stop);
    void tellIfIdle();
    void tellFailure(const Problems& problems);

    Yard* yard_;
    winter::Sampling sampling_;
    int threads_;
    QTimer soon_;
    int reading_ = 0;
    quint64 asked_ = 0;
    std::optional<Date> day_;
    std::shared_ptr<const Cache> cache_ = std::make_shared<Cache>();
    NewestWork work_;
};

} // namespace winterlarder::desk
