// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/yard_view.h"

#include "models/colony_edits.h"
#include "models/words.h"
#include "widgets/answer_panel.h"
#include "widgets/card.h"
#include "widgets/job_table.h"
#include "widgets/place_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <cmath>
#include <tuple>

namespace winterlarder::desk {

namespace {

constexpr int restMilliseconds = 200; // between two refreshes while answers come

} // namespace

QString yardSentence(const YardPlan& plan) {
    QStringList parts;
    if (plan.feed > 0) parts << YardView::tr("%n to feed", nullptr, plan.feed);
    if (plan.unite > 0) parts << YardView::tr("%n to unite", nullptr, plan.unite);
    if (plan.harvest > 0) parts << YardView::tr("%n with honey to spare", nullptr, plan.harvest);
    if (plan.leave > 0) parts << YardView::tr("%n to leave alone", nullptr, plan.leave);
    if (plan.cannotSay > 0) parts << YardView::tr("%n not known enough", nullptr, plan.cannotSay);
    int all = plan.feed + plan.unite + plan.harvest + plan.leave + plan.cannotSay + plan.waiting;
    for (const auto& [state, count] : plan.followed) {
        using State = tracking::FollowState;
        all += count;
        switch (state) {
        case State::OnCourse: parts << YardView::tr("%n on course", nullptr, count); break;
        case State::EatingFaster: parts << YardView::tr("%n eating faster than planned", nullptr, count); break;
        case State::EatingSlower: parts << YardView::tr("%n eating less than planned", nullptr, count); break;
        case State::ActNow: parts << YardView::tr("%n to be fed now", nullptr, count); break;
        case State::Dead: parts << YardView::tr("%n dead", nullptr, count); break;
        case State::CannotSay: parts << YardView::tr("%n that must be weighed again", nullptr, count); break;
        }
    }
    if (plan.waiting > 0) parts << YardView::tr("%n being worked out", nullptr, plan.waiting);
    if (all == 0) return YardView::tr("No colony stands in this yard yet.");
    return (all == 1 ? YardView::tr("One colony: %1.") : YardView::tr("%n colonies: %1.", nullptr, all)).arg(parts.join(QStringLiteral(", ")));
}

QString yardSmallLine(const YardPlan& plan) {
    if (plan.totals.lastSyrupDay && plan.totals.sugar - plan.totals.sugarOnceCombsMoved > Mass(0.05))
        return YardView::tr("Buy %1 of white sugar once the combs have moved, %2 if they stay; the last syrup must be taken by %3. Feed in the evening, all that are due on a day the same evening.")
            .arg(words::kilograms(plan.totals.sugarOnceCombsMoved), words::kilograms(plan.totals.sugar), words::date(*plan.totals.lastSyrupDay));
    if (plan.totals.lastSyrupDay)
        return YardView::tr("Buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.")
            .arg(words::kilograms(plan.totals.sugar), words::date(*plan.totals.lastSyrupDay));
    return {};
}

QString giftWords(const advice::CombGift& gift) {
    const auto combs = static_cast<int>(gift.combs.size());
    const QString said = combs == 1 ? YardView::tr("one comb (%1) from %2 to %3")
                                     : YardView::tr("%n combs (%1) from %2 to %3", nullptr, combs);
    return said.arg(words::kilograms(gift.honey), QString::fromStdString(gift.from), QString::fromStdString(gift.to));
}

QString costWords(const book::Yard& yard, Mass sugar) {
    const int bags = yard.bag && *yard.bag > Mass(0) ? static_cast<int>(std::ceil(sugar.value() / yard.bag->value() - 1e-9)) : 0;
    const QString held = yard.bag ? words::kilograms(*yard.bag) : QString();
    const QString cost = yard.sugarPricePerKg ? QStringLiteral("%1\u00a0%2").arg(QLocale().toString(sugar.value() * *yard.sugarPricePerKg, 'f', 2), QString::fromStdString(yard.currency.value_or(""))) : QString();
    if (bags == 0 && cost.isEmpty()) return {};
    if (bags == 0) return YardView::tr("costs %1").arg(cost);
    const QString said = bags == 1 ? YardView::tr("one bag of %1").arg(held) : YardView::tr("%n bags of %1", nullptr, bags).arg(held);
    return cost.isEmpty() ? said : YardView::tr("%1; the sugar itself costs %2").arg(said, cost);
}

YardView::YardView(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard), model_(new JobTableModel(this)) {
    answer_ = new AnswerPanel(this);
    place_ = new PlacePage(yard_, this);
    pages_ = new QTabWidget(this);
    pages_->setAccessibleName(tr("Pages of the yard"));
    pages_->addTab(buildPlan(), tr("&Plan"));
    pages_->addTab(withRoom(place_, pages_), tr("P&lace"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(12);
    layout->addWidget(answer_);
    layout->addWidget(pages_, 1);
    connect(table_, &QTableView::activated, this, [this](const QModelIndex& index) {
        emit colonyChosen(model_->jobs()[static_cast<std::size_t>(index.row())].id);
    });
    soon_ = new QTimer(this);
    soon_->setSingleShot(true);
    connect(soon_, &QTimer::timeout, this, &YardView::refresh);
    connect(yard_, &Yard::coloniesChanged, this, [this] {
        stale_ = true;
        if (isVisible()) refresh();
    });
    connect(yard_, &Yard::answerChanged, this, &YardView::refreshSoon);
    connect(yard_, &Yard::visitsChanged, this, &YardView::refreshSoon);
    connect(yard_, &Yard::followedChanged, this, &YardView::refreshSoon);
    refresh();
}

// Many answers may come after each other; the plan is added up once for all of them, and only while it is looked at.
void YardView::refreshSoon() {
    stale_ = true;
    if (!isVisible() || soon_->isActive()) return;
    const bool lately = refreshed_.isValid() && refreshed_.elapsed() < restMilliseconds;
    soon_->start(lately ? restMilliseconds : 0);
}

void YardView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

QWidget* YardView::buildPlan() {
    auto* plan = new QWidget(this);
    table_ = new JobTable(plan, model_, true, tr("Everything to do, by day"));
    full_ = new QWidget(plan);
    auto* full = new QVBoxLayout(full_);
    full->setContentsMargins(0, 0, 0, 0);
    full->setSpacing(10);
    full->addWidget(buildTotals());
    full->addWidget(table_, 1);
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
    hint->setText(tr("\u201cAdvised\u201d is what today's answers ask for; \u201cMake it the plan\u201d on a colony's page makes it yours. Enter on a row opens its colony."));
    made_ = new QPushButton(tr("Visit &made"), row);
    skip_ = new QPushButton(tr("S&kip the visit"), row);
    across->addWidget(hint, 1);
    for (auto* button : {made_, skip_}) across->addWidget(button);
    connect(made_, &QPushButton::clicked, this, [this] {
        if (const auto* job = chosenVisit()) yard_->apply(book::SingleEdit(madeOnItsDay(*job->visit, *job->date, yard_->asOf())));
    });
    connect(skip_, &QPushButton::clicked, this, [this] {
        if (const auto* job = chosenVisit()) yard_->apply(book::SingleEdit(book::SkipVisit{*job->visit}));
    });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &YardView::fitVisitButtons);
    connect(model_, &QAbstractItemModel::modelReset, this, &YardView::fitVisitButtons, Qt::QueuedConnection);
    fitVisitButtons();
    return row;
}

const PlannedJob* YardView::chosenVisit() const {
    const int row = table_->currentIndex().row();
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
    auto* words = plainLabel(empty_, tr("The yard is empty. Add a colony: its name and the hive it lives in. Then write down one look \u2013 which combs hold honey, and how many the bees "
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
    auto* all = new QWidget(this);
    auto* across = new QHBoxLayout(all);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(12);
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
        across->addWidget(card, 1);
        return std::pair(figure, more);
    };
    std::tie(sugar_, sugarElse_) = add(tr("White sugar to buy"));
    fondant_ = add(tr("Fondant to buy")).first;
    honey_ = add(tr("Honey that may come off")).first;
    gifts_ = add(tr("Combs to move before buying sugar")).first;
    QFont plain = font();
    gifts_->setFont(plain);
    return all;
}

void YardView::showTotals(const YardPlan& plan) {
    const bool combsSave = plan.totals.sugar - plan.totals.sugarOnceCombsMoved > Mass(0.05);
    sugar_->setText(plan.totals.sugar > Mass(0.05) ? words::kilograms(combsSave ? plan.totals.sugarOnceCombsMoved : plan.totals.sugar) : tr("none"));
    QStringList more;
    if (combsSave) more << tr("%1 if the combs stay").arg(words::kilograms(plan.totals.sugar));
    if (const auto* yard = yard_->shownYard(); yard && plan.totals.sugar > Mass(0.05)) more << costWords(*yard, combsSave ? plan.totals.sugarOnceCombsMoved : plan.totals.sugar);
    more.removeAll({});
    sugarElse_->setVisible(!more.isEmpty());
    sugarElse_->setText(more.join(QLatin1Char('\n')));
    fondant_->setText(plan.totals.fondant > Mass(0.05) ? words::kilograms(plan.totals.fondant) : tr("none"));
    honey_->setText(plan.totals.honey > Mass(0.05) ? tr("up to %1").arg(words::kilograms(plan.totals.honey)) : tr("none"));
    QStringList gifts;
    for (const auto& gift : plan.gifts) gifts << giftWords(gift);
    if (plan.waiting > 0) gifts_->setText(QStringLiteral("\u2026"));
    else gifts_->setText(gifts.isEmpty() ? tr("none") : gifts.join(QLatin1Char('\n')));
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
