// SPDX-License-Identifier: GPL-3.0-or-later
// What breaks on a thread of the window is told as an error of ours, and nothing waits for it for ever.
#include "app/window_desk.h"
#include "dialogs/scale_log_dialog.h"
#include "pages/past_page.h"
#include "pages/story_page.h"

#include <QFile>
#include <QPushButton>

namespace winterlarder::desk {

using invented::colony;
using invented::WindowDesk;

namespace {

bool tellsOurs(const QString& said, const char* what) {
    return said.contains(QString::fromUtf8(what)) && said.contains(QStringLiteral("This is an error of Winterlarder, not of yours"));
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
    window.yard()->apply(book::SingleEdit(book::AddWinterOutcome{{.colony = entry().id, .date = invented::day("2027-04-15"), .alive = true, .coveredCombs = 7}}));
    settle();
    window.banner()->hush(QStringLiteral("problems"));
    window.yard()->showDay(invented::day("2027-09-14"));
    settle();
    ASSERT_TRUE(window.yard()->past()) << "the page does not wait for ever";
    EXPECT_EQ(window.yard()->past()->learned.bees.winters, 0);
    const QString said = window.banner()->said(QStringLiteral("problems"));
    EXPECT_TRUE(tellsOurs(said, "the winter of 2026 of A")) << said.toStdString();
}

TEST_F(WindowDesk, PastWintersThatCannotBeLookedAtAreSaid) {
    open({colony("A")});
    window.yard()->takePastFailure();
    EXPECT_TRUE(window.colonyView()->story()->past()->said().startsWith(QStringLiteral("Past winters could not be looked at"))) << window.colonyView()->story()->past()->said().toStdString();
}

TEST_F(WindowDesk, ALogThatBreaksIsToldAsOursAndReadNoLonger) {
    open({colony("A")});
    const auto broken = [](const std::string&, const exchange::ScaleLogOptions&, const answer::ScaleClocks&,
                           const std::stop_token&) -> Outcome<std::shared_ptr<const answer::ScaleAnswer>> { throw std::logic_error("no such log"); };
    ScaleLogDialog dialog(window.yard(), entry().id, file(), nullptr, broken);
    ASSERT_TRUE(invented::waitFor([&] { return dialog.idle(); }));
    EXPECT_TRUE(tellsOurs(dialog.said(), "no such log")) << dialog.said().toStdString();
    EXPECT_FALSE(dialog.importButton()->isEnabled());
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
    EXPECT_TRUE(said.contains(QStringLiteral("\nA: ")) && said.contains(QStringLiteral("\nB: ")) && said.contains(QStringLiteral("not worked out"))) << said.toStdString();
}

} // namespace winterlarder::desk
