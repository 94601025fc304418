// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/translators_file.h"
#include "app/window_desk.h"
#include "combs/comb_drawing.h"
#include "dialogs/help_window.h"
#include "fields/day_field.h"
#include "forms/record_list.h"
#include "photograph/photograph_view.h"
#include "plots/winter_plot.h"
#include "text/glossary.h"

#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTextBrowser>

#include <algorithm>
#include <set>

namespace winterlarder::desk {

using invented::colony;

class Help : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerReally();
        open({colony("Apple")});
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    HelpWindow* shown() {
        for (auto* each : window.findChildren<HelpWindow*>())
            if (each->isVisible()) return each;
        return nullptr;
    }
    //! Whether the widget takes this key for itself.
    static bool hears(QWidget* widget, const QKeySequence& key) {
        const auto combination = key[0];
        const bool letter = combination.key() >= Qt::Key_Space && combination.key() <= Qt::Key_AsciiTilde;
        const QChar typed(static_cast<ushort>(combination.key()));
        QKeyEvent press(QEvent::KeyPress, combination.key(), combination.keyboardModifiers(),
                        letter ? QString(combination.keyboardModifiers() & Qt::ShiftModifier ? typed : typed.toLower())
                               : QString());
        press.setAccepted(true);                      // as those that are delivered are
        static_cast<QObject*>(widget)->event(&press); // not handed on to what lies around it
        return press.isAccepted();
    }
    //! Of all keys without modifiers, the widget hears exactly those that are named.
    static void expectHeard(QWidget* widget, const std::vector<NamedKeys>& named, const std::set<int>& alsoHeard = {}) {
        std::set<QString> names;
        for (const auto& each : named)
            for (const auto& key : each.keys) {
                names.insert(key.toString());
                EXPECT_TRUE(hears(widget, key)) << key.toString().toStdString() << " is named and not heard";
            }
        std::vector<int> all;
        for (int key = Qt::Key_Space; key <= Qt::Key_AsciiTilde; ++key) all.push_back(key);
        for (const int key : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down, Qt::Key_Home, Qt::Key_End,
                              Qt::Key_PageUp, Qt::Key_PageDown, Qt::Key_Insert, Qt::Key_Delete, Qt::Key_Backspace,
                              Qt::Key_Return, Qt::Key_Enter, Qt::Key_Escape})
            all.push_back(key);
        for (const int key : all)
            if (!names.count(QKeySequence(key).toString()) && !alsoHeard.count(key))
                EXPECT_FALSE(hears(widget, QKeySequence(key)))
                    << QKeySequence(key).toString().toStdString() << " is heard and not named";
        EXPECT_GT(names.size(), 3U);
    }
};

//! The style of words where the books of these tests stand: frames.
text::WordStyle ofThePlace() {
    auto style = words::style();
    style.wording = text::wordingOf("CA", true);
    return style;
}

TEST_F(Help, CtrlF1OpensTheWordsAndTypingFindsOne) {
    QTest::keyClick(&window, Qt::Key_F1, Qt::ControlModifier);
    auto* help = shown();
    ASSERT_NE(help, nullptr);
    EXPECT_EQ(help->windowTitle().toStdString(), "Words used here");
    for (const auto& section : text::glossary(ofThePlace()))
        for (const auto& row : section.rows)
            EXPECT_TRUE(help->text().contains(row.term) && help->text().contains(row.words)) << row.term.toStdString();
    EXPECT_EQ(help->focusWidget(), help->searchLine());
    QTest::keyClicks(help->searchLine(), QStringLiteral("BEE BREAD"));
    EXPECT_TRUE(help->text().contains(QStringLiteral("Pollen the bees have stored in cells")));
    EXPECT_FALSE(help->text().contains(QStringLiteral("spring forage starts"))) << help->text().toStdString();
    type(help->searchLine(), "xyzzy");
    EXPECT_EQ(help->text().toStdString(), "Nothing here holds these letters.");
    QTest::keyClick(help, Qt::Key_Escape);
    EXPECT_EQ(shown(), nullptr);
}

// Whether a word stands, whole, in anything that is said to people but the explanations themselves.
bool isShown(const QString& word) {
    const QRegularExpression whole(QStringLiteral("(?<!\\w)%1(?!\\w)").arg(QRegularExpression::escape(word)),
                                   QRegularExpression::CaseInsensitiveOption |
                                       QRegularExpression::UseUnicodePropertiesOption);
    const auto& messages = gathered().file.messages;
    return std::any_of(messages.begin(), messages.end(), [&](const Message& said) {
        return said.first != "Glossary" &&
               whole.match(text::worded(QString::fromStdString(said.second), text::Wording{}).remove(QLatin1Char('&')))
                   .hasMatch();
    });
}

TEST_F(Help, WordsExplainedAreShownSomewhere) {
    ASSERT_FALSE(isShown(QStringLiteral("nodiscard"))) << "a word of the source is not shown";
    ASSERT_FALSE(isShown(QStringLiteral("honeyc"))) << "nor is a part of a word";
    std::set<QString> terms;
    for (const auto& section : text::glossary()) {
        EXPECT_GE(section.rows.size(), 5U) << section.title.toStdString();
        for (const auto& row : section.rows) {
            EXPECT_TRUE(isShown(row.term)) << row.term.toStdString() << " is shown nowhere";
            EXPECT_TRUE(terms.insert(row.term).second) << row.term.toStdString() << " is explained twice";
            EXPECT_TRUE(row.words.endsWith(QLatin1Char('.'))) << row.words.toStdString();
        }
    }
    for (const char* wanted : {"stores", "reserve", "need", "spring forage starts", "last nectar coming in",
                               "laying stops", "laying restarts", "build-up", "simulated winters", "spread", "hefted",
                               "empty weight", "capped", "seams of bees", "SD", "mean score", "handbook figure"})
        EXPECT_TRUE(terms.count(QLatin1String(wanted))) << wanted << " wants to be explained";
}

TEST_F(Help, KeysAreThoseOfTheMenusAndOfEveryPart) {
    QTest::keyClick(&window, Qt::Key_F1, Qt::ShiftModifier);
    auto* help = shown();
    ASSERT_NE(help, nullptr);
    EXPECT_EQ(help->windowTitle().toStdString(), "Keys");
    int commands = 0;
    for (const auto* action : window.findChildren<QAction*>())
        for (const auto& key : action->shortcuts()) {
            ++commands;
            EXPECT_TRUE(help->text().contains(key.toString(QKeySequence::NativeText))) << action->text().toStdString();
        }
    EXPECT_GT(commands, 15);
    for (const auto& keys : {CombDrawing::namedKeys(), WinterPlot::namedKeys(), DayField::namedKeys(),
                             RecordList::namedKeys(), PhotographView::namedKeys()})
        for (const auto& each : keys)
            EXPECT_TRUE(help->text().contains(keyNames(each)) &&
                        help->text().contains(text::worded(each.what, ofThePlace())))
                << each.what.toStdString();
}

TEST_F(Help, TheCombDrawingHearsTheKeysItNames) {
    auto* combs = window.colonyView()->findChild<CombDrawing*>();
    combs->choose(1);
    combs->setFocus();
    expectHeard(combs, CombDrawing::namedKeys());
}

TEST_F(Help, TheWinterPictureHearsTheKeysItNames) {
    auto* plot = window.colonyView()->findChild<WinterPlot*>();
    ASSERT_NE(plot->picture(), nullptr);
    expectHeard(plot, WinterPlot::namedKeys(), {Qt::Key_Equal}); // plus without Shift
}

TEST_F(Help, APhotographHearsTheKeysItNames) {
    PhotographView view;
    view.showPicture(QImage(200, 100, QImage::Format_RGB32));
    view.showPoints({{QPointF(20, 20), QStringLiteral("corner")}}, true);
    expectHeard(&view, PhotographView::namedKeys(),
                {Qt::Key_Equal, Qt::Key_Enter}); // plus without Shift; the other Return
}

} // namespace winterlarder::desk
