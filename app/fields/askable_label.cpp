// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/askable_label.h"

#include "theme/colours.h"

#include <QCursor>
#include <QEvent>
#include <QPainter>

#include <algorithm>

namespace winterlarder::desk {

namespace {

QString linked(const text::SentencePart& part, const QString& colour) {
    const QString shown = part.text.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>"));
    if (!part.number) return shown;
    return QStringLiteral("<a href=\"%1\" style=\"color:%2\">%3</a>")
        .arg(QString::number(static_cast<int>(*part.number)), colour, shown);
}

} // namespace

AskableLabel::AskableLabel(QWidget* parent) : QLabel(parent) {
    setWordWrap(true);
    connect(this, &QLabel::linkActivated, this, [this](const QString& link) {
        const QPoint pointer = mapFromGlobal(QCursor::pos());
        const QPoint place =
            rect().contains(pointer) ? pointer + QPoint(0, fontMetrics().height()) : rect().bottomLeft();
        emit numberClicked(static_cast<text::AskedNumber>(link.toInt()), mapToGlobal(place));
    });
}

void AskableLabel::say(const QString& sentence) {
    if (sentence == sentence_) return;
    sentence_ = sentence;
    render(sentence);
}

void AskableLabel::render(const QString& sentence) {
    const auto parts = text::partsOf(sentence);
    const bool askable =
        std::any_of(parts.begin(), parts.end(), [](const auto& part) { return part.number.has_value(); });
    setTextFormat(askable ? Qt::RichText : Qt::PlainText);
    setTextInteractionFlags(askable ? Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard
                                    : Qt::NoTextInteraction);
    setToolTip(askable ? tr("Click a number to see how it was got") : QString());
    if (!askable) return setText(sentence);
    const auto& colours = coloursOf(*this);
    const QString colour = (property("quiet").toBool() ? colours.quietText : colours.text).name();
    QString html;
    for (const auto& part : parts) html += linked(part, colour);
    setText(html);
}

QString AskableLabel::said() const {
    QString said;
    for (const auto& part : text::partsOf(sentence_)) said += part.text;
    return said;
}

void AskableLabel::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    // Links carry their colour with them.
    if ((event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) &&
        textFormat() == Qt::RichText)
        render(sentence_);
}

// A label whose numbers the keys reach stands on a ground of its own.
void AskableLabel::paintEvent(QPaintEvent* event) {
    if (hasFocus()) {
        QPainter painter(this);
        painter.fillRect(rect(), coloursOf(*this).chosen);
        painter.fillRect(QRect(0, height() - 2, width(), 2), coloursOf(*this).accent);
    }
    QLabel::paintEvent(event);
}

AskableLabel* quietAskable(QWidget* parent) {
    auto* label = new AskableLabel(parent);
    label->setProperty("quiet", true);
    return label;
}

} // namespace winterlarder::desk
