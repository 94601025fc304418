// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remark_texts.h"

#include <QCoreApplication>

namespace winterlarder::text {

const std::vector<RemarkText>& cautionTexts() {
    static const std::vector<RemarkText> texts{
        {"robbing-and-wasps",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Robbers and %{wasps}: work in the evening, feed inside the hive only, spill nothing, and narrow the entrance: "
             "%{=6 mm} high and about %{=7 cm} to %{=12 cm} wide, for a weak colony one bee's width.")},
        {"feed-inside",
         QT_TRANSLATE_NOOP("Remark",
                           "Feed inside the hive only: feed in the open brings robbers and carries disease.")},
        {"disease",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Foulbrood has to be reported: close the hive, narrow the entrance, wash hands and tools, and open no other hive before.")},
        {"emergency",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Fondant has to touch the bees, under a cover that keeps them warm; the lid is off for half a minute, no %{comb} is drawn.")},
        {"no-super-yet",
         QT_TRANSLATE_NOOP(
             "Remark",
             "So near to spring forage what is fed may end up in honey: no super goes on before it is eaten.")},
        {"moisture",
         QT_TRANSLATE_NOOP(
             "Remark", "The refractometer shows %{water:1} % water. Honey keeps with at most 18 %, measured on several "
                       "%{combs}; food law allows 20 %, heather 23 %.")},
        {"moisture/unmeasured",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Measure the water with a refractometer on several %{combs} before taking any: honey keeps with at most "
             "18 %, food law allows 20 %, heather 23 %.")},
        {"check-scale",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Before weighing again: is the empty weight that of this hive as it stands, are stones, feeder and wet snow off, "
             "is a super left out of the list?")},
        {"crystallising",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Thick syrup is right now, but left standing in the cold to be expected before the last day it lets up to %{percent:0} % of its "
             "weight settle as sugar: give it lukewarm and in portions that are soon taken.")},
        {"weak-unite/long",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Unite healthy colonies only, by %{day}: in the evening, the %{combs} of the weak one hung beside those of the strong one behind a sheet of "
             "newspaper, the bees misted with water, the better queen kept. Later it is too cold for the bees to come together.")},
        {"weak-unite/boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Unite healthy colonies only, by %{day}: in the evening, the weak one above the strong one with a sheet of newspaper between, "
             "the better queen kept. Later it is too cold for the bees to come together.")},
        {"weak-too-late",
         QT_TRANSLATE_NOOP(
             "Remark",
             "A small colony, and too late to unite: narrow it into a nucleus box with full %{combs} on both sides, and insulate it.")},
        {"varroa-first/summer",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Mites first: good stores do not save a colony treated too late. Count them now and treat once the honey is off; the label, "
             "your vet and the bee inspector decide on the means.")},
        {"varroa-first/summer-bees",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Mites first: good stores do not save a colony treated too late. Count them now, and treat without delay, for what is in the super "
             "stays with the bees; the label, your vet and the bee inspector decide on the means.")},
        {"varroa-first/treated",
         QT_TRANSLATE_NOOP(
             "Remark",
             "You have treated against mites: count them again two to three weeks after it, for a treatment may fail and robbers bring "
             "mites home.")},
        {"varroa-first/many",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{mites:0} mites on 100 bees are too many: stores do not save such a colony. Treat as soon as no honey for people is on, before anything else, "
             "and count again two to three weeks after it; the label, your vet and the bee inspector decide on the means.")},
        {"varroa-first/counted",
         QT_TRANSLATE_NOOP(
             "Remark",
             "You have counted the mites: where the count calls for it treat as soon as no honey for people is on, and count again two to "
             "three weeks after it. Good stores do not save a colony treated too late; the label, your vet and the bee inspector decide "
             "on the means.")},
        {"varroa-first/north",
         QT_TRANSLATE_NOOP("Remark", "Good stores do not save a colony treated too late: in a trial, "
                                     "colonies treated against varroa in July or August "
                                     "were lost a third less often. Count the mites; the label, your "
                                     "vet and the bee inspector decide on the means.")},
        {"varroa-first/south",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Good stores do not save a colony treated too late, that is after January or February. Count the mites where varroa is; "
             "the label, your vet and the bee inspector decide on the means.")},
        {"spring-starvation/north",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Most colonies that starve do so when brood grows in March and April, not in midwinter: heft it again then.")},
        {"spring-starvation/south",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Most colonies that starve do so when brood grows in August and September, not in midwinter: heft it again then.")},
        {"spring-starvation/any",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Most colonies that starve do so while brood grows before spring forage starts, not in midwinter: heft it often then.")},
        {"flow-not-sure",
         QT_TRANSLATE_NOOP("Remark", "The nectar counted on here may fail. Weigh again when no more comes in.")},
        {"excluder-off", QT_TRANSLATE_NOOP("Remark", "Where a super stays on as winter food take the queen excluder "
                                                     "out before laying stops, or the queen is left below in "
                                                     "the cold.")},
        {"queen-in-doubt",
         QT_TRANSLATE_NOOP("Remark",
                           "Neither queen nor eggs were seen: make sure of a laying queen before anything else.")},
        {"laying-stopped",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Hardly any brood was seen, though laying usually stops around %{day} only. The amounts here are those of a queen that lays: if she has "
             "stopped, %{need:amount} are enough. Look for eggs in a week.")},
        {"laying-stopped/undated",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Hardly any brood was seen, though the queen should still have been laying. The amounts here are those of a queen that lays: if she "
             "has stopped, %{need:amount} are enough. Look for eggs in a week.")},
        {"early-look",
         QT_TRANSLATE_NOOP("Remark",
                           "This is an early look, and rougher for it. Weigh again when no more nectar comes in.")},
        {"next-look/weigh", QT_TRANSLATE_NOOP("Remark", "Next: weigh it on %{day}, both sides, without opening.")},
        {"next-look/mites", QT_TRANSLATE_NOOP("Remark", "Next: on %{day} look at the stores, and count the mites.")},
        {"next-look/queen",
         QT_TRANSLATE_NOOP("Remark", "Next: on %{day} look for queen cells on the %{comb} with eggs.")},
        {"next-look/feed",
         QT_TRANSLATE_NOOP("Remark", "Next: on %{day} see whether the feed is taken and being capped.")},
        {"no-supers-while-feeding",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Take supers whose honey is meant for people off before any syrup goes on, or syrup ends up in it.")},
        {"not-for-people",
         QT_TRANSLATE_NOOP("Remark",
                           "Honey stored while a colony was fed or treated is for the bees, not for people. After "
                           "medicines the label, the vet and the law decide.")},
        {"capped-share",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Take a %{comb} only if at least two thirds of its stores are capped; under four fifths the honey "
             "may be too wet to keep.")},
        {"infants", QT_TRANSLATE_NOOP("Remark", "No honey for children under twelve months.")},
        {"unknown-honey",
         QT_TRANSLATE_NOOP("Remark", "Never feed honey whose origin you do not know: it can carry foulbrood.")},
        {"sugar-kind",
         QT_TRANSLATE_NOOP(
             "Remark", "Use white granulated sugar only. Brown, raw and icing sugar and molasses hold what bees cannot "
                       "digest.")},
        {"hmf-and-acid",
         QT_TRANSLATE_NOOP("Remark",
                           "Do not boil syrup, and add no acid or vinegar: both make HMF, which poisons bees.")},
        {"drowning",
         QT_TRANSLATE_NOOP("Remark", "Lay floats or straw on the syrup of an open feeder, so that bees do not drown.")},
        {"setting-stores",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Stores from ivy or rape set hard; heather honey and honeydew can scour bees that cannot fly. Where such "
             "stores come in, give some syrup on top; where the cold is long, replace those %{combs}.")},
        {"opening-cold",
         QT_TRANSLATE_NOOP(
             "Remark",
             "It may be too cool to open: a full look from %{=15 °C}, half a minute from %{=10 °C}, in winter the lid alone "
             "from %{=7 °C}.")},
        {"cluster-gap/autumn",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. Hang full %{combs} "
             "beside the bees and above them, without an empty %{comb} between.")},
        {"cluster-gap/split",
         QT_TRANSLATE_NOOP(
             "Remark",
             "In this long hive stores lie on both sides of the bees, or beyond an empty %{comb}: bees that have eaten to one end do not come back in "
             "the cold. Put the bees at one end and all the stores on one side of them.")},
        {"cluster-gap/winter",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. On a day of %{=10 °C} hang a "
             "full %{comb} against the bees; should they run short before, lay fondant on them.")},
        {"top-insulation",
         QT_TRANSLATE_NOOP("Remark", "Where the cold is long, insulation above the %{combs} saves food.")},
        {"condensation",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Let moisture leave: entrance clear, hive tilted slightly forward, nothing cold and wet above the bees.")},
        {"mouse-guard",
         QT_TRANSLATE_NOOP("Remark",
                           "Fit a mouse guard with openings of %{=6 mm} to %{=8 mm} before days stay below %{=5 °C}.")},
        {"heft",
         QT_TRANSLATE_NOOP("Remark", "Heft every two weeks; once brood has started, weigh every two to three weeks.")},
        {"dead-out", QT_TRANSLATE_NOOP("Remark", "Close a dead hive the same day. Nothing of it goes to another colony "
                                                 "until disease is ruled out; a notifiable disease "
                                                 "has to be reported.")},
        {"lifting",
         QT_TRANSLATE_NOOP("Remark", "A full deep box weighs up to %{=40 kg}: lift %{combs} rather than boxes.")},
        {"stings",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Stings can be dangerous: with an allergy never work alone, and keep the emergency number at hand.")},
        {"hot-syrup",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Water of %{=50 °C} to %{=60 °C} dissolves sugar well enough; hotter syrup scalds, and spoils.")},
        {"soft-comb", QT_TRANSLATE_NOOP("Remark", "Comb without a frame breaks easily: free its sides first, keep it "
                                                  "vertical, begin at the empty end, and leave it alone "
                                                  "in heat.")},
        {"long-hive-feeding", QT_TRANSLATE_NOOP("Remark", "In a long hive the feeder goes behind the follower, and "
                                                          "fondant stands as a slab beside the cluster, not over the "
                                                          "bars.")},
        {"pollen-short", QT_TRANSLATE_NOOP("Remark", "Only about %{pollen} of bee bread was seen. With under half a "
                                                     "kilogram when laying stops, brood has little to start on: "
                                                     "keep %{combs} with pollen beside the nest.")},
        {"brood-not-said",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Laying has begun again by now, and nothing was said of brood: how much of it there is would tell more than "
             "anything else.")},
        {"move-combs", QT_TRANSLATE_NOOP("Remark", "%{Combs} move between healthy colonies only, in a yard without "
                                                   "foulbrood: brush the bees off, work at dusk, and leave the "
                                                   "giver its own need.")},
        {"honey-bound", QT_TRANSLATE_NOOP("Remark", "More is left than spring needs: make room for the queen in time. "
                                                    "Old winter feed never goes up into supers.")},
        {"check-comb",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Whether a %{comb} named here holds brood was not said: look before taking it, and leave it if it does.")},
        {"local-rules", QT_TRANSLATE_NOOP("Remark", "Where disease, medicines or local law are concerned, the bee "
                                                    "inspector, the vet and the law come first.")},
    };
    return texts;
}

} // namespace winterlarder::text
