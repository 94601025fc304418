// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_quick_form.h"

#include "fields/fields.h"
#include "models/words.h"
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
    full_ = numberField(this, {}, 0, 500, 1, 1, {});
    half_ = numberField(this, {}, 0, 500, 1, 1, {});
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
        return label;
    };
    fullLabel_ = add(full_, {});
    halfLabel_ = add(half_, {});
    add(capped_, tr("of it cappe&d"));
    sureness_ = quietLabel(this);
    name();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(fields);
    layout->addWidget(sureness_);
    layout->addStretch(1);
}

void CombQuickForm::name() {
    full_->setAccessibleName(words::worded(tr("%{Combs} full of stores")));
    half_->setAccessibleName(words::worded(tr("%{Combs} half full of stores")));
    fullLabel_->setText(words::worded(tr("%{combs} f&ull")));
    halfLabel_->setText(words::worded(tr("%{combs} half fu&ll")));
    if (spreads_)
        sureness_->setText(
            words::worded(
                tr("A count is good to about %1, a look at both faces of each %{comb} to %2. Empty comb for feed, and %{combs} to take, are only known from a look."))
                .arg(words::percent(spreads_->counted), words::percent(stores::relativeSdOf({}, *spreads_))));
}

void CombQuickForm::showEvent(QShowEvent* event) {
    name();
    QWidget::showEvent(event);
}

void CombQuickForm::show(const book::QuickCountRecord& count) {
    name();
    setQuietly(full_, count.fullOfStores);
    setQuietly(half_, count.half);
    setQuietly(capped_, 100 * count.cappedShare);
}

void CombQuickForm::tell() { emit counted({full_->value(), half_->value(), capped_->value() / 100}); }

void CombQuickForm::useLimits(const ReferenceData& reference) {
    limit(full_, reference.range("combs.full_of_stores"));
    limit(half_, reference.range("combs.half"));
    spreads_ = stores::combSpreads(reference.constants);
    name();
}

} // namespace winterlarder::desk
