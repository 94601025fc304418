// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/colonies_field.h"

#include "theme/card.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

constexpr int mostColonies = 60; // at once; more come with a table
constexpr int mostBoxes = 6;

} // namespace

ColoniesField::ColoniesField(QWidget* parent) : QWidget(parent) {
    number_ = new QSpinBox(this);
    number_->setRange(1, mostColonies);
    number_->setAccessibleName(tr("How many colonies"));
    auto* label = plainLabel(this, tr("How &many:"));
    label->setBuddy(number_);
    auto* across = new QHBoxLayout;
    across->addWidget(label);
    across->addWidget(number_);
    across->addStretch(1);
    down_ = new QVBoxLayout(this);
    down_->setContentsMargins(0, 0, 0, 0);
    down_->setSpacing(4);
    down_->addLayout(across);
    connect(number_, &QSpinBox::valueChanged, this, &ColoniesField::setRows);
    setRows(1);
}

void ColoniesField::setRows(int count) {
    while (static_cast<int>(rows_.size()) < count) addRow();
    while (static_cast<int>(rows_.size()) > count) {
        rows_.back().whole->hide();
        rows_.back().whole->deleteLater();
        rows_.pop_back();
    }
}

void ColoniesField::addRow() {
    const auto at = rows_.size();
    const int number = static_cast<int>(at) + 1;
    auto* whole = new QWidget(this);
    Row row{whole, new QLineEdit(tr("Colony %1").arg(number), whole), new QSpinBox(whole)};
    row.name->setAccessibleName(tr("Name of colony %1").arg(number));
    row.boxes->setRange(1, mostBoxes);
    row.boxes->setValue(proposed_);
    row.boxes->setPrefix(tr("boxes: "));
    row.boxes->setAccessibleName(tr("Boxes of colony %1 in winter").arg(number));
    row.boxes->setVisible(!oneRoom_);
    auto* across = new QHBoxLayout(whole);
    across->setContentsMargins(0, 0, 0, 0);
    across->addWidget(row.name, 1);
    across->addWidget(row.boxes);
    connect(row.boxes, &QSpinBox::valueChanged, this, [this, at] { rows_[at].byHand = true; });
    QWidget* before = rows_.empty() ? static_cast<QWidget*>(number_) : rows_.back().boxes;
    setTabOrder(before, row.name);
    setTabOrder(row.name, row.boxes);
    down_->addWidget(whole);
    rows_.push_back(row);
}

void ColoniesField::proposeBoxes(int boxes, bool oneRoom) {
    proposed_ = boxes;
    oneRoom_ = oneRoom;
    for (auto& row : rows_) {
        row.boxes->setVisible(!oneRoom);
        if (row.byHand) continue;
        row.boxes->setValue(boxes);
        row.byHand = false;
    }
}

std::vector<ColoniesField::Entered> ColoniesField::colonies() const {
    std::vector<Entered> entered;
    for (const auto& row : rows_) entered.push_back({row.name->text().trimmed(), oneRoom_ ? 1 : row.boxes->value()});
    return entered;
}

int ColoniesField::faultyRow() const {
    const auto all = colonies();
    for (std::size_t row = 0; row < all.size(); ++row) {
        if (all[row].name.isEmpty()) return static_cast<int>(row);
        for (std::size_t before = 0; before < row; ++before)
            if (all[before].name == all[row].name) return static_cast<int>(row);
    }
    return -1;
}

QString ColoniesField::fault() const {
    const int row = faultyRow();
    if (row < 0) return {};
    const QString name = colonies()[static_cast<std::size_t>(row)].name;
    return name.isEmpty() ? tr("Colony %1 needs a name.").arg(row + 1)
                          : tr("Two colonies are called %1; give each a name of its own.").arg(name);
}

void ColoniesField::goToFault() {
    if (const int row = faultyRow(); row >= 0) name(row)->setFocus();
}

QLineEdit* ColoniesField::name(int colony) const { return rows_.at(static_cast<std::size_t>(colony)).name; }
QSpinBox* ColoniesField::boxes(int colony) const { return rows_.at(static_cast<std::size_t>(colony)).boxes; }

} // namespace winterlarder::desk
