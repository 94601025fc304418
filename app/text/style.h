// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "quantity/text.h"

#include <QLocale>
#include <QString>

namespace winterlarder::text {

//! How numbers and dates look in sentences: one style is handed to every function here.
struct WordStyle {
    NumberStyle numbers;
    bool poundsBeside = false; //!< stores in kilograms have pounds beside them
    QLocale locale{QLocale::English, QLocale::UnitedKingdom};
};

QString mass(Mass mass, const WordStyle& style); //!< "12.3 kg"
QString amount(Mass mass,
               const WordStyle& style); //!< to half a kilogram or a pound: "12.5 kg", "12.5 kg (28 lb)", "28 lb"
QString mass(const Spread<Mass>& mass, const WordStyle& style); //!< "12.3 kg (9.8–15.1)"
QString amount(
    const Spread<Mass>& mass,
    const WordStyle& style); //!< to half a kilogram or a pound, the band beside it: "12.5 kg (10–15)", "28 lb (22–33)"
QString volume(Volume volume, const WordStyle& style); //!< "7.8 L"
QString amount(Volume volume,
               const WordStyle& style); //!< to half a litre: "8 L", "7.5 L"; gallons and the like to a tenth
QString bees(const Spread<BeeCount>& bees, const WordStyle& style); //!< "12,300 (9,900–15,200)", to the nearest hundred
QString count(double number, const WordStyle& style);               //!< "12,300", grouped
QString number(double number, int decimals, const WordStyle& style);
//! A quantity written in kg, mm, km or degC ("2.5 kg"), in the units shown: "2.5 kg", or "5.5 lb". Written otherwise it stays as it is.
QString quantity(const QString& metric, const WordStyle& style);
QString distance(double kilometres, const WordStyle& style); //!< "92 km", or "57 miles"
QString height(double metres, const WordStyle& style);       //!< above the sea: "120 m", "12.5 m", or "394 ft"
QString kelvins(double difference, const WordStyle& style);  //!< "-0.7 °C", or "-1.3 °F"
QString date(Date date, const WordStyle& style);             //!< "19 May 2027"
QString month(int year, int month, const WordStyle& style);  //!< "October 2026"
//! "17 of 100", rounded; "under 1 of 100" where anything is left of it.
QString ofHundred(const Share& share, const WordStyle& style);

} // namespace winterlarder::text
