// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_list_model.h"

#include "models/plain_tip.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "text/follow_words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace winterlarder::desk {

YardListModel::YardListModel(Yard* yard, QObject* parent) : QAbstractListModel(parent), yard_(yard) {
    for (const auto& colony : yard_->colonies()) {
        rows_.push_back(colony.id);
        places_[colony.id] = placeOf(colony);
    }
    yard_->onChange(this, {YardChange::Colonies}, &YardListModel::anew);
    yard_->onChange(this, {YardChange::Record, YardChange::Answer, YardChange::Followed}, &YardListModel::refresh);
    yard_->onChange(this, {YardChange::Visits}, [this] {
        for (const auto& colony : yard_->colonies())
            if (!colony.pending) places_[colony.id] = placeOf(colony);
        arrange();
        tellAll();
    });
}

int YardListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size()) + 1;
}

ColonyId YardListModel::colonyAt(int row) const {
    return row >= 1 && row <= static_cast<int>(rows_.size()) ? rows_[static_cast<std::size_t>(row - 1)] : ColonyId{};
}

int YardListModel::rowOf(ColonyId id) const {
    const auto found = std::find(rows_.begin(), rows_.end(), id);
    return found == rows_.end() ? 0 : static_cast<int>(found - rows_.begin()) + 1;
}

// Colonies that stay keep their row, and a view its place.
void YardListModel::anew() {
    places_.clear();
    for (const auto& colony : yard_->colonies()) places_[colony.id] = placeOf(colony);
    std::vector<ColonyId> now;
    for (const auto id : rows_)
        if (places_.contains(id)) now.push_back(id);
    std::set<ColonyId> kept(now.begin(), now.end());
    for (const auto& colony : yard_->colonies())
        if (!kept.contains(colony.id)) now.push_back(colony.id);
    if (now == rows_) return tellAll();
    forgetSums();
    beginResetModel();
    rows_ = std::move(now);
    sortRows(rows_);
    endResetModel();
}

void YardListModel::refresh(ColonyId id) {
    const auto* colony = yard_->find(id);
    if (colony && !colony->pending) {
        const auto before = std::exchange(places_[id], placeOf(*colony));
        if (before != places_[id]) arrange();
    }
    tellAll();
}

void YardListModel::forgetSums() {
    scale_.reset();
    dueThisWeek_.reset();
}

// The bars share a scale, so any row may look otherwise.
void YardListModel::tellAll() {
    forgetSums();
    emit dataChanged(index(0), index(rowCount() - 1));
}

YardListModel::Place YardListModel::placeOf(const ColonyEntry& colony) const {
    const QString name = QString::fromStdString(colony.record.colony.value_or(""));
    if (const auto followed = yard_->leading(colony.id)) return {urgencyOf(*followed), name};
    auto urgency = colony.answered ? urgencyOf(*colony.answered) : UrgencyKey::last();
    if (const auto planned = dueOf(colony.visits, colony.answered.get()))
        std::tie(urgency.noDay, urgency.day) = std::pair(false, planned->date);
    return {urgency, name};
}

Due YardListModel::dueShown(const ColonyEntry& colony) const {
    if (const auto planned = dueOf(colony.visits, colony.answered.get())) return *planned;
    return colony.answered ? dueOf(*colony.answered) : Due{};
}

void YardListModel::setOrder(YardOrder order) {
    order_ = order;
    arrange();
}

void YardListModel::sortRows(std::vector<ColonyId>& rows) const {
    std::stable_sort(rows.begin(), rows.end(), [this](ColonyId a, ColonyId b) {
        const auto &one = places_.at(a), &other = places_.at(b);
        return order_ == YardOrder::Name ? QString::localeAwareCompare(one.name, other.name) < 0
                                         : one.urgency < other.urgency;
    });
}

void YardListModel::arrange() {
    auto sorted = rows_;
    sortRows(sorted);
    if (sorted == rows_) return;
    emit layoutAboutToBeChanged({}, QAbstractItemModel::VerticalSortHint);
    const auto old = persistentIndexList();
    std::vector<ColonyId> held;
    for (const auto& index : old) held.push_back(colonyAt(index.row()));
    rows_ = std::move(sorted);
    QModelIndexList moved;
    for (std::size_t i = 0; i < held.size(); ++i) moved.append(index(rowOf(held[i])));
    changePersistentIndexList(old, moved);
    emit layoutChanged({}, QAbstractItemModel::VerticalSortHint);
}

double YardListModel::scale() const {
    if (scale_) return *scale_;
    double most = 10;
    for (const auto& colony : yard_->colonies()) {
        if (const auto followed = yard_->leading(colony.id))
            most = std::max(most, followed->following->now.today.high.value());
        if (!colony.answered) continue;
        const auto& advice = colony.answered->answer.advice;
        if (advice.estimate) most = std::max(most, advice.estimate->spread.high.value());
        if (advice.need) most = std::max(most, advice.need->value());
    }
    scale_ = std::ceil(most / 5) * 5;
    return *scale_;
}

int YardListModel::dueThisWeek() const {
    const auto today = yard_->asOf();
    if (!today) return 0;
    if (dueThisWeek_) return *dueThisWeek_;
    int count = 0;
    for (const auto& colony : yard_->colonies()) {
        std::optional<Date> day;
        if (const auto followed = yard_->leading(colony.id)) day = dueOf(*followed).date;
        else day = dueShown(colony).date;
        if (day && day->daysSince(*today) <= 7) ++count;
    }
    dueThisWeek_ = count;
    return count;
}

QVariant YardListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    if (index.row() == 0) return yardData(role);
    const auto* colony = yard_->find(colonyAt(index.row()));
    return colony ? colonyData(*colony, role) : QVariant();
}

QVariant YardListModel::yardData(int role) const {
    switch (role) {
    case Qt::DisplayRole: return yard_->title();
    case Qt::AccessibleTextRole: return tr("%1, the whole yard: %2").arg(yard_->title(), yardData(DueRole).toString());
    case ColonyRole: return QVariant::fromValue(ColonyId{});
    case IconRole: return QStringLiteral("yard");
    case DueRole: {
        const auto count = static_cast<int>(yard_->colonies().size());
        const QString colonies = count == 1 ? tr("One colony") : tr("%n colonies", nullptr, count);
        const int due = dueThisWeek();
        return due == 0 ? tr("%1, nothing due this week").arg(colonies)
                        : tr("%1, %2 due this week").arg(colonies, QLocale().toString(due));
    }
    default: return {};
    }
}

QString YardListModel::spoken(const ColonyEntry& colony) const {
    const QString name = colonyData(colony, Qt::DisplayRole).toString();
    if (!colony.answered || !colony.answered->answer.advice.estimate)
        return tr("%1: %2, %3")
            .arg(name, colonyData(colony, VerdictRole).toString(), colonyData(colony, DueRole).toString());
    return tr("%1: %2, %3; %4 in the hive")
        .arg(name, colonyData(colony, VerdictRole).toString(), colonyData(colony, DueRole).toString(),
             words::spread(colony.answered->answer.advice.estimate->spread));
}

// A winter that is followed: how it goes, in place of the autumn's question asked again.
QVariant YardListModel::followedData(const FollowedWinter& followed, int role) const {
    const auto& q = *followed.colony.question;
    const auto& f = *followed.following;
    const bool living = f.state != tracking::FollowState::Dead;
    switch (role) {
    case StoresRole: return living ? QVariant(f.now.today.typical.value()) : QVariant();
    case LowRole: return living ? QVariant(f.now.today.low.value()) : QVariant();
    case HighRole: return living ? QVariant(f.now.today.high.value()) : QVariant();
    case NeedRole:
        return living ? QVariant((f.now.today.typical - f.now.atForage.typical + q.reserve).value()) : QVariant();
    case VerdictRole: return words::followedInShort(f, q.today);
    case IconRole: return words::iconName(words::likeness(f, q.today));
    case DueRole:
        if (living && isFedToday(f, q.today)) return tr("feed today");
        if (living && f.feed) return tr("feed by %1").arg(words::date(q.year.date(f.feed->by)));
        if (living && f.nextWeighing) return tr("weigh by %1").arg(words::date(f.nextWeighing->date));
        return QString();
    default: return {};
    }
}

QVariant YardListModel::colonyData(const ColonyEntry& colony, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return colony.record.colony ? QString::fromStdString(*colony.record.colony) : tr("Colony without a name");
    case Qt::AccessibleTextRole: return spoken(colony);
    case Qt::ToolTipRole: return plainTip(spoken(colony));
    case ColonyRole: return QVariant::fromValue(colony.id);
    case PendingRole: return colony.pending || yard_->awaitsFollowing(colony.id);
    case ScaleRole: return scale();
    default: break;
    }
    if (const auto followed = yard_->leading(colony.id)) return followedData(*followed, role);
    if (!colony.problems.empty()) {
        if (role == VerdictRole) return isOurs(colony.problems) ? tr("not worked out") : tr("records disagree");
        if (role == IconRole) return words::iconName(advice::Verdict::CannotSay);
        return {};
    }
    if (!colony.answered) return role == VerdictRole ? QVariant(QStringLiteral("\u2026")) : QVariant();
    const auto& advice = colony.answered->answer.advice;
    switch (role) {
    case StoresRole: return advice.estimate ? QVariant(advice.estimate->spread.typical.value()) : QVariant();
    case LowRole: return advice.estimate ? QVariant(advice.estimate->spread.low.value()) : QVariant();
    case HighRole: return advice.estimate ? QVariant(advice.estimate->spread.high.value()) : QVariant();
    case NeedRole: return advice.need ? QVariant(advice.need->value()) : QVariant();
    case VerdictRole: return words::verdict(advice, words::styleOf(colony.answered->question));
    case IconRole: return words::iconName(advice.verdict);
    case DueRole: return words::due(dueShown(colony), colony.record.asOf, words::styleOf(colony.answered->question));
    default: return {};
    }
}

} // namespace winterlarder::desk
