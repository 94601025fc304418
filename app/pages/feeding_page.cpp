// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/feeding_page.h"

#include "forms/chosen_row.h"
#include "forms/entry_forms.h"
#include "forms/job_table.h"
#include "forms/record_list.h"
#include "guide/guide_link.h"
#include "models/colony_edits.h"
#include "models/words.h"
#include "models/yard_plan.h"
#include "text/follow_words.h"
#include "theme/card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

QString recipeWords(const feeding::FeedingPlan& plan, text::NumberForm form) {
    QStringList lines;
    if (plan.syrup.sugar > Mass(0.05))
        lines << FeedingPage::tr("%1 of white sugar into %2 of water: %3 of syrup, %4 by mass")
                     .arg(form(text::AskedNumber::Sugar, words::amount(plan.syrup.sugar)),
                          text::amount(plan.syrup.water, words::style()),
                          text::amount(plan.syrup.volume, words::style()), QString::fromStdString(plan.ratio.printed));
    if (plan.fondant > Mass(0.05))
        lines << FeedingPage::tr("%1 of fondant, touching the cluster")
                     .arg(form(text::AskedNumber::Fondant, words::amount(plan.fondant)));
    return lines.join(QLatin1Char('\n'));
}

QString ratioWords(const feeding::FeedingPlan& plan) {
    if (plan.syrup.sugar <= Mass(0.05)) return {};
    const QString days = QLocale().toString(plan.advised.warmDaysLeft), warm = words::temperature(celsius(15), 0);
    if (plan.advised.thin)
        return FeedingPage::
            tr("Thin enough to take quickly: %1 days with more than %2 at their warmest are usual before the last day, time to ripen it.")
                .arg(days, warm);
    return FeedingPage::
        tr("Thick, because only %1 days with more than %2 at their warmest are usual before the last day: less water to drive off.")
            .arg(days, warm);
}

QStringList limitWords(const feeding::FeedingPlan& plan, const Winter& winter, const text::WordStyle& told) {
    QStringList said;
    if (plan.lastDay && plan.syrup.sugar > Mass(0.05))
        said << FeedingPage::tr("Nothing liquid after %1: what is taken later no longer ripens.")
                    .arg(words::date(winter.date(*plan.lastDay)));
    const auto& limits = plan.limits;
    if (limits.roomFull)
        said << worded(
            FeedingPage::tr(
                "There is no empty comb for more: take a full %{comb} out, or add drawn comb, before feeding on."),
            told);
    if (limits.deadlinePassed) said << FeedingPage::tr("It is too late for syrup; fondant instead.");
    if (limits.tooSlow)
        said << FeedingPage::tr("So many bees cannot take all of it as syrup in time; the rest is given as fondant.");
    if (limits.afterAdvised) said << FeedingPage::tr("Part of it comes later than is best: begin at once.");
    if (limits.smallLotsOnly)
        said << FeedingPage::tr("Thick syrup in small portions of %1 might still be taken, but may stay open.")
                    .arg(words::litres(litres(1)));
    if (plan.crystallisingGPerKg > 1)
        said
            << FeedingPage::tr(
                   "On the coldest likely night up to %1 of 100 parts of the sugar may set as crystals: warm the syrup, give it in small portions.")
                   .arg(QLocale().toString(plan.crystallisingGPerKg / 10, 'f', 0));
    return said;
}

FeedingPage::FeedingPage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard), model_(new JobTableModel(this)) {
    auto* advised = buildAdvised();
    buildGiven();
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(16, 12, 14, 10);
    down->setSpacing(10);
    down->addWidget(advised, 3);
    down->addWidget(given_, 2);
    yard_->onColony(this, colony_, {YardChange::Record, YardChange::Answer, YardChange::Followed},
                    &FeedingPage::refresh);
    yard_->onChange(this, {YardChange::Visits}, &FeedingPage::refresh);
}

QWidget* FeedingPage::buildAdvised() {
    auto* advised = new QWidget(this);
    recipe_ = new AskableLabel(advised);
    recipe_->setAccessibleDescription(FeedingPage::tr("Recipe"));
    QFont big = font();
    big.setPointSizeF(big.pointSizeF() * 1.2);
    big.setBold(true);
    recipe_->setFont(big);
    why_ = quietAskable(advised);
    for (auto* label : {recipe_, why_}) connect(label, &AskableLabel::numberClicked, this, &FeedingPage::numberAsked);
    limits_ = plainLabel(advised);
    limits_->setWordWrap(true);
    auto* left = new QVBoxLayout;
    left->setSpacing(8);
    left->addWidget(recipe_);
    left->addWidget(why_);
    left->addWidget(limits_);
    left->addWidget(new GuideLink(this, yard_, text::GuidePage::Feeding), 0, Qt::AlignLeft);
    left->addStretch(1);
    visits_ = new JobTable(advised, model_, false, FeedingPage::tr("Visits, by day"));
    visits_->setMinimumHeight(fontMetrics().height() * 7);
    auto* across = new QHBoxLayout(advised);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(22);
    across->addLayout(left, 3);
    across->addWidget(visits_, 5);
    return advised;
}

void FeedingPage::buildGiven() {
    given_ = new RecordList(
        this, yard_, FeedingPage::tr("What was fed, and visits planned"), {book::Kind::Feed, book::Kind::PlannedVisit},
        FeedingPage::tr("Nothing was fed yet. What you give, and the visits of a plan you made yours, stand here."));
    given_->addButton(FeedingPage::tr("Fe&d\u2026"), [this] {
        askForFeed(this, yard_, {.colony = colony_, .feed = {.date = yard_->entryDay(), .ratio = ratioAdvised()}});
    });
    done_ = given_->addButton(FeedingPage::tr("Visit &made"), [this] { markDone(); });
    skip_ = given_->addButton(FeedingPage::tr("S&kip the visit"), [this] { skip(); });
    given_->setMinimumHeight(fontMetrics().height() * 9);
    onChosenRow(given_->table(), this, [this] {
        const auto visit = chosenVisit();
        const bool planned = visit && visit->state == book::VisitState::Planned && yard_->writable();
        done_->setEnabled(planned);
        skip_->setEnabled(planned);
    });
}

std::optional<std::string> FeedingPage::ratioAdvised() const {
    const auto* colony = yard_->find(colony_);
    if (!colony || !colony->answered || !colony->answered->answer.advice.feed) return std::nullopt;
    return colony->answered->answer.advice.feed->ratio.printed;
}

std::optional<book::PlannedVisit> FeedingPage::chosenVisit() const {
    const auto* records = yard_->records(colony_);
    const auto* row = given_->chosen();
    if (!records || !row || row->kind != book::Kind::PlannedVisit) return std::nullopt;
    for (const auto& visit : records->visits)
        if (visit.id.number == row->id) return visit;
    return std::nullopt;
}

void FeedingPage::markDone() {
    const auto visit = chosenVisit();
    if (visit) yard_->apply(book::SingleEdit(madeOnItsDay(visit->id, visit->date, yard_->asOf())));
}

void FeedingPage::skip() {
    const auto visit = chosenVisit();
    if (visit) yard_->apply(book::SingleEdit(book::SkipVisit{visit->id}));
}

void FeedingPage::show(ColonyId id) {
    colony_ = id;
    given_->show(id);
    refresh();
}

void FeedingPage::refresh() {
    const auto* colony = yard_->find(colony_);
    if (!colony) return;
    if (const auto leading = yard_->leading(colony_)) return showFollowed(*leading);
    if (!colony->answered || colony->pending || yard_->awaitsFollowing(colony_))
        return showNothing(FeedingPage::tr("Working it out\u2026"));
    const auto& advice = colony->answered->answer.advice;
    if (!advice.feed) {
        return showNothing(
            advice.verdict == advice::Verdict::CannotSay
                ? FeedingPage::tr(
                      "Whether to feed cannot be said yet. Once it can, the recipe, the visits and the last day stand here.")
                : FeedingPage::tr(
                      "No feeding is needed. If that changes, the recipe, the visits and the last day stand here."));
    }
    showPlan(*colony);
}

void FeedingPage::showNothing(const QString& why) {
    recipe_->setVisible(false);
    why_->say(why);
    why_->setVisible(true);
    limits_->setVisible(false);
    visits_->setVisible(false);
    model_->show({});
}

// A winter that is followed says itself what it wants.
void FeedingPage::showFollowed(const FollowedWinter& followed) {
    const auto& winter = *followed.following;
    const auto style = words::styleOf(followed.colony.autumn);
    recipe_->setVisible(true);
    recipe_->say(text::followHeadline(*followed.colony.question, winter, style, text::askably));
    why_->say(text::followRisk(*followed.colony.question, winter, style, text::askably));
    why_->setVisible(true);
    limits_->setVisible(false);
    model_->show(jobsOf(followed, colony_));
    visits_->setVisible(!model_->jobs().empty());
}

void FeedingPage::showPlan(const ColonyEntry& colony) {
    const auto& advice = colony.answered->answer.advice;
    const bool unite = advice.verdict == advice::Verdict::Unite;
    recipe_->setVisible(true);
    recipe_->say(recipeWords(*advice.feed, text::askably));
    const QString why = unite ? FeedingPage::tr("Only if it is wintered alone after all; better to unite it.")
                              : ratioWords(*advice.feed);
    why_->say(why);
    why_->setVisible(!why.isEmpty());
    limits_->setText(
        limitWords(*advice.feed, colony.answered->question.winter, words::styleOf(colony.answered->question))
            .join(QStringLiteral("\n\n")));
    limits_->setVisible(!limits_->text().isEmpty());
    model_->show(jobsOf(colony));
    visits_->setVisible(!model_->jobs().empty());
}

} // namespace winterlarder::desk
