// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remark_texts.h"

#include <QCoreApplication>

namespace winterlarder::text {

const std::vector<RemarkText>& followTexts() {
    static const std::vector<RemarkText> texts{
        {"look-from-outside/closed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "At a daily maximum of about %{temperature} weigh or heft from outside and do not open: a dry, still "
             "day, no knocking, the hive set down gently.")},
        {"look-from-outside/lid",
         QT_TRANSLATE_NOOP(
             "Remark",
             "At a daily maximum of about %{temperature} weigh or heft from outside; the lid alone may be lifted, no %{comb} is drawn: a "
             "dry, still day, no knocking.")},
        {"look-from-outside/moment",
         QT_TRANSLATE_NOOP(
             "Remark",
             "At a daily maximum of about %{temperature} weigh or heft from outside; the hive may be open for half a minute in the mildest hour, with "
             "the cluster left as it is. A full look waits for %{=15 °C}.")},
        {"look-from-outside/fed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "At a daily maximum of about %{temperature} the food goes on in the mildest hour, dry and still: the lid is off for half a "
             "minute only, no %{comb} is lifted, no knocking. All other looks and weighings are from outside.")},
        {"fondant-on-cluster",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Lay the fondant flat on the top bars right over the cluster, touching it: cut a window into its "
             "wrapping, lay that downwards, and cover it warmly. A block a hand's breadth away is not found in the cold.")},
        {"fondant-long-hive",
         QT_TRANSLATE_NOOP(
             "Remark",
             "In a long hive stand the fondant as a slab beside the cluster, on the side where its stores are, "
             "touching the outermost %{comb} with bees, with no empty %{comb} between.")},
        {"dry-sugar",
         QT_TRANSLATE_NOOP(
             "Remark",
             "If there is no fondant, %{sugar:amount} of dry white sugar in all will do in need: on paper on the top bars "
             "over the cluster, misted with water, or the bees carry it out.")},
        {"flight-may-be-robbers",
         QT_TRANSLATE_NOOP(
             "Remark", "Bees that fly from a dead colony are robbers. Look for pollen coming in or cleansing flights, "
                       "or listen at the hive, before you call it alive.")},
        {"spring-not-this-honey",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Take only %{combs} that never took syrup and were not in the hive while it was treated; everything else is "
             "for the bees.")},
        {"old-feed-stays-down",
         QT_TRANSLATE_NOOP(
             "Remark", "Old winter feed never goes up into a super: what is in the way is taken out, kept for light "
                       "colonies, or left below.")},
        {"cold-spell",
         QT_TRANSLATE_NOOP(
             "Remark", "Most colonies starve in spring, not in midwinter. With brood in every %{comb} a week of cold "
                       "rain can empty a hive: leave %{leave:amount} until forage is steady.")},
        {"follow-course/short",
         QT_TRANSLATE_NOOP(
             "Remark",
             "It was eaten as expected: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.")},
        {"follow-course/less",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{stores:amount} are left, less than the %{planned:amount} the autumn expected for today.")},
        {"follow-course/well",
         QT_TRANSLATE_NOOP(
             "Remark", "On course: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.")},
        {"follow-as-found",
         QT_TRANSLATE_NOOP(
             "Remark",
             "No advice was acted on: it is followed as it was found on %{day}, with nothing but what is written down as fed and taken since.")},
        {"follow-not-begun",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Until its winter is followed, from %{day} on, what is to be done is what the answer of the day says, in the plan of its yard.")},
        {"follow-act-now",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{stores:amount} are left: less than these bees may eat in %{days:0} days. That cannot wait for better weather.")},
        {"follow-light",
         QT_TRANSLATE_NOOP(
             "Remark",
             "It was light when it was lifted on %{day}, and no weighing of the fortnight before says otherwise: one portion does no harm, and a "
             "weighing tells what more it needs.")},
        {"follow-light-weighed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "It was light when it was lifted on %{day}, though the weighing of %{weighed} does not say so: weigh it again before anything is fed.")},
        {"follow-heavier",
         QT_TRANSLATE_NOOP(
             "Remark",
             "On %{day} it weighed %{seen}, where %{low} to %{high} were expected: more than any winter explains. Was a feed, a box, a stone or "
             "another colony added that is not written down? Else check the scale and the empty weight.")},
        {"follow-out-of-reach",
         QT_TRANSLATE_NOOP(
             "Remark",
             "On %{day} no stores were in sight beside the cluster. However heavy the hive is, food the cluster does not "
             "touch is not found in the cold: it starves beside full %{combs}.")},
        {"follow-gap",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Where the cluster sat on %{day} empty %{combs} lie between it and the stores. In the cold it does not cross them.")},
        {"follow-dwindling",
         QT_TRANSLATE_NOOP(
             "Remark",
             "About %{seen:0} bees were seen on %{day}, where even a poor winter leaves %{least:0}: the colony dwindles.")},
        {"follow-less-than-thought",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Less was in the hive than was thought: on %{day} more likely about %{now:amount} than %{thought:amount}. The bees do not eat faster for it.")},
        {"feed-not-recorded",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Feed for about %{stores:amount} of stores was planned from %{day} on, and it is not written down that it was given. Was it? "
             "Until you say so it is not counted.")},
        {"follow-faster",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Between %{from} and %{until} the hive lost %{lost}, where about %{expected} was expected: these bees eat faster than forecast.")},
        {"check-the-scale",
         QT_TRANSLATE_NOOP(
             "Remark",
             "So much is hardly eaten: check the scale, and whether a lid, a box or a stone was on or off on %{day}, and look for robbers.")},
        {"follow-more",
         QT_TRANSLATE_NOOP(
             "Remark",
             "More is there than the colony needs: in 9 winters of 10 %{stores:amount} or more will be left when spring forage starts.")},
        {"comb-against-cluster",
         QT_TRANSLATE_NOOP(
             "Remark",
             "On a day of %{=10 °C} or more hang a full %{comb} right against the cluster, no empty one between, and weigh the hive.")},
        {"when-dwindling",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Narrow the entrance and keep it warm from above. On a day of %{=10 °C} or more put the bees together in a small space, a full "
             "%{comb} on either side, and see whether there is a queen. Unite it with no other while there may be disease.")},
        {"dead-no-food",
         QT_TRANSLATE_NOOP("Remark", "No food within reach: it starved, or could not get at what was left elsewhere.")},
        {"dead-with-food",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Food within reach: it did not starve for want of stores. Look at mites, the queen and the size of the cluster.")},
        {"dead-heads-in-cells",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Bees head down in the cells: they starved; with food elsewhere in the hive, because the cold held them away from it.")},
        {"dead-heads-not-in-cells",
         QT_TRANSLATE_NOOP("Remark", "No bees head down in the cells: hunger is not the likely cause.")},
        {"dead-many-mites",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Many mites on the floor: the winter bees were raised with varroa and its viruses; treat earlier, and count afterwards.")},
        {"dead-few-mites",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Few mites on the floor: varroa is less likely, but a colony that lost its bees in autumn leaves few behind.")},
        {"dead-no-brood",
         QT_TRANSLATE_NOOP("Remark", "No brood: it died while laying had stopped, or had no laying queen any more.")},
        {"dead-solid-brood",
         QT_TRANSLATE_NOOP("Remark", "Solid brood: the queen laid well until a sudden end, by cold or hunger.")},
        {"dead-patchy-brood",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Patchy brood, dead in its cells: varroa or a brood disease. Close the hive against robbers, and show the %{comb} to the bee "
             "inspector before any of it is used again.")},
        {"dead-queen-there", QT_TRANSLATE_NOOP("Remark", "The queen was there to the end: it was not queenless.")},
        {"dead-queen-missing",
         QT_TRANSLATE_NOOP(
             "Remark", "No queen among the dead: with few bees and drone brood or none it was probably queenless.")},
        {"follow-dead", QT_TRANSLATE_NOOP("Remark", "The colony was found dead on %{day}.")},
        {"follow-reserve-by",
         QT_TRANSLATE_NOOP(
             "Remark",
             "If nothing is done it falls below %{reserve:amount} in %{in:0} of 100 winters that fit what was seen, by about %{day}.")},
        {"next-weighing",
         QT_TRANSLATE_NOOP("Remark", "Weigh again by %{day}: from then on a weighing may change what to do.")},
        {"next-weighing-visit",
         QT_TRANSLATE_NOOP("Remark", "Weigh on %{day}, before more is fed: how much it is to be follows from that.")},
        {"no-more-weighing", QT_TRANSLATE_NOOP("Remark", "No further weighing before forage would change what to do.")},
        {"weighing-contradicts",
         QT_TRANSLATE_NOOP(
             "Remark",
             "The weighing of %{day} contradicts every simulated winter: it says %{seen}, where %{low} to %{high} was "
             "expected. Weigh again, and look for a feed that was not written down or ticked off, for a lid, a box or a stone that was on or off, and for "
             "robbers.")},
        {"unexplained-change",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Before %{day} the hive changed by about %{change} more than any winter explains, and a later weighing "
             "agrees. The forecast goes on from there.")},
        {"sign-contradicts",
         QT_TRANSLATE_NOOP(
             "Remark",
             "What was seen on %{day} contradicts every simulated winter, all of which had run out of stores by then. "
             "Weigh the hive.")},
        {"fits-no-winter",
         QT_TRANSLATE_NOOP(
             "Remark",
             "The records fit no winter: of about %{had:amount} on %{decided}, with %{given:amount} fed and %{taken:amount} taken since, nothing can "
             "have been left before %{day}, yet stores were found then. Look at what was written down between these days: "
             "until it is set right there is no forecast but the autumn's.")},
        {"wet-weighing",
         QT_TRANSLATE_NOOP("Remark", "Rain or snow lay on the hive on %{day}: that weighing counts for less.")},
        {"drawn-again",
         QT_TRANSLATE_NOOP("Remark",
                           "Few of the winters first drawn fitted what was seen; they were drawn again around it.")},
        {"few-winters",
         QT_TRANSLATE_NOOP(
             "Remark", "Only about %{winters:0} of the simulated winters fit what was seen, so the shares are rough.")},
        {"weather-so-far",
         QT_TRANSLATE_N_NOOP("Remark", "Measured temperatures of %n days stand for the weather so far."), "days",
         QT_TRANSLATE_NOOP("Remark", "The measured temperature of one day stands for the weather so far.")},
        {"learned-use/more",
         QT_TRANSLATE_N_NOOP(
             "Remark", "Over %n winters these bees ate %{percent:0} % more than the model says; used from now on."),
         "winters",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Over one winter these bees ate, as far as it tells, %{percent:0} % more than the model says; used from now on.")},
        {"learned-use/less",
         QT_TRANSLATE_N_NOOP(
             "Remark", "Over %n winters these bees ate %{percent:0} % less than the model says; used from now on."),
         "winters",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Over one winter these bees ate, as far as it tells, %{percent:0} % less than the model says; used from now on.")},
        {"learned-use/same",
         QT_TRANSLATE_N_NOOP("Remark", "Over %n winters these bees ate what the model says, within 2 %."), "winters",
         QT_TRANSLATE_NOOP("Remark",
                           "Over one winter these bees ate, as far as it tells, what the model says, within 2 %.")},
        {"learned-death/more",
         QT_TRANSLATE_N_NOOP(
             "Remark", "Over %n winters they lost bees %{percent:0} % faster than the model says; used from now on."),
         "winters",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Over one winter they lost bees, as far as it tells, %{percent:0} % faster than the model says; used from now on.")},
        {"learned-death/less",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "Over %n winters they lost bees %{percent:0} % more slowly than the model says; used from now on."),
         "winters",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Over one winter they lost bees, as far as it tells, %{percent:0} % more slowly than the model says; used from now on.")},
        {"learned-forage/later",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "Going by %n springs, spring forage starts %{days:1} days later here than the climate says; used from now on."),
         "springs",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Going by one spring, spring forage starts %{days:1} days later here than the climate says; used from now on.")},
        {"learned-forage/earlier",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "Going by %n springs, spring forage starts %{days:1} days earlier here than the climate says; used from now on."),
         "springs",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Going by one spring, spring forage starts %{days:1} days earlier here than the climate says; used from now on.")},
        {"spring-carries", QT_TRANSLATE_NOOP("Remark", "Spring forage should carry the colony from about %{day}.")},
        {"spring-leave", QT_TRANSLATE_NOOP("Remark", "Leave %{leave:amount} for a cold spell until forage is steady.")},
        {"spring-surplus/bees",
         QT_TRANSLATE_NOOP(
             "Remark",
             "More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts. It is for bees alone: "
             "full %{combs} of it may help a light, healthy colony, or be kept for one.")},
        {"spring-surplus/take",
         QT_TRANSLATE_NOOP(
             "Remark",
             "More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts, and may come out.")},
        {"queen-room",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Take out about %{room:amount} of full %{combs} when forage has begun, so that the queen has room to lay.")},
    };
    return texts;
}

} // namespace winterlarder::text
