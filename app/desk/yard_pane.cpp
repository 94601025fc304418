// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/yard_pane.h"

#include "pages/yard_delegate.h"

#include <QEvent>
#include <QListView>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int leastWhole = 290;   // px
constexpr int narrowWindow = 800; // px

} // namespace

YardPane::YardPane(QWidget* desk) : QFrame(desk), desk_(desk) {
    setObjectName(QStringLiteral("yardPane"));
    opener_ = new QToolButton(this);
    opener_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    opener_->hide();
    connect(opener_, &QToolButton::clicked, this, [this] { open(!opened_); });
    desk_->installEventFilter(this);
}

void YardPane::hold(QWidget* head, QListView* list, QWidget* key) {
    head_ = head;
    list_ = list;
    key_ = key;
    auto* button = new QVBoxLayout;
    button->setContentsMargins(6, 0, 6, 0);
    button->addWidget(opener_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 8, 0, 0);
    layout->addLayout(button);
    layout->addWidget(head_);
    layout->addWidget(list_, 1);
    layout->addWidget(key_);
    for (auto chosen : {&QAbstractItemView::clicked, &QAbstractItemView::activated})
        connect(list_, chosen, this, [this] { open(false); });
    fit();
}

void YardPane::open(bool opened) {
    opened_ = opened;
    fit();
}

bool YardPane::eventFilter(QObject* watched, QEvent* event) {
    if (watched == desk_ && event->type() == QEvent::Resize && narrow_ != (desk_->width() < narrowWindow)) {
        narrow_ = !narrow_;
        opened_ = false;
        fit();
    }
    return QFrame::eventFilter(watched, event);
}

void YardPane::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::FontChange && list_) fit();
}

void YardPane::hideEvent(QHideEvent* event) {
    QFrame::hideEvent(event);
    if (opened_) open(false);
}

void YardPane::fit() {
    const bool strip = isStrip();
    const int whole = std::max(leastWhole, fontMetrics().averageCharWidth() * 42);
    setMinimumWidth(strip ? YardDelegate::stripWidth(font()) : whole);
    setMaximumWidth(isOpened() ? QWIDGETSIZE_MAX : minimumWidth());
    opener_->setVisible(narrow_);
    opener_->setText(opened_ ? tr("Back to the page") : tr("List"));
    opener_->setAccessibleName(opened_ ? tr("Back to the page") : tr("Show the whole list, and the day asked about"));
    opener_->setToolTip(opener_->accessibleName());
    head_->setVisible(!strip);
    key_->setVisible(!strip);
    if (page_) page_->setVisible(!isOpened());
    list_->doItemsLayout();
}

} // namespace winterlarder::desk
