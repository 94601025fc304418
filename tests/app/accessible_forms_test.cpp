// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/every_form.h"
#include "app/window_desk.h"
#include "dialogs/backups_dialog.h"
#include "dialogs/import_dialog.h"
#include "dialogs/why_window.h"
#include "fields/askable_label.h"
#include "forms/boxes_field.h"
#include "forms/entry_forms.h"
#include "pages/yard_view.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QMenuBar>
#include <QTabBar>
#include <QTabWidget>

#include <algorithm>
#include <functional>
#include <map>
#include <set>

//! Every form and dialog, walked as a screen reader and a keyboard walk it.
namespace winterlarder::desk {

using invented::colony;

class Forms : public invented::WindowDesk {
protected:
    static bool takesFocus(const QWidget* widget) {
        return widget->focusPolicy() != Qt::NoFocus && widget->isVisible() && !widget->focusProxy() &&
               !widget->objectName().startsWith(QStringLiteral("qt_"));
    }
    //! Names of all that takes the focus; a failure for each without one.
    static std::multiset<QString> namesIn(QWidget* dialog, const char* what) {
        std::multiset<QString> names;
        for (auto* widget : dialog->findChildren<QWidget*>()) {
            if (!takesFocus(widget)) continue;
            auto* spoken = QAccessible::queryAccessibleInterface(widget);
            const QString name = spoken ? spoken->text(QAccessible::Name) : QString();
            EXPECT_FALSE(name.isEmpty()) << widget->metaObject()->className() << " in "
                                         << widget->parentWidget()->metaObject()->className() << " of " << what;
            names.insert(name);
        }
        EXPECT_FALSE(names.empty()) << what << " has nothing to type into";
        return names;
    }
    //! Tab comes round to every widget that takes the focus by Tab.
    static void expectTabReachesAll(QWidget* dialog, const char* what) {
        std::set<QWidget*> reached;
        auto* first = dialog->nextInFocusChain();
        for (auto* at = first; at && !reached.count(at); at = at->nextInFocusChain()) reached.insert(at);
        for (auto* widget : dialog->findChildren<QWidget*>())
            if (takesFocus(widget) && (widget->focusPolicy() & Qt::TabFocus))
                EXPECT_TRUE(reached.count(widget)) << widget->metaObject()->className() << " of " << what;
    }
    //! Letters that press, focus or open something now, and what.
    static std::multimap<QChar, QString> lettersIn(QWidget* in) {
        std::multimap<QChar, QString> letters;
        const auto note = [&letters](const QString& text) {
            const auto at = text.indexOf(QLatin1Char('&'));
            if (at >= 0) letters.emplace(text.at(at + 1).toLower(), text);
        };
        for (auto* bar : in->findChildren<QMenuBar*>())
            for (auto* action : bar->actions()) note(action->text());
        for (auto* bar : in->findChildren<QTabBar*>())
            for (int tab = 0; bar->isVisible() && tab < bar->count(); ++tab) note(bar->tabText(tab));
        for (auto* button : in->findChildren<QAbstractButton*>())
            if (button->isVisible()) note(button->text());
        for (auto* label : in->findChildren<QLabel*>())
            if (label->isVisible() && label->buddy()) note(label->text());
        return letters;
    }
    //! A letter that serves two only moves the focus between them and presses neither.
    static void expectLettersDiffer(QWidget* in, const char* what) {
        const auto letters = lettersIn(in);
        for (auto each = letters.begin(); each != letters.end(); each = letters.upper_bound(each->first)) {
            QStringList served;
            for (auto [at, end] = letters.equal_range(each->first); at != end; ++at) served << at->second;
            EXPECT_EQ(served.size(), 1) << served.join(QStringLiteral(" | ")).toStdString() << " of " << what;
        }
    }
    //! What a label says is what a screen reader reads, whatever the label is for.
    static void expectWordsAreSpoken(QWidget* in, const char* what) {
        for (auto* label : in->findChildren<QLabel*>()) {
            if (!label->isVisible() || label->text().isEmpty()) continue;
            const auto* askable = qobject_cast<AskableLabel*>(label);
            const QString shown = askable ? askable->said() : QString(label->text()).remove(QLatin1Char('&'));
            const QString said = QAccessible::queryAccessibleInterface(label)->text(QAccessible::Name);
            EXPECT_EQ(said.toStdString(), shown.toStdString()) << "of " << what;
        }
    }
    //! Where the name of a choice is asked for, the toolkit says what is chosen; a label beside it or a description says of what.
    static void expectChoicesAreNamed(QWidget* in, const char* what) {
        for (auto* choice : in->findChildren<QComboBox*>()) {
            if (!choice->isVisible()) continue;
            auto* spoken = QAccessible::queryAccessibleInterface(choice);
            const bool labelled = !spoken->relations(QAccessible::Label).empty();
            EXPECT_TRUE(labelled || !spoken->text(QAccessible::Description).isEmpty())
                << choice->currentText().toStdString() << " of " << what;
        }
    }
    //! Where the Tab key comes on its way round the window, pressed and not followed through the chain: a key may be held up where that
    //! goes on. At most two hundred.
    std::vector<QWidget*> pressedThrough(QWidget* from) {
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        from->setFocus();
        std::vector<QWidget*> walked;
        do {
            walked.push_back(QApplication::focusWidget());
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        } while (QApplication::focusWidget() != from && walked.size() < 200);
        return walked;
    }
    void walk(QDialog* dialog, const char* what) {
        dialog->show();
        QTest::qWait(2);
        namesIn(dialog, what);
        expectTabReachesAll(dialog, what);
        expectWordsAreSpoken(dialog, what);
        expectChoicesAreNamed(dialog, what);
        expectLettersDiffer(dialog, what);
        dialog->close();
        QTest::qWait(2);
    }
};

TEST_F(Forms, EveryFormNamesWhatTakesTheFocusAndTabReachesIt) {
    answerSlowly();
    open({colony("Apple")});
    for (const auto& [what, ask] : invented::everyForm(window, entry().id)) walk(ask(), what);
}

TEST_F(Forms, DialogsToo) {
    answerSlowly();
    open({colony("Apple")});
    QFile table(folder.filePath(QStringLiteral("weighings.csv")));
    ASSERT_TRUE(table.open(QIODevice::WriteOnly));
    table.write("colony,date,gross_kg\nApple,2026-09-14,41.5\n");
    table.close();
    walk(new ImportDialog(window.book(), table.fileName(), &window), "import");
    walk(new BackupsDialog(window.book(), &window), "backups");
    window.explain(entry().id);
    auto* why = window.whyWindow();
    EXPECT_TRUE(why->isVisible());
    namesIn(why, "why");
}

TEST_F(Forms, EveryPageOfTheWindowSaysItsWordsAndNamesItsChoices) {
    answerSlowly();
    const auto expectAll = [this](const QString& page) {
        expectWordsAreSpoken(&window, qPrintable(page));
        expectChoicesAreNamed(&window, qPrintable(page));
        expectLettersDiffer(&window, qPrintable(page));
    };
    expectAll(QStringLiteral("the first start"));
    open({colony("Apple"), colony("Pear")});
    auto* pages = window.colonyView()->pages();
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        expectAll(pages->tabText(page));
    }
    window.choose({});
    for (auto* yardPages : window.yardView()->findChildren<QTabWidget*>())
        for (int page = 0; page < yardPages->count(); ++page) {
            yardPages->setCurrentIndex(page);
            expectAll(yardPages->tabText(page));
        }
}

TEST_F(Forms, TheTabKeyComesRoundEveryPageOfAColony) {
    answerSlowly();
    auto bare = colony("Apple");
    bare.bees = {};
    open({bare});
    auto* pages = window.colonyView()->pages();
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        const auto walked = pressedThrough(window.yardPane());
        EXPECT_EQ(QApplication::focusWidget(), window.yardPane())
            << "held up on " << pages->tabText(page).toStdString();
        for (auto* widget : window.findChildren<QWidget*>())
            if (takesFocus(widget) && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus))
                EXPECT_NE(std::find(walked.begin(), walked.end(), widget), walked.end())
                    << widget->metaObject()->className() << " of " << pages->tabText(page).toStdString();
    }
}

TEST_F(Forms, TheTabKeyGoesAsThePageIsRead) {
    answerReally();
    open({colony("Apple")});
    QStringList names;
    for (auto* widget : pressedThrough(window.yardPane())) names << widget->accessibleName();
    qsizetype last = -1;
    for (const char* next :
         {"The yard and its colonies", "Why? Reasons and cautions with their sources",
          "Winter picture: stores through the winter", "Show: leave as it is", "Save the picture or its numbers",
          "The combs of the hive", "Share of the comb: capped", "How the bees were counted", "Day asked about"}) {
        const auto at = names.indexOf(QLatin1String(next));
        EXPECT_GT(at, last) << next << " in " << names.join(QStringLiteral(", ")).toStdString();
        last = at;
    }
}

TEST_F(Forms, ABoxAddedIsReachedWithTheOthers) {
    answerSlowly();
    open({colony("Apple")});
    auto* form = askForHive(&window, window.yard(),
                            {.colony = entry().id, .date = invented::day("2026-09-14"), .hive = entry().record.hive});
    auto* boxes = form->findChild<BoxesField*>();
    QWidget* at = boxes->findChild<QPushButton*>();
    QTest::mouseClick(at, Qt::LeftButton);
    QApplication::processEvents();
    for (const char* next : {"Format of box 2 from the floor", "Combs in box 2", "Box 2 is a super", "Take box 2 off",
                             "Format of box 1 from the floor"}) {
        do at = at->nextInFocusChain();
        while (!takesFocus(at));
        EXPECT_EQ(at->accessibleName().toStdString(), next);
    }
    form->reject();
}

TEST_F(Forms, AFieldWithoutANameWouldBeFound) {
    QDialog bare(&window);
    new QLineEdit(&bare);
    bare.show();
    auto* spoken = QAccessible::queryAccessibleInterface(bare.findChild<QLineEdit*>());
    ASSERT_NE(spoken, nullptr);
    EXPECT_TRUE(spoken->text(QAccessible::Name).isEmpty())
        << "names are not made up by the toolkit, so the walks above can fail";
}

TEST_F(Forms, EveryMenuIsOpenedByAKeyAndNoKeyServesTwo) {
    answerSlowly();
    open({colony("Apple")});
    std::map<QString, QString> shortcuts;
    for (auto* top : window.menuBar()->actions()) {
        EXPECT_TRUE(top->text().contains(QLatin1Char('&'))) << top->text().toStdString();
        std::map<QChar, QString> letters;
        for (auto* action : top->menu()->actions()) {
            if (action->isSeparator()) continue;
            const auto at = action->text().indexOf(QLatin1Char('&'));
            if (at >= 0) {
                const QChar letter = action->text().at(at + 1).toLower();
                EXPECT_TRUE(letters.emplace(letter, action->text()).second)
                    << action->text().toStdString() << " and " << letters[letter].toStdString();
            }
            for (const auto& key : action->shortcuts())
                EXPECT_TRUE(shortcuts.emplace(key.toString(), action->text()).second)
                    << action->text().toStdString() << " and " << shortcuts[key.toString()].toStdString();
        }
    }
}

} // namespace winterlarder::desk
