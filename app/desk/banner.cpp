// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/banner.h"

#include "models/plain_tip.h"
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

constexpr int footMargin = 3; // px above and below a line of the foot

std::chrono::seconds mentionedFor(NoticeWish wish) {
    return std::chrono::seconds(wish == NoticeWish::TwoMinutes ? 120 : 30);
}

bool isFault(const QString& matter) {
    return matter == QLatin1String("problems") || matter == QLatin1String("refused");
}

QPushButton* smallButton(QWidget* parent, const QString& words) {
    auto* button = new QPushButton(words, parent);
    button->setProperty("chip", true);
    button->setFocusPolicy(Qt::TabFocus); // pressed by the mouse, the keys stay where they were
    return button;
}

// What may be several lines, as one.
QString inOneLine(QString words) { return words.replace(QLatin1Char('\n'), QStringLiteral("  ")); }

// As much of it as has room.
QString shortened(const QLabel& label, const QString& words) {
    return label.fontMetrics().elidedText(inOneLine(words), Qt::ElideRight, label.width());
}

} // namespace

Banner::Banner(QWidget* desk) : QFrame(desk), foot_(new QWidget(desk)), notices_(new QFrame(desk)) {
    setObjectName(QStringLiteral("banner"));
    auto* above = new QVBoxLayout(this);
    above->setContentsMargins(18, 6, 12, 6);
    above->setSpacing(4);
    hide();
    notices_->setObjectName(QStringLiteral("notices"));
    lines_ = new QVBoxLayout;
    lines_->setSpacing(4);
    more_ = smallButton(notices_, tr("Show all"));
    connect(more_, &QPushButton::clicked, this, [this] { unfold(!unfolded_); });
    auto* across = new QHBoxLayout(notices_);
    across->setContentsMargins(18, footMargin, 12, footMargin);
    across->addLayout(lines_, 1);
    across->addWidget(more_, 0, Qt::AlignTop);
    notices_->hide();
    desk->installEventFilter(this);
    passing_ = new QTimer(this);
    passing_->setSingleShot(true);
    wishNotices(wish_);
    connect(passing_, &QTimer::timeout, this, [this] { dismiss(QStringLiteral("notices")); });
    fitFoot();
}

void Banner::fitFoot() {
    more_->ensurePolished();
    foot_->setFixedHeight(more_->sizeHint().height() + 2 * footMargin);
}

Banner::Line Banner::line(const QString& matter, const QString& words, const std::vector<Action>& actions) {
    Line line{new QWidget(this), nullptr, words};
    auto* across = new QHBoxLayout(line.whole);
    across->setContentsMargins(0, 0, 0, 0);
    if (isFault(matter)) {
        auto* mark = plainLabel(line.whole, QStringLiteral("!"));
        mark->setProperty("fault", true);
        mark->setAccessibleName(tr("Something is wrong"));
        across->addWidget(mark, 0, Qt::AlignTop);
    }
    line.label = plainLabel(line.whole, words);
    line.label->setObjectName(QStringLiteral("bannerWords"));
    line.label->setWordWrap(true);
    line.label->setAccessibleName(words);
    line.label->setAccessibleDescription(tr("Notice"));
    line.label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    across->addWidget(line.label, 1);
    for (const auto& action : actions) {
        auto* button = smallButton(line.whole, action.words);
        connect(
            button, &QPushButton::clicked, this, [act = action.act] { act(); }, Qt::QueuedConnection);
        across->addWidget(button, 0, Qt::AlignTop);
    }
    return line;
}

void Banner::showMessage(const QString& matter, const QString& words, const std::vector<Action>& actions,
                         Closing closing) {
    const bool mayGo = closing == Closing::ByKeeper;
    dismiss(matter);
    if (matter == QLatin1String("notices")) passing_->stop(); // of what was mentioned before
    const auto line = this->line(matter, words, actions);
    if (mayGo) {
        auto* away = smallButton(line.whole, tr("Close"));
        away->setAccessibleName(tr("Close this notice: %1").arg(words));
        connect(
            away, &QPushButton::clicked, this, [this, matter] { dismiss(matter); }, Qt::QueuedConnection);
        line.whole->layout()->addWidget(away);
        line.whole->layout()->setAlignment(away, Qt::AlignTop);
    }
    auto* frame = mayGo ? notices_ : this;
    QLayout* lines = mayGo ? lines_ : layout();
    lines->addWidget(line.whole);
    byMatter_[matter] = line;
    newest_ = matter;
    line.whole->show();
    frame->show();
    lay();
    QAccessibleEvent heard(line.label, QAccessible::Alert);
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
    auto* whole = found->second.whole;
    auto* frame = whole->parentWidget();
    byMatter_.erase(found);
    whole->hide();
    whole->deleteLater();
    frame->setVisible(std::any_of(byMatter_.begin(), byMatter_.end(),
                                  [frame](const auto& each) { return each.second.whole->parentWidget() == frame; }));
    if (closable().empty()) unfolded_ = false;
    lay();
}

// The newest last.
std::vector<Banner::Line*> Banner::closable() {
    std::vector<Line*> lines;
    for (auto& [matter, line] : byMatter_)
        if (line.whole->parentWidget() == notices_ && matter != newest_) lines.push_back(&line);
    if (const auto last = byMatter_.find(newest_);
        last != byMatter_.end() && last->second.whole->parentWidget() == notices_)
        lines.push_back(&last->second);
    return lines;
}

void Banner::unfold(bool wide) {
    unfolded_ = wide;
    lay();
}

// Folded, the newest alone is seen, in one line.
void Banner::fitWords(const std::vector<Line*>& lines) {
    for (auto* line : lines) {
        line->label->setWordWrap(unfolded_);
        line->label->setText(unfolded_ ? line->words : QString());
        line->whole->setVisible(unfolded_ || line == lines.back());
        line->whole->layout()->invalidate(); // measured at once, not when the event loop comes to it
        line->whole->updateGeometry();
    }
    lines_->invalidate();
    notices_->layout()->invalidate();
}

void Banner::lay() {
    const auto lines = closable();
    if (lines.empty()) return;
    const auto* desk = notices_->parentWidget();
    const bool hadKeys = more_->hasFocus();
    more_->setText(unfolded_          ? tr("Show less")
                   : lines.size() > 1 ? tr("Show all %1").arg(lines.size())
                                      : tr("Show all"));
    fitWords(lines);
    const auto place = [&](int high) {
        notices_->setGeometry(0, std::max(0, desk->height() - high), desk->width(), std::min(high, desk->height()));
        notices_->layout()->activate();
        for (const auto* line : lines) line->whole->layout()->activate();
    };
    if (unfolded_) {
        more_->show();
        place(std::max(foot_->height(), notices_->layout()->totalHeightForWidth(desk->width())));
    } else {
        auto& newest = *lines.back();
        more_->setVisible(lines.size() > 1);
        place(foot_->height());
        if (shortened(*newest.label, newest.words) != inOneLine(newest.words)) {
            more_->show();
            place(foot_->height());
        }
        newest.label->setText(shortened(*newest.label, newest.words));
        newest.label->setToolTip(newest.label->text() == inOneLine(newest.words) ? QString() : plainTip(newest.words));
    }
    if (hadKeys && more_->isVisible()) more_->setFocus();
    notices_->raise();
}

void Banner::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fitFoot();
}

bool Banner::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize) lay();
    return QFrame::eventFilter(watched, event);
}

QString Banner::said(const QString& matter) const {
    const auto found = byMatter_.find(matter);
    return found == byMatter_.end() ? QString() : found->second.words;
}

} // namespace winterlarder::desk
