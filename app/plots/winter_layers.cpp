// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/words.h"
#include "numerics/normal_law.h"
#include "plots/winter_canvas.h"
#include "series/bends.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <map>

namespace winterlarder::desk {

namespace {

constexpr double unseenShare = 1 / 1500.0; // of the scale: a fifth of a pixel or less
constexpr double dotPitch = 8.5;           // pixels from dot to dot
constexpr double dotDiameter = 6.6;
constexpr double headingLines = 2.2; // of text over the names of the options

// A see-through colour takes several times as long to draw.
QColor mixed(const QColor& colour, float share, const QColor& ground) {
    const auto mix = [share](float one, float other) { return share * one + (1 - share) * other; };
    return QColor::fromRgbF(mix(colour.redF(), ground.redF()), mix(colour.greenF(), ground.greenF()),
                            mix(colour.blueF(), ground.blueF()));
}

QVector<double> daysFrom(SeasonDay first, std::size_t count) {
    QVector<double> days;
    for (std::size_t i = 0; i < count; ++i) days.append(first.w + static_cast<double>(i));
    return days;
}

} // namespace

void WinterCanvas::drawReserve(const WinterPicture& picture, const Colours& colours) {
    auto* under = new QCPItemRect(plot_);
    under->setLayer("background");
    under->setClipAxisRect(stores_);
    anchorAt(under->topLeft, stores_, {days_.first, picture.reserveKg}, InHeight::Kilograms);
    anchorAt(under->bottomRight, stores_, {days_.last, 0}, InHeight::Kilograms);
    under->setPen(Qt::NoPen);
    under->setBrush(colours.reserveFill);

    for (const double kg : {picture.reserveKg, 0.0}) {
        auto* line = new QCPItemLine(plot_);
        line->setClipAxisRect(stores_);
        line->setLayer("grid");
        anchorAt(line->start, stores_, {days_.first, kg}, InHeight::Kilograms);
        anchorAt(line->end, stores_, {days_.last, kg}, InHeight::Kilograms);
        line->setPen(QPen(colours.reserve, kg > 0 ? 1.2 : 1.8));
    }
    reserve_ = new QCPItemText(plot_);
    reserve_->setLayer("axes");
    reserve_->setClipToAxisRect(false);
    reserve_->position->setType(QCPItemPosition::ptAbsolute);
    reserve_->setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
    reserve_->setTextAlignment(Qt::AlignLeft);
    reserve_->setText(reserveWords(picture));
    reserve_->setColor(colours.reserve);
    reserve_->setFont(plot_->font());
    reserveKg_ = picture.reserveKg;
}

void WinterCanvas::drawOption(const OptionPicture& option, const WinterPicture& picture, const Colours& colours) {
    for (const auto& line : option.lines) {
        auto* graph = plot_->addGraph(stores_->axis(QCPAxis::atBottom), stores_->axis(QCPAxis::atLeft));
        QVector<double> days, kilograms;
        for (const std::size_t at : bendsOf(line.kilograms, highestKg_ * unseenShare)) {
            days.append(picture.first.w + static_cast<double>(at));
            kilograms.append(line.kilograms[at]);
        }
        lines_.push_back({graph, days, kilograms});
        const QColor colour =
            line.touchesReserve ? colours.shortWinter : mixed(optionColour(option.kind, colours), 0.78F, colours.card);
        QPen pen(colour, 1); // one pixel is drawn five times as fast as a little more
        if (line.touchesReserve) {
            pen.setDashPattern({6, 4});
            pen.setCapStyle(Qt::FlatCap);
        }
        graph->setPen(pen);
        graph->removeFromLegend(useLegend_);
    }
}

void WinterCanvas::drawEvidence(const WinterPicture& picture, const Colours& colours) {
    QVector<double> days, kg, down, up;
    std::map<int, int> onDay; // pieces of one day stand side by side
    for (const auto& point : picture.evidence) {
        days.append(point.day.w - 1.8 * onDay[point.day.w]++);
        kg.append(point.stores.typical.value());
        down.append((point.stores.typical - point.stores.low).value());
        up.append((point.stores.high - point.stores.typical).value());
    }
    auto* graph = plot_->addGraph(stores_->axis(QCPAxis::atBottom), stores_->axis(QCPAxis::atLeft));
    graph->setData(days, kg);
    graph->setLineStyle(QCPGraph::lsNone);
    graph->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, colours.error, colours.error, 7));
    auto* bars = new QCPErrorBars(graph->keyAxis(), graph->valueAxis());
    bars->setDataPlottable(graph);
    bars->setData(down, up);
    bars->setPen(QPen(colours.error, 1.4));
    bars->setWhiskerWidth(7);
    bars->setSymbolGap(4);
}

std::array<QString, 4> useNames() {
    return {QObject::tr("adult bees"), QObject::tr("warmth for brood"), QObject::tr("food for brood"),
            QObject::tr("air, mean of the day")};
}

// The legend in one row, or in two where the plot is narrow; hidden it takes no width either.
QSize WinterCanvas::legendSize() const {
    constexpr int margins = 8;
    if (!useShown_) return {1, 0};
    return {1, (QFontMetrics(plot_->font()).height() + 6) * (legendWrap() > 0 ? 2 : 1) + margins};
}

int WinterCanvas::legendWrap() const {
    constexpr int aroundName = 14 + 5 + 12; // px: icon, and what lies between
    int wide = 0;
    for (const auto& name : useNames()) wide += QFontMetrics(plot_->font()).horizontalAdvance(name) + aroundName;
    return wide > plot_->width() - dots_->minimumSize().width() - 60 ? 2 : 0;
}

double WinterCanvas::underNothing() { return dotDiameter / 2 + 1; }

// Lines above the names of the options; what a dot stands for is left out where the words would take half of the height.
double WinterCanvas::linesOfHeading() const {
    const double all = (headingLines + static_cast<double>(dotColumns_.size())) * QFontMetricsF(plot_->font()).height();
    return all <= 0.5 * dots_->height() ? headingLines : 0;
}

// The scale on which no dot reaches into the words above the dots.
double WinterCanvas::topForDots() const {
    double highest = 0;
    for (const auto& column : dotColumns_)
        if (!column.values.empty()) highest = std::max(highest, column.values.back());
    const double words =
        (linesOfHeading() + static_cast<double>(dotColumns_.size())) * QFontMetricsF(plot_->font()).height() +
        dotDiameter;
    return highest / std::max(0.3, 1 - words / std::max(1, dots_->height()));
}

void WinterCanvas::drawDotsHeading(const Colours& colours) {
    auto* heading = heading_ = new QCPItemText(plot_);
    heading->setClipToAxisRect(false);
    heading->position->setAxisRect(dots_);
    heading->position->setType(QCPItemPosition::ptAxisRectRatio);
    heading->position->setCoords(0, 0.005);
    heading->setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
    heading->setTextAlignment(Qt::AlignLeft);
    heading->setFont(plot_->font());
    heading->setColor(colours.quietText);
    heading->setText(dotsHeading());
}

void WinterCanvas::drawDots(const OptionPicture& option, const WinterPicture& picture, const Colours& colours,
                            const text::WordStyle& told) {
    const auto add = [&](const QColor& pen, const QBrush& fill) {
        auto* graph = plot_->addGraph(dots_->axis(QCPAxis::atBottom), dots_->axis(QCPAxis::atLeft));
        graph->setLineStyle(QCPGraph::lsNone);
        graph->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(pen, 1.3), fill, dotDiameter));
        return graph;
    };
    auto* title = new QCPItemText(plot_);
    title->setClipToAxisRect(false);
    title->position->setAxisRect(dots_);
    title->position->setAxes(dots_->axis(QCPAxis::atBottom), dots_->axis(QCPAxis::atLeft));
    title->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
    title->setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
    title->setTextAlignment(Qt::AlignLeft);
    title->setFont(plot_->font());
    title->setColor(colours.quietText);
    title->setText(words::option(option.kind, told));
    if (dotColumns_.empty()) drawDotsHeading(colours);
    dotColumns_.push_back({add(optionColour(option.kind, colours), Qt::NoBrush),
                           add(colours.shortWinter, colours.shortWinter), title, option.dots, picture.reserveKg});
}

void WinterCanvas::placeDots() {
    if (dotColumns_.empty()) return;
    const QFontMetricsF metrics(plot_->font());
    const double width = std::max(1, dots_->width());
    dots_->axis(QCPAxis::atBottom)->setRange(0, width);
    auto* scale = dots_->axis(QCPAxis::atLeft);
    const double perPixel = scale->range().size() / std::max(1, dots_->height());
    const double share = width / static_cast<double>(dotColumns_.size());
    heading_->setVisible(linesOfHeading() > 0);
    for (std::size_t i = 0; i < dotColumns_.size(); ++i) {
        auto& column = dotColumns_[i];
        const auto stacked = stackDots(column.values, dotPitch * perPixel);
        int longest = 1;
        for (const auto& dot : stacked) longest = std::max(longest, dot.column + 1);
        const double pitch = std::min(dotPitch, (share - 8) / longest);
        QVector<double> openX, openY, filledX, filledY;
        for (const auto& dot : stacked) {
            const double x = static_cast<double>(i) * share + 6 + dot.column * pitch;
            const bool low = dot.value < column.reserve;
            (low ? filledX : openX).append(x);
            (low ? filledY : openY).append(dot.height);
        }
        column.open->setData(openX, openY);
        column.filled->setData(filledX, filledY);
        for (auto* graph : {column.open, column.filled}) {
            auto style = graph->scatterStyle();
            style.setSize(std::max(2.5, dotDiameter * pitch / dotPitch));
            graph->setScatterStyle(style);
        }
        // A line to each name, so that none meets another.
        const double wide = metrics.horizontalAdvance(column.title->text()) + 2;
        const double x = std::clamp(static_cast<double>(i) * share, 0.0, std::max(0.0, width - wide));
        column.title->position->setCoords(x, (linesOfHeading() + static_cast<double>(i)) * metrics.height() /
                                                 std::max(1, dots_->height()));
    }
}

namespace {

enum class UsePattern { Plain, Dotted, Striped };

// Colour and pattern, so that the parts can be told apart in grey.
QBrush patterned(const QColor& colour, UsePattern pattern) {
    if (pattern == UsePattern::Plain) return QBrush(colour);
    constexpr int size = 12;
    QPixmap tile(size, size);
    tile.fill(colour);
    QPainter painter(&tile);
    painter.setRenderHint(QPainter::Antialiasing, pattern == UsePattern::Dotted);
    const QColor ink = colour.lightnessF() > 0.5F ? colour.darker(165) : colour.lighter(165);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    if (pattern == UsePattern::Dotted) {
        painter.drawEllipse(QPointF(3, 3), 1.4, 1.4);
        painter.drawEllipse(QPointF(9, 9), 1.4, 1.4);
    } else {
        painter.fillRect(QRect(0, 0, 3, size), ink);
    }
    painter.end();
    QBrush brush(tile);
    brush.setColor(colour);
    return brush;
}

} // namespace

QCPGraph* WinterCanvas::useArea(const QVector<double>& days, const QVector<double>& grams, const QBrush& fill,
                                const QString& name, QCPGraph* below) {
    auto* graph = plot_->addGraph(use_->axis(QCPAxis::atBottom), use_->axis(QCPAxis::atLeft));
    graph->setData(days, grams, true);
    graph->setPen(QPen(fill.color().darker(115), 1));
    graph->setBrush(fill);
    graph->setName(name);
    if (below) graph->setChannelFillGraph(below);
    graph->addToLegend(useLegend_);
    return graph;
}

void WinterCanvas::drawUse(const WinterPicture& picture, const Colours& colours) {
    QVector<double> adults, warmth, food, air;
    for (const auto& day : picture.daily) {
        adults.append(day.adults);
        warmth.append(day.adults + day.broodWarmth);
        food.append(day.adults + day.broodWarmth + day.broodFood);
        air.append(day.temperatureC);
    }
    const auto days = daysFrom(picture.first, picture.daily.size());
    const auto names = useNames();
    auto* base = useArea(days, adults, patterned(colours.adults, UsePattern::Plain), names[0], nullptr);
    auto* middle = useArea(days, warmth, patterned(colours.broodWarmth, UsePattern::Dotted), names[1], base);
    useArea(days, food, patterned(colours.broodFood, UsePattern::Striped), names[2], middle);
    auto* temperature = plot_->addGraph(use_->axis(QCPAxis::atBottom), use_->axis(QCPAxis::atRight));
    temperature->setData(days, air, true);
    temperature->setPen(QPen(colours.temperature, 1.6, Qt::DashDotLine));
    temperature->setName(names[3]);
    temperature->addToLegend(useLegend_);
    const double most = food.isEmpty() ? 1 : *std::max_element(food.begin(), food.end());
    use_->axis(QCPAxis::atLeft)->setRange(0, std::max(1.0, most * 1.35));
    if (air.isEmpty()) return;
    const auto [coldest, warmest] = std::minmax_element(air.begin(), air.end());
    use_->axis(QCPAxis::atRight)->setRange(std::floor(*coldest) - 1, std::ceil(*warmest) + 6);
}

} // namespace winterlarder::desk
