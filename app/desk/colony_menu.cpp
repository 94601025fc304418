// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/colony_view.h"
#include "desk/main_window.h"
#include "forms/entry_forms.h"
#include "pages/feeding_page.h"
#include "pages/look_page.h"

#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabWidget>

#include <algorithm>

//! Everything that can be written down of a colony, from the menu.
namespace winterlarder::desk {

void MainWindow::buildColonyMenu() {
    colonyMenu_ = menuBar()->addMenu(tr("&Colony"));
    auto* menu = colonyMenu_;
    const auto today = [this] { return yard_.entryDay(); };
    const auto of = [this] { return colonyView_->colony(); };
    const auto add = [&](const QString& words, auto act, const QKeySequence& keys = {}) {
        menu->addAction(words, keys, this,
                        [this, act] {
                            if (mayWriteOfColony()) act();
                        })
            ->setData(true);
    };
    menu->addAction(tr("&New colony\u2026"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N), this,
                    &MainWindow::newColony);
    menu->addSeparator();
    add(
        tr("New &look"),
        [this] {
            colonyView_->showPage(ColonyPage::Hive);
            colonyView_->look()->newLookButton()->click();
        },
        QKeySequence(Qt::Key_L));
    add(
        tr("&Weighed\u2026"),
        [this, today, of] {
            askForWeighing(this, &yard_, {.colony = of(), .weighing = {today(), book::ScaleReading{}}});
        },
        QKeySequence(Qt::Key_W));
    add(
        tr("&Fed\u2026"),
        [this, today, of] {
            askForFeed(this, &yard_,
                       {.colony = of(), .feed = {.date = today(), .ratio = colonyView_->feeding()->ratioAdvised()}});
        },
        QKeySequence(Qt::Key_F));
    add(tr("&Harvest\u2026"), [this, today, of] {
        askForHarvest(this, &yard_, {.colony = of(), .harvest = {today(), Mass(0)}});
    });
    add(tr("&Treatment\u2026"),
        [this, today, of] { askForTreatment(this, &yard_, {.colony = of(), .date = today()}); });
    add(tr("A &glance in winter\u2026"),
        [this, today, of] { askForSighting(this, &yard_, {.colony = of(), .date = today()}); });
    add(tr("How the wint&er went\u2026"),
        [this, today, of] { askForOutcome(this, &yard_, {.colony = of(), .date = today()}); });
    add(tr("N&ote\u2026"), [this, today, of] { askForNote(this, &yard_, {.colony = of(), .date = today()}); });
    menu->addSeparator();
    add(tr("Name, &queen, feeder\u2026"), [this, of] {
        if (const auto* records = yard_.records(of())) askForColony(this, &yard_, records->colony);
    });
    add(tr("Hi&ve\u2026"), [this, today, of] {
        if (const auto* records = yard_.records(of())) askForHive(this, &yard_, housingOn(*records, today()));
    });
    add(tr("To another &yard\u2026"), [this, today, of] {
        if (const auto* shown = yard_.shownYard())
            askForMove(this, &yard_, {.colony = of(), .date = today(), .yard = shown->id});
    });
    add(tr("What became of &it\u2026"),
        [this, today, of] { askForFate(this, &yard_, {.colony = of(), .date = today()}); });
    add(tr("&Remove it with all its records"), [this] { removeColony(); });
    connect(menu, &QMenu::aboutToShow, this, &MainWindow::offerColonyMenu);
    // Shortcuts must work again once the menu is closed, whatever it offered.
    connect(
        menu, &QMenu::aboutToHide, this,
        [this] {
            for (auto* action : colonyMenu_->actions()) action->setEnabled(true);
        },
        Qt::QueuedConnection);
}

bool MainWindow::mayWriteOfColony() const {
    return yard_.writable() && yard_.find(colonyView_->colony()) && right_->currentWidget() == colonyView_;
}

void MainWindow::offerColonyMenu() {
    const bool chosen = mayWriteOfColony();
    for (auto* action : colonyMenu_->actions())
        action->setEnabled(yard_.writable() && (chosen || !action->data().toBool()));
}

// In the order of the list; at its ends nothing happens.
void MainWindow::chooseBeside(int rows) {
    const auto id = model_->colonyAt(list_->currentIndex().row() + rows);
    if (yard_.find(id)) choose(id);
}

void MainWindow::newColony() {
    const auto* shown = yard_.shownYard();
    if (!shown || !reference_ || !yard_.writable()) return;
    book::Colony colony{.yard = shown->id, .hive = settings::usualHive(*reference_)};
    askForColony(this, &yard_, colony)->onceWritten([this](const BookChange& change) {
        if (!change.added) return;
        whenNextSettled([this, id = *change.added] {
            if (yard_.find(id)) choose(id);
        });
    });
}

void MainWindow::newYard() {
    if (!yard_.writable() || !reference_) return;
    askForYard(this, &yard_, {})->onceWritten([this](const BookChange& change) {
        if (!change.addedYard) return;
        whenNextSettled([this, id = *change.addedYard] {
            const auto& yards = yard_.yards();
            if (std::any_of(yards.begin(), yards.end(), [&](const auto& each) { return each.id == id; }))
                yard_.showYard(id);
        });
    });
}

// It can be undone, so it is not asked twice.
void MainWindow::removeColony() {
    const auto id = colonyView_->colony();
    if (yard_.find(id)) yard_.apply(book::SingleEdit(book::RemoveColony{id}));
}

} // namespace winterlarder::desk
