// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/record_rows.h"

#include "book/entries/date_of.h"
#include "models/colony_edits.h"
#include "models/words.h"
#include "text/choice_words.h"
#include "text/contexts.h"
#include "text/story.h"

#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <tuple>

namespace winterlarder::desk {

namespace {

QString of(const std::string& text) { return QString::fromStdString(text); }
QString plain(double number) { return QLocale().toString(number, 'g', 6); }

QString beesWords(const book::BeesRecord& bees) {
    switch (beesToldBy(bees)) {
    case BeesToldBy::CoveredCombs:
        return words::worded(say::RecordRows::tr("bees on %1 %{combs}")).arg(plain(beesTold(bees)));
    case BeesToldBy::Seams: return say::RecordRows::tr("%1 seams of bees").arg(plain(beesTold(bees)));
    case BeesToldBy::Count: return say::RecordRows::tr("%1 bees").arg(QLocale().toString(beesTold(bees), 'f', 0));
    case BeesToldBy::NotTold: break;
    }
    return {};
}

QString combsWords(const book::CombsRecord& combs) {
    if (const auto* list = std::get_if<std::vector<book::CombRecord>>(&combs)) {
        const auto count = static_cast<int>(list->size());
        return count == 1 ? words::worded(say::RecordRows::tr("one %{comb} looked at"))
                          : words::worded(say::RecordRows::tr("%n %{combs} looked at", nullptr, count));
    }
    if (const auto* quick = std::get_if<book::QuickCountRecord>(&combs))
        return words::worded(say::RecordRows::tr("%1 %{combs} full, %2 half full, by count"))
            .arg(plain(quick->fullOfStores), plain(quick->half));
    return {};
}

void saidIf(QStringList& said, const std::optional<bool>& fact, const QString& yes, const QString& no) {
    if (fact) said << (*fact ? yes : no);
}

QString details(const book::Look& look) {
    QStringList said{combsWords(look.combs), beesWords(look.bees)};
    saidIf(said, look.bees.queenSeen, say::RecordRows::tr("queen seen"), say::RecordRows::tr("queen not seen"));
    saidIf(said, look.bees.eggsSeen, say::RecordRows::tr("eggs"), say::RecordRows::tr("no eggs"));
    saidIf(said, look.sealedBrood, say::RecordRows::tr("sealed brood"), say::RecordRows::tr("no sealed brood"));
    saidIf(said, look.pollenComingIn, say::RecordRows::tr("pollen coming in"),
           say::RecordRows::tr("no pollen coming in"));
    if (look.temper) said << text::choice(*look.temper);
    if (look.bees.trouble) said << say::RecordRows::tr("signs of disease");
    said << of(look.troubleSigns) << of(look.note);
    said.removeAll(QString());
    return said.join(say::RecordRows::tr("; "));
}

QString withNote(const QString& said, const std::string& note) {
    return note.empty() ? said : said.isEmpty() ? of(note) : say::RecordRows::tr("%1; %2").arg(said, of(note));
}

QString details(const book::Weighing& weighing) {
    const auto& reading = weighing.weighing.reading;
    QString said;
    if (const auto* scale = std::get_if<book::ScaleReading>(&reading))
        said = say::RecordRows::tr("on a scale: %1").arg(words::kilograms(scale->gross));
    if (const auto* heft = std::get_if<book::HeftWord>(&reading))
        said = say::RecordRows::tr("hefted: %1").arg(text::choice(*heft));
    if (const auto* lift = std::get_if<book::LiftReading>(&reading))
        said = lift->sides.size() > 1
                   ? say::RecordRows::tr("both sides lifted: %1 and %2")
                         .arg(words::kilograms(lift->sides[0]), words::kilograms(lift->sides[1]))
                   : say::RecordRows::tr("one side lifted: %1").arg(words::kilograms(lift->sides[0]));
    return withNote(said, weighing.note);
}

QString details(const book::Feed& feed) {
    QStringList said{text::choice(feed.feed.kind)};
    if (feed.feed.sugar) said << say::RecordRows::tr("%1 of sugar").arg(words::kilograms(*feed.feed.sugar));
    if (feed.feed.syrup)
        said
            << (feed.feed.ratio
                    ? say::RecordRows::tr("%1, %2 by weight").arg(words::litres(*feed.feed.syrup), of(*feed.feed.ratio))
                    : words::litres(*feed.feed.syrup));
    if (feed.feed.fondant) said << words::kilograms(*feed.feed.fondant);
    return withNote(said.join(say::RecordRows::tr(", ")), feed.note);
}

QString details(const book::Harvest& harvest) {
    QString said = words::kilograms(harvest.harvest.honey);
    if (harvest.combs)
        said = *harvest.combs == 1
                   ? words::worded(say::RecordRows::tr("%1 on one %{comb}")).arg(said)
                   : words::worded(say::RecordRows::tr("%1 on %n %{combs}", nullptr, *harvest.combs)).arg(said);
    return withNote(said, harvest.note);
}

QString details(const book::Treatment& treatment) {
    const QString until =
        treatment.until ? say::RecordRows::tr("%1, until %2").arg(of(treatment.what), words::date(*treatment.until))
                        : say::RecordRows::tr("%1, not ended yet").arg(of(treatment.what));
    return withNote(until, treatment.note);
}

QString details(const book::Manipulation& work) {
    const QString said = work.count ? say::RecordRows::tr("%1: %2").arg(text::choice(work.what, words::style()),
                                                                        QLocale().toString(*work.count))
                                    : text::choice(work.what, words::style());
    return withNote(said, work.note);
}

QString details(const book::Fate& fate) {
    return withNote(fate.cause.empty() ? text::choice(fate.fate)
                                       : say::RecordRows::tr("%1: %2").arg(text::choice(fate.fate), of(fate.cause)),
                    fate.note);
}

QString details(const book::Housing& housing) {
    const auto boxes = static_cast<int>(housing.hive.boxes.size());
    return withNote(boxes == 1
                        ? say::RecordRows::tr("one box, %1").arg(text::choice(housing.hive.shell))
                        : say::RecordRows::tr("%n boxes, %1", nullptr, boxes).arg(text::choice(housing.hive.shell)),
                    housing.note);
}

QString details(const book::Move& move) { return withNote(say::RecordRows::tr("to another yard"), move.note); }

QString details(const book::ActedAdvice& advice) {
    return withNote(
        say::RecordRows::tr("%1; from %n simulated winters", nullptr, advice.winters).arg(of(advice.verdict)),
        advice.note);
}

QString details(const book::PlannedVisit& visit) {
    QStringList said{text::choice(visit.what)};
    if (visit.sugar) said << say::RecordRows::tr("%1 of sugar").arg(words::amount(*visit.sugar));
    if (visit.syrup) said << text::amount(*visit.syrup, words::style());
    if (visit.fondant) said << words::amount(*visit.fondant);
    const QString what = said.join(say::RecordRows::tr(", "));
    const QString state =
        visit.doneOn ? say::RecordRows::tr("%1 on %2").arg(text::choice(visit.state), words::date(*visit.doneOn))
                     : text::choice(visit.state);
    return withNote(say::RecordRows::tr("%1: %2").arg(state, what), visit.note);
}

QString details(const book::WinterOutcome& outcome) {
    QStringList said{outcome.alive ? say::RecordRows::tr("alive") : say::RecordRows::tr("dead")};
    if (outcome.coveredCombs)
        said << words::worded(say::RecordRows::tr("bees on %1 %{combs}")).arg(plain(*outcome.coveredCombs));
    if (outcome.storesLeft) said << say::RecordRows::tr("%1 of stores left").arg(words::kilograms(*outcome.storesLeft));
    saidIf(said, outcome.foodLeft, say::RecordRows::tr("food within reach"),
           say::RecordRows::tr("no food within reach"));
    saidIf(said, outcome.headsInCells, say::RecordRows::tr("heads in the cells"),
           say::RecordRows::tr("no heads in the cells"));
    saidIf(said, outcome.mitesOnFloor, say::RecordRows::tr("many mites"), say::RecordRows::tr("few mites"));
    if (outcome.broodPattern) said << say::RecordRows::tr("brood: %1").arg(text::choice(*outcome.broodPattern));
    saidIf(said, outcome.queen, say::RecordRows::tr("queen found"), say::RecordRows::tr("no queen found"));
    return withNote(said.join(say::RecordRows::tr(", ")), outcome.note);
}

QString details(const book::Sighting& sighting) {
    QStringList said{text::choice(sighting.saw)};
    if (sighting.seams) said << say::RecordRows::tr("%1 seams of bees").arg(plain(*sighting.seams));
    saidIf(said, sighting.stores, say::RecordRows::tr("stores in sight"), say::RecordRows::tr("no stores in sight"));
    return withNote(said.join(say::RecordRows::tr(", ")), sighting.note);
}

bool onlyNote(const book::Look& look) {
    return look.bees == book::BeesRecord{} && std::holds_alternative<std::monostate>(look.combs) && !look.note.empty();
}

QString nameOf(const book::Look& look) {
    return onlyNote(look) ? say::RecordRows::tr("note") : text::kindName(book::Kind::Look);
}
template <class Entry> QString nameOf(const Entry&) { return text::kindName(book::kindOf<Entry>); }

template <class Entry> void addRows(std::vector<RecordRow>& rows, const std::vector<Entry>& entries) {
    for (const auto& entry : entries)
        rows.push_back({dateOf(entry), book::kindOf<Entry>, entry.id.number, nameOf(entry), details(entry)});
}

} // namespace

std::vector<RecordRow> recordRows(const book::ColonyHistory& records) {
    std::vector<RecordRow> rows;
    book::eachList(records, [&rows](const auto& list) { addRows(rows, list); });
    std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) {
        return std::tuple(b.date, a.kind, b.id) < std::tuple(a.date, b.kind, a.id);
    });
    return rows;
}

std::vector<RecordRow> recordRows(const book::ColonyHistory& records, const std::vector<book::Kind>& kinds) {
    auto rows = recordRows(records);
    std::erase_if(rows,
                  [&](const RecordRow& row) { return std::find(kinds.begin(), kinds.end(), row.kind) == kinds.end(); });
    return rows;
}

} // namespace winterlarder::desk
