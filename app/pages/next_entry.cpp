// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/next_entry.h"

#include "fields/day_field.h"
#include "fields/fields.h"
#include "fields/quantity_field.h"
#include "models/words.h"
#include "pages/ask_row.h"

#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int mouseDown = 50; // ms after which it is looked at again

bool lacksBees(const ColonyEntry& colony) { return beesToldBy(colony.record.bees) == BeesToldBy::NotTold; }
bool lacksStores(const ColonyEntry& colony) {
    return std::holds_alternative<std::monostate>(colony.record.combs) && colony.record.weighings.empty();
}

bool hasSuper(const ColonyEntry& colony) {
    const auto& boxes = colony.record.hive.boxes;
    return std::any_of(boxes.begin(), boxes.end(), [](const book::BoxRecord& box) { return box.super; });
}

} // namespace

NextEntry::NextEntry(QWidget* parent) : Card(parent) {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(14, 10, 14, 10);
    down->setSpacing(8);
    auto* title = plainLabel(this, tr("To be answered, this colony needs:"));
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    down->addWidget(title);
    bees_ = new BeesField(this);
    combs_ = new QPushButton(this);
    weighing_ = new WeighingField(this);
    beesRow_ = row({}, bees_);
    combsRow_ = row({}, combs_);
    weighingRow_ = row(tr("or what the hive weighs, or how heavy it feels"), weighing_);
    flow_ = new AskRow(this);
    supers_ = new AskRow(this);
    for (QWidget* each : std::initializer_list<QWidget*>{beesRow_, combsRow_, weighingRow_, flow_, supers_})
        down->addWidget(each);
    for (auto* asked : {flow_, supers_}) connect(asked, &AskRow::answered, this, &NextEntry::askAnswered);
    connect(bees_->number(), &QAbstractSpinBox::editingFinished, this, [this] {
        if (bees_->number()->hasFocus()) goOn(); // Return; else it was left in another way, which is told by itself
    });
    connect(weighing_->gross(), &QLineEdit::returnPressed, this, &NextEntry::goOn);
    connect(qApp, &QApplication::focusChanged, this, &NextEntry::tellOnceLeft);
    hide();
}

bool NextEntry::holds(const QWidget* widget) const {
    const auto* at = QApplication::focusWidget();
    return at && widget->isVisible() && (widget == at || widget->isAncestorOf(at));
}

// Return in a number leads to what is still missing, or the keeper is done here.
void NextEntry::goOn() {
    if (!holds(this)) return;
    if (lacksStores_ && holds(beesRow_)) return combs_->setFocus();
    QApplication::focusWidget()->clearFocus();
}

// A row that goes while the mouse is down would draw what is clicked away from under it.
void NextEntry::tellOnceLeft(const QWidget* from, const QWidget* to) {
    const bool was = from && isAncestorOf(from), is = to && isAncestorOf(to);
    if (!isVisible() || !was || is) return;
    if (QApplication::mouseButtons() == Qt::NoButton) return QTimer::singleShot(0, this, &NextEntry::left);
    QTimer::singleShot(mouseDown, this, [this, from = QPointer<const QWidget>(from)] { tellOnceLeft(from, nullptr); });
}

QWidget* NextEntry::row(const QString& words, QWidget* field) {
    auto* whole = new QWidget(this);
    auto* across = new QHBoxLayout(whole);
    across->setContentsMargins(0, 0, 0, 0);
    auto* label = plainLabel(whole, words);
    label->setWordWrap(true);
    label->setMinimumWidth(label->fontMetrics().averageCharWidth() * 30);
    field->setParent(whole);
    across->addWidget(label, 1);
    across->addWidget(field, 1, Qt::AlignLeft);
    return whole;
}

// In the words of the place, which may be another by now.
void NextEntry::name() {
    combs_->setText(words::worded(tr("Enter the %{combs}")));
    beesRow_->findChild<QLabel*>()->setText(words::worded(tr("How many bees: %{combs} they cover, on both sides")));
    combsRow_->findChild<QLabel*>()->setText(
        words::worded(tr("What the %{combs} hold, %{comb} by %{comb} or counted quickly")));
}

bool NextEntry::lacks(const ColonyEntry& colony) {
    return colony.problems.empty() && (lacksBees(colony) || lacksStores(colony));
}

void NextEntry::show(const ColonyEntry& colony, bool writable, const ReferenceData* reference) {
    const bool worked =
        colony.id == colony_ && holds(this); // what is entered stays under the hand till the keeper goes on
    colony_ = colony.id;
    lacksStores_ = lacksStores(colony);
    const bool wanted = writable && (lacks(colony) || (worked && colony.problems.empty()));
    setVisible(wanted);
    if (!wanted) return;
    name();
    if (reference) bees_->useLimits(*reference), weighing_->useLimits(*reference);
    beesRow_->setVisible(lacksBees(colony) || (worked && !beesRow_->isHidden()));
    if (lacksBees(colony) && !bees_->number()->hasFocus()) bees_->suggest(BeesToldBy::CoveredCombs);
    for (auto* each : {combsRow_, weighingRow_})
        each->setVisible(lacksStores_ || (worked && !each->isHidden() && holds(each)));
    if (lacksStores_ && !holds(weighingRow_)) weighing_->show(std::nullopt, colony.record.asOf);
    const auto ask = [](AskRow* in, advice::AskKind kind, bool open) {
        in->show(open ? std::optional(advice::Ask{kind}) : std::nullopt, nullptr);
    };
    ask(flow_, advice::AskKind::FlowToCome, !colony.record.site.autumnFlow);
    ask(supers_, advice::AskKind::SuperFor, hasSuper(colony) && !colony.record.hive.supersFor);
}

void NextEntry::focusFirst() {
    if (!beesRow_->isHidden()) bees_->number()->setFocus();
    else combs_->setFocus();
}

} // namespace winterlarder::desk
