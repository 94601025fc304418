// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/why_window.h"

#include "theme/colours.h"

#include <QDialogButtonBox>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

QString listed(const QString& title, const std::vector<SaidRemark>& remarks, const QString& quiet) {
    if (remarks.empty()) return {};
    return QStringLiteral("<h3>%1</h3>").arg(title.toHtmlEscaped()) + htmlOf(remarks, quiet);
}

} // namespace

WhyWindow::WhyWindow(QWidget* parent) : QDialog(parent) {
    browser_ = new QTextBrowser(this);
    browser_->setAccessibleName(tr("Reasons and cautions with their sources"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(browser_, 1);
    layout->addWidget(buttons);
    resize(660, 560);
}

void WhyWindow::show(const QString& colony, const QString& answer, const std::vector<SaidRemark>& reasons, const std::vector<SaidRemark>& cautions) {
    setWindowTitle(tr("Why? %1").arg(colony));
    const QString quiet = coloursOf(*this).quietText.name();
    browser_->setHtml(QStringLiteral("<h2>%1</h2>").arg(answer.toHtmlEscaped()) + listed(tr("Reasons"), reasons, quiet) + listed(tr("Mind"), cautions, quiet));
    QDialog::show();
    raise();
    activateWindow();
}

QString WhyWindow::text() const {
    return browser_->toPlainText();
}

} // namespace winterlarder::desk
