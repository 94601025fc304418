// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_drawing.h"

#include "combs/comb_drawing_accessible.h"
#include "models/plain_tip.h"
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

constexpr double around = 4; // a comb is hit this close to it

QString lineBroken(const QString& honey, bool broken) {
    QString text = honey;
    return broken ? text.replace(QStringLiteral(" ("), QStringLiteral("\n(")) : text;
}

} // namespace

CombDrawing::CombDrawing(QWidget* parent) : QWidget(parent) {
    speakCombDrawings();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("The combs of the hive"));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

// ---- what is shown --------------------------------------------------------------------------------------------------------

void CombDrawing::show(std::vector<DrawnComb> combs) {
    const bool otherCombs = combs.size() != combs_.size();
    combs_ = std::move(combs);
    if (chosen_ >= static_cast<int>(combs_.size())) chosen_ = static_cast<int>(combs_.size()) - 1;
    if (chosen_ < 0 && !combs_.empty()) chosen_ = 0;
    if (otherCombs) {
        drag_.reset();
        hovered_.reset();
        typing_.forget();
    }
    announce();
    measureWords();
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
    if (hasFocus() && chosen_ >= 0) {
        QAccessibleEvent focused(this, QAccessible::Focus);
        focused.setChild(chosen_);
        QAccessible::updateAccessibility(&focused);
    }
}

void CombDrawing::announce() {
    const QString said = chosen_ >= 0 ? at(chosen_).spoken : tr("No comb is recorded");
    if (said != accessibleDescription()) setAccessibleDescription(said);
}

void CombDrawing::pick(CombField field) {
    if (field == typing_.picked()) return;
    typing_.pick(field);
    emit fieldPicked(field);
}

DrawnComb CombDrawing::shown(int comb) const {
    if (drag_ && drag_->comb == comb && drag_->record) return redrawn(at(comb), *drag_->record);
    return at(comb);
}

// ---- where it is drawn ----------------------------------------------------------------------------------------------------

void CombDrawing::measureWords() {
    const auto widest = [this](bool broken) {
        double wide = 0;
        for (const auto& comb : combs_)
            for (const auto& line : lineBroken(comb.kilograms, broken).split(QLatin1Char('\n')))
                wide = std::max(wide, fontMetrics().horizontalAdvance(line) + 2.0);
        return wide;
    };
    widestWhole_ = widest(false);
    widestBroken_ = widest(true);
}

void CombDrawing::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) measureWords();
}

CombWords CombDrawing::wordsOver(int lines) const {
    return {fontMetrics().horizontalAdvance(tr("box %1").arg(2)) + 12.0, fontMetrics().height() * double(lines) + 6,
            widestBroken_};
}

// In one line where the rows leave room for it, else in two.
CombWords CombDrawing::wordsIn(QSizeF size) const {
    auto words = wordsOver(1);
    std::size_t most = 1;
    for (const auto& row : rowsIn(placesOf(combs_), size, words)) most = std::max(most, row.combs.size());
    const double room = (size.width() - words.rowLabel) / static_cast<double>(most) - 2;
    if (widestWhole_ > room) return wordsOver(2);
    words.widest = widestWhole_;
    return words;
}

std::vector<CombSlot> CombDrawing::slots_() const { return layOut(placesOf(combs_), size(), wordsIn(size())); }

int CombDrawing::combAt(QPointF point) const {
    const auto words = wordsIn(size());
    for (const auto& slot : slots_())
        if (slot.drawn.adjusted(-around, -2, around, words.below).contains(point)) return slot.comb;
    return -1;
}

QRectF CombDrawing::faceOf(int comb) const {
    for (const auto& slot : slots_())
        if (slot.comb == comb) return faceIn(slot.drawn);
    return {};
}

int CombDrawing::heightForWidth(int width) const {
    const auto places = placesOf(combs_);
    const double inOneLine = heightFor(places, width, wordsOver(1));
    const bool one = wordsIn(QSizeF(width, inOneLine)).below < wordsOver(2).below;
    const double height = one ? inOneLine : heightFor(places, width, wordsOver(2));
    return std::max(minimumSizeHint().height(), static_cast<int>(std::ceil(height)));
}

QSize CombDrawing::sizeHint() const { return {760, heightForWidth(760)}; }

QSize CombDrawing::minimumSizeHint() const {
    const auto rows = std::max<std::size_t>(1, rowsOf(placesOf(combs_)).size());
    return {320, static_cast<int>(rows) * (fontMetrics().height() + 46)};
}

// ---- painting -------------------------------------------------------------------------------------------------------------

void CombDrawing::paintRowLabels(QPainter& painter, const std::vector<CombSlot>& places) const {
    painter.setFont(font());
    painter.setPen(coloursOf(*this).quietText);
    int labelled = -1;
    for (const auto& slot : places) {
        const auto& comb = at(slot.comb);
        if (labelled == comb.box) continue;
        labelled = comb.box;
        painter.drawText(QRectF(0, slot.drawn.top(), wordsOver(1).rowLabel, slot.drawn.height()),
                         Qt::AlignLeft | Qt::AlignVCenter, comb.inSuper ? tr("super") : tr("box %1").arg(comb.box + 1));
    }
}

void CombDrawing::paintSlot(QPainter& painter, const CombSlot& slot) const {
    const auto& colours = coloursOf(*this);
    const auto comb = shown(slot.comb);
    auto look = comb.look;
    look.chosen = slot.comb == chosen_;
    if (drag_ && drag_->moving && drag_->comb == slot.comb) look.grip = drag_->edge;
    else if (hovered_ && hovered_->first == slot.comb) look.grip = hovered_->second;
    painted_.paint(painter, slot.comb, look, slot.drawn, colours, std::clamp(slot.drawn.width() / 15, 3.6, 6.0));
    painter.setPen(look.chosen ? colours.text : colours.quietText);
    QFont chosenFont = font();
    chosenFont.setUnderline(look.chosen);
    painter.setFont(chosenFont);
    const bool broken = slot.words.height() > 1.5 * fontMetrics().height();
    painter.drawText(slot.words, Qt::AlignHCenter | Qt::AlignTop | Qt::TextDontClip,
                     lineBroken(comb.kilograms, broken));
    if (!look.chosen || !hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.accent, 2));
    painter.drawRoundedRect(slot.drawn.adjusted(-3.5, -3.5, 3.5, 3.5), 3, 3);
}

void CombDrawing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto places = slots_();
    paintRowLabels(painter, places);
    for (const auto& slot : places) paintSlot(painter, slot);
}

bool CombDrawing::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const int comb = combAt(help->pos());
        if (comb >= 0)
            QToolTip::showText(help->globalPos(),
                               plainTip(QString(at(comb).spoken)
                                            .replace(QStringLiteral(": "), QStringLiteral("\n"))
                                            .replace(QStringLiteral("; "), QStringLiteral("\n"))),
                               this);
        else QToolTip::hideText();
        return true;
    }
    return QWidget::event(event);
}

} // namespace winterlarder::desk
