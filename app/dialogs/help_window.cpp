// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/help_window.h"

#include "theme/colours.h"
#include "theme/list_keys.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace winterlarder::desk {

HelpWindow::HelpWindow(QWidget* parent, const QString& title) : QDialog(parent) {
    setWindowTitle(title);
    search_ = new QLineEdit(this);
    search_->setAccessibleName(tr("Show only what holds these letters"));
    search_->setPlaceholderText(tr("look for\u2026"));
    search_->setClearButtonEnabled(true);
    search_->installEventFilter(this);
    browser_ = new QTextBrowser(this);
    browser_->setAccessibleName(title);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    for (auto* button : buttons->buttons()) static_cast<QPushButton*>(button)->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    connect(search_, &QLineEdit::textChanged, this, &HelpWindow::list);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(search_);
    layout->addWidget(browser_, 1);
    layout->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 96, fontMetrics().height() * 34);
}

void HelpWindow::show(std::vector<text::ExplainedSection> sections) {
    sections_ = std::move(sections);
    list();
    QDialog::show();
    raise();
    activateWindow();
    search_->setFocus();
    search_->selectAll();
}

void HelpWindow::list() {
    const QString wanted = search_->text().trimmed(), quiet = coloursOf(*this).quietText.name();
    const auto holds = [&](const text::Explained& row) {
        return row.term.contains(wanted, Qt::CaseInsensitive) || row.words.contains(wanted, Qt::CaseInsensitive);
    };
    QString html;
    for (const auto& section : sections_) {
        QString rows;
        for (const auto& row : section.rows)
            if (holds(row))
                rows +=
                    QStringLiteral(
                        "<tr><td style='padding:2px 18px 6px 0'><b>%1</b></td><td style='padding:2px 0 6px 0'>%2</td></tr>")
                        .arg(row.term.toHtmlEscaped(), row.words.toHtmlEscaped());
        if (!rows.isEmpty())
            html += QStringLiteral("<h3>%1</h3><table>%2</table>").arg(section.title.toHtmlEscaped(), rows);
    }
    if (html.isEmpty())
        html = QStringLiteral("<p style='color:%1'>%2</p>")
                   .arg(quiet, tr("Nothing here holds these letters.").toHtmlEscaped());
    browser_->setHtml(html);
}

QString HelpWindow::text() const { return browser_->toPlainText(); }

void HelpWindow::changeEvent(QEvent* event) {
    QDialog::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && !sections_.empty()) list();
}

bool HelpWindow::eventFilter(QObject* watched, QEvent* event) {
    return isForTheList(*event) ? QApplication::sendEvent(browser_, event) : QDialog::eventFilter(watched, event);
}

} // namespace winterlarder::desk
