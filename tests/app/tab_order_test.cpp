// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/every_form.h"
#include "fields/day_field.h"
#include "forms/boxes_field.h"
#include "pages/yard_view.h"

#include <QComboBox>
#include <QTabWidget>

namespace winterlarder::desk {

using invented::colony;

namespace {

//! What takes the focus, and where it is seen.
struct Stop {
    QWidget* widget;
    QRect seen;
};

QString named(const QWidget* widget) {
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    return QStringLiteral("%1 \u201c%2\u201d")
        .arg(QLatin1String(widget->metaObject()->className()), button ? button->text() : widget->accessibleName());
}

bool besideEachOther(const QRect& a, const QRect& b) {
    const int common = std::min(a.bottom(), b.bottom()) - std::max(a.top(), b.top());
    return 2 * common > std::min(a.height(), b.height());
}

bool aboveEachOther(const QRect& a, const QRect& b) {
    return std::min(a.right(), b.right()) > std::max(a.left(), b.left());
}

// Of two beside each other the left one is read first, of two above each other the upper one.
bool readBefore(const QRect& a, const QRect& b) {
    if (besideEachOther(a, b)) return a.left() < b.left();
    return aboveEachOther(a, b) && a.top() < b.top();
}

} // namespace

class TabOrder : public invented::WindowDesk {
protected:
    //! Where the Tab key comes from `first` on, until it comes round; at most two hundred stops.
    static std::vector<Stop> walk(QWidget* top, QWidget* first) {
        top->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(top));
        first->setFocus();
        std::vector<Stop> stops;
        do {
            auto* at = QApplication::focusWidget();
            const QRect seen = at->visibleRegion().boundingRect();
            stops.push_back({at, QRect(at->mapTo(top, seen.topLeft()), seen.size())});
            QTest::keyClick(at, Qt::Key_Tab);
        } while (QApplication::focusWidget() != first && stops.size() < 200);
        return stops;
    }
    static void expectAsRead(const std::vector<Stop>& stops, const char* what) {
        for (std::size_t later = 1; later < stops.size(); ++later)
            for (std::size_t earlier = 0; earlier < later; ++earlier) {
                const auto &first = stops[earlier], &then = stops[later];
                if (first.seen.isEmpty() || then.seen.isEmpty() || then.widget->isAncestorOf(first.widget) ||
                    first.widget->isAncestorOf(then.widget))
                    continue;
                EXPECT_FALSE(readBefore(then.seen, first.seen))
                    << named(then.widget).toStdString() << " is read before " << named(first.widget).toStdString()
                    << " of " << what;
            }
    }
    static QWidget* firstIn(QWidget* dialog) {
        auto* at = dialog->nextInFocusChain();
        while (!at->isVisible() || !(at->focusPolicy() & Qt::TabFocus) || at->focusProxy() || !at->isEnabled())
            at = at->nextInFocusChain();
        return at;
    }
};

TEST_F(TabOrder, GoesAsEveryFormIsRead) {
    answerSlowly();
    open({colony("Apple")});
    for (const auto& [what, ask] : invented::everyForm(window, entry().id)) {
        auto* form = ask();
        form->show();
        QTest::qWait(2);
        const auto stops = walk(form, firstIn(form));
        EXPECT_GT(stops.size(), 3U) << what;
        expectAsRead(stops, what);
        form->reject();
        QTest::qWait(2);
    }
}

TEST_F(TabOrder, GoesAsAHiveOfOwnMeasuresIsRead) {
    answerSlowly();
    open({colony("Apple")});
    auto* form = askForHive(&window, window.yard(),
                            {.colony = entry().id, .date = invented::day("2026-09-14"), .hive = entry().record.hive});
    auto* boxes = form->findChild<BoxesField*>();
    QTest::mouseClick(boxes->addButton(), Qt::LeftButton);
    for (const char* name : {"Format of box 1 from the floor", "Format of box 2 from the floor"}) {
        auto* format = field<QComboBox>(boxes, name);
        format->setCurrentIndex(format->count() - 1);
    }
    QTest::qWait(5);
    const auto stops = walk(form, firstIn(form));
    EXPECT_GT(stops.size(), 20U);
    expectAsRead(stops, "hive of own measures");
    form->reject();
}

TEST_F(TabOrder, GoesAsEveryPageIsRead) {
    answerReally();
    open({colony("Apple"), colony("Pear", 3)});
    auto* pages = window.colonyView()->pages();
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        settle();
        expectAsRead(walk(&window, window.dayField()->line()), qPrintable(pages->tabText(page)));
    }
    window.choose({});
    auto* yard = window.yardView()->pages();
    for (int page = 0; page < yard->count(); ++page) {
        yard->setCurrentIndex(page);
        settle();
        expectAsRead(walk(&window, window.dayField()->line()), qPrintable(yard->tabText(page)));
    }
}

TEST_F(TabOrder, TheNumberOfBeesComesBeforeWhatWasCounted) {
    answerSlowly();
    open({colony("Apple")});
    const auto stops = walk(&window, window.dayField()->line());
    std::vector<std::string> names;
    for (const auto& stop : stops) names.push_back(stop.widget->accessibleName().toStdString());
    const auto number = std::find(names.begin(), names.end(), "Number of combs, seams or bees");
    ASSERT_NE(number, names.end());
    ASSERT_NE(number + 1, names.end());
    EXPECT_EQ(*(number + 1), "How the bees were counted");
}

TEST(ReadingOrder, IsByRowsAndColumns) {
    EXPECT_TRUE(readBefore({0, 0, 50, 20}, {60, 4, 50, 20})) << "the same line";
    EXPECT_FALSE(readBefore({60, 4, 50, 20}, {0, 0, 50, 20}));
    EXPECT_TRUE(readBefore({0, 0, 50, 20}, {10, 30, 50, 20})) << "a line below";
    EXPECT_FALSE(readBefore({0, 100, 50, 20}, {60, 4, 50, 20})) << "another column may be read before";
    EXPECT_FALSE(readBefore({60, 4, 50, 20}, {0, 100, 50, 20}));
}

} // namespace winterlarder::desk
