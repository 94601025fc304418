// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/text.h"
#include "reference/reference.h"

#include <QLineEdit>

#include <optional>

namespace winterlarder::desk {

//! A field that takes a quantity as people type it ("1,5 kg", "3 lb 4 oz", "12"), within the limits of shared/fields.csv. What cannot
//! be read stays as it was typed, marked, with what would be right. Tested: tests/app/fields_test.cpp.
class QuantityField : public QLineEdit {
    Q_OBJECT

public:
    //! Values in kg, L, mm, m above the sea, degC, money for a kilogram, or as they are.
    enum class Kind { Mass, Volume, Length, Height, Temperature, PricePerMass, Number, Whole };

    //! `limits` may be nothing: any amount of 0 or more.
    QuantityField(QWidget* parent, const QString& name, Kind kind, const FieldLimits* limits);

    void show(std::optional<double> value);
    //! Nothing where it is empty or faulty.
    std::optional<double> value() const;
    QString fault() const; //!< empty where it is empty or right
    //! Other limits; nothing is told.
    void limitTo(const FieldLimits& limits) {
        limits_ = limits;
        check();
    }
    //! Whether something must be there.
    void require(bool required) {
        required_ = required;
        check();
    }

protected:
    void changeEvent(QEvent* event) override; //!< in other units it shows the same quantity

signals:
    void valueEntered(std::optional<double> value); //!< another value was entered, or it was emptied

private:
    std::optional<double> read(QString& fault) const;
    bool showsLast() const; //!< what is typed is what was shown: rounded, and still the same quantity
    QString written(double value) const;
    QString withinLimits(double value) const;
    void nameUnit(); //!< in the empty field
    void check();
    void finish();

    Kind kind_;
    std::optional<FieldLimits> limits_;
    std::optional<double> last_;
    bool required_ = false;
};

} // namespace winterlarder::desk
