// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/paper.h"

#include "models/words.h"
#include "text/contexts.h"

#include <QAbstractTextDocumentLayout>
#include <QFileInfo>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QUrl>

#include <memory>

namespace winterlarder::desk {

namespace {

constexpr double dotsPerInch = 288; // what the sheet is laid out in: fine enough that letters need no rounding
constexpr double dotsPerPoint = dotsPerInch / 72;
constexpr double largestLetters = 9, smallestLetters = 6.25, stepDown = 0.25; // points
constexpr double footerPoints = 7;
constexpr double hopeless = 3; // so many times the pages wanted are not saved by small letters: they stay large
const QMarginsF margins(14, 12, 14, 12); // mm
constexpr double pictureShares[] = {0.33, 0.29, 0.25,
                                    0.21}; // of its width: lower where small letters do not save the page
constexpr double pictureDotsPerInch =
    140; // of its letters: finer than a screen's, so that they are as large as the sheet's

int dots(double points) { return static_cast<int>(points * dotsPerPoint); }

QString styleSheet(double points) {
    return QStringLiteral(
               "body{color:#000000;} h1{font-size:%1px;margin:0;} h2{font-size:%2px;margin-top:%3px;margin-bottom:%6px;} p{margin-top:%6px;margin-bottom:%6px;}"
               "th{background-color:#e6e6e6;font-weight:bold;} .quiet{color:#333333;} .answer{font-size:%2px;font-weight:bold;}"
               ".small{font-size:%4px;color:#222222;} table{margin-bottom:%5px;} small{font-size:%4px;} td,th{padding-left:%5px;padding-right:%5px;}")
        .arg(dots(points * 1.7))
        .arg(dots(points * 1.2))
        .arg(dots(points * 0.8))
        .arg(dots(points * 0.82))
        .arg(dots(3))
        .arg(dots(1.2));
}

// The room for text on a page, in the units it is laid out in.
QSizeF roomOn(const QSizeF& pageInInches) {
    return {pageInInches.width() * dotsPerInch, (pageInInches.height() - footerPoints * 2.2 / 72) * dotsPerInch};
}

class LaidOut {
public:
    LaidOut(const Paper& paper, const QSizeF& room) : room_(room) {
        for (double points = largestLetters; points >= smallestLetters - 1e-9; points -= stepDown)
            if (settledAt(paper, points, pictureShares[0])) return;
        for (const double share : pictureShares)
            if (paper.picture && settledAt(paper, smallestLetters, share)) return;
    }
    int pages() const { return document_->pageCount(); }
    void paintPage(QPainter& painter, int page) const {
        painter.save();
        painter.translate(0, -page * room_.height());
        QAbstractTextDocumentLayout::PaintContext context;
        context.clip = QRectF(0, page * room_.height(), room_.width(), room_.height());
        context.palette.setColor(QPalette::Text, Qt::black);
        painter.setClipRect(context.clip);
        document_->documentLayout()->draw(&painter, context);
        painter.restore();
    }

private:
    // Fits, or never will.
    bool settledAt(const Paper& paper, double points, double share) {
        lay(paper, points, share);
        keepHeadingsWithWhatFollows();
        return document_->pageCount() <= paper.wantedPages || document_->pageCount() > hopeless * paper.wantedPages;
    }
    void lay(const Paper& paper, double points, double share) {
        document_ = std::make_unique<QTextDocument>();
        QFont font(QStringLiteral("DejaVu Sans"));
        font.setPixelSize(dots(points)); // points would depend on the screen
        font.setHintingPreference(QFont::PreferNoHinting);
        document_->setDefaultFont(font);
        document_->setDefaultStyleSheet(styleSheet(points));
        document_->setDocumentMargin(0);
        QString html = paper.html;
        if (paper.picture) addPicture(paper, html, share);
        document_->setHtml(html);
        document_->setPageSize(room_);
    }
    void addPicture(const Paper& paper, QString& html, double share) {
        const double tall = room_.width() * share;
        const double screen = pictureDotsPerInch / dotsPerInch;
        const QSize wanted = QSizeF(room_.width() * screen, tall * screen).toSize();
        if (pictured_ != wanted) picture_ = paper.picture(wanted);
        pictured_ = wanted;
        document_->addResource(QTextDocument::ImageResource, QUrl(QStringLiteral("picture")), picture_);
        html.replace(QStringLiteral("<img src='picture'>"), QStringLiteral("<img src='picture' width='%1' height='%2'>")
                                                                .arg(room_.width(), 0, 'f', 0)
                                                                .arg(tall, 0, 'f', 0));
    }
    int pageOf(const QTextBlock& block, bool end) const {
        const QRectF box = document_->documentLayout()->blockBoundingRect(block);
        return static_cast<int>((end ? box.bottom() - 1 : box.top() + 1) / room_.height());
    }
    void keepHeadingsWithWhatFollows() {
        for (auto block = document_->begin(); block.isValid(); block = block.next()) {
            const auto next = block.next();
            if (block.blockFormat().headingLevel() == 0 || !next.isValid() ||
                pageOf(block, false) == pageOf(next, true))
                continue;
            QTextCursor cursor(block);
            auto format = block.blockFormat();
            format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
            cursor.setBlockFormat(format);
        }
    }

    QSizeF room_;
    QImage picture_;
    QSize pictured_; //!< that the picture was made for
    std::unique_ptr<QTextDocument> document_;
};

void paintFooter(QPainter& painter, const QString& text, int page, int pages, const QSizeF& room) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(dots(footerPoints));
    painter.setFont(font);
    painter.setPen(Qt::black);
    const QRectF foot(0, room.height() + dots(3), room.width(), dots(footerPoints * 1.6));
    painter.drawText(foot, Qt::AlignLeft | Qt::AlignTop, text);
    painter.drawText(foot, Qt::AlignRight | Qt::AlignTop, say::Sheet::tr("page %1 of %2").arg(page + 1).arg(pages));
}

QSizeF inches(const QPageLayout& layout) { return layout.paintRect(QPageLayout::Inch).size(); }

template <class Device> void paintOn(Device& device, const Paper& paper) {
    const auto room = roomOn(inches(device.pageLayout()));
    const LaidOut laid(paper, room);
    QPainter painter(&device);
    painter.scale(device.logicalDpiX() / dotsPerInch, device.logicalDpiY() / dotsPerInch);
    for (int page = 0; page < laid.pages(); ++page) {
        if (page > 0) device.newPage();
        laid.paintPage(painter, page);
        paintFooter(painter, paper.footer, page, laid.pages(), room);
    }
}

QPageLayout a4() {
    return {QPageSize(words::style().numbers.system == UnitSystem::UnitedStates ? QPageSize::Letter : QPageSize::A4),
            QPageLayout::Portrait, margins, QPageLayout::Millimeter};
}

} // namespace

void printSheet(const Paper& paper, QPrinter& printer) {
    printer.setPageMargins(margins, QPageLayout::Millimeter);
    paintOn(printer, paper);
}

bool saveSheet(const Paper& paper, const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return false;
    {
        QPdfWriter writer(&file);
        writer.setPageLayout(a4());
        writer.setResolution(300);
        writer.setTitle(paper.footer);
        paintOn(writer, paper);
    }
    return file.error() == QFileDevice::NoError && file.size() > 0;
}

int pagesOf(const Paper& paper) { return LaidOut(paper, roomOn(inches(a4()))).pages(); }

} // namespace winterlarder::desk
