// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "desk/colony_view.h"
#include "pages/yard_view.h"

#include <QTabWidget>
#include <QTimer>

namespace winterlarder::desk {

using invented::colony;

class Notices : public invented::WindowDesk {
protected:
    //! Where everything stands that can be seen, but for the notices themselves.
    std::map<const QWidget*, QRect> places() {
        QTest::qWait(20);
        std::map<const QWidget*, QRect> places;
        for (const auto* each : window.findChildren<QWidget*>())
            if (each->isVisible() && each != window.banner()->notices() &&
                !window.banner()->notices()->isAncestorOf(each))
                places[each] = QRect(each->mapTo(&window, QPoint(0, 0)), each->size());
        return places;
    }
    QRect there() {
        const auto* notices = window.banner()->notices();
        return {notices->mapTo(&window, QPoint(0, 0)), notices->size()};
    }
    QPushButton* putAway() {
        for (auto* each : window.banner()->notices()->findChildren<QPushButton*>())
            if (each->isVisible() && each->text() == QStringLiteral("Close")) return each;
        return nullptr;
    }
};

TEST_F(Notices, ComeAndGoWithoutAnythingElseMoving) {
    answerReally();
    open({colony("Apple"), colony("Pear", 3)});
    const auto before = places();
    ASSERT_GT(before.size(), 40U);
    emit window.book()->noticed(
        {QStringLiteral("A backup was made."), QStringLiteral("Another program had the book open.")});
    auto* notices = window.banner()->notices();
    ASSERT_TRUE(notices->isVisible());
    EXPECT_EQ(places(), before) << "nothing is pushed";
    EXPECT_TRUE(window.rect().contains(there()));
    for (const auto& [widget, place] : before)
        if (!widget->isAncestorOf(notices) && widget != window.banner()->foot())
            EXPECT_FALSE(place.intersects(there())) << widget->metaObject()->className() << " is covered";
    auto* more = window.banner()->moreButton();
    EXPECT_FALSE(more->isVisible()) << "two short sentences have room in the line";
    ASSERT_NE(putAway(), nullptr);
    window.yardPane()->setFocus();
    QTest::mouseClick(putAway(), Qt::LeftButton);
    EXPECT_EQ(window.focusWidget(), window.yardPane()) << "the keys stay where they were";
    QTest::qWait(5);
    EXPECT_FALSE(notices->isVisible());
    EXPECT_EQ(places(), before);
}

TEST_F(Notices, ArePutAwayByTheKeyboardAndStayInAWindowMadeSmaller) {
    answerSlowly();
    open({colony("Apple")});
    window.banner()->showMessage(QStringLiteral("notices"),
                                 QString(QStringLiteral("Something long was said here. ")).repeated(12));
    window.resize(1000, 640);
    QTest::qWait(20);
    auto* notices = window.banner()->notices();
    auto* more = window.banner()->moreButton();
    EXPECT_TRUE(window.rect().contains(there()));
    EXPECT_EQ(there().height(), window.banner()->foot()->height()) << "what has no room in its line is folded";
    ASSERT_TRUE(more->isVisible());
    QTest::mouseClick(more, Qt::LeftButton);
    auto* label = notices->findChild<QLabel*>(QStringLiteral("bannerWords"));
    EXPECT_EQ(label->text().count(QStringLiteral("Something long")), 12);
    EXPECT_GE(label->height(), label->heightForWidth(label->width()));
    EXPECT_TRUE(window.rect().contains(there()));
    QTest::mouseClick(more, Qt::LeftButton);
    EXPECT_EQ(there().height(), window.banner()->foot()->height());
    window.banner()->showMessage(QStringLiteral("calendar"), QStringLiteral("What is due is in a file."));
    EXPECT_EQ(window.banner()->said(QStringLiteral("calendar")).toStdString(), "What is due is in a file.");
    EXPECT_EQ(more->text().toStdString(), "Show all 2") << "the older one is not lost";
    for (int left = 2; left > 0; --left) {
        ASSERT_NE(putAway(), nullptr);
        putAway()->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        QTest::qWait(5);
        EXPECT_EQ(notices->isVisible(), left == 2);
    }
}

TEST_F(Notices, WhatIsOnlyMentionedGoesByItselfAndNothingElseDoes) {
    answerSlowly();
    open({colony("Apple")});
    auto* banner = window.banner();
    banner->passing()->setInterval(30);
    banner->showMessage(QStringLiteral("refused"), QStringLiteral("This could not be written down."));
    banner->showBriefly(QStringLiteral("The sheet was written."));
    EXPECT_EQ(banner->said(QStringLiteral("notices")).toStdString(), "The sheet was written.");
    EXPECT_TRUE(invented::waitFor([&] { return banner->said(QStringLiteral("notices")).isEmpty(); }));
    EXPECT_FALSE(banner->said(QStringLiteral("refused")).isEmpty()) << "what went wrong stays till it was read";
    banner->showBriefly(QStringLiteral("The sheet was written."));
    banner->showMessage(QStringLiteral("notices"), QStringLiteral("A backup could not be made."));
    QTest::qWait(80);
    EXPECT_FALSE(banner->said(QStringLiteral("notices")).isEmpty()) << "said in its place, it does not go with it";
}

TEST_F(Notices, WhatLastsStandsAboveEverything) {
    answerSlowly();
    open({colony("Apple")});
    window.banner()->showMessage(QStringLiteral("access"), QStringLiteral("The book is open elsewhere."), {},
                                 Banner::Closing::WhenDismissed);
    QTest::qWait(20);
    EXPECT_FALSE(window.banner()->notices()->isVisible());
    ASSERT_TRUE(window.banner()->isVisible());
    EXPECT_LE(window.banner()->mapTo(&window, QPoint(0, window.banner()->height())).y(),
              window.colonyView()->mapTo(&window, QPoint(0, 0)).y());
    EXPECT_EQ(putAway(), nullptr);
    window.banner()->dismiss(QStringLiteral("access"));
    EXPECT_FALSE(window.banner()->isVisible());
}

} // namespace winterlarder::desk
