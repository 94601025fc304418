// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/banner.h"
#include "desk/colony_view.h"
#include "desk/main_window.h"
#include "dialogs/documents.h"
#include "print/yard_sheet.h"

#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

namespace winterlarder::desk {

namespace {

void printByHand(QWidget* parent, const Paper& paper) {
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() == QDialog::Accepted) printSheet(paper, printer);
}

// Beside the window, which waits for it as for any dialog.
void preview(QWidget* parent, const QString& title, const Paper& paper) {
    auto* dialog = new QPrintPreviewDialog(parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(title);
    QObject::connect(dialog, &QPrintPreviewDialog::paintRequested, dialog,
                     [paper](QPrinter* printer) { printSheet(paper, *printer); });
    dialog->resize(parent->size() * 0.9);
    dialog->open();
}

} // namespace

void MainWindow::savePaper(const Paper& paper, const QString& name) {
    const QString path = askForNewFile(this, tr("Save sheet"), inDocuments(name + QStringLiteral(".pdf")),
                                       tr("PDF (*.pdf)"), QStringLiteral("pdf"));
    if (path.isEmpty()) return;
    if (saveSheet(paper, path)) return banner_->showBriefly(tr("The sheet was written to %1.").arg(path));
    warnPlainly(this, tr("Not saved"), tr("The sheet could not be written to %1. Choose another folder.").arg(path));
}

std::optional<Paper> MainWindow::shownColonySheet() const {
    const auto* colony = yard_.find(colonyView_->colony());
    if (!colony || !reference_ || list_->currentIndex().row() < 1) return std::nullopt;
    return colonySheet(*colony, *reference_);
}

void MainWindow::saveYardSheet() { savePaper(yardSheet(yard_, model_->inOrder()), yard_.title()); }

void MainWindow::printYardSheet() { printByHand(this, yardSheet(yard_, model_->inOrder())); }

void MainWindow::previewYardSheet() {
    preview(this, tr("The yard plan on paper"), yardSheet(yard_, model_->inOrder()));
}

void MainWindow::previewColonySheet() {
    if (const auto paper = shownColonySheet()) preview(this, tr("The colony sheet on paper"), *paper);
}

void MainWindow::saveColonySheet() {
    const auto paper = shownColonySheet();
    if (paper) savePaper(*paper, QString::fromStdString(yard_.find(colonyView_->colony())->record.colony.value_or("")));
}

void MainWindow::printColonySheet() {
    const auto paper = shownColonySheet();
    if (paper) printByHand(this, *paper);
}

} // namespace winterlarder::desk
