// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remark_texts.h"

#include <QCoreApplication>

namespace winterlarder::text {

const std::vector<RemarkText>& reasonTexts() {
    static const std::vector<RemarkText> texts{
        // why no answer is given
        {"far-from-stations", QT_TRANSLATE_NOOP("Remark", "The nearest climate station is %{km:distance} away, and beyond "
                                                          "%{=600 km} none speaks for a place: give a climate of your "
                                                          "own.")},
        {"far-from-stations/unmeasured",
         QT_TRANSLATE_NOOP("Remark",
                           "No climate station lies within %{=600 km} of the place: give a climate of your own.")},
        {"no-colony", QT_TRANSLATE_NOOP("Remark", "There are no bees in the hive.")},
        {"bees-unknown",
         QT_TRANSLATE_NOOP("Remark",
                           "Nothing tells how many bees there are: count the combs or the seams they cover.")},
        {"stores-unknown",
         QT_TRANSLATE_NOOP("Remark",
                           "Nothing tells what stores there are: look at the combs, weigh the hive, or heft it.")},
        {"out-of-season", QT_TRANSLATE_NOOP("Remark", "The day asked about lies in the month before the season begins: "
                                                      "ask from 1 August on, in the south from the end of "
                                                      "January.")},
        {"season-not-derivable",
         QT_TRANSLATE_NOOP("Remark", "This climate has no cold or dark season to derive a dearth from: give the dates "
                                     "of the build-up and of first forage.")},
        {"after-forage", QT_TRANSLATE_NOOP("Remark", "First forage has come: no winter is left to ask about.")},
        // the verdict
        {"need", QT_TRANSLATE_NOOP("Remark", "With %{need} in the hive the stores touch the reserve of %{reserve} "
                                             "before first forage, around %{forage}, in %{in:0} of 100 "
                                             "simulated winters.")},
        {"surplus",
         QT_TRANSLATE_NOOP("Remark", "There are %{spare} more than the colony needs at the risk you accept.")},
        {"nothing-to-spare",
         QT_TRANSLATE_NOOP(
             "Remark",
             "The stores, about %{stores}, are close to the need of %{need}: nothing to take, nothing to feed.")},
        {"enough", QT_TRANSLATE_NOOP("Remark", "The stores, about %{stores}, cover the need of %{need}.")},
        {"short-of-stores", QT_TRANSLATE_NOOP("Remark", "%{missing} of stores are missing at the risk you accept.")},
        {"weak-colony",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{bees:hundreds} bees are too few to winter well alone; 7,000 before laying stops are the least.")},
        {"small-colony", QT_TRANSLATE_NOOP("Remark", "About %{bees:hundreds} bees are fewer than the 4,000 from which "
                                                     "colonies have been measured: the figures are less sure.")},
        {"contradiction", QT_TRANSLATE_NOOP("Remark", "Two observations contradict each other: %{first:evidence} and "
                                                      "%{second:evidence}. The answer spans both; look again before "
                                                      "taking any honey.")},
        {"stores-carried-forward",
         QT_TRANSLATE_N_NOOP(
             "Remark", "The combs were seen %n days before the day asked about; the model counts %{used} used since."),
         "days",
         QT_TRANSLATE_NOOP(
             "Remark", "The combs were seen the day before the day asked about; the model counts %{used} used since.")},
        {"stores-carried-forward/gained",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "The combs were seen %n days before the day asked about; the model counts %{gained} brought in since."),
         "days",
         QT_TRANSLATE_NOOP(
             "Remark",
             "The combs were seen the day before the day asked about; the model counts %{gained} brought in since.")},
        {"middle-winter-class/feed",
         QT_TRANSLATE_NOOP("Remark", "In the middle of winter %{stores} are under %{=4 kg}: feed now.")},
        {"middle-winter-class/watch",
         QT_TRANSLATE_NOOP("Remark", "In the middle of winter %{stores} are between %{=4 kg} and %{=8 kg}: watch this colony.")},
        {"middle-winter-class/fine",
         QT_TRANSLATE_NOOP("Remark", "In the middle of winter %{stores} are over %{=8 kg}: that is fine for now.")},
        {"locked-in-long",
         QT_TRANSLATE_N_NOOP("Remark", "Cold may lock the bees in for %n days on end, when nothing can be fed: be "
                                     "cautious and plan for a short risk of 10 of 100."),
         "days"},
        // feeding
        {"ratio-thin", QT_TRANSLATE_N_NOOP("Remark", "Syrup 3:2 by mass: %n warm days are left to ripen it."), "days",
         QT_TRANSLATE_NOOP("Remark", "Syrup 3:2 by mass: one warm day is left to ripen it.")},
        {"ratio-thick",
         QT_TRANSLATE_N_NOOP("Remark",
                           "Syrup 2:1 by mass: with %n warm days left the bees should have less water to drive off."),
         "days",
         QT_TRANSLATE_NOOP("Remark",
                           "Syrup 2:1 by mass: with one warm day left the bees should have less water to drive off.")},
        {"ratio-own", QT_TRANSLATE_NOOP("Remark", "The ratio is your own: %{ratio} by mass.")},
        {"room-full", QT_TRANSLATE_NOOP("Remark", "The combs have room for only about %{room}: take out a full comb or "
                                                  "add drawn comb, or the rest cannot be stored.")},
        {"deadline-passed", QT_TRANSLATE_NOOP("Remark", "After %{day} syrup is no longer ripened: fondant instead.")},
        {"too-slow", QT_TRANSLATE_NOOP(
                         "Remark", "Not all can be taken as syrup by the last day: %{fondant} are given as fondant.")},
        {"after-advised", QT_TRANSLATE_NOOP("Remark", "Syrup is best finished by %{day}; this plan goes on after it.")},
        {"small-lots",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Until %{day} thick syrup in lots of a litre at most may still be taken, but it may stay open.")},
        // harvest
        {"no-comb-to-take",
         QT_TRANSLATE_NOOP("Remark", "No single comb may be taken: each holds brood, is not capped enough, took syrup, "
                                     "is old, or weighs more than can be spared.")},
        {"quick-form-no-combs", QT_TRANSLATE_NOOP("Remark", "Combs were only counted, so none can be named.")},
        {"treated-honey",
         QT_TRANSLATE_NOOP("Remark", "The hive was treated while this honey was in it, so none of it is taken.")},
        {"moist-honey",
         QT_TRANSLATE_NOOP("Remark",
                           "The honey holds %{water:1} % water, more than 18 %, and would ferment: it stays.")},
        {"fed-combs", QT_TRANSLATE_NOOP("Remark", "Combs that took syrup are not taken.")},
        {"old-nest-combs", QT_TRANSLATE_NOOP("Remark", "Combs that stood for years in the brood nest are not taken.")},
        {"take-in-spring", QT_TRANSLATE_NOOP("Remark", "What is to spare may also stay and be taken in spring: "
                                                       "typically %{spare} above the reserve at first forage.")},
        {"autumn-flow-not-harvested",
         QT_TRANSLATE_NOOP("Remark", "Honey the autumn flow has yet to bring is never counted for harvest.")},
        {"move-combs-first",
         QT_TRANSLATE_N_NOOP("Remark", "Before buying sugar: %n combs with about %{kg} can come from %{from}."), "combs",
         QT_TRANSLATE_NOOP("Remark", "Before buying sugar: one comb with about %{kg} can come from %{from}.")},
        {"move-combs-first/unnamed",
         QT_TRANSLATE_N_NOOP("Remark",
                           "Before buying sugar: %n combs with about %{kg} can come from another colony of the yard."),
         "combs",
         QT_TRANSLATE_NOOP("Remark",
                           "Before buying sugar: one comb with about %{kg} can come from another colony of the yard.")},
        // the colony
        {"narrow-nest", QT_TRANSLATE_NOOP("Remark", "%{built:0} combs are built and %{covered:1} covered: narrow the "
                                                    "nest with a follower, or take supers off.")},
        {"open-stores-late",
         QT_TRANSLATE_NOOP("Remark", "About %{open} are open stores that may not be capped before the cold.")},
        // place and season
        {"dearth-climate", QT_TRANSLATE_NOOP("Remark", "There is no winter here, only a dearth between the last autumn "
                                                       "and the first spring income. Local flows decide it, and the "
                                                       "error is twice that of colder places.")},
        {"edge-of-rules", QT_TRANSLATE_NOOP("Remark", "The season lies at the edge of the rules, as in high and far "
                                                      "northern places: compare its dates with your own.")},
        {"date-moved",
         QT_TRANSLATE_NOOP("Remark", "The derived date of %{which:season} gave way to a given one and is now %{to}.")},
        {"season-overrides", QT_TRANSLATE_NOOP("Remark", "Dates of the season were given and not derived.")},
        {"station-used", QT_TRANSLATE_NOOP("Remark", "The climate is that of %{station:town}, %{km:distance} away.")},
        {"station-used/unmeasured", QT_TRANSLATE_NOOP("Remark", "The climate is that of %{station:town}.")},
        {"height-shift",
         QT_TRANSLATE_NOOP("Remark", "For the height of the place all temperatures are shifted by %{kelvin:kelvins}.")},
        {"flow-assumed", QT_TRANSLATE_NOOP("Remark", "An autumn flow is counted in: %{strength:flow}.")},
        {"doubt-heavy/pounds",
         QT_TRANSLATE_N_NOOP("Remark", "%{weight} cannot well be: %n boxes of this size weigh %{most} when every comb is full of honey. Is it %{number:1} lb, which is %{meant}?"),
         "boxes",
         QT_TRANSLATE_NOOP("Remark", "%{weight} cannot well be: one box of this size weighs %{most} when every comb is full of honey. Is it %{number:1} lb, which is %{meant}?")},
        {"doubt-heavy/comma",
         QT_TRANSLATE_N_NOOP("Remark", "%{weight} cannot well be: %n boxes of this size weigh %{most} when every comb is full of honey. Is it %{meant}?"), "boxes",
         QT_TRANSLATE_NOOP("Remark", "%{weight} cannot well be: one box of this size weighs %{most} when every comb is full of honey. Is it %{meant}?")},
        {"doubt-heavy/plain",
         QT_TRANSLATE_N_NOOP("Remark", "%{weight} cannot well be: %n boxes of this size weigh %{most} when every comb is full of honey. Is a box not written down?"), "boxes",
         QT_TRANSLATE_NOOP("Remark", "%{weight} cannot well be: one box of this size weighs %{most} when every comb is full of honey. Is a box not written down?")},
        {"doubt-light/comma",
         QT_TRANSLATE_NOOP("Remark", "%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Is it %{meant}?")},
        {"doubt-light/plain",
         QT_TRANSLATE_NOOP("Remark", "%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Was all of it on the scale?")},
        {"doubt-two-weights/comma",
         QT_TRANSLATE_NOOP("Remark", "%{weight} does not go with the %{other} of %{day}: ten times as much. Has a decimal point slipped?")},
        {"doubt-two-weights/pounds",
         QT_TRANSLATE_NOOP("Remark", "%{weight} does not go with the %{other} of %{day}: as much as pounds differ from kilograms. Which is it?")},
        {"doubt-harvest",
         QT_TRANSLATE_N_NOOP("Remark", "%{taken} of honey cannot well come out of %n boxes of this size, which hold %{most} at the most. Is a box not written down?"), "boxes",
         QT_TRANSLATE_NOOP("Remark", "%{taken} of honey cannot well come out of one box of this size, which holds %{most} at the most. Is a box not written down?")},
        {"doubt-harvest-there/weighed",
         QT_TRANSLATE_NOOP("Remark", "%{taken} of honey is more than can have been there: at most %{most}, going by the weight of %{day}. Is it right?")},
        {"doubt-harvest-there/seen",
         QT_TRANSLATE_NOOP("Remark", "%{taken} of honey is more than can have been there: at most %{most}, going by the combs of %{day}. Is it right?")},
        {"doubt-feed",
         QT_TRANSLATE_N_NOOP("Remark", "A feed that makes %{stores} of stores cannot be: %n boxes of this size hold %{most}. How much was it?"), "boxes",
         QT_TRANSLATE_NOOP("Remark", "A feed that makes %{stores} of stores cannot be: one box of this size holds %{most}. How much was it?")},
        {"doubt-feed-at-once",
         QT_TRANSLATE_NOOP("Remark", "%{given} in one day is much: few feeders let bees take more than %{most}. Is it right?")},
        {"doubt-feed-recently",
         QT_TRANSLATE_N_NOOP("Remark", "The feeds of %n days make %{stores} of stores, and this hive holds %{most}. Is it right?"), "days",
         QT_TRANSLATE_NOOP("Remark", "The feeds of a day make %{stores} of stores, and this hive holds %{most}. Is it right?")},
        {"doubt-covered",
         QT_TRANSLATE_NOOP("Remark", "%{covered:1} covered combs are more than the %{most:0} places of this hive. How many were covered on both sides?")},
        {"doubt-seams",
         QT_TRANSLATE_NOOP("Remark", "%{seams:1} seams are more than the %{most:0} this hive has. How many were filled with bees?")},
        {"doubt-bees",
         QT_TRANSLATE_NOOP("Remark", "%{bees:hundreds} bees are more than this hive houses, %{most:hundreds} at the very most. Is it right?")},
        {"doubt-brood",
         QT_TRANSLATE_NOOP("Remark", "%{cells:hundreds} cells of brood leave no room for food: all combs of this hive have %{most:hundreds} cells. Is it right?")},
        {"doubt-full-combs",
         QT_TRANSLATE_NOOP("Remark", "%{combs:1} combs with stores are more than the %{most:0} places of this hive. How many were there?")},
        {"doubt-stores-left",
         QT_TRANSLATE_N_NOOP("Remark", "%{stores} of stores cannot well be left in %n boxes of this size, which hold %{most} at the most. Is it right?"), "boxes",
         QT_TRANSLATE_NOOP("Remark", "%{stores} of stores cannot well be left in one box of this size, which holds %{most} at the most. Is it right?")},
        {"doubt-moisture",
         QT_TRANSLATE_NOOP("Remark", "%{water:1} % of water is out of the usual: honey in combs has %{low:0} to %{high:0} %. Is it right?")},
        {"doubt-later", QT_TRANSLATE_NOOP("Remark", "%{day} is still to come: today is %{today}. Is the day right?")},
        {"doubt-other-hive", QT_TRANSLATE_NOOP("Remark", "It had other boxes then than when it was looked at, so its weight does not tell its stores. What is in it now?")},
        {"doubt-tare-heavy",
         QT_TRANSLATE_N_NOOP("Remark", "An empty weight of %{weight} is much: %n boxes of this size weigh up to %{most} with all combs drawn and no honey in them. Is it right?"), "boxes",
         QT_TRANSLATE_NOOP("Remark", "An empty weight of %{weight} is much: one box of this size weighs up to %{most} with all combs drawn and no honey in it. Is it right?")},
        {"doubt-tare-light",
         QT_TRANSLATE_NOOP("Remark", "An empty weight of %{weight} is little: this hive weighs %{least} or more without a single comb. Was all of it on the scale?")},
        {"doubt-before", QT_TRANSLATE_NOOP("Remark", "%{day} is before the colony was there, from %{since} on. Is the day right?")},
    };
    return texts;
}

} // namespace winterlarder::text
