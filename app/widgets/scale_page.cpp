// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/scale_page.h"

#include "plots/scale_plot.h"
#include "widgets/card.h"
#include "widgets/entry_forms.h"
#include "widgets/record_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace winterlarder::desk {

ScalePage::ScalePage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    weighings_ = new RecordList(this, yard_, tr("Weighings, newest first"), {book::Kind::Weighing},
                                tr("The hive was not weighed yet. A hand scale under one side, or a heft, already narrows what is in it."));
    weighings_->addButton(tr("&Weigh\u2026"), [this] {
        askForWeighing(this, yard_, {.colony = colony_, .weighing = {yard_->asOf().value_or(*Date::of(2000, 1, 1)), book::ScaleReading{}}});
    });
    plot_ = new ScalePlot(this);
    caption_ = quietLabel(this);
    beside_ = new QVBoxLayout;
    beside_->addWidget(plot_, 1);
    beside_->addWidget(caption_);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(12, 8, 12, 8);
    across->setSpacing(16);
    across->addWidget(weighings_, 1);
    across->addLayout(beside_, 1);
    connect(yard_, &Yard::recordChanged, this, [this](ColonyId id) { if (id == colony_) refresh(); });
    connect(yard_, &Yard::answerChanged, this, [this](ColonyId id) { if (id == colony_) refresh(); });
}

void ScalePage::show(ColonyId id) {
    colony_ = id;
    weighings_->show(id);
    refresh();
}

void ScalePage::refresh() {
    const auto* colony = yard_->find(colony_);
    const bool known = colony && colony->answered && !colony->pending && !colony->answered->picture.empty();
    caption_->setText(known ? tr("Points: stores as weighed and seen, with eighty in a hundred odds. Band: what eighty of a hundred simulated winters leave.")
                            : tr("Here what was measured stands against what the model expects, once both are known."));
    if (!known) return plot_->clear();
    plot_->show(scaleSeries(colony->answered->picture), colony->answered->picture.winter);
}

} // namespace winterlarder::desk
