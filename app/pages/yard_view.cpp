// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/yard_view.h"

#include "forms/chosen_row.h"
#include "forms/job_table.h"
#include "models/colony_edits.h"
#include "models/words.h"
#include "models/yard_plan_words.h"
#include "pages/answer_panel.h"
#include "pages/place_page.h"
#include "theme/even_columns.h"
#include "theme/least_height.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <tuple>

namespace winterlarder::desk {

namespace {

constexpr int restMilliseconds = 200; // between two refreshes while answers come
constexpr int leastPageLines = 16;

} // namespace

YardView::YardView(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard), model_(new JobTableModel(this)) {
    answer_ = new AnswerPanel(this);
    place_ = new PlacePage(yard_, this);
    pages_ = new QTabWidget(this);
    pages_->setAccessibleName(tr("Pages of the yard"));
    pages_->addTab(withRoom(buildPlan(), pages_), tr("&Plan"));
    pages_->addTab(withRoom(place_, pages_), tr("P&lace"));
    pages_->setMinimumHeight(leastPageLines * fontMetrics().height());
    auto* all = new LeastHeight(this);
    auto* down = new QVBoxLayout(all);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(12);
    down->addWidget(answer_);
    down->addWidget(pages_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(withRoom(all, this));
    connect(table_, &QTableView::activated, this, [this](const QModelIndex& index) {
        emit colonyChosen(model_->jobs()[static_cast<std::size_t>(index.row())].id);
    });
    soon_ = new QTimer(this);
    soon_->setSingleShot(true);
    connect(soon_, &QTimer::timeout, this, &YardView::refresh);
    yard_->onChange(this, {YardChange::Colonies}, [this] {
        stale_ = true;
        if (isVisible()) refresh();
    });
    yard_->onChange(this, {YardChange::Answer, YardChange::Visits, YardChange::Followed, YardChange::Moving},
                    &YardView::refreshSoon);
    refresh();
}

// Many answers may come after each other; the plan is added up once for all of them, and only while it is looked at.
void YardView::refreshSoon() {
    stale_ = true;
    if (!isVisible() || soon_->isActive()) return;
    const bool lately = refreshed_.isValid() && refreshed_.elapsed() < restMilliseconds;
    soon_->start(lately ? restMilliseconds : 0);
}

void YardView::showPage(YardPage page) { pages_->setCurrentIndex(static_cast<int>(page)); }

void YardView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

QWidget* YardView::buildPlan() {
    auto* plan = new LeastHeight(this);
    table_ = new JobTable(plan, model_, true, tr("Everything to do, by day"));
    full_ = new QWidget(plan);
    auto* full = new QVBoxLayout(full_);
    full->setContentsMargins(0, 0, 0, 0);
    full->setSpacing(10);
    full->addWidget(buildTotals());
    setTabOrder(moving_, table_);
    full->addWidget(table_, 1);
    table_->setMinimumHeight(8 * fontMetrics().height());
    full->addWidget(buildVisitButtons());
    auto* down = new QVBoxLayout(plan);
    down->setContentsMargins(12, 10, 12, 10);
    down->addWidget(full_, 1);
    down->addWidget(buildEmpty(), 1);
    return plan;
}

// What a plan holds is ticked off here too.
QWidget* YardView::buildVisitButtons() {
    auto* row = new QWidget(full_);
    auto* across = new QHBoxLayout(row);
    across->setContentsMargins(0, 0, 0, 0);
    auto* hint = quietLabel(row);
    hint->setText(tr(
        "\u201cAdvised\u201d is what today's answers ask for; \u201cMake it the plan\u201d on a colony's page makes it yours. Enter on a row opens its colony."));
    made_ = new QPushButton(tr("Visit &made"), row);
    skip_ = new QPushButton(tr("S&kip the visit"), row);
    across->addWidget(hint, 1);
    for (auto* button : {made_, skip_}) across->addWidget(button);
    connect(made_, &QPushButton::clicked, this, [this] {
        if (const auto* job = chosenVisit())
            yard_->apply(book::SingleEdit(madeOnItsDay(*job->visit, *job->date, yard_->asOf())));
    });
    connect(skip_, &QPushButton::clicked, this, [this] {
        if (const auto* job = chosenVisit()) yard_->apply(book::SingleEdit(book::SkipVisit{*job->visit}));
    });
    onChosenRow(table_, this, [this] { fitVisitButtons(); });
    return row;
}

const PlannedJob* YardView::chosenVisit() const {
    const int row = chosenRow(*table_);
    if (row < 0 || row >= model_->rowCount()) return nullptr;
    const auto& job = model_->jobs()[static_cast<std::size_t>(row)];
    return job.visit ? &job : nullptr;
}

void YardView::fitVisitButtons() {
    const bool planned = chosenVisit() && yard_->writable();
    for (auto* button : {made_, skip_}) button->setEnabled(planned);
}

// An empty yard shows how to begin.
QWidget* YardView::buildEmpty() {
    empty_ = new Card(this);
    auto* words = plainLabel(
        empty_,
        tr("The yard is empty. Add a colony: its name and the hive it lives in. Then write down one look \u2013 which combs hold honey, and how many the bees "
           "cover \u2013 and the answer stands here: whether it lasts, what to feed, or what may come off."));
    words->setWordWrap(true);
    addColony_ = new QPushButton(tr("&Add a colony\u2026"), empty_);
    connect(addColony_, &QPushButton::clicked, this, &YardView::colonyWanted);
    auto* down = new QVBoxLayout(empty_);
    down->setContentsMargins(24, 24, 24, 24);
    down->addWidget(words);
    down->addWidget(addColony_, 0, Qt::AlignLeft);
    down->addStretch(1);
    return empty_;
}

QWidget* YardView::buildTotals() {
    auto* all = new EvenColumns(this, 30 * fontMetrics().averageCharWidth(), 12);
    const auto add = [&](const QString& title) {
        auto* card = new Card(all);
        auto* inside = new QVBoxLayout(card);
        inside->setContentsMargins(14, 10, 14, 10);
        inside->setSpacing(2);
        auto* head = quietLabel(card);
        head->setText(title);
        auto* figure = plainLabel(card);
        figure->setWordWrap(true);
        figure->setAccessibleDescription(title);
        QFont big = font();
        big.setPointSizeF(big.pointSizeF() * 1.25);
        big.setBold(true);
        figure->setFont(big);
        inside->addWidget(head);
        inside->addWidget(figure);
        auto* more = quietLabel(card);
        more->hide();
        inside->addWidget(more);
        inside->addStretch(1);
        all->add(card);
        return std::tuple(figure, more, head);
    };
    std::tie(sugar_, sugarElse_, std::ignore) = add(tr("White sugar to buy"));
    fondant_ = std::get<0>(add(tr("Fondant to buy")));
    honey_ = std::get<0>(add(tr("Honey that may come off")));
    std::tie(gifts_, std::ignore, giftsHead_) = add({});
    QFont plain = font();
    gifts_->setFont(plain);
    buildMovingSwitch();
    return all;
}

// Nothing of the book changes by it: it shows the plan and every answer the other way.
void YardView::buildMovingSwitch() {
    auto* card = gifts_->parentWidget();
    moving_ = new QCheckBox(card);
    nameMoving();
    static_cast<QVBoxLayout*>(card->layout())->insertWidget(1, moving_);
    connect(moving_, &QCheckBox::clicked, this,
            [this](bool on) { yard_->moveCombs(on ? advice::MovingCombs::Allowed : advice::MovingCombs::Not); });
}

// As combs are called at the yard's place.
void YardView::nameMoving() {
    const QString title = words::worded(tr("%{Combs} to move first"));
    giftsHead_->setText(title);
    gifts_->setAccessibleDescription(title);
    moving_->setText(words::worded(tr("Move %{combs} between hives")));
    moving_->setToolTip(
        words::worded(tr("Off: the plan and all answers as they are if every %{comb} stays in its hive")));
}

void YardView::showTotals(const YardPlan& plan) {
    sugar_->setText(plan.totals.sugar > Mass(0.05) ? words::amount(plan.totals.sugar) : tr("none"));
    QStringList more;
    if (const auto* yard = yard_->shownYard(); yard && plan.totals.sugar > Mass(0.05))
        more << costWords(*yard, plan.totals.sugar);
    more.removeAll({});
    sugarElse_->setVisible(!more.isEmpty());
    sugarElse_->setText(more.join(QLatin1Char('\n')));
    fondant_->setText(plan.totals.fondant > Mass(0.05) ? words::amount(plan.totals.fondant) : tr("none"));
    honey_->setText(plan.totals.honey > Mass(0.05) ? tr("up to %1").arg(words::amount(plan.totals.honey)) : tr("none"));
    gifts_->setText(movedCombsWords(plan));
    nameMoving();
    moving_->setChecked(plan.moving == advice::MovingCombs::Allowed);
}

void YardView::refresh() {
    stale_ = false;
    refreshed_.start();
    const auto plan = planOf(*yard_);
    answer_->say(yardSentence(plan), yardSmallLine(plan));
    showTotals(plan);
    model_->show(plan.jobs);
    const bool none = yard_->colonies().empty();
    full_->setVisible(!none);
    empty_->setVisible(none);
    addColony_->setEnabled(yard_->writable());
}

} // namespace winterlarder::desk
