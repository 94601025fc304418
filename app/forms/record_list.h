// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/record_list_model.h"
#include "models/yard.h"
#include "theme/named_keys.h"

#include <QTableView>
#include <QWidget>

class QLabel;
class QPushButton;

namespace winterlarder::desk {

class FlowLayout;

//! Entries of the colony being looked at, of some kinds or all: to be changed (Enter, double click) or removed (Delete), with buttons
//! for new ones. Empty it says what belongs there. Tested: tests/app/pages_test.cpp.
class RecordList : public QWidget {
    Q_OBJECT

public:
    //! No kinds: all.
    RecordList(QWidget* parent, Yard* yard, const QString& name, std::vector<book::Kind> kinds,
               const QString& whenEmpty);

    void show(ColonyId id);
    QPushButton* addButton(const QString& words, std::function<void()> act);
    QTableView* table() const { return table_; }
    const RecordListModel* model() const { return model_; }
    const RecordRow* chosen() const;               //!< null: none is, though the focus may stand on one
    void choose(book::Kind kind, std::int64_t id); //!< nothing happens where it is not in the list
    void changeChosen();
    void removeChosen();
    bool eventFilter(QObject* watched, QEvent* event) override;
    static std::vector<NamedKeys> namedKeys();

private:
    void refresh();
    void fitButtons();

    Yard* yard_;
    ColonyId colony_;
    std::vector<book::Kind> kinds_;
    RecordListModel* model_;
    QTableView* table_;
    QLabel* empty_;
    QWidget* addRow_;
    FlowLayout* adds_;
    QPushButton* change_;
    QPushButton* remove_;
    std::vector<QPushButton*> adding_;
};

//! Opens the form of an entry; nothing happens for one that is gone or has none (an advice taken).
void openRecord(QWidget* parent, Yard* yard, ColonyId colony, book::Kind kind, std::int64_t id);
//! The edit that removes an entry.
std::optional<book::SingleEdit> removalOf(book::Kind kind, std::int64_t id);

} // namespace winterlarder::desk
