// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/past_page.h"

#include "models/past_forecast_model.h"
#include "models/words.h"
#include "text/learned_words.h"
#include "theme/card.h"
#include "theme/flow_layout.h"

#include <QCheckBox>
#include <QEvent>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <initializer_list>

namespace winterlarder::desk {

namespace {

constexpr int leastRows = 6; // of the table that are seen, its header one or two of them

QTableView* forecastTable(QWidget* parent, PastForecastModel* model) {
    auto* table = new QTableView(parent);
    table->setModel(model);
    table->setAccessibleName(PastPage::tr("Past forecasts and what happened"));
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 8);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setStretchLastSection(true);
    table->setMinimumHeight(leastRows * table->verticalHeader()->defaultSectionSize());
    return table;
}

} // namespace

PastPage::PastPage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard), model_(new PastForecastModel(this)) {
    said_ = plainLabel(this);
    said_->setWordWrap(true);
    said_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    said_->setAccessibleDescription(tr("What past winters taught"));
    learn_ = new QCheckBox(tr("Past wi&nters of these bees correct the forecast in this yard"), this);
    since_ = quietLabel(this, Lines::One);
    forget_ = new QPushButton(tr("Be&gin anew from today"), this);
    forget_->setToolTip(
        tr("Winters decided before the day asked about are no longer learned from; nothing is deleted"));
    remember_ = new QPushButton(tr("&Learn from all winters again"), this);
    table_ = forecastTable(this, model_);
    auto* row = new QWidget(this);
    auto* across = new FlowLayout(row, 8);
    for (QWidget* each : std::initializer_list<QWidget*>{learn_, forget_, remember_, since_}) across->addWidget(each);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->addWidget(said_);
    down->addWidget(row);
    down->addWidget(table_, 1);
    connect(learn_, &QCheckBox::toggled, this,
            [this](bool on) { change([on](book::Yard& changed) { changed.learn = on; }); });
    connect(forget_, &QPushButton::clicked, this,
            [this] { change([day = yard_->asOf()](book::Yard& changed) { changed.learnSince = day; }); });
    connect(remember_, &QPushButton::clicked, this,
            [this] { change([](book::Yard& changed) { changed.learnSince.reset(); }); });
    yard_->onChange(this, {YardChange::Past, YardChange::Colonies}, &PastPage::refresh);
    refresh();
}

void PastPage::change(const std::function<void(book::Yard&)>& change) {
    const auto* shown = yard_->shownYard();
    if (showing_ || !shown || !yard_->writable()) return;
    auto changed = *shown;
    change(changed);
    if (!(changed == *shown)) yard_->writeYard(changed);
}

QStringList PastPage::lines() const {
    const auto& past = yard_->past();
    if (!past && yard_->pastFailed())
        return {tr("Past winters could not be looked at; nothing is learned from them for now.")};
    if (!past) return {tr("Past winters are being looked at\u2026")};
    const auto& style = words::style();
    const auto& bees = past->learned.bees;
    QStringList lines;
    if (bees.winters == 0) {
        lines << text::nothingLearned();
    } else {
        lines << text::learnedHeading(bees.winters) + QLatin1Char(':');
        lines << text::learnedLines(bees.keeper, style);
    }
    const auto* shown = yard_->shownYard();
    if (shown)
        if (const auto shift = past->learned.forage.find(shown->id.number); shift != past->learned.forage.end())
            lines << text::forageShiftLine(shift->second, style);
    if (past->summary.forecasts > 0) lines << text::scoreSentence(past->summary, style);
    return lines;
}

void PastPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LocaleChange) refresh();
}

void PastPage::refresh() {
    showing_ = true;
    said_->setText(lines().join(QLatin1Char('\n')));
    const auto* shown = yard_->shownYard();
    const bool writable = shown && yard_->writable();
    learn_->setEnabled(writable);
    learn_->setChecked(shown && shown->learn);
    forget_->setEnabled(writable && shown->learn && (!shown->learnSince || shown->learnSince != yard_->asOf()));
    remember_->setVisible(shown && shown->learnSince);
    remember_->setEnabled(writable && shown->learn);
    since_->setText(shown && shown->learnSince ? tr("Learned from since %1.").arg(words::longDate(*shown->learnSince))
                                               : QString());
    model_->show(yard_->past() ? yard_->past()->forecasts : std::vector<PastForecast>{});
    table_->setVisible(model_->rowCount() > 0);
    showing_ = false;
}

QString PastPage::said() const { return said_->text() + QLatin1Char('\n') + since_->text(); }

} // namespace winterlarder::desk
