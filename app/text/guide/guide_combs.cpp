// SPDX-License-Identifier: GPL-3.0-or-later
// What a comb holds, what is in its cells, and how bees and brood are counted.
#include "stores/bees.h"
#include "stores/evidence.h"
#include "text/guide/guide_numbers.h"
#include "text/guide/guide_parts.h"

#include <cmath>

namespace winterlarder::text {

namespace {

GuideTable combsOfHives(const GuideWriter& page) {
    GuideTable table{{guideHiveHeading(), say::Guide::tr("All of it, both faces"), say::Guide::tr("Half of it"),
                      say::Guide::tr("One field of one face")},
                     {}};
    for (const GuideHive& hive : hivesOf(page.reader))
        table.rows.push_back({hive.name, page.kg(capped(hive, 1)), page.kg(capped(hive, 0.5)),
                              QString::fromStdString(format(oneField(hive), page.reader.style.numbers, 2))});
    return table;
}

GuideTable beesOfHives(const GuideWriter& page) {
    constexpr double hundred = 100;
    GuideTable table{{guideHiveHeading(), say::Guide::tr("Bees of a seam, or of a covered %{comb}")}, {}};
    for (const GuideHive& hive : hivesOf(page.reader))
        table.rows.push_back({hive.name, page.whole(hundred * std::round(beesOfASeam(hive).count / hundred))});
    return table;
}

} // namespace

GuideText guideFullComb(const GuideReader& reader) {
    GuideWriter page(GuidePage::FullComb, reader);
    const GuideHive hive = exampleHive(reader);
    GuideHive wider = hive;
    wider.format.pitch += millimetres(3);
    page.say(say::Guide::tr(
        "Hold the %{comb} over the hive and ask one thing of each face: what share of the comb is capped? Leave the wood out."));
    page.show(GuideDrawing::Eighths,
              say::Guide::tr("One face of a comb of %1 cut into eight fields. Here %2 of the face is capped.")
                  .arg(hive.name, page.percent(0.5)));
    page.point(
        say::Guide::tr("Count fields"),
        say::Guide::tr(
            "Think of the face as eight fields, four across and two down. Count those that are capped; two half ones make one."));
    page.point(
        say::Guide::tr("Both faces"),
        say::Guide::tr(
            "They seldom match: judge both and take the mean. Where only one was seen, say so; it counts as less sure."));
    page.point(
        say::Guide::tr("Bands deceive"),
        say::Guide::tr(
            "A band under the top bar looks like more than it is. A band of a quarter of the height is a quarter of the comb."));
    page.show(
        GuideDrawing::PartFull,
        say::Guide::tr(
            "A quarter, a half and three quarters of a comb of %1 capped, and what each holds with both faces alike.")
            .arg(hive.name));
    page.point(say::Guide::tr("By the palm"),
               say::Guide::tr("A palm of capped comb, %1 by %1, holds about %2 with both faces capped.")
                   .arg(page.length(millimetres(100)),
                        QString::fromStdString(format(cappedPalm(hive), reader.style.numbers, 2))));
    page.point(
        say::Guide::tr("Thick combs"),
        say::Guide::tr(
            "The wider combs hang, the thicker they are drawn. With %1 from comb to comb instead of %2 a full one holds %3 instead of %4: give the width where it differs.")
            .arg(page.length(wider.format.pitch), page.length(hive.format.pitch), page.kg(capped(wider, 1)),
                 page.kg(capped(hive, 1))));
    page.point(say::Guide::tr("\u201cFull\u201d"),
               say::Guide::tr(
                   "A comb called full has rims. Where combs were only counted, a full one is therefore taken for %1.")
                   .arg(page.kg(stores::quickFullComb(hive.format))));
    page.say(say::Guide::tr("Capped honey of one %{comb}:"));
    page.table(combsOfHives(page));
    return page.from({"hive-tables", "demuth-503", "phillips-bees", "imdorf-liebefeld"});
}

GuideText guideCells(const GuideReader& reader) {
    GuideWriter page(GuidePage::Cells, reader);
    page.say(say::Guide::tr(
        "Five things may be in a cell. Stand with the sun over your shoulder, so that it shines into the cells."));
    page.show(
        GuideDrawing::CellKinds,
        say::Guide::tr(
            "Cells face on: capped honey, open nectar, bee bread, sealed brood, eggs and grubs, and empty ones."));
    page.point(
        say::Guide::tr("Capped honey"),
        say::Guide::tr(
            "Flat or slightly sunken lids of wax, white to brown, without holes. Dry-looking lids have air under them, wet-looking ones touch the honey; both count in full."));
    page.point(
        say::Guide::tr("Open nectar or syrup"),
        say::Guide::tr(
            "Glistens. Hold the %{comb} flat and jerk it once: what spatters is raw. Its area counts for %1 of capped honey within a week of a feed or a flow, later for %2.")
            .arg(page.percent(stores::openFactor(true)), page.percent(stores::openFactor(false))));
    page.point(
        say::Guide::tr("Bee bread"),
        say::Guide::tr(
            "Matt and packed, in many colours. It feeds brood, is no winter food, and makes a %{comb} feel heavy."));
    page.point(
        say::Guide::tr("Sealed brood"),
        say::Guide::tr(
            "Even tan lids, slightly domed, matt as a biscuit. Sunken, greasy or pierced lids are signs of disease: close the hive, move nothing, call the bee inspector."));
    page.point(
        say::Guide::tr("Eggs and grubs"),
        say::Guide::tr(
            "Eggs stand like tiny grains of rice, grubs lie curled and white. Eggs mean a queen within three days. Late in the year there may be none."));
    page.show(
        GuideDrawing::Zones,
        say::Guide::tr(
            "Where they lie on a %{comb}: capped honey in an arch on top, open nectar under it, brood in the lower middle with bee bread around."));
    page.say(
        say::Guide::tr(
            "Write down the share of each; what is left is empty. From syrup to sealed takes %1 weeks, so what is open when the cold begins often stays so. Honey for people: only %{combs} with at least %2 of their stores capped.")
            .arg(page.ruled("rule-075", "4-6"), page.ruled("rule-117", "2/3")));
    return page.from({"honey-course", "bee-safe", "nbu-bpg7", "common-practice"});
}

GuideText guideBees(const GuideReader& reader) {
    GuideWriter page(GuidePage::Bees, reader);
    const ModelConstants& k = reader.reference.constants;
    page.say(say::Guide::tr(
        "Count on a cool morning before they fly, when all are at home. At noon many are out. Count before you smoke: smoke moves them."));
    page.show(
        GuideDrawing::Seams,
        say::Guide::tr(
            "A box from above: bees fill four gaps between the %{combs} from end to end and two by half, which makes five seams."));
    page.point(
        say::Guide::tr("Seams"),
        say::Guide::tr(
            "Lift lid and cover and look down. A gap filled with bees from end to end is one seam, half filled it is a half. With two boxes tip the upper one and count the lower one too. "
            "Seams are good to %1.")
            .arg(page.percent(k.beesSeamsSd)));
    page.point(
        say::Guide::tr("Covered %{combs}"),
        say::Guide::tr(
            "A %{comb} so full of bees on both sides that hardly any cell shows is one; one side is a half. A loose cover shows comb between the bees and counts for half to two thirds. "
            "This is good to %1.")
            .arg(page.percent(k.beesSd)));
    page.point(
        say::Guide::tr("In the cold"),
        say::Guide::tr(
            "The cluster draws together and fills fewer seams than there are bees for. Write it down as seen in winter, not as a count."));
    page.point(
        say::Guide::tr("Brood"),
        say::Guide::tr(
            "Lay your palm on it: %1 by %1 of one face are %2 cells. Judge it as a share of the comb, like honey. It tells whether the queen lays, and what food and warmth it will take.")
            .arg(page.length(millimetres(100)), page.whole(stores::cellsPerSquareDecimetre)));
    page.show(
        GuideDrawing::Brood,
        say::Guide::tr("The last brood of the year: a patch of the size of a palm near the middle of a %{comb}."));
    page.point(
        say::Guide::tr("Too few"),
        say::Guide::tr(
            "Under %1 well covered %{combs}, or %2 bees, before winter: unite with a healthy neighbour, unless it is a nucleus kept small on purpose.")
            .arg(page.ruled("rule-155", "4"), page.whole(reader.reference.decisions.weakBees)));
    page.table(beesOfHives(page));
    return page.from({"hive-tables", "simpson-1969", "imdorf-liebefeld", "judgement"});
}

} // namespace winterlarder::text
