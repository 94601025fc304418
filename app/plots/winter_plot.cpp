// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/winter_plot.h"

#include "models/words.h"
#include "plots/late_plot.h"
#include "plots/spoken_plot.h"
#include "plots/winter_canvas.h"

#include <QFileInfo>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QSvgGenerator>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr double oneStep = 1.5; // so many times the days, a key or a notch of the wheel

QString oneDecimal(double value) { return QLocale().toString(value, 'f', 1); }

QString shownKg(double kilograms) { return oneDecimal(valueIn(Mass(kilograms), words::shownMass())); }

QString shownGrams(double value) { return oneDecimal(valueIn(grams(value), words::shownSmallMass())); }

bool saveSvg(QCustomPlot& plot, const QString& path, QSize size) {
    QSvgGenerator generator;
    generator.setFileName(path);
    generator.setSize(size);
    generator.setViewBox(QRect(QPoint(0, 0), size));
    QCPPainter painter;
    if (!painter.begin(&generator)) return false;
    painter.setMode(QCPPainter::pmVectorized);
    painter.setMode(QCPPainter::pmNoCaching);
    plot.toPainter(&painter, size.width(), size.height());
    painter.end();
    return QFileInfo(path).size() > 0;
}

} // namespace

WinterPlot::WinterPlot(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this)) {
    setFocusPolicy(Qt::StrongFocus);
    speakAsChart(*this);
    setAccessibleName(tr("Winter picture: stores through the winter"));
    plot_->setFocusPolicy(Qt::NoFocus);
    plot_->setMouseTracking(true);
    plot_->installEventFilter(this);
    plot_->setAccessibleName(tr("Drawing of the winters"));
    canvas_ = std::make_unique<WinterCanvas>(plot_);
    late_ = new LatePlot(plot_, this, [this] { fillCanvas(); });
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(plot_);
}

WinterPlot::~WinterPlot() = default;

void WinterPlot::show(std::shared_ptr<const WinterPicture> picture) {
    if (picture == picture_) return;
    picture_ = std::move(picture);
    day_.reset();
    redraw();
}

void WinterPlot::showOptions(const std::set<advice::OptionKind>& options) {
    if (options == options_) return;
    options_ = options;
    redraw();
}

void WinterPlot::setTitle(const QString& title) { canvas_->setTitle(title, coloursOf(*this)); }

void WinterPlot::setColours(const Colours& colours) { wearColours(*this, colours); }

void WinterPlot::redraw() { late_->change(); }

void WinterPlot::fillCanvas() {
    const auto& colours = coloursOf(*this);
    plot_->setFont(font());
    if (!picture_ || picture_->empty()) canvas_->clear(colours);
    else canvas_->draw(*picture_, options_, shownDays(), colours);
}

void WinterPlot::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange ||
        event->type() == QEvent::FontChange || event->type() == QEvent::LocaleChange)
        redraw();
}

void WinterPlot::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (canvas_->showUse(height() >= 20 * fontMetrics().height()) || seen_)
        redraw(); // dates stand closer where there is room
}

QString WinterPlot::readout(SeasonDay day) const {
    if (!picture_ || picture_->empty() || day < picture_->first || day > picture_->last) return {};
    const auto at = static_cast<std::size_t>(day - picture_->first);
    const auto& use = picture_->daily[at];
    const QString eaten =
        tr("a living colony eats %1 a day (adults %2, warmth for brood %3, food for brood %4) at %5")
            .arg(words::smallMass(grams(use.adults + use.broodWarmth + use.broodFood)),
                 words::smallMass(grams(use.adults)), words::smallMass(grams(use.broodWarmth)),
                 words::smallMass(grams(use.broodFood)), words::temperature(celsius(use.temperatureC), 0));
    QStringList said{words::date(picture_->winter.date(day))};
    for (const auto& option : picture_->options) {
        if (!options_.contains(option.kind) || at >= option.readings.size()) continue;
        const auto& reading = option.readings[at];
        said << tr("%1 %2, under the reserve in %3 of 100 winters")
                    .arg(words::option(option.kind),
                         words::fineSpread({Mass(reading.low), Mass(reading.middle), Mass(reading.high)}),
                         words::ofHundred({reading.shareBelowReserve, 0}));
    }
    said << eaten;
    return said.join(tr("; "));
}

QString WinterPlot::numbers() const {
    if (!picture_ || picture_->empty()) return {};
    QStringList lines;
    QStringList head{tr("date")};
    const QString mass = words::name(words::shownMass()), food = words::name(words::shownSmallMass());
    for (const auto& option : picture_->options) {
        if (!options_.contains(option.kind)) continue;
        const QString name = words::option(option.kind);
        head << tr("%1: low, %2").arg(name, mass) << tr("%1: middle, %2").arg(name, mass)
             << tr("%1: high, %2").arg(name, mass) << tr("%1: under reserve, of 100").arg(name);
    }
    head << tr("adults, %1").arg(food) << tr("warmth for brood, %1").arg(food) << tr("food for brood, %1").arg(food)
         << tr("air, %1").arg(words::name(words::shownTemperature()));
    lines << head.join(QLatin1Char('\t'));
    for (std::size_t at = 0; at < picture_->daily.size(); ++at) {
        QStringList row{QString::fromStdString(picture_->winter.date(picture_->first + static_cast<int>(at)).iso())};
        for (const auto& option : picture_->options) {
            if (!options_.contains(option.kind)) continue;
            const auto reading = at < option.readings.size() ? option.readings[at] : DayReading();
            row << shownKg(reading.low) << shownKg(reading.middle) << shownKg(reading.high)
                << oneDecimal(100 * reading.shareBelowReserve);
        }
        const auto& use = picture_->daily[at];
        row << shownGrams(use.adults) << shownGrams(use.broodWarmth) << shownGrams(use.broodFood)
            << oneDecimal(valueIn(celsius(use.temperatureC), words::shownTemperature()));
        lines << row.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n'));
}

bool WinterPlot::save(const QString& path, QSize size) {
    if (!picture_ || picture_->empty()) return false;
    late_->fillNow();
    const QString form = QFileInfo(path).suffix().toLower();
    if (form == QLatin1String("svg")) return saveSvg(*plot_, path, size);
    if (form == QLatin1String("pdf")) return plot_->savePdf(path, size.width(), size.height(), QCP::epAllowCosmetic);
    return plot_->savePng(path, size.width(), size.height(), 2.0);
}

void WinterPlot::readDay(std::optional<SeasonDay> day) {
    if (day && picture_ && !picture_->empty()) day = std::clamp(*day, picture_->first, picture_->last);
    if (day == day_) return;
    day_ = day;
    if (day_ && seen_) see(reaching(shownDays(), wholeWinter(*picture_), day_->w));
    canvas_->markDay(day_);
    const QString text = day_ ? readout(*day_) : QString();
    setAccessibleDescription(text);
    emit dayRead(text);
}

std::vector<NamedKeys> WinterPlot::namedKeys() {
    return {{{Qt::Key_Left, Qt::Key_Right}, tr("reads out the day before or the next day")},
            {{Qt::SHIFT | Qt::Key_Left, Qt::SHIFT | Qt::Key_Right}, tr("a week")},
            {{Qt::CTRL | Qt::Key_Left, Qt::CTRL | Qt::Key_Right}, tr("a month")},
            {{Qt::Key_Home, Qt::Key_End}, tr("the first or the last day")},
            {{Qt::Key_Plus, Qt::Key_Minus}, tr("fewer or more days")},
            {{Qt::Key_0}, tr("the whole winter")},
            {{Qt::Key_Escape}, tr("reads out no day; once more: the whole winter")}};
}

void WinterPlot::keyPressEvent(QKeyEvent* event) {
    if (!picture_ || picture_->empty()) return QWidget::keyPressEvent(event);
    const int step = event->modifiers() & Qt::ControlModifier ? 30 : event->modifiers() & Qt::ShiftModifier ? 7 : 1;
    const SeasonDay from = day_.value_or(picture_->first);
    switch (event->key()) {
    case Qt::Key_Left: readDay(from - step); return;
    case Qt::Key_Right: readDay(from + step); return;
    case Qt::Key_Home: readDay(picture_->first); return;
    case Qt::Key_End: readDay(picture_->last); return;
    case Qt::Key_Escape: day_ ? readDay(std::nullopt) : seeWholeWinter(); return;
    default:
        if (!seeByKey(event->key())) QWidget::keyPressEvent(event);
    }
}

bool WinterPlot::seeByKey(int key) {
    switch (key) {
    case Qt::Key_Plus:
    case Qt::Key_Equal: seeFewerDays(); return true;
    case Qt::Key_Minus: seeMoreDays(); return true;
    case Qt::Key_0: seeWholeWinter(); return true;
    default: return false;
    }
}

void WinterPlot::focusOutEvent(QFocusEvent* event) {
    readDay(std::nullopt);
    QWidget::focusOutEvent(event);
}

DayWindow WinterPlot::shownDays() const {
    const auto whole = wholeWinter(*picture_);
    return seen_ ? fitted(*seen_, whole) : whole;
}

void WinterPlot::see(std::optional<DayWindow> days) {
    if (days == seen_) return;
    seen_ = days;
    plot_->setCursor(seen_ ? Qt::OpenHandCursor : Qt::ArrowCursor);
    redraw();
    emit seenChanged();
}

void WinterPlot::stretch(double factor, double about) {
    if (!picture_ || picture_->empty()) return;
    const auto whole = wholeWinter(*picture_);
    const auto wanted = stretched(shownDays(), whole, factor, about);
    see(wanted.days() > whole.days() - 0.5 ? std::nullopt : std::optional(wanted));
}

void WinterPlot::stretchAboutDay(double factor) {
    if (!picture_ || picture_->empty()) return;
    const auto days = shownDays();
    stretch(factor, day_ ? day_->w : (days.first + days.last) / 2);
}

void WinterPlot::seeFewerDays() { stretchAboutDay(1 / oneStep); }
void WinterPlot::seeMoreDays() { stretchAboutDay(oneStep); }

void WinterPlot::moveDays(double days) {
    if (!seen_) return;
    const auto shown = shownDays();
    see(fitted({shown.first + days, shown.last + days}, wholeWinter(*picture_)));
}

void WinterPlot::wheelOnPlot(const QWheelEvent& event) {
    const QPoint turned = event.angleDelta();
    if (turned.y() != 0)
        stretch(std::pow(oneStep, -turned.y() / double(QWheelEvent::DefaultDeltasPerStep)),
                canvas_->placeAt(event.position().x()));
    else moveDays(-canvas_->daysIn(turned.x()) / 2);
}

void WinterPlot::drag(double x) {
    moveDays(canvas_->daysIn(*dragFrom_ - x));
    dragFrom_ = x;
}

// Whether the event is used up.
bool WinterPlot::mouseOnPlot(QEvent* event) {
    const auto x = [&] { return static_cast<QMouseEvent*>(event)->position().x(); };
    switch (event->type()) {
    case QEvent::MouseButtonPress:
        if (seen_ && static_cast<QMouseEvent*>(event)->button() == Qt::LeftButton) dragFrom_ = x();
        return false;
    case QEvent::MouseMove:
        if (dragFrom_) drag(x());
        else readDay(canvas_->dayAt(static_cast<QMouseEvent*>(event)->position()));
        return false;
    case QEvent::MouseButtonRelease: dragFrom_.reset(); return false;
    case QEvent::MouseButtonDblClick: seeWholeWinter(); return true;
    case QEvent::Wheel: wheelOnPlot(*static_cast<QWheelEvent*>(event)); return true;
    default: return false;
    }
}

bool WinterPlot::eventFilter(QObject* watched, QEvent* event) {
    if (watched == plot_ && event->type() == QEvent::Leave) readDay(std::nullopt);
    if (watched == plot_ && picture_ && !picture_->empty() && mouseOnPlot(event)) return true;
    return QWidget::eventFilter(watched, event);
}

bool savePaperPicture(std::shared_ptr<const WinterPicture> picture, const std::set<advice::OptionKind>& options,
                      const QString& title, const QString& path, std::optional<DayWindow> seen, QSize size) {
    WinterPlot plot;
    plot.setColours(lightColours());
    plot.resize(size);
    if (!title.isEmpty()) plot.setTitle(title); // an empty one would take its room
    plot.showOptions(options);
    plot.show(std::move(picture));
    plot.see(seen);
    return plot.save(path, size);
}

} // namespace winterlarder::desk
