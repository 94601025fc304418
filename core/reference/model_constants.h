// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace winterlarder {

//! Every constant of the winter model and the season rules, read from shared/model/constants.csv (symbol, value, unit,
//! range, mark, source). The members are plain doubles because their units are compound; each states its own.
//! There are no default values: a ModelConstants comes from the file (loadReference) and nowhere else.
struct ModelConstants {
    // energy and bees
    double honeyEnergy;        //!< e_h [J/g]
    double beeMass;            //!< m_b [kg]
    double restingFloor;       //!< q0 [W/kg]
    double sizeLawMass;        //!< M0 [kg]
    double sizeExponent;       //!< x
    double restlessFrom;       //!< T_a [degC]
    double restlessSlope;      //!< s [W/kg/K]
    double restlessCeiling;    //!< q_max [W/kg]
    double clusterConductance; //!< g [W/kg/K]
    double coreTemperature;    //!< T_c [degC]
    double broodTemperature;   //!< T_b [degC]
    double broodConductance;   //!< g_b [W/K/cell^(2/3)]
    double broodForFullCore;   //!< B_c [cells]
    double honeyPerWorker;     //!< c_b [g]
    double broodSurvival;      //!< sv
    double larvaFedAge;        //!< [d] whole days after laying
    // laying
    double autumnLaying;       //!< e_a [eggs/bee/day]
    double autumnDecline;      //!< d_a [d]
    double broodAge;           //!< d_o [d]
    double stoppedBelow;       //!< f_s, share of the expected brood
    double winterLaying;       //!< e_w [eggs/day]
    double winterLayingBees;   //!< N_w [bees]
    double springLayingPerBee; //!< e_s [eggs/bee/day]
    double queenLimit;         //!< e_max [eggs/day]
    double springRamp;         //!< d_s [d]
    double shortestRamp;       //!< least length of the winter ramp [d]
    double winterLayingStart;  //!< w_f, share of e_w on the day of the restart
    double burstStrength;      //!< k_e
    double burstShare;         //!< p_e, share of winters
    double burstFrom;          //!< [degC] smoothed mean from which warm spells bring brood
    double burstFullOver;      //!< [K] to full strength
    double warmthMemory;       //!< [d] smoothing of the daily means, for warm spells
    double eggFloor;           //!< f_0, share of e_w laid through a winter without a gap
    // death: long-lived bees, then short-lived ones
    double winterDeath;        //!< mu_w [1/d], without brood
    double broodDeath;         //!< mu_s [1/d], with a full nest
    double fullBroodNest;      //!< r_m [cells/bee]
    double summerDeath;        //!< mu_S [1/d], before the restart of laying, with a full nest
    double summerDeathByBrood; //!< s_b, part of mu_S that follows the brood
    double summerFullNest;     //!< r_S [cells/bee]
    double springDeath;        //!< mu_P [1/d], from the restart on
    double mostDeath;          //!< [1/d] no bees die faster
    // which bees are long-lived
    double shortLivedNest; //!< r_b [cells/bee], from which on none that emerges is
    double longLivedGain;  //!< r_l [bees/cell]
    double longLivedFrom;  //!< s0 [d before laying stops], share 0 in a colony first seen
    double longLivedAll;   //!< s1 [d before laying stops], share 1
    // income
    double income;           //!< A [g/d per 10,000 bees]
    double incomeFrom;       //!< [degC] daily mean from which bees bring in nectar
    double incomeFullOver;   //!< [K] to full income
    double bloomHalfWidth;   //!< d_f [d]
    double autumnTrickle;    //!< phi_a, until the last autumn income
    double backgroundIncome; //!< phi, class C only
    // weather and season
    double diurnalHalfRange; //!< dT [K]
    double springShift;      //!< ph [d/K]
    double daysPastForage;   //!< H [d]
    double lockedInBelow;    //!< T_l, daily maximum [degC]
    // season rules: thresholds and standard deviations
    double incomeEndTemperature;    //!< 13.0 degC
    double incomeEndDayLength;      //!< 10.8 h
    double incomeEndSd;             //!< 20 d
    double feedByTemperature;       //!< 13.5 degC
    double feedBySd;                //!< 12 d
    double syrupTemperature;        //!< 11.0 degC
    double syrupSd;                 //!< 6 d
    double syrupRefusedTemperature; //!< 9.0 degC
    double syrupRefusedSd;          //!< 6 d
    double broodlessBelow;          //!< 10.0 degC, lowest normal
    double broodlessGap;            //!< 21 d
    double broodStopTemperature;    //!< 11.0 degC
    double broodStopDayLength;      //!< 10.4 h
    double broodStopSd;             //!< 12 d
    double broodRestartDay;         //!< w = 10
    double broodRestartSd;          //!< 18 d
    double buildupTemperature;      //!< 6.0 degC
    double buildupDayLength;        //!< 11.0 h
    double buildupSd;               //!< 9 d
    double forageTemperature;       //!< 10.0 degC
    double forageDayLength;         //!< 11.6 h
    double forageSd;                //!< 9 d
    double datesApart;              //!< [d] restart to build-up, build-up to forage, at least
    double forageWithBuildup;       //!< share of build-up's earliness in that of forage
    double forageOwn;               //!< and of its own
    double confinedBelow;           //!< 5 degC, lowest normal (class A below, B from it)
    // spreads of the draws (SD of the logarithm)
    double beesSd;           //!< 0.15, covered combs
    double beesCountedSd;    //!< 0.05, counted
    double beesSeamsSd;      //!< 0.21, seams
    double combAreaSd;       //!< 0.10, area of a zone judged by eye, both faces
    double photographAreaSd; //!< 0.03, area of a zone traced on a photograph
    double unseenFaceSd;     //!< 0.132, added where one face was seen
    double combFillSd;       //!< 0.11, honey in a given area of sealed comb
    double combUnseenSd;     //!< 0.35, a comb not looked at, or through a window
    double quickCountSd;     //!< 0.20, full and half combs counted
    double combRoundingSd;   //!< 0.1 kg a comb, independent
    double heatSd;           //!< 0.15
    double broodSd;          //!< 0.25
    double broodCountSd;     //!< s_o, 0.35, of a count of brood
    double deathSd;          //!< 0.25
    // observations after the decision (core/tracking)
    double scaleReadingSd;        //!< 0.3 kg, new at each reading
    double liftTwoSidesSd;        //!< 0.7 kg more, new at each lift
    double liftOneSideSd;         //!< 0.11 of the gross weight
    double liftOneSideLongHiveSd; //!< 0.05 of the gross weight
    double heftSd;                //!< 0.35 of what the word stands for
    double lastingErrorShare;     //!< 0.7 of the variance of the last three is the same each time
    double wetHiveExtra;          //!< 1 kg
    double wetHiveSd;             //!< 1 kg
    double clusterSeenSd;         //!< 0.35, SD of the logarithm of the bees
    double flyingThoughDead;      //!< 0.05, a chance
    double glimpseHalf;           //!< 3 kg of stores
    double glimpseSd;             //!< 2 kg
    double feedStepSd;            //!< 0.05 of the amount
    double equipmentSd;           //!< 0.2 kg
    double unexplainedSd;         //!< 8 kg
    double contradictionLimit;    //!< 4 SD
    double redrawBelow;           //!< 0.1, effective share of the winters
    // what lasts from winter to winter (core/learning)
    double lastingUseSd;       //!< 0.20, SD of the logarithm
    double lastingDeathSd;     //!< 0.20
    double lastingForageSd;    //!< 5 d
    double lastingKeeperShare; //!< 0.5 of the lasting variance
    double lastingYardShare;   //!< 0.2 of it
    double forageSeenSd;       //!< 4 d
    // what is usual here (core/advice/usual_here.h)
    double usualRegionKm;    //!< 300 km
    double usualNeighbourKm; //!< 800 km
    double lateFlowKm;       //!< 300 km
    // what an entry may be (core/stores/plausible.h)
    double entryImpossibleAbove; //!< 1.25 times the most
    double entryImpossibleBelow; //!< 0.8 of the lightest empty hive
    double entrySameScaleDays;   //!< 45 d
    double entryFlowPerDay;      //!< 2 kg/d
    double entryGainPerColdDay;  //!< 0.3 kg/d
    double entryFeedDays;        //!< 21 d
    double entrySyrupAtOnce;     //!< 30 L
    double entrySolidFeedAtOnce; //!< 15 kg
    double entryBeesOver;        //!< 2 times those that cover every comb
    double entryBroodShare;      //!< 0.75 of all cells
    double entryDriestHoney;     //!< 13 % water
    double entryWettestHoney;    //!< 25 % water
    // what a record says of walls and kind of bee
    double shellThickTimber; //!< h, 1 is single-walled timber
    double shellWrapped;
    double shellPolystyrene;
    double shellStraw;
    double shellTopInsulation; //!< multiplies h of the two timbers
    double foodOfDarkBees;     //!< 1 is the other kinds
    double foodOfItalianBees;
};

} // namespace winterlarder
