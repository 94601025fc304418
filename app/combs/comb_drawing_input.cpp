// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_drawing.h"

#include <QAccessible>
#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr double gripReach = 5; // px from an edge that still take hold of it
constexpr double smallestBuilt = 0.05;

CombField fieldOf(CombEdge edge) {
    const auto zone = zoneOf(edge);
    return zone ? fieldOf(*zone) : CombField::Built;
}

CombEdge edgeOf(CombField field) {
    const auto zone = zoneOf(field);
    return zone ? edgeOf(*zone) : CombEdge::Built;
}

// To whole hundredths, as a share would be typed.
double rounded(double share) { return std::round(share * 100) / 100; }

} // namespace

// ---- asking for changes ---------------------------------------------------------------------------------------------------

void CombDrawing::apply(const CombEdit& edit) {
    const auto index = static_cast<std::size_t>(edit.comb);
    if (!editable_ || edit.record == combs_[index].record) return;
    combs_[index] = redrawn(combs_[index], edit.record);
    measureWords();
    announce();
    update();
    emit combEdited(edit);
    QAccessibleValueChangeEvent changed(this, shareOf(edit.record, typing_.picked()));
    changed.setChild(edit.comb);
    QAccessible::updateAccessibility(&changed);
}

void CombDrawing::setShare(int comb, CombField field, double share) {
    if (comb < 0 || comb >= static_cast<int>(combs_.size())) return;
    const double kept = std::clamp(share, 0.0, 1.0);
    const auto record = withShare(at(comb).record, field, kept);
    typing_.entered(record);
    apply({comb, record});
}

void CombDrawing::take(const CombTyping::Typed& typed) {
    if (typed.edit) apply(*typed.edit);
}

void CombDrawing::repeatLast() {
    if (chosen_ < 0 || !editable_) return;
    take(typing_.repeat(chosen_, at(chosen_).record, chosen_ > 0 ? &at(chosen_ - 1).record : nullptr));
    choose(std::min(chosen_ + 1, static_cast<int>(combs_.size()) - 1));
}

// ---- keys -----------------------------------------------------------------------------------------------------------------

std::vector<NamedKeys> CombDrawing::namedKeys() {
    std::vector<NamedKeys> keys{
        {{Qt::Key_Left}, tr("the %{comb} before")},
        {{Qt::Key_Right, Qt::Key_Return, Qt::Key_Enter}, tr("the next %{comb}")},
        {{Qt::Key_Up, Qt::Key_Down}, tr("the %{comb} above or below")},
        {{Qt::Key_Home, Qt::Key_End}, tr("the first or the last %{comb}")},
        {{Qt::Key_Space}, tr("holds what the %{comb} entered last holds, and goes on to the next")}};
    for (const auto& [typed, what] : typingKeys()) {
        keys.push_back({{}, what});
        for (const auto& key : typed) keys.back().keys.push_back(QKeySequence::fromString(key));
    }
    return keys;
}

bool CombDrawing::moveByKey(int key) {
    const int last = static_cast<int>(combs_.size()) - 1;
    const auto rows = [this](int down) {
        return combBeside(rowsIn(placesOf(combs_), size(), wordsIn(size())), chosen_, down);
    };
    switch (key) {
    case Qt::Key_Left: choose(std::max(0, chosen_ - 1)); return true;
    case Qt::Key_Right:
    case Qt::Key_Return:
    case Qt::Key_Enter: choose(std::min(last, chosen_ + 1)); return true;
    case Qt::Key_Up: choose(rows(-1)); return true;
    case Qt::Key_Down: choose(rows(1)); return true;
    case Qt::Key_Home: choose(0); return true;
    case Qt::Key_End: choose(last); return true;
    default: return false;
    }
}

void CombDrawing::keyPressEvent(QKeyEvent* event) {
    const bool command = event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier);
    if (combs_.empty() || chosen_ < 0 || command) return QWidget::keyPressEvent(event);
    if (event->key() == Qt::Key_Escape && drag_) {
        drag_.reset();
        update();
        emit combDragged(at(chosen_));
        return;
    }
    if (moveByKey(event->key())) return;
    if (!editable_) return QWidget::keyPressEvent(event);
    if (event->key() == Qt::Key_Space) return repeatLast();
    if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace)
        return take(typing_.emptyComb(chosen_, at(chosen_).record));
    const auto before = typing_.picked();
    const auto answer =
        typing_.type(event->text(), event->modifiers() & Qt::ShiftModifier, chosen_, at(chosen_).record);
    if (!answer.taken) return QWidget::keyPressEvent(event);
    if (typing_.picked() != before) emit fieldPicked(typing_.picked());
    take(answer);
}

// ---- mouse ----------------------------------------------------------------------------------------------------------------

std::optional<CombEdge> CombDrawing::edgeAt(int comb, QPointF point) const {
    const QRectF face = faceOf(comb);
    if (!face.adjusted(-gripReach, -gripReach, gripReach, gripReach).contains(point)) return std::nullopt;
    const auto& record = at(comb).record;
    const CombLevels levels(at(comb).format.outline, fillingOf(record));
    std::optional<CombEdge> nearest;
    double closest = gripReach;
    const auto consider = [&](CombEdge edge) {
        const double away = levels.distance(edge, combPointAt(point, face), face.width(), face.height());
        if (away >= closest) return;
        closest = away;
        nearest = edge;
    };
    // The picked zone first: edges of zones that hold nothing lie upon others, and only the picked one can be drawn out.
    consider(edgeOf(typing_.picked()));
    for (const auto edge : {CombEdge::Capped, CombEdge::Brood, CombEdge::Open, CombEdge::BeeBread})
        if (shareOf(record, *zoneOf(edge)) > 0) consider(edge);
    if (!nearest) consider(CombEdge::Built);
    return nearest;
}

void CombDrawing::hover(QPointF point) {
    std::optional<std::pair<int, CombEdge>> now;
    const int comb = combAt(point);
    if (comb >= 0 && editable_)
        if (const auto edge = edgeAt(comb, point)) now = {comb, *edge};
    if (now == hovered_) return;
    hovered_ = now;
    if (now)
        setCursor(now->second == CombEdge::Brood || now->second == CombEdge::BeeBread ? Qt::SizeAllCursor
                                                                                      : Qt::SizeVerCursor);
    else unsetCursor();
    update();
}

void CombDrawing::drag(QPointF point) {
    auto& drag = *drag_;
    if (!drag.moving && (point - drag.from).manhattanLength() < QApplication::startDragDistance()) return;
    if (!drag.moving) {
        drag.moving = true;
        pick(fieldOf(drag.edge));
    }
    const auto& comb = at(drag.comb);
    const CombLevels levels(comb.format.outline, fillingOf(comb.record));
    double share = rounded(levels.shareThrough(drag.edge, combPointAt(point, faceOf(drag.comb))));
    if (drag.edge == CombEdge::Built) share = std::max(share, smallestBuilt);
    drag.record = withShare(comb.record, fieldOf(drag.edge), share);
    update();
    emit combDragged(shown(drag.comb));
}

void CombDrawing::letGo() {
    const auto drag = *drag_;
    drag_.reset();
    update();
    if (!drag.record) return;
    typing_.entered(*drag.record);
    apply({drag.comb, *drag.record});
}

void CombDrawing::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
    const int comb = combAt(event->position());
    if (comb < 0) return;
    choose(comb);
    if (!editable_) return;
    const auto edge = edgeAt(comb, event->position());
    drag_ = Drag{comb, event->position(), edge.value_or(edgeOf(typing_.picked())), edge.has_value(), false, {}};
}

void CombDrawing::mouseMoveEvent(QMouseEvent* event) {
    if (drag_) drag(event->position());
    else hover(event->position());
}

void CombDrawing::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && drag_) letGo();
    hover(event->position());
}

void CombDrawing::leaveEvent(QEvent*) {
    hovered_.reset();
    unsetCursor();
    update();
}

} // namespace winterlarder::desk
