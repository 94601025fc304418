// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/answer_parts.h"
#include "advice/question.h"
#include "reference/remark.h"
#include "stores/estimate.h"
#include "stores/weighing.h"
#include "winter/demand.h"
#include "winter/larder.h"

#include <map>
#include <memory>
#include <stop_token>
#include <string>
#include <variant>
#include <vector>

namespace winterlarder::advice {

enum class Verdict { Harvest, Leave, Feed, Unite, CannotSay };

using winterlarder::Detail;
using winterlarder::Remark;

enum class OptionKind { Leave, TakeNow, TakeInSpring, Feed, MoveCombs, Unite };

//! One thing that can be done, over the same winters as all the others.
struct Option {
    OptionKind kind = OptionKind::Leave;
    Mass amount{0};      //!< kg of stores taken (take), fed (feed) or given (move)
    Mass storesAfter{0}; //!< at the asking day, the change counted
    Share runOut;
    Share touchReserve;
    Spread<Mass> springReserve;
    Spread<Mass> springSurplus; //!< above the reserve at first forage
    std::vector<winter::StoresStep> steps;
};

struct HarvestAdvice {
    Mass upTo{0};           //!< what the named combs hold; where combs are not listed, what may be taken
    std::vector<int> combs; //!< positions in ColonyQuestion::combs
    Mass combsHold{0};
    int wholeSupers = 0; //!< where they are all combs of so many supers and no others
    Mass fromStores{0};  //!< what of upTo was counted as stores: nothing of supers kept for people
};

enum class LookKind { Heft, Weigh, LookThroughWindow, CountCombs, CountSeams, Open };
enum class LookAbout { Stores, Bees };
struct AnotherLook {
    bool worthIt = false;
    std::optional<LookKind> which;
    std::optional<LookAbout> about; //!< what the amount hangs on
    double narrowsFromKg = 0;       //!< width of the 10-90 % band of the amount now ...
    double narrowsToKg = 0;         //!< ... and after that observation
};

struct MonthUse {
    int year = 0, month = 0;
    Spread<Mass> use;
};

//! The whole answer for one colony. Numbers that cannot be known are missing.
struct Advice {
    Verdict verdict = Verdict::CannotSay;
    DecidedBy decidedBy = DecidedBy::CannotSay; //!< the rule that gave the verdict
    std::optional<Date> asOf;                   //!< the asking day; always set by weigh()
    std::optional<Phase> phase;
    std::vector<RefusalKind> refusals;
    std::optional<stores::StoresEstimate> estimate; //!< at the asking day
    std::optional<Spread<BeeCount>> bees;
    std::optional<Spread<Mass>> use;
    std::vector<MonthUse> useByMonth;
    std::optional<Mass> need; //!< counted from the asking day; the sum of its parts
    std::optional<NeedParts> needParts;
    //! where no brood was seen and nobody knows whether the queen lays: the need if she has stopped
    std::optional<Mass> needIfStopped;
    double shortRisk = 0.2;      //!< as counted with: the keeper's, else by what can be done in winter
    Mass reserve = kilograms(4); //!< of the asking day: the keeper's, else by the hive's size
    std::optional<Target> target;
    std::optional<UntilTarget> untilTarget;
    std::optional<Spread<Mass>> missing; //!< at the target's day; negative: to spare
    Mass deadBand{0};                    //!< missing or to spare less than this is enough as it is
    std::optional<Mass> toSpare;         //!< above the target, the usual and without a flow; not below 0
    std::optional<Mass> capacity, room;  //!< what the built combs hold; what of it will be free at the target's day
    std::vector<WeighPoint> weighLine;
    std::optional<bool>
        weighedWithSuper; //!< where a super for people is on: whether it and its honey are in the weights of that line
    std::optional<ExpectedLater> expectedLater;
    std::optional<NextLook> nextLook;
    std::optional<Ask> ask;
    std::optional<UniteAdvice> unite;
    std::optional<stores::HeftWord> heft; //!< the word that decided, where nothing but a lift tells of the stores
    //! winters that end below the reserve from the target's day on, at the evidence's middle
    std::optional<Share> shortAsPlanned;
    std::optional<Spread<Mass>> springReserve; //!< under the recommended option
    std::optional<Share> runOut, touchReserve; //!< left as it is
    std::optional<HarvestAdvice> harvest;
    std::optional<feeding::FeedingPlan> feed;
    std::vector<Option> options;
    AnotherLook anotherLook;
    //! nothing is fed today, though most winters starve it and full combs can still be given: see hardlyLives in winter_rules.h
    bool hardlyLives = false;
    bool lookFirst = false; //!< honey is named, to be taken only where that look bears out what is thought to be there
    bool superOffFirst = false; //!< a super with honey for people is on, and syrup is to be fed
    std::vector<Remark> cautions, goodPractice, reasons; //!< at most five cautions; the rest is good practice
    std::optional<PartInYard> plan;                      //!< in the plan of its yard; nothing: weighed alone
    std::optional<AloneToday> alone; //!< where the plan unites another onto it, which is in the figures
    std::vector<CombGift> gifts;     //!< given or received by that plan
    std::optional<Strength> strength;
    std::optional<Mass> freeRoom;
    climate::SeasonDates season;
    //! 90 % quantile of the longest locked-in run of the place, whenever it is asked
    std::optional<double> lockedInDays;
    Mass storesSd{0}; //!< as used in every share (early look counted)
    int winters = 0;
    std::uint64_t seed = 0;
};

//! Whether the answer does without a record that is in doubt; its reasons begin with which.
bool setsAside(const Advice& advice);

//! What an answer was computed from, kept so that other options can be laid over the same winters at once.
struct Workings {
    std::shared_ptr<const winter::DemandEnsemble> ensemble;
    winter::AutumnFlow flow;
};

struct Answer {
    Advice advice;
    Workings workings; //!< ensemble empty where no answer could be given
};

//! Weighs one colony alone. Nothing comes back when stopped. Never throws for what a keeper may enter.
std::optional<Answer> weigh(const ColonyQuestion& question, const ModelConstants& constants, winter::Sampling sampling,
                            int threads = 1, std::stop_token stop = {}, const winter::ProgressSink& progress = {});

//! Stores and bees today without options: what `stores` answers. Where a winter can be simulated observations are carried to the
//! asking day; else they stand as they were seen.
struct StoresToday {
    std::optional<stores::StoresEstimate> estimate;
    std::vector<stores::Evidence> seen; //!< the pieces as they were on their own day, in the estimate's order
    std::optional<Spread<BeeCount>> bees;
    std::optional<std::vector<stores::CombStores>> combs;
    std::optional<Mass> freeRoom;
};
StoresToday storesToday(const ColonyQuestion& question, const ModelConstants& constants, winter::Sampling sampling,
                        int threads = 1);

} // namespace winterlarder::advice
