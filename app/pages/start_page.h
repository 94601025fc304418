// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/place_field.h"
#include "quantity/text.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;
class QSpinBox;

namespace winterlarder::desk {

//! What a keeper answers to begin a book.
struct Beginning {
    QString yard;
    PlaceChoice place;
    QString format; //!< id of a hive format; how new colonies are housed
    int boxes = 1;
    UnitSystem units = UnitSystem::Metric;
};

//! The first page: three questions and a new book, or one that is there already. Tested: tests/app/pages_test.cpp.
class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(QWidget* parent = nullptr);
    void useReference(std::shared_ptr<const ReferenceData> reference);

    PlaceField* place() const { return place_; }
    QLineEdit* yard() const { return yard_; }
    QComboBox* format() const { return format_; }
    QRadioButton* unitsButton(UnitSystem system) const;
    QString fault() const;
    //! As with ColonyView.
    bool hasHeightForWidth() const override { return false; }

signals:
    void finished(const winterlarder::desk::Beginning& beginning);
    void openAsked();
    void demoAsked();

private:
    QWidget* buildUnits();
    void begin();

    QLineEdit* yard_;
    PlaceField* place_;
    QComboBox* format_;
    QSpinBox* boxes_;
    QRadioButton* metric_;
    QRadioButton* states_;
    QRadioButton* imperial_;
    QLabel* fault_;
    QPushButton* begin_;
};

} // namespace winterlarder::desk
