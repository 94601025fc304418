// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/what_if_page.h"

#include "answer/acceptance.h"
#include "fields/fields.h"
#include "models/colony_edits.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "pages/feeding_page.h"
#include "theme/card.h"
#include "theme/columns.h"

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QEvent>
#include <QGridLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int stepsPerUnit = 10; // a slider moves by a tenth

double mostAmount() { return valueIn(kilograms(25), words::shownMass()); }

Mass massIn(const QDoubleSpinBox* field) { return massOf(field->value(), words::shownMass()); }

} // namespace

WhatIfPage::WhatIfPage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    auto* lead = quietLabel(this);
    lead->setText(tr(
        "Move a slider: the picture above and the chances here follow. Nothing is written down until you make it the plan."));
    chances_ = plainLabel(this);
    chances_->setWordWrap(true);
    chances_->setAccessibleDescription(tr("Chances of what is tried"));
    recipe_ = quietLabel(this);
    state_ = quietLabel(this);
    state_->setAccessibleDescription(tr("State of the reckoning"));
    plan_ = new QPushButton(tr("Ma&ke this the plan"), this);
    plan_->setProperty("accent", true);
    back_ = new QPushButton(tr("Back t&o what is"), this);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(plan_);
    buttons->addWidget(back_);
    buttons->addStretch(1);
    auto* left = new QVBoxLayout;
    left->setSpacing(10);
    left->addWidget(lead);
    left->addLayout(buildAmounts());
    left->addLayout(buildDemand());
    left->addStretch(1);
    auto* right = new QVBoxLayout;
    right->setSpacing(10);
    for (QWidget* each : std::initializer_list<QWidget*>{chances_, recipe_, state_}) right->addWidget(each);
    right->addStretch(1);
    right->addLayout(buttons);
    columns_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
    columns_->setContentsMargins(16, 12, 16, 10);
    columns_->setSpacing(24);
    columns_->addLayout(left, 1);
    columns_->addLayout(right, 1);
    connectFields();
}

void WhatIfPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (besideWhereRoom(*columns_, width())) updateGeometry();
}

QSize WhatIfPage::minimumSizeHint() const { return leastOfColumns(*columns_); }

QWidget* WhatIfPage::sliderWith(QDoubleSpinBox* number, const QString& name) {
    auto* slider = new QSlider(Qt::Horizontal, this);
    slider->setRange(0, static_cast<int>(number->maximum() * stepsPerUnit));
    setTabOrder(slider, number);
    sliders_[number] = slider;
    slider->setAccessibleName(tr("Slider: %1").arg(name));
    connect(slider, &QSlider::valueChanged, number,
            [number](int value) { number->setValue(static_cast<double>(value) / stepsPerUnit); });
    connect(number, &QDoubleSpinBox::valueChanged, slider, [slider](double value) {
        const QSignalBlocker quiet(slider);
        slider->setValue(static_cast<int>(value * stepsPerUnit + 0.5));
    });
    return slider;
}

QWidget* WhatIfPage::sliderWith(QSpinBox* number, const QString& name) {
    auto* slider = new QSlider(Qt::Horizontal, this);
    setTabOrder(slider, number);
    slider->setRange(number->minimum(), number->maximum());
    slider->setAccessibleName(tr("Slider: %1").arg(name));
    connect(slider, &QSlider::valueChanged, number, &QSpinBox::setValue);
    connect(number, &QSpinBox::valueChanged, slider, &QSlider::setValue);
    return slider;
}

QLayout* WhatIfPage::buildAmounts() {
    auto* grid = new QGridLayout;
    grid->setColumnMinimumWidth(0, fontMetrics().averageCharWidth() * 24);
    const auto add = [&](int row, const QString& words) {
        auto* field = numberField(this, words, 0, mostAmount(), 0.5, 1, words::name(words::shownMass()));
        field->setKeyboardTracking(true);
        auto* label = plainLabel(this, words);
        label->setBuddy(field);
        grid->addWidget(label, row, 0);
        grid->addWidget(sliderWith(field, words), row, 1);
        grid->addWidget(field, row, 2);
        return field;
    };
    take_ = add(0, tr("take off now"));
    sugar_ = add(1, tr("feed sugar"));
    return grid;
}

QLayout* WhatIfPage::buildDemand() {
    auto* grid = new QGridLayout;
    grid->setColumnMinimumWidth(0, fontMetrics().averageCharWidth() * 24);
    const auto add = [&](int row, const QString& words, int least, int most, const QString& unit) {
        auto* field = new QSpinBox(this);
        field->setRange(least, most);
        field->setSuffix(unit);
        field->setAccessibleName(words);
        auto* label = plainLabel(this, words);
        label->setBuddy(field);
        grid->addWidget(label, row, 0);
        grid->addWidget(sliderWith(field, words), row, 1);
        grid->addWidget(field, row, 2);
        return field;
    };
    bees_ = add(0, tr("more or fewer bees"), -10, 10, tr(" %"));
    forage_ = add(1, tr("forage comes later by"), 0, 21, tr(" days"));
    wrapped_ = new QCheckBox(tr("the hive is wrappe&d"), this);
    grid->addWidget(wrapped_, 2, 0, 1, 3);
    return grid;
}

void WhatIfPage::connectFields() {
    for (auto* field : {take_, sugar_}) connect(field, &QDoubleSpinBox::valueChanged, this, &WhatIfPage::readAmounts);
    for (auto* field : {bees_, forage_}) connect(field, &QSpinBox::valueChanged, this, &WhatIfPage::readDemand);
    connect(wrapped_, &QCheckBox::toggled, this, &WhatIfPage::readDemand);
    connect(plan_, &QPushButton::clicked, this, &WhatIfPage::makePlan);
    connect(back_, &QPushButton::clicked, this, &WhatIfPage::reset);
    yard_->onColony(this, colony_, {YardChange::Record, YardChange::Answer}, &WhatIfPage::refresh);
}

void WhatIfPage::show(ColonyId id) {
    if (colony_ != id) reset();
    colony_ = id;
    refresh();
}

// Amounts in the units chosen; what was tried is begun anew.
void WhatIfPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LocaleChange) return;
    reset();
    for (auto* field : {take_, sugar_}) {
        field->setMaximum(mostAmount());
        field->setSuffix(QLatin1Char(' ') + words::name(words::shownMass()));
        sliders_.at(field)->setMaximum(static_cast<int>(mostAmount() * stepsPerUnit));
    }
}

QString WhatIfPage::said() const { return chances_->text(); }

void WhatIfPage::reset() {
    own_.reset();
    if (whatIf_ == WhatIf{}) return refresh();
    const bool demand = whatIf_.changesDemand();
    whatIf_ = {};
    for (QObject* field : std::initializer_list<QObject*>{take_, sugar_, bees_, forage_, wrapped_})
        field->blockSignals(true);
    for (auto* field : {take_, sugar_}) field->setValue(0);
    for (auto* field : {bees_, forage_}) field->setValue(0);
    wrapped_->setChecked(false);
    for (QObject* field : std::initializer_list<QObject*>{take_, sugar_, bees_, forage_, wrapped_})
        field->blockSignals(false);
    for (auto* slider : findChildren<QSlider*>()) slider->setValue(0);
    if (demand) emit demandDropped();
    emit tried(nullptr, {});
    refresh();
}

void WhatIfPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

// The autumn's question has no winters to try anything on any more.
bool WhatIfPage::isUnderWay() const {
    const auto* colony = yard_->find(colony_);
    return colony && colony->answered && colony->answered->picture.empty() && yard_->leading(colony_);
}

// The records or their answer changed: what is tried stands on the new ones. Where nothing is tried and nobody looks it waits.
void WhatIfPage::refresh() {
    stale_ = !isVisible() && whatIf_ == WhatIf{};
    if (stale_) return;
    const auto* colony = yard_->find(colony_);
    const bool known = colony && colony->answered && !colony->pending && yard_->book() && yard_->book()->reference();
    setEnabled(known && !isUnderWay());
    if (!known || colony->answered == own_) return tryOut();
    own_ = colony->answered;
    ownTrials_ = Trials::of(own_, yard_->book()->reference()->constants);
    trials_ = ownTrials_;
    if (!ownTrials_ && !own_->picture.empty()) emit wintersWanted();
    if (whatIf_.changesDemand()) readDemand();
    else tryOut();
}

void WhatIfPage::readAmounts() {
    whatIf_.take = massIn(take_);
    whatIf_.sugar = massIn(sugar_);
    if (stale_) refresh();
    else tryOut();
}

void WhatIfPage::readDemand() {
    whatIf_.wrapped = wrapped_->isChecked();
    whatIf_.beesPercent = bees_->value();
    whatIf_.forageDaysLater = forage_->value();
    if (stale_) return refresh();
    const auto* colony = yard_->find(colony_);
    if (!own_ || !colony) return;
    if (!whatIf_.changesDemand()) {
        emit demandDropped();
        preview_ = false;
        trials_ = ownTrials_;
        return tryOut();
    }
    wished_ = caseWith(own_->record, own_->question, whatIf_);
    state_->setText(tr("Simulating these winters\u2026"));
    plan_->setEnabled(false);
    emit demandWished(yard_->position(colony_), *wished_);
}

void WhatIfPage::takeAnswer(const AnsweredPointer& answered, bool preview) {
    if (!answered || !whatIf_.changesDemand() || !(answered->record == wished_)) return;
    preview_ = preview;
    trials_ = Trials::of(answered, yard_->book()->reference()->constants);
    tryOut();
}

void WhatIfPage::takeProblems(const Problems& problems) {
    if (!problems.empty()) state_->setText(problemWords(problems.front()));
}

void WhatIfPage::tryOut() {
    trial_.reset();
    const bool any = whatIf_.changesAmounts() || whatIf_.changesDemand();
    back_->setEnabled(any);
    plan_->setEnabled(false);
    if (!trials_ || !isEnabled()) {
        const bool soon = isEnabled() && own_ && !own_->picture.empty();
        chances_->setText(
            soon ? tr("Simulating the winters\u2026")
            : isUnderWay()
                ? tr("What can be tried is the autumn's question; this winter is under way. The page \u201cOn the scale\u201d says how it goes and what to do.")
                : tr("Nothing can be tried before there is an answer."));
        recipe_->clear();
        state_->clear();
        return;
    }
    trial_ = trials_->tryOut(whatIf_);
    say(*trial_);
    if (any)
        emit tried(trial_->picture, tr("Tried out over %1 winters; nothing of it is written down.")
                                        .arg(QLocale().toString(trial_->picture->winters)));
    else emit tried(nullptr, {});
    plan_->setEnabled(whatIf_.changesAmounts() && !preview_ && yard_->writable());
}

void WhatIfPage::say(const Trials::Trial& trial) {
    const auto& base = trials_->base();
    const auto& left = (own_ ? *own_ : base).answer.advice;
    const auto alone = std::find_if(left.options.begin(), left.options.end(),
                                    [](const auto& each) { return each.kind == advice::OptionKind::Leave; });
    if (alone == left.options.end()) return chances_->clear();
    chances_->setText(
        tr("As tried, %1 or more are left in %2 of 100 simulated winters, and in %3 the food runs out; left as it is, in %4, and in %5. About %6 would be left when spring forage starts.")
            .arg(words::wholeKilograms(base.answer.advice.reserve),
                 words::ofHundred(trial.option.touchReserve.others()), words::ofHundred(trial.option.runOut),
                 words::ofHundred(alone->touchReserve.others()), words::ofHundred(alone->runOut),
                 words::spread(trial.option.springReserve)));
    recipe_->setText(trial.plan ? recipeWords(*trial.plan) : QString());
    state_->setText(preview_ ? tr("A first sight over few winters; the full answer follows.") : QString());
}

// Demand that is only supposed does not become the plan; amounts do, over the winters they were tried on.
void WhatIfPage::makePlan() {
    if (!trial_ || !own_ || !yard_->book()) return;
    const auto& base = trials_->base();
    const auto advice = adviceOf(*trial_, base, whatIf_);
    const auto accepted =
        answer::acceptanceOf(colony_, base.record, base.question, advice, *yard_->book()->reference(), words::style());
    if (const auto* records = yard_->records(colony_)) yard_->apply(planInstead(accepted, *records, base.record.asOf));
    reset();
}

} // namespace winterlarder::desk
