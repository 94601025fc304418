// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/book_desk.h"
#include "app/buttons.h"
#include "desk/banner.h"
#include "desk/colony_view.h"
#include "desk/main_window.h"
#include "forms/entry_form.h"
#include "pages/answer_panel.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QPushButton>

//! The whole window on a book in a folder of its own, for tests that go through it as a keeper does.
namespace winterlarder::desk::invented {

class WindowDesk : public testing::Test {
protected:
    WindowDesk() : window({}, scribe()) {
        window.useReference(shipped());
        window.books()->keepBooksIn(folder.path());
        window.resize(1360, 900); // whatever the screen of the tests is
        window.show();
    }
    void answerSlowly() { window.useAdviser(std::make_shared<SlowAdviser>(std::chrono::milliseconds(5))); }
    void answerReally() { window.useAdviser(std::make_shared<CoreAdviser>(shipped(), winter::Sampling{1, 500}, 1)); }
    void open(const std::vector<book::ColonyCase>& cases) {
        { const auto made = bookOf(file(), cases); }
        openFile();
    }
    void openFile() {
        window.yard()->showDay(day("2026-09-14"));
        window.books()->open(file());
        settle();
        ASSERT_FALSE(window.yard()->colonies().empty());
        look(0);
    }
    void look(std::size_t at) {
        window.choose(window.yard()->colonies().at(at).id);
        settle();
    }
    void settle() {
        ASSERT_TRUE(waitFor([this] { return window.settled() && window.colonyView()->idle(); }));
    }
    QString file() const { return folder.filePath(QStringLiteral("yard.larder")); }
    const ColonyEntry& entry() { return *window.yard()->find(window.colonyView()->colony()); }
    const book::ColonyHistory& records() { return *window.yard()->records(window.colonyView()->colony()); }
    //! The form that is open now.
    EntryForm* form() {
        EntryForm* open = nullptr;
        waitFor([&] {
            for (auto* each : window.findChildren<EntryForm*>())
                if (each->isVisible()) open = each;
            return open != nullptr;
        });
        EXPECT_NE(open, nullptr);
        return open;
    }
    template <class Field> Field* field(QWidget* in, const char* name) {
        for (auto* each : in->findChildren<Field*>())
            if (each->accessibleName() == QLatin1String(name)) return each;
        ADD_FAILURE() << "there is no field called " << name;
        return nullptr;
    }
    //! In the place of what is there; no text empties it.
    void type(QLineEdit* into, const char* text) {
        into->selectAll();
        if (!*text) QTest::keyClick(into, Qt::Key_Delete);
        QTest::keyClicks(into, QString::fromUtf8(text));
    }
    //! Presses "Write down" and waits until the book has it.
    void write(EntryForm* form) {
        QTest::mouseClick(button(form, "Write down"), Qt::LeftButton);
        settle();
    }
    void undo() {
        window.undoAction()->trigger();
        settle();
    }

    //! What to do next, whose numbers can be asked about.
    AskableLabel* answerLabel() {
        for (auto* label : window.colonyView()->answer()->findChildren<AskableLabel*>())
            if (label->accessibleDescription() == QStringLiteral("Answer")) return label;
        return nullptr;
    }

    //! Whether some label of the colony says so.
    bool small(const char* words) {
        const auto labels = window.colonyView()->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(),
                           [&](const QLabel* label) { return label->text().contains(QString::fromUtf8(words)); });
    }

    QTemporaryDir folder;
    MainWindow window;
};

} // namespace winterlarder::desk::invented
