// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDir>
#include <QStandardPaths>

namespace winterlarder::desk {

//! Where a new file of that name is proposed: among the keeper's documents.
inline QString inDocuments(const QString& name) {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).filePath(name);
}

} // namespace winterlarder::desk
