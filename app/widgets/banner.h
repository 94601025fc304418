// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include <functional>
#include <map>

class QVBoxLayout;

namespace winterlarder::desk {

//! What the keeper must know while working, above everything else: one line a matter, with what can be done about it. Lines stand until
//! the matter is over or they are put away. Tested: tests/app/pages_test.cpp.
class Banner : public QFrame {
    Q_OBJECT

public:
    struct Action {
        QString words;
        std::function<void()> act;
    };

    explicit Banner(QWidget* parent = nullptr);
    //! Says something about a matter, in place of what was said of it before. `mayGo`: it can be put away by hand.
    void say(const QString& matter, const QString& words, const std::vector<Action>& actions = {}, bool mayGo = true);
    void hush(const QString& matter);
    QString said(const QString& matter) const; //!< empty where nothing is

private:
    QVBoxLayout* lines_;
    std::map<QString, QWidget*> byMatter_;
};

} // namespace winterlarder::desk
