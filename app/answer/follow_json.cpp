// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/follow_json.h"

#include "answer/advice_json.h"
#include "answer/dead_hive.h"
#include "answer/followed_advice.h"
#include "answer/json_values.h"
#include "answer/style_of_place.h"

#include "numerics/normal_law.h"
#include "text/follow_words.h"
#include "text/remarks.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::answer {

using exchange::Json;

namespace {

std::string_view word(tracking::SeenKind kind) {
    using tracking::SeenKind;
    switch (kind) {
    case SeenKind::Scale: return "scale";
    case SeenKind::TwoSidedLift: return "two-sided lift";
    case SeenKind::OneSidedLift: return "one-sided lift";
    case SeenKind::Heft: return "heft";
    case SeenKind::Combs: return "combs";
    case SeenKind::Bees: return "bees";
    case SeenKind::Cluster: return "cluster";
    case SeenKind::Flying: return "flying";
    case SeenKind::Glimpse: return "glimpse";
    case SeenKind::Dead: break;
    }
    return "dead";
}

class FollowDocument {
public:
    FollowDocument(const FollowedColony& colony, const tracking::Following& following, const ReferenceData& data,
                   const text::WordStyle& style)
        : colony_(colony), q(*colony.question), f(following), reference(data), style_(styleFor(style, colony.autumn)) {}

    void fill(Json& answer, bool daily) const {
        answer.add("decided", iso(q.decided))
            .add("state", tracking::word(f.state))
            .add("position", f.fitsNoWinter ? Json() : Json(f.position))
            .add("headline", text::followHeadline(q, f, style_).toStdString())
            .add("short_risk", q.shortRisk)
            .add("reserve_kg", json(q.reserve));
        if (f.state == tracking::FollowState::Dead) answer.add("questions", questions()).add("points_to", pointed());
        if (f.fitsNoWinter) answer.add("observations", observations());
        else figures(answer, daily);
        answer.add("reasons", remarksJson(f.reasons, reference, style_))
            .add("cautions", remarksJson(f.cautions, reference, style_))
            .add("good_practice", remarksJson(f.goodPractice, reference, style_));
    }

private:
    void figures(Json& answer, bool daily) const {
        forecast(answer, f.now);
        answer.add("reserve_by", daySpread(f.now.reserveBy))
            .add("out_by", daySpread(f.now.outBy))
            .add("forage", Json::object()
                               .add("low", iso(f.now.forage.low))
                               .add("typical", iso(f.now.forage.typical))
                               .add("high", iso(f.now.forage.high)));
        Json autumn = Json::object();
        forecast(autumn, f.autumn);
        answer.add("autumn", std::move(autumn))
            .add("missing_kg", json(f.missing))
            .add("feed", feed())
            .add("expected_later", later())
            .add("next_weighing", nextWeighing())
            .add("spring", spring());
        answer.add("observations", observations()).add("days", days(daily));
        answer.add("learned", learned()).add("effective_winters", f.effectiveWinters).add("drawn_again", f.drawnAgain);
    }

    static Json questions() {
        Json list = Json::list();
        for (const auto id : deathQuestions)
            list.push(Json::object().add("id", id).add("text", text::deathQuestion(id).toStdString()));
        return list;
    }

    // Nothing until one of them is answered.
    Json pointed() const {
        const auto found = colony_.deadHive ? pointsTo(*colony_.deadHive) : std::vector<PointsTo>{};
        if (found.empty()) return {};
        Json list = Json::list();
        for (const auto& each : found)
            list.push(Json::object()
                          .add("id", each.question)
                          .add("reason", each.says.id)
                          .add("text", text::sentence(each.says, style_).toStdString()));
        return list;
    }

    Json later() const {
        if (!f.expectedLater) return {};
        return Json::object()
            .add("sugar_kg", json(f.expectedLater->sugar))
            .add("fondant_kg", json(f.expectedLater->fondant))
            .add("from", iso(f.expectedLater->from))
            .add("until", iso(f.expectedLater->until));
    }

    std::string iso(SeasonDay day) const { return q.year.date(std::clamp(day, firstSeasonDay, lastSeasonDay)).iso(); }
    Json day(const std::optional<SeasonDay>& at) const { return at ? Json(iso(*at)) : Json(); }
    Json daySpread(const tracking::DaySpread& days) const {
        return Json::object().add("low", day(days.low)).add("typical", day(days.typical)).add("high", day(days.high));
    }

    static void forecast(Json& into, const tracking::Forecast& forecast) {
        into.add("stores_kg", json(forecast.today))
            .add("lost_kg", json(forecast.lost))
            .add("out", json(forecast.out))
            .add("run_out", json(forecast.runOut))
            .add("touch_reserve", json(forecast.touchReserve))
            .add("spring_reserve_kg", json(forecast.atForage));
    }

    Json feed() const {
        if (!f.feed) return {};
        Json lots = Json::list();
        for (const auto& lot : f.feed->lots)
            lots.push(Json::object().add("date", lot.date.iso()).add("fondant_kg", json(lot.fondant)));
        return Json::object()
            .add("stores_kg", json(f.feed->stores))
            .add("by", iso(f.feed->by))
            .add("until", iso(f.feed->until))
            .add("plan", feedJson(f.feed->plan, q.year))
            .add("fondant_kg", json(f.feed->fondant))
            .add("dry_sugar_kg", json(f.feed->drySugar))
            .add("lots", std::move(lots));
    }

    Json nextWeighing() const {
        if (!f.nextWeighing) return {};
        return Json::object().add("date", f.nextWeighing->date.iso()).add("changes", f.nextWeighing->changes);
    }

    Json spring() const {
        if (!f.spring) return {};
        Json combs = Json::list();
        for (int comb : f.spring->combs) combs.push(comb);
        return Json::object()
            .add("carries", iso(f.spring->carries.typical))
            .add("leave_kg", json(f.spring->leave))
            .add("surplus_kg", json(f.spring->surplus))
            .add("queen_room_kg", jsonOrNull(f.spring->queenRoom))
            .add("may_take", f.spring->mayTake)
            .add("combs", std::move(combs));
    }

    Json observations() const {
        Json list = Json::list();
        for (std::size_t i = 0; i < q.observations.size(); ++i) {
            const auto& seen = q.observations[i];
            Json entry = Json::object();
            entry.add("date", seen.date.iso()).add("kind", word(tracking::seenKind(seen)));
            if (seen.wet) entry.add("wet", true);
            const auto judged =
                std::find_if(f.judged.begin(), f.judged.end(), [&](const auto& each) { return each.observation == i; });
            if (judged != f.judged.end()) {
                if (tracking::isWeighed(seen))
                    entry.add("seen_kg", judged->seen)
                        .add("expected_kg", Json::object()
                                                .add("low", judged->expected.low)
                                                .add("typical", judged->expected.typical)
                                                .add("high", judged->expected.high));
                entry.add("contradicts", judged->contradicts);
            }
            list.push(std::move(entry));
        }
        return list;
    }

    Json days(bool daily) const {
        Json list = Json::list();
        for (std::size_t i = 0; i < f.now.bands.size() && i < f.autumn.bands.size(); i += daily ? 1 : 7)
            list.push(Json::object()
                          .add("date", iso(f.now.bands[i].day))
                          .add("autumn_kg", json(f.autumn.bands[i].stores))
                          .add("now_kg", json(f.now.bands[i].stores))
                          .add("out", f.now.bands[i].out));
        return list;
    }

    Json learned() const {
        if (!q.winter.learned) return {};
        const auto& l = *q.winter.learned;
        return Json::object()
            .add("use", multiplierJson({std::log(l.use), l.useLogSd}))
            .add("death", multiplierJson({std::log(l.death), l.deathLogSd}));
    }

    const FollowedColony& colony_;
    const tracking::FollowQuestion& q;
    const tracking::Following& f;
    const ReferenceData& reference;
    const text::WordStyle style_;
};

Json begun(const FollowedColony& colony, Date asOf) {
    return Json::object().add("colony", colony.colony.name).add("yard", colony.autumn.yard).add("as_of", asOf.iso());
}

} // namespace

Json multiplierJson(const learning::Lasting& lasting) {
    return Json::object()
        .add("low", std::exp(lasting.logMean - tenthPercentile * lasting.logSd))
        .add("typical", lasting.median())
        .add("high", std::exp(lasting.logMean + tenthPercentile * lasting.logSd));
}

Json followJson(const FollowedColony& colony, const tracking::Following& following, Date asOf, bool daily,
                const ReferenceData& reference, const text::WordStyle& style) {
    Json answer = begun(colony, asOf);
    FollowDocument(colony, following, reference, style).fill(answer, daily);
    answer.add("seed", colony.advice.seed).add("winters", following.winters);
    return answer;
}

Json notFollowedJson(const FollowedColony& colony, Date asOf, const ReferenceData& reference,
                     const text::WordStyle& style) {
    Json answer = begun(colony, asOf);
    answer.add("decided", nullptr)
        .add("state", tracking::word(tracking::FollowState::CannotSay))
        .add("reasons", remarksJson(colony.advice.reasons, reference, styleFor(style, colony.autumn)))
        .add("cautions", Json::list());
    return answer;
}

Json followedAdviceJson(const book::ColonyCase& record, const advice::ColonyQuestion& question,
                        const advice::Advice& alone, const FollowedColony& colony, const tracking::Following& following,
                        const ReferenceData& reference, const text::WordStyle& style) {
    const text::WordStyle told = styleFor(style, colony.autumn);
    const auto& q = *colony.question;
    const auto advice = followedAdvice(alone, colony, following);
    const auto& look = advice.anotherLook;
    const QString why = text::followNext(q, following, told);
    return adviceJson(record, question, advice, reference, style)
        .replace("headline", text::followHeadline(q, following, told).toStdString())
        .replace("another_look", Json::object()
                                     .add("worth_it", look.worthIt)
                                     .add("which", look.which ? Json(word(*look.which)) : Json())
                                     .add("why", why.isEmpty() ? Json() : Json(why.toStdString())))
        .add("follow", followJson(colony, following, record.asOf, false, reference, style));
}

} // namespace winterlarder::answer
