// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/colony_view.h"
#include "desk/main_window.h"
#include "models/words.h"
#include "pages/look_page.h"
#include "pages/picture_panel.h"

#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <QTabWidget>

namespace winterlarder::desk {

void MainWindow::buildMenus() {
    buildBookMenu();
    buildEditMenu();
    buildColonyMenu();
    buildViewMenu();
    buildHelpMenu();
}

void MainWindow::buildBookMenu() {
    auto* menu = menuBar()->addMenu(tr("&Book"));
    menu->addAction(tr("&Open\u2026"), QKeySequence::Open, books_, &BookActions::openByHand);
    recent_ = menu->addMenu(tr("Open &recent"));
    listRecentBooks();
    menu->addAction(tr("&New book\u2026"), QKeySequence::New, this, &MainWindow::askForNewBook);
    ofABook_ = {menu->addAction(tr("New &yard in this book\u2026"), this, &MainWindow::newYard),
                menu->addAction(tr("&Import\u2026"), books_, &BookActions::importByHand),
                menu->addAction(tr("&Backups\u2026"), books_, &BookActions::showBackups),
                menu->addAction(tr("&Copy the book to\u2026"), books_, &BookActions::copyByHand),
                menu->addAction(tr("C&lose the book"), QKeySequence::Close, this, [this] { book_.close(); })};
    menu->addSeparator();
    ofABook_.push_back(
        menu->addAction(tr("&Print yard plan\u2026"), QKeySequence::Print, this, &MainWindow::printYardSheet));
    ofABook_.push_back(menu->addAction(tr("Previe&w of the yard plan\u2026"), this, &MainWindow::previewYardSheet));
    ofOneColony_ = {menu->addAction(tr("Print colony &sheet\u2026"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P),
                                    this, &MainWindow::printColonySheet),
                    menu->addAction(tr("Preview of the colony s&heet\u2026"), this, &MainWindow::previewColonySheet)};
    buildExportMenu(menu->addMenu(tr("&Export")));
    connect(menu, &QMenu::aboutToShow, this, [this] {
        for (auto* action : ofOneColony_) action->setEnabled(shownColonySheet().has_value());
    });
    // A shortcut must work again once the menu is closed; it does nothing where there is no sheet.
    connect(
        menu, &QMenu::aboutToHide, this,
        [this] {
            for (auto* action : ofOneColony_) action->setEnabled(true);
        },
        Qt::QueuedConnection);
    menu->addSeparator();
    menu->addAction(tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q), this, &QWidget::close);
}

void MainWindow::buildExportMenu(QMenu* menu) {
    const auto ofBook = [&](const QString& words, auto* owner, auto act) {
        ofABook_.push_back(menu->addAction(words, owner, act));
    };
    ofBook(tr("Save the book as one &JSON document\u2026"), books_, &BookActions::saveDocumentByHand);
    ofBook(tr("Save every table as CS&V\u2026"), books_, &BookActions::saveTablesByHand);
    ofBook(tr("Save yard plan as P&DF\u2026"), this, &MainWindow::saveYardSheet);
    ofOneColony_.push_back(menu->addAction(tr("Save colony sheet as PD&F\u2026"), this, &MainWindow::saveColonySheet));
    ofOneColony_.push_back(menu->addAction(tr("Save winter pict&ure\u2026"), this, [this] {
        if (shownColonySheet()) colonyView_->picture()->saveAs();
    }));
    ofBook(tr("Save what is due as a c&alendar\u2026"), this, &MainWindow::saveCalendar);
}

void MainWindow::buildEditMenu() {
    auto* menu = menuBar()->addMenu(tr("&Edit"));
    undo_ = menu->addAction(tr("&Undo"), QKeySequence::Undo, this, [this] { book_.undo(); });
    redo_ = menu->addAction(tr("&Redo"), this, [this] { book_.redo(); });
    auto keys = QKeySequence::keyBindings(QKeySequence::Redo);
    if (const QKeySequence often(Qt::CTRL | Qt::Key_Y); !keys.contains(often)) keys << often;
    redo_->setShortcuts(keys);
    ofABook_.push_back(
        menu->addAction(tr("&History\u2026"), QKeySequence(Qt::CTRL | Qt::Key_H), books_, &BookActions::showHistory));
    menu->addSeparator();
    menu->addAction(tr("&Copy the picture's numbers"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C), this,
                    [this] { colonyView_->picture()->copyNumbers(); });
    menu->addSeparator();
    menu->addAction(tr("&Find\u2026"), QKeySequence::Find, this, &MainWindow::find);
    menu->addSeparator();
    menu->addAction(tr("&Settings\u2026"), QKeySequence(Qt::CTRL | Qt::Key_Comma), this, &MainWindow::showSettings)
        ->setMenuRole(QAction::PreferencesRole);
}

// What is set in the settings too; there or here, both say what holds.
void MainWindow::addQuickSwitches(QMenu* menu) {
    const auto add = [&](QActionGroup* group, const QString& text, auto choose, auto holds) {
        auto* action = menu->addAction(text, this, choose);
        action->setCheckable(true);
        action->setChecked(holds());
        connect(menu, &QMenu::aboutToShow, action, [action, holds] { action->setChecked(holds()); });
        group->addAction(action);
    };
    auto* colours = new QActionGroup(this);
    const auto addColours = [&](const QString& text, ColourScheme wanted) {
        add(
            colours, text,
            [this, wanted] {
                settings::chooseColours(wanted);
                useColours(wanted);
            },
            [this, wanted] { return wanted == colourScheme_; });
    };
    addColours(tr("Colours as the &system's"), ColourScheme::AsSystem);
    addColours(tr("&Light"), ColourScheme::Light);
    addColours(tr("&Dark"), ColourScheme::Dark);
    menu->addSeparator();
    auto* units = new QActionGroup(this);
    const auto addUnits = [&](const QString& text, std::optional<UnitSystem> wanted) {
        add(
            units, text,
            [this, wanted] {
                settings::chooseUnits(wanted);
                followUnits();
            },
            [wanted] { return wanted == settings::chosenUnits(); });
    };
    addUnits(tr("Units of the &place"), std::nullopt);
    addUnits(tr("&Kilograms and litres"), UnitSystem::Metric);
    addUnits(tr("Pounds and US &gallons"), UnitSystem::UnitedStates);
    addUnits(tr("Pounds and i&mperial gallons"), UnitSystem::Imperial);
}

void MainWindow::buildViewMenu() {
    auto* menu = menuBar()->addMenu(tr("&View"));
    auto* order = new QActionGroup(this);
    const auto addOrder = [&](const QString& text, YardOrder wanted) {
        auto* action = menu->addAction(text, this, [this, wanted] { model_->setOrder(wanted); });
        action->setCheckable(true);
        action->setChecked(wanted == model_->order());
        order->addAction(action);
        return action;
    };
    addOrder(tr("Most &urgent first"), YardOrder::Urgency);
    byName_ = addOrder(tr("By &name"), YardOrder::Name);
    menu->addSeparator();
    addQuickSwitches(menu);
    menu->addSeparator();
    pictureShown_ = menu->addAction(tr("&Winter picture"), QKeySequence(Qt::Key_F8));
    pictureShown_->setCheckable(true);
    pictureShown_->setChecked(true);
    connect(pictureShown_, &QAction::toggled, colonyView_, &ColonyView::wantPicture);
    const auto addDays = [&](const QString& text, const QKeySequence& keys, void (WinterPlot::*see)()) {
        menu->addAction(text, keys, this, [this, see] { (colonyView_->picture()->plot()->*see)(); });
    };
    addDays(tr("F&ewer days in the picture"), QKeySequence(Qt::CTRL | Qt::Key_Plus), &WinterPlot::seeFewerDays);
    addDays(tr("M&ore days in the picture"), QKeySequence(Qt::CTRL | Qt::Key_Minus), &WinterPlot::seeMoreDays);
    addDays(tr("The whole winte&r"), QKeySequence(Qt::CTRL | Qt::Key_9), &WinterPlot::seeWholeWinter);
    menu->addSeparator();
    const auto addPage = [&](const QString& text, ColonyPage page, Qt::Key key) {
        return menu->addAction(text, QKeySequence(Qt::CTRL | key), this, [this, page] { colonyView_->showPage(page); });
    };
    addPage(tr("&In the hive"), ColonyPage::Hive, Qt::Key_1);
    auto* combs = addPage({}, ColonyPage::Combs, Qt::Key_2);
    const auto nameCombs = [combs] { combs->setText(words::worded(tr("%{Comb} &by %{comb}"))); };
    nameCombs();
    connect(&yard_, &Yard::changed, combs, nameCombs); // in the words of its place
    addPage(tr("&Feeding"), ColonyPage::Feeding, Qt::Key_3);
    addPage(tr("On the sc&ale"), ColonyPage::Scale, Qt::Key_4);
    addPage(tr("S&tory"), ColonyPage::Story, Qt::Key_5);
    addPage(tr("W&hat if"), ColonyPage::WhatIf, Qt::Key_6);
    menu->addAction(tr("The &yard"), QKeySequence(Qt::CTRL | Qt::Key_0), this, [this] { choose({}); });
    menu->addAction(tr("Ne&xt colony"), QKeySequence(Qt::CTRL | Qt::Key_PageDown), this, &MainWindow::nextColony);
    menu->addAction(tr("Pre&vious colony"), QKeySequence(Qt::CTRL | Qt::Key_PageUp), this, &MainWindow::previousColony);
}

} // namespace winterlarder::desk
