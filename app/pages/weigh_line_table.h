// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/answer_parts.h"

#include <QTableWidget>

#include <vector>

namespace winterlarder::desk {

//! What the hive should weigh on the first of each month till spring forage: a line to weigh against.
class WeighLineTable : public QTableWidget {
    Q_OBJECT

public:
    explicit WeighLineTable(QWidget* parent = nullptr);
    void show(const std::vector<advice::WeighPoint>& line); //!< hidden where there is none
};

} // namespace winterlarder::desk
