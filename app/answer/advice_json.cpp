// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/advice_json.h"

#include "answer/follow_json.h"
#include "answer/json_values.h"
#include "answer/style_of_place.h"
#include "text/ask_words.h"
#include "text/remarks.h"
#include "text/task_words.h"
#include "text/words.h"

#include <cmath>
#include <fmt/format.h>

namespace winterlarder::answer {

using exchange::Json;

namespace {

Json visitsJson(const std::vector<feeding::Visit>& visits) {
    Json list = Json::list();
    for (const feeding::Visit& visit : visits)
        list.push(Json::object()
                      .add("date", visit.date.iso())
                      .add("kind", word(visit.kind))
                      .add("sugar_kg", json(visit.sugar))
                      .add("syrup_l", visit.syrup.value())
                      .add("fondant_kg", json(visit.fondant)));
    return list;
}

std::string_view feedKind(const feeding::FeedingPlan& plan) {
    const bool syrup = plan.syrup.sugar.value() > 0, fondant = plan.fondant.value() > 0;
    if (syrup && fondant) return "both";
    return fondant ? "fondant" : "syrup";
}

} // namespace

Json feedJson(const std::optional<feeding::FeedingPlan>& plan, const Winter& winter) {
    if (!plan) return {};
    Json feed = Json::object();
    feed.add("kind", feedKind(*plan))
        .add("sugar_kg", json(plan->syrup.sugar))
        .add("water_l", plan->syrup.water.value())
        .add("syrup_l", plan->syrup.volume.value())
        .add("ratio", plan->ratio.printed)
        .add("fondant_kg", json(plan->fondant))
        .add("last_day", plan->lastDay ? Json(winter.date(*plan->lastDay).iso()) : Json())
        .add("visits", visitsJson(plan->visits))
        .add("stores_kg", json(plan->stores));
    return feed;
}

Json remarksJson(const std::vector<advice::Remark>& remarks, const ReferenceData& reference,
                 const text::WordStyle& style) {
    Json list = Json::list();
    for (const advice::Remark& remark : remarks) {
        const auto sources = reference.sourcesOf(remark);
        list.push(Json::object()
                      .add("id", remark.id)
                      .add("text", text::sentence(remark, style).toStdString())
                      .add("source", sources.empty() ? Json() : Json(sources.front())));
    }
    return list;
}

namespace {

std::optional<Spread<Mass>> storesSpread(const advice::Advice& advice) {
    return advice.estimate ? std::optional(advice.estimate->spread) : std::nullopt;
}

Json monthsJson(const std::vector<advice::MonthUse>& months) {
    Json list = Json::list();
    for (const advice::MonthUse& month : months) {
        Json entry = Json::object();
        entry.add("month", fmt::format("{:04}-{:02}", month.year, month.month));
        addSpread(entry, month.use);
        list.push(std::move(entry));
    }
    return list;
}

Json positions(const std::vector<int>& combs) {
    Json list = Json::list();
    for (int comb : combs) list.push(comb);
    return list;
}

Json harvestJson(const std::optional<advice::HarvestAdvice>& harvest) {
    if (!harvest) return {};
    return Json::object()
        .add("up_to_kg", json(harvest->upTo))
        .add("combs", positions(harvest->combs))
        .add("combs_hold_kg", json(harvest->combsHold));
}

// What becomes of two colonies together is said by the plan of their yard.
Json uniteJson(const advice::UniteAdvice& unite, const text::WordStyle& style) {
    return Json::object()
        .add("name", "unite")
        .add("partner", unite.partner.empty() ? Json() : Json(unite.partner))
        .add("by", unite.by.iso())
        .add("how", text::howToUnite(unite, style).toStdString());
}

Json optionsJson(const advice::Advice& advice, const text::WordStyle& style) {
    Json list = Json::list();
    for (const advice::Option& option : advice.options)
        list.push(option.kind == advice::OptionKind::Unite && advice.unite
                      ? uniteJson(*advice.unite, style)
                      : Json::object()
                            .add("name", word(option.kind))
                            .add("amount_kg", json(option.amount))
                            .add("stores_after_kg", json(option.storesAfter))
                            .add("run_out", json(option.runOut))
                            .add("touch_reserve", json(option.touchReserve))
                            .add("spring_reserve_kg", json(option.springReserve)));
    return list;
}

Json lookJson(const advice::Advice& advice, const text::WordStyle& style) {
    const advice::AnotherLook& look = advice.anotherLook;
    const bool said = advice.verdict != advice::Verdict::CannotSay;
    return Json::object()
        .add("worth_it", look.worthIt)
        .add("which", look.which ? Json(word(*look.which)) : Json())
        .add("why", said ? Json(text::lookSentence(advice, style).toStdString()) : Json());
}

Json giftsJson(const std::vector<advice::CombGift>& gifts) {
    Json list = Json::list();
    for (const advice::CombGift& gift : gifts)
        list.push(Json::object()
                      .add("from", gift.from)
                      .add("to", gift.to)
                      .add("combs", positions(gift.combs))
                      .add("back", positions(gift.back))
                      .add("kg", json(gift.honey)));
    return list;
}

//! The other side of each gift: where combs come from, or where they go to.
Json sharedJson(const std::vector<advice::CombGift>& gifts, std::string advice::CombGift::*other) {
    Json list = Json::list();
    for (const advice::CombGift& gift : gifts)
        list.push(
            Json::object().add("colony", gift.*other).add("combs", positions(gift.combs)).add("kg", json(gift.honey)));
    return list;
}

Json planJson(const advice::PartInYard& part) {
    return Json::object()
        .add("combs_from", sharedJson(part.received, &advice::CombGift::from))
        .add("combs_to", sharedJson(part.given, &advice::CombGift::to))
        .add("unite_with", part.uniteWith.empty() ? Json() : Json(part.uniteWith));
}

Json partsJson(const std::optional<advice::NeedParts>& parts) {
    if (!parts) return {};
    return Json::object()
        .add("typical_use", json(parts->typicalUse))
        .add("harder_winter", json(parts->harderWinter))
        .add("reserve", json(parts->reserve));
}

Json targetJson(const std::optional<advice::Target>& target) {
    if (!target) return {};
    Json usual;
    if (target->usual)
        usual = Json::object()
                    .add("low_kg", json(target->usual->low))
                    .add("high_kg", json(target->usual->high))
                    .add("source", target->usual->source)
                    .add("place", target->usual->place);
    return Json::object()
        .add("date", target->date.iso())
        .add("stores_kg", json(target->stores))
        .add("combs", target->combs)
        .add("gross_kg", json(target->gross))
        .add("tare_kg", json(target->tare))
        .add("tare_from", target->tareGiven ? "given" : "assumed")
        .add("usual_here", std::move(usual));
}

Json untilJson(const std::optional<advice::UntilTarget>& until) {
    if (!until) return {};
    return Json::object().add("eaten_kg", json(until->eaten)).add("found_kg", json(until->found));
}

Json weighLineJson(const std::vector<advice::WeighPoint>& line) {
    Json list = Json::list();
    for (const advice::WeighPoint& point : line)
        list.push(Json::object().add("date", point.date.iso()).add("gross_kg", json(point.gross)));
    return list;
}

Json laterJson(const std::optional<advice::ExpectedLater>& later) {
    if (!later) return {};
    return Json::object()
        .add("sugar_kg", json(later->sugar))
        .add("fondant_kg", json(later->fondant))
        .add("from", later->from.iso())
        .add("until", later->until.iso());
}

Json askJson(const std::optional<advice::Ask>& ask, const text::WordStyle& style) {
    if (!ask) return {};
    return Json::object()
        .add("id", text::idOf(ask->kind))
        .add("text", text::question(*ask, style).toStdString())
        .add("key", text::keyOf(ask->kind));
}

void addTarget(Json& answer, const advice::Advice& advice, const text::WordStyle& style) {
    answer.add("target", targetJson(advice.target))
        .add("until_target", untilJson(advice.untilTarget))
        .add("missing_kg", jsonOrNull(advice.missing))
        .add("dead_band_kg", advice.missing ? json(advice.deadBand) : Json())
        .add("capacity_kg", jsonOrNull(advice.capacity))
        .add("weigh_line", weighLineJson(advice.weighLine))
        .add("expected_later", laterJson(advice.expectedLater))
        .add("next_look", advice.nextLook ? Json(advice.nextLook->date.iso()) : Json())
        .add("next_look_what", advice.nextLook ? Json(word(advice.nextLook->what)) : Json())
        .add("ask", askJson(advice.ask, style));
}

void addNumbers(Json& answer, const advice::Advice& advice) {
    answer.add("stores_kg", jsonOrNull(storesSpread(advice)))
        .add("bees", jsonOrNull(advice.bees))
        .add("use_kg", jsonOrNull(advice.use))
        .add("use_by_month_kg", monthsJson(advice.useByMonth))
        .add("need_kg", jsonOrNull(advice.need))
        .add("need_parts_kg", partsJson(advice.needParts))
        .add("need_if_stopped_kg", jsonOrNull(advice.needIfStopped))
        .add("short_risk", advice.shortRisk)
        .add("reserve_kg", json(advice.reserve))
        .add("spring_reserve_kg", jsonOrNull(advice.springReserve))
        .add("run_out", jsonOrNull(advice.runOut))
        .add("touch_reserve", jsonOrNull(advice.touchReserve));
}

Json seasonJson(const advice::Advice& advice, const Winter& winter) {
    Json season = Json::object();
    season.add("winter_class", word(advice.season.winterClass));
    addSeasonDates(season, advice.season, winter, true);
    return season;
}

// Learned values are there only in answers out of a book that learned something.
void addLearned(Json& answer, const advice::ColonyQuestion& question) {
    const auto& from = question.learnedFrom;
    if (!question.learned && from.forageYears == 0) return;
    Json learned = Json::object();
    if (question.learned) {
        const auto& l = *question.learned;
        learned.add("winters", from.winters)
            .add("use", multiplierJson({std::log(l.use), l.useLogSd}))
            .add("death", multiplierJson({std::log(l.death), l.deathLogSd}));
    }
    if (from.forageYears > 0)
        learned.add("forage_years", from.forageYears).add("forage_shift_days", from.forageShiftDays);
    answer.add("learned", std::move(learned));
}

} // namespace

Json adviceJson(const book::ColonyCase& record, const advice::ColonyQuestion& question, const advice::Advice& advice,
                const ReferenceData& reference, const text::WordStyle& style) {
    const text::WordStyle told = styleFor(style, question);
    Json answer = Json::object();
    answer.add("colony", record.colony).add("yard", record.yard).add("as_of", record.asOf.iso());
    answer.add("phase", advice.phase ? Json(word(*advice.phase)) : Json())
        .add("verdict", word(advice.verdict))
        .add("headline", text::headline(advice, told).toStdString());
    addNumbers(answer, advice);
    addTarget(answer, advice, told);
    answer.add("harvest", harvestJson(advice.harvest))
        .add("feed", feedJson(advice.feed, question.winter))
        .add("options", optionsJson(advice, told))
        .add("another_look", lookJson(advice, told))
        .add("cautions", remarksJson(advice.cautions, reference, told))
        .add("good_practice", remarksJson(advice.goodPractice, reference, told))
        .add("reasons", remarksJson(advice.reasons, reference, told))
        .add("combs_moved", giftsJson(advice.gifts))
        .add("free_room_kg", jsonOrNull(advice.freeRoom))
        .add("locked_in_days", advice.lockedInDays)
        .add("season", seasonJson(advice, question.winter))
        .add("seed", advice.seed)
        .add("winters", advice.winters);
    if (advice.plan) answer.add("plan", planJson(*advice.plan));
    addLearned(answer, question);
    return answer;
}

} // namespace winterlarder::answer
