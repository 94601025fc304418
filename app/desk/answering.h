// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/adviser.h"
#include "models/yard.h"
#include "work/newest_work.h"

#include <QObject>

namespace winterlarder::desk {

class AnswerQueue;

//! Keeps the yard's answers up to date: asks for each colony whose records changed, and once all are answered looks the yard over as
//! a whole. Nothing is asked before an adviser is there.
class Answering : public QObject {
    Q_OBJECT

public:
    explicit Answering(Yard* yard, QObject* parent = nullptr);
    ~Answering() override;

    void useAdviser(std::shared_ptr<const Adviser> adviser);
    const std::shared_ptr<const Adviser>& adviser() const { return adviser_; }
    bool idle() const;
    //! The answer's winters are wanted again, if they were let go: something is to be laid over them.
    void recall(ColonyId id);

signals:
    void idleAgain();
    void failed(const winterlarder::Problems&
                    problems); //!< an answer stands, but something that belongs to it could not be made

private:
    void askAll();
    void prefer(ColonyId id);
    void tellIfIdle();
    void ask(ColonyId id, NewestWork::Turn turn);
    void planAnew();
    void shareOut();
    void takeShared(const std::vector<ColonyId>& ids, const std::vector<AnsweredPointer>& asked,
                    const std::vector<AnsweredPointer>& shared);

    Yard* yard_;
    std::shared_ptr<const Adviser> adviser_;
    std::unique_ptr<AnswerQueue> queue_;
    NewestWork sharing_{nullptr, Pace::Slow};
    NewestWork recalling_{nullptr, Pace::Steady};
};

} // namespace winterlarder::desk
