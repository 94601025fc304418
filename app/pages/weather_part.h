// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace winterlarder::desk {

//! The weather so far of a yard: which days were measured, more of them from a table, the last table taken out again.
//! Tested: tests/app/following_test.cpp.
class WeatherPart : public QWidget {
    Q_OBJECT

public:
    explicit WeatherPart(Yard* yard, QWidget* parent = nullptr);
    void refresh();
    QString said() const;
    QPushButton* addButton() const { return add_; }
    void importFile(const QString& file); //!< opens the dialog on it

private:
    void askForFile();
    void removeLast();
    void show(const std::vector<book::WeatherLog>& logs);

    Yard* yard_;
    book::WeatherLogId last_{};
    int asked_ = 0;
    QLabel* said_;
    QPushButton* add_;
    QPushButton* remove_;
};

//! Daily temperatures from a CSV table, with a preview; read and made out on another thread. Days still to come are asked about first.
//! Tested: tests/app/following_test.cpp.
class WeatherDialog : public QDialog {
    Q_OBJECT

public:
    WeatherDialog(Yard* yard, const QString& file, QWidget* parent = nullptr);
    ~WeatherDialog() override;
    QLineEdit* columns() const { return columns_; }
    QPushButton* importButton() const { return import_; }
    QCheckBox* sure() const { return sure_; } //!< shown where days are still to come
    QString said() const;

private:
    void allowImport();
    void preview();
    void show(std::vector<book::DayTemperature> days);
    void tell(const Problems& problems);
    void carryOut();

    Yard* yard_;
    QString file_;
    NewestWork::Key key_; //!< of its readings of the file
    std::vector<book::DayTemperature> days_;
    QLineEdit* columns_;
    QComboBox* unit_;
    QLabel* said_;
    QCheckBox* sure_;
    QPushButton* import_;
};

} // namespace winterlarder::desk
