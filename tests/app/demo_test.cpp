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

// One file is read, one is not, and the empty weight of the one is asked about: all of it is still said once the cases are open.
TEST(CaseFiles, WhatIsWrongOrAskedIsSaidOnceTheyAreOpen) {
    const QTemporaryDir folder;
    const auto written = [&](const char* name, const char* text) {
        QFile file(folder.filePath(QLatin1String(name)));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(text) > 0);
        return file.fileName();
    };
    Arguments arguments;
    arguments.data = QStringLiteral(SHARED_FOLDER);
    arguments.files << written(
                           "heavy.json",
                           R"({"case": 1, "as_of": "2026-09-12", "colony": "Russet", "site": {"station": "ca-halifax"},
 "hive": {"format": "langstroth-deep", "boxes": 2, "tare_kg": 45}, "bees": {"covered_combs": 8}})")
                    << written("broken.json", "{");
    MainWindow window(arguments, invented::scribe());
    window.begin();
    ASSERT_TRUE(invented::waitFor([&window] { return window.book()->isOpen() && window.settled(); }));
    EXPECT_EQ(window.yard()->colonies().size(), 1U);
    const auto said = [&](const char* matter) { return window.banner()->said(QLatin1String(matter)); };
    EXPECT_TRUE(said("asked").contains(QStringLiteral("heavy.json:2:")) &&
                said("asked").contains(QStringLiteral("An empty weight of 45.0 kg is much")))
        << said("asked").toStdString();
    EXPECT_TRUE(said("problems").contains(QStringLiteral("broken.json:1:"))) << said("problems").toStdString();
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
