// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/askable_label.h"
#include "models/comb_edits.h"
#include "models/yard.h"

#include <QWidget>

#include <functional>
#include <optional>

class QBoxLayout;
class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace winterlarder::desk {

class BeesField;
class CombDrawing;
class CombEntry;
class DoubtBar;
class WeighingField;

//! In the hive: the combs face on, the chosen comb's shares, the bees and the newest weighing, all editable.
class LookPage : public QWidget {
    Q_OBJECT

public:
    explicit LookPage(Yard* yard, QWidget* parent = nullptr);

    void show(ColonyId id);
    CombDrawing* drawing() const;
    CombEntry* combs() const { return combs_; }
    BeesField* bees() const { return bees_; }
    WeighingField* weighing() const { return weighing_; }
    DoubtBar* doubts() const { return doubts_; } //!< asks about the newest weighing, then about the look
    QPushButton* newLookButton() const { return newLook_; }
    QDoubleSpinBox* share(Zone zone) const;

signals:
    void combChosen(int comb);
    void numberAsked(winterlarder::text::AskedNumber number, QPoint under);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* buildRecordFields();
    QLayout* buildHead();
    void beginLook();
    void editLook(const std::function<void(book::Look&)>& edit);
    void refresh();
    void showEvidence(const ColonyEntry& colony);
    QString heading(const ColonyEntry& colony) const;
    void writeMeasured(int comb, const book::CombRecord& record, const QStringList& photographs, book::LookId measured);
    std::optional<book::Look> lookNumbered(book::LookId id) const;
    QStringList picturesOfLook() const;
    void writeWeighing(const std::optional<book::WeighingRecord>& weighing);
    void connectFields();
    void connectDoubts();
    void askAboutDoubts(bool editable);
    void weighInstead(double kilograms);
    void beSure();

    Yard* yard_;
    ColonyId colony_;
    QLabel* heading_;
    QBoxLayout* head_ = nullptr; //!< heading and buttons, beside each other or not
    QPushButton* newLook_;
    QPushButton* lookDetails_;
    QPushButton* hive_;
    CombEntry* combs_;
    QLabel* nothing_;
    BeesField* bees_;
    WeighingField* weighing_;
    DoubtBar* doubts_;
    std::optional<book::Weighing> doubted_; //!< the weighing the question is about; nothing: the look
    AskableLabel* evidence_;
};

} // namespace winterlarder::desk
