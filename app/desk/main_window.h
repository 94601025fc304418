// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/opening.h"
#include "models/yard.h"
#include "models/yard_list_model.h"

#include <QListView>
#include <QMainWindow>

#include <thread>

class QLabel;
class QStackedWidget;

namespace winterlarder::desk {

class Adviser;
class ColonyView;
class Reckoning;
class WhyWindow;
class YardView;

enum class ColourWish { AsSystem, Light, Dark };

//! The window: the yard at the left, the answer with its picture and pages at the right. Reading and computing happen on other
//! threads; the window is painted before either begins.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(Arguments arguments);
    ~MainWindow() override;

    //! Begins to read what was named; call once after the window is shown.
    void begin();
    //! Takes an adviser (tests bring their own) and asks it about every colony.
    void useAdviser(std::shared_ptr<const Adviser> adviser);
    void addColonies(std::vector<book::ColonyCase> records);

    Yard* yard() { return &yard_; }
    YardListModel* yardList() { return model_; }
    QListView* yardPane() { return list_; }
    ColonyView* colonyView() { return colonyView_; }
    YardView* yardView() { return yardView_; }
    WhyWindow* whyWindow();
    bool settled() const; //!< everything read and every colony answered

    const Problems& openingProblems() const { return openingProblems_; }

    void choose(ColonyId id); //!< id 0: the yard
    void wishColours(ColourWish wish);

public slots:
    void openFilesByHand();
    void saveYardSheet();
    void printYardSheet();
    void explain(winterlarder::desk::ColonyId id);

signals:
    void becameSettled();

protected:
    void changeEvent(QEvent* event) override;

private:
    void buildPanes();
    QWidget* buildYardPane();
    void buildMenus();
    void buildBookMenu();
    void buildEditMenu();
    void buildViewMenu();
    void buildHelpMenu();
    void connectYard();
    void receive(Opened opened);
    void ask(ColonyId id, bool first);
    void shareOutWhenIdle();
    void showChosen();
    void applyColours();
    void tell(const Problems& problems);

    Arguments arguments_;
    Yard yard_;
    YardListModel* model_ = nullptr;
    QListView* list_ = nullptr;
    QStackedWidget* right_ = nullptr;
    YardView* yardView_ = nullptr;
    ColonyView* colonyView_ = nullptr;
    WhyWindow* why_ = nullptr;
    std::shared_ptr<const ReferenceData> reference_;
    std::shared_ptr<const Adviser> adviser_;
    std::unique_ptr<Reckoning> reckoning_;
    ColourWish colourWish_ = ColourWish::AsSystem;
    bool applyingColours_ = false;
    bool sharing_ = false;
    bool begun_ = false;
    Problems openingProblems_;
    std::jthread opener_;
    std::jthread sharer_;
};

} // namespace winterlarder::desk
