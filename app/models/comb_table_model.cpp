// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/comb_table_model.h"

#include "models/comb_edits.h"
#include "models/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

namespace {

std::optional<Zone> zoneOf(int column) {
    switch (column) {
    case CombTableModel::CappedColumn: return Zone::Capped;
    case CombTableModel::OpenColumn: return Zone::Open;
    case CombTableModel::BroodColumn: return Zone::Brood;
    case CombTableModel::BreadColumn: return Zone::BeeBread;
    default: return std::nullopt;
    }
}

bool isFlag(int column) { return column == CombTableModel::FedColumn || column == CombTableModel::OldNestColumn; }

// Of a heading and of what stands below it.
QVariant alignment(int column) {
    return QVariant(Qt::AlignVCenter |
                    (column == CombTableModel::PlaceColumn || isFlag(column) ? Qt::AlignLeft : Qt::AlignRight));
}

bool withNumber(book::CombRecord& comb, int column, double value, NumberRange widths) {
    if (const auto zone = zoneOf(column)) {
        if (value < 0 || value > 100) return false;
        comb = withShare(comb, *zone, value / 100);
    } else if (column == CombTableModel::BuiltColumn) {
        if (value < 0 || value > 100) return false;
        comb.built = value / 100;
    } else if (column == CombTableModel::FacesColumn) {
        if (value < 0 || value > 2 || value != std::floor(value)) return false;
        comb.facesSeen = static_cast<int>(value);
    } else if (column == CombTableModel::WidthColumn) {
        const Length width = lengthOf(value, words::shownLength());
        if (!widths.holds(width.value())) return false;
        comb.width = width;
    } else {
        return false;
    }
    return true;
}

} // namespace

CombTableModel::CombTableModel(QObject* parent) : QAbstractTableModel(parent) {}

void CombTableModel::show(const book::ColonyCase& record, AnsweredPointer answered, bool current) {
    const auto* combs = std::get_if<std::vector<book::CombRecord>>(&record.combs);
    std::vector<book::CombRecord> shown = combs ? *combs : std::vector<book::CombRecord>();
    const bool sameShape = shown.size() == combs_.size();
    if (!sameShape) beginResetModel();
    combs_ = std::move(shown);
    answered_ = std::move(answered);
    current_ = current;
    if (!sameShape) endResetModel();
    else if (!combs_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void CombTableModel::clear() {
    beginResetModel();
    combs_.clear();
    answered_.reset();
    endResetModel();
}

int CombTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(combs_.size());
}

int CombTableModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString CombTableModel::place(std::size_t row) const {
    if (!answered_ || row >= answered_->question.combs.size()) return QLocale().toString(static_cast<int>(row) + 1);
    const auto& comb = answered_->question.combs[row];
    if (comb.inSuper) return words::worded(tr("super, %{comb} %1"), answered_.get()).arg(comb.place + 1);
    return answered_->question.boxes.size() > 1
               ? words::worded(tr("box %1, %{comb} %2"), answered_.get()).arg(comb.box + 1).arg(comb.place + 1)
               : words::worded(tr("%{comb} %1"), answered_.get()).arg(comb.place + 1);
}

QString CombTableModel::honey(std::size_t row) const {
    if (!current_ || !answered_ || !answered_->combs || row >= answered_->combs->size())
        return QStringLiteral("\u2026");
    const auto& comb = (*answered_->combs)[row];
    return words::fineSpread(stores::spreadOf(comb, answered_->question.combs[row], answered_->spreads));
}

Length CombTableModel::widthOf(std::size_t row) const {
    if (combs_[row].width) return *combs_[row].width;
    return answered_ && row < answered_->question.combs.size() ? answered_->question.combs[row].format.pitch
                                                               : millimetres(35);
}

QVariant CombTableModel::shown(std::size_t row, Column column) const {
    const auto& comb = combs_[row];
    if (const auto zone = zoneOf(column))
        return comb.facesSeen == 0 ? QStringLiteral("\u2013") : words::percent(shareOf(comb, *zone));
    switch (column) {
    case PlaceColumn: return place(row);
    case EmptyColumn: return comb.facesSeen == 0 ? QStringLiteral("\u2013") : words::percent(emptyShare(comb));
    case BuiltColumn: return words::percent(comb.built);
    case FacesColumn: return comb.facesSeen;
    case WidthColumn: return words::length(widthOf(row));
    case HoneyColumn: return honey(row);
    default: return {};
    }
}

QVariant CombTableModel::edited(std::size_t row, Column column) const {
    const auto& comb = combs_[row];
    if (const auto zone = zoneOf(column)) return std::round(1000 * shareOf(comb, *zone)) / 10;
    switch (column) {
    case BuiltColumn: return std::round(1000 * comb.built) / 10;
    case FacesColumn: return static_cast<double>(comb.facesSeen);
    case WidthColumn: return std::round(100 * valueIn(widthOf(row), words::shownLength())) / 100;
    default: return {};
    }
}

QVariant CombTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto row = static_cast<std::size_t>(index.row());
    const auto column = static_cast<Column>(index.column());
    switch (role) {
    case Qt::DisplayRole: return shown(row, column);
    case Qt::EditRole: return (flags(index) & Qt::ItemIsEditable) ? edited(row, column) : shown(row, column);
    case Qt::AccessibleTextRole:
        return tr("%1, %2: %3")
            .arg(place(row), headerData(index.column(), Qt::Horizontal, Qt::AccessibleTextRole).toString(),
                 shown(row, column).toString());
    case Qt::TextAlignmentRole: return alignment(column);
    case Qt::CheckStateRole:
        if (!isFlag(index.column())) return {};
        return static_cast<int>((column == FedColumn ? combs_[row].fed : combs_[row].oldNest) ? Qt::Checked
                                                                                              : Qt::Unchecked);
    default: return {};
    }
}

bool CombTableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || !edited_) return false;
    const auto row = static_cast<std::size_t>(index.row());
    auto changed = combs_[row];
    if (role == Qt::CheckStateRole && isFlag(index.column())) {
        (index.column() == FedColumn ? changed.fed : changed.oldNest) = value.toInt() == Qt::Checked;
    } else if (role == Qt::EditRole) {
        bool isNumber = false;
        const double number = value.toDouble(&isNumber);
        if (!isNumber || !withNumber(changed, index.column(), number, width_)) return false;
    } else {
        return false;
    }
    edited_(row, changed);
    return true;
}

Qt::ItemFlags CombTableModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags known = QAbstractTableModel::flags(index);
    if (!index.isValid()) return known;
    const int column = index.column();
    if (isFlag(column)) return known | Qt::ItemIsUserCheckable;
    if (column != PlaceColumn && column != EmptyColumn && column != HoneyColumn) known |= Qt::ItemIsEditable;
    return known;
}

QString CombTableModel::shortHeader(int section) const {
    switch (section) {
    case OpenColumn: return tr("open");
    case BreadColumn: return tr("bread");
    case FacesColumn: return tr("faces");
    case WidthColumn: return tr("bar");
    case FedColumn: return tr("fed");
    default: return headerData(section, Qt::Horizontal, Qt::AccessibleTextRole).toString();
    }
}

// What stands in a column, in a sentence.
QString CombTableModel::explained(int section) const {
    if (const auto zone = zoneOf(section))
        return tr("Share of the built comb that is %1, both faces together").arg(words::zone(*zone));
    switch (section) {
    case PlaceColumn:
        return words::worded(
            tr("Where the %{comb} hangs: counted from the left, seen from behind, or from the entrance of a long hive"),
            answered_.get());
    case EmptyColumn: return tr("What is left of the built comb when all else is taken off");
    case BuiltColumn: return tr("How much of the frame, or below the bar, is comb");
    case FacesColumn: return tr("Faces that were looked at; the fewer, the wider the spread");
    case WidthColumn:
        return words::worded(tr("From the middle of this %{comb} to the middle of the next; thicker combs hold more"),
                             answered_.get());
    case FedColumn:
        return words::worded(tr("This %{comb} took syrup: what is in it is for the bees alone"), answered_.get());
    case OldNestColumn: return tr("Brood was reared in it for years, so its cells hold less");
    case HoneyColumn:
        return words::worded(tr("Honey and nectar in the %{comb}; in brackets eight in ten"), answered_.get());
    default: return {};
    }
}

QVariant CombTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) return role == Qt::DisplayRole ? QVariant(section + 1) : QVariant();
    if (role == Qt::DisplayRole) return shortHeader(section);
    if (role == Qt::ToolTipRole) return explained(section);
    if (role == Qt::TextAlignmentRole) return alignment(section);
    if (role != Qt::AccessibleTextRole) return {};
    if (const auto zone = zoneOf(section)) return words::zone(*zone);
    switch (section) {
    case PlaceColumn: return words::worded(tr("%{comb}"), answered_.get());
    case EmptyColumn: return tr("empty");
    case BuiltColumn: return tr("built");
    case FacesColumn: return tr("faces seen");
    case WidthColumn: return tr("bar width");
    case FedColumn: return tr("took syrup");
    case OldNestColumn: return tr("old nest");
    case HoneyColumn: return tr("honey");
    default: return {};
    }
}

} // namespace winterlarder::desk
