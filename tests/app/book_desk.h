// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/invented.h"
#include "book/case_of.h"
#include "models/cases_as_entries.h"
#include "models/open_book.h"
#include "models/yard.h"

#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

//! A book of invented colonies in a folder of its own, and what works on it, for tests of the window and its models.
namespace winterlarder::desk::invented {

//! Somebody whose clock stands still, on a day after all that the tests write down unless another is said.
inline Scribe scribe(const char* who = "keeper", Date today = day("2028-06-01")) {
    return {QString::fromLatin1(who), QStringLiteral("test"), [] { return std::int64_t(1789000000); },
            [today] { return today; }};
}

template <class Done> bool waitFor(Done done) {
    for (int i = 0; i < 40000 && !done(); ++i) QTest::qWait(5); // minutes: sanitizers are slow
    return done();
}

inline book::Book bookOf(const QString& file, const std::vector<book::ColonyCase>& cases) {
    auto book = book::Book::create(file.toStdString(), *shipped(), {scribe().opener()});
    EXPECT_TRUE(book.ok());
    EXPECT_TRUE(book->apply(entriesOfCases(cases, {1}, {1}), scribe().now(), "keeper").ok());
    return std::move(book).value();
}

//! A yard without a book shows one colony more.
inline ColonyId add(Yard& yard, const book::ColonyCase& record) {
    YardReading reading{
        .whole = true, .day = record.asOf, .yards = {}, .shown = {}, .colonies = {}, .open = {}, .problems = {}};
    std::int64_t number = 0;
    for (const auto& colony : yard.colonies()) {
        reading.colonies.emplace_back(colony.id, colony.record);
        number = std::max(number, colony.id.number);
    }
    const ColonyId id{number + 1};
    reading.colonies.emplace_back(id, record);
    yard.takeReading(std::move(reading));
    return id;
}

//! A yard over a book on disk.
class BookDesk : public testing::Test {
protected:
    explicit BookDesk(Date today = day("2028-06-01")) : book(scribe("keeper", today)), yard(&book) {
        book.useReference(shipped());
        yard.showDay(day("2026-09-14"));
    }
    QString file(const char* name = "yard.larder") const { return folder.filePath(QString::fromLatin1(name)); }
    void open(const std::vector<book::ColonyCase>& cases) {
        book.create(file(), [cases](book::YardId nextYard, book::ColonyId nextColony) {
            return entriesOfCases(cases, nextYard, nextColony);
        });
        settle();
        ASSERT_TRUE(book.isOpen());
        ASSERT_EQ(yard.colonies().size(), cases.size());
        yard.look(yard.colonies().front().id);
        settle();
    }
    void settle() {
        ASSERT_TRUE(waitFor([this] { return book.idle() && !yard.busy(); }));
    }
    const ColonyEntry& first() const { return yard.colonies().front(); }
    //! The case as another program would read it from the file now.
    book::ColonyCase onDisk() {
        auto other =
            book::Book::open(file().toStdString(), *shipped(), {scribe("other").opener(), book::OpenFor::Reading});
        EXPECT_TRUE(other.ok());
        auto record = book::caseOf(*other, first().id, day("2026-09-14"));
        EXPECT_TRUE(record.ok());
        return std::move(record).value();
    }

    QTemporaryDir folder;
    OpenBook book;
    Yard yard;
};

} // namespace winterlarder::desk::invented
