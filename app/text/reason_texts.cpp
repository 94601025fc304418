// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remark_texts.h"

#include <QCoreApplication>

namespace winterlarder::text {

const std::vector<RemarkText>& reasonTexts() {
    static const std::vector<RemarkText> texts{
        // why no answer is given
        {"far-from-stations",
         QT_TRANSLATE_NOOP("Remark", "The nearest climate station is %{km:distance} away, and beyond "
                                     "%{farthest:distance} none speaks for a place: give a climate of your "
                                     "own.")},
        {"far-from-stations/unmeasured",
         QT_TRANSLATE_NOOP(
             "Remark",
             "No climate station lies within %{farthest:distance} of the place: give a climate of your own.")},
        {"no-colony", QT_TRANSLATE_NOOP("Remark", "There are no bees in the hive.")},
        {"bees-unknown",
         QT_TRANSLATE_NOOP("Remark",
                           "Nothing tells how many bees there are: count the %{combs} or the seams they cover.")},
        {"weight-uncounted",
         QT_TRANSLATE_NOOP(
             "Remark",
             "By its weight on %{day} there are %{low:amount} to %{high:amount} of stores, with %{tare:amount} for the empty hive and what few or many bees weigh.")},
        {"light-bees-unknown",
         QT_TRANSLATE_NOOP(
             "Remark",
             "It was light when it was lifted on %{day}. How many bees there are nobody counts in the cold, and without that no amount can be said: one "
             "portion does no harm, and a weighing tells whether more is wanted.")},
        {"stores-unknown",
         QT_TRANSLATE_NOOP("Remark",
                           "Nothing tells what stores there are: look at the %{combs}, weigh the hive, or heft it.")},
        {"out-of-season", QT_TRANSLATE_NOOP("Remark", "The day asked about lies in the month before the season begins: "
                                                      "ask from 1 August on, in the south from the end of "
                                                      "January.")},
        {"season-not-derivable",
         QT_TRANSLATE_NOOP("Remark", "This climate has no cold or dark season to derive a dearth from: give the dates "
                                     "of the build-up and of the start of spring forage.")},
        {"after-forage", QT_TRANSLATE_NOOP("Remark", "Spring forage has started: no winter is left to ask about.")},
        // the rule that decided
        {"disease-first",
         QT_TRANSLATE_NOOP(
             "Remark",
             "With signs of disease nothing else counts: no honey, no %{combs} and no bees leave this hive before the inspector has "
             "seen it. It is fed only to live until then.")},
        {"no-food-in-reach",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Of about %{stores:amount} in the hive only %{within:amount} lie where the bees can reach them in the cold.")},
        {"no-food-in-reach/none",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Nothing of the about %{stores:amount} in the hive lies where the bees can reach it in the cold.")},
        {"act-now", QT_TRANSLATE_NOOP("Remark", "About %{stores:amount} of stores may last less than %{days:0} days.")},
        {"act-now/none", QT_TRANSLATE_NOOP("Remark", "Next to nothing is left in the hive.")},
        {"no-queen",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Neither queen nor eggs nor brood were seen, and it is not yet too late in the year for eggs: such a colony does not live "
             "through winter alone. Give it a %{comb} with eggs of another colony, and look after four days: queen cells on it mean she is gone.")},
        {"contradiction",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{first:evidence} says %{low:amount}, %{second:evidence} says %{high:amount}: no amount is told "
             "before one of them is found wrong.")},
        {"heft-alone/light",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Light at this time of year stands for about %{stores:amount}, give or take a third: one portion at once, then weigh.")},
        {"heft-alone/fair",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Fair at this time of year stands for about %{stores:amount}, give or take a third: too rough to decide by.")},
        {"heft-alone/heavy",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Heavy at this time of year stands for about %{stores:amount}, give or take a third; no honey is taken on a heft.")},
        {"weak-colony",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{bees:hundreds} bees going into winter are too few to winter well alone; 7,000 are the least.")},
        {"summer-portion",
         QT_TRANSLATE_NOOP(
             "Remark", "%{safety:amount} are to be in the hive so that it is safe until the next look; there are about "
                       "%{stores:amount}. What it needs for winter is fed later.")},
        {"summer-harvest",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{safety:amount} stay in the hive until the next look; what is taken now is fed as sugar later, once the mites are treated.")},
        {"summer-safe",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{stores:amount} are in the hive, and %{safety:amount} are enough until the next look: nothing is decided "
             "for winter yet.")},
        {"fresh-nectar",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Nectar or syrup is fresh in the open cells: they count as %{share:0} % of what they would weigh capped, until a look finds them ripe.")},
        {"hive-full", QT_TRANSLATE_NOOP("Remark", "The %{combs} hold about %{room:amount}, and they are full.")},
        {"short-of-stores", QT_TRANSLATE_NOOP("Remark", "About %{missing:amount} of stores are missing on %{day}.")},
        {"small-portions/dearth",
         QT_TRANSLATE_NOOP(
             "Remark",
             "In a dearth bees take thick syrup in small portions, right over the cluster, on days that are warm enough.")},
        {"small-portions/late",
         QT_TRANSLATE_NOOP(
             "Remark",
             "After the last day for syrup bees take small portions only, warm, thick and right over the cluster, and fewer from week to week.")},
        {"winter-board",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "Cold may lock the bees in for %n days on end: what is missing goes on as %{board} before the hive is wrapped."),
         "days"},
        {"late-board",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "%{Board} should have been on before the hive was wrapped. Cold may lock the bees in for %n days on end, and most winters would starve them as they are: laid on now it still helps, if the bees can get at it."),
         "days"},
        {"visit-due",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{stores:amount} are left, and %{reserve:amount} are to be kept: one visit now, the next after weighing.")},
        {"short-later",
         QT_TRANSLATE_NOOP("Remark",
                           "Nothing can or need be fed today; whether it will be wanted a later weighing tells.")},
        {"super-apart",
         QT_TRANSLATE_NOOP(
             "Remark",
             "The honey of the super is for people and was not counted: the bees keep their %{stores:amount} when it comes off.")},
        {"surplus/usual",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{spare:amount} are to spare above what the colony should winter on and what is usual here.")},
        {"surplus/alone",
         QT_TRANSLATE_NOOP("Remark", "About %{spare:amount} are to spare above what the colony should winter on.")},
        {"enough/more",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{stores:amount} will be there, and %{need:amount} are wanted: that is enough, and what is more stays with the bees.")},
        {"enough/usual",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{stores:amount} will be there, and %{need:amount} are wanted; but %{usual:amount} or more are usual here, and less than that is never left after a harvest: what is more stays with the bees.")},
        {"enough/same",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{stores:amount} will be there, and %{need:amount} are wanted: a difference of less than %{dead:amount} is "
             "neither fed nor taken.")},
        {"no-brood-seen",
         QT_TRANSLATE_NOOP(
             "Remark",
             "No brood was seen, though the queen usually still lays: if she has stopped, %{stopped:amount} are enough instead of %{need:amount}.")},
        {"no-eggs-normal",
         QT_TRANSLATE_NOOP("Remark",
                           "No eggs at this time of year are normal: that is no sign that the queen is gone.")},
        {"more-than-it-holds/comb",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then give drawn comb or a box of "
             "it (no foundation now), or full %{combs} from store or a healthy neighbour.")},
        {"more-than-it-holds/comb-weighed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{need:amount} are wanted and the %{combs} hold about %{room:amount}: give drawn comb or a box of "
             "it (no foundation now), or full %{combs} from store or a healthy neighbour.")},
        {"more-than-it-holds/full-combs-weighed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{need:amount} are wanted and the %{combs} hold about %{room:amount}: change empty %{combs} for "
             "full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.")},
        {"more-than-it-holds/full-combs",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then change empty "
             "%{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.")},
        // the numbers
        {"target",
         QT_TRANSLATE_NOOP(
             "Remark",
             "On %{day} it should hold about %{need:amount}: %{combs:halves} full %{combs}, %{gross:amount} with hive and bees.")},
        {"usual-here/agrees", QT_TRANSLATE_NOOP("Remark", "Usual here (%{place}): %{low:amount} to %{high:amount}.")},
        {"usual-here/agrees-one", QT_TRANSLATE_NOOP("Remark", "Usual here (%{place}): %{low:amount}.")},
        {"usual-here/differs-one",
         QT_TRANSLATE_NOOP("Remark",
                           "Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts "
                           "this colony's bees, hive and winters.")},
        {"usual-here/differs",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts "
             "this colony's bees, hive and winters.")},
        {"usual-here/differs-by-hearsay",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts "
             "this colony's bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.")},
        {"usual-here/differs-by-hearsay-one",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts "
             "this colony's bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.")},
        {"need",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Counted from today %{need:amount} are wanted: then %{reserve:amount} or more are left in %{in:0} of 100 winters when "
             "spring forage starts, around %{forage}.")},
        {"locked-in-long/before",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "Cold may lock the bees in for %n days on end, when nothing can be fed: so enough is to be left in %{in:0} of 100 winters, not in 80."),
         "days"},
        {"locked-in-long/winter",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "Cold may lock the bees in for %n days on end, when they reach only food that touches them: so enough is to be left in %{in:0} of 100 winters, not in 80."),
         "days"},
        {"reserve-of-boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{reserve:amount} are to be left because the hive has more than one brood box; of one box it would be %{one:amount}.")},
        {"room-full",
         QT_TRANSLATE_NOOP("Remark",
                           "There is empty comb for only about %{room:amount}: no more is fed than finds a place.")},
        {"too-slow",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Not all of it can be taken by the last day for syrup; full %{combs} may make up the rest; else weigh in winter, and lay on fondant where it is still short then.")},
        {"after-advised",
         QT_TRANSLATE_NOOP("Remark", "Feeding is best finished by %{day}; this plan goes on after it.")},
        {"moist-honey",
         QT_TRANSLATE_NOOP(
             "Remark",
             "The honey holds %{water:1} % water, more than %{most:0} %, and would ferment: it stays with the bees, now and in spring.")},
        {"wettish-honey",
         QT_TRANSLATE_NOOP("Remark",
                           "The honey holds %{water:1} % water: it may be kept, but driest honey keeps best.")},
        {"fed-combs",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Sugar was fed since last spring: no %{comb} that was on the hive then is honey for people, now or in spring.")},
        {"surplus-for-bees",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{spare:amount} to spare may go as %{combs} to bees: to your own nuclei or to a healthy colony of this yard.")},
        {"take-in-spring",
         QT_TRANSLATE_NOOP("Remark", "What is to spare may also stay and be taken in spring: "
                                     "typically %{spare:amount} more than is wanted when spring forage starts.")},
        {"dearth-climate",
         QT_TRANSLATE_NOOP("Remark", "There is no winter here, only a dearth between the last nectar of autumn "
                                     "and the first of spring. Local flows decide it, and the "
                                     "error is twice that of colder places.")},
        {"own-climate", QT_TRANSLATE_NOOP("Remark", "The climate is your own climate, as you gave it.")},
        {"station-used",
         QT_TRANSLATE_NOOP("Remark", "The climate is that of the station for %{place}, %{km:distance} away.")},
        {"station-used/unmeasured", QT_TRANSLATE_NOOP("Remark", "The climate is that of the station for %{place}.")},
        {"flow-assumed", QT_TRANSLATE_NOOP("Remark", "Nectar still coming in is counted: %{strength:flow}.")},
        {"small-colony", QT_TRANSLATE_NOOP("Remark", "About %{bees:hundreds} bees are fewer than the 4,000 from which "
                                                     "colonies have been measured: the figures are less sure.")},
        {"stores-carried-forward",
         QT_TRANSLATE_N_NOOP(
             "Remark", "The last look was %n days before the day asked about; the model counts %{used} used since."),
         "days",
         QT_TRANSLATE_NOOP(
             "Remark", "The last look was the day before the day asked about; the model counts %{used} used since.")},
        {"stores-carried-forward/gained",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "The last look was %n days before the day asked about; the model counts %{gained} brought in since."),
         "days",
         QT_TRANSLATE_NOOP(
             "Remark",
             "The last look was the day before the day asked about; the model counts %{gained} brought in since.")},
        {"ratio-thin", QT_TRANSLATE_N_NOOP("Remark", "Syrup 3:2 by mass: %n warm days are left to ripen it."), "days",
         QT_TRANSLATE_NOOP("Remark", "Syrup 3:2 by mass: one warm day is left to ripen it.")},
        {"ratio-thick",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "Syrup 2:1 by mass: %n warm days are left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off."),
         "days",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Syrup 2:1 by mass: one warm day is left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.")},
        // harvest
        {"no-comb-to-take",
         QT_TRANSLATE_NOOP("Remark",
                           "No single %{comb} may be taken: each holds brood, hangs over or beside the bees, is not "
                           "capped enough, took syrup, is old, or weighs more than can be spared.")},
        {"spare-not-sure",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{spare:amount} would be to spare if it is as thought; but with the doubt of what is there more than %{in:0} of 100 winters would fall "
             "below %{reserve:amount} without it, so it stays with the bees.")},
        {"too-little-capped",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Only %{percent:0} % of the stores are capped: honey is ripe from two thirds on, so none is taken before more is.")},
        {"quick-form-no-combs", QT_TRANSLATE_NOOP("Remark", "%{Combs} were only counted, so none can be named.")},
        {"treated-honey",
         QT_TRANSLATE_NOOP("Remark", "The hive was treated while this honey was in it, so none of it is taken.")},
        {"old-nest-combs",
         QT_TRANSLATE_NOOP("Remark", "%{Combs} that stood for years in the brood nest are not taken.")},
        {"autumn-flow-not-harvested",
         QT_TRANSLATE_NOOP("Remark", "Honey the autumn flow has yet to bring is never counted for harvest.")},
        // the colony
        {"narrow-nest",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{built:0} %{combs} are built, the bees cover %{covered:halves}, and %{empty:0} are empty: take empty %{combs} out before winter, "
             "or put a follower beside the nest.")},
        {"open-stores-late",
         QT_TRANSLATE_NOOP("Remark", "About %{open:amount} are open stores that may not be capped before the cold.")},
        // place and season
        {"edge-of-rules", QT_TRANSLATE_NOOP("Remark", "The season lies at the edge of the rules, as in high and far "
                                                      "northern places: compare its dates with your own.")},
        {"date-moved",
         QT_TRANSLATE_NOOP("Remark", "The derived date of %{which:season} gave way to a given one and is now %{to}.")},
        {"season-overrides", QT_TRANSLATE_NOOP("Remark", "Dates of the season were given and not derived.")},
        {"height-shift",
         QT_TRANSLATE_NOOP("Remark", "For the height of the place all temperatures are shifted by %{kelvin:kelvins}.")},
    };
    return texts;
}

} // namespace winterlarder::text
