// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/comb_painter.h"
#include "models/comb_table_model.h"
#include "models/yard.h"

#include <QTableView>
#include <QWidget>

namespace winterlarder::desk {

//! One comb, large, with its zones.
class CombPortrait : public QWidget {
    Q_OBJECT

public:
    explicit CombPortrait(QWidget* parent = nullptr);
    void show(const std::optional<CombAppearance>& look);
    QSize sizeHint() const override { return {170, 150}; }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    std::optional<CombAppearance> look_;
};

//! Comb by comb: the look as a table to type into, the row's comb drawn beside it.
class CombTablePage : public QWidget {
    Q_OBJECT

public:
    explicit CombTablePage(Yard* yard, QWidget* parent = nullptr);

    void show(ColonyId id);
    void chooseComb(int comb);
    QTableView* table() const { return table_; }
    CombTableModel* model() const { return model_; }

signals:
    void combChosen(int comb);

protected:
    void resizeEvent(QResizeEvent* event) override; //!< the drawing gives way where there is little width

private:
    void refresh();
    void drawComb();

    Yard* yard_;
    ColonyId colony_;
    CombTableModel* model_;
    QTableView* table_;
    CombPortrait* portrait_;
};

} // namespace winterlarder::desk
