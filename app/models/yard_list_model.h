// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/due.h"
#include "models/yard.h"

#include <QAbstractListModel>

#include <map>
#include <optional>
#include <vector>

namespace winterlarder::desk {

enum class YardOrder { Urgency, Name };

//! The yard and its colonies, one row each; the yard itself is the first row. Rows keep their place while an answer is being
//! computed. Tested with QAbstractItemModelTester: tests/app/models_test.cpp.
class YardListModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        ColonyRole = Qt::UserRole, //!< ColonyId; id 0 for the yard's own row
        StoresRole,                //!< typical kg, double; invalid where not known
        LowRole,                   //!< kg
        HighRole,                  //!< kg
        NeedRole,                  //!< kg
        ScaleRole,                 //!< kg at the bar's full length, the same for all rows
        VerdictRole,               //!< words
        IconRole,                  //!< name of the drawing
        DueRole,                   //!< words
        PendingRole,               //!< bool: the answer shown is being made anew
    };

    explicit YardListModel(Yard* yard, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

    void setOrder(YardOrder order);
    YardOrder order() const { return order_; }
    const std::vector<ColonyId>& inOrder() const { return rows_; } //!< the colonies as they stand in the list
    ColonyId colonyAt(int row) const;                              //!< id 0 for the yard's row
    int rowOf(ColonyId id) const;                                  //!< 0 where it is gone or the yard is meant

private:
    //! What a colony is sorted by.
    struct Place {
        UrgencyKey urgency;
        QString name;
        bool operator==(const Place&) const = default;
    };
    void anew();
    void refresh(ColonyId id);
    void arrange();
    void sortRows(std::vector<ColonyId>& rows) const;
    Place placeOf(const ColonyEntry& colony) const;
    Due dueShown(const ColonyEntry& colony) const; //!< of the keeper's plan where there is one
    void tellAll();
    void forgetSums();
    QVariant followedData(const FollowedWinter& followed, int role) const;
    QVariant colonyData(const ColonyEntry& colony, int role) const;
    QVariant yardData(int role) const;
    QString spoken(const ColonyEntry& colony) const;
    double scale() const;
    int dueThisWeek() const;

    Yard* yard_;
    YardOrder order_ = YardOrder::Urgency;
    std::vector<ColonyId> rows_;
    std::map<ColonyId, Place> places_;    //!< of every colony, as it was last told
    mutable std::optional<double> scale_; //!< worked out when first asked for after a change
    mutable std::optional<int> dueThisWeek_;
};

} // namespace winterlarder::desk
