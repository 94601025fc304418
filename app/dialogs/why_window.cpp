// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/why_window.h"

#include "theme/colours.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

#include <utility>

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
    practice_ = buttons->addButton(tr("Good &practice"), QDialogButtonBox::ActionRole);
    practice_->setCheckable(true);
    practice_->setToolTip(tr("What holds for every hive at this time of the year"));
    connect(practice_, &QPushButton::toggled, this, &WhyWindow::write);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(browser_, 1);
    layout->addWidget(buttons);
    resize(660, 560);
}

void WhyWindow::show(const QString& colony, const QString& answer, Said said) {
    setWindowTitle(tr("Why? %1").arg(colony));
    answer_ = answer;
    said_ = std::move(said);
    practice_->setVisible(!said_.goodPractice.empty());
    practice_->setChecked(false);
    write();
    QDialog::show();
    raise();
    activateWindow();
}

void WhyWindow::write() {
    const QString quiet = coloursOf(*this).quietText.name();
    QString page = QStringLiteral("<h2>%1</h2>").arg(answer_.toHtmlEscaped()) +
                   listed(tr("Reasons"), said_.reasons, quiet) + listed(tr("Cautions"), said_.cautions, quiet);
    if (practice_->isChecked())
        page += QStringLiteral("<a name=\"practice\"></a>") + listed(tr("Good practice"), said_.goodPractice, quiet);
    browser_->setHtml(page);
    if (practice_->isChecked()) browser_->scrollToAnchor(QStringLiteral("practice"));
}

QString WhyWindow::text() const { return browser_->toPlainText(); }

} // namespace winterlarder::desk
