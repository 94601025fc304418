// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/main_window.h"
#include "print/yard_sheet.h"

#include <QFileDialog>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>

namespace winterlarder::desk {

void MainWindow::saveYardSheet() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save yard sheet"), yard_.title() + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (path.isEmpty() || saveSheet(yardSheet(yard_), path)) return;
    QMessageBox::warning(this, tr("Not saved"), tr("The sheet could not be written to %1. Choose another folder.").arg(path));
}

void MainWindow::printYardSheet() {
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() == QDialog::Accepted) printSheet(yardSheet(yard_), printer);
}

} // namespace winterlarder::desk
