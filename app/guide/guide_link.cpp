// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/guide_link.h"

#include "guide/guide_window.h"
#include "models/plain_tip.h"

#include <QHBoxLayout>
#include <QVariant>

namespace winterlarder::desk {

namespace {

constexpr auto pageProperty = "winterlarderGuidePage";

} // namespace

void setGuidePage(QWidget* widget, text::GuidePage page) { widget->setProperty(pageProperty, static_cast<int>(page)); }

text::GuidePage guidePageOf(const QWidget* widget) {
    for (; widget; widget = widget->parentWidget()) {
        const QVariant page = widget->property(pageProperty);
        if (page.isValid()) return static_cast<text::GuidePage>(page.toInt());
        if (widget->isWindow() && widget->windowType() != Qt::Popup)
            break; // a form asks for itself, a list that drops down for its field
    }
    return text::allGuidePages.front();
}

GuideWindow* openGuide(QWidget* from, Yard* yard, text::GuidePage page) {
    auto* over = from->window();
    auto* guide = over->findChild<GuideWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!guide) guide = new GuideWindow(yard, over);
    guide->show(page);
    return guide;
}

GuideLink::GuideLink(QWidget* parent, Yard* yard, text::GuidePage page, As as) : QPushButton(parent), page_(page) {
    const QString what = tr("How to judge this: %1").arg(text::guideTitle(page));
    setText(as == As::Words ? tr("How to judge this") : as == As::Title ? text::guideTitle(page) : QStringLiteral("?"));
    setToolTip(plainTip(what));
    setAccessibleName(what);
    if (as == As::Words) setGuidePage(parent, page);
    setProperty("chip", true);
    setAutoDefault(false);
    connect(this, &QPushButton::clicked, this, [this, yard] { openGuide(this, yard, page_); });
}

QWidget* withGuideLink(QWidget* field, Yard* yard, text::GuidePage page) {
    auto* both = new QWidget(field->parentWidget());
    auto* layout = new QHBoxLayout(both);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(field, 0, Qt::AlignTop);
    layout->addWidget(new GuideLink(both, yard, page, GuideLink::As::Mark), 0, Qt::AlignTop);
    layout->addStretch(1);
    setGuidePage(both, page);
    return both;
}

} // namespace winterlarder::desk
