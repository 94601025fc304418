// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comb_table_page.h"

#include "combs/comb_drawing.h"
#include "guide/guide_link.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

CombPortrait::CombPortrait(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("The comb of the row, drawn"));
    setMinimumWidth(150);
}

void CombPortrait::show(const std::optional<CombAppearance>& look) {
    look_ = look;
    update();
}

void CombPortrait::paintEvent(QPaintEvent*) {
    if (!look_) return;
    QPainter painter(this);
    const double wide = std::max(look_->outline.top.value(), look_->outline.bottom.value());
    const double scale = std::min((width() - 16) / wide, (height() - 16) / look_->outline.height.value());
    const QSizeF size(wide * scale, look_->outline.height.value() * scale);
    paintComb(painter, *look_, QRectF(QPointF((width() - size.width()) / 2, 8), size), coloursOf(*this), 8);
}

namespace {

constexpr int spareWidth = 60; // px around the table

} // namespace

CombTablePage::CombTablePage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    model_ = new CombTableModel(this);
    model_->onEdited(
        [this](std::size_t place, const book::CombRecord& comb) { yard_->changeComb(colony_, place, comb); });
    table_ = new QTableView(this);
    table_->setModel(model_);
    table_->setAccessibleName(tr("The look as a table, a row a comb"));
    table_->setAlternatingRowColors(true);
    table_->setShowGrid(false);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    portrait_ = new CombPortrait(this);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(10, 8, 10, 8);
    auto* listed = new QVBoxLayout;
    listed->addWidget(table_, 1);
    listed->addWidget(new GuideLink(this, yard_, text::GuidePage::Cells), 0, Qt::AlignLeft);
    layout->addLayout(listed, 1);
    layout->addWidget(portrait_);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& index) {
        drawComb();
        emit combChosen(index.row());
    });
    yard_->onColony(this, colony_, {YardChange::Record, YardChange::Answer}, &CombTablePage::refresh);
}

void CombTablePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    portrait_->setVisible(width() > table_->horizontalHeader()->length() + portrait_->minimumWidth() + spareWidth);
}

void CombTablePage::show(ColonyId id) {
    colony_ = id;
    refresh();
}

void CombTablePage::refresh() {
    const auto* colony = yard_->find(colony_);
    if (!colony) return;
    if (yard_->book() && yard_->book()->reference()) model_->useLimits(*yard_->book()->reference());
    model_->show(colony->record, colony->answered, !colony->pending);
    drawComb();
}

void CombTablePage::chooseComb(int comb) {
    if (comb < 0 || comb >= model_->rowCount() || table_->currentIndex().row() == comb) return;
    const int column = table_->currentIndex().isValid() ? table_->currentIndex().column()
                                                        : static_cast<int>(CombTableModel::CappedColumn);
    table_->setCurrentIndex(model_->index(comb, column));
}

void CombTablePage::drawComb() {
    const auto* colony = yard_->find(colony_);
    const int row = std::max(0, table_->currentIndex().row());
    const auto* reference = yard_->book() ? yard_->book()->reference().get() : nullptr;
    if (!colony || !reference) return portrait_->show(std::nullopt);
    const auto combs = drawnCombs(colony->record, colony->answered.get(), *reference);
    if (row >= static_cast<int>(combs.size())) return portrait_->show(std::nullopt);
    portrait_->setAccessibleDescription(combs[static_cast<std::size_t>(row)].spoken);
    portrait_->show(combs[static_cast<std::size_t>(row)].look);
}

} // namespace winterlarder::desk
