// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/winter_plot.h"

#include "models/words.h"
#include "plots/late_plot.h"
#include "plots/spoken_plot.h"
#include "plots/winter_canvas.h"

#include <QAbstractScrollArea>
#include <QFileInfo>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QSvgGenerator>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr int ring = 2;         // px free around the picture, for the mark of the focus
constexpr double oneStep = 1.5; // so many times the days, a key or a notch of the wheel

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
    plot_->setAttribute(Qt::WA_NoMousePropagation, false); // a wheel it does not use goes on to the page
    plot_->installEventFilter(this);
    plot_->setAccessibleName(tr("Drawing of the winters"));
    canvas_ = std::make_unique<WinterCanvas>(plot_);
    late_ = new LatePlot(plot_, this, [this] { fillCanvas(); });
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(ring, ring, ring, ring);
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

void WinterPlot::useWording(const text::Wording& wording) {
    if (wording == wording_) return;
    wording_ = wording;
    redraw();
}

text::WordStyle WinterPlot::told() const {
    auto own = words::style();
    own.wording = wording_;
    return own;
}

void WinterPlot::setTitle(const QString& title) { canvas_->setTitle(title, coloursOf(*this)); }

void WinterPlot::setColours(const Colours& colours) { wearColours(*this, colours); }

void WinterPlot::redraw() { late_->change(); }

void WinterPlot::fillCanvas() {
    const auto& colours = coloursOf(*this);
    plot_->setFont(font());
    if (!day_) setAccessibleDescription(summary());
    if (!picture_ || picture_->empty()) canvas_->clear(colours);
    else canvas_->draw(*picture_, options_, shownDays(), colours, told());
}

void WinterPlot::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange ||
        event->type() == QEvent::FontChange || event->type() == QEvent::LocaleChange)
        redraw();
}

void WinterPlot::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (canvas_->showUse(height() >= 20 * fontMetrics().height()) || !canvas_->legendFits() || seen_)
        redraw(); // dates stand closer where there is room
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
    setAccessibleDescription(day_ ? text : summary());
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

void WinterPlot::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void WinterPlot::paintEvent(QPaintEvent*) {
    if (!hasFocus()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(coloursOf(*this).accent, 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

void WinterPlot::focusOutEvent(QFocusEvent* event) {
    update();
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

namespace {

// Whether the page the picture stands on can be scrolled up or down.
bool standsOnScrolledPage(const QWidget& widget) {
    for (const auto* each = widget.parentWidget(); each; each = each->parentWidget())
        if (const auto* area = qobject_cast<const QAbstractScrollArea*>(each))
            if (area->verticalScrollBar()->maximum() > 0) return true;
    return false;
}

} // namespace

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
    case QEvent::Wheel: {
        auto* wheel = static_cast<QWheelEvent*>(event);
        // A page that is scrolled does not stop at the picture, unless the picture was clicked or Ctrl is held.
        const bool scrolling =
            standsOnScrolledPage(*this) && !hasFocus() && !(wheel->modifiers() & Qt::ControlModifier);
        wheel->setAccepted(!scrolling);
        if (!scrolling) wheelOnPlot(*wheel);
        return true;
    }
    default: return false;
    }
}

bool WinterPlot::eventFilter(QObject* watched, QEvent* event) {
    if (watched == plot_ && event->type() == QEvent::Leave) readDay(std::nullopt);
    if (watched == plot_ && picture_ && !picture_->empty() && mouseOnPlot(event)) return true;
    return QWidget::eventFilter(watched, event);
}

bool savePaperPicture(std::shared_ptr<const WinterPicture> picture, const std::set<advice::OptionKind>& options,
                      const text::Wording& wording, const QString& title, const QString& path,
                      std::optional<DayWindow> seen, QSize size) {
    WinterPlot plot;
    plot.setColours(lightColours());
    plot.resize(size);
    if (!title.isEmpty()) plot.setTitle(title); // an empty one would take its room
    plot.useWording(wording);
    plot.showOptions(options);
    plot.show(std::move(picture));
    plot.see(seen);
    return plot.save(path, size);
}

} // namespace winterlarder::desk
