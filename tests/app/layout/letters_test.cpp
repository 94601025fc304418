// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/layout/demo_window.h"
#include "combs/comb_quick_form.h"
#include "pages/look_page.h"
#include "pages/next_entry.h"
#include "pages/story_page.h"

#include <QComboBox>
#include <QMenuBar>

//! A letter pressed with Alt does one thing, on every page and in every state of it.
namespace winterlarder::desk {

namespace {

QKeySequence letterOf(const QString& words) { return QKeySequence::mnemonic(words); }

class Letters : public layout::DemoWindow {
protected:
    //! What each letter does now.
    std::map<QString, QStringList> now() {
        std::map<QString, QStringList> by;
        const auto note = [&by](const QString& words) {
            if (const auto letter = letterOf(words); !letter.isEmpty()) by[letter.toString()] << words;
        };
        for (auto* menu : window.menuBar()->actions())
            if (menu->isVisible()) note(menu->text());
        for (auto* each : window.findChildren<QWidget*>()) {
            if (!each->isVisible()) continue;
            if (auto* button = qobject_cast<QAbstractButton*>(each)) note(button->text());
            if (auto* label = qobject_cast<QLabel*>(each); label && label->buddy()) note(label->text());
            if (auto* tabs = qobject_cast<QTabBar*>(each))
                for (int tab = 0; tab < tabs->count(); ++tab) note(tabs->tabText(tab));
        }
        return by;
    }
    void expectOneMeaning(const QString& where) {
        ++seen;
        for (const auto& [letter, does] : now())
            EXPECT_EQ(does.size(), 1) << where.toStdString() << ", " << letter.toStdString() << ": "
                                      << does.join(QStringLiteral("; ")).toStdString();
    }
    void throughColony(const QString& state) {
        throughPages(window.colonyView()->pages(),
                     [&](const QString& page) { expectOneMeaning(state + QStringLiteral(", ") + page); });
    }
    int seen = 0;
};

} // namespace

TEST_F(Letters, DoOneThingEachWhereAColonyIsAnswered) {
    throughWindow([&](const QString& page) { expectOneMeaning(page); });
    EXPECT_EQ(seen, 14);
    lookAt("Pippin");
    window.colonyView()->showPage(ColonyPage::Story);
    auto* which = window.colonyView()->story()->which();
    for (int what = 0; what < which->count(); ++what) {
        which->setCurrentIndex(what);
        settle();
        expectOneMeaning(QStringLiteral("Story, ") + which->itemText(what));
    }
    window.askForNewBook();
    rest();
    expectOneMeaning(QStringLiteral("first page"));
}

TEST_F(Letters, DoOneThingEachWhereSomethingIsMissing) {
    window.yard()->showDay(invented::day("2027-08-20"));
    lookAt("Pippin");
    ASSERT_TRUE(window.colonyView()->next()->isVisible());
    throughColony(QStringLiteral("nothing entered yet"));
    auto look = window.yard()->lookToEdit(entry().id);
    look.combs = book::QuickCountRecord{4, 2, 0.8};
    window.yard()->writeLook(look);
    settle();
    ASSERT_FALSE(window.colonyView()->look()->findChildren<CombQuickForm*>().empty());
    throughColony(QStringLiteral("counted quickly"));
    window.yard()->showDay(invented::day("2027-01-20"));
    settle();
    throughColony(QStringLiteral("in winter"));
}

TEST_F(Letters, EveryPageHasOneInTheWordsOfItsPlace) {
    for (auto* pages : {window.colonyView()->pages(), window.yardView()->pages()})
        for (int page = 0; page < pages->count(); ++page)
            EXPECT_FALSE(letterOf(pages->tabText(page)).isEmpty()) << pages->tabText(page).toStdString();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    QTest::keyClick(&window, Qt::Key_Y, Qt::AltModifier);
    EXPECT_EQ(window.colonyView()->pages()->currentIndex(), static_cast<int>(ColonyPage::Combs));
}

} // namespace winterlarder::desk
