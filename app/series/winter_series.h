// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "winter/demand.h"
#include "winter/larder.h"

#include <optional>
#include <vector>

//! What the winter picture is drawn from, as numbers: no drawing here. Tested: tests/app/winter_series_test.cpp.
namespace winterlarder::desk {

inline constexpr int drawnWinters = 20; //!< each stands for five in a hundred
inline constexpr int drawnDots = 50;    //!< each stands for two in a hundred

//! A simulated winter together with stores it might begin with [kg]. The stores' own spread is dealt out over the winters
//! by a sequence that fills it evenly, so that shares counted over pairs agree with the shares the advice states.
struct PairedWinter {
    int winter = 0;
    double startKg = 0;
};
//! One pair for every winter, in their order: stores max(0, mean + sd z), z the normal quantile of frac(1/2 + i / golden ratio).
std::vector<PairedWinter> pairWithStores(int winters, Mass mean, Mass sd);

//! Picks `count` pairs that stand for equal shares of all: ordered by what would be left at the worst moment (stores less
//! largest loss), the middle one of each group. Fewer winters than `count`: all of them. Poorest first.
std::vector<PairedWinter> standFor(const std::vector<PairedWinter>& pairs, const std::vector<double>& largestLoss,
                                   int count);

//! One drawn winter: stores at the end of each day from the asking day [kg]; it ends with the day that leaves nothing, for a starved
//! colony gathers no more.
struct WinterLine {
    int winter = 0;
    std::vector<double> kilograms;
    bool touchesReserve = false;
    bool runsOut = false;
};

//! Stores over the winters on one day: 10th, 50th and 90th percentile [kg] and the share of winters under the reserve. What has starved
//! counts with nothing from then on.
struct DayReading {
    double low = 0, middle = 0, high = 0;
    double shareBelowReserve = 0;
};

//! One option laid over the winters.
struct OptionPicture {
    advice::OptionKind kind = advice::OptionKind::Leave;
    std::vector<WinterLine> lines;
    std::vector<double> dots;         //!< stores at first forage, quantiles (k + 1/2) / 50, ascending [kg]
    std::vector<DayReading> readings; //!< by day from the asking day
};

//! What a colony eats on a day, means over winters [g], and the air it does so in.
struct DailyUse {
    double adults = 0, broodWarmth = 0, broodFood = 0;
    double temperatureC = 0;
    double income = 0;
};

enum class SeasonMarkKind { LastIncome, SyrupDeadline, BroodStop, BroodRestart, Buildup, Forage };
struct SeasonMark {
    SeasonMarkKind kind = SeasonMarkKind::Forage;
    SeasonDay day;
    double sdDays = 0; //!< 0 where the date is known
};

//! A weighing or a look made into stores [kg] on its day: 10th, 50th and 90th percentile.
struct EvidencePoint {
    Date date;
    SeasonDay day;
    Spread<Mass> stores;
};

//! Everything the picture of one colony shows.
struct WinterPicture {
    Winter winter{Hemisphere::North, 2000};
    SeasonDay first; //!< the asking day
    SeasonDay last;  //!< last day drawn
    double reserveKg = 0;
    Spread<Mass> storesToday;
    std::vector<OptionPicture> options;
    std::vector<DailyUse> daily;   //!< by day from `first`
    std::vector<SeasonMark> marks; //!< by day, none before `first`
    std::vector<EvidencePoint> evidence;
    int winters = 0;
    bool empty() const { return options.empty(); }
};

//! Days drawn past the median first forage.
inline constexpr int daysDrawnPastForage = 21;

//! Whether every day of every winter is read out too (the costly part).
enum class Readings { EveryDay, None };

//! What is lost under an option in every winter [kg], and the largest loss that counts towards touching the reserve: none does while
//! syrup is still fed.
struct OptionLosses {
    winter::WinterLosses all;
    std::vector<double> touching;
};
OptionLosses lossesUnder(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow,
                         const advice::Option& option, SeasonDay today);

//! The lines of one option: stores of each pair, day by day, with its steps, its flow and the reserve it may touch.
OptionPicture pictureOption(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow,
                            const OptionLosses& losses, const std::vector<PairedWinter>& everyPair,
                            const std::vector<PairedWinter>& drawn, const advice::Option& option, SeasonDay first,
                            SeasonDay last, double reserveKg, Readings readings = Readings::EveryDay);

//! Splits the day's mean use by its causes: brood food as simulated, warmth by the share of power spent on brood.
DailyUse splitUse(const winter::DayMeans& means);

//! A dot of a quantile dotplot: the value it stands at and how many dots stand beside it already.
struct PlacedDot {
    double value = 0;
    int column = 0;
    double height = 0; //!< middle of the row of dots it belongs to
};
//! Stacks ascending values into rows no closer than `rowHeight`, each row standing at the mean of its values.
std::vector<PlacedDot> stackDots(const std::vector<double>& ascending, double rowHeight);

//! The whole picture of an answer; empty where there are no workings.
WinterPicture pictureOf(const advice::ColonyQuestion& question, const advice::Answer& answer);

} // namespace winterlarder::desk
