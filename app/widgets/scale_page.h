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

//! On the scale: every weighing and heft, to be added to and changed, and the model against what was measured; once a winter is
//! followed, how it goes.
class ScalePage : public QWidget {
    Q_OBJECT

public:
    explicit ScalePage(Yard* yard, QWidget* parent = nullptr);
    void show(ColonyId id);
    RecordList* weighings() const { return weighings_; }
    FollowPanel* followed() const { return follow_; }

protected:
    void resizeEvent(QResizeEvent* event) override; //!< one half below the other where there is little width

private:
    void refresh();

    Yard* yard_;
    ColonyId colony_;
    RecordList* weighings_;
    ScalePlot* plot_;
    QLabel* caption_;
    FollowPanel* follow_;
    QBoxLayout* halves_;
};

} // namespace winterlarder::desk
