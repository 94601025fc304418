// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/step_list_model.h"

#include "models/plain_tip.h"
#include "models/step_subject.h"
#include "models/words.h"
#include "text/step_words.h"

#include <QDateTime>
#include <QLocale>

namespace winterlarder::desk {

namespace {
constexpr int pageLength = 60;
}

StepListModel::StepListModel(OpenBook* book, QObject* parent) : QAbstractTableModel(parent), book_(book) {}

void StepListModel::refresh() { read(std::nullopt); }

void StepListModel::read(std::optional<book::StepId> before) {
    if (!book_) return;
    const int number = ++asked_;
    book_->ask(
        this, [before](book::Book& book) { return readPage(book, before); },
        [this, number, before](const Outcome<Page>& read) {
            if (number != asked_) return;
            if (read.ok()) take(*read, !before);
            else book_->report(read.problems());
        });
}

Outcome<StepListModel::Page> StepListModel::readPage(book::Book& book, std::optional<book::StepId> before) {
    auto steps = book.story(pageLength, before);
    if (!steps.ok()) return steps.problems();
    Page page{std::move(steps).value(), {}};
    for (const auto& step : page.steps) page.subjects.push_back(subjectOf(book, step));
    return page;
}

void StepListModel::take(const Page& page, bool first) {
    more_ = static_cast<int>(page.steps.size()) == pageLength;
    if (first) {
        beginResetModel();
        steps_ = page.steps;
        subjects_ = page.subjects;
        endResetModel();
    } else if (!page.steps.empty()) {
        beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(page.steps.size()) - 1);
        steps_.insert(steps_.end(), page.steps.begin(), page.steps.end());
        subjects_.insert(subjects_.end(), page.subjects.begin(), page.subjects.end());
        endInsertRows();
    }
}

bool StepListModel::canFetchMore(const QModelIndex& parent) const { return !parent.isValid() && more_; }

void StepListModel::fetchMore(const QModelIndex&) {
    if (!more_ || steps_.empty()) return;
    more_ = false;
    read(steps_.back().id);
}

int StepListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(steps_.size());
}

int StepListModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant StepListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& step = steps_[static_cast<std::size_t>(index.row())];
    if (role == Qt::ToolTipRole) return plainTip(text::stepLines(step, words::style()).join(QLatin1Char('\n')));
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case WhenColumn: return QLocale().toString(QDateTime::fromSecsSinceEpoch(step.at.seconds), QLocale::ShortFormat);
    case WhoColumn: return QString::fromStdString(step.who);
    case WhomColumn: return subjects_[static_cast<std::size_t>(index.row())];
    case WhatColumn: return text::stepName(step, words::style());
    case StateColumn:
        return step.state == book::StepState::Done     ? QString()
               : step.state == book::StepState::Undone ? tr("taken back")
                                                       : tr("taken back for good");
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
