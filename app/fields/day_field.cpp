// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/day_field.h"

#include "models/words.h"
#include "theme/card.h"
#include "theme/colours.h"
#include "theme/stop_listening.h"

#include <QAccessible>
#include <QCalendarWidget>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScreen>
#include <QStyle>
#include <QTextCharFormat>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

Date thisDay() { return words::fromQDate(QDate::currentDate()); }

//! The calendar over the window; it goes once a day is chosen or it is left.
class CalendarPopup : public QFrame {
public:
    CalendarPopup(QWidget* parent, const QString& name)
        : QFrame(parent, Qt::Popup), calendar(new QCalendarWidget(this)) {
        setAttribute(Qt::WA_DeleteOnClose);
        setFrameShape(QFrame::StyledPanel);
        calendar->setAccessibleName(name);
        calendar->setVerticalHeaderFormat(QCalendarWidget::NoVerticalHeader);
        QTextCharFormat weekend; // the toolkit's red cannot be read on a dark ground
        weekend.setForeground(coloursOf(*this).text);
        for (const auto day : {Qt::Saturday, Qt::Sunday}) calendar->setWeekdayTextFormat(day, weekend);
        auto* all = new QVBoxLayout(this);
        all->setContentsMargins(1, 1, 1, 1);
        all->addWidget(calendar);
    }
    //! Below the field, above it where there is no room, and never beyond an edge of the screen.
    void openAt(const QWidget& field) {
        calendar->ensurePolished();
        adjustSize();
        place(field);
        QFrame::show();
        place(field); // shown it may be larger than it said
        calendar->setFocus();
    }
    QCalendarWidget* const calendar;

private:
    void place(const QWidget& field) {
        const QRect room = field.screen()->availableGeometry();
        const QPoint under = field.mapToGlobal(QPoint(0, field.height()));
        const bool fits = under.y() + height() <= room.bottom() + 1;
        const int y = fits ? under.y() : field.mapToGlobal(QPoint(0, 0)).y() - height();
        move(std::clamp(under.x(), room.left(), std::max(room.left(), room.right() + 1 - width())),
             std::clamp(y, room.top(), std::max(room.top(), room.bottom() + 1 - height())));
    }
};

} // namespace

DayField::DayField(QWidget* parent, const QString& name) : QWidget(parent), day_(thisDay()) {
    setAccessibleName(name);
    line_ = new QLineEdit(this);
    line_->setAccessibleName(name);
    line_->installEventFilter(this);
    button_ = new QToolButton(this);
    button_->setArrowType(Qt::DownArrow);
    button_->setFocusPolicy(Qt::TabFocus);
    button_->setAccessibleName(tr("Calendar: %1").arg(name));
    button_->setToolTip(tr("Choose the day from a calendar (Alt and the down arrow)"));
    button_->setProperty("calendar", true);
    wrong_ = plainLabel(this);
    wrong_->setWordWrap(true);
    wrong_->setProperty("fault", true);
    wrong_->setAccessibleDescription(tr("What is wrong"));
    wrong_->hide();
    auto* across = new QHBoxLayout;
    across->setSpacing(2);
    across->addWidget(line_, 1);
    across->addWidget(button_);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(2);
    down->addLayout(across);
    down->addWidget(wrong_);
    setFocusProxy(line_);
    setForm(tr("d MMM yyyy"));
    connect(line_, &QLineEdit::editingFinished, this, &DayField::take);
    connect(line_, &QLineEdit::textEdited, this, &DayField::recheck);
    connect(button_, &QToolButton::clicked, this, &DayField::openCalendar);
}

DayField::~DayField() { stopListeningToChildren(this); }

QString DayField::written(Date day) const { return QLocale().toString(words::toQDate(day), form_); }

void DayField::setForm(const QString& form) {
    form_ = form;
    const QString longest = QLocale().toString(QDate(2026, 9, 30), form_);
    line_->setMinimumWidth(line_->fontMetrics().horizontalAdvance(longest) +
                           4 * line_->fontMetrics().averageCharWidth());
    line_->setText(written(day_));
}

void DayField::leaveOutTheYear() {
    everyYear_ = true;
    button_->hide();
    setForm(tr("d MMMM"));
}

void DayField::setRange(std::optional<Date> first, std::optional<Date> last) {
    if (first == first_ && last == last_) return;
    first_ = first;
    last_ = last;
    if (!wrong_->isHidden()) say(fault());
}

void DayField::show(Date day) {
    if (day == day_ && line_->isModified()) return; // what was typed is never lost
    day_ = day;
    line_->setText(written(day));
    say({});
}

text::DayRead DayField::read() const {
    const Date today = thisDay();
    return text::readDay(line_->text(), {first_, last_, today, everyYear_ ? day_ : std::max(today, day_), everyYear_},
                         QLocale());
}

QString DayField::fault() const { return line_->isModified() ? read().fault : QString(); }

bool DayField::take() {
    if (!line_->isModified()) return true;
    const auto typed = read();
    say(typed.fault);
    if (!typed.day) return false;
    tell(*typed.day);
    return true;
}

void DayField::tell(Date day) {
    const bool other = day != day_;
    day_ = day;
    line_->setText(written(day));
    say({});
    if (other) emit valueEntered(day);
}

// While it is typed anew it is only said that it is right now.
void DayField::recheck() {
    if (!wrong_->isHidden()) say(fault());
}

void DayField::step(int days, int months) {
    take();
    const QDate moved = words::toQDate(day_).addMonths(months).addDays(days);
    const Date wanted = words::fromQDate(moved);
    tell(std::clamp(wanted, first_.value_or(wanted), last_.value_or(std::max(wanted, first_.value_or(wanted)))));
    line_->selectAll();
}

void DayField::say(const QString& wrong) {
    if (wrong == wrong_->text()) return;
    wrong_->setText(wrong);
    wrong_->setVisible(!wrong.isEmpty());
    fitWords();
    line_->setAccessibleDescription(wrong);
    line_->setProperty("faulty", !wrong.isEmpty());
    line_->style()->unpolish(line_);
    line_->style()->polish(line_);
    if (wrong.isEmpty()) return;
    QAccessibleEvent heard(wrong_, QAccessible::Alert);
    QAccessible::updateAccessibility(&heard);
}

// Rows and lines that break ask for a height only, so the words take theirs from the width they got.
void DayField::fitWords() {
    if (!wrong_->isHidden())
        wrong_->setFixedHeight(wrong_->heightForWidth(std::max(width(), minimumSizeHint().width())));
}

void DayField::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitWords();
}

void DayField::openCalendar() {
    take();
    auto* popup = new CalendarPopup(this, accessibleName());
    auto* calendar = popup->calendar;
    if (first_) calendar->setMinimumDate(words::toQDate(*first_));
    if (last_) calendar->setMaximumDate(words::toQDate(*last_));
    calendar->setSelectedDate(words::toQDate(day_));
    const auto choose = [this, popup](QDate day) {
        popup->close();
        line_->setFocus();
        tell(words::fromQDate(day));
    };
    connect(calendar, &QCalendarWidget::clicked, this, choose);
    connect(calendar, &QCalendarWidget::activated, this, choose);
    popup->openAt(*line_);
}

std::vector<NamedKeys> DayField::namedKeys() {
    return {{{Qt::Key_Up, Qt::Key_Down}, tr("the next day, or the day before")},
            {{Qt::Key_PageUp, Qt::Key_PageDown}, tr("a month later or earlier")},
            {{Qt::ALT | Qt::Key_Down}, tr("opens the calendar")},
            {{Qt::Key_Return, Qt::Key_Enter}, tr("takes what was typed")}};
}

bool DayField::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool alt = key->modifiers() & Qt::AltModifier;
    if (alt && key->key() == Qt::Key_Down && !everyYear_) return openCalendar(), true;
    if (key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::ShiftModifier) || line_->isReadOnly())
        return false;
    switch (key->key()) {
    case Qt::Key_Up: return step(1, 0), true;
    case Qt::Key_Down: return step(-1, 0), true;
    case Qt::Key_PageUp: return step(0, 1), true;
    case Qt::Key_PageDown: return step(0, -1), true;
    default: return false;
    }
}

} // namespace winterlarder::desk
