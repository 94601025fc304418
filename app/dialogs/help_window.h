// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/glossary.h"

#include <QDialog>

class QLineEdit;
class QTextBrowser;

namespace winterlarder::desk {

//! A list of words, or of keys, with what each means, by subject; typing in the line above shows only what holds the letters typed.
//! Tested: tests/app/help_test.cpp.
class HelpWindow : public QDialog {
    Q_OBJECT

public:
    HelpWindow(QWidget* parent, const QString& title);
    void show(std::vector<text::ExplainedSection> sections);
    QLineEdit* searchLine() const { return search_; }
    QString text() const; //!< as shown

protected:
    void changeEvent(QEvent* event) override;                   //!< other colours
    bool eventFilter(QObject* watched, QEvent* event) override; //!< the list scrolls while letters are typed

private:
    void list();

    std::vector<text::ExplainedSection> sections_;
    QLineEdit* search_;
    QTextBrowser* browser_;
};

} // namespace winterlarder::desk
