// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/layout/demo_window.h"
#include "app/layout/widget_faults.h"
#include "combs/comb_drawing.h"
#include "pages/look_page.h"
#include "pages/picture_panel.h"

#include <QAccessible>
#include <QScrollArea>

#include <set>

//! Whoever does not use a mouse, or does not see the screen, reaches and hears all of a page.
namespace winterlarder::desk {

namespace {

class SpokenWindow : public layout::DemoWindow {
protected:
    std::vector<QWidget*> focusable() {
        std::vector<QWidget*> found;
        for (auto* each : window.findChildren<QWidget*>())
            if (each->isVisible() && each->isEnabled() && (each->focusPolicy() & Qt::TabFocus) && !each->focusProxy() &&
                !each->objectName().startsWith(QStringLiteral("qt_")))
                found.push_back(each);
        return found;
    }
    template <class Visit> void throughAll(const Visit& visit) {
        lookAt("Pippin");
        throughPages(window.colonyView()->pages(), visit);
        window.choose({});
        rest();
        throughPages(window.yardView()->pages(), visit);
    }
    QImage around(const QWidget* widget) {
        constexpr int ring = 4; // px a mark of the focus may reach out
        const QRect at(widget->mapTo(&window, QPoint(0, 0)), widget->size());
        return window.grab(at.adjusted(-ring, -ring, ring, ring)).toImage().convertToFormat(QImage::Format_RGB32);
    }
};

QString spoken(QWidget* widget, QAccessible::Text what) {
    return QAccessible::queryAccessibleInterface(widget)->text(what);
}

} // namespace

TEST_F(SpokenWindow, EveryControlHasAName) {
    int named = 0;
    throughAll([&](const QString& page) {
        for (auto* each : focusable()) {
            EXPECT_FALSE(spoken(each, QAccessible::Name).isEmpty())
                << each->metaObject()->className() << " of " << page.toStdString();
            ++named;
        }
    });
    EXPECT_GT(named, 100);
}

TEST_F(SpokenWindow, TheFocusIsSeenWhereverItIs) {
    size({1360, 900});
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    window.setAttribute(Qt::WA_KeyboardFocusChange); // as once the Tab key was pressed
    int seen = 0;
    std::set<QString> lookedAt;
    throughAll([&](const QString& page) {
        for (auto* each : focusable()) {
            if (!lookedAt.insert(spoken(each, QAccessible::Name)).second) continue;
            window.setFocus();
            each->setFocus(Qt::TabFocusReason);
            if (QApplication::focusWidget() != each) continue;
            for (auto* at = each->parentWidget(); at; at = at->parentWidget())
                if (auto* area = qobject_cast<QScrollArea*>(at)) area->ensureWidgetVisible(each);
            QTest::qWait(1);
            const QImage with = around(each);
            each->clearFocus();
            QTest::qWait(1);
            const QImage without = around(each);
            int changed = 0;
            for (int y = 0; y < with.height(); ++y)
                for (int x = 0; x < with.width(); ++x) changed += with.pixel(x, y) != without.pixel(x, y);
            EXPECT_GE(changed, 20) << layout::called(*each).toStdString() << " of " << page.toStdString();
            ++seen;
        }
    });
    EXPECT_GT(seen, 60);
}

TEST_F(SpokenWindow, ACombIsChosenAndFilledByKeysAndSaysWhatItHolds) {
    lookAt("Pippin");
    auto* drawing = window.colonyView()->look()->drawing();
    auto* list = QAccessible::queryAccessibleInterface(drawing);
    ASSERT_GT(list->childCount(), 4);
    drawing->setFocus();
    drawing->choose(0);
    QTest::keyClick(drawing, Qt::Key_Right);
    EXPECT_TRUE(list->child(1)->state().selected);
    QTest::keyClick(drawing, Qt::Key_C);
    QTest::keyClick(drawing, Qt::Key_3);
    settle();
    EXPECT_EQ(list->child(1)->child(0)->text(QAccessible::Value), QStringLiteral("30 %"));
    EXPECT_TRUE(list->child(1)->text(QAccessible::Description).contains(QStringLiteral("capped 30 %")))
        << list->child(1)->text(QAccessible::Description).toStdString();
}

TEST_F(SpokenWindow, TheWinterPictureSaysItsSummaryAndEachDay) {
    lookAt("Pippin");
    auto* plot = window.colonyView()->picture()->plot();
    const QString summary = spoken(plot, QAccessible::Description);
    EXPECT_EQ(summary, plot->summary());
    for (const char* words :
         {"From 14 September 2026", "leave", "of 100 winters", "spring forage", "last day for syrup"})
        EXPECT_TRUE(summary.contains(QLatin1String(words))) << words << " in: " << summary.toStdString();
    plot->setFocus();
    QTest::keyClick(plot, Qt::Key_Right);
    EXPECT_TRUE(spoken(plot, QAccessible::Description).startsWith(QStringLiteral("15 Sep")));
    QTest::keyClick(plot, Qt::Key_Escape);
    EXPECT_EQ(spoken(plot, QAccessible::Description), summary) << "where no day is read out it says the whole again";
}

} // namespace winterlarder::desk
