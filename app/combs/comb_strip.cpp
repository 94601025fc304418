// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_strip.h"

#include "combs/comb_pattern.h"
#include "models/plain_tip.h"
#include "models/words.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <set>

namespace winterlarder::desk {

namespace {

constexpr double rowHeight = 16;
constexpr double rowGap = 3;
constexpr double largestStripScale = 0.7; // px per mm of bar width

// What fills a slab, from the front.
std::vector<std::pair<std::optional<Zone>, double>> partsOf(const DrawnComb& comb) {
    std::vector<std::pair<std::optional<Zone>, double>> parts;
    for (const auto zone : allZones) parts.emplace_back(zone, shareOf(comb.record, zone));
    parts.emplace_back(std::nullopt, emptyShare(comb.record));
    return parts;
}

} // namespace

CombStrip::CombStrip(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("The hive from above"));
    setFocusPolicy(Qt::NoFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void CombStrip::show(const std::vector<DrawnComb>& combs, int chosen) {
    combs_ = combs;
    chosen_ = chosen;
    double wide = 0;
    for (const auto& comb : combs_)
        if (comb.box == 0) wide += comb.format.pitch.value();
    setAccessibleDescription(
        text::worded(tr("%n %{combs}, the lowest box %1 from side to side", nullptr, static_cast<int>(combs_.size())),
                     words::styleOf(combs_.empty() || hive::hasFrames(combs_.front().format)))
            .arg(words::length(Length(wide))));
    updateGeometry();
    update();
}

void CombStrip::choose(int comb) {
    chosen_ = comb;
    update();
}

int CombStrip::boxes() const {
    int boxes = 0;
    for (const auto& comb : combs_) boxes = std::max(boxes, comb.box + 1);
    return boxes;
}

QString CombStrip::rowName(const DrawnComb& comb) {
    return comb.inSuper ? tr("super") : comb.longHive ? tr("entrance") : tr("box %1").arg(comb.box + 1);
}

double CombStrip::rowLabel() const {
    double widest = fontMetrics().horizontalAdvance(tr("box %1").arg(2));
    for (const auto& comb : combs_) widest = std::max<double>(widest, fontMetrics().horizontalAdvance(rowName(comb)));
    return widest + 12;
}

QSize CombStrip::sizeHint() const { return {300, static_cast<int>(std::max(1, boxes()) * (rowHeight + rowGap))}; }

QRectF CombStrip::slab(int comb) const {
    std::vector<double> lengths(static_cast<std::size_t>(boxes()), 0.0);
    double before = 0;
    for (int i = 0; i < static_cast<int>(combs_.size()); ++i) {
        const auto& each = combs_[static_cast<std::size_t>(i)];
        auto& length = lengths[static_cast<std::size_t>(each.box)];
        if (i == comb) before = length;
        length += each.format.pitch.value();
    }
    if (lengths.empty() || comb < 0 || comb >= static_cast<int>(combs_.size())) return {};
    const double scale =
        std::min(largestStripScale, (width() - rowLabel() - 2) / *std::max_element(lengths.begin(), lengths.end()));
    const auto& wanted = combs_[static_cast<std::size_t>(comb)];
    return {rowLabel() + before * scale, (boxes() - 1 - wanted.box) * (rowHeight + rowGap) + 1,
            wanted.format.pitch.value() * scale, rowHeight - 1};
}

int CombStrip::combAt(QPointF point) const {
    for (int i = 0; i < static_cast<int>(combs_.size()); ++i)
        if (slab(i).contains(point)) return i;
    return -1;
}

void CombStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& colours = coloursOf(*this);
    std::set<int> labelled;
    for (int i = 0; i < static_cast<int>(combs_.size()); ++i) {
        const auto& comb = combs_[static_cast<std::size_t>(i)];
        const QRectF place = slab(i).adjusted(1, 0, -1, 0);
        double from = place.bottom();
        for (const auto& [zone, share] : partsOf(comb)) {
            const double tall = share * place.height();
            painter.fillRect(QRectF(place.left(), from - tall, place.width(), tall),
                             patternOf(zone, colours, devicePixelRatioF(), 4));
            from -= tall;
        }
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(i == chosen_ ? colours.text : colours.combEdge, i == chosen_ ? 2 : 1,
                            comb.record.facesSeen ? Qt::SolidLine : Qt::DashLine));
        painter.drawRect(place);
        if (!labelled.insert(comb.box).second) continue;
        painter.setPen(colours.quietText);
        painter.drawText(QRectF(0, place.top(), rowLabel(), place.height()),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, rowName(comb));
    }
}

void CombStrip::mousePressEvent(QMouseEvent* event) {
    const int comb = combAt(event->position());
    if (comb >= 0) emit combChosen(comb);
}

bool CombStrip::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const int comb = combAt(help->pos());
        if (comb >= 0)
            QToolTip::showText(help->globalPos(),
                               plainTip(tr("%1, bar %2")
                                            .arg(combs_[static_cast<std::size_t>(comb)].name,
                                                 words::length(combs_[static_cast<std::size_t>(comb)].format.pitch))),
                               this);
        else QToolTip::hideText();
        return true;
    }
    return QWidget::event(event);
}

} // namespace winterlarder::desk
