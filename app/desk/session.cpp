// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/colony_view.h"
#include "desk/main_window.h"
#include "pages/picture_panel.h"
#include "pages/yard_view.h"

#include <QAction>
#include <QFileInfo>
#include <QSplitter>
#include <QTabWidget>

#include <utility>

//! How the window was left, and is found again.
namespace winterlarder::desk {

namespace {

QString wholeNameOf(const QString& file) { return QFileInfo(file).absoluteFilePath(); }

} // namespace

void MainWindow::begin() {
    sessionWanted_ = !arguments_.pictures;
    books_->begin();
}

void MainWindow::keepSession() const {
    if (!book_.isOpen() || books_->isTemporary()) return;
    const auto* shown = yard_.shownYard();
    const auto seen = colonyView_->picture()->plot()->seen();
    settings::keepSession({.book = wholeNameOf(book_.state()->file),
                           .yard = shown ? shown->id.number : 0,
                           .colony = model_->colonyAt(list_->currentIndex().row()).number,
                           .colonyPage = colonyView_->pages()->currentIndex(),
                           .yardPage = yardView_->pages()->currentIndex(),
                           .picture = colonyView_->pictureWanted(),
                           .halves = colonyView_->halves()->saveState(),
                           .firstDay = seen ? seen->first : 0,
                           .lastDay = seen ? seen->last : 0,
                           .byName = model_->order() == YardOrder::Name});
}

// Pages and room at once, yard and colony once they are read.
void MainWindow::takeUpSession() {
    if (!std::exchange(sessionWanted_, false)) return;
    const auto kept = settings::session();
    if (kept.book.isEmpty() || kept.book != wholeNameOf(book_.state()->file)) return;
    colonyView_->pages()->setCurrentIndex(kept.colonyPage);
    yardView_->pages()->setCurrentIndex(kept.yardPage);
    colonyView_->halves()->restoreState(kept.halves);
    pictureShown_->setChecked(kept.picture);
    if (kept.byName) byName_->trigger();
    if (kept.lastDay > kept.firstDay) colonyView_->picture()->plot()->see(DayWindow{kept.firstDay, kept.lastDay});
    onceSettled([this, kept] {
        const auto* shown = yard_.shownYard();
        if (shown && shown->id.number != kept.yard) yard_.showYard({kept.yard});
        onceSettled([this, kept] {
            if (yard_.find({kept.colony})) choose({kept.colony});
        });
    });
}

// The list of recent books names them.
void MainWindow::noteYards() {
    if (!book_.isOpen() || books_->isTemporary() || yard_.yards().empty()) return;
    QStringList names;
    for (const auto& yard : yard_.yards()) names << QString::fromStdString(yard.name);
    const QString joined = names.join(tr(", "));
    if (joined == settings::yardsOf(book_.state()->file)) return;
    settings::noteYards(book_.state()->file, joined);
    listRecentBooks();
}

} // namespace winterlarder::desk
