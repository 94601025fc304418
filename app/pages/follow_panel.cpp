// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/follow_panel.h"

#include "models/follow_sections.h"
#include "models/words.h"
#include "plots/follow_plot.h"
#include "text/follow_words.h"
#include "text/remarks.h"
#include "theme/card.h"

#include <QLabel>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

} // namespace

FollowPanel::FollowPanel(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    headline_ = new AskableLabel(this);
    headline_->setFont(bold(headline_->font()));
    headline_->setAccessibleDescription(tr("How the winter goes"));
    risk_ = quietAskable(this);
    next_ = quietAskable(this);
    plot_ = new FollowPlot(this);
    key_ = quietLabel(this);
    key_->setText(tr(
        "Broken lines: what eighty of a hundred winters left, as forecast in autumn. Band: what eighty of a hundred that fit leave from "
        "today. Points: what was weighed, as stores, with eighty in a hundred odds. Dotted: the reserve; upright lines: today and the day spring forage starts."));
    sections_ = new QVBoxLayout;
    sections_->setSpacing(3);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    for (auto* label : {headline_, risk_, next_}) {
        down->addWidget(label);
        connect(label, &AskableLabel::numberClicked, this, &FollowPanel::numberAsked);
    }
    down->addWidget(plot_, 1);
    down->addWidget(key_);
    down->addLayout(sections_);
    yard_->onColony(this, colony_, {YardChange::Followed, YardChange::History}, &FollowPanel::refresh);
    say({}, {});
}

void FollowPanel::show(ColonyId id) {
    colony_ = id;
    refresh();
}

void FollowPanel::say(const QString& headline, const QString& small, const QString& next, bool withPlot) {
    headline_->say(headline);
    risk_->say(small);
    risk_->setVisible(!small.isEmpty());
    next_->say(next);
    next_->setVisible(!next.isEmpty());
    plot_->setVisible(withPlot);
    key_->setVisible(withPlot);
    for (auto* line : lines_) line->deleteLater();
    lines_.clear();
}

void FollowPanel::refresh() {
    const auto followed = yard_->followed(colony_);
    if (!followed)
        return say(tr("Following the winter\u2026"),
                   tr("What was seen since autumn is being held against the simulated winters."));
    const auto style = words::styleOf(followed->colony.autumn);
    if (!followed->following) {
        QStringList why;
        for (const auto& remark : followed->colony.advice.reasons) why << text::sentence(remark, style);
        return say(tr("This winter cannot be followed yet."), why.join(QLatin1Char(' ')));
    }
    if (!followed->begun())
        return say(
            tr("This winter is still to be decided."),
            tr("From the day after the decision on, every weighing and glance is held against its forecast here."));
    const auto& q = *followed->colony.question;
    const auto& f = *followed->following;
    if (!followed->leads()) {
        say(tr("On the way into winter: about %1 left, where the forecast expected %2.")
                .arg(text::askably(text::AskedNumber::LeftToday, text::amount(f.now.today, words::style())),
                     text::askably(text::AskedNumber::ExpectedToday,
                                   text::amount(f.autumn.today.typical, words::style()))),
            tr("Until winter begins what to do is said above, from what is known today; then it is said here too."), {},
            f.state != tracking::FollowState::Dead);
        plot_->show(followSeries(*followed), q.year);
        return;
    }
    const bool living = f.state != tracking::FollowState::Dead;
    say(text::followHeadline(q, f, style, text::askably), text::followRisk(q, f, style, text::askably),
        text::followNext(q, f, style, text::askably), living);
    if (living) plot_->show(followSeries(*followed), q.year);
    showSections(*followed);
}

void FollowPanel::showSections(const FollowedWinter& followed) {
    for (const auto& section : followSections(followed)) {
        auto* heading = boldLabel(this);
        heading->setText(section.heading);
        heading->setContentsMargins(0, 6, 0, 0);
        sections_->addWidget(heading);
        lines_.push_back(heading);
        auto* lines = plainLabel(this);
        lines->setWordWrap(true);
        lines->setTextInteractionFlags(Qt::TextSelectableByMouse);
        lines->setAccessibleDescription(section.heading);
        lines->setText(section.lines.join(QLatin1Char('\n')));
        sections_->addWidget(lines);
        lines_.push_back(lines);
    }
}

QString FollowPanel::said() const {
    QStringList all{headline_->said(), risk_->said(), next_->said()};
    for (const auto* line : lines_) all << line->text();
    return all.join(QLatin1Char('\n'));
}

} // namespace winterlarder::desk
