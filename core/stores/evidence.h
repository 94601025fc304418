// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "hive/hive.h"
#include "quantity/quantity.h"
#include "reference/model_constants.h"

#include <optional>
#include <string>
#include <vector>

namespace winterlarder::stores {

//! One built comb as seen. Shares are of the built face area and sum to at most 1; the rest is empty cells.
struct Comb {
    hive::CombFormat format; //!< pitch already the comb's own (bar width)
    int box = 0;             //!< from the floor, 0-based
    int place = 0;           //!< in the box, 0-based
    double built = 1;
    double capped = 0, open = 0, brood = 0, pollen = 0;
    bool broodSaid = false; //!< the record speaks of brood at all
    int facesSeen = 2;
    bool throughWindow = false; //!< seen only through a window
    bool measured = false;      //!< shares traced on a photograph
    bool inSuper = false;
    bool fed = false;
    bool oldNest = false;
    double empty() const { return 1 - capped - open - brood - pollen; }
    bool lookedAt() const { return facesSeen > 0; }
};

//! Built face area of a comb [dm2], one face.
Area areaOf(const Comb& comb);
//! What a comb would hold sealed from edge to edge [kg], with the honey share of a comb given by shares.
Mass capacityOf(const Comb& comb);

//! The combs with those not looked at given the mean shares of their box's looked-at combs (else of all looked-at
//! combs); all else stays, facesSeen too. Nothing where no comb was looked at. Tested: tests/stores/evidence_test.cpp.
std::optional<std::vector<Comb>> withUnseenFilled(const std::vector<Comb>& combs);

//! There are combs outside supers, none of them looked at, while some of a super were: what the nest holds is not known.
bool superAlone(const std::vector<Comb>& combs);

//! "About so many combs full, so many half, so much of it capped."
struct QuickCount {
    double full = 0;
    double half = 0;
    double cappedShare = 1;
};

//! The factor on open stores (ripe equivalent): 0.25 (0.1-0.45) when under 7 days have passed since the last feed or
//! income, else 0.65 (0.4-0.9). Derived: depth of fill x dry matter; there is no published rule.
double openFactor(bool freshlyFilled);

struct CombStores {
    Mass capped;
    Mass open; //!< as ripe-honey equivalent
    Mass total() const { return capped + open; }
};
//! Stores of each comb, in order: honey per dm2 x area x (capped, open factor x open). Unseen combs: see
//! withUnseenFilled. Nothing where no comb was looked at. Tested: tests/stores/evidence_test.cpp, comb_checks_test.cpp.
std::optional<std::vector<CombStores>> storesOfCombs(const std::vector<Comb>& combs, double openFactor);

//! How far a comb's honey may be off, relative standard deviations: combAreaSd, photographAreaSd, combFillSd and
//! unseenFaceSd of the constants, combUnseenSd of a comb nobody looked at, quickCountSd of combs only counted; and what
//! rounding adds to each comb, combRoundingSd.
struct CombSpreads {
    double judgedArea, tracedArea, fill, unseenFace, unseen, counted;
    Mass rounding;
};
CombSpreads combSpreads(const ModelConstants& constants);

//! One standard deviation of a comb's honey, relative: area and fill in quadrature, with one face seen the other one
//! too, to half a percentage point, which is as sure as they are: 15 % judged by eye on both faces, 20 % on one, traced on
//! a photograph 11.5 % and 17.5 %; 35 % unseen or through a window (judgement). Tested: tests/stores/evidence_test.cpp.
double relativeSdOf(const Comb& comb, const CombSpreads& spreads);

//! Percentiles 10, 50 and 90 of one comb's honey [kg]: its relative spread and what rounding adds, in quadrature; not below 0.
//! Tested: tests/stores/evidence_test.cpp.
Spread<Mass> spreadOf(const CombStores& stores, const Comb& comb, const CombSpreads& spreads);

//! In the order of their ids, by which contradictions that are equally large are told apart.
enum class EvidenceKind { Combs, Heft, OneSidedLift, QuickCount, Scale, TwoSidedLift };
//! What answers, sheets and remarks call it: "combs", "heft", "one-sided lift", "quick count", "scale", "two-sided lift".
std::string idOf(EvidenceKind kind);
//! Told by a scale, under all of the hive or under a side of it.
bool isWeighed(EvidenceKind kind);

//! What one piece of evidence says about the stores on its day: typical with one standard deviation. `relative` part
//! scales with the combined value.
struct Evidence {
    EvidenceKind kind{};
    Date date;
    Mass typical;          //!< a weighing may fall below 0: the spread is cut there, not the mean
    double relativeSd = 0; //!< of the stores
    Mass absoluteSd{0};    //!< in quadrature
    // What of the error other pieces have too, see SharedErrors; all in absoluteSd, that of a heft in relativeSd.
    Mass tareSd{0};    //!< of the tare: one and the same in all weighings by it
    Mass oneSideSd{0}; //!< of lifting one side: the same side, the same arms
    double heftSd = 0; //!< of a heft, relative to the stores: the same arms
    Mass lossSd{0};    //!< of what was lost since its day, up to the day asked about
    Mass sd(Mass at) const;
};

//! All combs of one look together. SD = sum of each comb's (the observer errs the same way on all of them), and in
//! quadrature 0.1 kg of rounding a comb, independent. Nothing where no comb was looked at. Tested:
//! tests/stores/evidence_test.cpp.
std::optional<Evidence> evidenceOfVisit(const std::vector<Comb>& combs, double openFactor, const CombSpreads& spreads,
                                        Date date);

//! Honey of a comb called full in a quick count [kg]: with rims, phi 0.78. Mixed boxes: the first box from the floor
//! stands for all.
Mass quickFullComb(const hive::CombFormat& firstBox);

//! A quick count: (full + half / 2) x full comb x (capped share + open factor x the rest), 20 % (judgement). A count of
//! nothing is still only good to a quarter of a comb. Tested: tests/stores/evidence_test.cpp.
Evidence evidenceOfCount(const QuickCount& count, Mass fullComb, double openFactor, const CombSpreads& spreads,
                         Date date);

} // namespace winterlarder::stores
