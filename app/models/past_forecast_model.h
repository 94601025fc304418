// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/followed_winter.h"

#include <QAbstractTableModel>

namespace winterlarder::desk {

//! Past forecasts beside what happened, newest first.
class PastForecastModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        WinterColumn,
        ColonyColumn,
        DayColumn,
        ForecastColumn,
        SeenColumn,
        InsideColumn,
        ScoreColumn,
        HandbookColumn,
        ColumnCount
    };
    explicit PastForecastModel(QObject* parent = nullptr);

    void show(std::vector<PastForecast> forecasts);
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<PastForecast> forecasts_;
};

} // namespace winterlarder::desk
