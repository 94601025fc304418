// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"
#include "theme/card.h"

class QPushButton;

namespace winterlarder::desk {

class AskRow;
class BeesField;
class WeighingField;

//! Where a colony cannot be answered yet: what to enter next, each with the field itself. It stands in the place of the winter picture, which
//! would be empty. Tested: tests/app/first_run_test.cpp.
class NextEntry : public Card {
    Q_OBJECT

public:
    explicit NextEntry(QWidget* parent = nullptr);
    //! Hidden where nothing is missing, or the book cannot be written. `reference`: limits of what may be entered; may be nothing yet.
    void show(const ColonyEntry& colony, bool writable, const ReferenceData* reference);
    //! Whether anything is missing that this asks for before an answer can be given.
    static bool lacks(const ColonyEntry& colony);

    BeesField* bees() const { return bees_; }
    WeighingField* weighing() const { return weighing_; }
    QPushButton* combsButton() const { return combs_; }
    AskRow* flow() const { return flow_; }
    void focusFirst();

signals:
    void left(); //!< the keeper went on: what was entered here need not stay any longer
    void askAnswered(winterlarder::advice::AskKind kind, double value);

private:
    QWidget* row(const QString& words, QWidget* field);
    void name();
    bool holds(const QWidget* widget) const; //!< the focus, seen
    void goOn();
    void tellOnceLeft(const QWidget* from, const QWidget* to);

    ColonyId colony_;
    bool lacksStores_ = false;

    BeesField* bees_;
    WeighingField* weighing_;
    QPushButton* combs_;
    QWidget *beesRow_, *combsRow_, *weighingRow_;
    AskRow *flow_, *supers_;
};

} // namespace winterlarder::desk
