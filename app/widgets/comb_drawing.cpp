// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/comb_drawing.h"

#include "models/words.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

namespace {
constexpr int longestRow = 12;
constexpr double gap = 8;
}

CombDrawing::CombDrawing(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("The combs of the hive"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void CombDrawing::show(std::vector<DrawnComb> combs) {
    combs_ = std::move(combs);
    if (chosen_ >= static_cast<int>(combs_.size())) chosen_ = static_cast<int>(combs_.size()) - 1;
    if (chosen_ < 0 && !combs_.empty()) chosen_ = 0;
    announce();
    updateGeometry();
    update();
}

void CombDrawing::choose(int comb) {
    const int kept = std::clamp(comb, -1, static_cast<int>(combs_.size()) - 1);
    if (kept == chosen_) return;
    chosen_ = kept;
    announce();
    update();
    emit combChosen(chosen_);
}

void CombDrawing::announce() {
    const QString said = chosen_ >= 0 ? combs_[static_cast<std::size_t>(chosen_)].spoken : tr("No comb is recorded");
    if (said == accessibleDescription()) return;
    setAccessibleDescription(said);
}

std::vector<CombDrawing::Row> CombDrawing::rows() const {
    std::vector<Row> made;
    for (int i = 0; i < static_cast<int>(combs_.size()); ++i) {
        const int box = combs_[static_cast<std::size_t>(i)].box;
        if (made.empty() || made.back().box != box) made.push_back({box, {}});
        made.back().combs.push_back(i);
    }
    std::vector<Row> shown;
    for (auto row = made.rbegin(); row != made.rend(); ++row) {
        const auto count = row->combs.size();
        const auto parts = (count + longestRow - 1) / longestRow;
        const auto each = (count + parts - 1) / parts;
        for (std::size_t from = 0; from < count; from += each) {
            const auto to = std::min(count, from + each);
            shown.push_back({row->box, {row->combs.begin() + static_cast<std::ptrdiff_t>(from), row->combs.begin() + static_cast<std::ptrdiff_t>(to)}});
        }
    }
    return shown;
}

double CombDrawing::rowLabelWidth() const {
    return fontMetrics().horizontalAdvance(tr("box %1").arg(2)) + 12.0;
}

std::vector<CombDrawing::Slot> CombDrawing::layOut() const {
    const auto shown = rows();
    std::vector<Slot> places;
    if (shown.empty()) return places;
    std::size_t most = 1;
    double tallest = 0, widest = 1;
    for (const auto& row : shown) {
        most = std::max(most, row.combs.size());
        double deep = 0;
        for (const int comb : row.combs) {
            const auto& outline = combs_[static_cast<std::size_t>(comb)].look.outline;
            deep = std::max(deep, outline.height.value());
            widest = std::max({widest, outline.top.value(), outline.bottom.value()});
        }
        tallest += deep;
    }
    const double words = fontMetrics().height() + 4.0;
    const double across = (width() - rowLabelWidth()) / static_cast<double>(most) - gap;
    const double down = (height() - static_cast<double>(shown.size()) * (words + gap) - 6) / tallest;
    const double scale = std::max(0.02, std::min({across / widest, down, 0.62}));
    double used = 0;
    for (const auto& row : shown) {
        double deep = 0;
        for (const int comb : row.combs) deep = std::max(deep, combs_[static_cast<std::size_t>(comb)].look.outline.height.value());
        used += deep * scale + words + gap;
    }
    double top = 5 + std::clamp((height() - used) / 2, 0.0, 24.0);
    for (const auto& row : shown) {
        double left = rowLabelWidth();
        double deep = 0;
        for (const int comb : row.combs) {
            const auto& outline = combs_[static_cast<std::size_t>(comb)].look.outline;
            const double wide = std::max(outline.top.value(), outline.bottom.value()) * scale;
            const QRectF face(left, top, wide, outline.height.value() * scale);
            const double step = widest * scale + gap;
            places.push_back({comb, face, QRectF(left - gap / 2, face.bottom() + 1, step, words)});
            left += std::max(step, std::min(across + gap, 92.0));
            deep = std::max(deep, face.height());
        }
        top += deep + words + gap;
    }
    return places;
}

int CombDrawing::combAt(QPointF point) const {
    for (const auto& place : layOut())
        if (place.face.adjusted(-gap / 2, -2, gap / 2, place.words.height()).contains(point)) return place.comb;
    return -1;
}

QSize CombDrawing::sizeHint() const {
    return {760, static_cast<int>(rows().size()) * 84 + 10};
}

QSize CombDrawing::minimumSizeHint() const {
    return {320, static_cast<int>(std::max<std::size_t>(1, rows().size())) * (fontMetrics().height() + 42)};
}

void CombDrawing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& colours = coloursOf(*this);
    int labelled = -1;
    for (const auto& place : layOut()) {
        const auto& comb = combs_[static_cast<std::size_t>(place.comb)];
        auto look = comb.look;
        look.chosen = place.comb == chosen_;
        paintComb(painter, look, place.face, colours, std::clamp(place.face.width() / 15, 3.6, 6.0));
        painter.setPen(look.chosen ? colours.text : colours.quietText);
        QFont font = this->font();
        font.setBold(look.chosen);
        painter.setFont(font);
        const QRectF words(place.face.center().x() - place.words.width() / 2, place.words.top(), place.words.width(), place.words.height());
        painter.drawText(words, Qt::AlignHCenter | Qt::AlignTop, comb.kilograms);
        if (labelled != comb.box) {
            labelled = comb.box;
            painter.setFont(this->font());
            painter.setPen(colours.quietText);
            painter.drawText(QRectF(0, place.face.top(), rowLabelWidth(), place.face.height()), Qt::AlignLeft | Qt::AlignVCenter,
                             comb.inSuper ? tr("super") : tr("box %1").arg(comb.box + 1));
        }
        if (look.chosen && hasFocus()) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(colours.accent, 2));
            painter.drawRoundedRect(place.face.adjusted(-3.5, -3.5, 3.5, 3.5), 3, 3);
        }
    }
}

void CombDrawing::mousePressEvent(QMouseEvent* event) {
    const int comb = combAt(event->position());
    if (comb >= 0) choose(comb);
}

void CombDrawing::moveBy(int combs) {
    if (combs_.empty()) return;
    choose(std::clamp(chosen_ + combs, 0, static_cast<int>(combs_.size()) - 1));
}

void CombDrawing::moveRow(int rowsDown) {
    const auto shown = rows();
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const auto& combs = shown[i].combs;
        const auto found = std::find(combs.begin(), combs.end(), chosen_);
        if (found == combs.end()) continue;
        const auto target = static_cast<std::ptrdiff_t>(i) + rowsDown;
        if (target < 0 || target >= static_cast<std::ptrdiff_t>(shown.size())) return;
        const auto& next = shown[static_cast<std::size_t>(target)].combs;
        const auto column = std::min<std::ptrdiff_t>(found - combs.begin(), static_cast<std::ptrdiff_t>(next.size()) - 1);
        choose(next[static_cast<std::size_t>(column)]);
        return;
    }
}

void CombDrawing::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left: moveBy(-1); return;
    case Qt::Key_Right: moveBy(1); return;
    case Qt::Key_Up: moveRow(-1); return;
    case Qt::Key_Down: moveRow(1); return;
    case Qt::Key_Home: choose(0); return;
    case Qt::Key_End: choose(static_cast<int>(combs_.size()) - 1); return;
    default: QWidget::keyPressEvent(event);
    }
}

bool CombDrawing::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const int comb = combAt(help->pos());
        if (comb >= 0) QToolTip::showText(help->globalPos(), combs_[static_cast<std::size_t>(comb)].spoken, this);
        else QToolTip::hideText();
        return true;
    }
    return QWidget::event(event);
}

} // namespace winterlarder::desk
