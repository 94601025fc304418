// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/open_book.h"

#include <QAbstractTableModel>

#include <vector>

namespace winterlarder::desk {

//! The steps of the book's history, newest first: when, by whom, at which colony, what; taken back or not. Reads on as it is scrolled.
//! Tested with QAbstractItemModelTester: tests/app/fields_test.cpp.
class StepListModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { WhenColumn, WhoColumn, WhomColumn, WhatColumn, StateColumn, ColumnCount };
    explicit StepListModel(OpenBook* book, QObject* parent = nullptr);

    //! Reads the newest steps anew.
    void refresh();
    const std::vector<book::Step>& steps() const { return steps_; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

private:
    struct Page {
        std::vector<book::Step> steps;
        std::vector<QString> subjects; //!< of each step: the colonies it was about
    };
    static Outcome<Page> readPage(book::Book& book, std::optional<book::StepId> before);
    void read(std::optional<book::StepId> before);
    void take(const Page& page, bool first);

    OpenBook* book_;
    std::vector<book::Step> steps_;
    std::vector<QString> subjects_;
    bool more_ = false;
    int asked_ = 0; //!< number of the newest request: older answers are thrown away
};

} // namespace winterlarder::desk
