// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace winterlarder::desk {

class RecordList;
class ScalePlot;

//! On the scale: every weighing and heft, to be added to and changed, and the model against what was measured.
class ScalePage : public QWidget {
    Q_OBJECT

public:
    explicit ScalePage(Yard* yard, QWidget* parent = nullptr);
    void show(ColonyId id);
    RecordList* weighings() const { return weighings_; }
    //! Where what the winter's weighings say of the model has its place: under the picture.
    QVBoxLayout* besidePicture() const { return beside_; }

private:
    void refresh();

    Yard* yard_;
    ColonyId colony_;
    RecordList* weighings_;
    ScalePlot* plot_;
    QLabel* caption_;
    QVBoxLayout* beside_;
};

} // namespace winterlarder::desk
