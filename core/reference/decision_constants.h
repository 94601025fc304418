// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace winterlarder {

//! Every number that advice is decided by, read from shared/rules/decisions.csv: there its range, mark, source and meaning. No default
//! values: a set comes from the file (loadReference) and nowhere else. Units beside each; shares 0..1.
struct DecisionConstants {
    double closingBeforeFeedBy; //!< 28 d
    double incomePastDays;      //!< 45 d
    double lateDays;            //!< 21 d
    double reserveNucleus;      //!< 2 kg
    double reserveOneBox;       //!< 4 kg
    double reserveMoreBoxes;    //!< 5 kg
    double reserveInSpring;     //!< 1 kg
    double quietBeforeForage;   //!< 14 d
    double riskVisited;         //!< 0.2
    double riskUnvisited;       //!< 0.1
    double lockedInShort;       //!< 50 d
    double lockedInLong;        //!< 70 d
    double lockedInBoard;       //!< 60 d
    double capacityShare;       //!< 0.85
    double fullShare;           //!< 0.95
    double combsNeedDays;       //!< 21 d
    double heftLight;           //!< 0.45
    double heftFair;            //!< 0.8
    double heftHeavy;           //!< 1.25
    double heftFairFollowed;    //!< 1
    double heftFairFollowedSd;  //!< 0.6
    double heftBeyond;          //!< 4 kg
    double heftSugarInSummer;   //!< 3 kg
    double heftSugar;           //!< 5 kg
    double contradictionSugar;  //!< 4 kg
    double worthLookingBand;    //!< 3 kg
    double worthLookingGain;    //!< 1 kg
    double deadLeast;           //!< 1 kg
    double deadShareOfTarget;   //!< 0.1
    double deadShareOfBand;     //!< 0.25
    double deadMost;            //!< 4 kg
    double harvestLeast;        //!< 3 kg
    double harvestCombFull;     //!< 0.8
    double mostWater;           //!< 20 %
    double wettishFrom;         //!< 18 %
    double mostWaterHeather;    //!< 23 %
    double safetyLeast;         //!< 5 kg
    double safetyNucleus;       //!< 3 kg
    double safetyBeyond;        //!< 2 kg
    double summerLookDays;      //!< 21 d
    double leastLookDays;       //!< 7 d
    double summerPortionLeast;  //!< 2 kg
    double manyMites;           //!< 5 on 100 bees
    double weakBees;            //!< 7000 bees
    double strongEnoughBees;    //!< 10000 bees
    double fewestMeasuredBees;  //!< 4000 bees
    double strongUntilDay;      //!< -108 d
    double uniteColdest;        //!< 8 degC
    double keepAliveDays;       //!< 21 d
    double queenTestDays;       //!< 4 d
    double keepAliveSugar;      //!< 3 kg
    double fondantVisit;        //!< 2.5 kg
    double fondantNucleus;      //!< 1 kg
    double fondantLeast;        //!< 1 kg
    double fondantNucleusLeast; //!< 0.45 kg
    double fondantLastsDays;    //!< 14 d
    double fondantFromDay;      //!< 14 d
    double laterLeast;          //!< 0.5 kg
    double portionsLookDays;    //!< 10 d
    double lookSoonDays;        //!< 3 d
    double uncountedBeesLeast;  //!< 6000 bees
    double uncountedBeesMost;   //!< 25000 bees
    double uncountedBroodMost;  //!< 15000 cells
    double lateLookDays;        //!< 21 d
    double winterLookDays;      //!< 42 d
    double lateBoardDays;       //!< 21 d
    double lateBoardStarve;     //!< 0.5
    double fondantBoard;        //!< 5 kg
    double actNowDays;          //!< 21 d
    double dueDays;             //!< 7 d
    double hardUse;             //!< 0.8
    double lateLitres;          //!< 1 L
    double lateUptake;          //!< 0.2 L/d
    double unitedBees;          //!< 9000 bees
    double giftCombLeast;       //!< 1 kg
    double previewWinters;      //!< 500
    double foodElsewhere;       //!< 0.1
    double gapCombs;            //!< 2
    double dwindlingShare;      //!< 0.6
    double fasterThan;          //!< 0.9
    double moreCombs;           //!< 4
    double moreCombsInSpring;   //!< 2
    double moreSpringDays;      //!< 30 d
    double flowTrickle;         //!< of a full bloom
    double flowFair;
    double flowStrong;
    double strongFlowDays;     //!< d
    double openThinDays;       //!< d
    double oneWeighingIn;      //!< d
    double laterStoresSdLeast; //!< kg
    double laterBeesSdLeast;   //!< SD of the logarithm
    double pastWinters;
    double learningWinters;
    double winterOverDay;   //!< season day
    double handbookReserve; //!< kg
    double oldestSight;     //!< d
    double sightAtMostTimes;
    double sightAtMostMore;   //!< kg
    double syrupPerSugar;     //!< L/kg
    double worthAskingLeast;  //!< 0.5 kg
    double askMites;          //!< 2.5 kg
    double askQueen;          //!< 1 kg
    double askFoodBeside;     //!< 2 kg
    double askFullCombs;      //!< 2 kg
    double beeBreadLow;       //!< 0.5 kg
    double beeBreadDays;      //!< 45 d
    double longColdDays;      //!< 30 d
    double narrowMargin;      //!< 4 kg
    double waspsFrom;         //!< 13 degC
    double coldestDays;       //!< 30 d
    double springUsualFrom;   //!< 90 season day
    double springUsualTo;     //!< 150 season day
    double clusteredBelow;    //!< 10 degC
    double wholeSuperShare;   //!< 0.8
    double earlyLookBefore;   //!< -92 season day
    double earlyLookSd;       //!< 2 kg
    double useOnBees;         //!< 0.6
    double countSdLeast;      //!< 0.5 kg
    double broodBoxShare;     //!< 0.75
    double heightWorthSaying; //!< 0.5 K
};

} // namespace winterlarder
