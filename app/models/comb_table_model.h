// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/colony.h"

#include <QAbstractTableModel>

#include <functional>

namespace winterlarder::desk {

//! The look as a table: a row a comb. It holds a copy of the records to show; what is typed goes out as a wish and comes back with
//! the records. Tested with QAbstractItemModelTester: tests/app/models_test.cpp.
class CombTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        PlaceColumn,
        HoneyColumn,
        CappedColumn,
        OpenColumn,
        BroodColumn,
        BreadColumn,
        EmptyColumn,
        BuiltColumn,
        FacesColumn,
        WidthColumn,
        FedColumn,
        OldNestColumn,
        ColumnCount
    };
    //! Asks for the comb at a place to become another.
    using Edited = std::function<void(std::size_t place, const book::CombRecord& comb)>;

    explicit CombTableModel(QObject* parent = nullptr);

    //! Limits of what may be typed; before it any amount.
    void useLimits(const ReferenceData& reference) { width_ = reference.range("combs.width_mm"); }
    //! Shows a colony; `answered` may be of other records (`current` false): then only its outlines are used.
    void show(const book::ColonyCase& record, AnsweredPointer answered, bool current);
    void clear();
    void onEdited(Edited edited) { edited_ = std::move(edited); }
    const std::vector<book::CombRecord>& combs() const { return combs_; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString place(std::size_t row) const;
    QVariant shown(std::size_t row, Column column) const;
    QVariant edited(std::size_t row, Column column) const;
    Length widthOf(std::size_t row) const;
    QString honey(std::size_t row) const;
    QString shortHeader(int section) const;
    QString explained(int section) const;

    std::vector<book::CombRecord> combs_;
    AnsweredPointer answered_;
    NumberRange width_; //!< of a bar [mm]
    bool current_ = false;
    Edited edited_;
};

} // namespace winterlarder::desk
