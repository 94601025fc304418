// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/settings.h"

#include <QFrame>

#include <functional>
#include <map>

class QVBoxLayout;

class QTimer;

namespace winterlarder::desk {

//! What the keeper must know while working: one line a matter, with what can be done about it. What lasts as long as its matter stands
//! above everything else; what can be closed lies over the foot of the page, so that nothing beneath moves when it comes or goes.
//! Tested: tests/app/banner_test.cpp.
class Banner : public QFrame {
    Q_OBJECT

public:
    struct Action {
        QString words;
        std::function<void()> act;
    };

    //! Notices lie over `desk`, on the right of `beside`.
    Banner(QWidget* desk, const QWidget* beside);
    enum class Closing { ByKeeper, WhenDismissed }; //!< the first can be closed by hand
    //! Says something about a matter, in place of what was said of it before.
    void showMessage(const QString& matter, const QString& words, const std::vector<Action>& actions = {},
                     Closing closing = Closing::ByKeeper);
    //! Says what was done, under the matter "notices", until it is closed or (as wished) some time has passed: it lies over what is
    //! worked at.
    void showBriefly(const QString& words);
    void wishNotices(NoticeWish wish); //!< for those said from now on
    void dismiss(const QString& matter);
    QString said(const QString& matter) const; //!< empty where nothing is
    QFrame* notices() const { return notices_; }
    QTimer* passing() const { return passing_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* line(const QString& words, const std::vector<Action>& actions);
    void lay(); //!< the notices over the desk

    const QWidget* beside_;
    QFrame* notices_;
    std::map<QString, QWidget*> byMatter_;
    NoticeWish wish_ = settings::notices();
    QTimer* passing_; //!< till what was mentioned goes
};

} // namespace winterlarder::desk
