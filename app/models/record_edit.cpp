// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/record_edit.h"

namespace winterlarder::desk {

namespace {
constexpr int mergingId = 1;
}

RecordEdit::RecordEdit(Yard& yard, ColonyId id, book::ColonyCase before, book::ColonyCase after, const QString& name,
                       const QString& field)
    : QUndoCommand(name), yard_(yard), colony_(id), before_(std::move(before)), after_(std::move(after)), field_(field) {}

void RecordEdit::undo() {
    yard_.replaceRecord(colony_, before_);
}

void RecordEdit::redo() {
    yard_.replaceRecord(colony_, after_);
}

int RecordEdit::id() const {
    return field_.isEmpty() ? -1 : mergingId;
}

bool RecordEdit::mergeWith(const QUndoCommand* later) {
    const auto* other = static_cast<const RecordEdit*>(later);
    if (other->colony_ != colony_ || other->field_ != field_) return false;
    after_ = other->after_;
    setText(other->text());
    setObsolete(before_ == after_);
    return true;
}

} // namespace winterlarder::desk
