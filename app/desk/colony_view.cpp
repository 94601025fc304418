// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/colony_view.h"

#include "answer/acceptance.h"
#include "combs/comb_drawing.h"
#include "desk/what_if_runner.h"
#include "dialogs/grounds_popup.h"
#include "fields/fields.h"
#include "models/ask_answers.h"
#include "models/colony_edits.h"
#include "models/job_table_model.h"
#include "models/words.h"
#include "pages/answer_panel.h"
#include "pages/comb_table_page.h"
#include "pages/feeding_page.h"
#include "pages/follow_panel.h"
#include "pages/look_page.h"
#include "pages/next_entry.h"
#include "pages/picture_panel.h"
#include "pages/scale_page.h"
#include "pages/story_page.h"
#include "pages/what_if_page.h"
#include "series/use_parts.h"
#include "theme/least_height.h"

#include <QPushButton>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int leastPageLines = 16; // a lower page shows too little; the whole is scrolled instead

} // namespace

ColonyView::ColonyView(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    answer_ = new AnswerPanel(this);
    next_ = new NextEntry(this);
    picture_ = new PicturePanel(this);
    pages_ = new QTabWidget(this);
    pages_->setAccessibleName(tr("Pages of the colony"));
    pages_->setDocumentMode(false);
    look_ = new LookPage(yard_, pages_);
    combTable_ = new CombTablePage(yard_, pages_);
    feeding_ = new FeedingPage(yard_, pages_);
    scale_ = new ScalePage(yard_, pages_);
    story_ = new StoryPage(yard_, pages_);
    whatIf_ = new WhatIfPage(yard_, pages_);
    const auto addPage = [this](ColonyPage page, QWidget* widget, const QString& words) {
        pages_->insertTab(static_cast<int>(page), widget, words);
    };
    addPage(ColonyPage::Hive, withRoom(look_, pages_), tr("&In the hive"));
    addPage(ColonyPage::Combs, combTable_, {});
    addPage(ColonyPage::Feeding, withRoom(feeding_, pages_), tr("&Feeding"));
    addPage(ColonyPage::Scale, withRoom(scale_, pages_), tr("On the &scale"));
    addPage(ColonyPage::Story, story_, tr("S&tory"));
    addPage(ColonyPage::WhatIf, withRoom(whatIf_, pages_), tr("Wh&at if"));

    nameCombs(nullptr);

    halves_ = new QSplitter(Qt::Vertical, this);
    halves_->setChildrenCollapsible(false);
    halves_->setHandleWidth(12);
    halves_->addWidget(picture_);
    halves_->addWidget(pages_);
    halves_->setStretchFactor(0, 2);
    halves_->setStretchFactor(1, 3);
    halves_->setSizes({250, 400});
    pages_->setMinimumHeight(leastPageLines * fontMetrics().height());
    auto* all = new LeastHeight(this);
    auto* down = new QVBoxLayout(all);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(10);
    down->addWidget(answer_);
    down->addWidget(next_);
    down->addWidget(halves_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(withRoom(all, this));

    connectPages();
    connectNext();
}

ColonyView::~ColonyView() = default;

void ColonyView::showPage(ColonyPage page) { pages_->setCurrentIndex(static_cast<int>(page)); }

void ColonyView::showFollowed() {
    showAnswer();
    whatIf_->show(colony_); // nothing can be tried on a winter under way
}

void ColonyView::connectPages() {
    connect(answer_, &AnswerPanel::whyAsked, this, [this] { emit whyAsked(colony_); });
    connect(answer_, &AnswerPanel::planAsked, this, &ColonyView::acceptAdvice);
    connect(answer_, &AnswerPanel::numberAsked, this, &ColonyView::explainNumber);
    connect(answer_, &AnswerPanel::askAnswered, this,
            [this](advice::AskKind kind, double value) { answerAsked(*yard_, colony_, kind, value); });
    connect(look_, &LookPage::numberAsked, this, &ColonyView::explainNumber);
    connect(feeding_, &FeedingPage::numberAsked, this, &ColonyView::explainNumber);
    connect(scale_->followed(), &FollowPanel::numberAsked, this, &ColonyView::explainNumber);
    connect(look_, &LookPage::combChosen, combTable_, &CombTablePage::chooseComb);
    connect(combTable_, &CombTablePage::combChosen, look_->drawing(), &CombDrawing::choose);
    connect(whatIf_, &WhatIfPage::tried, picture_, &PicturePanel::tryOut);
    connect(whatIf_, &WhatIfPage::demandWished, this, [this](int position, const book::ColonyCase& record) {
        if (runner_) runner_->ask(position, record);
    });
    connect(whatIf_, &WhatIfPage::demandDropped, this, [this] {
        if (runner_) runner_->cancel();
    });
    connect(whatIf_, &WhatIfPage::wintersWanted, this, [this] { emit wintersWanted(colony_); });
    yard_->onColony(this, colony_, {YardChange::Record, YardChange::Answer}, &ColonyView::refresh);
    yard_->onChange(this, {YardChange::Visits, YardChange::Plan}, &ColonyView::showAnswer);
    yard_->onColony(this, colony_, {YardChange::Followed}, &ColonyView::showFollowed);
}

void ColonyView::useAdviser(std::shared_ptr<const Adviser> adviser) {
    runner_ = std::make_unique<WhatIfRunner>(std::move(adviser));
    connect(runner_.get(), &WhatIfRunner::previewed, whatIf_,
            [this](const AnsweredPointer& answered) { whatIf_->takeAnswer(answered, true); });
    connect(runner_.get(), &WhatIfRunner::answered, whatIf_,
            [this](const AnsweredPointer& answered) { whatIf_->takeAnswer(answered, false); });
    connect(runner_.get(), &WhatIfRunner::contradicted, whatIf_, &WhatIfPage::takeProblems);
}

bool ColonyView::idle() const { return !runner_ || runner_->idle(); }

book::AcceptAdvice ColonyView::acceptance(const ColonyEntry& colony) const {
    const auto& answered = *colony.answered;
    return answer::acceptanceOf(colony_, answered.record, answered.question, answered.answer.advice,
                                *yard_->book()->reference(), words::style());
}

// Written out, an answer is long: that is done only where something was acted on that day.
bool ColonyView::isActedOn(const ColonyEntry& colony) const {
    const auto* records = yard_->records(colony_);
    if (!records || !colony.answered || colony.pending || yard_->awaitsPlan()) return false;
    const auto thatDay = [&](const book::ActedAdvice& kept) { return kept.date == colony.answered->record.asOf; };
    return std::any_of(records->advices.begin(), records->advices.end(), thatDay) &&
           isPlan(acceptance(colony), *records);
}

// The advice as it stands in the plan of the yard is kept in the book with all it was computed from, its visits planned.
void ColonyView::acceptAdvice() {
    const auto* colony = yard_->find(colony_);
    if (!colony || !colony->answered || colony->pending || yard_->awaitsPlan() || !yard_->writable()) return;
    const auto* records = yard_->records(colony_);
    if (!records) return;
    yard_->apply(
        planInstead(acceptance(*colony), *records, colony->record.asOf), [this](const Outcome<BookChange>& made) {
            if (made.ok())
                emit noticeGiven(tr(
                    "This advice is the plan now: its visits stand on the page Feeding, to be ticked off or skipped."));
        });
}

// A winter that is followed has numbers of its own; all others are of autumn's question.
std::optional<text::Grounds> ColonyView::groundsShown(text::AskedNumber number) const {
    const auto* colony = yard_->find(colony_);
    const auto reference = yard_->book() ? yard_->book()->reference() : nullptr;
    if (!colony || !reference) return std::nullopt;
    if (number == text::AskedNumber::Comb) return groundsOfChosenComb();
    const auto followed = yard_->followed(colony_);
    if (followed && followed->following)
        if (auto grounds = text::groundsOf(number, *followed->colony.question, *followed->following, *reference,
                                           words::styleOf(followed->colony.autumn)))
            return grounds;
    if (!colony->answered) return std::nullopt;
    const auto& answered = *colony->answered;
    return text::groundsOf(
        number,
        {answered.question, answered.answer.advice, usePartsOf(answered.picture, answered.answer.advice.season)},
        *reference, words::styleOf(answered.question));
}

std::optional<text::Grounds> ColonyView::groundsOfChosenComb() const {
    const auto& combs = look_->drawing()->combs();
    const int chosen = look_->drawing()->chosen();
    if (chosen < 0 || chosen >= static_cast<int>(combs.size())) return std::nullopt;
    const auto& comb = combs[static_cast<std::size_t>(chosen)];
    return text::groundsOfComb(comb.name, comb.kilograms, storesComb(comb), comb.openFactor, comb.spreads,
                               words::style());
}

void ColonyView::explainNumber(text::AskedNumber number, QPoint under) {
    const auto grounds = groundsShown(number);
    if (!grounds) return;
    if (!grounds_) grounds_ = new GroundsPopup(this);
    grounds_->show(*grounds, *yard_->book()->reference(), under);
}

void ColonyView::show(ColonyId id) {
    colony_ = id;
    look_->show(id);
    combTable_->show(id);
    feeding_->show(id);
    scale_->show(id);
    story_->show(id);
    refresh();
}

int ColonyView::visitsOpen() const {
    const auto* records = yard_->records(colony_);
    const auto day = yard_->asOf();
    if (!records || !day) return 0;
    return static_cast<int>(
        std::count_if(records->visits.begin(), records->visits.end(), [&](const book::PlannedVisit& visit) {
            return visit.state == book::VisitState::Planned && visit.date < *day;
        }));
}

// Visits still to come, or why they are not to be made.
QString ColonyView::comingWords(const ColonyEntry& colony, const FollowedWinter* leading) const {
    const auto coming = static_cast<int>(
        std::count_if(colony.visits.begin(), colony.visits.end(),
                      [&](const book::PlannedVisit& visit) { return visit.date >= colony.record.asOf; }));
    if (coming == 0 || (!leading && colony.pending)) return {};
    if (const auto forbidden = forbiddenOf(colony, leading))
        return tr("The visits of your plan are not to be made now: %1.").arg(noFeedWords(*forbidden));
    return tr("%n visits of your plan are still to come (page Feeding).", nullptr, coming);
}

// A winter that is followed gives its own answer.
void ColonyView::showAnswer() {
    const auto* colony = yard_->find(colony_);
    if (!colony) return;
    answer_->offerPlan({.offered = yard_->writable(),
                        .inPlan = !yard_->awaitsPlan(),
                        .actedOn = yard_->writable() && isActedOn(*colony)},
                       yard_->writable() ? &*yard_->book()->reference() : nullptr);
    const auto leading = yard_->leading(colony_);
    if (leading) answer_->show(*leading);
    else if (yard_->awaitsFollowing(colony_)) answer_->showFollowing();
    else answer_->show(*colony);
    if (const int open = visitsOpen(); open > 0)
        answer_->remind(tr(
            "%n planned visits are past and neither ticked off nor skipped (page Feeding); until then they count as not made.",
            nullptr, open));
    answer_->remind(comingWords(*colony, leading.get()));
    next_->show(*colony, yard_->writable() && !leading, yard_->book() ? yard_->book()->reference().get() : nullptr);
    picture_->setVisible(pictureWanted_ && !pictureIsEmpty(*colony, leading != nullptr));
}

// The picture of a followed winter is on the page "On the scale"; one without winters would be an empty frame.
bool ColonyView::pictureIsEmpty(const ColonyEntry& colony, bool followed) const {
    if (colony.answered && !colony.pending) return colony.answered->picture.empty();
    return !followed && NextEntry::lacks(colony);
}

// What is entered there is entered as on the page of the look.
void ColonyView::connectNext() {
    connect(next_->bees(), &BeesField::valueEntered, look_->bees(), &BeesField::valueEntered);
    connect(next_->weighing(), &WeighingField::weighed, look_->weighing(), &WeighingField::weighed);
    connect(next_->combsButton(), &QPushButton::clicked, this, [this] {
        showPage(ColonyPage::Hive);
        look_->newLookButton()->click();
    });
    connect(next_, &NextEntry::left, this, &ColonyView::showAnswer);
    connect(next_, &NextEntry::askAnswered, this,
            [this](advice::AskKind kind, double value) { answerAsked(*yard_, colony_, kind, value); });
}

void ColonyView::beginFirstLook() {
    showPage(ColonyPage::Hive);
    if (next_->isVisible()) next_->focusFirst();
    else look_->newLookButton()->setFocus();
}

void ColonyView::wantPicture(bool wanted) {
    pictureWanted_ = wanted;
    showAnswer();
}

void ColonyView::nameCombs(const AnsweredColony* colony) {
    pages_->setTabText(static_cast<int>(ColonyPage::Combs), words::worded(tr("%{Comb} b&y %{comb}"), colony));
}

void ColonyView::refresh() {
    const auto* colony = yard_->find(colony_);
    if (!colony) return;
    nameCombs(colony->answered.get());
    showAnswer();
    picture_->show(*colony);
    whatIf_->show(colony_); // what is tried goes on over the new answer
}

} // namespace winterlarder::desk
