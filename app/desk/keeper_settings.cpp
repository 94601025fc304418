// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/site_of_case.h"
#include "answer/units_of_place.h"
#include "desk/banner.h"
#include "desk/colony_view.h"
#include "desk/main_window.h"
#include "desk/settings_dialog.h"
#include "desk/text_size.h"
#include "desk/yard_pane.h"
#include "models/words.h"
#include "pages/yard_view.h"

#include <QApplication>
#include <QEvent>

//! What the keeper set, as far as the whole window wears it.
namespace winterlarder::desk {

void MainWindow::useUnits(UnitSystem system) {
    settings::chooseUnits(system);
    showUnits(system);
}

void MainWindow::followUnits() {
    const auto system = unitsHere();
    if (system != words::style().numbers.system) showUnits(system);
}

UnitSystem MainWindow::unitsHere() const {
    if (const auto chosen = settings::chosenUnits()) return *chosen;
    const auto* shown = yard_.shownYard();
    if (!shown || !reference_) return settings::systemUnits();
    const auto site = answer::siteOf(shown->site, {}, *reference_);
    if (!site.ok()) return settings::systemUnits();
    advice::ColonyQuestion question;
    question.place = answer::whereaboutsOf(shown->site, *site, *reference_);
    question.answers.units = shown->units;
    return answer::unitsOf(question);
}

// Every word and number is made anew in the other units.
void MainWindow::showUnits(UnitSystem system) {
    words::useUnits(system);
    model_->setOrder(model_->order());
    list_->viewport()->update();
    yardView_->refresh();
    if (yard_.find(colonyView_->colony())) colonyView_->show(colonyView_->colony());
    for (auto* each : findChildren<QWidget*>()) {
        QEvent change(QEvent::LocaleChange);
        QApplication::sendEvent(each, &change);
    }
}

void MainWindow::useLetters(int percent) {
    useTextSize(percent);
    yardPane_->fit();
}

void MainWindow::showSettings() {
    auto* dialog = new SettingsDialog(&yard_, this);
    connect(dialog, &SettingsDialog::unitsChosen, this, &MainWindow::followUnits);
    connect(dialog, &SettingsDialog::coloursChosen, this, &MainWindow::useColours);
    connect(dialog, &SettingsDialog::textSizeChosen, this, &MainWindow::useLetters);
    connect(dialog, &SettingsDialog::noticesChosen, banner_, &Banner::wishNotices);
    connect(dialog, &SettingsDialog::backupsAsked, books_, &BookActions::showBackups);
    dialog->open();
}

} // namespace winterlarder::desk
