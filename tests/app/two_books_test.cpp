// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked of one book while another is opened, and what is asked of a book that is closed.
#include "app/window_desk.h"
#include "dialogs/import_dialog.h"
#include "dialogs/scale_log_dialog.h"
#include "fields/place_field.h"
#include "models/yard_list_model.h"
#include "pages/place_page.h"
#include "pages/start_page.h"
#include "pages/yard_view.h"

#include <QElapsedTimer>
#include <QPlainTextEdit>
#include <QPointer>
#include <QSignalSpy>
#include <QTabWidget>

#include <thread>

#ifdef Q_OS_UNIX
#include <sys/stat.h>
#endif

namespace winterlarder::desk {

using invented::BookDesk;
using invented::colony;
using invented::WindowDesk;

namespace {

const book::CombRecord& firstComb(const book::ColonyCase& record) {
    return std::get<std::vector<book::CombRecord>>(record.combs).front();
}

} // namespace

TEST_F(BookDesk, AnEditMadeWhileAnotherBookOpensLandsInNeitherAndIsSaid) {
    const QString other = file("other.larder");
    { const auto made = invented::bookOf(other, {colony("B")}); }
    open({colony("A")});
    const auto before = first().record;
    QSignalSpy refused(&book, &OpenBook::refused);
    book.open(other);
    auto comb = firstComb(before);
    comb.capped = 0.15;
    yard.changeComb(first().id, 0, comb); // the window still shows the first book
    settle();
    ASSERT_EQ(yard.colonies().size(), 1U);
    EXPECT_EQ(first().record.colony, "B");
    EXPECT_EQ(firstComb(first().record).capped, 0.8) << "typed into another book";
    EXPECT_EQ(refused.count(), 1) << "nothing is dropped in silence";
    EXPECT_EQ(onDisk(), before);
}

TEST_F(BookDesk, WhatIsAskedOfAClosedBookIsWaitedForNoLonger) {
    open({colony("A")});
    book.close();
    yard.showDay(invented::day("2026-09-15")); // is to be read
    ASSERT_TRUE(yard.busy());
    auto comb = firstComb(first().record);
    comb.capped = 0.15;
    yard.changeComb(first().id, 0, comb);
    settle();
    EXPECT_FALSE(yard.busy());
    book.open(file());
    settle();
    ASSERT_EQ(yard.colonies().size(), 1U) << "the next book is read";
    EXPECT_EQ(firstComb(first().record).capped, 0.8);
}

TEST_F(BookDesk, AnErrorInAnEditIsToldOnceAndTheNextGoesOn) {
    open({colony("A")});
    QSignalSpy refused(&book, &OpenBook::refused);
    int told = 0;
    book.change([](book::Book&, book::Timestamp,
                   const std::string&) -> Outcome<book::Applied> { throw std::logic_error("broken"); },
                [&](const Outcome<BookChange>& made) { told += made.ok() ? 100 : 1; });
    settle();
    EXPECT_EQ(told, 1);
    ASSERT_EQ(refused.count(), 1);
    EXPECT_EQ(refused[0][0].value<Problems>().at(0).kind, ProblemKind::Internal) << "not the keeper's fault";
    auto look = yard.lookToEdit(first().id);
    look.bees.coveredCombs = 3;
    yard.writeLook(look);
    settle();
    EXPECT_EQ(first().record.bees.coveredCombs, 3);
}

TEST_F(WindowDesk, WhatIsSaidOfABookIsNotSaidOfTheNext) {
    answerSlowly();
    { const auto made = invented::bookOf(file(), {colony("A")}); }
    QFile inTheWay(folder.filePath(QStringLiteral("no folder")));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    window.books()->keepBooksIn(inTheWay.fileName());
    window.beginBook({QStringLiteral("Home"),
                      {"ca-halifax"},
                      {},
                      QStringLiteral("langstroth-deep"),
                      {{QStringLiteral("A"), 1}},
                      UnitSystem::Metric});
    settle();
    ASSERT_FALSE(window.book()->isOpen());
    openFile();
    EXPECT_FALSE(window.banner()->said(QStringLiteral("notices")).contains(QStringLiteral("no folder")))
        << window.banner()->said(QStringLiteral("notices")).toStdString();
}

TEST_F(WindowDesk, WhatIsAskedWhileAnotherThingIsReadIsDoneAfterIt) {
    answerSlowly();
    { const auto made = invented::bookOf(file(), {colony("A"), colony("B")}); }
    window.books()->openDemo();
    const QString saved = folder.filePath(QStringLiteral("saved.larder"));
    window.books()->salvage(file(), saved);
    settle();
    ASSERT_TRUE(window.book()->isOpen());
    EXPECT_EQ(window.book()->state()->file, saved);
    EXPECT_FALSE(window.banner()->said(QStringLiteral("salvage")).contains(QChar(0x2026)))
        << "it is not being read for ever";
}

TEST_F(WindowDesk, TheNextEditAfterAYardNotWrittenDownDoesNotChangeTheYard) {
    answerSlowly();
    auto elsewhere = colony("C");
    elsewhere.yard = "Far away";
    open({colony("A"), elsewhere});
    const auto shown = window.yard()->shownYard()->id;
    window.newYard();
    form()->reject();
    auto edited = window.yard()->lookToEdit(entry().id);
    edited.bees.coveredCombs = 3;
    window.yard()->writeLook(edited);
    window.yard()->apply(
        book::SingleEdit(book::AddSighting{{.colony = entry().id, .date = invented::day("2026-09-10")}}));
    settle();
    EXPECT_EQ(window.yard()->shownYard()->id, shown);
    window.newYard();
    auto* added = form();
    type(field<QLineEdit>(added, "Name"), "Beyond the brook");
    auto* place = added->findChild<PlaceField*>();
    QTest::keyClicks(place->search(), QStringLiteral("halif"));
    QTest::keyClick(place->search(), Qt::Key_Return);
    write(added);
    EXPECT_EQ(window.yard()->title().toStdString(), "Beyond the brook") << "but one that is written down is shown";
}

namespace {

class BrokenAdviser : public invented::SlowAdviser {
public:
    BrokenAdviser() : SlowAdviser(std::chrono::milliseconds(1)) {}
    Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int position, std::stop_token stop) const override {
        if (record.colony == "Broken") throw std::logic_error("no such winter");
        return SlowAdviser::answer(record, position, std::move(stop));
    }
    std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>&, advice::MovingCombs) const override {
        throw 7;
    }
};

} // namespace

TEST_F(WindowDesk, AnErrorWhileAnswersAreWorkedOutIsToldAsOurs) {
    window.useAdviser(std::make_shared<BrokenAdviser>());
    open({colony("Broken"), colony("Sound")});
    EXPECT_TRUE(small("This could not be worked out."));
    EXPECT_TRUE(small("no such winter"));
    EXPECT_TRUE(small("Please report it"));
    EXPECT_FALSE(small("records disagree")) << "nothing is wrong with what was written down";
    const QString said = window.banner()->said(QStringLiteral("problems"));
    EXPECT_TRUE(said.contains(QStringLiteral("not of yours")))
        << "that combs could not be shared out is heard: " << said.toStdString();
    look(1);
    EXPECT_TRUE(entry().answered) << "and the others have their answers";
}

// Whatever still wants to say something of the book or the yard when it is taken down must find them.
TEST(MainWindowEnds, WidgetsGoBeforeTheBookAndTheYard) {
    auto window = std::make_unique<MainWindow>(Arguments{}, invented::scribe());
    window->useReference(invented::shipped());
    window->show();
    const std::vector<QPointer<QObject>> held{window->colonyView(), window->yardView(), window->yardList(),
                                              window->banner()};
    int ended = 0;
    const auto end = [&] {
        ++ended;
        for (const auto& each : held) EXPECT_TRUE(each.isNull()) << each->metaObject()->className();
    };
    QObject::connect(window->yard(), &QObject::destroyed, end);
    QObject::connect(window->book(), &QObject::destroyed, end);
    window.reset();
    EXPECT_EQ(ended, 2);
}

TEST_F(WindowDesk, TheBookLastOpenIsOfferedAgain) {
    answerSlowly();
    open({colony("A")});
    EXPECT_EQ(settings::recentBooks().value(0), file());
    settings::forgetRecentBook(file());
    EXPECT_FALSE(settings::recentBooks().contains(file()));
    settings::keepWindowPlace(window.saveGeometry());
    EXPECT_EQ(settings::windowPlace(), window.saveGeometry());
}

TEST_F(WindowDesk, TheNotesOfAYardAreOneEditAndGoToTheirYard) {
    answerSlowly();
    auto elsewhere = colony("C");
    elsewhere.yard = "Far away";
    open({colony("A"), elsewhere});
    window.choose({});
    window.yardView()->showPage(YardPage::Place);
    settle();
    auto* notes = window.yardView()->place()->notes();
    QSignalSpy changed(window.book(), &OpenBook::changed);
    const auto of = [&](std::size_t at) { return window.yard()->yards().at(at).forageNotes; };
    notes->setFocus();
    QTest::keyClicks(notes, QStringLiteral("goldenrod till October"));
    settle();
    EXPECT_EQ(changed.count(), 0) << "a letter is no transaction";
    ASSERT_TRUE(invented::waitFor([&] { return changed.count() > 0; })) << "but they are written when the hand rests";
    settle();
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(of(0), "goldenrod till October");
    QTest::keyClicks(notes, QStringLiteral(", asters"));
    window.yard()->showYard(window.yard()->yards().at(1).id);
    settle();
    EXPECT_EQ(of(0), "goldenrod till October, asters") << "not lost with another yard";
    EXPECT_EQ(of(1), "");
    EXPECT_EQ(notes->toPlainText(), QString());
    notes->setFocus();
    QTest::keyClicks(notes, QStringLiteral("clover"));
    window.book()->close(); // at once
    settle();
    window.books()->open(file());
    settle();
    ASSERT_EQ(window.yard()->yards().size(), 2U);
    EXPECT_EQ(of(1), "clover");
}

#ifdef Q_OS_UNIX
TEST_F(BookDesk, ADialogThatReadsAFileIsClosedWithoutWaiting) {
    open({colony("A")});
    const QString pipe = folder.filePath(QStringLiteral("log.csv"));
    ASSERT_EQ(::mkfifo(pipe.toLocal8Bit().constData(), 0600), 0);
    // Nobody writes into it for a while: to read it takes that long.
    const std::jthread writer([pipe] {
        std::this_thread::sleep_for(std::chrono::milliseconds(1500));
        QFile(pipe).open(QIODevice::WriteOnly);
    });
    QElapsedTimer since;
    since.start();
    {
        const ScaleLogDialog log(&yard, first().id, pipe);
        QTest::qWait(20);
    }
    EXPECT_LT(since.elapsed(), 1000) << "the window stood still";
    settle();
}

TEST_F(BookDesk, ATableIsReadWhileTheWindowGoesOn) {
    open({colony("A")});
    const QString pipe = folder.filePath(QStringLiteral("weighings.csv"));
    ASSERT_EQ(::mkfifo(pipe.toLocal8Bit().constData(), 0600), 0);
    const std::jthread writer([pipe] {
        std::this_thread::sleep_for(std::chrono::milliseconds(1500));
        QFile to(pipe);
        if (to.open(QIODevice::WriteOnly)) to.write("colony,date,gross_kg\nA,2026-09-13,41.5\n");
    });
    QElapsedTimer since;
    since.start();
    const QPointer<ImportDialog> dialog = new ImportDialog(&book, pipe);
    EXPECT_LT(since.elapsed(), 1000) << "the window stood still";
    EXPECT_EQ(dialog->said(), QStringLiteral("Reading\u2026"));
    settle();
    EXPECT_TRUE(dialog->said().startsWith(QStringLiteral("1 new"))) << dialog->said().toStdString();
    EXPECT_TRUE(dialog->importButton()->isEnabled())
        << "what was read once is what is imported: a pipe cannot be read again";
    dialog->importButton()->click();
    settle();
    EXPECT_EQ(yard.records(first().id)->weighings.size(), 1U);
}
#endif

} // namespace winterlarder::desk
