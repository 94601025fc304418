// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/colony_edits.h"
#include "reference/reference.h"

#include <QWidget>

#include <map>
#include <optional>

class QComboBox;
class QDoubleSpinBox;
class QLabel;

namespace winterlarder::desk {

class DayField;
class QuantityField;
class SettledChoice;

//! A field for a number with its unit; hands out a value only when it was changed by hand.
QDoubleSpinBox* numberField(QWidget* parent, const QString& name, double least, double most, double step, int decimals,
                            const QString& unit);
//! Names a choice. On Linux the toolkit says what is chosen where its name is asked for, so the name is said as a description too.
void nameChoice(QComboBox* choice, const QString& name);
//! Sets a field without it telling that it was changed.
void setQuietly(QDoubleSpinBox* field, double value);

//! The bees as they were told: a number and what was counted.
class BeesField : public QWidget {
    Q_OBJECT

public:
    explicit BeesField(QWidget* parent = nullptr);
    ~BeesField() override;
    //! Limits of what may be written, before anything is shown; they are taken once.
    void useLimits(const ReferenceData& reference);
    void show(const book::BeesRecord& bees);
    void suggest(BeesToldBy kind); //!< as if it were chosen already, with no number yet; tells nothing
    QDoubleSpinBox* number() const { return number_; }
    QComboBox* kind() const { return kind_; }

signals:
    void valueEntered(winterlarder::desk::BeesToldBy kind, double value);

protected:
    void showEvent(QShowEvent* event) override; //!< in the words of the place, which may be another by now

private:
    void name();
    void fit(BeesToldBy kind);
    void tell();
    QComboBox* kind_;
    QDoubleSpinBox* number_;
    SettledChoice* settled_;
    std::map<BeesToldBy, NumberRange> limits_;
};

//! The newest weighing: how, how much, and when.
class WeighingField : public QWidget {
    Q_OBJECT

public:
    explicit WeighingField(QWidget* parent = nullptr);
    ~WeighingField() override;
    void useLimits(const ReferenceData& reference);
    //! `asOf`: the latest day a weighing may be of.
    void show(const std::optional<book::WeighingRecord>& weighing, Date asOf);
    QComboBox* kind() const { return kind_; }
    QuantityField* gross() const { return first_; }
    DayField* day() const { return date_; }

signals:
    void weighed(const std::optional<winterlarder::book::WeighingRecord>& weighing);

private:
    void fit(WeighedBy kind);
    void tell();
    QComboBox* kind_;
    QuantityField* first_;
    QuantityField* second_;
    std::optional<FieldLimits> gross_, lift_;
    QComboBox* heft_;
    SettledChoice *settled_, *felt_; //!< how it was weighed, how heavy it felt
    QLabel* on_;
    DayField* date_;
};

} // namespace winterlarder::desk
