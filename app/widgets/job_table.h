// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/job_table_model.h"

class QTableView;

namespace winterlarder::desk {

//! A table of jobs in the window's style; read only, choosable row by row.
QTableView* jobTable(QWidget* parent, JobTableModel* model, bool withColony, const QString& name);

} // namespace winterlarder::desk
