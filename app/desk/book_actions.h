// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/salvage.h"
#include "desk/opening.h"
#include "models/open_book.h"
#include "pages/start_page.h"
#include "work/work_in_order.h"

#include <functional>
#include <memory>

class QTemporaryDir;

namespace winterlarder::desk {

class Banner;
class Yard;

//! A folder for books that go with the window, made when the first is; must live longer than the book that is open.
class TemporaryBooks {
public:
    TemporaryBooks();
    ~TemporaryBooks();
    QString newFile(const QString& name);
    bool holds(const QString& file) const;

private:
    std::unique_ptr<QTemporaryDir> folder_;
    int made_ = 0;
};

//! What is done with whole books: they are opened, begun, copied and salvaged, and the banner says how the one at hand is open and what
//! came of each request. What follows a request goes with it, so it is never said of another book. Tested: tests/app/pages_test.cpp,
//! two_books_test.cpp, demo_test.cpp.
class BookActions : public QObject {
    Q_OBJECT

public:
    //! Dialogs open over `window`, whose child this is.
    BookActions(OpenBook* book, Yard* yard, TemporaryBooks* temporary, Banner* banner, Arguments arguments,
                QWidget* window);

    //! Reads what was named at the start, beside the window, and opens it.
    void begin();
    void open(const QString& file, book::OpenFor purpose = book::OpenFor::Writing, OpenBook::Done done = {});
    //! Case files become a book of their own, which lasts as long as the window; "copy the book" keeps it.
    //! `files`: the name of each case's file.
    void openCases(std::vector<book::ColonyCase> records, std::vector<std::string> files = {},
                   OpenBook::Done done = {});
    void openFilesNamed(const QStringList& files); //!< books and case files, once the shipped data are read
    void openDemo();
    //! A new book in the folder where books are kept, with one yard and its colonies.
    void beginBook(const Beginning& beginning);
    void keepBooksIn(const QString& folder) { bookFolder_ = folder; }
    //! What can be read of a damaged book becomes a new one, and is opened.
    void salvage(const QString& damaged, const QString& into);
    //! Into a new file, never over one that is there; a book that would go with the window lives on in its copy.
    void copyTo(const QString& file);
    //! Everything written down, as one document.
    void writeDocument(const QString& file);
    //! Every table as a file of its own in the folder; none where one of these files is there already.
    void writeTables(const QString& folder);
    bool isTemporary() const;                    //!< the book at hand goes with the window
    bool idle() const { return beside_.idle(); } //!< nothing is read or salvaged beside the window

public slots:
    void openByHand();
    void copyByHand();
    void importByHand();
    void showBackups();
    void showHistory();
    void saveDocumentByHand();
    void saveTablesByHand();

signals:
    //! The shipped data were read for the first time; who hears it gives them to the book.
    void dataRead(const std::shared_ptr<const winterlarder::ReferenceData>& reference);
    void placesRead(const std::shared_ptr<const winterlarder::climate::Gazetteer>& places);
    void newBookOpened();                                //!< a new book is open
    void failed(const winterlarder::Problems& problems); //!< what has no place of its own in the banner
    void recentChanged();
    void savedAsOwnBook(); //!< a book that would have gone with the window is open as a book of its own
    void idleAgain();

private:
    void openBeside(std::function<Opened()> read);
    void receive(Opened opened);
    bool openFirst(Opened opened, OpenBook::Done done); //!< false: there is nothing to open
    void readPlacesBeside();
    void openCopyOfDemo(const QString& copy, OpenBook::Done done);
    void mentionWhereKept(const QString& file);
    void showAccess();
    void tellNotOpened(const QString& file, const Problems& problems, bool salvageable);
    void salvageByHand(const QString& file);
    void takeSalvaged(const QString& into, const Outcome<book::Salvaged>& outcome);
    void openKept(const QString& copy);

    OpenBook* book_;
    Yard* yard_;
    TemporaryBooks* temporary_;
    Banner* banner_;
    Arguments arguments_;
    QWidget* window_;
    QString bookFolder_;
    WorkInOrder beside_; //!< reads and salvages; last, so that it ends first
};

} // namespace winterlarder::desk
