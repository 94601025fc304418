// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/look_page.h"

#include "models/colony_edits.h"
#include "models/words.h"
#include "widgets/card.h"
#include "widgets/comb_drawing.h"
#include "widgets/entry_forms.h"
#include "widgets/fields.h"
#include "widgets/flow_layout.h"
#include "widgets/zone_legend.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

// A name and its field, kept together where lines break.
QWidget* named(QWidget* parent, QLabel* name, QWidget* field) {
    auto* both = new QWidget(parent);
    auto* layout = new QHBoxLayout(both);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(5);
    layout->addWidget(name);
    if (field) layout->addWidget(field);
    layout->addStretch(1);
    return both;
}

} // namespace

LookPage::LookPage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    heading_ = quietLabel(this, false);
    drawing_ = new CombDrawing(this);
    nothing_ = quietLabel(this);
    nothing_->setAlignment(Qt::AlignCenter);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(14, 10, 14, 8);
    layout->setSpacing(6);
    layout->addLayout(buildHead());
    layout->addWidget(drawing_, 1);
    layout->addWidget(nothing_, 1);
    layout->addWidget(buildCombFields());
    layout->addWidget(buildRecordFields());
    evidence_ = quietLabel(this);
    evidence_->setAccessibleName(tr("Where the figure for the stores comes from"));
    layout->addWidget(evidence_);
    connectFields();
    connect(yard_, &Yard::recordChanged, this, [this](ColonyId id) { if (id == colony_) refresh(); });
    connect(yard_, &Yard::answerChanged, this, [this](ColonyId id) { if (id == colony_) refresh(); });
    connect(yard_, &Yard::recordsChanged, this, [this](ColonyId id) { if (id == colony_) refresh(); });
}

QLayout* LookPage::buildHead() {
    newLook_ = new QPushButton(tr("&New look"), this);
    newLook_->setToolTip(tr("A new look of the day asked about; its combs begin as they were last seen"));
    lookDetails_ = new QPushButton(tr("Queen, temper, &note\u2026"), this);
    hive_ = new QPushButton(tr("Hi&ve\u2026"), this);
    connect(newLook_, &QPushButton::clicked, this, &LookPage::beginLook);
    connect(lookDetails_, &QPushButton::clicked, this, [this] { askForLook(this, yard_, yard_->lookToEdit(colony_)); });
    connect(hive_, &QPushButton::clicked, this, [this] {
        const auto* colony = yard_->find(colony_);
        if (colony) askForHive(this, yard_, {.colony = colony_, .date = colony->record.asOf, .hive = colony->record.hive});
    });
    auto* head = new QHBoxLayout;
    head->addWidget(heading_, 1);
    head->addWidget(new ZoneLegend(this));
    for (auto* button : {newLook_, lookDetails_, hive_}) {
        button->setProperty("chip", true);
        head->addWidget(button);
    }
    return head;
}

// As last seen where there was a look before, else the empty combs of the hive.
void LookPage::beginLook() {
    const auto* colony = yard_->find(colony_);
    const auto* records = yard_->records(colony_);
    if (!colony || !records || !yard_->writable()) return;
    auto look = newLook(*records, colony->record.asOf);
    if (std::holds_alternative<std::monostate>(look.combs)) look.combs = emptyCombs(colony->record.hive, *yard_->book()->reference());
    yard_->writeLook(look);
}

QWidget* LookPage::buildCombFields() {
    combFields_ = new QWidget(this);
    auto* row = new FlowLayout(combFields_);
    combName_ = new QLabel(combFields_);
    row->addWidget(named(combFields_, combName_, nullptr));
    const auto add = [&](QDoubleSpinBox* field, const QString& name) {
        auto* label = quietLabel(combFields_, false);
        label->setText(name);
        label->setBuddy(field);
        row->addWidget(named(combFields_, label, field));
    };
    for (const auto zone : allZones) {
        shares_[zone] = numberField(combFields_, tr("Share of the comb: %1").arg(words::zone(zone)), 0, 100, 5, 0, tr("%"));
        add(shares_[zone], words::zone(zone));
    }
    built_ = numberField(combFields_, tr("Share of the comb that is built"), 1, 100, 5, 0, tr("%"));
    faces_ = numberField(combFields_, tr("Faces of the comb seen"), 0, 2, 1, 0, {});
    width_ = numberField(combFields_, tr("Bar width"), 25, 60, 1, 0, tr("mm"));
    add(built_, tr("built"));
    add(faces_, tr("faces seen"));
    add(width_, tr("bar"));
    return combFields_;
}

QWidget* LookPage::buildRecordFields() {
    auto* fields = new QWidget(this);
    auto* row = new FlowLayout(fields, 22);
    bees_ = new BeesField(fields);
    weighing_ = new WeighingField(fields);
    row->addWidget(named(fields, new QLabel(tr("Bees:"), fields), bees_));
    row->addWidget(named(fields, new QLabel(tr("Weighed:"), fields), weighing_));
    return fields;
}

void LookPage::connectFields() {
    connect(drawing_, &CombDrawing::combChosen, this, [this](int comb) {
        showComb();
        emit combChosen(comb);
    });
    for (const auto& entry : shares_) {
        const Zone zone = entry.first;
        connect(entry.second, &QDoubleSpinBox::valueChanged, this, [this, zone](double value) {
            if (const auto* comb = chosenComb()) editComb(withShare(*comb, zone, value / 100));
        });
    }
    connect(built_, &QDoubleSpinBox::valueChanged, this, [this](double value) { changeChosen([value](auto& comb) { comb.built = value / 100; }); });
    connect(faces_, &QDoubleSpinBox::valueChanged, this, [this](double value) { changeChosen([value](auto& comb) { comb.facesSeen = static_cast<int>(value); }); });
    connect(width_, &QDoubleSpinBox::valueChanged, this, [this](double value) { changeChosen([value](auto& comb) { comb.width = millimetres(value); }); });
    connect(bees_, &BeesField::told, this, [this](BeesToldBy kind, double value) {
        auto look = yard_->lookToEdit(colony_);
        look.bees = withBees(look.bees, kind, value);
        yard_->writeLook(look);
    });
    connect(weighing_, &WeighingField::weighed, this, &LookPage::writeWeighing);
}

void LookPage::changeChosen(const std::function<void(book::CombRecord&)>& change) {
    if (const auto* comb = chosenComb()) {
        auto changed = *comb;
        change(changed);
        editComb(changed);
    }
}

void LookPage::writeWeighing(const std::optional<book::WeighingRecord>& weighing) {
    const auto* colony = yard_->find(colony_);
    const auto* records = yard_->records(colony_);
    if (!colony || !records) return;
    const auto* newest = newestWeighing(*records, colony->record.asOf);
    if (!weighing && newest) return yard_->apply(book::SingleEdit(book::RemoveWeighing{newest->id}));
    if (!weighing) return;
    auto written = newest ? *newest : book::Weighing{.colony = colony_, .weighing = *weighing};
    written.weighing = *weighing;
    yard_->writeWeighing(written);
}

void LookPage::show(ColonyId id) {
    if (colony_ != id) drawing_->choose(-1);
    colony_ = id;
    refresh();
}

QString LookPage::heading(const ColonyEntry& colony) const {
    if (!colony.record.lookedOn) return tr("Not looked at lately.");
    const QString day = words::date(*colony.record.lookedOn);
    const auto boxes = colony.record.hive.boxes.size();
    if (boxes > 1) return tr("Look of %1, seen from behind; boxes as they stand.").arg(day);
    if (colony.answered && colony.answered->question.longHive) return tr("Look of %1, from the entrance end.").arg(day);
    return tr("Look of %1, seen from behind.").arg(day);
}

void LookPage::refresh() {
    const auto* colony = yard_->find(colony_);
    if (!colony) return;
    heading_->setText(heading(*colony));
    drawing_->show(drawnCombs(colony->record, colony->answered.get(), !colony->pending));
    const bool listed = std::holds_alternative<std::vector<book::CombRecord>>(colony->record.combs);
    const bool quick = std::holds_alternative<book::QuickCountRecord>(colony->record.combs);
    drawing_->setVisible(listed);
    combFields_->setVisible(listed);
    nothing_->setVisible(!listed);
    nothing_->setText(quick ? tr("The combs were counted, not looked at one by one; so no comb can be drawn.")
                            : tr("No comb was looked at within sixty days before this day. \u201cNew look\u201d hangs the combs here as they were last seen; write on each what it holds, and count the combs the bees cover."));
    bees_->show(colony->record.bees);
    const auto* records = yard_->records(colony_);
    const auto* weighing = records ? newestWeighing(*records, colony->record.asOf) : nullptr;
    weighing_->show(weighing ? std::optional(weighing->weighing) : std::nullopt, colony->record.asOf);
    for (QWidget* field : std::initializer_list<QWidget*>{combFields_, bees_, weighing_, lookDetails_, hive_}) field->setEnabled(yard_->writable() && records);
    newLook_->setEnabled(yard_->writable() && records && colony->record.lookedOn != colony->record.asOf);
    showComb();
    showEvidence(*colony);
}

const book::CombRecord* LookPage::chosenComb() const {
    const auto* colony = yard_->find(colony_);
    if (!colony) return nullptr;
    const auto* combs = std::get_if<std::vector<book::CombRecord>>(&colony->record.combs);
    const int chosen = drawing_->chosen();
    return combs && chosen >= 0 && chosen < static_cast<int>(combs->size()) ? &(*combs)[static_cast<std::size_t>(chosen)] : nullptr;
}

void LookPage::showComb() {
    const auto* comb = chosenComb();
    combFields_->setEnabled(comb != nullptr && yard_->writable());
    if (!comb) return;
    const auto* colony = yard_->find(colony_);
    const auto chosen = static_cast<std::size_t>(drawing_->chosen());
    combName_->setText(tr("Comb %1:").arg(chosen + 1));
    if (colony->answered && chosen < colony->answered->question.combs.size()) {
        const auto& known = colony->answered->question.combs[chosen];
        if (colony->record.hive.boxes.size() > 1) combName_->setText(tr("Box %1, comb %2:").arg(known.box + 1).arg(known.place + 1));
        setQuietly(width_, known.format.pitch.value());
    }
    for (const auto& [zone, field] : shares_) setQuietly(field, 100 * shareOf(*comb, zone));
    setQuietly(built_, 100 * comb->built);
    setQuietly(faces_, comb->facesSeen);
    if (comb->width) setQuietly(width_, comb->width->value());
}

void LookPage::editComb(const book::CombRecord& comb) {
    if (chosenComb()) yard_->changeComb(colony_, static_cast<std::size_t>(drawing_->chosen()), comb);
}

void LookPage::showEvidence(const ColonyEntry& colony) {
    if (!colony.answered || colony.pending || !colony.answered->answer.advice.estimate) return evidence_->setText({});
    const auto& advice = colony.answered->answer.advice;
    QStringList pieces;
    for (const auto& share : advice.estimate->shares)
        pieces << tr("%1 %2 (%3)").arg(words::evidence(share.evidence.kind), words::kilograms(share.says.typical), words::date(share.evidence.date));
    const QString stores = tr("Stores %1: %2.").arg(words::spread(advice.estimate->spread), pieces.join(tr("; ")));
    evidence_->setText(advice.bees ? tr("%1 Bees about %2.").arg(stores, words::bees(*advice.bees)) : stores);
}

} // namespace winterlarder::desk
