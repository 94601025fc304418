// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/due_looks.h"
#include "desk/book_actions.h"
#include "desk/settings.h"
#include "models/open_book.h"
#include "models/record_rows.h"
#include "models/yard.h"
#include "models/yard_list_model.h"
#include "pages/start_page.h"
#include "print/paper.h"

#include <QListView>
#include <QMainWindow>

#include <functional>
#include <optional>
#include <vector>

class QAction;
class QComboBox;
class QLabel;
class QMenu;
class QStackedWidget;

namespace winterlarder::desk {

class Adviser;
class Answering;
class Banner;
class ColonyView;
class DayField;
class WinterFollower;
class HelpWindow;
struct Findable;
class Learning;
class NewestWork;
class WhyWindow;
class YardPane;
class YardView;

//! The window: the yard at the left, the answer with its picture and pages at the right. Reading, writing and computing happen on
//! other threads; the window is painted before any begins.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(Arguments arguments, Scribe scribe = Scribe::ofThisComputer());
    ~MainWindow() override;

    //! Begins to read what was named, and takes up the session kept of that book; call once after the window is shown.
    void begin();
    //! Keeps yard, colony, pages and how the room is shared, for the next start on the same book.
    void keepSession() const;
    void useReference(std::shared_ptr<const ReferenceData> reference);
    void usePlaces(std::shared_ptr<const climate::Gazetteer> places);
    //! Takes an adviser (tests bring their own) and asks it about every colony.
    void useAdviser(std::shared_ptr<const Adviser> adviser);

    //! Writes what is due for the yard's colonies, as an iCalendar file.
    void writeCalendar(const QString& file);
    //! Follows the winter of the colony looked at, and learns from past ones, in the background.
    void followWinters(winter::Sampling sampling, int threads);

    // ---- books -------------------------------------------------------------------------------------------------------
    BookActions* books() { return books_; }
    //! A new book in the units the keeper chose for it.
    void beginBook(const Beginning& beginning);

    Yard* yard() { return &yard_; }
    OpenBook* book() { return &book_; }
    YardListModel* yardList() { return model_; }
    QListView* yardPane() { return list_; }
    ColonyView* colonyView() { return colonyView_; }
    YardView* yardView() { return yardView_; }
    StartPage* startPage() { return start_; }
    Banner* banner() { return banner_; }
    DayField* dayField() { return day_; }
    QAction* undoAction() { return undo_; }
    QAction* redoAction() { return redo_; }
    WhyWindow* whyWindow();
    bool settled() const; //!< everything read and written, and every colony answered

    const Problems& openingProblems() const { return openingProblems_; }

    void choose(ColonyId id); //!< id 0: the yard
    void useColours(ColourScheme scheme);

public slots:
    void newColony();
    void newYard();
    void askForNewBook(); //!< the first page, over a book that stays open until another is begun
    void leaveFirstPage();
    void removeColony();
    void useUnits(winterlarder::UnitSystem system); //!< from now on, whatever the place
    void followUnits();                             //!< as chosen, else those of the yard's place
    void showSettings();
    void find();
    void nextColony() { chooseBeside(1); }
    void previousColony() { chooseBeside(-1); }
    //! Does with files what the menu would: opens books and case files, imports tables, reads a scale's log, measures a comb on a picture.
    //! What cannot be done is said in words, and nothing of it is.
    void takeDropped(const QStringList& files);
    void saveYardSheet();
    void saveCalendar();
    void printYardSheet();
    void previewYardSheet();
    void previewColonySheet();
    void saveColonySheet();
    void printColonySheet();
    void showWords();
    void showKeys();
    void explain(winterlarder::desk::ColonyId id);

signals:
    void becameSettled();

protected:
    void changeEvent(QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void buildPanes();
    YardPane* buildYardPane(QWidget* desk);
    QWidget* buildYardHead();
    void buildMenus();
    void buildBookMenu();
    void buildExportMenu(QMenu* menu);
    void buildEditMenu();
    void buildColonyMenu();
    void buildViewMenu();
    void addQuickSwitches(QMenu* menu);
    void buildHelpMenu();
    void connectYard();
    void connectBook();
    void beginToAnswer(const std::shared_ptr<const ReferenceData>& reference);
    void listRecentBooks();
    void noteYards();
    void takeUpSession();
    void showState();
    void offerColonyMenu();
    void showHead();
    void showUnits(UnitSystem system);
    UnitSystem unitsHere() const;
    void chooseBeside(int rows);
    bool mayWriteOfColony() const; //!< one is looked at, and the book can be written
    struct FoundEntry {
        book::Kind kind;
        std::int64_t id;
    };
    std::vector<Findable> findableReference();
    std::vector<Findable> findablePlaces(const QString& typed);
    void addFindable(std::vector<Findable>& all, const book::Yard& yard);
    void addFindable(std::vector<Findable>& all, const book::ColonyHistory& colony, const QString& yard);
    void showFound(book::YardId yard, ColonyId colony, const QString& name, std::optional<FoundEntry> entry);
    void onceSettled(const std::function<void()>& act);     //!< at once where nothing is under way
    void whenNextSettled(const std::function<void()>& act); //!< once what was just written or opened is read
    void showPlace(const QString& name);
    void showSources(const QString& lookFor);
    QString takeOne(const QString& file); //!< why it cannot be taken; empty where it is
    QString measureOn(const QString& picture);
    void askWhatTableItIs(const QString& file);
    void useLetters(int percent);
    struct ReadToFollow {
        std::vector<answer::ReadDue> colonies;
        std::string mark;               //!< of the book
        std::vector<std::string> notes; //!< on colonies of which less is told
        Problems problems;              //!< of colonies that could not be read
    };
    void takeDue(const QString& file, const ReadToFollow& read);
    void showChosen();
    void lookAtFirstColony();
    void applyColours();
    void tell(const Problems& problems);
    void tellIfSettled();
    std::optional<Paper> shownColonySheet() const; //!< nothing where the yard is shown or the answer is still awaited
    void savePaper(const Paper& paper, const QString& name);

    Arguments arguments_;
    TemporaryBooks temporary_;
    OpenBook book_;
    Yard yard_;
    Banner* banner_ = nullptr;
    BookActions* books_ = nullptr;
    YardListModel* model_ = nullptr;
    YardPane* yardPane_ = nullptr;
    QListView* list_ = nullptr;
    QComboBox* yards_ = nullptr;
    DayField* day_ = nullptr;
    QStackedWidget* right_ = nullptr;
    StartPage* start_ = nullptr;
    YardView* yardView_ = nullptr;
    ColonyView* colonyView_ = nullptr;
    WhyWindow* why_ = nullptr;
    HelpWindow* words_ = nullptr; //!< nothing until one is asked for
    HelpWindow* keys_ = nullptr;
    HelpWindow* sources_ = nullptr;
    QAction* undo_ = nullptr;
    QAction* redo_ = nullptr;
    QMenu* recent_ = nullptr;
    QMenu* colonyMenu_ = nullptr;
    std::vector<QAction*> ofABook_;     //!< offered where one is open
    std::vector<QAction*> ofOneColony_; //!< of the book's menu
    Answering* answering_ = nullptr;
    WinterFollower* following_ = nullptr; //!< nothing until followWinters()
    Learning* learning_ = nullptr;
    NewestWork* calendar_ = nullptr; //!< nothing until one is asked for
    std::shared_ptr<const ReferenceData> reference_;
    ColourScheme colourScheme_ = settings::colours();
    bool applyingColours_ = false;
    bool sessionWanted_ = false; //!< of the first book that is opened
    QAction* pictureShown_ = nullptr;
    QAction* byName_ = nullptr;
    bool beginning_ = false; //!< the first page is shown over the book at hand
    Problems openingProblems_;
};

} // namespace winterlarder::desk
