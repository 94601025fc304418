// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/boxes_field.h"

#include "widgets/fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

void offerFormats(QComboBox* box, const ReferenceData& reference) {
    for (const auto& format : reference.formats)
        box->addItem(BoxesField::tr("%1 (%2)").arg(QString::fromStdString(format.name), QString::fromStdString(format.region)), QString::fromStdString(format.id));
}

BoxesField::BoxesField(QWidget* parent, const ReferenceData& reference) : QWidget(parent), reference_(reference) {
    down_ = new QVBoxLayout(this);
    down_->setContentsMargins(0, 0, 0, 0);
    down_->setSpacing(3);
    add_ = new QPushButton(tr("One more bo&x on top"), this);
    connect(add_, &QPushButton::clicked, this, [this] {
        addLine(lines_.empty() ? book::BoxRecord{reference_.formats.front().id, {}, false} : boxes().back());
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
    Line line{whole, new QComboBox(whole), new QSpinBox(whole), new QCheckBox(tr("super"), whole), new QPushButton(tr("Off"), whole)};
    offerFormats(line.format, reference_);
    if (const auto* own = std::get_if<book::OwnFormat>(&box.format)) {
        own_.push_back(*own);
        line.format->addItem(tr("own measures"), static_cast<int>(own_.size()) - 1);
        line.format->setCurrentIndex(line.format->count() - 1);
    } else {
        line.format->setCurrentIndex(line.format->findData(QString::fromStdString(std::get<std::string>(box.format))));
    }
    line.format->setMinimumContentsLength(26);
    line.format->setToolTip(line.format->currentText());
    connect(line.format, &QComboBox::currentTextChanged, line.format, &QComboBox::setToolTip);
    line.format->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    line.combs->setRange(0, 40);
    line.combs->setSpecialValueText(tr("as usual"));
    line.combs->setPrefix(tr("combs: "));
    line.combs->setValue(box.combs.value_or(0));
    line.super->setChecked(box.super);
    auto* across = new QHBoxLayout(whole);
    across->setContentsMargins(0, 0, 0, 0);
    across->addWidget(line.format, 1);
    for (QWidget* part : std::initializer_list<QWidget*>{line.combs, line.super, line.away}) across->addWidget(part);
    connect(line.away, &QPushButton::clicked, this, [this, whole] {
        removeLine(whole);
        name();
    }, Qt::QueuedConnection);
    lines_.push_back(line);
    down_->insertWidget(1, whole);
    QWidget* before = add_;
    for (QWidget* part : std::initializer_list<QWidget*>{line.format, line.combs, line.super, line.away}) {
        setTabOrder(before, part);
        before = part;
    }
}

void BoxesField::removeLine(const QWidget* whole) {
    const auto found = std::find_if(lines_.begin(), lines_.end(), [whole](const Line& line) { return line.whole == whole; });
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
        line.combs->setAccessibleName(tr("Combs in box %1").arg(number));
        line.super->setAccessibleName(tr("Box %1 is a super").arg(number));
        line.away->setAccessibleName(tr("Take box %1 off").arg(number));
        line.away->setEnabled(lines_.size() > 1);
    }
}

std::vector<book::BoxRecord> BoxesField::boxes() const {
    std::vector<book::BoxRecord> boxes;
    for (const auto& line : lines_) {
        const auto choice = line.format->currentData();
        const bool shipped = choice.userType() == QMetaType::QString;
        const book::FormatChoice format = shipped ? book::FormatChoice(choice.toString().toStdString()) : book::FormatChoice(own_[static_cast<std::size_t>(choice.toInt())]);
        boxes.push_back({format, line.combs->value() > 0 ? std::optional(line.combs->value()) : std::nullopt, line.super->isChecked()});
    }
    return boxes;
}

} // namespace winterlarder::desk
