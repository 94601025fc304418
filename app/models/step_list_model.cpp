// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/step_list_model.h"

#include "models/step_subject.h"
#include "models/words.h"
#include "text/step_words.h"

#include <QDateTime>
#include <QLocale>

namespace winterlarder::desk {

namespace {
constexpr int page = 60;
}

StepListModel::StepListModel(OpenBook* book, QObject* parent) : QAbstractTableModel(parent), book_(book) {}

void StepListModel::refresh() {
    read(std::nullopt);
}

void StepListModel::read(std::optional<book::StepId> before) {
    if (!book_) return;
    const int number = ++asked_;
    book_->ask([this, number, before](book::Book& book) -> BookWorker::Finish {
        auto read = book.story(page, before);
        auto steps = read.ok() ? std::move(read).value() : std::vector<book::Step>();
        std::vector<QString> subjects;
        for (const auto& step : steps) subjects.push_back(subjectOf(book, step));
        return [this, number, before, steps = std::move(steps), subjects = std::move(subjects)] {
            if (number != asked_) return;
            more_ = static_cast<int>(steps.size()) == page;
            if (!before) {
                beginResetModel();
                steps_ = steps;
                subjects_ = subjects;
                endResetModel();
            } else if (!steps.empty()) {
                beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(steps.size()) - 1);
                steps_.insert(steps_.end(), steps.begin(), steps.end());
                subjects_.insert(subjects_.end(), subjects.begin(), subjects.end());
                endInsertRows();
            }
        };
    });
}

bool StepListModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && more_;
}

void StepListModel::fetchMore(const QModelIndex&) {
    if (!more_ || steps_.empty()) return;
    more_ = false;
    read(steps_.back().id);
}

int StepListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(steps_.size());
}

int StepListModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant StepListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& step = steps_[static_cast<std::size_t>(index.row())];
    if (role == Qt::ToolTipRole) return text::stepLines(step, words::style()).join(QLatin1Char('\n'));
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case WhenColumn: return QLocale().toString(QDateTime::fromSecsSinceEpoch(step.at.seconds), QLocale::ShortFormat);
    case WhoColumn: return QString::fromStdString(step.who);
    case WhomColumn: return subjects_[static_cast<std::size_t>(index.row())];
    case WhatColumn: return text::stepName(step, words::style());
    case StateColumn: return step.state == book::StepState::Done ? QString() : step.state == book::StepState::Undone ? tr("taken back") : tr("taken back for good");
    default: return {};
    }
}

QVariant StepListModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if ((role != Qt::DisplayRole && role != Qt::ToolTipRole) || orientation != Qt::Horizontal) return {};
    const bool full = role == Qt::ToolTipRole;
    switch (section) {
    case WhenColumn: return full ? tr("When it was written into the book") : tr("when");
    case WhoColumn: return full ? tr("Who wrote it") : tr("by");
    case WhomColumn: return full ? tr("The colony or yard it is about") : tr("colony");
    case WhatColumn: return full ? tr("What was changed; the newest first") : tr("what was changed");
    default: return QString();
    }
}

} // namespace winterlarder::desk
