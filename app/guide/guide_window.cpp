// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/guide_window.h"

#include "answer/hive_of_case.h"
#include "guide/guide_drawings.h"
#include "guide/guide_html.h"
#include "models/words.h"
#include "theme/stop_listening.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPainter>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollBar>
#include <QSvgRenderer>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

GuideBrowser::GuideBrowser(QWidget* parent) : QTextBrowser(parent) {
    setOpenLinks(false);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // or the width of drawings would hang on their height
}

int GuideBrowser::drawingWidth() const {
    constexpr int margins = 24;
    const double scale = fontMetrics().height() / 16.0; // drawings grow with the letters beside them
    return std::max(120, std::min(viewport()->width() - margins, static_cast<int>(guideWidth * std::max(1.0, scale))));
}

QVariant GuideBrowser::loadResource(int type, const QUrl& name) {
    const auto drawing = drawingCalled(name.toString());
    if (type != QTextDocument::ImageResource || !drawing || !draw_) return QTextBrowser::loadResource(type, name);
    QSvgRenderer renderer(draw_(*drawing));
    const double width = drawingWidth();
    const QSizeF shown(width, width * renderer.defaultSize().height() / renderer.defaultSize().width());
    QImage image((shown * devicePixelRatioF()).toSize(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    renderer.render(&painter);
    painter.end();
    image.setDevicePixelRatio(devicePixelRatioF());
    return image;
}

void GuideBrowser::resizeEvent(QResizeEvent* event) {
    QTextBrowser::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) emit widthChanged();
}

GuideWindow::GuideWindow(Yard* yard, QWidget* parent) : QDialog(parent), yard_(yard) {
    setWindowTitle(tr("Judging stores"));
    pages_ = new QListWidget(this);
    pages_->setAccessibleName(tr("Pages of the guide"));
    for (const auto page : text::allGuidePages) pages_->addItem(text::guideTitle(page));
    pages_->setSpacing(3);
    pages_->setFixedWidth(pages_->sizeHintForColumn(0) + 2 * pages_->frameWidth() +
                          fontMetrics().averageCharWidth() * 3 + 2 * pages_->spacing());
    pages_->setFrameShape(QFrame::NoFrame);
    browser_ = new GuideBrowser(this);
    browser_->document()->setDocumentMargin(12);
    browser_->setAccessibleName(tr("The page"));
    browser_->setDrawing([this](text::GuideDrawing drawing) {
        const auto& reference = *yard_->book()->reference();
        return drawGuide(drawing, reader(reference), coloursOf(*this), font()).svg;
    });
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    for (auto* button : buttons->buttons()) static_cast<QPushButton*>(button)->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    connect(pages_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row < 0) return;
        page_ = text::allGuidePages.at(static_cast<std::size_t>(row));
        write();
        browser_->verticalScrollBar()->setValue(0);
    });
    connect(browser_, &GuideBrowser::widthChanged, this, &GuideWindow::write,
            Qt::QueuedConnection); // a page being laid out cannot be written anew
    connect(browser_, &QTextBrowser::anchorClicked, this, [this] {
        allHives_ = !allHives_;
        write();
    });
    auto* across = new QHBoxLayout;
    across->addWidget(pages_);
    across->addWidget(browser_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(across, 1);
    layout->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 120, fontMetrics().height() * 46);
}

GuideWindow::~GuideWindow() { stopListeningToChildren(this); }

void GuideWindow::show(text::GuidePage page) {
    allHives_ = false;
    pages_->setCurrentRow(static_cast<int>(page));
    write();
    QDialog::show();
    raise();
    activateWindow();
    pages_->setFocus();
}

std::vector<text::GuideHive> GuideWindow::hivesOfYard(const ReferenceData& reference) const {
    std::vector<text::GuideHive> hives;
    const auto add = [&](const ColonyEntry& colony) {
        for (const auto& format : answer::boxesOf(colony.record.hive, reference)) {
            const auto* shipped = reference.format(format.id);
            const QString name =
                shipped ? QString::fromStdString(shipped->name)
                        : tr("your own, %1 by %2", "the measures of a comb")
                              .arg(words::length(format.outline.top), words::length(format.outline.height));
            if (std::none_of(hives.begin(), hives.end(),
                             [&](const text::GuideHive& each) { return each.name == name; }))
                hives.push_back({name, format});
        }
    };
    if (const auto* open = yard_->find(yard_->openColony())) add(*open); // examples speak of its hive
    for (const auto& colony : yard_->colonies()) add(colony);
    return hives;
}

text::GuideReader GuideWindow::reader(const ReferenceData& reference) const {
    return {reference, words::style(), hivesOfYard(reference)};
}

void GuideWindow::write() {
    const auto reference = yard_->book()->reference();
    if (!reference)
        return browser_->setPlainText(
            tr("The tables this guide takes its numbers from are not read yet. Open it again in a moment."));
    auto whom = reader(*reference);
    whom.everyHive = allHives_;
    const auto page = text::guideText(page_, whom);
    const GuideLook look{browser_->drawingWidth(), allHives_, !whom.hives.empty()};
    const int at = browser_->verticalScrollBar()->value();
    browser_->setHtml(guideHtml(page, *reference, coloursOf(*this), look));
    browser_->verticalScrollBar()->setValue(at);
}

void GuideWindow::changeEvent(QEvent* event) {
    QDialog::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && isVisible()) write();
}

} // namespace winterlarder::desk
