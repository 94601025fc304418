// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_fields.h"

#include "fields/fields.h"
#include "fields/quantity_field.h"
#include "models/words.h"
#include "theme/card.h"
#include "theme/flow_layout.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>

namespace winterlarder::desk {

CombFields::CombFields(QWidget* parent) : QWidget(parent) {
    auto* row = new FlowLayout(this);
    name_ = plainLabel(this);
    row->addWidget(name_);
    for (const auto zone : allZones) {
        shares_[zone] = numberField(this, tr("Share of the comb: %1").arg(words::zone(zone)), 0, 100, 5, 0, tr("%"));
        add(shares_[zone], words::zone(zone));
        connect(shares_[zone], &QDoubleSpinBox::valueChanged, this, [this, zone](double value) {
            if (comb_) tell(withShare(comb_->record, zone, value / 100));
        });
    }
    empty_ = quietLabel(this, Lines::One);
    row->addWidget(empty_);
    built_ = numberField(this, tr("Share of the comb that is built"), 0, 100, 5, 0, tr("%"));
    add(built_, tr("built"));
    connect(built_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
        if (comb_) tell(withBuilt(comb_->record, value / 100));
    });
    buildSeen();
    buildWidth();
    holds_ = quietAskable(this);
    holds_->setWordWrap(false);
    row->addWidget(holds_);
    connect(holds_, &AskableLabel::numberClicked, this, &CombFields::numberAsked);
    photograph_ = new QPushButton(tr("Measure on a photo&graph\u2026"), this);
    photograph_->setProperty("chip", true);
    row->addWidget(photograph_);
    connect(photograph_, &QPushButton::clicked, this, &CombFields::photographAsked);
    show(std::nullopt, false);
}

// A name and its field stay together where lines break.
void CombFields::add(QWidget* field, const QString& name) {
    auto* both = new QWidget(this);
    auto* layout = new QHBoxLayout(both);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(5);
    auto* label = quietLabel(both, Lines::One);
    label->setText(name);
    label->setBuddy(field);
    layout->addWidget(label);
    layout->addWidget(field);
    this->layout()->addWidget(both);
}

void CombFields::buildSeen() {
    seen_ = new QComboBox(this);
    seen_->setAccessibleName(tr("How the comb was seen"));
    seen_->setToolTip(tr("One face, a window, or not at all: the less was seen, the wider the spread"));
    for (const auto& [seen, text] :
         {std::pair(Seen::BothFaces, tr("both faces")), std::pair(Seen::OneFace, tr("one face")),
          std::pair(Seen::ThroughWindow, tr("through a window")), std::pair(Seen::NotAtAll, tr("not looked at"))})
        seen_->addItem(text, static_cast<int>(seen));
    add(seen_, tr("seen"));
    connect(seen_, &QComboBox::activated, this, [this] {
        if (comb_) tell(withSeen(comb_->record, static_cast<Seen>(seen_->currentData().toInt())));
    });
}

void CombFields::buildWidth() {
    width_ = new QuantityField(this, tr("Bar width"), QuantityField::Kind::Length, nullptr);
    width_->setMaximumWidth(fontMetrics().averageCharWidth() * 10);
    add(width_, tr("bar"));
    connect(width_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        if (!comb_ || !value) return;
        auto changed = comb_->record;
        changed.width = millimetres(*value);
        tell(changed);
    });
}

void CombFields::useLimits(const ReferenceData& reference) { width_->limitTo(*reference.field("combs.width_mm")); }

void CombFields::tell(const book::CombRecord& comb) {
    if (!(comb == comb_->record)) emit combEdited(comb);
}

void CombFields::show(const std::optional<DrawnComb>& comb, bool severalBoxes) {
    comb_ = comb;
    setEnabled(comb.has_value());
    if (!comb) return;
    const auto& record = comb->record;
    const auto told = words::styleOf(hive::hasFrames(comb->format));
    if (comb->inSuper) name_->setText(text::worded(tr("Super, %{comb} %1:"), told).arg(comb->place + 1));
    else
        name_->setText(severalBoxes
                           ? text::worded(tr("Box %1, %{comb} %2:"), told).arg(comb->box + 1).arg(comb->place + 1)
                           : text::worded(tr("%{Comb} %1:"), told).arg(comb->place + 1));
    for (const auto& [zone, field] : shares_) setQuietly(field, 100 * shareOf(record, zone));
    empty_->setText(record.measured ? tr("empty %1, measured").arg(words::percent(emptyShare(record)))
                                    : tr("empty %1").arg(words::percent(emptyShare(record))));
    setQuietly(built_, 100 * record.built);
    holds_->say(tr("holds %1").arg(text::askably(text::AskedNumber::Comb, comb->kilograms)));
    width_->show(comb->format.pitch.value());
    const QSignalBlocker quiet(seen_);
    seen_->setCurrentIndex(seen_->findData(static_cast<int>(seenOf(record))));
}

} // namespace winterlarder::desk
