// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/colony.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <vector>

namespace winterlarder::desk {

//! One colony of the yard as the window holds it: its records now, and the newest answer that belongs to them.
struct ColonyEntry {
    ColonyId id;
    book::ColonyCase record;
    AnsweredPointer answered; //!< of an earlier record while `pending`
    bool pending = true;      //!< the records changed after the answer was made
    Problems problems;        //!< why there is no answer, where the records contradict each other
};

//! The colonies on the desk. Records change through edits only; answers come from outside and are taken only if they
//! were made from the records as they are now. Tested: tests/app/yard_test.cpp.
class Yard : public QObject {
    Q_OBJECT

public:
    explicit Yard(QObject* parent = nullptr);

    ColonyId add(book::ColonyCase record);
    const std::vector<ColonyEntry>& colonies() const { return colonies_; }
    //! Nothing where the colony is gone.
    const ColonyEntry* find(ColonyId id) const;
    int position(ColonyId id) const; //!< -1 where the colony is gone
    QString title() const;           //!< the yard's name, or what stands for one
    std::optional<Date> asOf() const; //!< latest asking day

    //! Changes records as one named, undoable step; a change of nothing is no step. Consecutive steps with the same
    //! non-empty `field` of one colony become one.
    void edit(ColonyId id, book::ColonyCase after, const QString& name, const QString& field = {});
    QUndoStack* edits() { return &edits_; }

    //! Takes an answer; false where it is stale.
    bool takeAnswer(ColonyId id, const AnsweredPointer& answered);
    void takeProblems(ColonyId id, const book::ColonyCase& record, Problems problems);

signals:
    void colonyAdded(winterlarder::desk::ColonyId id);
    void recordChanged(winterlarder::desk::ColonyId id);
    void answerChanged(winterlarder::desk::ColonyId id);

private:
    friend class RecordEdit;
    void replaceRecord(ColonyId id, const book::ColonyCase& record);
    ColonyEntry* entry(ColonyId id);

    std::vector<ColonyEntry> colonies_;
    QUndoStack edits_;
    int nextNumber_ = 1;
};

} // namespace winterlarder::desk

Q_DECLARE_METATYPE(winterlarder::desk::ColonyId)
