// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QSaveFile>
#include <QStandardPaths>

#include <string>

namespace winterlarder::desk {

//! Where a new file of that name is proposed: among the keeper's documents.
inline QString inDocuments(const QString& name) {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).filePath(name);
}

//! Asks for the name of a file to write; one typed without a suffix gets `suffix` ("pdf") before it is asked whether to write over it.
//! Nothing where the keeper does not want to.
inline QString askForNewFile(QWidget* parent, const QString& title, const QString& proposal, const QString& filter,
                             const QString& suffix, QFileDialog::Options options = {}) {
    QFileDialog dialog(parent, title, QFileInfo(proposal).path(), filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setOptions(options);
    dialog.setDefaultSuffix(suffix);
    dialog.selectFile(QFileInfo(proposal).fileName());
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

//! Writes a whole file or nothing; false where it cannot be written, or where that fails half-way.
inline bool saveText(const QString& file, const std::string& text) {
    QSaveFile to(file);
    const auto bytes = static_cast<qint64>(text.size());
    return to.open(QIODevice::WriteOnly) && to.write(text.data(), bytes) == bytes && to.commit();
}

//! A warning whose words are shown as they are: a file may be called anything.
inline void warnPlainly(QWidget* parent, const QString& title, const QString& words) {
    QMessageBox box(QMessageBox::Warning, title, words, QMessageBox::Ok, parent);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

} // namespace winterlarder::desk
