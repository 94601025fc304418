// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/doubt_bar.h"

#include "models/words.h"
#include "text/remarks.h"
#include "theme/card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

std::optional<Mass> meantIn(const stores::Doubt& doubt) {
    const auto found = doubt.says.details.find("meant");
    const auto* mass = found == doubt.says.details.end() ? nullptr : std::get_if<Mass>(&found->second);
    return mass ? std::optional(*mass) : std::nullopt;
}

} // namespace

DoubtBar::DoubtBar(QWidget* parent) : QWidget(parent) {
    question_ = plainLabel(this);
    question_->setWordWrap(true);
    question_->setProperty("fault", true);
    question_->setAccessibleDescription(tr("A question about what was typed"));
    meant_ = new QPushButton(this);
    sure_ = new QPushButton(this);
    auto* answers = new QHBoxLayout;
    for (auto* button : {meant_, sure_}) {
        button->setAutoDefault(false);
        answers->addWidget(button);
    }
    answers->addStretch(1);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(4);
    down->addWidget(question_);
    down->addLayout(answers);
    connect(meant_, &QPushButton::clicked, this, [this] {
        if (const auto mass = doubt_ ? meantIn(*doubt_) : std::nullopt) emit meant(mass->value());
    });
    connect(sure_, &QPushButton::clicked, this, &DoubtBar::sure);
    hide();
}

void DoubtBar::ask(const stores::Doubt& doubt, const QString& said) {
    doubt_ = doubt;
    question_->setText(text::sentence(doubt.says, words::style()));
    const auto mass = meantIn(doubt);
    meant_->setVisible(mass.has_value());
    if (mass) meant_->setText(tr("It is %1").arg(text::mass(*mass, words::style())));
    sure_->setVisible(!doubt.impossible);
    sure_->setText(said.isEmpty() ? tr("It is right") : tr("It is %1").arg(said));
    if (isVisible()) makeRoom();
    show();
}

void DoubtBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    makeRoom();
}

// A form asks labels that break their lines how tall they are before it knows how wide: the last lines would be cut.
void DoubtBar::makeRoom() { question_->setMinimumHeight(std::max(0, question_->heightForWidth(std::max(width(), 1)))); }

void DoubtBar::clear() {
    doubt_.reset();
    hide();
}

QString DoubtBar::question() const { return asks() ? question_->text() : QString(); }

} // namespace winterlarder::desk
