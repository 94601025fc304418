// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/comb_edits.h"
#include "models/yard.h"

#include <QWidget>

#include <functional>
#include <map>

class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace winterlarder::desk {

class BeesField;
class CombDrawing;
class WeighingField;

//! In the hive: the combs face on, the chosen comb's shares, the bees and the newest weighing, all editable.
class LookPage : public QWidget {
    Q_OBJECT

public:
    explicit LookPage(Yard* yard, QWidget* parent = nullptr);

    void show(ColonyId id);
    CombDrawing* drawing() const { return drawing_; }
    BeesField* bees() const { return bees_; }
    WeighingField* weighing() const { return weighing_; }
    QPushButton* newLookButton() const { return newLook_; }
    QPushButton* detailsButton() const { return lookDetails_; }
    QDoubleSpinBox* share(Zone zone) const { return shares_.at(zone); }

signals:
    void combChosen(int comb);

private:
    QWidget* buildCombFields();
    QWidget* buildRecordFields();
    QLayout* buildHead();
    void beginLook();
    void refresh();
    void showComb();
    void showEvidence(const ColonyEntry& colony);
    QString heading(const ColonyEntry& colony) const;
    const book::CombRecord* chosenComb() const;
    void editComb(const book::CombRecord& comb);
    void changeChosen(const std::function<void(book::CombRecord&)>& change);
    void writeWeighing(const std::optional<book::WeighingRecord>& weighing);
    void connectFields();

    Yard* yard_;
    ColonyId colony_;
    QLabel* heading_;
    QPushButton* newLook_;
    QPushButton* lookDetails_;
    QPushButton* hive_;
    CombDrawing* drawing_;
    QLabel* nothing_;
    QWidget* combFields_;
    QLabel* combName_;
    std::map<Zone, QDoubleSpinBox*> shares_;
    QDoubleSpinBox* faces_;
    QDoubleSpinBox* width_;
    QDoubleSpinBox* built_;
    BeesField* bees_;
    WeighingField* weighing_;
    QLabel* evidence_;
};

} // namespace winterlarder::desk
