// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/job_table_model.h"

#include <QTableView>

namespace winterlarder::desk {

//! A table of jobs in the window's style; read only, choosable row by row. Nothing is cut: columns are as wide as the widest words in
//! them, and what does not fit into its line goes on in the next. A yard has a thousand jobs but few different words, so only one row of
//! each is measured. Tested: tests/app/job_table_test.cpp.
class JobTable : public QTableView {
    Q_OBJECT

public:
    JobTable(QWidget* parent, JobTableModel* model, bool withColony, const QString& name);

protected:
    void changeEvent(QEvent* event) override;
    void updateGeometries() override;

private:
    void fit();
    void fitWidths();
    template <class Said> void fitWidth(JobTableModel::Column column, Said said);
    void fitHeights();
    QSize sizeIn(const QModelIndex& index, int width) const;

    JobTableModel* jobs_;
    int fitted_ = 0; //!< width of the words that row heights were made for
};

} // namespace winterlarder::desk
