// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/comb_edits.h"
#include "models/due.h"
#include "models/yard.h"
#include "text/asked.h"
#include "text/style.h"

#include <QDate>
#include <QString>

//! The window's own words and the form of its numbers. Each sentence is whole, never glued from pieces. Tested:
//! tests/app/words_test.cpp.
namespace winterlarder::desk::words {

//! The units and the locale all of the window's words are in; as with QLocale::setDefault, chosen once for the whole window. Asked for on
//! the interface thread only, as all words here are: work for another thread holds a copy.
const text::WordStyle& style();
void useUnits(UnitSystem system);
//! What combs and feed are called in what is said of the whole yard: as at its place.
void useWording(const text::Wording& wording);
//! The same style with the words of one colony's place and hive: for what is said of that colony alone.
text::WordStyle styleOf(const advice::ColonyQuestion& question);
text::WordStyle styleOf(bool framed);    //!< of a hive of the yard whose combs hang in frames, or do not
QString worded(const QString& sentence); //!< with the nouns of the yard's place
//! With those of one colony, where it is answered; else of the yard.
QString worded(const QString& sentence, const AnsweredColony* colony);

//! The units quantities are shown in, and their names: food of a day is small, so it is in g or oz.
MassUnit shownMass();
MassUnit shownSmallMass();
TemperatureUnit shownTemperature();
LengthUnit shownLength();
LengthUnit shownHeight();           //!< of places
QString name(MassUnit unit);        //!< "kg"
QString name(VolumeUnit unit);      //!< "L"
QString name(LengthUnit unit);      //!< "mm"
QString name(TemperatureUnit unit); //!< "\u00b0C"

QString kilograms(Mass mass);                 //!< "2.6 kg"
QString amount(Mass mass);                    //!< to half a kilogram, as answers tell it: "14 kg", "3.5 kg"
QString wholeKilograms(Mass mass);            //!< "29 kg"
QString spread(const Spread<Mass>& mass);     //!< to half a kilogram, as answers tell it: "29.5 kg (24\u201334)"
QString fineSpread(const Spread<Mass>& mass); //!< "2.6 kg (2.1 to 3.1)"
QString smallMass(Mass mass);                 //!< "12 g", or "0.4 oz"
QString temperature(Temperature reading, int decimals); //!< "-6 \u00b0C", or "21 \u00b0F"
QString temperatureShift(TemperatureDifference shift);  //!< "-0.7 \u00b0C", or "-1.3 \u00b0F"
QString litres(Volume volume);                          //!< as written down: "7.8 L", "2.1 US gal"
QString length(Length length);                          //!< "35 mm", or "1 3/8 in"
QString area(Area area);                                //!< "8.8 dm\u00b2", or "136 sq in"
QString height(double metres);                          //!< above the sea: "120 m", "12.5 m", or "394 ft"
QString distance(double kilometres);                    //!< "92 km", or "57 miles"
QString percent(double share);                          //!< "85 %"
QString ofHundred(const Share& share);                  //!< "17", a count out of 100 simulated winters
QString bees(const Spread<BeeCount>& bees);             //!< "15,000 (12,000 to 18,500)"
QString date(Date date);                                //!< "19 May"
QString dateWithWeekday(Date date);                     //!< "Tue 15 Sept"
QString dateWithYear(Date date);                        //!< "12 Sept 2026"
QString longDate(Date date);                            //!< "12 September 2026"
QDate toQDate(Date date);
Date fromQDate(QDate date);

QString verdict(const advice::Advice& advice,
                const text::WordStyle& told); //!< in two or three words: "take 2.6 kg", "feed 12 kg sugar"
QString verdictName(advice::Verdict verdict); //!< one word
//! A followed winter in the list of its yard: what is to be fed today where it is on course else, or how it goes.
QString followedInShort(const tracking::Following& following, SeasonDay today);
//! The verdict whose drawing stands for it: leave it, feed it, it cannot be said.
advice::Verdict likeness(const tracking::Following& following, SeasonDay today);
advice::Verdict likeness(tracking::FollowState state);
QString iconName(advice::Verdict verdict); //!< of the verdict's drawing; each has a silhouette of its own
QString zone(Zone zone);
QString due(const Due& due, Date today, const text::WordStyle& told);
QString option(advice::OptionKind kind, const text::WordStyle& told);
QString optionWithAmount(const advice::Option& option, const text::WordStyle& told);
QString seasonMark(SeasonMarkKind kind);
QString evidence(const std::string& kind, const text::WordStyle& told);
QString visitKind(feeding::VisitKind kind);

//! What to do next, as a person would say it.
QString answerSentence(const AnsweredColony& colony, text::NumberForm form = text::plainly);
//! What the hive should hold when winter begins for it; empty where that cannot be said.
QString targetLine(const AnsweredColony& colony, text::NumberForm form = text::plainly);
//! How often it goes wrong, left alone and as advised, out of 100 simulated winters; what goes to neighbours first.
QString riskLine(const AnsweredColony& colony, text::NumberForm form = text::plainly);
//! What is there, how surely it is known, and whether another look would change the amount.
QString lookLine(const AnsweredColony& colony, text::NumberForm form = text::plainly);

} // namespace winterlarder::desk::words
