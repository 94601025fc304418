// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/yard_delegate.h"

#include "models/words.h"
#include "models/yard_list_model.h"
#include "theme/colours.h"
#include "theme/icons.h"

#include <QLinearGradient>
#include <QPainter>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int margin = 10;
constexpr int iconSize = 16;
constexpr int stripMargin = 8;

QFont sized(QFont font, double factor, bool bold) {
    font.setPointSizeF(font.pointSizeF() * factor);
    font.setBold(bold);
    return font;
}

void paintGround(QPainter& painter, const QStyleOptionViewItem& option, const Colours& colours) {
    const QRectF ground = QRectF(option.rect).adjusted(5, 2, -5, -2);
    painter.setPen(Qt::NoPen);
    if (option.state & QStyle::State_Selected) {
        painter.setBrush(colours.chosen);
        painter.drawRoundedRect(ground, 7, 7);
        painter.setBrush(colours.accent);
        painter.drawRoundedRect(QRectF(ground.left(), ground.top() + 8, 3, ground.height() - 16), 1.5, 1.5);
    } else if (option.state & QStyle::State_MouseOver) {
        painter.setBrush(colours.hover);
        painter.drawRoundedRect(ground, 7, 7);
    }
    if ((option.state & QStyle::State_HasFocus) && (option.state & QStyle::State_Selected)) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colours.accent, 1.6));
        painter.drawRoundedRect(ground.adjusted(0.8, 0.8, -0.8, -0.8), 7, 7);
    }
}

// Full up to the low end, fading to the high one: nobody knows where within it the stores end.
void paintBar(QPainter& painter, const QRectF& bar, const QModelIndex& index, const Colours& colours) {
    const double scale = std::max(1.0, index.data(YardListModel::ScaleRole).toDouble());
    const auto at = [&](double kg) { return bar.left() + bar.width() * std::clamp(kg / scale, 0.0, 1.0); };
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.storesEmpty);
    painter.drawRoundedRect(bar, 2, 2);
    const double low = at(index.data(YardListModel::LowRole).toDouble());
    const double high = at(index.data(YardListModel::HighRole).toDouble());
    painter.setBrush(colours.stores);
    painter.drawRoundedRect(QRectF(bar.left(), bar.top(), low - bar.left(), bar.height()), 2, 2);
    QColor faded = colours.stores;
    faded.setAlphaF(0.0F);
    QLinearGradient soft(low, 0, std::max(high, low + 1), 0);
    soft.setColorAt(0, colours.stores);
    soft.setColorAt(1, faded);
    painter.setBrush(soft);
    painter.drawRect(QRectF(low - 1, bar.top(), std::max(1.0, high - low), bar.height()));
    const QVariant need = index.data(YardListModel::NeedRole);
    if (!need.isValid()) return;
    const double tick = at(need.toDouble());
    painter.setPen(QPen(colours.card, 4.4, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(tick, bar.top() - 3), QPointF(tick, bar.bottom() + 3));
    painter.setPen(QPen(colours.need, 2, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(tick, bar.top() - 4), QPointF(tick, bar.bottom() + 4));
}

void paintYard(QPainter& painter, const QRect& inside, const QModelIndex& index, const QFont& font,
               const Colours& colours) {
    painter.setFont(sized(font, 1.3, true));
    painter.setPen(colours.text);
    const int first = QFontMetrics(painter.font()).height();
    painter.drawText(QRect(inside.left(), inside.top(), inside.width(), first), Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(painter.font()).elidedText(index.data().toString(), Qt::ElideRight, inside.width()));
    painter.setFont(sized(font, 0.94, false));
    painter.setPen(colours.quietText);
    painter.drawText(
        QRect(inside.left(), inside.top() + first + 2, inside.width(), QFontMetrics(painter.font()).height()),
        Qt::AlignLeft | Qt::AlignVCenter, index.data(YardListModel::DueRole).toString());
}

} // namespace

namespace {

bool inStrip(const QStyleOptionViewItem& option) {
    return option.widget && option.widget->width() <= YardDelegate::stripWidth(option.widget->font());
}

// Its drawing, and its name as far as there is room: the whole is said where the pointer rests.
void paintInStrip(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index,
                  const Colours& colours) {
    const QRect inside = option.rect.adjusted(stripMargin, stripMargin, -stripMargin, -stripMargin);
    const QString icon = index.data(YardListModel::IconRole).toString();
    if (index.row() > 0 && !icon.isEmpty() && !index.data(YardListModel::PendingRole).toBool())
        painter.drawPixmap(QPointF(inside.center().x() - iconSize / 2.0, inside.top()),
                           drawnIcon(icon, colours.text, iconSize, painter.device()->devicePixelRatioF()));
    const QFont font = sized(option.font, 0.94, index.row() == 0);
    painter.setFont(font);
    painter.setPen(colours.text);
    const QString name = index.row() == 0 ? YardDelegate::tr("Yard") : index.data().toString();
    painter.drawText(inside, Qt::AlignHCenter | Qt::AlignBottom,
                     QFontMetrics(font).elidedText(name, Qt::ElideRight, inside.width()));
}

} // namespace

int YardDelegate::stripWidth(const QFont& font) { return QFontMetrics(font).averageCharWidth() * 12 + 2 * stripMargin; }

QSize YardDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int line = QFontMetrics(option.font).height();
    if (inStrip(option))
        return {stripWidth(option.font), (index.row() == 0 ? 0 : iconSize + 2) + line + 2 * stripMargin};
    const int first = QFontMetrics(sized(option.font, 1.3, true)).height();
    if (index.row() == 0) return {220, first + line + 2 * margin + 2};
    return {220, QFontMetrics(sized(option.font, 1.08, true)).height() + 2 * std::max(line, iconSize) + 2 * margin + 4};
}

void YardDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto& colours = option.widget ? coloursOf(*option.widget) : lightColours();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paintGround(*painter, option, colours);
    if (inStrip(option)) {
        paintInStrip(*painter, option, index, colours);
        painter->restore();
        return;
    }
    const QRect inside = option.rect.adjusted(margin + 8, margin, -margin - 6, -margin);
    if (index.row() == 0) {
        paintYard(*painter, inside, index, option.font, colours);
        painter->restore();
        return;
    }
    const bool pending = index.data(YardListModel::PendingRole).toBool();
    const QFont nameFont = sized(option.font, 1.08, true);
    const int nameHeight = QFontMetrics(nameFont).height();
    const int line = std::max(QFontMetrics(option.font).height(), iconSize);

    painter->setFont(option.font);
    const QString verdict = pending ? tr("working it out") : index.data(YardListModel::VerdictRole).toString();
    const int verdictWidth = QFontMetrics(option.font).horizontalAdvance(verdict);
    painter->setPen(colours.text);
    painter->drawText(QRect(inside.right() - verdictWidth, inside.top(), verdictWidth + 1, nameHeight),
                      Qt::AlignRight | Qt::AlignVCenter, verdict);
    painter->setFont(nameFont);
    painter->drawText(
        QRect(inside.left(), inside.top(), inside.width() - verdictWidth - 10, nameHeight),
        Qt::AlignLeft | Qt::AlignVCenter,
        QFontMetrics(nameFont).elidedText(index.data().toString(), Qt::ElideRight, inside.width() - verdictWidth - 10));

    painter->setFont(option.font);
    const QVariant stores = index.data(YardListModel::StoresRole);
    const int amountWidth = QFontMetrics(option.font).horizontalAdvance(words::wholeKilograms(kilograms(88))) + 4;
    const int middle = inside.top() + nameHeight + 2;
    if (stores.isValid()) {
        painter->setOpacity(pending ? 0.45 : 1);
        paintBar(*painter, QRectF(inside.left(), middle + line / 2.0 - 4.5, inside.width() - amountWidth - 8, 9), index,
                 colours);
        painter->setOpacity(1);
        painter->setPen(colours.text);
        painter->drawText(QRect(inside.right() - amountWidth, middle, amountWidth + 1, line),
                          Qt::AlignRight | Qt::AlignVCenter,
                          pending ? QStringLiteral("\u2026") : words::wholeKilograms(Mass(stores.toDouble())));
    }
    const int last = middle + line + 2;
    painter->setPen(colours.quietText);
    if (!pending) {
        painter->drawText(QRect(inside.left(), last, inside.width() - iconSize - 6, line),
                          Qt::AlignLeft | Qt::AlignVCenter, index.data(YardListModel::DueRole).toString());
        const QString icon = index.data(YardListModel::IconRole).toString();
        if (!icon.isEmpty())
            painter->drawPixmap(QPointF(inside.right() - iconSize + 1, last + (line - iconSize) / 2.0),
                                drawnIcon(icon, colours.text, iconSize, painter->device()->devicePixelRatioF()));
    }
    painter->restore();
}

} // namespace winterlarder::desk
