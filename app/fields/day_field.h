// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/day_text.h"
#include "theme/named_keys.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QToolButton;

namespace winterlarder::desk {

//! A field for a day as people type it, with a calendar to choose from; up and down go by days, page up and page down by months. What
//! cannot be read or is not permitted stays as it was typed, marked, with what would be right below it, and the last day taken stands.
//! Tested: tests/app/day_field_test.cpp.
class DayField : public QWidget {
    Q_OBJECT

public:
    DayField(QWidget* parent, const QString& name);
    ~DayField() override;

    //! Shows a day. What is being typed is left alone while the day is the one that stands.
    void show(Date day);
    Date day() const { return day_; } //!< the last one shown or taken
    //! The days permitted; nothing: no limit.
    void setRange(std::optional<Date> first, std::optional<Date> last);
    //! How the day is written, as for QLocale::toString; "d MMM yyyy" unless said.
    void setForm(const QString& form);
    //! A day of every year: no year is shown, asked for or heard, and there is no calendar.
    void leaveOutTheYear();

    //! Takes what is typed, if it is right. False where it is not; the fault is shown then.
    bool take();
    QString fault() const; //!< of what is typed; empty where it is right

    QLineEdit* line() const { return line_; }
    QToolButton* calendarButton() const { return button_; }
    void openCalendar();

    static std::vector<NamedKeys> namedKeys();

signals:
    void valueEntered(winterlarder::Date day); //!< another day was entered by hand

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    text::DayRead read() const;
    QString written(Date day) const;
    void tell(Date day);
    void step(int days, int months);
    void say(const QString& wrong);
    void fitWords();
    void recheck();

    QLineEdit* line_;
    QToolButton* button_;
    QLabel* wrong_;
    QString form_;
    Date day_;
    std::optional<Date> first_, last_;
    bool everyYear_ = false;
};

} // namespace winterlarder::desk
