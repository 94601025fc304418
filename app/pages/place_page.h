// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/quantity_field.h"
#include "models/yard.h"

#include <QTimer>
#include <QWidget>

#include <functional>
#include <map>
#include <vector>

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace winterlarder::desk {

class CurvePlot;
class DayField;
class PlaceField;
class WeatherPart;

//! Place: where the yard is, its climate, the dates its winter turns on, the keeper's wishes, and what sugar costs. Each change is
//! written to the book at once. Two columns, one below the other where the window is too narrow for both. Tested: tests/app/pages_test.cpp.
class PlacePage : public QWidget {
    Q_OBJECT

public:
    explicit PlacePage(Yard* yard, QWidget* parent = nullptr);
    ~PlacePage() override; //!< writes what was typed last
    void refresh();

    QLineEdit* name() const { return name_; }
    PlaceField* place() const { return place_; }
    QuantityField* elevation() const { return elevation_; }
    QuantityField* price() const { return price_; }
    QuantityField* reserve() const { return reserve_; }
    QuantityField* risk() const { return risk_; }
    WeatherPart* weather() const { return weather_; }
    QSize minimumSizeHint() const override;
    QPlainTextEdit* notes() const { return notes_; }

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override; //!< words and heights in other units
    void hideEvent(QHideEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; //!< the notes are left

private:
    //! A date of the season: the climate's, or the keeper's own for every year.
    struct SeasonField {
        std::optional<book::DayOfYear> book::YardSeason::*date;
        std::optional<climate::SeasonDate> climate::SeasonDates::*derived;
        QCheckBox* own;
        DayField* day;
        QLabel* said;
    };
    using Change = std::function<void(book::Yard&)>;
    static constexpr int everyYear = 2001; //!< any year without a leap day

    void build();
    void refreshSoon();
    QLayout* buildWhere();
    QLayout* buildSeason();
    std::optional<book::FlowStrength> chosenFlow() const; //!< nothing: not said
    QLayout* buildWishes();
    QLayout* buildOwnClimate();
    QuantityField* quantity(const QString& name, QuantityField::Kind kind, const char* field);
    void addSeason(QGridLayout* grid, const QString& words, std::optional<book::DayOfYear> book::YardSeason::*date,
                   std::optional<climate::SeasonDate> climate::SeasonDates::*derived);
    void change(const Change& change);
    void noteTyped();
    void writeNotes(); //!< as far as they were typed and not written yet
    void writeOwnClimate();
    void namePrice();
    void showSeason(const book::Yard& yard);
    void showClimate(const book::Yard& yard);

    Yard* yard_;
    bool built_ = false;
    bool soon_ = false;
    bool showing_ = false;
    QBoxLayout* columns_ = nullptr;
    QLineEdit* name_ = nullptr;
    PlaceField* place_ = nullptr;
    QuantityField* elevation_ = nullptr;
    QComboBox* flow_ = nullptr;
    QCheckBox* own_ = nullptr;
    QWidget* ownFields_ = nullptr;
    QuantityField* latitude_ = nullptr;
    std::vector<QuantityField*> months_;
    std::vector<SeasonField> season_;
    QuantityField *risk_ = nullptr, *reserve_ = nullptr, *visits_ = nullptr, *price_ = nullptr, *bag_ = nullptr;
    QLabel* priceOf_ = nullptr;
    std::vector<QCheckBox*> weekdays_;
    QLineEdit* currency_ = nullptr;
    QPlainTextEdit* notes_ = nullptr;
    QTimer notesSoon_;
    book::YardId notesOf_{};      //!< the yard whose notes were typed and are not written yet; 0: none
    book::YardId notesShownOf_{}; //!< whose notes stand in the field
    QCheckBox* learn_ = nullptr;
    CurvePlot* curve_ = nullptr;
    QLabel* said_ = nullptr;
    WeatherPart* weather_ = nullptr;
};

} // namespace winterlarder::desk
