// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/json_values.h"

namespace winterlarder::answer {

using exchange::Json;

const std::array<NamedDate, 8> seasonDateKeys{{{"last_income", &climate::SeasonDates::lastIncome},
                                               {"brood_stop", &climate::SeasonDates::broodStop},
                                               {"brood_restart", &climate::SeasonDates::broodRestart},
                                               {"buildup", &climate::SeasonDates::buildup},
                                               {"forage", &climate::SeasonDates::forage},
                                               {"feed_advised_by", &climate::SeasonDates::feedAdvisedBy},
                                               {"syrup_deadline", &climate::SeasonDates::syrupDeadline},
                                               {"syrup_refused", &climate::SeasonDates::syrupRefused}}};

Json json(Mass mass) { return mass.value(); }

void addSpread(Json& object, const Spread<Mass>& spread) {
    object.add("low", spread.low.value()).add("typical", spread.typical.value()).add("high", spread.high.value());
}

Json json(const Spread<Mass>& spread) {
    Json object = Json::object();
    addSpread(object, spread);
    return object;
}

Json json(const Spread<BeeCount>& spread) {
    return Json::object()
        .add("low", spread.low.count)
        .add("typical", spread.typical.count)
        .add("high", spread.high.count);
}

Json json(const Share& share) {
    return Json::object().add("share", share.share).add("standard_error", share.standardError);
}

namespace {

std::string_view word(climate::DateOrigin origin) {
    switch (origin) {
    case climate::DateOrigin::Climate: return "climate";
    case climate::DateOrigin::ClimateMoved: return "climate, moved";
    case climate::DateOrigin::Case: return "case";
    }
    return "";
}

} // namespace

void addSeasonDates(Json& object, const climate::SeasonDates& season, const Winter& winter, bool withOrigin) {
    for (const NamedDate& named : seasonDateKeys) {
        const auto& date = season.*(named.date);
        if (!date) {
            object.add(named.key, nullptr);
            continue;
        }
        Json entry = Json::object();
        entry.add("date", winter.date(date->day).iso()).add("sd_days", date->exact ? 0.0 : date->sdDays);
        if (withOrigin) entry.add("from", word(date->origin));
        object.add(named.key, std::move(entry));
    }
}

std::string_view word(climate::WinterClass kind) {
    switch (kind) {
    case climate::WinterClass::Confined: return "confined";
    case climate::WinterClass::Flying: return "flying";
    case climate::WinterClass::Dearth: return "dearth";
    case climate::WinterClass::NotDerivable: return "not_derivable";
    }
    return "";
}

std::string_view word(advice::Phase phase) {
    switch (phase) {
    case advice::Phase::Summer: return "summer";
    case advice::Phase::Closing: return "closing";
    case advice::Phase::Late: return "late";
    case advice::Phase::Winter: return "winter";
    case advice::Phase::Spring: return "spring";
    }
    return "";
}

std::string_view word(advice::NextLookAt what) {
    switch (what) {
    case advice::NextLookAt::Weigh: return "weigh";
    case advice::NextLookAt::CountMites: return "count_mites";
    case advice::NextLookAt::CheckFeed: return "check_feed";
    case advice::NextLookAt::Inspector: return "inspector";
    case advice::NextLookAt::QueenCells: return "queen_cells";
    }
    return "";
}

std::string_view word(advice::Verdict verdict) {
    switch (verdict) {
    case advice::Verdict::Harvest: return "harvest";
    case advice::Verdict::Leave: return "leave";
    case advice::Verdict::Feed: return "feed";
    case advice::Verdict::Unite: return "unite";
    case advice::Verdict::CannotSay: return "cannot_say";
    }
    return "";
}

std::string_view word(advice::OptionKind kind) {
    switch (kind) {
    case advice::OptionKind::Leave: return "leave";
    case advice::OptionKind::TakeNow: return "take_now";
    case advice::OptionKind::TakeInSpring: return "take_in_spring";
    case advice::OptionKind::Feed: return "feed";
    case advice::OptionKind::MoveCombs: return "move_combs";
    case advice::OptionKind::Unite: return "unite";
    }
    return "";
}

std::string_view word(advice::LookKind look) {
    switch (look) {
    case advice::LookKind::Heft: return "heft";
    case advice::LookKind::Weigh: return "weigh";
    case advice::LookKind::LookThroughWindow: return "look_through_window";
    case advice::LookKind::CountCombs: return "count_combs";
    case advice::LookKind::CountSeams: return "count_seams";
    case advice::LookKind::Open: return "open";
    }
    return "";
}

std::string_view word(feeding::VisitKind kind) {
    switch (kind) {
    case feeding::VisitKind::Syrup: return "syrup";
    case feeding::VisitKind::Fondant: return "fondant";
    case feeding::VisitKind::Check: return "check";
    }
    return "";
}

} // namespace winterlarder::answer
