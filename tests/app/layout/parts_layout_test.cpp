// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/layout/demo_window.h"
#include "app/layout/drawn_faults.h"
#include "combs/comb_drawing.h"
#include "fields/day_field.h"
#include "pages/look_page.h"
#include "pages/picture_panel.h"
#include "pages/yard_delegate.h"
#include "theme/even_columns.h"

#include <QSplitter>
#include <QStandardItemModel>
#include <QToolButton>

//! How the room of the window is shared; and that each fault a page is searched for would be found.
namespace winterlarder::desk {

namespace {

class RoomOfTheWindow : public layout::DemoWindow {
protected:
    QSize deepest(const char* name) {
        lookAt(name);
        window.colonyView()->showPage(ColonyPage::Hive);
        rest();
        const auto* drawing = window.colonyView()->look()->drawing();
        QSizeF found;
        for (int comb = 0; comb < static_cast<int>(drawing->combs().size()); ++comb)
            found = found.expandedTo(drawing->faceOf(comb).size());
        return found.toSize();
    }
};

QPushButton* buttonAt(QWidget& in, const QString& words, const QRect& at) {
    auto* button = new QPushButton(words, &in);
    button->setGeometry(at);
    button->show();
    return button;
}

} // namespace

TEST_F(RoomOfTheWindow, CombsAreLargeAndGrowWithTheWindow) {
    for (const char* name : {"Russet", "Gravenstein", "Pippin"}) {
        size({1360, 900});
        const QSize there = deepest(name);
        EXPECT_GE(there.width(), 90) << name;
        EXPECT_GE(there.height(), 60) << name;
        size({1920, 1080});
        EXPECT_GE(deepest(name).height(), 60) << name;
        size({1360, 1600});
        const QSize larger = deepest(name);
        EXPECT_GT(larger.width() * larger.height(), there.width() * there.height()) << name;
    }
}

TEST_F(RoomOfTheWindow, WithoutThePictureThePageHasAllOfIt) {
    size({1360, 900});
    lookAt("Pippin");
    auto* view = window.colonyView();
    const int shared = view->pages()->height();
    EXPECT_GT(view->picture()->height(), 150);
    view->wantPicture(false);
    rest();
    EXPECT_FALSE(view->picture()->isVisible());
    EXPECT_GE(view->pages()->height(), view->halves()->height() - 1);
    EXPECT_GT(view->pages()->height(), shared + 150);
    view->wantPicture(true);
    rest();
    EXPECT_EQ(view->pages()->height(), shared);
}

TEST_F(RoomOfTheWindow, APictureIsNeverLowerThanItCanBeRead) {
    for (const QSize each : {QSize(680, 450), QSize(1024, 700), QSize(1360, 900)}) {
        size(each);
        lookAt("Russet");
        const auto* plot = window.colonyView()->picture()->plot();
        EXPECT_GE(plot->height(), 11 * plot->fontMetrics().height()) << each.width();
    }
}

TEST_F(RoomOfTheWindow, ANarrowWindowFoldsTheListIntoAStrip) {
    size({1360, 900});
    auto* pane = static_cast<YardPane*>(window.yardPane()->parentWidget());
    EXPECT_FALSE(pane->isStrip());
    EXPECT_FALSE(pane->opener()->isVisible());
    EXPECT_TRUE(window.dayField()->isVisible());
    size({780, 600});
    EXPECT_TRUE(pane->isStrip());
    EXPECT_LE(pane->width(), 100);
    EXPECT_FALSE(window.dayField()->isVisible());
    EXPECT_TRUE(window.colonyView()->isVisible());

    QTest::mouseClick(pane->opener(), Qt::LeftButton);
    rest();
    EXPECT_TRUE(pane->isOpened());
    EXPECT_TRUE(window.dayField()->isVisible());
    EXPECT_FALSE(window.colonyView()->isVisible());
    const auto third = window.yardPane()->model()->index(3, 0);
    QTest::mouseClick(window.yardPane()->viewport(), Qt::LeftButton, {}, window.yardPane()->visualRect(third).center());
    settle();
    rest();
    EXPECT_TRUE(pane->isStrip()) << "once a row is chosen its page is shown";
    EXPECT_TRUE(window.colonyView()->isVisible());
    EXPECT_EQ(window.colonyView()->colony(), window.yardList()->colonyAt(3));
    size({1360, 900});
    EXPECT_FALSE(pane->isStrip());
}

TEST(RoomOfThePicture, NoWordLiesOnACurveADotOrAFigureHoweverLargeItIs) {
    for (const auto& answered : invented::demoAnswers())
        for (const QSize each :
             {QSize(400, 170), QSize(560, 200), QSize(1000, 300), QSize(700, 420), QSize(1500, 500)}) {
            QWidget page;
            WinterPlot plot(&page);
            std::set<advice::OptionKind> all;
            for (const auto& option : answered->picture.options) all.insert(option.kind);
            plot.resize(each);
            page.resize(each);
            plot.showOptions(all);
            plot.show(std::shared_ptr<const WinterPicture>(answered, &answered->picture));
            page.show();
            QTest::qWait(1);
            page.grab();
            EXPECT_EQ(layout::badPlots(page).join(QLatin1Char('\n')).toStdString(), "")
                << each.width() << " x " << each.height();
            EXPECT_GE(layout::labelsOf(*plot.findChild<QCustomPlot*>()).size(), 3U);
        }
}

TEST(EvenColumns, AreAsManyAsHaveRoomAndTheRowsAlike) {
    EvenColumns cards(nullptr, 150, 10);
    for (int i = 0; i < 4; ++i) cards.add(new QWidget(&cards));
    for (const auto& [width, columns] : {std::pair(700, 4), std::pair(629, 2), std::pair(320, 2), std::pair(200, 1)}) {
        cards.resize(width, 300);
        cards.show();
        QTest::qWait(1);
        EXPECT_EQ(cards.columns(), columns) << width;
    }
}

// ---- what the pages are searched for would be found ----------------------------------------------------------------------

TEST(LayoutFaults, AWordThatIsCutIsFound) {
    QWidget page;
    page.resize(400, 200);
    page.show();
    auto* button = buttonAt(page, QStringLiteral("Make it the plan"), {10, 10, 50, 30});
    EXPECT_EQ(layout::cutWords(page).size(), 1);
    button->setToolTip(QStringLiteral("Make it the plan, and more"));
    EXPECT_TRUE(layout::cutWords(page).isEmpty()) << "its tool tip says the whole";
    auto* label = new QLabel(QStringLiteral("Twenty winters, each standing for five in a hundred"), &page);
    label->setWordWrap(true);
    label->setGeometry(10, 60, 100, 20);
    label->show();
    EXPECT_EQ(layout::cutWords(page).size(), 1);
    label->setGeometry(10, 60, 380, 40);
    EXPECT_TRUE(layout::cutWords(page).isEmpty());
}

TEST(LayoutFaults, AWidgetOnAnotherOrOutOfItsParentIsFound) {
    QWidget page;
    page.resize(400, 200);
    page.show();
    buttonAt(page, QStringLiteral("One"), {10, 10, 100, 30});
    auto* other = buttonAt(page, QStringLiteral("Other"), {80, 20, 100, 30});
    EXPECT_EQ(layout::overlaps(page).size(), 1);
    other->move(310, 20);
    EXPECT_TRUE(layout::overlaps(page).isEmpty());
    EXPECT_EQ(layout::reachingOut(page).size(), 1);
}

TEST(LayoutFaults, ATargetThatIsSmallOrTouchesIsFound) {
    QWidget page;
    page.resize(400, 200);
    page.show();
    buttonAt(page, QStringLiteral("One"), {10, 10, 100, 30});
    auto* other = buttonAt(page, QStringLiteral("Other"), {110, 10, 100, 30});
    EXPECT_EQ(layout::badTargets(page).size(), 1);
    other->setGeometry(120, 10, 100, 23);
    EXPECT_EQ(layout::badTargets(page).size(), 1);
    other->setGeometry(120, 10, 100, 24);
    EXPECT_TRUE(layout::badTargets(page).isEmpty());
}

TEST(LayoutFaults, AColumnUnderItsLongestWordIsFound) {
    QWidget page;
    QTableView table(&page);
    QStandardItemModel model(1, 1);
    model.setItem(0, 0, new QStandardItem(QStringLiteral("forget-me-nots")));
    table.setModel(&model);
    table.horizontalHeader()->hide();
    page.show();
    table.setColumnWidth(0, 200);
    EXPECT_TRUE(layout::badColumns(page).isEmpty());
    table.setColumnWidth(0, 40);
    EXPECT_EQ(layout::badColumns(page).size(), 1);
}

TEST(LayoutFaults, ALabelOnACurveOrAFigureIsFound) {
    QWidget page;
    page.resize(400, 300);
    auto* plot = new QCustomPlot(&page);
    plot->resize(400, 300);
    plot->addGraph()->setData({0, 10}, {0, 10});
    plot->xAxis->setRange(0, 10);
    plot->yAxis->setRange(0, 10);
    auto* label = new QCPItemText(plot);
    label->setText(QStringLiteral("reserve"));
    label->position->setCoords(5, 9);
    page.show();
    plot->replot();
    EXPECT_EQ(layout::badPlots(page), QStringList());
    label->position->setCoords(5, 5);
    plot->replot();
    EXPECT_EQ(layout::badPlots(page).size(), 1);
    label->setClipToAxisRect(false);
    label->position->setCoords(-0.3, 8);
    plot->replot();
    EXPECT_GE(layout::badPlots(page).size(), 1) << "it lies on a figure of the axis";
}

} // namespace winterlarder::desk
