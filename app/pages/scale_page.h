// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <QWidget>

class QBoxLayout;
class QLabel;

namespace winterlarder::desk {

class FollowPanel;
class RecordList;
class ScalePlot;
class WeighLineTable;

//! On the scale: every weighing and heft, to be added to and changed, and the model against what was measured, with the weights to
//! expect; once a winter is followed, how it goes.
class ScalePage : public QWidget {
    Q_OBJECT

public:
    explicit ScalePage(Yard* yard, QWidget* parent = nullptr);
    void show(ColonyId id);
    RecordList* weighings() const { return weighings_; }
    FollowPanel* followed() const { return follow_; }

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; //!< what the page is seen through became another size

private:
    //! One half below the other where there is little width; else the weighings are as tall as what is seen, however much stands
    //! beside them, so that their buttons are not below the edge.
    void arrange();
    void refresh();

    Yard* yard_;
    ColonyId colony_;
    RecordList* weighings_;
    ScalePlot* plot_;
    QLabel* caption_;
    WeighLineTable* line_;
    FollowPanel* follow_;
    QBoxLayout* halves_;
};

} // namespace winterlarder::desk
