// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/quantity_field.h"
#include "guide/guide_link.h"
#include "models/yard.h"
#include "stores/plausible.h"

#include <QComboBox>
#include <QDialog>

#include <functional>
#include <utility>
#include <variant>
#include <vector>

class QCheckBox;
class QFormLayout;
class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace winterlarder::desk {

class DayField;
class DoubtBar;

//! What was typed, without blanks at its ends.
std::string plain(const QLineEdit* field);
std::string plain(const QPlainTextEdit* field);

//! A form for one entry of the book: named fields, what is wrong with them said below, and nothing written until it is right. It is
//! filled in by widgets/entry_forms.h. Tested: tests/app/fields_test.cpp.
class EntryForm : public QDialog {
    Q_OBJECT

public:
    EntryForm(QWidget* parent, const QString& title, Yard* yard);

    // ---- fields, in their order --------------------------------------------------------------------------------------
    //! `field`: the entry of shared/fields.csv that limits it.
    QuantityField* quantity(const QString& label, QuantityField::Kind kind, const char* field,
                            std::optional<double> value);
    DayField* day(const QString& label, Date day);
    QLineEdit* line(const QString& label, const std::string& text);
    QPlainTextEdit* lines(const QString& label, const std::string& text);
    QCheckBox* flag(const QString& label, bool on);
    QComboBox* maybe(const QString& label, std::optional<bool> said); //!< not said, yes, no
    template <class Choice>
    QComboBox* choice(const QString& label, const std::vector<std::pair<QString, Choice>>& choices, Choice chosen) {
        auto* box = choiceBox(label);
        for (const auto& [words, each] : choices)
            box->addItem(words, QVariant::fromValue(static_cast<qlonglong>(each)));
        box->setCurrentIndex(box->findData(QVariant::fromValue(static_cast<qlonglong>(chosen))));
        return box;
    }
    void add(const QString& label, QWidget* field);
    void say(const QString& words);      //!< a line of explanation
    void judgedBy(text::GuidePage page); //!< of the guide; before setEdit()

    //! What is to be done to the book, or what is wrong with what was typed.
    using Made = std::variant<book::Edit, QString>;
    void setEdit(std::function<Made()> edit); //!< once, after all fields
    //! Done once the book has it, before what is shown is read again; not where the form is left without writing.
    void onceWritten(std::function<void(const BookChange&)> then) { then_ = std::move(then); }
    QString fault() const; //!< as shown
    //! Asks about an entry that is not likely: what was typed stays, nothing is written until it is answered.
    DoubtBar* doubts() const { return doubts_; }

public slots:
    //! Closes once the book has it; where the book refuses, the form stays as it was filled in.
    void save();

private:
    QComboBox* choiceBox(const QString& label);

    QString faultOfFields(); //!< the first, with the focus on it
    void showFault(const QString& wrong);
    bool askedAbout(const book::Edit& made); //!< whether a question is to be answered first
    void askBeside(QWidget* field, stores::Doubt doubt);
    QWidget* fieldInDoubt(const std::string& id) const;
    QuantityField* firstAmount() const; //!< nothing where none is filled in
    void saveAsMeant(double kilograms);
    void write(book::Edit made);

    Yard* yard_;
    std::optional<text::GuidePage> guide_;
    QFormLayout* form_;
    QLabel* fault_;
    DoubtBar* doubts_;
    bool sure_ = false; //!< the question was answered: it is right
    QPushButton* saveButton_ = nullptr;
    std::vector<QuantityField*> quantities_;
    std::vector<DayField*> days_;
    std::function<Made()> edit_;
    std::function<void(const BookChange&)> then_;
};

template <class Choice> Choice chosen(const QComboBox* box) {
    return static_cast<Choice>(box->currentData().toLongLong());
}
std::optional<bool> said(const QComboBox* maybe);

} // namespace winterlarder::desk
