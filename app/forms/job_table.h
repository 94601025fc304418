// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/job_table_model.h"

#include <QTableView>

#include <array>
#include <vector>

namespace winterlarder::desk {

//! A table of jobs in the window's style; read only, choosable row by row. Nothing is cut: what does not fit into its line goes on in the
//! next, no column is under its longest word, and each row is as tall as its words need. A yard has a thousand jobs but few different words,
//! so each is measured once. Tested: tests/app/job_table_test.cpp.
class JobTable : public QTableView {
    Q_OBJECT

public:
    JobTable(QWidget* parent, JobTableModel* model, bool withColony, const QString& name);

protected:
    void changeEvent(QEvent* event) override;
    void updateGeometries() override;

private:
    //! Of a column: no word broken into lines, and no wider than its longest word.
    struct Widths {
        int whole = 0, least = 0;
    };
    void fit();
    void measureWords();
    Widths widthsOf(int column) const;
    void fitToWidth();
    void fitHeights();
    QSize sizeIn(const QString& words, int width) const;

    JobTableModel* jobs_;
    std::array<std::vector<QString>, JobTableModel::ColumnCount> words_;    //!< of each column, each once
    std::vector<std::array<std::size_t, JobTableModel::ColumnCount>> rows_; //!< which of them stand in a row
    std::array<Widths, JobTableModel::ColumnCount> widths_;
    int fitted_ = 0; //!< width the columns were made for
};

} // namespace winterlarder::desk
