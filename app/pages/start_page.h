// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/place_field.h"
#include "forms/colonies_field.h"
#include "quantity/text.h"

#include <QWidget>

class QBoxLayout;
class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;

namespace winterlarder::desk {

class FormatField;
class OwnMeasures;

//! What a keeper answers to begin a book.
struct Beginning {
    QString yard;
    PlaceChoice place;
    std::optional<double> heightM; //!< of the place
    QString format;                //!< id of a hive format; how new colonies are housed
    std::vector<ColoniesField::Entered> colonies;
    UnitSystem units = UnitSystem::Metric;
    std::optional<book::OwnFormat> own{}; //!< the measures of their combs, where they are none of a format's
};

//! The first page: where, which hive, which colonies, and a new book; or one that is there already, or the demo. The place proposes the
//! formats usual there and the units. Where a book is open meanwhile the page says so and Escape goes back. Tested: tests/app/first_run_test.cpp.
class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(QWidget* parent = nullptr);
    void useReference(std::shared_ptr<const ReferenceData> reference);
    void usePlaces(std::shared_ptr<const climate::Gazetteer> places);
    //! The book that stays open meanwhile, by the name of its yard; empty: none.
    void sayOpen(const QString& yard);

    PlaceField* place() const { return place_; }
    QLineEdit* yard() const { return yard_; }
    FormatField* format() const { return format_; }
    QCheckBox* ownCombs() const { return ownCombs_; }
    OwnMeasures* measures() const { return measures_; } //!< nothing before the shipped data are there
    ColoniesField* colonies() const { return colonies_; }
    QRadioButton* unitsButton(UnitSystem system) const;
    UnitSystem units() const;
    QString fault() const;
    //! As with ColonyView.
    bool hasHeightForWidth() const override { return false; }

signals:
    void finished(const winterlarder::desk::Beginning& beginning);
    void openAsked();
    void demoAsked();
    void backAsked();                                    //!< to the book that is open
    void unitsProposed(winterlarder::UnitSystem system); //!< by the place, or chosen by hand

protected:
    void keyPressEvent(QKeyEvent* event) override; //!< Escape
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QLayout* buildHead(QWidget* inside);
    QLayout* buildWhere(QWidget* inside);
    QLayout* buildColonies(QWidget* inside);
    QWidget* buildUnits();
    void propose(); //!< what is usual where the place is
    void proposeBoxes();
    void showMeasures();
    QString measuresFault() const; //!< empty where none are wanted
    void begin();

    QLineEdit* yard_;
    PlaceField* place_;
    FormatField* format_;
    QBoxLayout* where_ = nullptr;
    QCheckBox* ownCombs_;
    OwnMeasures* measures_ = nullptr;
    ColoniesField* colonies_;
    std::shared_ptr<const climate::Gazetteer> places_;
    QBoxLayout* columns_;
    QLabel* open_; //!< which book stays open
    QPushButton* back_;
    bool unitsByHand_ = false;
    QRadioButton* metric_;
    QRadioButton* states_;
    QRadioButton* imperial_;
    QLabel* fault_;
    QPushButton* begin_;
};

} // namespace winterlarder::desk
