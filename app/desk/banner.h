// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/settings.h"

#include <QFrame>

#include <functional>
#include <map>

class QLabel;
class QPushButton;
class QTimer;
class QVBoxLayout;

namespace winterlarder::desk {

//! What the keeper must know while working: one line a matter, with what can be done about it. What lasts as long as its matter stands
//! above everything else; what can be closed has a line of its own at the foot of the window, kept free for it, so that it covers nothing and
//! nothing moves when it comes or goes. What has no room in that line is folded, and read in full at the keeper's wish.
//! Tested: tests/app/banner_test.cpp.
class Banner : public QFrame {
    Q_OBJECT

public:
    struct Action {
        QString words;
        std::function<void()> act;
    };

    explicit Banner(QWidget* desk);
    QWidget* foot() const { return foot_; }         //!< the room kept free, to be the lowest of the desk
    enum class Closing { ByKeeper, WhenDismissed }; //!< the first can be closed by hand
    //! Says something about a matter, in place of what was said of it before.
    void showMessage(const QString& matter, const QString& words, const std::vector<Action>& actions = {},
                     Closing closing = Closing::ByKeeper);
    //! Says what was done, under the matter "notices", until it is closed or (as wished) some time has passed.
    void showBriefly(const QString& words);
    void wishNotices(NoticeWish wish); //!< for those said from now on
    void dismiss(const QString& matter);
    QString said(const QString& matter) const; //!< empty where nothing is
    QFrame* notices() const { return notices_; }
    QPushButton* moreButton() const { return more_; } //!< reads in full, or folds again; seen where something is folded
    QTimer* passing() const { return passing_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Line {
        QWidget* whole = nullptr;
        QLabel* label = nullptr;
        QString words{};
    };
    Line line(const QString& matter, const QString& words, const std::vector<Action>& actions);
    std::vector<Line*> closable();
    void unfold(bool wide);
    void fitFoot();
    void fitWords(const std::vector<Line*>& lines);
    void lay(); //!< the notices over the foot, and over the page where they are read in full

    QWidget* foot_;
    QFrame* notices_;
    QVBoxLayout* lines_; //!< of the notices
    QPushButton* more_;
    std::map<QString, Line> byMatter_;
    QString newest_;        //!< matter told last
    bool unfolded_ = false; //!< read in full
    NoticeWish wish_ = settings::notices();
    QTimer* passing_; //!< till what was mentioned goes
};

} // namespace winterlarder::desk
