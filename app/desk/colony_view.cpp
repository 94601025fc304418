// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/colony_view.h"

#include "widgets/answer_panel.h"
#include "widgets/comb_drawing.h"
#include "widgets/comb_table_page.h"
#include "widgets/feeding_page.h"
#include "widgets/look_page.h"
#include "widgets/picture_panel.h"

#include <QScrollArea>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

// A page that can be scrolled where the window is too small for it.
QWidget* withRoom(QWidget* page, QWidget* parent) {
    auto* room = new QScrollArea(parent);
    room->setWidgetResizable(true);
    room->setFrameShape(QFrame::NoFrame);
    room->setFocusPolicy(Qt::NoFocus);
    page->setObjectName(QStringLiteral("page"));
    room->setWidget(page);
    room->viewport()->setObjectName(QStringLiteral("page"));
    return room;
}

} // namespace

ColonyView::ColonyView(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    answer_ = new AnswerPanel(this);
    picture_ = new PicturePanel(this);
    pages_ = new QTabWidget(this);
    pages_->setAccessibleName(tr("Pages of the colony"));
    pages_->setDocumentMode(false);
    look_ = new LookPage(yard_, pages_);
    combTable_ = new CombTablePage(yard_, pages_);
    feeding_ = new FeedingPage(yard_, pages_);
    pages_->addTab(withRoom(look_, pages_), tr("&In the hive"));
    pages_->addTab(combTable_, tr("&Comb by comb"));
    pages_->addTab(withRoom(feeding_, pages_), tr("&Feeding"));

    auto* halves = new QSplitter(Qt::Vertical, this);
    halves->setChildrenCollapsible(false);
    halves->setHandleWidth(12);
    halves->addWidget(picture_);
    halves->addWidget(pages_);
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    halves->setSizes({410, 330});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(answer_);
    layout->addWidget(halves, 1);

    connect(answer_, &AnswerPanel::whyAsked, this, [this] { emit whyAsked(colony_); });
    connect(look_, &LookPage::combChosen, combTable_, &CombTablePage::chooseComb);
    connect(combTable_, &CombTablePage::combChosen, look_->drawing(), &CombDrawing::choose);
    connect(yard_, &Yard::recordChanged, this, [this](ColonyId id) { if (id == colony_) refresh(); });
    connect(yard_, &Yard::answerChanged, this, [this](ColonyId id) { if (id == colony_) refresh(); });
}

void ColonyView::show(ColonyId id) {
    colony_ = id;
    look_->show(id);
    combTable_->show(id);
    feeding_->show(id);
    refresh();
}

void ColonyView::refresh() {
    const auto* colony = yard_->find(colony_);
    if (!colony) return;
    answer_->show(*colony);
    picture_->show(*colony);
}

} // namespace winterlarder::desk
