// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <QWidget>

class QTabWidget;

namespace winterlarder::desk {

class AnswerPanel;
class CombTablePage;
class FeedingPage;
class LookPage;
class PicturePanel;

//! Everything about one colony: the answer, the winter picture, and the pages below it.
class ColonyView : public QWidget {
    Q_OBJECT

public:
    explicit ColonyView(Yard* yard, QWidget* parent = nullptr);

    void show(ColonyId id);
    ColonyId colony() const { return colony_; }
    PicturePanel* picture() const { return picture_; }
    LookPage* look() const { return look_; }
    CombTablePage* combTable() const { return combTable_; }
    QTabWidget* pages() const { return pages_; }

signals:
    void whyAsked(winterlarder::desk::ColonyId id);

private:
    void refresh();

    Yard* yard_;
    ColonyId colony_;
    AnswerPanel* answer_;
    PicturePanel* picture_;
    QTabWidget* pages_;
    LookPage* look_;
    CombTablePage* combTable_;
    FeedingPage* feeding_;
};

} // namespace winterlarder::desk
