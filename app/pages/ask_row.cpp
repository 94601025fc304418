// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/ask_row.h"

#include "fields/quantity_field.h"
#include "models/ask_answers.h"
#include "text/ask_words.h"
#include "theme/card.h"
#include "theme/flow_layout.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace winterlarder::desk {

AskRow::AskRow(QWidget* parent) : QWidget(parent) {
    question_ = plainLabel(this);
    question_->setWordWrap(true);
    across_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
    across_->setContentsMargins(0, 2, 0, 0);
    across_->setSpacing(8);
    across_->addWidget(question_, 0);
    across_->addStretch(1);
    hide();
}

void AskRow::show(const std::optional<advice::Ask>& ask, const ReferenceData* reference) {
    setVisible(ask.has_value());
    const auto kind = ask ? std::optional(ask->kind) : std::nullopt;
    if (kind == shown_) return;
    shown_ = kind;
    if (choices_) choices_->deleteLater();
    choices_ = nullptr;
    answers_.clear();
    if (ask) offer(*ask, reference);
}

void AskRow::offer(const advice::Ask& ask, const ReferenceData* reference) {
    const advice::AskKind kind = ask.kind;
    const QString question = text::question(ask, words::style());
    question_->setText(question);
    question_->setMinimumWidth(
        std::min(fontMetrics().horizontalAdvance(question) + 4, 48 * fontMetrics().averageCharWidth()));
    choices_ = new QWidget(this);
    auto* row = new FlowLayout(choices_, 6, 4);
    for (const auto& choice : choicesOf(kind)) {
        auto* button = new QPushButton(choice.words, choices_);
        button->setAccessibleName(tr("%1 %2", "question, answer").arg(question, choice.words));
        connect(button, &QPushButton::clicked, this,
                [this, kind, value = choice.value] { emit answered(kind, value); });
        row->addWidget(button);
        answers_.push_back(button);
    }
    if (row->count() == 0) {
        const auto what = kind == advice::AskKind::Tare ? QuantityField::Kind::Mass : QuantityField::Kind::Number;
        auto* field =
            new QuantityField(choices_, question, what, reference ? reference->field(fieldOf(kind)) : nullptr);
        field->setMaximumWidth(12 * fontMetrics().averageCharWidth());
        connect(field, &QuantityField::valueEntered, this, [this, kind](std::optional<double> value) {
            if (value) emit answered(kind, *value);
        });
        row->addWidget(field);
        answers_.push_back(field);
    }
    across_->insertWidget(1, choices_);
    choices_->show();
    arrange();
}

// The answers below the question where they have no room beside it.
void AskRow::arrange() {
    if (!choices_) return;
    const bool beside = width() >= question_->minimumWidth() + across_->spacing() + choices_->sizeHint().width();
    across_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void AskRow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

} // namespace winterlarder::desk
