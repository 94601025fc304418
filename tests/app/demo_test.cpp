// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "desk/banner.h"
#include "desk/main_window.h"

#include <QAction>
#include <QCryptographicHash>
#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace winterlarder::desk {
namespace {

QByteArray digestOf(const QString& file) {
    QFile open(file);
    if (!open.open(QIODevice::ReadOnly)) return {};
    return QCryptographicHash::hash(open.readAll(), QCryptographicHash::Sha256);
}

TEST(Demo, OpensACopyOfTheBookThatWasBuiltOnItsOwnDay) {
    const QString built = QStringLiteral(BUILD_FOLDER "/demo/orchard.larder");
    const QByteArray before = digestOf(built);
    ASSERT_FALSE(before.isEmpty());
    Arguments arguments;
    arguments.demo = true;
    arguments.data = QStringLiteral(SHARED_FOLDER);
    MainWindow window(arguments, invented::scribe());
    window.show();
    window.begin();
    ASSERT_TRUE(invented::waitFor([&window] { return window.yard()->colonies().size() == 6 && window.settled(); }));
    EXPECT_EQ(window.yard()->asOf(), demoDay);
    EXPECT_TRUE(window.books()->isTemporary());
    EXPECT_FALSE(window.banner()->said(QStringLiteral("temporary")).isEmpty());
    EXPECT_EQ(window.yard()->colonies().front().record.colony, "Gravenstein");
    ASSERT_TRUE(window.book()->state());
    EXPECT_TRUE(window.book()->state()->writable());

    book::Yard yard{.id = {1}, .name = "Another name"};
    yard.site = window.yard()->colonies().front().record.site;
    window.book()->apply(book::SingleEdit(book::ChangeYard{yard}));
    ASSERT_TRUE(invented::waitFor([&window] { return window.settled() && window.undoAction()->isEnabled(); }));
    EXPECT_EQ(digestOf(built), before) << "the book that was built is never written into";
}

TEST(Demo, PlaysOnItsOwnDayAndAKeepersBookOnTheClocks) {
    Arguments arguments;
    arguments.demo = true;
    arguments.data = QStringLiteral(SHARED_FOLDER);
    const Date clock = demoDay.plusDays(-500);
    MainWindow window(arguments, invented::scribe("keeper", clock));
    EXPECT_EQ(window.book()->today(), clock);
    window.begin();
    ASSERT_TRUE(invented::waitFor([&window] { return window.book()->isOpen(); }));
    EXPECT_EQ(window.book()->today(), demoDay);
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("yard.larder"));
    { const auto made = invented::bookOf(file, {invented::colony("A")}); }
    window.books()->open(file);
    ASSERT_TRUE(invented::waitFor([&] { return window.book()->isOpen() && window.book()->state()->file == file; }));
    EXPECT_EQ(window.book()->today(), clock);
    auto later = invented::colony("B");
    later.asOf = clock.plusDays(30);
    window.books()->openCases({later});
    ASSERT_TRUE(invented::waitFor([&window] { return window.books()->isTemporary(); }));
    EXPECT_EQ(window.book()->today(), later.asOf) << "cases play on theirs";
}

TEST(Demo, IsFoundBesideTheProgram) {
    Arguments arguments;
    arguments.demo = true;
    const auto found = openAll(arguments);
    EXPECT_EQ(found.demo, QStringLiteral(BUILD_FOLDER "/demo/orchard.larder"));
    EXPECT_TRUE(found.problems.empty());
    EXPECT_TRUE(found.books.isEmpty());
    EXPECT_TRUE(found.records.empty());
}

} // namespace
} // namespace winterlarder::desk
