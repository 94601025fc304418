// SPDX-License-Identifier: GPL-3.0-or-later
// What breaks on a thread of the window is told as an error of ours, and nothing waits for it for ever.
#include "app/window_desk.h"
#include "desk/answering.h"
#include "dialogs/scale_log_dialog.h"
#include "pages/past_page.h"
#include "pages/story_page.h"

#include <QFile>
#include <QPushButton>
#include <QSignalSpy>

#include <SQLiteCpp/SQLiteCpp.h>
#include <limits>

namespace winterlarder::desk {

using invented::colony;
using invented::WindowDesk;

namespace {

bool tellsOurs(const QString& said, const char* what) {
    return said.contains(QString::fromUtf8(what)) &&
           said.contains(QStringLiteral("This is an error of Winterlarder, not of yours"));
}

} // namespace

// No winter can be simulated: whatever is worked out in the background breaks.
TEST_F(WindowDesk, AnErrorWhileAWinterIsFollowedIsToldAsOursAndWaitedForNoLonger) {
    answerReally();
    window.followWinters({1, 0}, 1);
    open({colony("A")});
    EXPECT_FALSE(window.yard()->followed(entry().id));
    EXPECT_FALSE(window.yard()->awaitsFollowing(entry().id));
    const QString said = window.banner()->said(QStringLiteral("problems"));
    EXPECT_TRUE(tellsOurs(said, "0 winters")) << said.toStdString();
}

TEST_F(WindowDesk, AnErrorInOnePastWinterIsToldAsOursAndLeavesItOut) {
    answerReally();
    window.followWinters({1, 0}, 1);
    open({colony("A")});
    window.yard()->apply(book::SingleEdit(book::AddWinterOutcome{
        {.colony = entry().id, .date = invented::day("2027-04-15"), .alive = true, .coveredCombs = 7}}));
    settle();
    window.banner()->dismiss(QStringLiteral("problems"));
    window.yard()->showDay(invented::day("2027-09-14"));
    settle();
    ASSERT_TRUE(window.yard()->past()) << "the page does not wait for ever";
    EXPECT_EQ(window.yard()->past()->learned.bees.winters, 0);
    const QString said = window.banner()->said(QStringLiteral("problems"));
    EXPECT_TRUE(tellsOurs(said, "the winter of 2026 of A")) << said.toStdString();
}

// Another program takes a table of the open book away before its past winters are read.
TEST_F(WindowDesk, PastWintersThatCannotBeLookedAtAreSaid) {
    open({colony("A")});
    SQLite::Database(file().toStdString(), SQLite::OPEN_READWRITE).exec("DROP TABLE colonies");
    window.followWinters({1, 100}, 1);
    window.yard()->showDay(invented::day("2027-09-14"));
    settle();
    EXPECT_FALSE(window.banner()->said(QStringLiteral("problems")).isEmpty());
    EXPECT_TRUE(
        window.colonyView()->story()->past()->said().startsWith(QStringLiteral("Past winters could not be looked at")))
        << window.colonyView()->story()->past()->said().toStdString();
}

TEST_F(WindowDesk, ALogThatBreaksIsToldAsOursAndReadNoLonger) {
    open({colony("A")});
    const auto broken = [](const std::string&, const exchange::ScaleLogOptions&, const answer::ScaleClocks&,
                           const std::stop_token&) -> Outcome<std::shared_ptr<const answer::ScaleAnswer>> {
        throw std::logic_error("no such log");
    };
    ScaleLogDialog dialog(window.yard(), entry().id, file(), nullptr, broken);
    ASSERT_TRUE(invented::waitFor([&] { return dialog.idle(); }));
    EXPECT_TRUE(tellsOurs(dialog.said(), "no such log")) << dialog.said().toStdString();
    EXPECT_FALSE(dialog.importButton()->isEnabled());
}

namespace {

//! Answers as it should, lets the winters go, and cannot make them again.
class ForgetfulAdviser : public Adviser {
public:
    Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int position, std::stop_token stop) const override {
        const auto made = core_.answer(record, position, std::move(stop));
        if (!made.ok() || !*made) return made;
        auto bare = std::make_shared<AnsweredColony>(**made);
        bare->answer.workings.ensemble = nullptr;
        return AnsweredPointer(bare);
    }
    AnsweredPointer recall(const AnsweredPointer&, std::stop_token) const override {
        ++recalls;
        throw std::logic_error("winters that are gone");
    }
    std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>& yard,
                                          advice::MovingCombs) const override {
        return yard;
    }
    mutable std::atomic<int> recalls{0};

private:
    CoreAdviser core_{invented::shipped(), winter::Sampling{1, 200}, 1};
};

} // namespace

TEST_F(WindowDesk, AnErrorWhileWintersAreMadeAgainIsToldOnceAsOursAndWaitedForNoLonger) {
    const auto adviser = std::make_shared<ForgetfulAdviser>();
    window.useAdviser(adviser);
    open({colony("A")});
    const auto answered = entry().answered;
    ASSERT_TRUE(answered);
    window.banner()->dismiss(QStringLiteral("problems"));
    auto* answering = window.findChild<Answering*>();
    ASSERT_TRUE(answering);
    const int before = adviser->recalls;
    QSignalSpy failed(answering, &Answering::failed);
    answering->recall(entry().id);
    EXPECT_FALSE(window.settled());
    settle();
    EXPECT_EQ(adviser->recalls, before + 1);
    ASSERT_EQ(failed.count(), 1);
    EXPECT_EQ(failed[0][0].value<Problems>().at(0).kind, ProblemKind::Internal);
    EXPECT_EQ(entry().answered, answered) << "the answer stands";
    const QString said = window.banner()->said(QStringLiteral("problems"));
    EXPECT_TRUE(tellsOurs(said, "winters that are gone")) << said.toStdString();
}

// The clock shows no day of the calendar by the time the file is written.
TEST(BackgroundErrors, AnErrorWhileACalendarIsMadeIsToldOnceAsOursAndWaitedForNoLonger) {
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("yard.larder")),
                  to = folder.filePath(QStringLiteral("due.ics"));
    { const auto made = invented::bookOf(file, {colony("A")}); }
    const auto seconds = std::make_shared<std::atomic<std::int64_t>>(1789000000);
    auto clock = invented::scribe();
    clock.secondsNow = [seconds] { return seconds->load(); };
    MainWindow window({}, clock);
    window.useReference(invented::shipped());
    window.yard()->showDay(invented::day("2026-09-14"));
    window.books()->open(file);
    ASSERT_TRUE(invented::waitFor([&] { return window.book()->isOpen() && window.settled(); }));
    QSignalSpy settled(&window, &MainWindow::becameSettled);
    *seconds = std::numeric_limits<std::int64_t>::max();
    window.writeCalendar(to);
    EXPECT_FALSE(window.settled());
    ASSERT_TRUE(invented::waitFor([&] { return window.settled(); }));
    *seconds = 1789000000; // for closing the book
    const QString said = window.banner()->said(QStringLiteral("calendar"));
    EXPECT_TRUE(said.startsWith(QStringLiteral("What is due could not be worked out."))) << said.toStdString();
    EXPECT_TRUE(tellsOurs(said, "is outside the calendar")) << said.toStdString();
    EXPECT_EQ(said.count(QStringLiteral("This is an error of Winterlarder")), 1) << "told once";
    EXPECT_FALSE(QFile::exists(to));
}

// No hive format is known: no winter can be made, the calendar is written and says whom it leaves out.
TEST_F(WindowDesk, ACalendarSaysWhichColonyItLeavesOutAndWhy) {
    auto bare = *invented::shipped();
    bare.formats.clear();
    open({colony("A"), colony("B")});
    window.useReference(std::make_shared<const ReferenceData>(std::move(bare)));
    const QString to = folder.filePath(QStringLiteral("due.ics"));
    window.writeCalendar(to);
    ASSERT_TRUE(invented::waitFor([&] { return !window.banner()->said(QStringLiteral("calendar")).isEmpty(); }));
    const QString said = window.banner()->said(QStringLiteral("calendar"));
    EXPECT_TRUE(QFile::exists(to));
    EXPECT_TRUE(said.contains(QStringLiteral("\nA: ")) && said.contains(QStringLiteral("\nB: ")) &&
                said.contains(QStringLiteral("not worked out")))
        << said.toStdString();
}

} // namespace winterlarder::desk
