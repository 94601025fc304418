// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/grounds_popup.h"

#include "dialogs/said_remark.h"
#include "theme/colours.h"

#include <QKeyEvent>
#include <QScreen>
#include <QTextBrowser>
#include <QTextDocument>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <memory>

namespace winterlarder::desk {

namespace {

SaidRemark remarkOf(const text::GroundsLine& line, const ReferenceData& reference) {
    const auto* source = line.sources.empty() ? nullptr : reference.source(line.sources.front());
    return {line.said, source ? QString::fromStdString(source->citation) : QString()};
}

} // namespace

GroundsPopup::GroundsPopup(QWidget* parent) : QFrame(parent, Qt::Popup) {
    setProperty("card", true);
    setAccessibleName(tr("How this number was got"));
    browser_ = new QTextBrowser(this);
    browser_->setFrameShape(QFrame::NoFrame);
    browser_->setAccessibleName(tr("How this number was got"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 8, 4, 8);
    layout->addWidget(browser_);
}

void GroundsPopup::show(const text::Grounds& grounds, const ReferenceData& reference, QPoint under) {
    std::vector<SaidRemark> remarks;
    for (const auto& line : grounds.lines) remarks.push_back(remarkOf(line, reference));
    browser_->setHtml(QStringLiteral("<p style='margin-bottom:6px'><b>%1</b></p>").arg(grounds.title.toHtmlEscaped()) +
                      htmlOf(remarks, coloursOf(*this).quietText.name()));
    fit(under);
    QFrame::show();
    browser_->setFocus();
}

// As wide as a line reads well, as high as its words, on the screen.
void GroundsPopup::fit(QPoint under) {
    ensurePolished();
    browser_->ensurePolished();
    constexpr int frames = 40;
    const int widest = fontMetrics().averageCharWidth() * 76;
    // Measured on a copy: the browser lays its own out anew whenever it is resized, also when it is first shown.
    const std::unique_ptr<QTextDocument> measured(browser_->document()->clone());
    measured->setDefaultFont(browser_->font());
    measured->setTextWidth(widest - frames);
    const int width = std::min(widest, static_cast<int>(std::ceil(measured->idealWidth())) + frames);
    measured->setTextWidth(width - frames);
    const QRect free = screen()->availableGeometry();
    const int height = std::min(static_cast<int>(measured->size().height()) + 24, free.height() * 2 / 3);
    resize(std::min(width, free.width()), height);
    move(std::clamp(under.x() - 40, free.left(), std::max(free.left(), free.right() - this->width())),
         std::clamp(under.y() + 4, free.top(), std::max(free.top(), free.bottom() - height)));
}

QString GroundsPopup::said() const { return browser_->toPlainText(); }

void GroundsPopup::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) hide();
    else QFrame::keyPressEvent(event);
}

} // namespace winterlarder::desk
