// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/winter_canvas.h"

#include "plots/figures.h"
#include "plots/month_ticks.h"
#include "plots/unit_ticks.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr auto overlayLayer = "reading";

} // namespace

void anchorAt(QCPItemPosition* position, QCPAxisRect* rect, QPointF at, InHeight height) {
    position->setAxisRect(rect);
    position->setAxes(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
    position->setTypeX(QCPItemPosition::ptPlotCoords);
    position->setTypeY(height == InHeight::Share ? QCPItemPosition::ptAxisRectRatio : QCPItemPosition::ptPlotCoords);
    position->setCoords(at);
}

QString dotsHeading() { return QObject::tr("as forage starts,\n1 dot = 2 in 100"); }

QColor optionColour(advice::OptionKind kind, const Colours& colours) {
    switch (kind) {
    case advice::OptionKind::Leave: return colours.winter;
    case advice::OptionKind::TakeNow: return colours.stores;
    case advice::OptionKind::TakeInSpring: return colours.broodFood;
    case advice::OptionKind::Feed: return colours.temperature;
    case advice::OptionKind::MoveCombs:
    case advice::OptionKind::Unite: return colours.quietText;
    }
    return colours.winter;
}

WinterCanvas::WinterCanvas(QCustomPlot* plot) : plot_(plot) {
    plot_->setAntialiasedElements(QCP::aeAll);
    plot_->setNoAntialiasingOnDrag(true);
    plot_->addLayer(overlayLayer, plot_->layer("legend"), QCustomPlot::limAbove);
    plot_->layer(overlayLayer)->setMode(QCPLayer::lmBuffered);
    setUpAxes();
    connect(plot_, &QCustomPlot::afterLayout, this, &WinterCanvas::fitToSize);
}

void WinterCanvas::setUpAxes() {
    auto* layout = plot_->plotLayout();
    layout->clear();
    layout->setRowSpacing(2);
    layout->setColumnSpacing(4);
    stores_ = new QCPAxisRect(plot_);
    dots_ = new QCPAxisRect(plot_, false);
    use_ = new QCPAxisRect(plot_);
    layout->addElement(0, 0, stores_);
    layout->addElement(0, 1, dots_);
    layout->addElement(1, 0, use_);
    layout->setRowStretchFactor(0, 2.5);
    layout->setRowStretchFactor(1, 1);
    layout->setColumnStretchFactor(0, 6.4);
    layout->setColumnStretchFactor(1, 1);

    auto* sides = new QCPMarginGroup(plot_);
    stores_->setMarginGroup(QCP::msLeft | QCP::msRight, sides);
    use_->setMarginGroup(QCP::msLeft | QCP::msRight, sides);
    auto* heights = new QCPMarginGroup(plot_);
    stores_->setMarginGroup(QCP::msTop | QCP::msBottom, heights);
    dots_->setMarginGroup(QCP::msTop | QCP::msBottom, heights);
    stores_->setMinimumMargins({6, 4, 4, 4});
    use_->setMinimumMargins({6, 4, 4, 2});
    dots_->setMinimumMargins({2, 4, 6, 4});

    stores_->axis(QCPAxis::atBottom)->setTickLabels(true);
    use_->axis(QCPAxis::atRight)->setVisible(true);
    use_->axis(QCPAxis::atLeft)->ticker()->setTickCount(3);
    use_->axis(QCPAxis::atRight)->ticker()->setTickCount(3);
    dots_->addAxis(QCPAxis::atLeft)->setVisible(false);
    dots_->addAxis(QCPAxis::atBottom)->setVisible(false);

    plot_->setAutoAddPlottableToLegend(false); // only what is named below
    useLegend_ = new QCPLegend;
    layout->addElement(2, 0, useLegend_); // below its panel: it covers nothing
    layout->setRowStretchFactor(2, 0.001);
    useLegend_->setLayer("legend");
    useLegend_->setFillOrder(QCPLayoutGrid::foColumnsFirst);
    useLegend_->setWrap(0);
    useLegend_->setMargins({6, 1, 6, 7});
    useLegend_->setBorderPen(Qt::NoPen);
    useLegend_->setSizeConstraintRect(QCPLayoutElement::scrOuterRect);
    useLegend_->setIconSize(14, 9);
    useLegend_->setColumnSpacing(12);
}

void WinterCanvas::colourAxis(QCPAxis* axis, const Colours& colours, bool grid) {
    axis->setBasePen(QPen(colours.cardEdge, 1));
    axis->setTickPen(QPen(colours.cardEdge, 1));
    axis->setSubTickPen(Qt::NoPen);
    axis->setTickLabelColor(colours.quietText);
    axis->setLabelColor(colours.quietText);
    axis->setTickLabelFont(plot_->font());
    axis->setLabelFont(plot_->font());
    axis->setTickLengthOut(4);
    axis->setTickLengthIn(0);
    axis->grid()->setVisible(grid);
    axis->grid()->setPen(QPen(colours.grid, 1));
    axis->grid()->setZeroLinePen(QPen(colours.grid, 1));
}

void WinterCanvas::colourAll(const Colours& colours) {
    plot_->setBackground(QBrush(colours.card));
    for (auto* rect : {stores_, use_}) {
        colourAxis(rect->axis(QCPAxis::atLeft), colours, true);
        colourAxis(rect->axis(QCPAxis::atBottom), colours, false);
        colourAxis(rect->axis(QCPAxis::atRight), colours, false);
        colourAxis(rect->axis(QCPAxis::atTop), colours, false);
    }
    stores_->axis(QCPAxis::atRight)->setVisible(false);
    stores_->axis(QCPAxis::atTop)->setVisible(false);
    use_->axis(QCPAxis::atTop)->setVisible(false);
    useLegend_->setTextColor(colours.quietText);
    QColor ground = colours.card;
    ground.setAlphaF(0.86F);
    useLegend_->setBrush(ground);
    useLegend_->setFont(plot_->font());
    dots_->setMinimumSize(QFontMetrics(plot_->font()).size(0, dotsHeading()).width() + 8, 50);
    useLegend_->setWrap(legendWrap());
    useLegend_->setMinimumSize(legendSize());
}

bool WinterCanvas::showUse(bool shown) {
    if (shown == useShown_) return false;
    useShown_ = shown;
    use_->setVisible(shown);
    use_->setAutoMargins(shown ? QCP::msAll : QCP::msNone);
    if (!shown) use_->setMargins({});
    use_->setMinimumSize(50, shown ? 50 : 0);
    useLegend_->setVisible(shown);
    useLegend_->setMargins(shown ? QMargins(6, 1, 6, 7) : QMargins());
    useLegend_->setMinimumSize(legendSize());
    use_->setSizeConstraintRect(shown ? QCPLayoutElement::scrInnerRect : QCPLayoutElement::scrOuterRect);
    for (QCPLayoutElement* part : std::initializer_list<QCPLayoutElement*>{use_, useLegend_})
        part->setMaximumSize(QWIDGETSIZE_MAX, shown ? QWIDGETSIZE_MAX : 0);
    return true;
}

void WinterCanvas::removeDrawn() {
    dayInStores_ = nullptr;
    dayInUse_ = nullptr;
    reserve_ = nullptr;
    heading_ = nullptr;
    markLabels_.clear();
    lines_.clear();
    dotColumns_.clear();
    useLegend_->clearItems();
    plot_->clearItems();
    plot_->clearPlottables();
}

void WinterCanvas::clear(const Colours& colours) {
    removeDrawn();
    colourAll(colours);
}

void WinterCanvas::setTitle(const QString& title, const Colours& colours) {
    if (!title_) {
        plot_->plotLayout()->insertRow(0);
        QFont font = plot_->font();
        font.setPointSizeF(font.pointSizeF() * 1.25);
        font.setBold(true);
        title_ = new QCPTextElement(plot_, title, font);
        title_->setTextFlags(Qt::AlignLeft | Qt::TextWordWrap);
        title_->setMargins({10, 8, 10, 6});
        title_->setMinimumSize(100, 2 * QFontMetrics(font).height() + 2); // two lines; its width follows the picture's
        plot_->plotLayout()->addElement(0, 0, title_);
        plot_->plotLayout()->setRowStretchFactor(0, 0.001);
        plot_->plotLayout()->setRowStretchFactor(1, 2.5);
        plot_->plotLayout()->setRowStretchFactor(2, 1);
    }
    title_->setText(title);
    title_->setTextColor(colours.text);
}

void WinterCanvas::scaleAxes(const WinterPicture& picture, const std::set<advice::OptionKind>& options,
                             DayWindow seen) {
    days_ = seen;
    highestKg_ = highestSeen(picture, options, seen);
    const int wide = QFontMetrics(plot_->font()).horizontalAdvance(QStringLiteral("30 Sept 2027"));
    const auto ticks = dayTicks(picture.winter, static_cast<int>(std::ceil(seen.first)),
                                static_cast<int>(std::floor(seen.last)), plot_->width() / std::max(1, wide));
    for (auto* rect : {stores_, use_}) {
        rect->axis(QCPAxis::atBottom)->setRange(seen.first, seen.last);
        showDays(*rect->axis(QCPAxis::atBottom), ticks);
    }
    const QFontMetricsF metrics(plot_->font());
    const int halfLine = static_cast<int>(std::ceil(metrics.height() / 2)) + 1; // a figure at the very top is whole
    use_->setMinimumMargins({6, halfLine, 4, 2});
    stores_->setMinimumMargins({6, halfLine, static_cast<int>(metrics.size(0, reserveWords(picture)).width()) + 9, 4});
    nameScales();
    stores_->axis(QCPAxis::atLeft)->setRange(0, highestKg_ * 1.2);
    dots_->axis(QCPAxis::atLeft)->setRange(0, highestKg_ * 1.2);
}

// A name longer than its axis would be cut.
bool WinterCanvas::nameScales() {
    const std::array axes{stores_->axis(QCPAxis::atLeft), use_->axis(QCPAxis::atLeft), use_->axis(QCPAxis::atRight)};
    const auto names = [&axes] { return std::array{axes[0]->label(), axes[1]->label(), axes[2]->label()}; };
    const auto before = names();
    showStores(*axes[0]);
    showFoodOfADay(*axes[1]);
    showAir(*axes[2]);
    for (auto* axis : axes) {
        const int room = axis->axisRect()->height();
        if (room > 0 && QFontMetrics(axis->labelFont()).horizontalAdvance(axis->label()) > room) axis->setLabel({});
    }
    return names() != before;
}

void WinterCanvas::layOutAgain() {
    for (const auto phase : {QCPLayoutElement::upPreparation, QCPLayoutElement::upMargins, QCPLayoutElement::upLayout})
        plot_->plotLayout()->update(phase);
}

void WinterCanvas::draw(const WinterPicture& picture, const std::set<advice::OptionKind>& options, DayWindow seen,
                        const Colours& colours, const text::WordStyle& told) {
    removeDrawn();
    colourAll(colours);
    scaleAxes(picture, options, seen);
    drawReserve(picture, colours);
    drawMarks(picture, colours);
    for (const auto& option : picture.options) {
        if (!options.contains(option.kind)) continue;
        drawOption(option, picture, colours);
        drawDots(option, picture, colours, told);
    }
    drawEvidence(picture, colours);
    drawUse(picture, colours);
    if (title_) title_->setTextColor(colours.text);
}

void WinterCanvas::fitToSize() {
    if (plot_->plottableCount() == 0) return;
    if (nameScales()) layOutAgain();
    placeMarkLabels();
    layOutAgain(); // figures and margins for the scales as they are now
    placeReserve();
    placeDots();
}

std::optional<SeasonDay> WinterCanvas::dayAt(QPointF point) const {
    if (plot_->plottableCount() == 0) return std::nullopt;
    const auto left = stores_->left();
    const auto right = stores_->right();
    if (point.x() < left || point.x() > right) return std::nullopt;
    return SeasonDay{static_cast<int>(std::lround(stores_->axis(QCPAxis::atBottom)->pixelToCoord(point.x())))};
}

double WinterCanvas::placeAt(double x) const { return stores_->axis(QCPAxis::atBottom)->pixelToCoord(x); }

double WinterCanvas::daysIn(double pixels) const { return placeAt(pixels) - placeAt(0); }

void WinterCanvas::markDay(std::optional<SeasonDay> day) {
    for (auto** line : {&dayInStores_, &dayInUse_}) {
        if (*line) plot_->removeItem(*line);
        *line = nullptr;
    }
    if (day) {
        const QColor colour = stores_->axis(QCPAxis::atLeft)->tickLabelColor();
        const auto add = [&](QCPAxisRect* rect) {
            auto* line = new QCPItemStraightLine(plot_);
            line->setLayer(overlayLayer);
            line->setClipAxisRect(rect);
            for (auto* position : {line->point1, line->point2}) {
                position->setAxes(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
                position->setAxisRect(rect);
            }
            line->point1->setCoords(day->w, 0);
            line->point2->setCoords(day->w, 1);
            line->setPen(QPen(colour, 1.2));
            return line;
        };
        dayInStores_ = add(stores_);
        dayInUse_ = add(use_);
    }
    plot_->layer(overlayLayer)->replot();
}

} // namespace winterlarder::desk
