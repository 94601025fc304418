// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/model_constants.h"
#include "reference/remark.h"
#include "stores/tare.h"

#include <optional>

//! What an entry may be. A doubt says why one is not believed as it stands: it cannot be, whatever explains it, or it is
//! not likely and is asked about. Thresholds: the rows entry... of shared/model/constants.csv (judgement).
//! Tested: tests/stores/plausible_test.cpp.
namespace winterlarder::stores {

struct Doubt {
    bool impossible = false;
    Remark says; //!< an id of shared/rules/cautions.csv, "doubt-..."
    //! A day soon to come is asked about, but no amount hangs on it: an entry given in one command is taken meanwhile.
    bool takenMeanwhile = false;
};

//! The most and the least a hive can be.
struct HiveBounds {
    double boxes = 1;
    double places = 0;   //!< for combs
    double seams = 0;    //!< gaps between combs, both outer ones of each box counted
    double bees = 0;     //!< covering every comb on both sides
    double cells = 0;    //!< of every comb, both faces: 400 a dm2 and face
    Mass holds{0};       //!< honey with every place built and sealed from edge to edge, as a super's combs are filled
    Mass lightest{0};    //!< empty hive: lighter of the weighed one and the parts less 2 SD, only listed combs built
    Mass likelyEmpty{0}; //!< empty hive: the weighed one less its SD, else the parts less 1 SD
    Mass empty{0};       //!< empty hive: the weighed one, else the parts as they usually are
    Mass heaviest{0};    //!< all full: heavier of the weighed empty hive and the parts, `holds`, bees on every comb
};
//! Bounds of a hive of these parts [kg, combs, bees, cells]. Where combs are listed, their own outlines and spacing count
//! if they hold more. `parts.boxes` must not be empty.
HiveBounds boundsOf(const TareQuestion& parts, std::optional<Mass> weighedTare, const ModelConstants& constants);

//! Weight of the whole hive [kg] against the hive: impossible over 1.25 x heaviest or under 0.8 x lightest, asked over
//! heaviest or under likelyEmpty. Names the weight that may be meant: pounds read as kg, or a slipped decimal point.
std::optional<Doubt> doubtOfWeight(Mass gross, const HiveBounds& hive, const ModelConstants& constants);

//! One side lifted [kg], as half the weight: as doubtOfWeight of twice as much, and asked also under half the empty hive, for with bees in it none is
//! lighter. A lift that is too light names what one side weighs at the least (doubt-light/one-side: side, least).
std::optional<Doubt> doubtOfOneSide(Mass side, const HiveBounds& hive, const ModelConstants& constants);

//! Two weights of one hive on one scale, and what may have changed between them.
struct TwoWeights {
    Mass judged, other;
    Date otherDay;
    int daysApart = 0;
    int flowDays = 0;      //!< of them in the warm half of the year
    Mass fed{0}, taken{0}; //!< written down between the two
};
//! Asked where one is ten times the other (12 %), or 2.2 times (5 %: pounds read as kg) and more apart than feeds, harvests
//! and a flow of 2 kg a warm day (0.3 kg else) explain; only within 45 days. Never impossible: either may be wrong.
std::optional<Doubt> doubtOfTwoWeights(const TwoWeights& weights, const ModelConstants& constants);

//! Honey taken [kg], against what the hive holds (impossible over 1.25 x).
std::optional<Doubt> doubtOfHarvest(Mass honey, const HiveBounds& hive, const ModelConstants& constants);

//! What was in the hive on an earlier day, and what has come and gone since.
struct ThereBefore {
    Date day;
    Mass gross{0};  //!< of the whole hive; 0 where combs tell
    Mass stores{0}; //!< at the most
    int flowDays = 0, daysSince = 0;
    Mass fed{0};   //!< as stores
    Mass taken{0}; //!< before the harvest that is judged
};
//! Honey taken against what was there: asked over stores + fed + flow - taken, impossible where it is more than the whole
//! hive weighed and twice that flow.
std::optional<Doubt> doubtOfHarvestOf(Mass honey, const ThereBefore& before, const ModelConstants& constants);

//! One feed, and all feeds of the 21 days up to it.
struct GivenAtOnce {
    Mass stores{0};   //!< what the feed becomes
    Mass recently{0}; //!< what it becomes with the others
    std::optional<Volume> syrup;
    std::optional<Mass> solid; //!< fondant or dry sugar
};
//! A feed: impossible where it becomes over 1.25 x what the hive holds; asked over 30 L of syrup or 15 kg of fondant or dry
//! sugar at once, or where it and those before become more than the hive holds.
std::optional<Doubt> doubtOfFeed(const GivenAtOnce& feed, const HiveBounds& hive, const ModelConstants& constants);

//! Counts against the hive: asked over what there is, impossible over 1.25 x; counted bees asked over twice what covers
//! every comb, brood over three quarters of all cells (impossible over all of them and a quarter).
std::optional<Doubt> doubtOfCoveredCombs(double combs, const HiveBounds& hive, const ModelConstants& constants);
std::optional<Doubt> doubtOfSeams(double seams, const HiveBounds& hive, const ModelConstants& constants);
std::optional<Doubt> doubtOfBees(double bees, const HiveBounds& hive, const ModelConstants& constants);
std::optional<Doubt> doubtOfBrood(double cells, const HiveBounds& hive, const ModelConstants& constants);
std::optional<Doubt> doubtOfFullCombs(double combs, const HiveBounds& hive, const ModelConstants& constants);
//! Stores found in a hive [kg], at the end of winter: over what it holds.
std::optional<Doubt> doubtOfStoresLeft(Mass stores, const HiveBounds& hive, const ModelConstants& constants);
//! Water in honey [%]: asked under 13 or over 25.
std::optional<Doubt> doubtOfMoisture(double percent, const ModelConstants& constants);
//! The empty weight a keeper gives a hive [kg] against its parts (stores::tareFromParts): asked over the hive with all combs drawn and
//! three of that figure's SD, impossible over the same hive full of honey; asked under the shell without a comb less two SD, impossible
//! under 0.8 of that. `parts.boxes` must not be empty.
std::optional<Doubt> doubtOfTare(Mass tare, const TareQuestion& parts, const ModelConstants& constants);
//! The day of a record: asked where it lies more than a day after today (clocks of other zones), or before the colony was there.
std::optional<Doubt> doubtOfDay(Date day, Date today, std::optional<Date> colonySince);

//! Most honey a flow can have brought, for entries to be believed unasked: 2 kg a warm day, 0.3 kg any other.
Mass mostFlow(int days, int flowDays, const ModelConstants& constants);
//! Days of the half-open span in which flowers may be out: April to September, in the south October to March, all year
//! within 24 degrees of the equator.
int flowDaysBetween(Date from, Date to, double latitude);

} // namespace winterlarder::stores
