// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/glossary.h"

#include "text/contexts.h"

namespace winterlarder::text {

namespace {

ExplainedSection aboutStores() {
    return {
        say::Glossary::tr("Stores"),
        {{say::Glossary::tr("stores"),
          say::Glossary::tr(
              "What the bees can live on in the hive: capped honey, and open nectar or syrup as far as it will ripen. Bee bread is not counted.")},
         {say::Glossary::tr("need"),
          say::Glossary::tr(
              "The stores that must be in the hive today so that as few winters go short as you accept. It reaches to the day spring forage starts and holds the reserve.")},
         {say::Glossary::tr("reserve"),
          say::Glossary::tr(
              "Stores that should still be there on the worst day, for what nobody foresees. You set it on the page Place.")},
         {say::Glossary::tr("falls below the reserve"),
          say::Glossary::tr(
              "Less than the reserve is left on some day before spring forage starts. The bees are not starving yet, but little is left.")},
         {say::Glossary::tr("runs out"),
          say::Glossary::tr(
              "No stores are left on some day before spring forage starts. Without help the colony starves.")},
         {say::Glossary::tr("accepted risk"),
          say::Glossary::tr(
              "How many winters of a hundred may fall below the reserve before the program advises you to feed or to leave honey. You set it on the page Place.")},
         {say::Glossary::tr("empty weight"),
          say::Glossary::tr(
              "The weight of the hive without bees, brood and stores: boxes, frames, floor and roof. Known, it makes every weighing tell more.")},
         {say::Glossary::tr("hefted"),
          say::Glossary::tr(
              "Lifted a little by hand, to feel whether the hive is light, fair or heavy. Rougher than a scale, but quick.")},
         {say::Glossary::tr("both sides lifted"),
          say::Glossary::tr(
              "A hanging scale lifts the hive at one side and then at the other; the two readings added are about its weight.")}}};
}

ExplainedSection aboutCombs() {
    return {
        say::Glossary::tr("%{Combs} and bees"),
        {{say::Glossary::tr("capped"),
          say::Glossary::tr(
              "Sealed with wax: ripe honey that keeps. The share of it capped says how much of the stores on a %{comb} is sealed.")},
         {say::Glossary::tr("open nectar"),
          say::Glossary::tr(
              "Cells with nectar or syrup not sealed yet. Much of it is water, so it counts for less, and late in the year it may never be capped.")},
         {say::Glossary::tr("bee bread"),
          say::Glossary::tr("Pollen the bees have stored in cells. It feeds the brood and does not count as stores.")},
         {say::Glossary::tr("built"),
          say::Glossary::tr("How much of the space in the frame, or under the bar, the bees have filled with comb.")},
         {say::Glossary::tr("face"), say::Glossary::tr("One side of a %{comb}.")},
         {say::Glossary::tr("old nest"),
          say::Glossary::tr("Dark comb in which brood was raised for years. Honey in it is left to the bees.")},
         {say::Glossary::tr("spacing, or bar width"),
          say::Glossary::tr(
              "From the middle of one %{comb} to the middle of the next. The wider it is, the thicker the comb and the more honey it holds.")},
         {say::Glossary::tr("super"), say::Glossary::tr("A box above the brood for honey.")},
         {say::Glossary::tr("seams of bees"),
          say::Glossary::tr(
              "Gaps between %{combs} that are filled with bees, counted from above. Half a gap counts as a half.")},
         {say::Glossary::tr("%{combs} covered"),
          say::Glossary::tr("%{Combs} covered by bees on both sides. One side covered counts as a half.")},
         {say::Glossary::tr("cluster"),
          say::Glossary::tr(
              "The ball in which bees keep each other warm in the cold. It can only eat what it touches.")},
         {say::Glossary::tr("Kept small on purpose"),
          say::Glossary::tr(
              "A small colony that is meant to be small, such as one with a spare queen. It is not judged weak for it.")},
         {say::Glossary::tr("follower"),
          say::Glossary::tr("A board that hangs like a %{comb} and closes off the empty part of a hive.")},
         {say::Glossary::tr("robbers"),
          say::Glossary::tr(
              "Bees of other colonies, or wasps, that carry stores away from a hive too weak to defend itself.")},
         {say::Glossary::tr("cleansing flights"),
          say::Glossary::tr("Short flights on mild winter days; bees do not soil the hive.")},
         {say::Glossary::tr("fondant"),
          say::Glossary::tr("A stiff sugar dough. Bees can eat it in the cold, when syrup is no longer taken.")}}};
}

ExplainedSection aboutSeason() {
    return {
        say::Glossary::tr("The season"),
        {{say::Glossary::tr("last nectar coming in"),
          say::Glossary::tr("The day after which bees here usually bring no more nectar home in autumn.")},
         {say::Glossary::tr("advised end of feeding"),
          say::Glossary::tr(
              "The day by which feeding should be over, so that there is time to ripen and seal the food.")},
         {say::Glossary::tr("last day for syrup"),
          say::Glossary::tr("The last day on which syrup can still be dried by the bees, as the air is here.")},
         {say::Glossary::tr("syrup no longer taken"),
          say::Glossary::tr("From this day on it is usually too cold for bees to come down to a feeder.")},
         {say::Glossary::tr("laying stops"),
          say::Glossary::tr("The day the queen usually ceases laying for the winter. Food lasts longest from now on.")},
         {say::Glossary::tr("laying restarts"),
          say::Glossary::tr(
              "The day she begins again, often in the middle of winter. Brood must be kept warm, so more is eaten.")},
         {say::Glossary::tr("build-up"),
          say::Glossary::tr(
              "The weeks in spring in which brood grows quickly. Most food is eaten in them, and most colonies that starve do so then.")},
         {say::Glossary::tr("spring forage starts"),
          say::Glossary::tr("The day from which nectar comes in reliably in spring. Up to it the stores must last.")},
         {say::Glossary::tr("dearth"), say::Glossary::tr("Weeks without nectar although it is warm enough to fly.")},
         {say::Glossary::tr("autumn flow"),
          say::Glossary::tr(
              "Nectar that may still come in before winter, beyond the little that weeds and ivy bring every autumn, which is always counted.")},
         {say::Glossary::tr("give or take"),
          say::Glossary::tr("About two years of three lie no further from the day given than this.")}}};
}

ExplainedSection aboutChance() {
    return {
        say::Glossary::tr("Chance"),
        {{say::Glossary::tr("simulated winters"),
          say::Glossary::tr(
              "The program lets the same colony live through hundreds or thousands of winters as they may happen here, some mild and some hard, with colonies that eat more or less. "
              "\u201c17 of 100\u201d means that it happened in 17 of every hundred of them.")},
         {say::Glossary::tr("Left alone"), say::Glossary::tr("What happens if you do nothing at all from today on.")},
         {say::Glossary::tr("in brackets"),
          say::Glossary::tr(
              "29.5 kg (24\u201334) means most probably near 29.5 kg; what is there, wanted, fed or taken is told to half a kilogram, or a pound. The figures in brackets are the spread: unless it is said otherwise, the truth lies between them in eight cases of ten.")},
         {say::Glossary::tr("spread"),
          say::Glossary::tr(
              "How far the truth may lie from a figure. A look at every %{comb} narrows it; a glance through a window leaves it wide.")},
         {say::Glossary::tr("SD"),
          say::Glossary::tr(
              "Standard deviation, a measure of spread. About two cases of three lie within one SD of the figure, nineteen of twenty within two.")},
         {say::Glossary::tr("nine in ten"), say::Glossary::tr("A band so wide that nine of ten cases lie in it.")},
         {say::Glossary::tr("eighty of a hundred"),
          say::Glossary::tr(
              "A band so wide that eight of ten winters lie in it; one of ten lies above and one below.")},
         {say::Glossary::tr("percentile"),
          say::Glossary::tr("One case of ten lies below the 10th percentile, nine of ten lie below the 90th.")},
         {say::Glossary::tr("Another look"),
          say::Glossary::tr(
              "Whether opening the hive again could change the advice, and which look would tell most.")}}};
}

ExplainedSection aboutFollowing() {
    return {
        say::Glossary::tr("Following and looking back"),
        {{say::Glossary::tr("On course"),
          say::Glossary::tr(
              "What has been weighed and seen since autumn agrees with the forecast, and the stores will last.")},
         {say::Glossary::tr("glance"),
          say::Glossary::tr(
              "What can be seen without taking the hive apart: flight, the cluster from above, stores through a window.")},
         {say::Glossary::tr("contradicts every simulated winter"),
          say::Glossary::tr(
              "No winter that may happen here fits this reading. Most often something was weighed that is not bees or food, or something was done and not written down.")},
         {say::Glossary::tr("mean score"),
          say::Glossary::tr(
              "How far forecasts of past winters were from what happened, on average, in the unit of the stores. Smaller is better. A forecast that was sure and wrong loses most.")},
         {say::Glossary::tr("handbook figure"),
          say::Glossary::tr(
              "The stores that printed advice for your region gives for every colony alike. The program's forecasts are held against it.")},
         {say::Glossary::tr("learned"),
          say::Glossary::tr(
              "What your own past winters told about how much these bees eat and how fast they die. It corrects the forecast where you want it to.")}}};
}

} // namespace

std::vector<ExplainedSection> glossary(const WordStyle& style) {
    std::vector<ExplainedSection> all{aboutStores(), aboutCombs(), aboutSeason(), aboutChance(), aboutFollowing()};
    for (auto& section : all) {
        section.title = worded(section.title, style);
        for (auto& row : section.rows) row = {worded(row.term, style), worded(row.words, style)};
    }
    return all;
}

} // namespace winterlarder::text
