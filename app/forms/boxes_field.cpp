// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/boxes_field.h"

#include "fields/fields.h"
#include "forms/own_measures.h"
#include "models/plain_tip.h"
#include "models/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int ownChoice = -1; // every other choice is the id of a format

bool isOwn(const QVariant& choice) { return choice.userType() != QMetaType::QString; }

} // namespace

void offerFormats(QComboBox* box, const ReferenceData& reference) {
    for (const auto& format : reference.formats)
        box->addItem(
            BoxesField::tr("%1 (%2)").arg(QString::fromStdString(format.name), QString::fromStdString(format.region)),
            QString::fromStdString(format.id));
}

BoxesField::BoxesField(QWidget* parent, const ReferenceData& reference) : QWidget(parent), reference_(reference) {
    down_ = new QVBoxLayout(this);
    down_->setContentsMargins(0, 0, 0, 0);
    down_->setSpacing(3);
    add_ = new QPushButton(tr("One more bo&x on top"), this);
    connect(add_, &QPushButton::clicked, this, [this] {
        book::BoxRecord box =
            lines_.empty() ? book::BoxRecord{reference_.formats.front().id, {}, false} : boxes().back();
        box.putOn.reset(); // that of the box below
        addLine(box);
        name();
    });
    down_->addWidget(add_);
}

void BoxesField::show(const std::vector<book::BoxRecord>& boxes) {
    while (!lines_.empty()) removeLine(lines_.back().whole);
    for (const auto& box : boxes) addLine(box);
    name();
}

void BoxesField::addLine(const book::BoxRecord& box) {
    auto* whole = new QWidget(this);
    Line line{whole,
              new OwnMeasures(whole, reference_),
              new QComboBox(whole),
              new QSpinBox(whole),
              new QCheckBox(tr("super"), whole),
              new QPushButton(tr("Off"), whole),
              box.putOn};
    offerFormats(line.format, reference_);
    line.format->addItem(tr("own measures"), ownChoice);
    const auto* own = std::get_if<book::OwnFormat>(&box.format);
    if (own) line.own->show(*own);
    line.format->setCurrentIndex(line.format->findData(
        own ? QVariant(ownChoice) : QVariant(QString::fromStdString(std::get<std::string>(box.format)))));
    line.format->setMinimumContentsLength(26);
    line.format->setToolTip(plainTip(line.format->currentText()));
    line.format->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    line.combs->setRange(0, static_cast<int>(reference_.range("hive.boxes.combs").most));
    line.combs->setSpecialValueText(tr("as usual"));
    line.combs->setPrefix(words::worded(tr("%{combs}: ")));
    line.combs->setValue(box.combs.value_or(0));
    line.super->setChecked(box.super);
    line.own->showAsSuper(box.super);
    line.own->setVisible(own != nullptr);
    auto* across = new QHBoxLayout;
    across->addWidget(line.format, 1);
    for (QWidget* part : std::initializer_list<QWidget*>{line.combs, line.super, line.away}) across->addWidget(part);
    auto* down = new QVBoxLayout(whole);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(3);
    down->addLayout(across);
    down->addWidget(line.own);
    connectLine(line);
    lines_.push_back(line);
    down_->insertWidget(1, whole);
    orderTab(line);
}

void BoxesField::connectLine(const Line& line) {
    connect(line.format, &QComboBox::currentTextChanged, line.format,
            [format = line.format](const QString& words) { format->setToolTip(plainTip(words)); });
    connect(line.format, &QComboBox::currentIndexChanged, this,
            [this, line, before = line.format->currentData()]() mutable {
                const auto choice = line.format->currentData();
                // Own measures begin as those of the format they take the place of.
                const bool first = isOwn(choice) && line.own->format() == book::OwnFormat{};
                if (const auto* format = first ? reference_.format(before.toString().toStdString()) : nullptr)
                    line.own->show(measuresOf(*format));
                line.own->setVisible(isOwn(choice));
                before = choice;
            });
    connect(line.super, &QCheckBox::toggled, line.own, &OwnMeasures::showAsSuper);
    connect(
        line.away, &QPushButton::clicked, this,
        [this, whole = line.whole] {
            removeLine(whole);
            name();
        },
        Qt::QueuedConnection);
}

// As it is read: the line, then what stands below it.
void BoxesField::orderTab(const Line& line) {
    QWidget* before = add_;
    std::vector<QWidget*> parts{line.format, line.combs, line.super, line.away};
    for (QWidget* field : line.own->fields()) parts.push_back(field);
    for (QWidget* part : parts) {
        setTabOrder(before, part);
        before = part;
    }
}

void BoxesField::removeLine(const QWidget* whole) {
    const auto found =
        std::find_if(lines_.begin(), lines_.end(), [whole](const Line& line) { return line.whole == whole; });
    if (found == lines_.end()) return;
    found->whole->hide();
    found->whole->deleteLater();
    lines_.erase(found);
}

// Each field says which box it belongs to; the last box stays.
void BoxesField::name() {
    int number = 0;
    for (const auto& line : lines_) {
        ++number;
        nameChoice(line.format, tr("Format of box %1 from the floor").arg(number));
        line.combs->setAccessibleName(words::worded(tr("%{Combs} in box %1")).arg(number));
        line.super->setAccessibleName(tr("Box %1 is a super").arg(number));
        line.own->name(number);
        line.away->setAccessibleName(tr("Take box %1 off").arg(number));
        line.away->setEnabled(lines_.size() > 1);
    }
}

std::vector<book::BoxRecord> BoxesField::boxes() const {
    std::vector<book::BoxRecord> boxes;
    for (const auto& line : lines_) {
        const auto choice = line.format->currentData();
        const book::FormatChoice format = isOwn(choice) ? book::FormatChoice(line.own->format())
                                                        : book::FormatChoice(choice.toString().toStdString());
        boxes.push_back({format, line.combs->value() > 0 ? std::optional(line.combs->value()) : std::nullopt,
                         line.super->isChecked(), line.putOn});
    }
    return boxes;
}

QString BoxesField::fault() const {
    int number = 0;
    for (const auto& line : lines_) {
        ++number;
        if (const QString wrong = isOwn(line.format->currentData()) ? line.own->fault() : QString(); !wrong.isEmpty())
            return tr("Box %1 from the floor, %2").arg(QString::number(number), wrong);
    }
    return {};
}

void BoxesField::goToFault() {
    for (const auto& line : lines_)
        if (auto* field = isOwn(line.format->currentData()) ? line.own->faultyField() : nullptr)
            return field->setFocus();
}

OwnMeasures* BoxesField::measures(int box) const { return lines_.at(static_cast<std::size_t>(box)).own; }

} // namespace winterlarder::desk
