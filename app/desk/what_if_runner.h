// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/adviser.h"

#include <QObject>

#include <memory>
#include <optional>

namespace winterlarder::desk {

class AnswerQueue;

//! Answers what is tried out with another demand: a preview over few winters first, then the full answer. Only the newest question is
//! answered; older ones are stopped, and what they bring late is thrown away. Tested: tests/app/what_if_test.cpp.
class WhatIfRunner : public QObject {
    Q_OBJECT

public:
    explicit WhatIfRunner(std::shared_ptr<const Adviser> adviser, QObject* parent = nullptr);
    ~WhatIfRunner() override;

    void ask(int position, const book::ColonyCase& record);
    void cancel();
    bool idle() const;

signals:
    void previewed(winterlarder::desk::AnsweredPointer answered);
    void answered(winterlarder::desk::AnsweredPointer answered);
    void contradicted(winterlarder::Problems problems);
    void cancelled();

private:
    std::unique_ptr<AnswerQueue> preview_, full_;
    std::optional<book::ColonyCase> asked_; //!< the newest; nothing until one was
    int position_ = 0;
};

} // namespace winterlarder::desk
