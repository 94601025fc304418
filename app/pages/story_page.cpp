// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/story_page.h"

#include "dialogs/history_dialog.h"
#include "fields/fields.h"
#include "forms/entry_forms.h"
#include "forms/record_list.h"
#include "pages/past_page.h"
#include "theme/card.h"

#include <QComboBox>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace winterlarder::desk {

StoryPage::StoryPage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    which_ = new QComboBox(this);
    nameChoice(which_, tr("What to read"));
    which_->addItems({tr("everything written down of this colony"), tr("every step of the whole book"),
                      tr("past forecasts against what happened")});
    records_ = new RecordList(
        this, yard_, tr("Everything written down of this colony, newest first"), {},
        tr("Nothing is written down yet. Looks, weighings, feeds, harvests, treatments and notes will stand here."));
    const auto today = [this] { return yard_->entryDay(); };
    records_->addButton(tr("&Note\u2026"),
                        [this, today] { askForNote(this, yard_, {.colony = colony_, .date = today()}); });
    records_->addButton(tr("Ha&rvest\u2026"), [this, today] {
        askForHarvest(this, yard_, {.colony = colony_, .harvest = {today(), Mass(0)}});
    });
    records_->addButton(tr("Treat&ment\u2026"),
                        [this, today] { askForTreatment(this, yard_, {.colony = colony_, .date = today()}); });
    records_->addButton(tr("H&ow the winter went\u2026"),
                        [this, today] { askForOutcome(this, yard_, {.colony = colony_, .date = today()}); });
    records_->addButton(tr("What became of it\u2026"),
                        [this, today] { askForFate(this, yard_, {.colony = colony_, .date = today()}); });
    buildSteps();
    stack_ = new QStackedWidget(this);
    stack_->addWidget(records_);
    stack_->addWidget(steps_);
    past_ = new PastPage(yard_, this);
    stack_->addWidget(withRoom(past_, stack_));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(12, 8, 12, 8);
    down->addWidget(which_, 0, Qt::AlignLeft);
    down->addWidget(stack_, 1);
    connect(which_, &QComboBox::currentIndexChanged, this, &StoryPage::fit);
    if (yard_->book()) connect(yard_->book(), &OpenBook::stateChanged, this, &StoryPage::fit);
}

void StoryPage::buildSteps() {
    stepModel_ = new StepListModel(yard_->book(), this);
    steps_ = stepTable(this, stepModel_);
}

// The history is read only while it is looked at.
void StoryPage::fit() {
    stack_->setCurrentIndex(which_->currentIndex());
    if (which_->currentIndex() == 1 && isVisible()) stepModel_->refresh();
}

void StoryPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    fit();
}

void StoryPage::show(ColonyId id) {
    colony_ = id;
    records_->show(id);
}

} // namespace winterlarder::desk
