// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/fields.h"

#include "fields/day_field.h"
#include "fields/quantity_field.h"
#include "fields/settled_choice.h"
#include "models/plain_tip.h"
#include "models/words.h"
#include "theme/card.h"
#include "theme/flow_layout.h"
#include "theme/stop_listening.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

namespace winterlarder::desk {

namespace {

// What was entered is the book's: the field itself has nothing left to take back.
void calmAfterEntry(QAbstractSpinBox* field) {
    auto* line = field->findChild<QLineEdit*>();
    QObject::connect(field, &QAbstractSpinBox::editingFinished, line, [line] { line->setModified(false); });
}

} // namespace

QDoubleSpinBox* numberField(QWidget* parent, const QString& name, double least, double most, double step, int decimals,
                            const QString& unit) {
    auto* field = new QDoubleSpinBox(parent);
    field->setRange(least, most);
    field->setSingleStep(step);
    field->setDecimals(decimals);
    if (!unit.isEmpty()) field->setSuffix(QStringLiteral(" ") + unit);
    field->setKeyboardTracking(false);
    field->setAccessibleName(name);
    field->setToolTip(plainTip(name));
    field->setAlignment(Qt::AlignRight);
    calmAfterEntry(field);
    return field;
}

void nameChoice(QComboBox* choice, const QString& name) {
    choice->setAccessibleName(name);
    choice->setAccessibleDescription(name);
}

void setQuietly(QDoubleSpinBox* field, double value) {
    const QSignalBlocker quiet(field);
    field->setValue(value);
}

BeesField::BeesField(QWidget* parent) : QWidget(parent) {
    kind_ = new QComboBox(this);
    nameChoice(kind_, tr("How the bees were counted"));
    kind_->addItem(tr("not counted"), static_cast<int>(BeesToldBy::NotTold));
    kind_->addItem({}, static_cast<int>(BeesToldBy::CoveredCombs));
    kind_->addItem(tr("seams of bees"), static_cast<int>(BeesToldBy::Seams));
    kind_->addItem(tr("bees"), static_cast<int>(BeesToldBy::Count));
    number_ = numberField(this, {}, 0, 100000, 0.5, 1, {});
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(number_);
    layout->addWidget(kind_);
    setTabOrder(number_, kind_);
    name();
    const auto kind = [this] { return static_cast<BeesToldBy>(kind_->currentData().toInt()); };
    settled_ = new SettledChoice(
        kind_, [this, kind] { fit(kind()); },
        [this, kind](SettledChoice::How how) {
            // No number yet is not "no bees".
            if (kind() == BeesToldBy::NotTold || number_->value() > 0) return tell();
            if (how == SettledChoice::How::Stepped) return;
            number_->setFocus();
            number_->selectAll();
        });
    connect(number_, &QDoubleSpinBox::valueChanged, this, &BeesField::tell);
}

void BeesField::name() {
    number_->setAccessibleName(words::worded(tr("Number of %{combs}, seams or bees")));
    kind_->setItemText(kind_->findData(static_cast<int>(BeesToldBy::CoveredCombs)),
                       words::worded(tr("%{combs} covered")));
}

void BeesField::showEvent(QShowEvent* event) {
    name();
    QWidget::showEvent(event);
}

BeesField::~BeesField() { stopListeningToChildren(this); }

void BeesField::fit(BeesToldBy kind) {
    const QSignalBlocker quiet(number_);
    const bool single = kind == BeesToldBy::Count;
    number_->setDecimals(single ? 0 : 1);
    number_->setSingleStep(single ? 500 : 0.5);
    if (const auto known = limits_.find(kind); known != limits_.end())
        number_->setRange(known->second.least, known->second.most);
    number_->setVisible(kind != BeesToldBy::NotTold);
}

void BeesField::useLimits(const ReferenceData& reference) {
    if (!limits_.empty()) return;
    limits_ = {{BeesToldBy::CoveredCombs, reference.range("bees.covered_combs")},
               {BeesToldBy::Seams, reference.range("bees.seams")},
               {BeesToldBy::Count, reference.range("bees.count")}};
}

void BeesField::show(const book::BeesRecord& bees) {
    name();
    if (settled_->isOpen()) return; // the hand is on it
    const auto kind = beesToldBy(bees);
    fit(kind);
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(kind)));
    setQuietly(number_, beesTold(bees));
}

void BeesField::suggest(BeesToldBy kind) {
    name();
    if (settled_->isOpen()) return;
    fit(kind);
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(kind)));
    setQuietly(number_, 0);
}

void BeesField::tell() { emit valueEntered(static_cast<BeesToldBy>(kind_->currentData().toInt()), number_->value()); }

namespace {

QuantityField* weightField(QWidget* parent, const QString& name) {
    auto* field = new QuantityField(parent, name, QuantityField::Kind::Mass, nullptr);
    field->setMaximumWidth(field->fontMetrics().averageCharWidth() * 11);
    return field;
}

} // namespace

WeighingField::WeighingField(QWidget* parent) : QWidget(parent) {
    kind_ = new QComboBox(this);
    nameChoice(kind_, tr("How the hive was weighed"));
    kind_->addItem(tr("not weighed"), static_cast<int>(WeighedBy::NotWeighed));
    kind_->addItem(tr("on a scale"), static_cast<int>(WeighedBy::Scale));
    kind_->addItem(tr("both sides lifted"), static_cast<int>(WeighedBy::BothSides));
    kind_->addItem(tr("one side lifted"), static_cast<int>(WeighedBy::OneSide));
    kind_->addItem(tr("hefted"), static_cast<int>(WeighedBy::Heft));
    first_ = weightField(this, tr("Weight, all of the hive or the left side"));
    second_ = weightField(this, tr("Weight, right side"));
    heft_ = new QComboBox(this);
    nameChoice(heft_, tr("How heavy it felt"));
    heft_->setPlaceholderText(tr("light or heavy?"));
    heft_->addItem(tr("light"), static_cast<int>(book::HeftWord::Light));
    heft_->addItem(tr("fair"), static_cast<int>(book::HeftWord::Fair));
    heft_->addItem(tr("heavy"), static_cast<int>(book::HeftWord::Heavy));
    on_ = plainLabel(this, tr("on"));
    date_ = new DayField(this, tr("Day of weighing"));
    auto* layout = new FlowLayout(this, 4, 4);
    for (QWidget* part : std::initializer_list<QWidget*>{kind_, first_, second_, heft_, on_, date_}) {
        layout->addWidget(part);
        layout->setAlignment(part, Qt::AlignTop); // what is said below the day moves nothing
    }
    on_->setFixedHeight(first_->sizeHint().height());
    settled_ = new SettledChoice(
        kind_,
        [this] {
            fit(static_cast<WeighedBy>(kind_->currentData().toInt()));
            heft_->setCurrentIndex(-1);
        },
        [this](SettledChoice::How how) {
            if (how == SettledChoice::How::Picked && !first_->isHidden()) first_->setFocus();
            if (how == SettledChoice::How::Picked && !heft_->isHidden()) heft_->setFocus();
            tell();
        });
    felt_ = new SettledChoice(
        heft_, [] {}, [this](SettledChoice::How) { tell(); });
    connect(first_, &QuantityField::valueEntered, this, &WeighingField::tell);
    connect(second_, &QuantityField::valueEntered, this, &WeighingField::tell);
    connect(date_, &DayField::valueEntered, this, &WeighingField::tell);
}

WeighingField::~WeighingField() { stopListeningToChildren(this); }

void WeighingField::fit(WeighedBy kind) {
    const bool number = kind == WeighedBy::Scale || kind == WeighedBy::BothSides || kind == WeighedBy::OneSide;
    first_->setVisible(number);
    if (const auto& limits = kind == WeighedBy::Scale ? gross_ : lift_) {
        first_->limitTo(*limits);
        second_->limitTo(*limits);
    }
    second_->setVisible(kind == WeighedBy::BothSides);
    heft_->setVisible(kind == WeighedBy::Heft);
    on_->setVisible(kind != WeighedBy::NotWeighed);
    date_->setVisible(kind != WeighedBy::NotWeighed);
}

void WeighingField::useLimits(const ReferenceData& reference) {
    if (gross_) return;
    gross_ = *reference.field("weighings.gross_kg");
    lift_ = *reference.field("weighings.lift_kg");
}

void WeighingField::show(const std::optional<book::WeighingRecord>& weighing, Date asOf) {
    if (settled_->isOpen() || felt_->isOpen()) return; // the hand is on it
    const auto kind = weighedBy(weighing);
    fit(kind);
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(kind)));
    date_->setRange(asOf.plusDays(-book::oldestObservationDays), asOf);
    date_->show(weighing ? weighing->date : asOf);
    if (!weighing) return;
    if (const auto* scale = std::get_if<book::ScaleReading>(&weighing->reading)) first_->show(scale->gross.value());
    if (const auto* heft = std::get_if<book::HeftWord>(&weighing->reading))
        heft_->setCurrentIndex(heft_->findData(static_cast<int>(*heft)));
    if (const auto* lift = std::get_if<book::LiftReading>(&weighing->reading)) {
        first_->show(lift->sides.front().value());
        second_->show(lift->sides.size() > 1 ? std::optional(lift->sides[1].value()) : std::nullopt);
    }
}

void WeighingField::tell() {
    const auto kind = static_cast<WeighedBy>(kind_->currentData().toInt());
    const Date date = date_->day();
    const Mass first = kilograms(first_->value().value_or(0)), second = kilograms(second_->value().value_or(0));
    // A weight of nothing is a weight not read yet, as is a heft of which nobody said how it felt.
    const bool read = kind == WeighedBy::Heft ? heft_->currentIndex() >= 0 : first.value() > 0;
    if (kind == WeighedBy::NotWeighed) return emit weighed(std::nullopt);
    if (!read) return;
    if (kind == WeighedBy::Scale) emit weighed(book::WeighingRecord{date, book::ScaleReading{first}});
    if (kind == WeighedBy::OneSide) emit weighed(book::WeighingRecord{date, book::LiftReading{{first}}});
    if (kind == WeighedBy::BothSides && second.value() > 0)
        emit weighed(book::WeighingRecord{date, book::LiftReading{{first, second}}});
    if (kind == WeighedBy::Heft)
        emit weighed(book::WeighingRecord{date, static_cast<book::HeftWord>(heft_->currentData().toInt())});
}

} // namespace winterlarder::desk
