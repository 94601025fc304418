// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/banner.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace winterlarder::desk {

Banner::Banner(QWidget* parent) : QFrame(parent) {
    setObjectName(QStringLiteral("banner"));
    lines_ = new QVBoxLayout(this);
    lines_->setContentsMargins(18, 6, 12, 6);
    lines_->setSpacing(4);
    hide();
}

void Banner::say(const QString& matter, const QString& words, const std::vector<Action>& actions, bool mayGo) {
    hush(matter);
    auto* line = new QWidget(this);
    auto* across = new QHBoxLayout(line);
    across->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(words, line);
    label->setObjectName(QStringLiteral("bannerWords"));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setAccessibleDescription(tr("Notice"));
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    across->addWidget(label, 1);
    for (const auto& action : actions) {
        auto* button = new QPushButton(action.words, line);
        connect(button, &QPushButton::clicked, this, [act = action.act] { act(); }, Qt::QueuedConnection);
        across->addWidget(button);
    }
    if (mayGo) {
        auto* away = new QPushButton(tr("Put away"), line);
        away->setAccessibleName(tr("Put this notice away: %1").arg(words));
        connect(away, &QPushButton::clicked, this, [this, matter] { hush(matter); }, Qt::QueuedConnection);
        across->addWidget(away);
    }
    lines_->addWidget(line);
    byMatter_[matter] = line;
    line->show();
    show();
}

void Banner::hush(const QString& matter) {
    const auto found = byMatter_.find(matter);
    if (found == byMatter_.end()) return;
    found->second->hide();
    found->second->deleteLater();
    byMatter_.erase(found);
    setVisible(!byMatter_.empty());
}

QString Banner::said(const QString& matter) const {
    const auto found = byMatter_.find(matter);
    if (found == byMatter_.end()) return {};
    return found->second->findChild<QLabel*>(QStringLiteral("bannerWords"))->text();
}

} // namespace winterlarder::desk
