// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard.h"

#include "models/record_edit.h"

#include <algorithm>

namespace winterlarder::desk {

Yard::Yard(QObject* parent) : QObject(parent) {}

ColonyId Yard::add(book::ColonyCase record) {
    const ColonyId id{nextNumber_++};
    colonies_.push_back({id, std::move(record), nullptr, true, {}});
    emit colonyAdded(id);
    return id;
}

ColonyEntry* Yard::entry(ColonyId id) {
    const auto found = std::find_if(colonies_.begin(), colonies_.end(), [id](const auto& colony) { return colony.id == id; });
    return found == colonies_.end() ? nullptr : &*found;
}

const ColonyEntry* Yard::find(ColonyId id) const {
    return const_cast<Yard*>(this)->entry(id);
}

int Yard::position(ColonyId id) const {
    const auto* colony = find(id);
    return colony ? static_cast<int>(colony - colonies_.data()) : -1;
}

QString Yard::title() const {
    for (const auto& colony : colonies_)
        if (colony.record.yard && !colony.record.yard->empty()) return QString::fromStdString(*colony.record.yard);
    return tr("The yard");
}

std::optional<Date> Yard::asOf() const {
    std::optional<Date> latest;
    for (const auto& colony : colonies_) latest = latest ? std::max(*latest, colony.record.asOf) : colony.record.asOf;
    return latest;
}

void Yard::edit(ColonyId id, book::ColonyCase after, const QString& name, const QString& field) {
    const auto* colony = find(id);
    if (!colony || colony->record == after) return;
    edits_.push(new RecordEdit(*this, id, colony->record, std::move(after), name, field));
}

void Yard::replaceRecord(ColonyId id, const book::ColonyCase& record) {
    auto* colony = entry(id);
    if (!colony || colony->record == record) return;
    colony->record = record;
    colony->problems.clear();
    colony->pending = !(colony->answered && colony->answered->record == record);
    emit recordChanged(id);
}

bool Yard::takeAnswer(ColonyId id, const AnsweredPointer& answered) {
    auto* colony = entry(id);
    if (!colony || !answered || !(answered->record == colony->record)) return false;
    colony->answered = answered;
    colony->problems.clear();
    colony->pending = false;
    emit answerChanged(id);
    return true;
}

void Yard::takeProblems(ColonyId id, const book::ColonyCase& record, Problems problems) {
    auto* colony = entry(id);
    if (!colony || !(record == colony->record)) return;
    colony->problems = std::move(problems);
    colony->pending = false;
    emit answerChanged(id);
}

} // namespace winterlarder::desk
