// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "app/buttons.h"
#include "app/hanging.h"
#include "app/photographed.h"
#include "combs/comb_fields.h"
#include "combs/comb_quick_form.h"
#include "combs/comb_strip.h"
#include "combs/zone_legend.h"
#include "models/comb_table_model.h"
#include "pages/comb_entry.h"
#include "photograph/photograph_view.h"
#include "photograph/photograph_window.h"

#include <QApplication>
#include <QDoubleSpinBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace winterlarder::desk {

class Entry : public testing::Test {
protected:
    Entry() : record(invented::colony("Apple")), answered(invented::answered(record)) {
        entry.resize(1000, 420);
        entry.show(record, answered.get(), *invented::shipped(), true);
        QObject::connect(&entry, &CombEntry::combChanged, &entry, [this](int comb, const book::CombRecord& changed) {
            std::get<std::vector<book::CombRecord>>(record.combs)[static_cast<std::size_t>(comb)] = changed;
            entry.show(record, answered.get(), *invented::shipped(), true);
        });
        static_cast<QWidget&>(entry).show();
        entry.activateWindow();
        entry.drawing()->setFocus();
        QTest::qWait(1);
    }
    const book::CombRecord& comb(std::size_t place) {
        return std::get<std::vector<book::CombRecord>>(record.combs)[place];
    }
    book::ColonyCase record;
    AnsweredPointer answered;
    CombEntry entry;
};

TEST_F(Entry, DrawingStripFieldsAndLegendShowTheSame) {
    QTest::keyClicks(static_cast<QWidget*>(entry.drawing()), QStringLiteral("b2"));
    EXPECT_NEAR(shareOf(comb(0), Zone::Brood), 0.2, 1e-9);
    EXPECT_EQ(entry.fields()->share(Zone::Brood)->value(), 20);
    QTest::mouseClick(static_cast<QWidget*>(entry.strip()), Qt::LeftButton, {},
                      entry.strip()->slab(2).center().toPoint());
    EXPECT_EQ(entry.drawing()->chosen(), 2);
    EXPECT_EQ(entry.fields()->share(Zone::Capped)->value(), 30);
    QTest::mouseClick(static_cast<QWidget*>(entry.legend()), Qt::LeftButton, {},
                      entry.legend()->placeOf(CombField::Open).center().toPoint());
    EXPECT_EQ(entry.drawing()->picked(), CombField::Open);
    entry.fields()->share(Zone::Open)->setValue(25);
    EXPECT_NEAR(shareOf(comb(2), Zone::Open), 0.25, 1e-9);
    EXPECT_NEAR(shareOf(entry.drawing()->combs()[2].record, Zone::Open), 0.25, 1e-9);
}

TEST_F(Entry, NumbersFollowTheHandWhileItDrags) {
    auto* hand = static_cast<QWidget*>(entry.drawing());
    const auto face = entry.drawing()->faceOf(1);
    entry.drawing()->choose(1);
    const CombLevels levels(entry.drawing()->combs()[1].format.outline, fillingOf(comb(1)));
    const QPoint edge = placeOf({0, levels.archAt(CombEdge::Capped, 0)}, face).toPoint();
    const double before = entry.fields()->share(Zone::Capped)->value();
    QTest::mousePress(hand, Qt::LeftButton, {}, edge);
    QTest::mouseMove(hand, edge - QPoint(0, 12));
    EXPECT_LT(entry.fields()->share(Zone::Capped)->value(), before);
    EXPECT_NEAR(shareOf(comb(1), Zone::Capped), 0.5, 1e-9) << "nothing is written before the hand lets go";
    QTest::keyClick(hand, Qt::Key_Escape);
    EXPECT_EQ(entry.fields()->share(Zone::Capped)->value(), before);
    QTest::mouseRelease(hand, Qt::LeftButton, {}, edge);
}

TEST_F(Entry, CombsAreShownBeforeAnyAnswer) {
    entry.show(record, nullptr, *invented::shipped(), true);
    ASSERT_EQ(entry.drawing()->combs().size(), 4U);
    EXPECT_TRUE(entry.drawing()->combs()[0].kilograms.startsWith(QStringLiteral("2.")))
        << entry.drawing()->combs()[0].kilograms.toStdString();
}

TEST_F(Entry, KilogramsFollowBeforeTheAnswerDoes) {
    const QString before = entry.drawing()->combs()[0].kilograms;
    QTest::keyClicks(static_cast<QWidget*>(entry.drawing()), QStringLiteral("c2"));
    EXPECT_NE(entry.drawing()->combs()[0].kilograms, before);
}

TEST_F(Entry, CombsThatWereOnlyCountedAreCountedHere) {
    record.combs = book::QuickCountRecord{5, 1, 0.8};
    entry.show(record, answered.get(), *invented::shipped(), true);
    EXPECT_TRUE(entry.quickForm()->isVisible());
    EXPECT_FALSE(entry.drawing()->isVisible());
    QSignalSpy counted(&entry, &CombEntry::counted);
    entry.quickForm()->half()->setValue(3);
    ASSERT_EQ(counted.size(), 1);
    EXPECT_EQ(counted[0][0].value<book::QuickCountRecord>().half, 3);
}

TEST_F(Entry, WhereItMayNotBeEditedNothingIs) {
    entry.show(record, answered.get(), *invented::shipped(), false);
    EXPECT_FALSE(entry.fields()->isEnabled());
    QTest::keyClicks(static_cast<QWidget*>(entry.drawing()), QStringLiteral("c2"));
    EXPECT_NEAR(shareOf(comb(0), Zone::Capped), 0.8, 1e-9);
}

TEST_F(Entry, ACombIsMeasuredOnAPhotograph) {
    using namespace photographed;
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.png"));
    const Comb comb{"honey", hanging::frame().outline, {1, 0.5, 0, 0, 0}};
    ASSERT_TRUE(photograph(comb, View{}).save(path));
    QSignalSpy measured(&entry, &CombEntry::combMeasured);
    entry.drawing()->choose(1);
    QTest::mouseClick(button(entry.fields(), "Measure on a photograph\u2026"), Qt::LeftButton);
    auto* window = entry.findChild<PhotographWindow*>();
    ASSERT_NE(window, nullptr);
    EXPECT_EQ(QApplication::activeModalWidget(), window);
    window->openPicture(path);
    ASSERT_TRUE(invented::waitFor([window] { return window->idle(); }));
    window->showStep(PhotographWindow::Step::Trace);
    for (const QPointF at : {QPointF(40, 40), QPointF(900, 40), QPointF(900, 300), QPointF(40, 300)})
        emit window->view()->pointAdded(at);
    QTest::mouseClick(button(window, "Take these shares"), Qt::LeftButton);
    ASSERT_EQ(measured.size(), 1);
    EXPECT_EQ(measured[0][0].toInt(), 1);
    EXPECT_TRUE(measured[0][1].value<book::CombRecord>().measured);
    EXPECT_EQ(measured[0][2].toStringList(), QStringList{path});
}

// Under the drawing, in the table and in the answer stands one number, also where a comb is of another format than its box.
TEST(DrawnCombs, KilogramsAreThoseOfTheAnswer) {
    auto record = invented::colony("A");
    auto other = invented::comb(0.6, 0.2, 0, 0);
    other.format = "national-deep";
    auto wide = other;
    wide.width = millimetres(41);
    auto inSuper = invented::comb(0.9, 0, 0, 0);
    inSuper.inSuper = true;
    record.combs = std::vector{other, wide, inSuper, invented::comb(0.5, 0.1, 0.2, 0.1)};
    ASSERT_NE(invented::shipped()->format(*other.format), nullptr);
    ASSERT_NE(invented::shipped()->format(*other.format)->pitch.value(),
              invented::shipped()->format("langstroth-deep")->pitch.value());
    const CoreAdviser adviser(invented::shipped(), {1, 20}, 1);
    const auto answered = adviser.answer(record, 0, {}).value();
    CombTableModel table;
    table.show(record, answered, true);
    const auto drawn = drawnCombs(record, answered.get(), *invented::shipped());
    ASSERT_EQ(drawn.size(), 4U);
    for (int row = 0; row < 4; ++row) {
        const auto& each = drawn[static_cast<std::size_t>(row)];
        auto inTable = table.index(row, CombTableModel::HoneyColumn).data().toString();
        EXPECT_EQ(each.kilograms, inTable.replace(QStringLiteral(" to "), QStringLiteral("\u2013")))
            << "comb " << row + 1;
        EXPECT_EQ(redrawn(each, each.record).kilograms, each.kilograms) << "while it is dragged, comb " << row + 1;
    }
    auto narrow = drawn[1].record;
    narrow.width.reset();
    EXPECT_EQ(redrawn(drawn[1], narrow).kilograms, drawn[0].kilograms) << "its format's own spacing again";
}

// Box, place, outline and kilograms of every comb are those of the answer, whichever combs of a hive with a super are listed.
TEST(DrawnCombs, ACombOfASuperHangsInTheSuperAsInTheAnswer) {
    auto record = invented::colony("A");
    record.hive.boxes.push_back({.format = "langstroth-medium", .super = true});
    auto inSuper = invented::comb(0.9, 0, 0, 0);
    inSuper.inSuper = true;
    const auto nest = invented::comb(0.5, 0.1, 0.2, 0.1);
    const auto& medium = hive::combFormat(*invented::shipped()->format("langstroth-medium"));
    const CoreAdviser adviser(invented::shipped(), {1, 20}, 1);
    for (const auto& listed : {std::vector{inSuper, inSuper}, std::vector{inSuper, nest, inSuper, nest}}) {
        record.combs = listed;
        const auto answered = adviser.answer(record, 0, {}).value();
        CombTableModel table;
        table.show(record, answered, true);
        const auto drawn = drawnCombs(record, answered.get(), *invented::shipped());
        ASSERT_EQ(drawn.size(), listed.size());
        EXPECT_EQ(drawn[0].box, 1);
        EXPECT_EQ(drawn[0].format.outline.height.value(), medium.outline.height.value());
        for (std::size_t i = 0; i < drawn.size(); ++i) {
            const auto& asked = answered->question.combs[i];
            EXPECT_EQ(std::tuple(drawn[i].box, drawn[i].place, drawn[i].inSuper),
                      std::tuple(asked.box, asked.place, asked.inSuper))
                << "comb " << i + 1 << " of " << listed.size();
            auto inTable = table.index(static_cast<int>(i), CombTableModel::HoneyColumn).data().toString();
            EXPECT_EQ(drawn[i].kilograms, inTable.replace(QStringLiteral(" to "), QStringLiteral("\u2013")));
        }
    }
}

} // namespace winterlarder::desk
