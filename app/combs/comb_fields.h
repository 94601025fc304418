// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/drawn_combs.h"
#include "fields/askable_label.h"
#include "models/comb_typing.h"

#include <QWidget>

#include <map>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace winterlarder::desk {

class QuantityField;

//! The chosen comb in numbers: each share, what is built, how it was seen, its bar's width; and the way to measure it on a
//! photograph. Tested: tests/app/comb_fields_test.cpp.
class CombFields : public QWidget {
    Q_OBJECT

public:
    explicit CombFields(QWidget* parent = nullptr);

    //! Limits of what may be written; before it there are none.
    void useLimits(const ReferenceData& reference);
    //! Nothing: no comb is chosen.
    void show(const std::optional<DrawnComb>& comb, bool severalBoxes);
    QDoubleSpinBox* share(Zone zone) const { return shares_.at(zone); }
    QComboBox* seen() const { return seen_; }

signals:
    void combEdited(const winterlarder::book::CombRecord& comb);
    void photographAsked();
    void numberAsked(winterlarder::text::AskedNumber number, QPoint under);

private:
    void buildSeen();
    void buildWidth();
    void add(QWidget* field, const QString& name);
    void tell(const book::CombRecord& comb);

    std::optional<DrawnComb> comb_;
    QLabel* name_;
    std::map<Zone, QDoubleSpinBox*> shares_;
    QLabel* empty_;
    AskableLabel* holds_;
    QDoubleSpinBox* built_;
    QComboBox* seen_;
    QuantityField* width_;
    QPushButton* photograph_;
};

} // namespace winterlarder::desk
