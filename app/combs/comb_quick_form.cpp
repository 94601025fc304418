// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_quick_form.h"

#include "fields/fields.h"
#include "theme/card.h"
#include "theme/flow_layout.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

void limit(QDoubleSpinBox* field, NumberRange allowed) {
    const QSignalBlocker quiet(field);
    field->setRange(allowed.least, allowed.most);
}

} // namespace

CombQuickForm::CombQuickForm(QWidget* parent) : QWidget(parent) {
    full_ = numberField(this, tr("Combs full of stores"), 0, 500, 1, 1, {});
    half_ = numberField(this, tr("Combs half full of stores"), 0, 500, 1, 1, {});
    capped_ = numberField(this, tr("Share of those stores that is capped"), 0, 100, 10, 0, tr("%"));
    auto* fields = new QWidget(this);
    auto* row = new FlowLayout(fields, 18);
    const auto add = [&](QDoubleSpinBox* field, const QString& words) {
        auto* both = new QWidget(fields);
        auto* layout = new QHBoxLayout(both);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(field);
        auto* label = plainLabel(both, words);
        label->setBuddy(field);
        layout->addWidget(label);
        row->addWidget(both);
        connect(field, &QDoubleSpinBox::valueChanged, this, &CombQuickForm::tell);
    };
    add(full_, tr("combs f&ull"));
    add(half_, tr("combs half fu&ll"));
    add(capped_, tr("of it cappe&d"));
    auto* sureness = quietLabel(this);
    sureness->setText(tr(
        "A count is good to about 20 %, a look at both faces of each comb to 15 %. Empty comb for feed, and combs to take, are only known from a look."));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(fields);
    layout->addWidget(sureness);
    layout->addStretch(1);
}

void CombQuickForm::show(const book::QuickCountRecord& count) {
    setQuietly(full_, count.fullOfStores);
    setQuietly(half_, count.half);
    setQuietly(capped_, 100 * count.cappedShare);
}

void CombQuickForm::tell() { emit counted({full_->value(), half_->value(), capped_->value() / 100}); }

void CombQuickForm::useLimits(const ReferenceData& reference) {
    limit(full_, reference.range("combs.full_of_stores"));
    limit(half_, reference.range("combs.half"));
}

} // namespace winterlarder::desk
