// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <QUndoCommand>

namespace winterlarder::desk {

//! One named step from a colony's records before to its records after; steps on the same field merge.
class RecordEdit : public QUndoCommand {
public:
    RecordEdit(Yard& yard, ColonyId id, book::ColonyCase before, book::ColonyCase after, const QString& name, const QString& field);

    void undo() override;
    void redo() override;
    int id() const override;
    bool mergeWith(const QUndoCommand* later) override;

private:
    Yard& yard_;
    ColonyId colony_;
    book::ColonyCase before_, after_;
    QString field_;
};

} // namespace winterlarder::desk
