// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/banner.h"

#include "theme/card.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <chrono>

namespace winterlarder::desk {

namespace {

constexpr int noticeMargin = 14;  // px kept free around notices
constexpr int noticeLetters = 90; // in a line of theirs

std::chrono::seconds mentionedFor(NoticeWish wish) {
    return std::chrono::seconds(wish == NoticeWish::TwoMinutes ? 120 : 30);
}

QVBoxLayout* noticeLines(QFrame* frame, const char* name) {
    frame->setObjectName(QLatin1String(name));
    auto* lines = new QVBoxLayout(frame);
    lines->setContentsMargins(18, 6, 12, 6);
    lines->setSpacing(4);
    frame->hide();
    return lines;
}

} // namespace

Banner::Banner(QWidget* desk, const QWidget* beside) : QFrame(desk), beside_(beside), notices_(new QFrame(desk)) {
    noticeLines(this, "banner");
    noticeLines(notices_, "notices");
    desk->installEventFilter(this);
    passing_ = new QTimer(this);
    passing_->setSingleShot(true);
    wishNotices(wish_);
    connect(passing_, &QTimer::timeout, this, [this] { dismiss(QStringLiteral("notices")); });
}

QWidget* Banner::line(const QString& words, const std::vector<Action>& actions) {
    auto* line = new QWidget(this);
    auto* across = new QHBoxLayout(line);
    across->setContentsMargins(0, 0, 0, 0);
    auto* label = plainLabel(line, words);
    label->setObjectName(QStringLiteral("bannerWords"));
    label->setWordWrap(true);
    label->setAccessibleDescription(tr("Notice"));
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    across->addWidget(label, 1);
    for (const auto& action : actions) {
        auto* button = new QPushButton(action.words, line);
        connect(
            button, &QPushButton::clicked, this, [act = action.act] { act(); }, Qt::QueuedConnection);
        across->addWidget(button);
    }
    return line;
}

void Banner::showMessage(const QString& matter, const QString& words, const std::vector<Action>& actions,
                         Closing closing) {
    const bool mayGo = closing == Closing::ByKeeper;
    dismiss(matter);
    if (matter == QLatin1String("notices")) passing_->stop(); // of what was mentioned before
    auto* line = this->line(words, actions);
    if (mayGo) {
        auto* away = new QPushButton(tr("Close"), line);
        away->setAccessibleName(tr("Close this notice: %1").arg(words));
        connect(
            away, &QPushButton::clicked, this, [this, matter] { dismiss(matter); }, Qt::QueuedConnection);
        line->layout()->addWidget(away);
        for (auto* button : line->findChildren<QPushButton*>())
            button->setFocusPolicy(Qt::TabFocus); // pressed by the mouse, the keys stay where they were
    }
    auto* frame = mayGo ? notices_ : this;
    frame->layout()->addWidget(line);
    byMatter_[matter] = line;
    line->show();
    frame->show();
    lay();
    QAccessibleEvent heard(line->findChild<QLabel*>(), QAccessible::Alert);
    QAccessible::updateAccessibility(&heard);
}

void Banner::showBriefly(const QString& words) {
    showMessage(QStringLiteral("notices"), words);
    if (wish_ != NoticeWish::UntilPutAway) passing_->start();
}

void Banner::wishNotices(NoticeWish wish) {
    wish_ = wish;
    passing_->setInterval(mentionedFor(wish));
}

void Banner::dismiss(const QString& matter) {
    const auto found = byMatter_.find(matter);
    if (found == byMatter_.end()) return;
    auto* line = found->second;
    auto* frame = line->parentWidget();
    byMatter_.erase(found);
    line->hide();
    line->deleteLater();
    frame->setVisible(std::any_of(byMatter_.begin(), byMatter_.end(),
                                  [frame](const auto& each) { return each.second->parentWidget() == frame; }));
    lay();
}

// Over the foot of the page, as wide as its words want and no wider than the page.
void Banner::lay() {
    if (notices_->isHidden()) return;
    const auto* desk = notices_->parentWidget();
    const int left = beside_->isVisibleTo(desk) ? beside_->geometry().right() + 1 : 0,
              room = desk->width() - left - 2 * noticeMargin;
    const int wide = std::min(room, fontMetrics().averageCharWidth() * noticeLetters);
    const int high = notices_->layout()->totalHeightForWidth(wide);
    notices_->setGeometry(left + noticeMargin + (room - wide) / 2, std::max(0, desk->height() - high - noticeMargin),
                          wide, high);
    notices_->raise();
}

bool Banner::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest) lay();
    return QFrame::eventFilter(watched, event);
}

QString Banner::said(const QString& matter) const {
    const auto found = byMatter_.find(matter);
    if (found == byMatter_.end()) return {};
    return found->second->findChild<QLabel*>(QStringLiteral("bannerWords"))->text();
}

} // namespace winterlarder::desk
