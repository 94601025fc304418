// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/open_book.h"

#include <QDialog>

#include <memory>

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;

namespace winterlarder::exchange {
struct CsvPreview;
}

namespace winterlarder::desk {

//! Import with a preview: which entries a table (CSV) or a whole book (JSON) would add or change, or everything that is wrong with it. What is
//! previewed is what is imported, as one step that can be undone; a backup is made first. The file is read once, on another thread. Tested: tests/app/import_test.cpp.
class ImportDialog : public QDialog {
    Q_OBJECT

public:
    ImportDialog(OpenBook* book, const QString& file, QWidget* parent = nullptr);
    ~ImportDialog() override;
    QComboBox* table() const { return table_; }
    QPushButton* importButton() const { return import_; }
    QString said() const;
    QListWidget* faults() const { return faults_; }
    QCheckBox* sure() const { return sure_; } //!< shown where rows are asked about that are not likely

private:
    void readTable();
    void readBook();
    void guessTable(); //!< by its columns, where the file's name does not tell
    void preview();    //!< of the table
    void sayReading();
    void showFaults(const Problems& problems);
    void showTable(const exchange::CsvPreview& preview);
    void askAbout(const Problems& doubts, bool impossible);
    void allowImport();
    void carryOut();

    OpenBook* book_;
    QString file_;
    NewestWork::Key key_;                                      //!< of its readings of the file
    bool whole_ = false;                                       //!< a whole book as a JSON document
    std::shared_ptr<const std::string> text_;                  //!< of a table; nothing until it is read
    std::shared_ptr<const std::vector<book::Target>> entries_; //!< of a whole book, likewise
    std::shared_ptr<const exchange::CsvPreview> previewed_;
    int asked_ = 0;
    bool importable_ = false; //!< nothing is wrong, and there is something to import
    QComboBox* table_;
    QLabel* said_;
    QListWidget* faults_;
    QPushButton* import_;
    QCheckBox* sure_;
};

//! The table a file's name speaks of: "weighings-2026.csv" -> "weighings"; empty where none.
QString tableOfFile(const QString& file);

} // namespace winterlarder::desk
