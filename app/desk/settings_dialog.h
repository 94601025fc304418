// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/settings.h"
#include "models/yard.h"

#include <QDialog>

#include <functional>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;

namespace winterlarder::desk {

class QuantityField;

//! Everything that can be set, each explained in a line: what this computer keeps for its keeper, and what belongs to the yard that is
//! shown and is kept in its book, where it can be undone. What is chosen is kept and told at once. Tested: tests/desk/settings_test.cpp.
class SettingsDialog : public QDialog {
    Q_OBJECT

public:
    explicit SettingsDialog(Yard* yard, QWidget* parent = nullptr);

    QComboBox* units() const { return units_; }
    QComboBox* language() const { return language_; }
    QComboBox* colours() const { return colours_; }
    QComboBox* textSize() const { return textSize_; }
    QComboBox* notices() const { return notices_; }
    QuantityField* risk() const { return risk_; } //!< nothing where no book is open, as with all of the yard
    QuantityField* reserve() const { return reserve_; }
    QCheckBox* learn() const { return learn_; }
    QLabel* backups() const { return backups_; } //!< where they lie

signals:
    void unitsChosen();
    void coloursChosen(winterlarder::desk::ColourScheme wish);
    void textSizeChosen(int percent);
    void noticesChosen(winterlarder::desk::NoticeWish wish);
    void backupsAsked();

private:
    void buildOwn(QGridLayout* rows);
    void buildLanguage(QGridLayout* rows);
    void buildYard(QGridLayout* rows);
    void buildWishes(QGridLayout* rows);
    void addHeading(QGridLayout* rows, const QString& words);
    void addRow(QGridLayout* rows, const QString& words, QWidget* field, const QString& explained);
    QComboBox* choice(const QString& name);
    void change(const std::function<void(book::Yard&)>& change);
    void showYard();

    Yard* yard_;
    QComboBox *units_ = nullptr, *language_ = nullptr, *colours_ = nullptr, *textSize_ = nullptr, *notices_ = nullptr;
    QuantityField *risk_ = nullptr, *reserve_ = nullptr;
    QCheckBox* learn_ = nullptr;
    QLabel* backups_ = nullptr;
};

} // namespace winterlarder::desk
