// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/past_forecast_model.h"

#include "models/plain_tip.h"
#include "models/words.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

PastForecastModel::PastForecastModel(QObject* parent) : QAbstractTableModel(parent) {}

void PastForecastModel::show(std::vector<PastForecast> forecasts) {
    beginResetModel();
    forecasts_ = std::move(forecasts);
    std::reverse(forecasts_.begin(), forecasts_.end());
    endResetModel();
}

int PastForecastModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(forecasts_.size());
}

int PastForecastModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant PastForecastModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& forecast = forecasts_[static_cast<std::size_t>(index.row())];
    const auto& score = forecast.score;
    if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && index.column() == HandbookColumn)
        return plainTip(tr("%1: %2 to have for winter, %3 of it taken to be eaten")
                            .arg(QString::fromStdString(forecast.handbook.region),
                                 words::kilograms(forecast.handbook.toHave), words::kilograms(forecast.handbook.use)));
    if (role != Qt::DisplayRole) return {};
    const auto kg = [](double value) { return words::kilograms(Mass(value)); };
    switch (index.column()) {
    case WinterColumn:
        return QStringLiteral("%1/%2").arg(forecast.autumn).arg((forecast.autumn + 1) % 100, 2, 10, QLatin1Char('0'));
    case ColonyColumn: return forecast.name;
    case DayColumn: return words::date(forecast.date);
    case ForecastColumn:
        return words::fineSpread(
            {Mass(std::max(0.0, score.low)), Mass(std::max(0.0, score.typical)), Mass(std::max(0.0, score.high))});
    case SeenColumn: return kg(score.observed);
    case InsideColumn: return score.inside() ? tr("yes") : tr("no");
    case ScoreColumn: return kg(std::abs(score.typical - score.observed));
    case HandbookColumn: return kg(score.handbookScore);
    default: return {};
    }
}

QVariant PastForecastModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || (role != Qt::DisplayRole && role != Qt::ToolTipRole)) return {};
    const bool full = role == Qt::ToolTipRole;
    switch (section) {
    case WinterColumn: return full ? tr("The autumn the forecast was made in, and the year after") : tr("winter");
    case ColonyColumn: return full ? tr("The colony it was made for") : tr("colony");
    case DayColumn: return full ? tr("The day of the reading it is compared with") : tr("day");
    case ForecastColumn:
        return full ? tr("What the autumn's forecast said this reading would be; in brackets nine in ten")
                    : tr("forecast");
    case SeenColumn: return full ? tr("What was weighed or found") : tr("happened");
    case InsideColumn: return full ? tr("Whether it lay within the band of nine in ten") : tr("within");
    case ScoreColumn: return full ? tr("How far the middle of the forecast was from what happened") : tr("off by");
    case HandbookColumn: return full ? tr("How far off the region's handbook figure was") : tr("handbook\noff by");
    default: return {};
    }
}

} // namespace winterlarder::desk
