// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/open_book.h"

#include <QDialog>

class QListWidget;
class QPushButton;

namespace winterlarder::desk {

//! The backups beside the book, newest first, listed on another thread: one can be made now, and any restored, which can be undone.
//! Tested: tests/app/import_test.cpp.
class BackupsDialog : public QDialog {
    Q_OBJECT

public:
    explicit BackupsDialog(OpenBook* book, QWidget* parent = nullptr);
    ~BackupsDialog() override;
    QListWidget* list() const { return list_; }

private:
    void refresh();
    void show(const std::vector<book::Backup>& backups);
    void tell(const Problems& problems);
    void make();
    void restore();

    OpenBook* book_;
    NewestWork::Key key_; //!< of its readings of the folder
    QListWidget* list_;
    QPushButton* make_;
    QPushButton* restore_;
};

} // namespace winterlarder::desk
