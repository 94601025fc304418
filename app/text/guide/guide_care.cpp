// SPDX-License-Identifier: GPL-3.0-or-later
// Feeding, and what to see to in winter.
#include "text/guide/guide_numbers.h"
#include "text/guide/guide_parts.h"

namespace winterlarder::text {

namespace {

GuideTable recipeTable(const GuideWriter& page) {
    const WordStyle& style = page.reader.style;
    GuideTable table{{say::Guide::tr("Sugar to water"), say::Guide::tr("Sugar"), say::Guide::tr("Water"),
                      say::Guide::tr("Makes"), say::Guide::tr("Becomes stores of")},
                     {}};
    for (const auto& [ratio, syrup] : recipes(style.numbers.system))
        table.rows.push_back({QString::fromStdString(ratio.printed), page.kg(syrup.sugar), volume(syrup.water, style),
                              volume(syrup.volume, style), page.kg(syrup.stores)});
    return table;
}

} // namespace

GuideText guideFeeding(const GuideReader& reader) {
    GuideWriter page(GuidePage::Feeding, reader);
    const DecisionConstants& d = reader.reference.decisions;
    page.say(
        say::Guide::tr(
            "Ratios here are by weight, sugar to water. Two cups of sugar on one of water are only %1 to 1 by weight: use a scale.")
            .arg(number(twoCupsToOne(), 2, reader.style)));
    page.show(GuideDrawing::Syrup,
              say::Guide::tr("The same sugar with less and less water: 1 to 1, 3 to 2 and 2 to 1 by weight."));
    page.table(recipeTable(page));
    page.point(
        say::Guide::tr("Mix"),
        say::Guide::tr(
            "Stir white granulated sugar into water of %1 until it is clear. Never boil, no acid, no brown or icing sugar. Give it lukewarm.")
            .arg(page.ruled("rule-011", "50", "\u00b0C")));
    page.point(
        say::Guide::tr("Which"),
        say::Guide::tr(
            "For winter stores 3:2 while five weeks of warm days remain before the last day for syrup, then 2:1: less water to drive off. 1:1 only helps a small colony along."));
    page.show(
        GuideDrawing::Feeder,
        say::Guide::tr(
            "A feeder over the %{combs} and under the lid: bees come up inside, nothing gets in from outside, the entrance is narrow."));
    page.point(
        say::Guide::tr("Feeder"),
        say::Guide::tr(
            "Inside and above the bees, tight against those from outside, with a float so that none drown. Supers whose honey is for people come off first."));
    page.point(
        say::Guide::tr("Robbers and wasps"),
        say::Guide::tr(
            "Feed all colonies the same evening, spill nothing, narrow the entrance to %1 by %2 at most, for a weak colony to one bee.")
            .arg(page.ruled("rule-143", "6", "mm"), page.ruled("rule-143", "120", "mm")));
    page.point(
        say::Guide::tr("Last day"),
        say::Guide::tr(
            "Syrup needs %1 weeks to be sealed, and under %2 it is hardly taken. The page Feeding says the day for your yard.")
            .arg(page.ruled("rule-075", "4-6"), page.ruled("rule-070", "10", "\u00b0C")));
    page.point(
        say::Guide::tr("Fondant"),
        say::Guide::tr(
            "In winter the only feed: on the bars over the cluster so that it touches the bees, covered, at most %1 a visit, for a nucleus %2. In a long hive stand it beside the cluster. Never feed honey of unknown origin.")
            .arg(page.kg(kilograms(d.fondantVisit)), page.kg(kilograms(d.fondantNucleus))));
    return page.from({"nbu-bpg7", "curth-1981", "swiss-bee-health", "bienen-und-natur", "dorset-bka", "apisavoir",
                      "common-practice"});
}

GuideText guideWinter(const GuideReader& reader) {
    GuideWriter page(GuidePage::Winter, reader);
    const DecisionConstants& d = reader.reference.decisions;
    page.say(say::Guide::tr(
        "In winter you help from outside. Go round every two weeks and after each storm: entrance, weight, tracks."));
    page.show(
        GuideDrawing::Snow,
        say::Guide::tr("A hive in snow: snow around it may stay, the entrance is free and behind a mouse guard."));
    page.point(
        say::Guide::tr("Entrance"),
        say::Guide::tr(
            "Keep it open: draw dead bees out with a bent wire, break ice away. Loose snow around the hive is a coat. Fit a mouse guard, openings about %1, before days stay below %2.")
            .arg(page.ruled("rule-177", "8", "mm"), page.ruled("rule-175", "5", "\u00b0C")));
    page.point(
        say::Guide::tr("Weight"),
        say::Guide::tr(
            "Heft the same side each time, or read the scale. Loss is slow until brood begins, then several times as fast."));
    page.show(
        GuideDrawing::Reach,
        say::Guide::tr(
            "Left: stores touch the cluster. Right: empty %{combs} lie between, and in the cold the bees do not cross them."));
    page.point(
        say::Guide::tr("In reach"),
        say::Guide::tr(
            "The cluster eats only what it touches. %1 empty %{combs} between it and the stores are a wall in the cold: on a day of %2 hang a full %{comb} against the bees.")
            .arg(page.whole(d.gapCombs), page.ruled("rule-151", briefLookFrom, "\u00b0C")));
    page.point(
        say::Guide::tr("Act now"),
        say::Guide::tr(
            "It comes up by itself when hefted; food for fewer than %1 days; bees right under the lid with no capped comb beside them; bees head down in empty cells. Lay fondant on the bees today, weigh, and come again.")
            .arg(page.whole(d.actNowDays)));
    page.point(
        say::Guide::tr("Dead"),
        say::Guide::tr(
            "Close it the same day, or robbers carry away what killed it. Nothing of it goes to another colony until disease is ruled out."));
    page.say(say::Guide::tr(
        "Signs of disease are for the bee inspector, medicines for the vet and the label. Local codes on registering, moving, feeding and burning come before anything said here. No honey for children under twelve months."));
    return page.from({"b-thenet", "melathopoulos", "nbu-bpg7", "apisavoir", "bee-safe", "inspq", "common-practice"});
}

} // namespace winterlarder::text
