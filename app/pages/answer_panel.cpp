// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/answer_panel.h"

#include "models/problem_words.h"
#include "models/words.h"
#include "pages/ask_row.h"
#include "text/follow_words.h"
#include "theme/card.h"
#include "theme/colours.h"
#include "theme/icons.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

constexpr int iconSize = 26;

} // namespace

AnswerPanel::AnswerPanel(QWidget* parent) : QWidget(parent) {
    icon_ = plainLabel(this);
    icon_->setAccessibleName(tr("Verdict"));
    sentence_ = new AskableLabel(this);
    sentence_->setAccessibleDescription(tr("Answer"));
    target_ = quietAskable(this);
    target_->setAccessibleDescription(tr("What to winter on"));
    look_ = quietAskable(this);
    look_->setAccessibleDescription(tr("Another look"));
    risk_ = quietAskable(this);
    ask_ = new AskRow(this);
    connect(ask_, &AskRow::answered, this, &AnswerPanel::askAnswered);
    for (auto* label : {sentence_, target_, risk_, look_})
        connect(label, &AskableLabel::numberClicked, this, &AnswerPanel::numberAsked);
    why_ = new QPushButton(tr("&Why?"), this);
    why_->setAccessibleName(tr("Why? Reasons and cautions with their sources"));
    connect(why_, &QPushButton::clicked, this, &AnswerPanel::whyAsked);
    plan_ = new QPushButton(tr("Make it the &plan"), this);
    plan_->setProperty("accent", true);
    for (QWidget* each : std::initializer_list<QWidget*>{icon_, target_, look_, why_, plan_})
        each->hide(); // until there is an answer
    icon_->setFixedSize(iconSize, iconSize);
    connect(plan_, &QPushButton::clicked, this, &AnswerPanel::planAsked);
    auto* buttons = new QVBoxLayout;
    buttons->addWidget(why_);
    buttons->addWidget(plan_);
    buttons->addStretch(1);

    auto* words = new QVBoxLayout;
    words->setSpacing(3);
    words->addWidget(sentence_);
    words->addWidget(target_);
    words->addWidget(look_);
    words->addWidget(risk_);
    words->addWidget(ask_);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(2, 2, 2, 2);
    across->setSpacing(12);
    across->addWidget(icon_, 0, Qt::AlignTop);
    across->addLayout(words, 1);
    across->addLayout(buttons);
    enlarge();
}

void AnswerPanel::enlarge() {
    QFont big = font();
    big.setPointSizeF(big.pointSizeF() * 1.45);
    big.setBold(true);
    sentence_->setFont(big);
}

void AnswerPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) enlarge();
    if ((event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) && !iconName_.isEmpty())
        icon_->setPixmap(drawnIcon(iconName_, coloursOf(*this).text, iconSize, devicePixelRatioF()));
}

void AnswerPanel::offerPlan(PlanState state, const ReferenceData* reference) {
    planState_ = state;
    reference_ = reference;
}

// Once pressed it says that this is done, till the advice becomes another or the step is undone.
void AnswerPanel::showPlanButton(const AnsweredColony& answered) {
    const auto& [offered, inPlan, actedOn] = planState_;
    plan_->setText(actedOn ? tr("\u2713 It is the plan") : tr("Make it the &plan"));
    plan_->setEnabled(inPlan && !actedOn);
    plan_->setToolTip(actedOn  ? tr("Its visits stand on the page Feeding; Undo takes it back")
                      : inPlan ? tr("Keeps this advice in the book with all it was computed from, and plans its visits")
                               : tr("The plan of the yard is still being worked out; it may change this advice"));
    plan_->setVisible(offered && answered.answer.advice.verdict != advice::Verdict::CannotSay);
}

void AnswerPanel::remind(const QString& text) {
    if (text.isEmpty()) return;
    sayOfLook(lookSaid_.isEmpty() ? text : lookSaid_ + QLatin1Char('\n') + text);
    updateGeometry();
}

void AnswerPanel::show(const ColonyEntry& colony) {
    if (!colony.problems.empty()) {
        say(isOurs(colony.problems) ? tr("This could not be worked out.")
                                    : tr("These records disagree; put one of them right."),
            problemWords(colony.problems));
        return;
    }
    if (!colony.answered || colony.pending) {
        if (isVisible()) setMinimumHeight(height()); // till the answer is there: the window below does not jump
        say(tr("Working it out\u2026"), tr("The winters are being simulated from what you have written."));
        return;
    }
    setMinimumHeight(0);
    const auto& answered = *colony.answered;
    why_->setEnabled(true);
    showIcon(words::iconName(answered.answer.advice.verdict), words::verdictName(answered.answer.advice.verdict));
    why_->show();
    showPlanButton(answered);
    sentence_->say(words::answerSentence(answered, text::askably));
    sayOfTarget(words::targetLine(answered, text::askably));
    saySmall(words::riskLine(answered, text::askably), tr("Chances"));
    sayOfLook(words::lookLine(answered, text::askably));
    ask_->show(planState_.offered ? answered.answer.advice.ask : std::nullopt, reference_);
    orderTabs();
    updateGeometry();
}

void AnswerPanel::showFollowing() {
    say(tr("Working it out\u2026"), tr("How this winter goes is being worked out from what was weighed and seen."));
}

void AnswerPanel::showIcon(const QString& name, const QString& meaning) {
    iconName_ = name;
    icon_->setPixmap(drawnIcon(iconName_, coloursOf(*this).text, iconSize, devicePixelRatioF()));
    icon_->setAccessibleDescription(meaning);
    icon_->show();
}

void AnswerPanel::show(const FollowedWinter& followed) {
    const auto& q = *followed.colony.question;
    const auto& f = *followed.following;
    const auto style = words::styleOf(followed.colony.autumn);
    setMinimumHeight(0);
    plan_->hide();
    why_->setEnabled(true);
    why_->show();
    showIcon(words::iconName(words::likeness(f.state)), text::followState(f.state));
    sayOfTarget({});
    ask_->show({}, nullptr);
    sentence_->say(text::followHeadline(q, f, style, text::askably));
    saySmall(text::followRisk(q, f, style, text::askably), tr("Chances"));
    sayOfLook(text::followNext(q, f, style, text::askably));
    updateGeometry();
}

// The place is kept while the next answer is computed, so that the window does not jump.
void AnswerPanel::say(const QString& sentence, const QString& small) {
    icon_->clear();
    icon_->setAccessibleDescription({});
    iconName_.clear();
    why_->setEnabled(false);
    plan_->setEnabled(false);
    sentence_->say(sentence);
    saySmall(small, {});
    lookSaid_.clear();
    look_->say({}); // what belongs to an answer keeps its place
    target_->say({});
}

// The answers are made anew with every question: Tab comes to them where they are read.
void AnswerPanel::orderTabs() {
    QWidget* before = risk_;
    for (auto* answer : ask_->answers()) {
        setTabOrder(before, answer);
        before = answer;
    }
    setTabOrder(before, why_);
    setTabOrder(why_, plan_);
}

void AnswerPanel::sayOfTarget(const QString& words) {
    target_->say(words);
    target_->setVisible(!words.isEmpty());
}

void AnswerPanel::sayOfLook(const QString& words) {
    lookSaid_ = words;
    look_->say(words);
    look_->setVisible(!words.isEmpty());
}

void AnswerPanel::saySmall(const QString& words, const QString& what) {
    risk_->say(words);
    risk_->setAccessibleDescription(what);
    risk_->setVisible(!words.isEmpty());
}

} // namespace winterlarder::desk
