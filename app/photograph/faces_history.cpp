// SPDX-License-Identifier: GPL-3.0-or-later
#include "photograph/faces_history.h"

#include <utility>

namespace winterlarder::desk {

void FacesHistory::push(Faces before) {
    before_.push_back(std::move(before));
    after_.clear();
    stepped_.reset();
}

void FacesHistory::keep() { push(faces); }

void FacesHistory::keepForStep(const Point& point) {
    if (stepped_ == point) return;
    keep();
    stepped_ = point;
}

void FacesHistory::dragged() {
    if (!dragging_) dragging_ = faces;
}

void FacesHistory::dragEnded() {
    if (dragging_) push(*std::exchange(dragging_, std::nullopt));
}

bool FacesHistory::turn(std::vector<Faces>& from, std::vector<Faces>& to) {
    if (from.empty()) return false;
    to.push_back(std::exchange(faces, std::move(from.back())));
    from.pop_back();
    stepped_.reset();
    return true;
}

bool FacesHistory::undo() { return turn(before_, after_); }
bool FacesHistory::redo() { return turn(after_, before_); }

} // namespace winterlarder::desk
