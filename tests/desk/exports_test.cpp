// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "exchange/book/book_csv.h"
#include "exchange/book/book_document.h"

#include <QDir>
#include <QFile>
#include <QMenu>
#include <QMenuBar>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>

//! What the menu "Export" writes, and what paper looks like before it is printed.
namespace winterlarder::desk::exports_test {

using invented::colony;

class Exports : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerReally();
        open({colony("Apple"), colony("Pear")});
    }
    static std::string read(const QString& path) {
        QFile from(path);
        EXPECT_TRUE(from.open(QIODevice::ReadOnly)) << path.toStdString();
        return from.readAll().toStdString();
    }
    //! What the library makes of the same book.
    template <class Write> std::string wanted(Write write) {
        auto other = book::Book::open(file().toStdString(), *invented::shipped(),
                                      {invented::scribe("other").opener(), book::OpenFor::Reading});
        EXPECT_TRUE(other.ok());
        const auto text = write(*other);
        EXPECT_TRUE(text.ok());
        return text.ok() ? *text : std::string();
    }
    QString said() { return window.banner()->said(QStringLiteral("export")); }
    QAction* action(const char* words) {
        for (auto* each : window.findChildren<QAction*>())
            if (each->text().remove(QLatin1Char('&')) == QString::fromUtf8(words)) return each;
        ADD_FAILURE() << words;
        return nullptr;
    }
    int pagesOfPreview(const char* words) {
        action(words)->trigger();
        auto* preview = window.findChild<QPrintPreviewDialog*>();
        EXPECT_NE(preview, nullptr);
        if (!preview) return 0;
        auto* shown = preview->findChild<QPrintPreviewWidget*>();
        EXPECT_TRUE(invented::waitFor([&] { return shown->pageCount() > 0; }));
        const int pages = shown->pageCount();
        delete preview;
        return pages;
    }
};

TEST_F(Exports, TheBookAsOneDocument) {
    const QString to = folder.filePath(QStringLiteral("book.json"));
    window.books()->writeDocument(to);
    settle();
    EXPECT_EQ(read(to), wanted([](book::Book& book) { return exchange::writeBook(book); }));
    EXPECT_TRUE(said().contains(to)) << said().toStdString();
    window.books()->writeDocument(folder.filePath(QStringLiteral("no/such/folder/book.json")));
    settle();
    EXPECT_TRUE(said().contains(QStringLiteral("not written out"))) << said().toStdString();
}

TEST_F(Exports, EveryTableAndNoneOverAnother) {
    const QString into = folder.filePath(QStringLiteral("tables"));
    ASSERT_TRUE(QDir().mkpath(into));
    window.books()->writeTables(into);
    settle();
    EXPECT_EQ(static_cast<std::size_t>(QDir(into).entryList(QDir::Files).size()), exchange::csvTables().size());
    for (const auto& table : exchange::csvTables())
        EXPECT_EQ(read(into + QLatin1Char('/') + QString::fromStdString(table) + QStringLiteral(".csv")),
                  wanted([&](book::Book& book) { return exchange::writeCsv(book, table); }))
            << table;
    QFile changed(into + QStringLiteral("/looks.csv"));
    ASSERT_TRUE(changed.open(QIODevice::WriteOnly));
    changed.write("mine");
    changed.close();
    window.books()->writeTables(into);
    settle();
    EXPECT_EQ(read(changed.fileName()), "mine");
    EXPECT_TRUE(said().contains(QStringLiteral("Nothing was written"))) << said().toStdString();
}

TEST_F(Exports, AreInOneMenu) {
    QMenu* menu = nullptr;
    for (auto* each : window.findChildren<QMenu*>())
        if (each->title() == QStringLiteral("&Export")) menu = each;
    ASSERT_NE(menu, nullptr);
    QStringList words;
    for (const auto* each : menu->actions()) words << each->text().remove(QLatin1Char('&'));
    EXPECT_EQ(words, (QStringList{
                         QStringLiteral("Save the book as one JSON document\u2026"),
                         QStringLiteral("Save every table as CSV\u2026"), QStringLiteral("Save yard plan as PDF\u2026"),
                         QStringLiteral("Save colony sheet as PDF\u2026"), QStringLiteral("Save winter picture\u2026"),
                         QStringLiteral("Save what is due as a calendar\u2026")}));
}

TEST_F(Exports, PaperIsSeenBeforeItIsPrinted) {
    EXPECT_GE(pagesOfPreview("Preview of the yard plan\u2026"), 1);
    EXPECT_EQ(pagesOfPreview("Preview of the colony sheet\u2026"), 1);
}

} // namespace winterlarder::desk::exports_test
