// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/look_page.h"

#include "book/case_of.h"
#include "combs/comb_drawing.h"
#include "combs/comb_fields.h"
#include "fields/fields.h"
#include "forms/doubt_bar.h"
#include "forms/entry_forms.h"
#include "guide/guide_link.h"
#include "models/colony_edits.h"
#include "models/entry_doubts.h"
#include "models/words.h"
#include "pages/comb_entry.h"
#include "theme/card.h"
#include "theme/flow_layout.h"

#include <QDir>
#include <QDoubleSpinBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

// A name and its field, kept together where lines break.
QWidget* named(QWidget* parent, QLabel* name, QWidget* field) {
    auto* both = new QWidget(parent);
    auto* layout = new QHBoxLayout(both);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(5);
    layout->addWidget(name, 0, Qt::AlignTop);
    if (field) {
        name->setFixedHeight(field->sizeHint().height());
        layout->addWidget(field, 0, Qt::AlignTop);
    }
    layout->addStretch(1);
    return both;
}

const ReferenceData* referenceOf(const OpenBook* book) { return book ? book->reference().get() : nullptr; }

QString fromBook(const OpenBook* book, const QString& path) {
    if (!book || !book->state()) return path;
    return QFileInfo(book->state()->file).absoluteDir().relativeFilePath(QFileInfo(path).absoluteFilePath());
}

} // namespace

LookPage::LookPage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    heading_ = quietLabel(this); // broken where the window is narrow
    auto* head = buildHead();
    combs_ = new CombEntry(this);
    nothing_ = quietLabel(this);
    nothing_->setAlignment(Qt::AlignCenter);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 10, 8, 8);
    layout->setSpacing(6);
    layout->addLayout(head);
    layout->addWidget(nothing_);
    layout->addWidget(combs_, 1);
    layout->addWidget(buildRecordFields());
    doubts_ = new DoubtBar(this);
    layout->addWidget(doubts_);
    evidence_ = quietAskable(this);
    connect(evidence_, &AskableLabel::numberClicked, this, &LookPage::numberAsked);
    evidence_->setAccessibleDescription(tr("Where the figure for the stores comes from"));
    layout->addWidget(evidence_);
    connectFields();
    connectDoubts();
    yard_->onColony(this, colony_, {YardChange::Record, YardChange::Answer, YardChange::Followed, YardChange::History},
                    &LookPage::refresh);
}

QLayout* LookPage::buildHead() {
    newLook_ = new QPushButton(tr("&New look"), this);
    lookDetails_ = new QPushButton(tr("&Queen, temper, note\u2026"), this);
    hive_ = new QPushButton(tr("Hive\u2026"), this);
    connect(newLook_, &QPushButton::clicked, this, &LookPage::beginLook);
    connect(lookDetails_, &QPushButton::clicked, this, [this] {
        if (yard_->find(colony_)) askForLook(this, yard_, yard_->lookToEdit(colony_));
    });
    connect(hive_, &QPushButton::clicked, this, [this] {
        const auto* colony = yard_->find(colony_);
        const auto* records = yard_->records(colony_);
        if (colony && records) askForHive(this, yard_, housingOn(*records, colony->record.asOf));
    });
    auto* buttons = new QWidget(this);
    auto* row = new FlowLayout(buttons, 6, 4);
    for (auto* button : {newLook_, lookDetails_, hive_}) {
        button->setProperty("chip", true);
        row->addWidget(button);
    }
    row->addWidget(new GuideLink(this, yard_, text::GuidePage::FullComb));
    head_ = new QBoxLayout(QBoxLayout::LeftToRight);
    head_->addWidget(heading_, 1);
    head_->addWidget(buttons);
    return head_;
}

// The heading has a third of the width, or a line of its own.
void LookPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool beside = head_->itemAt(1)->sizeHint().width() < width() * 2 / 3;
    head_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

// As last seen where that is not long ago, else the empty combs of the hive.
void LookPage::beginLook() {
    const auto* colony = yard_->find(colony_);
    const auto* records = yard_->records(colony_);
    if (!colony || !records || !yard_->writable()) return;
    // A look of today that has no combs yet (only bees were counted) gets them.
    auto look = colony->record.lookedOn == colony->record.asOf ? yard_->lookToEdit(colony_)
                                                               : newLook(*records, colony->record.asOf);
    if (std::holds_alternative<std::monostate>(look.combs))
        look.combs = emptyCombs(colony->record.hive, *yard_->book()->reference());
    yard_->writeLook(look);
    drawing()->choose(0);
    drawing()->setFocus();
}

QWidget* LookPage::buildRecordFields() {
    auto* fields = new QWidget(this);
    auto* row = new FlowLayout(fields, 22);
    bees_ = new BeesField(fields);
    row->addWidget(named(fields, plainLabel(fields, tr("Bees:")), withGuideLink(bees_, yard_, text::GuidePage::Bees)));
    weighing_ = new WeighingField(fields);
    row->addWidget(
        named(fields, plainLabel(fields, tr("Weighed:")), withGuideLink(weighing_, yard_, text::GuidePage::Weight)));
    return fields;
}

void LookPage::connectFields() {
    connect(combs_, &CombEntry::combChosen, this, &LookPage::combChosen);
    connect(combs_, &CombEntry::combChanged, this, [this](int comb, const book::CombRecord& record) {
        yard_->changeComb(colony_, static_cast<std::size_t>(comb), record);
    });
    connect(combs_, &CombEntry::counted, this,
            [this](const book::QuickCountRecord& count) { editLook([&](book::Look& look) { look.combs = count; }); });
    connect(combs_, &CombEntry::numberAsked, this, &LookPage::numberAsked);
    connect(combs_, &CombEntry::combMeasured, this, &LookPage::writeMeasured);
    connect(bees_, &BeesField::valueEntered, this, [this](BeesToldBy kind, double value) {
        editLook([&](book::Look& look) {
            look.bees = withBees(look.bees, kind, value);
            look.sure = false;
        });
    });
    connect(weighing_, &WeighingField::weighed, this, &LookPage::writeWeighing);
}

void LookPage::editLook(const std::function<void(book::Look&)>& edit) {
    if (!yard_->find(colony_)) return;
    auto look = yard_->lookToEdit(colony_);
    edit(look);
    yard_->writeLook(look);
}

void LookPage::connectDoubts() {
    connect(doubts_, &DoubtBar::meant, this, &LookPage::weighInstead);
    connect(doubts_, &DoubtBar::sure, this, &LookPage::beSure);
}

// What was typed is in the book as it was typed; no answer believes it until this is settled.
void LookPage::askAboutDoubts(bool editable) {
    doubted_.reset();
    doubts_->clear();
    const auto* colony = yard_->find(colony_);
    const auto* records = yard_->records(colony_);
    if (!colony || !records || !editable) return;
    const auto known = surroundingsIn(*yard_, colony_);
    const auto ask = [&](const auto& entry, bool sure) {
        const auto doubt = answer::doubtOf(entry, *known, yard_->book()->today(), *yard_->book()->reference());
        if (!doubt || (sure && !doubt->impossible)) return false;
        doubts_->ask(*doubt, {});
        return true;
    };
    if (const auto* weighing = book::newestWeighing(*records, colony->record.asOf);
        weighing && ask(*weighing, weighing->weighing.sure)) {
        doubted_ = *weighing;
        return;
    }
    if (const auto* look = book::lookOfCase(*records, colony->record.asOf)) ask(*look, look->sure);
}

void LookPage::weighInstead(double kg) {
    if (!doubted_ || !std::holds_alternative<book::ScaleReading>(doubted_->weighing.reading)) return;
    auto weighing = *doubted_;
    weighing.weighing.reading = book::ScaleReading{kilograms(kg)};
    yard_->writeWeighing(weighing);
}

void LookPage::beSure() {
    if (doubted_) {
        auto weighing = *doubted_;
        weighing.weighing.sure = true;
        return yard_->writeWeighing(weighing);
    }
    editLook([](book::Look& look) { look.sure = true; });
}

// The photograph stays with the look; what lies beside the book is named from the book's folder.
void LookPage::writeMeasured(int comb, const book::CombRecord& record, const QStringList& photographs,
                             book::LookId measured) {
    auto found = lookNumbered(measured);
    auto* combs = found ? std::get_if<std::vector<book::CombRecord>>(&found->combs) : nullptr;
    if (!combs || comb < 0 || comb >= static_cast<int>(combs->size()))
        return yard_->book()->report({inputProblem("the comb that was measured is no longer in the book",
                                                   "measure it again on the look that is shown")});
    auto& look = *found;
    (*combs)[static_cast<std::size_t>(comb)] = record;
    for (const auto& path : photographs) {
        const auto kept = fromBook(yard_->book(), path).toStdString();
        if (std::find(look.photographs.begin(), look.photographs.end(), kept) == look.photographs.end())
            look.photographs.push_back(kept);
    }
    yard_->writeLook(look);
}

// As it is now; nothing where it was never written or has gone.
std::optional<book::Look> LookPage::lookNumbered(book::LookId id) const {
    if (const auto* records = yard_->records(colony_))
        for (const auto& look : records->looks)
            if (look.id == id) return look;
    return std::nullopt;
}

QStringList LookPage::picturesOfLook() const {
    const auto* book = yard_->book();
    if (!book || !book->state()) return {};
    const QDir folder = QFileInfo(book->state()->file).absoluteDir();
    QStringList paths;
    for (const auto& kept : yard_->lookToEdit(colony_).photographs)
        paths << folder.absoluteFilePath(QString::fromStdString(kept));
    return paths;
}

void LookPage::writeWeighing(const std::optional<book::WeighingRecord>& weighing) {
    const auto* colony = yard_->find(colony_);
    const auto* records = yard_->records(colony_);
    if (!colony || !records) return;
    const auto* newest = book::newestWeighing(*records, colony->record.asOf);
    if (!weighing && newest) return yard_->apply(book::SingleEdit(book::RemoveWeighing{newest->id}));
    if (!weighing) return;
    auto written = newest ? *newest : book::Weighing{.colony = colony_, .weighing = *weighing};
    written.weighing = *weighing;
    yard_->writeWeighing(written);
}

void LookPage::show(ColonyId id) {
    if (colony_ != id) drawing()->choose(-1);
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
    const auto* records = yard_->records(colony_);
    const bool editable = yard_->writable() && records;
    if (const auto* reference = referenceOf(yard_->book()))
        combs_->show(colony->record, colony->answered.get(), *reference, editable);
    combs_->ofLook(yard_->lookToEdit(colony_).id, picturesOfLook());
    const bool quick = std::holds_alternative<book::QuickCountRecord>(colony->record.combs);
    nothing_->setVisible(!std::holds_alternative<std::vector<book::CombRecord>>(colony->record.combs));
    const bool winter = yard_->leading(colony_) != nullptr;
    newLook_->setToolTip(words::worded(
        tr("A new look of the day asked about; its %{combs} begin as they were seen within the last sixty days, else empty"),
        colony->answered.get()));
    const QString how =
        winter
            ? tr("In the cold leave the hive closed: what can be told from outside (its weight, its heft, bees flying, a glance under the lid) is written down on the page On the scale. "
                 "Once it is warm enough to open, \u201cNew look\u201d hangs the hive's %{combs} here. Or only count them:")
        : quick
            ? tr("The %{combs} were counted, not looked at one by one; so no %{comb} can be drawn.")
            : tr("No %{comb} was looked at within sixty days before this day. \u201cNew look\u201d hangs the hive's empty %{combs} here; write on each what it holds, and count the %{combs} the bees cover. Or only count them:");
    nothing_->setText(words::worded(how, colony->answered.get()));
    if (const auto* reference = referenceOf(yard_->book()))
        bees_->useLimits(*reference), weighing_->useLimits(*reference);
    bees_->show(colony->record.bees);
    const auto* weighing = records ? book::newestWeighing(*records, colony->record.asOf) : nullptr;
    weighing_->show(weighing ? std::optional(weighing->weighing) : std::nullopt, colony->record.asOf);
    for (QWidget* field : std::initializer_list<QWidget*>{bees_, weighing_, lookDetails_, hive_})
        field->setEnabled(editable);
    const bool bare = std::holds_alternative<std::monostate>(colony->record.combs);
    newLook_->setEnabled(editable && (bare || colony->record.lookedOn != colony->record.asOf));
    askAboutDoubts(editable);
    showEvidence(*colony);
}

CombDrawing* LookPage::drawing() const { return combs_->drawing(); }

QDoubleSpinBox* LookPage::share(Zone zone) const { return combs_->fields()->share(zone); }

void LookPage::showEvidence(const ColonyEntry& colony) {
    if (!colony.answered || colony.pending || !colony.answered->answer.advice.estimate) return evidence_->say({});
    const auto& advice = colony.answered->answer.advice;
    const auto told = words::styleOf(colony.answered->question);
    QStringList pieces;
    for (const auto& share : advice.estimate->shares)
        pieces << tr("%1 %2 (%3)")
                      .arg(words::evidence(stores::idOf(share.evidence.kind), told), words::amount(share.says.typical),
                           words::date(share.evidence.date));
    const QString stores = tr("Stores %1: %2.")
                               .arg(text::askably(text::AskedNumber::Stores, words::spread(advice.estimate->spread)),
                                    pieces.join(tr("; ")));
    evidence_->say(
        advice.bees
            ? tr("%1 Bees about %2.").arg(stores, text::askably(text::AskedNumber::Bees, words::bees(*advice.bees)))
            : stores);
}

} // namespace winterlarder::desk
