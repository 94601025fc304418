// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "quantity/text.h"
#include "text/wording.h"

#include <QLocale>
#include <QString>

#include <vector>

namespace winterlarder::text {

//! How numbers and dates look in sentences, and what things are called: one style is handed to every function here.
struct WordStyle {
    NumberStyle numbers;
    bool unitsChosen = false;  //!< by hand: a place does not change them
    bool poundsBeside = false; //!< stores in kilograms have pounds beside them
    Wording wording{};
    QLocale locale{QLocale::English, QLocale::UnitedKingdom};
};

QString worded(const QString& sentence, const WordStyle& style); //!< with the nouns of the place

QString mass(Mass mass, const WordStyle& style); //!< "12.3 kg"
QString amount(Mass mass,
               const WordStyle& style); //!< to half a kilogram or a pound: "12.5 kg", "12.5 kg (28 lb)", "28 lb"
QString mass(const Spread<Mass>& mass, const WordStyle& style); //!< "12.3 kg (9.8–15.1)"
QString amount(
    const Spread<Mass>& mass,
    const WordStyle& style); //!< to half a kilogram or a pound, the band beside it: "12.5 kg (10–15)", "28 lb (22–33)"
QString volume(Volume volume, const WordStyle& style); //!< "7.8 L"; in quarts and gallons as amount()
QString amount(
    Volume volume,
    const WordStyle&
        style); //!< to half a litre: "7.5 L"; to half a quart, from a gallon on to a quarter of it: "2 1/2 qt", "1 1/4 gal"
//! Parts of a whole in the steps that amount() shows, so that they add up to the whole as it shows it: each is what the sum up to it has more than
//! the sum before. 10 kg in three parts are 3.5, 3 and 3.5 kg.
std::vector<Mass> shownParts(const std::vector<Mass>& parts, const WordStyle& style);
std::vector<Volume> shownParts(const std::vector<Volume>& parts, const WordStyle& style);
QString length(Length length, const WordStyle& style); //!< "35 mm", or as on a rule, to a sixteenth: "1 3/8 in"
QString bees(const Spread<BeeCount>& bees, const WordStyle& style); //!< "12,300 (9,900–15,200)", to the nearest hundred
QString count(double number, const WordStyle& style);               //!< "12,300", grouped
QString number(double number, int decimals, const WordStyle& style);
//! A quantity written in kg, mm, cm, km or degC ("2.5 kg"), in the units shown: "2.5 kg", or "5.5 lb"; cm in whole inches. Written otherwise it stays as it is.
QString quantity(const QString& metric, const WordStyle& style);
QString distance(double kilometres, const WordStyle& style); //!< "92 km", or "57 miles"
QString height(double metres, const WordStyle& style);       //!< above the sea: "120 m", "12.5 m", or "394 ft"
QString kelvins(double difference, const WordStyle& style);  //!< "-0.7 °C", or "-1.3 °F"
QString date(Date date, const WordStyle& style);             //!< "19 May 2027"
QString month(int year, int month, const WordStyle& style);  //!< "October 2026"
//! "17 of 100", rounded; "under 1 of 100" where anything is left of it.
QString ofHundred(const Share& share, const WordStyle& style);

} // namespace winterlarder::text
