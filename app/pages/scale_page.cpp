// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/scale_page.h"

#include "dialogs/scale_log_dialog.h"
#include "forms/entry_forms.h"
#include "forms/record_list.h"
#include "guide/guide_link.h"
#include "pages/follow_panel.h"
#include "pages/weigh_line_table.h"
#include "plots/scale_plot.h"
#include "theme/card.h"

#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

ScalePage::ScalePage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    weighings_ = new RecordList(
        this, yard_, tr("Weighings and glances, newest first"),
        {book::Kind::Weighing, book::Kind::Sighting, book::Kind::WinterOutcome},
        tr("The hive was not weighed yet. A hand scale under one side, or a heft, already narrows what is in it."));
    weighings_->addButton(tr("Wei&gh\u2026"), [this] {
        askForWeighing(this, yard_, {.colony = colony_, .weighing = {yard_->entryDay(), book::ScaleReading{}}});
    });
    weighings_->addButton(tr("A scale's &log\u2026"), [this] {
        const QString file = QFileDialog::getOpenFileName(this, tr("The log of a scale"), {},
                                                          tr("Tables (*.csv *.txt *.tsv);;All files (*)"));
        if (!file.isEmpty()) (new ScaleLogDialog(yard_, colony_, file, this))->open();
    });
    weighings_->addButton(tr("A gla&nce\u2026"),
                          [this] { askForSighting(this, yard_, {.colony = colony_, .date = yard_->entryDay()}); });
    weighings_->addButton(tr("H&ow the winter went\u2026"),
                          [this] { askForOutcome(this, yard_, {.colony = colony_, .date = yard_->entryDay()}); });
    auto* guide = new QHBoxLayout;
    guide->addStretch(1);
    for (const auto page : {text::GuidePage::Weight, text::GuidePage::Winter})
        guide->addWidget(new GuideLink(this, yard_, page, GuideLink::As::Title));
    setGuidePage(this, text::GuidePage::Weight);
    plot_ = new ScalePlot(this);
    caption_ = quietLabel(this);
    line_ = new WeighLineTable(this);
    follow_ = new FollowPanel(yard_, this);
    setGuidePage(follow_, text::GuidePage::Winter);
    auto* beside = new QVBoxLayout;
    beside->addLayout(guide);
    beside->addWidget(plot_, 1);
    beside->addWidget(caption_);
    beside->addWidget(line_, 1);
    beside->addWidget(follow_, 3);
    halves_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
    halves_->setContentsMargins(12, 8, 12, 8);
    halves_->setSpacing(16);
    auto* listed = new QVBoxLayout;
    listed->addWidget(weighings_, 1);
    listed->addStretch(0);
    halves_->addLayout(listed, 1);
    halves_->addLayout(beside, 1);
    weighings_->setMinimumHeight(9 * fontMetrics().height());
    yard_->onColony(this, colony_, {YardChange::Record, YardChange::Followed, YardChange::Answer}, &ScalePage::refresh);
}

void ScalePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

bool ScalePage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize) arrange();
    return QWidget::eventFilter(watched, event);
}

void ScalePage::arrange() {
    const bool beside = width() >= 115 * fontMetrics().averageCharWidth();
    halves_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    const QMargins around = halves_->contentsMargins();
    const int seen = parentWidget()->height() - around.top() - around.bottom();
    weighings_->setMaximumHeight(beside ? std::max(weighings_->minimumHeight(), seen) : QWIDGETSIZE_MAX);
}

void ScalePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    parentWidget()->installEventFilter(this); // a second time is the first
    arrange();
}

void ScalePage::show(ColonyId id) {
    colony_ = id;
    weighings_->show(id);
    follow_->show(id);
    refresh();
}

// Before a winter is followed the picture is the model from the day on; then it is that winter's.
void ScalePage::refresh() {
    const auto followed = yard_->followed(colony_);
    const bool following = followed && followed->begun();
    plot_->setVisible(!following);
    caption_->setVisible(!following);
    const auto* colony = yard_->find(colony_);
    const bool known = colony && colony->answered && !colony->pending && !colony->answered->picture.empty();
    caption_->setText(
        known
            ? tr("Points: stores as weighed and seen, with eighty in a hundred odds. Band: what eighty of a hundred simulated winters leave.")
            : tr("Here what was measured stands against what the model expects, once both are known."));
    if (known && colony->answered->answer.advice.expectedLater)
        caption_->setText(caption_->text() + QLatin1Char(' ') + tr("Weights to expect are without what is fed later."));
    line_->show(known && !yard_->leading(colony_) ? colony->answered->answer.advice.weighLine
                                                  : std::vector<advice::WeighPoint>{});
    if (!known) return plot_->clear();
    plot_->show(scaleSeries(colony->answered->picture), colony->answered->picture.winter);
}

} // namespace winterlarder::desk
