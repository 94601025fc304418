// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/askable_label.h"
#include "models/yard.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace winterlarder::desk {

class FollowPlot;

//! How the colony's winter goes: the state in a sentence, what was forecast in autumn and what is forecast now with the points, the dates
//! that matter, what to feed, the safe way, spring. Says so while it is worked out, and why where there is nothing to follow.
//! Tested: tests/app/following_test.cpp.
class FollowPanel : public QWidget {
    Q_OBJECT

public:
    explicit FollowPanel(Yard* yard, QWidget* parent = nullptr);
    void show(ColonyId id);
    QString said() const; //!< everything it says, line by line

signals:
    void numberAsked(winterlarder::text::AskedNumber number, QPoint under);

private:
    void refresh();
    void say(const QString& headline, const QString& small, const QString& next = {}, bool withPlot = false);
    void showSections(const FollowedWinter& followed);

    Yard* yard_;
    ColonyId colony_;
    AskableLabel* headline_;
    AskableLabel* risk_;
    AskableLabel* next_;
    FollowPlot* plot_;
    QLabel* key_;
    QVBoxLayout* sections_;
    std::vector<QLabel*> lines_;
};

} // namespace winterlarder::desk
