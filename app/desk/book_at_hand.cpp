// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/answering.h"
#include "desk/colony_view.h"
#include "desk/core_adviser.h"
#include "desk/main_window.h"
#include "desk/yard_pane.h"
#include "models/plain_tip.h"
#include "models/words.h"
#include "text/step_words.h"

#include <QAction>
#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QStackedWidget>

#include <algorithm>
#include <thread>

//! What the window shows of the book at hand, and how it hears of it.
namespace winterlarder::desk {

void MainWindow::connectBook() {
    connect(&book_, &OpenBook::stateChanged, this, &MainWindow::showState);
    connect(&book_, &OpenBook::openFailed, this, [this](const QString&, const Problems& problems) {
        openingProblems_.insert(openingProblems_.end(), problems.begin(), problems.end());
        tellIfSettled();
    });
    connect(&book_, &OpenBook::worksAgain, this, &MainWindow::tellIfSettled);
    connect(books_, &BookActions::dataRead, this, &MainWindow::beginToAnswer);
    connect(books_, &BookActions::placesRead, this, &MainWindow::usePlaces);
    connect(books_, &BookActions::newBookOpened, this, &MainWindow::lookAtFirstColony);
    connect(&book_, &OpenBook::opened, this, [this] {
        if (beginning_) leaveFirstPage();
        takeUpSession();
    });
    yard_.onChange(this, {YardChange::Colonies}, &MainWindow::noteYards);
    connect(books_, &BookActions::failed, this, &MainWindow::tell);
    connect(books_, &BookActions::recentChanged, this, &MainWindow::listRecentBooks);
    connect(books_, &BookActions::savedAsOwnBook, list_, qOverload<>(&QWidget::setFocus));
    connect(books_, &BookActions::idleAgain, this, &MainWindow::tellIfSettled);
    showState();
}

void MainWindow::beginToAnswer(const std::shared_ptr<const ReferenceData>& reference) {
    const auto cores = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
    useReference(reference);
    useAdviser(std::make_shared<CoreAdviser>(reference_, deskSampling, cores));
    followWinters(deskSampling, cores);
}

void MainWindow::usePlaces(std::shared_ptr<const climate::Gazetteer> places) {
    start_->usePlaces(places);
    book_.usePlaces(std::move(places));
}

void MainWindow::beginBook(const Beginning& beginning) {
    useUnits(beginning.units);
    books_->beginBook(beginning);
}

void MainWindow::askForNewBook() {
    if (!book_.isOpen()) return start_->setFocus();
    beginning_ = true;
    start_->sayOpen(yard_.title());
    right_->setCurrentWidget(start_);
    start_->setFocus();
}

void MainWindow::leaveFirstPage() {
    if (!book_.isOpen()) return;
    beginning_ = false;
    showChosen();
    list_->setFocus();
}

void MainWindow::lookAtFirstColony() {
    whenNextSettled([this] {
        if (yard_.colonies().empty()) return;
        choose(yard_.colonies().front().id);
        colonyView_->beginFirstLook();
    });
}

void MainWindow::listRecentBooks() {
    recent_->clear();
    for (const QString& file : settings::recentBooks()) {
        const QFileInfo info(file);
        const QString yards = settings::yardsOf(file);
        const QString name = yards.isEmpty() ? tr("%1 \u2013 %2").arg(info.completeBaseName(), info.dir().path())
                                             : tr("%1 \u2013 %2 in %3").arg(yards, info.fileName(), info.dir().path());
        recent_
            ->addAction(QString(name).replace(QLatin1Char('&'), QLatin1String("&&")), this,
                        [this, file] { books_->open(file); })
            ->setToolTip(plainTip(name));
    }
    recent_->setEnabled(!recent_->isEmpty());
}

// What can be done with the book at hand, if one is open.
void MainWindow::showState() {
    yardPane_->setVisible(book_.isOpen());
    if (!book_.isOpen()) start_->sayOpen({});
    if (!book_.isOpen() || (right_->currentWidget() == start_ && !beginning_)) showChosen();
    for (auto* action : ofABook_) action->setEnabled(book_.isOpen());
    const auto& state = book_.state();
    const auto name = [](const std::optional<book::Step>& step) {
        return step ? text::stepName(*step, words::style()) : QString();
    };
    const QString undo = state ? name(state->undo) : QString(), redo = state ? name(state->redo) : QString();
    undo_->setEnabled(!undo.isEmpty());
    undo_->setText(undo.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(undo));
    redo_->setEnabled(!redo.isEmpty());
    redo_->setText(redo.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(redo));
}

} // namespace winterlarder::desk
