// SPDX-License-Identifier: GPL-3.0-or-later
// When to look, how to weigh, and how to open a hive.
#include "stores/weighing.h"
#include "text/guide/guide_numbers.h"
#include "text/guide/guide_parts.h"

namespace winterlarder::text {

namespace {

// Ways of judging, and how far each is off in one standard deviation.
GuideTable howSure(const GuideWriter& page) {
    const ModelConstants& k = page.reader.reference.constants;
    return {
        {say::Guide::tr("Way of judging"), say::Guide::tr("Give or take", "heading: two of three cases lie within")},
        {{say::Guide::tr("every %{comb}, both faces"), page.percent(combSd(2, k))},
         {say::Guide::tr("every %{comb}, one face"), page.percent(combSd(1, k))},
         {say::Guide::tr("full and half %{combs} only counted"), page.percent(k.quickCountSd)},
         {say::Guide::tr("on a scale, empty hive weighed too"), page.kg(stores::weighedTareSd)},
         {say::Guide::tr("on a scale, empty weight assumed"), page.kg(emptyHive(exampleHive(page.reader)).sd)},
         {say::Guide::tr("hefted by hand"), page.percent(k.heftSd)}}};
}

} // namespace

GuideText guideWhen(const GuideReader& reader) {
    GuideWriter page(GuidePage::When, reader);
    page.say(say::Guide::tr(
        "In autumn you decide what a colony can no longer put right by itself: whether honey comes off, whether it is left alone, how much it is fed. "
        "A few %{combs} too little and it starves in spring; far too much and the queen has no room. So look before you take."));
    page.show(
        GuideDrawing::Year,
        say::Guide::tr(
            "Stores through the year: high when the honey is off, slowly down in the cold, steeply down while brood grows in spring."));
    page.point(
        say::Guide::tr("When the honey is off"),
        say::Guide::tr(
            "Look at every %{comb}, some %1 days before feeding is best finished. One look tells stores, brood, bees and empty comb, and there is still time to feed.")
            .arg(page.whole(reader.reference.decisions.closingBeforeFeedBy)));
    page.point(say::Guide::tr("When the last feed is down"),
               say::Guide::tr("Weigh, and write it down. Every later weight is read against this one."));
    page.point(
        say::Guide::tr("In the cold"),
        say::Guide::tr(
            "Leave the %{combs} alone. Heft every two weeks; once there is brood again, weigh every two to three."));
    page.point(
        say::Guide::tr("In spring"),
        say::Guide::tr(
            "These weeks take most. Colonies that starve mostly do so now, with brood to keep warm, not in midwinter: go on hefting until nectar comes in every day."));
    page.say(say::Guide::tr(
        "No way of judging is exact, and each is wrong in its own way. The eye errs alike on every %{comb} of a visit; a scale does not know what the empty hive weighs. "
        "Two ways together tell more than one way twice. In two of three cases the truth lies within this:"));
    page.table(howSure(page));
    return page.from({"b-thenet", "liebig-hohenheim", "swiss-bee-health", "imdorf-liebefeld", "judgement"});
}

GuideText guideWeight(const GuideReader& reader) {
    GuideWriter page(GuidePage::Weight, reader);
    const DecisionConstants& d = reader.reference.decisions;
    const BothSides lift = exampleLift();
    const GuideHive hive = exampleHive(reader);
    const stores::Tare empty = emptyHive(hive);
    page.say(say::Guide::tr(
        "A closed hive tells most for least: two minutes, and no bee disturbed. Take stones, feeder and wet snow off first, or write down that they are on."));
    page.show(GuideDrawing::Heft,
              say::Guide::tr("A hand under the edge of the floor lifts one side of the hive by a finger's breadth."));
    page.point(
        say::Guide::tr("Heft"),
        say::Guide::tr(
            "Hold the floor by its edge and lift that side by a finger's breadth, slowly, always the same side. A heavy hive feels nailed down, a fair one comes up with a pull, a light one by itself. "
            "Light is taken for %1 of what is wanted that day, fair for %2, heavy for %3: good for a warning, never for an amount.")
            .arg(page.percent(d.heftLight), page.percent(d.heftFair), page.percent(d.heftHeavy)));
    page.point(
        say::Guide::tr("One side on a scale"),
        say::Guide::tr(
            "Hook a luggage scale to the middle of that edge, pull straight up until light shows under it, read while it hangs still. Twice the reading is roughly the whole, "
            "but stores seldom lie in the middle: at %1 it may be off by %2.")
            .arg(page.kg(kilograms(50)), page.kg(offByOneSide(kilograms(50), reader.reference.constants))));
    page.point(
        say::Guide::tr("Both sides"),
        say::Guide::tr(
            "Lift the other side too and add the two. The sum is the whole hive, never half of it. A lifted side reads %1 low, which is put right for you: %2 and %3 make %4.")
            .arg(page.percent(1 - stores::twoSidesRead), page.kg(lift.left), page.kg(lift.right), page.kg(lift.whole)));
    page.show(GuideDrawing::BothSides,
              say::Guide::tr("The same hive lifted at its left and at its right; the two readings are added."));
    page.say(
        say::Guide::tr(
            "Stores are what is left once the empty hive, bees, brood and bee bread are taken off. Not told, one box of %1 with drawn combs, floor and lids is taken to weigh %2, give or take %3. "
            "Weigh an empty one once, and every weighing tells more. Mind your back: lift with a straight one.")
            .arg(hive.name, page.kg(empty.mass), page.kg(empty.sd)));
    return page.from({"common-practice", "judgement"});
}

GuideText guideOpening(const GuideReader& reader) {
    GuideWriter page(GuidePage::Opening, reader);
    const QString full = page.ruled("rule-151", fullLookFrom, "\u00b0C"),
                  brief = page.ruled("rule-151", briefLookFrom, "\u00b0C"),
                  lid = page.ruled("rule-154", lidFrom, "\u00b0C");
    page.say(say::Guide::tr(
        "Every opening costs warmth, and in the cold food. Ask first whether a weight would tell enough. If not, choose the day and know what you want to see."));
    page.show(
        GuideDrawing::Thermometer,
        say::Guide::tr(
            "From %1 a full look, from %2 half a minute, from %3 the lid alone; below that the hive stays closed.")
            .arg(full, brief, lid));
    page.point(
        say::Guide::tr("Not now"),
        say::Guide::tr(
            "Not below %1 for a full look or %2 for half a minute; in winter lift the lid alone, from %3. Not in wind or rain. Not in a dearth at noon, when robbers search: then go toward evening.")
            .arg(full, brief, lid));
    page.point(
        say::Guide::tr("Smoke"),
        say::Guide::tr(
            "Three quiet puffs into the entrance, wait a minute, one under the lid. More drives the queen about."));
    page.point(
        say::Guide::tr("Order"),
        say::Guide::tr(
            "Begin with an outer %{comb} and stand it beside, in the shade: now there is room. Go on %{comb} by %{comb}, lifting slowly so that no bee is rolled, and hang each back in its place, the same way round. "
            "Look for eggs, not for the queen. Cover what you are not looking at."));
    page.show(GuideDrawing::Order,
              say::Guide::tr(
                  "Seen from above: first the outer %{comb} comes out, then one after the other moves into the gap."));
    page.point(
        say::Guide::tr("Comb without a frame"),
        say::Guide::tr("Free its sides first, keep it upright, begin at the empty end, and leave it alone in heat."));
    page.point(
        say::Guide::tr("Robbing"),
        say::Guide::tr(
            "Bees wrestle at the entrance, search the joints, and leave heavy. Close up, narrow the entrance to one bee, open no other hive that day."));
    page.point(
        say::Guide::tr("In a yard"),
        say::Guide::tr(
            "Healthy colonies first, doubtful ones last; wash hands and tools after these. With an allergy to stings never work alone."));
    return page.from({"bienen-und-natur", "common-practice"});
}

} // namespace winterlarder::text
