// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/advice.h"
#include "answer/doubt_words.h"
#include "answer/json_values.h"
#include "answer/style_of_place.h"
#include "cli/commands.h"
#include "cli/table.h"
#include "text/contexts.h"
#include "text/foreign_text.h"
#include "text/remarks.h"
#include "text/words.h"

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

using exchange::Json;

Json evidenceJson(const advice::StoresToday& today) {
    Json list = Json::list();
    if (!today.estimate) return list;
    for (const stores::EvidenceShare& share : today.estimate->shares)
        list.push(Json::object()
                      .add("kind", stores::idOf(share.evidence.kind))
                      .add("date", share.evidence.date.iso())
                      .add("stores_kg", json(share.says))
                      .add("weight", share.weight));
    return list;
}

Json combsJson(const advice::StoresToday& today) {
    Json list = Json::list();
    if (!today.combs) return list;
    for (const stores::CombStores& comb : *today.combs)
        list.push(Json::object().add("capped_kg", json(comb.capped)).add("open_kg", json(comb.open)));
    return list;
}

Json storesJson(const book::ColonyCase& record, const advice::StoresToday& today, const std::vector<Remark>& setAside,
                const text::WordStyle& style) {
    Json answer = Json::object();
    answer.add("colony", record.colony).add("as_of", record.asOf.iso());
    answer.add("stores_kg", today.estimate ? json(today.estimate->spread) : Json())
        .add("bees", jsonOrNull(today.bees))
        .add("evidence", evidenceJson(today))
        .add("contradictory", today.estimate && today.estimate->contradictory)
        .add("combs", combsJson(today))
        .add("free_room_kg", jsonOrNull(today.freeRoom));
    if (!setAside.empty()) answer.add("set_aside", setAsideJson(setAside, style));
    return answer;
}

QString combsText(const std::vector<stores::CombStores>& combs, const text::WordStyle& style) {
    TextTable table({text::worded(say::CommandLine::tr(">%{Comb}"), style), say::CommandLine::tr(">Capped"),
                     say::CommandLine::tr(">Open, as ripe honey")});
    for (std::size_t i = 0; i < combs.size(); ++i)
        table.add({QString::number(i + 1), text::mass(combs[i].capped, style), text::mass(combs[i].open, style)});
    return table.text();
}

QString evidenceText(const stores::StoresEstimate& estimate, const text::WordStyle& style) {
    TextTable table({say::CommandLine::tr("What says so"), say::CommandLine::tr("Seen on"),
                     say::CommandLine::tr(">Stores"), say::CommandLine::tr(">Weight")});
    for (const stores::EvidenceShare& share : estimate.shares)
        table.add({text::evidence(stores::idOf(share.evidence.kind), style), text::date(share.evidence.date, style),
                   text::amount(share.says, style), text::number(share.weight, 2, style)});
    return table.text();
}

QString storesText(const book::ColonyCase& record, const advice::StoresToday& today,
                   const std::vector<Remark>& setAside, const text::WordStyle& style, const Session& session) {
    const QString name = record.colony ? text::shown(*record.colony) : say::CommandLine::tr("Colony without a name");
    QString text =
        session.strong(say::CommandLine::tr("%1, %2").arg(name, text::date(record.asOf, style))) + QLatin1Char('\n');
    FactList facts;
    facts.add(say::CommandLine::tr("Stores"),
              today.estimate ? text::amount(today.estimate->spread, style) : say::CommandLine::tr("not known"));
    facts.add(say::CommandLine::tr("Bees"),
              today.bees ? text::bees(*today.bees, style) : say::CommandLine::tr("not known"));
    if (today.freeRoom)
        facts.add(text::worded(say::CommandLine::tr("Room in the %{combs}"), style),
                  text::amount(*today.freeRoom, style));
    text += facts.text();
    if (today.estimate) text += QLatin1Char('\n') + evidenceText(*today.estimate, style);
    if (today.estimate && today.estimate->contradictory)
        text +=
            wrapped(say::CommandLine::tr("These contradict each other; the answer spans both."), QStringLiteral("  "));
    text += setAsideText(setAside, style);
    if (today.combs && !today.combs->empty()) text += QLatin1Char('\n') + combsText(*today.combs, style);
    return text;
}

} // namespace

Status stores(Session& session, const std::string& caseFile) {
    const auto text = textOf(caseFile, session.in, limits::caseText);
    if (!text) return session.fail(text.problems());
    const auto read = answer::readQuestion(*text, shownName(caseFile), session.reference, 0);
    if (!read) return session.fail(read.problems());
    session.ask(read->asked);
    const auto today =
        advice::storesToday(read->question, session.reference.constants, session.sampling, session.threads);
    const auto style = styleFor(session.style, read->question);
    if (session.json) session.print(storesJson(read->record, today, read->question.setAside, style));
    else session.print(storesText(read->record, today, read->question.setAside, style, session));
    return Status::Done;
}

} // namespace winterlarder::cli
