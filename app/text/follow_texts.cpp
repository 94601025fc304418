// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remark_texts.h"

#include <QCoreApplication>

namespace winterlarder::text {

const std::vector<RemarkText>& followTexts() {
    static const std::vector<RemarkText> texts{
        {"look-from-outside",
         QT_TRANSLATE_NOOP("Remark",
                           "At a daily maximum of about %{temperature} weigh or heft from outside and do not open: a dry, still "
                           "day, no knocking, the hive set down gently. From %{=7 °C} the lid alone may be lifted, from %{=10 °C} for half a "
                           "minute with the cluster left as it is.")},
        {"fondant-on-cluster",
         QT_TRANSLATE_NOOP("Remark",
                           "Lay the fondant flat on the top bars right over the cluster, touching it: cut a window into its "
                           "wrapping, lay that downwards, and cover it warmly. A block a hand's breadth away is not found in the cold.")},
        {"fondant-long-hive",
         QT_TRANSLATE_NOOP("Remark",
                           "In a long hive stand the fondant as a slab beside the cluster, on the side where its stores are, "
                           "touching the outermost comb with bees, with no empty comb between.")},
        {"dry-sugar",
         QT_TRANSLATE_NOOP("Remark",
                           "If there is no fondant, %{sugar} of dry white sugar in all will do in need: on paper on the top bars "
                           "over the cluster, misted with water, or the bees carry it out.")},
        {"flight-may-be-robbers",
         QT_TRANSLATE_NOOP("Remark", "Bees that fly from a dead colony are robbers. Look for pollen coming in or cleansing flights, "
                                     "or listen at the hive, before you call it alive.")},
        {"spring-not-this-honey",
         QT_TRANSLATE_NOOP("Remark",
                           "Take only combs that never took syrup and were not in the hive while it was treated; everything else is "
                           "for the bees.")},
        {"old-feed-stays-down",
         QT_TRANSLATE_NOOP("Remark", "Old winter feed never goes up into a super: what is in the way is taken out, kept for light "
                                     "colonies, or left below.")},
        {"cold-spell",
         QT_TRANSLATE_NOOP("Remark", "Most colonies starve in spring, not in midwinter. With brood in every comb a week of cold "
                                     "rain can empty a hive: leave %{leave} until forage is steady.")},
        {"follow-course", QT_TRANSLATE_NOOP("Remark", "As forecast: about %{stores} are left; the autumn expected %{planned} for today.")},
        {"follow-faster", QT_TRANSLATE_NOOP("Remark", "Less is left than was forecast: about %{stores}, where the autumn expected %{planned} for today.")},
        {"follow-slower", QT_TRANSLATE_NOOP("Remark", "More is left than was forecast: about %{stores}, where the autumn expected %{planned} for today.")},
        {"follow-act-now", QT_TRANSLATE_NOOP("Remark", "Feed what makes %{stores} of stores, and begin by %{day}.")},
        {"follow-dead", QT_TRANSLATE_NOOP("Remark", "The colony was found dead on %{day}.")},
        {"follow-reserve-by",
         QT_TRANSLATE_NOOP("Remark", "If nothing is done the reserve is touched in %{in:0} of 100 winters that fit what was seen, by about %{day}.")},
        {"next-weighing", QT_TRANSLATE_NOOP("Remark", "Weigh again by %{day}: from then on a weighing may change what to do.")},
        {"no-more-weighing", QT_TRANSLATE_NOOP("Remark", "No further weighing before forage would change what to do.")},
        {"weighing-contradicts",
         QT_TRANSLATE_NOOP("Remark", "The weighing of %{day} contradicts every simulated winter: it says %{seen}, where %{low} to %{high} was "
                                     "expected. Weigh again, and look for a feed that was not written down or ticked off, for a lid, a box or a stone that was on or off, and for "
                                     "robbers.")},
        {"unexplained-change",
         QT_TRANSLATE_NOOP("Remark", "Before %{day} the hive changed by about %{change} more than any winter explains, and a later weighing "
                                     "agrees. The forecast goes on from there.")},
        {"sign-contradicts",
         QT_TRANSLATE_NOOP("Remark", "What was seen on %{day} contradicts every simulated winter, all of which had run out of stores by then. "
                                     "Weigh the hive.")},
        {"fits-no-winter",
         QT_TRANSLATE_NOOP("Remark", "The records fit no winter: of about %{had} on %{decided}, with %{given} fed and %{taken} taken since, nothing can "
                                     "have been left before %{day}, yet stores were found then. Look at what was written down between these days: "
                                     "until it is set right there is no forecast but the autumn's.")},
        {"wet-weighing", QT_TRANSLATE_NOOP("Remark", "Rain or snow lay on the hive on %{day}: that weighing counts for less.")},
        {"drawn-again", QT_TRANSLATE_NOOP("Remark", "Few of the winters first drawn fitted what was seen; they were drawn again around it.")},
        {"few-winters",
         QT_TRANSLATE_NOOP("Remark", "Only about %{winters:0} of the simulated winters fit what was seen, so the shares are rough.")},
        {"weather-so-far",
         QT_TRANSLATE_N_NOOP("Remark", "Measured temperatures of %n days stand for the weather so far."), "days",
         QT_TRANSLATE_NOOP("Remark", "The measured temperature of one day stands for the weather so far.")},
        {"learned-use/more",
         QT_TRANSLATE_N_NOOP("Remark", "Over %n winters these bees ate %{percent:0} % more than the model says; used from now on."), "winters",
         QT_TRANSLATE_NOOP("Remark", "Over one winter these bees ate, as far as it tells, %{percent:0} % more than the model says; used from now on.")},
        {"learned-use/less",
         QT_TRANSLATE_N_NOOP("Remark", "Over %n winters these bees ate %{percent:0} % less than the model says; used from now on."), "winters",
         QT_TRANSLATE_NOOP("Remark", "Over one winter these bees ate, as far as it tells, %{percent:0} % less than the model says; used from now on.")},
        {"learned-use/same",
         QT_TRANSLATE_N_NOOP("Remark", "Over %n winters these bees ate what the model says, within 2 %."), "winters",
         QT_TRANSLATE_NOOP("Remark", "Over one winter these bees ate, as far as it tells, what the model says, within 2 %.")},
        {"learned-death/more",
         QT_TRANSLATE_N_NOOP("Remark", "Over %n winters they lost bees %{percent:0} % faster than the model says; used from now on."), "winters",
         QT_TRANSLATE_NOOP("Remark", "Over one winter they lost bees, as far as it tells, %{percent:0} % faster than the model says; used from now on.")},
        {"learned-death/less",
         QT_TRANSLATE_N_NOOP("Remark", "Over %n winters they lost bees %{percent:0} % more slowly than the model says; used from now on."), "winters",
         QT_TRANSLATE_NOOP("Remark",
                           "Over one winter they lost bees, as far as it tells, %{percent:0} % more slowly than the model says; used from now on.")},
        {"learned-forage/later",
         QT_TRANSLATE_N_NOOP("Remark", "Going by %n springs, first forage comes %{days:1} days later here than the climate says; used from now on."),
         "springs",
         QT_TRANSLATE_NOOP("Remark", "Going by one spring, first forage comes %{days:1} days later here than the climate says; used from now on.")},
        {"learned-forage/earlier",
         QT_TRANSLATE_N_NOOP("Remark", "Going by %n springs, first forage comes %{days:1} days earlier here than the climate says; used from now on."),
         "springs",
         QT_TRANSLATE_NOOP("Remark", "Going by one spring, first forage comes %{days:1} days earlier here than the climate says; used from now on.")},
        {"spring-carries", QT_TRANSLATE_NOOP("Remark", "Forage should carry the colony from about %{day}.")},
        {"spring-leave", QT_TRANSLATE_NOOP("Remark", "Leave %{leave} for a cold spell until forage is steady.")},
        {"spring-surplus", QT_TRANSLATE_NOOP("Remark", "About %{surplus} more than that should be left on the first forage day and may come out.")},
        {"queen-room",
         QT_TRANSLATE_NOOP("Remark", "Take out about %{room} of full combs when forage has begun, so that the queen has room to lay.")},
    };
    return texts;
}

} // namespace winterlarder::text
