// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/grounds/autumn_writer.h"

#include "numerics/normal_law.h"
#include "text/contexts.h"
#include "text/words.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::text {

void AutumnWriter::piece(const stores::EvidenceShare& share) {
    const QString seen = date(share.evidence.date, style_), kind = evidence(stores::idOf(share.evidence.kind), style_),
                  says = amount(share.says, style_);
    const auto sources = sourcesOfEvidence(share.evidence.kind);
    if (a_.estimate->contradictory) return line(say::Grounds::tr("%2, %1: %3.").arg(kind, seen, says), sources);
    if (a_.estimate->shares.size() == 1)
        return line(say::Grounds::tr("%2, %1: %3; nothing else is known.").arg(kind, seen, says), sources);
    line(say::Grounds::tr("%2, %1: %3; counts for %4 of 100 parts.")
             .arg(kind, seen, says, count(std::round(100 * share.weight), style_)),
         sources);
}

void AutumnWriter::rulesOfEvidence() {
    const auto& shares = a_.estimate->shares;
    if (std::any_of(shares.begin(), shares.end(),
                    [](const auto& share) { return share.evidence.kind == stores::EvidenceKind::Combs; }))
        line(
            say::Grounds::tr(
                "Of a comb: the area of its capped and open cells times what a square decimetre of sealed comb holds; open nectar counts as %1 of that. Each comb's share stands "
                "on the page In the hive.")
                .arg(number(stores::openFactor(q_.freshlyFilled), 2, style_)),
            {"baudoux", "demuth-503", "phillips-bees"});
    if (std::any_of(shares.begin(), shares.end(),
                    [](const auto& share) { return stores::isWeighed(share.evidence.kind); }))
        line(say::Grounds::tr(
                 "Of a weighing: the reading less the empty hive, taken as %1, and less its bees and bee bread.")
                 .arg(mass(q_.tare, style_)));
}

std::optional<Grounds> AutumnWriter::stores() {
    if (!a_.estimate) return std::nullopt;
    for (const auto& share : a_.estimate->shares) piece(share);
    rulesOfEvidence();
    if (a_.estimate->shares.size() > 1 && !a_.estimate->contradictory)
        line(say::Grounds::tr("Each counts the more the more exact it is: by one over its variance."));
    const auto byTare = [](const stores::EvidenceShare& share) { return share.evidence.tareSd > kilograms(0); };
    if (std::count_if(a_.estimate->shares.begin(), a_.estimate->shares.end(), byTare) > 1 &&
        !a_.estimate->contradictory)
        line(say::Grounds::tr(
            "Weighings share the error of the empty weight: all of them together are no surer than that."));
    const auto several = [&](stores::EvidenceKind kind) {
        return std::count_if(a_.estimate->shares.begin(), a_.estimate->shares.end(),
                             [kind](const auto& share) { return share.evidence.kind == kind; }) > 1;
    };
    if (!a_.estimate->contradictory &&
        (several(stores::EvidenceKind::OneSidedLift) || several(stores::EvidenceKind::Heft)))
        line(say::Grounds::tr(
            "Lifts of one side lean the same way each time, and so do lifts by hand: many are hardly surer than one."));
    reasons({"contradiction", "stores-carried-forward", "open-stores-late"});
    bracketsLine();
    return under(say::Grounds::tr("Stores on %1: %2").arg(today(), amount(a_.estimate->spread, style_)));
}

void AutumnWriter::eaten() {
    if (!a_.use) return;
    const QString winters = count(a_.winters, style_), use = mass(*a_.use, style_);
    if (!use_)
        return line(say::Grounds::tr("From %1 until spring forage starts the bees eat %2 in %3 simulated winters.")
                        .arg(today(), use, winters));
    line(
        say::Grounds::tr(
            "From %1 until spring forage starts the bees eat %2 in %3 simulated winters: on average %4 the adult bees, %5 to warm brood, %6 to feed it.")
            .arg(today(), use, winters, mass(use_->adults, style_), mass(use_->broodWarmth, style_),
                 mass(use_->broodFood, style_)));
    if (use_->income > Mass(0.05))
        line(say::Grounds::tr("Before spring forage starts, mostly in early spring, they bring in %1 on average.")
                 .arg(mass(use_->income, style_)));
}

void AutumnWriter::demandRules() {
    const auto& c = reference_.constants;
    const auto at = [&](double degrees) { return temperatureAt(degrees, style_); };
    line(
        say::Grounds::tr(
            "Adult bees eat for the heat their cluster loses: the colder the more, and the less for each bee the larger the cluster, up to %1 of bees.")
            .arg(mass(Mass(c.sizeLawMass), style_)),
        {"southwick-1985", "free-racey-1968"});
    line(say::Grounds::tr("A gram of honey holds %1 kilojoules.").arg(text::number(c.honeyEnergy / 1000, 1, style_)),
         {"usda-food-energy"});
    line(say::Grounds::tr("Brood is kept at %1, and each worker reared takes %2 of honey.")
             .arg(at(c.broodTemperature), smallMass(c.honeyPerWorker, style_)),
         {"hrassnigg-crailsheim-2005", "stabentheiner-2010"});
    line(
        say::Grounds::tr(
            "Bees that emerge beside little brood live through the winter, those that emerge beside much of it die within weeks: colonies shrink "
            "from August to November."),
        {"schmolke-2020", "mattila-otis-2007"});
    line(say::Grounds::tr("Weather, heat, brood and deaths of bees differ from winter to winter as they do in nature."),
         {"norrstrom-2021"});
}

std::optional<Grounds> AutumnWriter::need() {
    if (!a_.need) return std::nullopt;
    line(
        say::Grounds::tr(
            "With so much in the hive on %1 the stores fall below the reserve of %2 before spring forage starts in no more than %3 of 100 simulated winters. "
            "Reserve and risk are yours to set, in the yard's Place.")
            .arg(today(), amount(a_.reserve, style_), count(std::round(100 * a_.shortRisk), style_)));
    eaten();
    if (a_.bees) line(say::Grounds::tr("They are about %1 bees.").arg(text::bees(*a_.bees, style_)));
    reasons({"station-used", "height-shift", "flow-assumed", "learned-use", "learned-death", "learned-forage",
             "locked-in-long", "season-overrides", "date-moved"});
    demandRules();
    return under(
        say::Grounds::tr("Needed on %1 to last until spring forage starts: %2").arg(today(), amount(*a_.need, style_)));
}

std::optional<Grounds> AutumnWriter::target() {
    if (!a_.target) return std::nullopt;
    const auto& target = *a_.target;
    line(
        say::Grounds::tr(
            "With so much in the hive on %1, the day winter begins for it, the stores fall below %2 before spring forage starts in no more than %3 of 100 simulated "
            "winters.")
            .arg(date(target.date, style_), amount(a_.reserve, style_), count(std::round(100 * a_.shortRisk), style_)));
    if (a_.untilTarget)
        line(say::Grounds::tr("Until then about %1 are eaten and %2 of nectar found, as stores.")
                 .arg(amount(a_.untilTarget->eaten, style_), amount(a_.untilTarget->found, style_)));
    line(say::Grounds::tr("With the empty hive, taken as %1, its bees, brood and bee bread it then weighs %2.")
             .arg(mass(q_.tare, style_), amount(target.gross, style_)));
    reasons({"usual-here", "station-used", "height-shift", "learned-use", "learned-death", "learned-forage",
             "locked-in-long", "season-overrides", "date-moved"});
    demandRules();
    return under(
        say::Grounds::tr("Wanted on %1: %2 of stores").arg(date(target.date, style_), amount(target.stores, style_)));
}

std::optional<Grounds> AutumnWriter::forage() {
    const auto& forage = a_.season.forage;
    if (!forage) return std::nullopt;
    switch (forage->origin) {
    case climate::DateOrigin::Case:
        line(say::Grounds::tr("The day was given in the yard's Place and not derived from the climate."));
        break;
    case climate::DateOrigin::ClimateMoved:
        line(say::Grounds::tr(
            "The day the climate gives was moved just far enough to follow a date given in the yard's Place."));
        break;
    case climate::DateOrigin::Climate: forageRuleLine();
    }
    reasons({"station-used", "height-shift", "learned-forage", "date-moved"});
    if (forage->exact || forage->sdDays <= 0)
        return under(say::Grounds::tr("Spring forage starts: %1").arg(day(forage->day)));
    const int reach = static_cast<int>(std::lround(tenthPercentile * forage->sdDays));
    line(say::Grounds::tr(
             "A warm or a cold spring moves it: in every simulated winter spring forage starts on a day of its own."),
         {"regional-calendars"});
    return under(say::Grounds::tr("Spring forage starts: around %1 (%2 to %3 in 80 of 100 winters)")
                     .arg(day(forage->day), day(forage->day - reach), day(forage->day + reach)));
}

std::optional<Grounds> AutumnWriter::bees() {
    if (!a_.bees) return std::nullopt;
    line(worded(say::Grounds::tr(
                    "From the %{combs} or seams the bees cover, or the number given, carried to %1 by the model."),
                style_)
             .arg(today()),
         {"imdorf-liebefeld"});
    bracketsLine();
    reasons({"weak-colony", "small-colony"});
    return under(say::Grounds::tr("Bees on %1: %2").arg(today(), text::bees(*a_.bees, style_)));
}

std::optional<Grounds> AutumnWriter::known(double kg, Look look) {
    if (!a_.anotherLook.which) return std::nullopt;
    line(say::Grounds::tr("So wide is the range in which 80 of 100 likely values of what is missing or spare lie."));
    if (look == Look::Now)
        return under(say::Grounds::tr("What is missing or spare, known now within %1").arg(mass(Mass(kg), style_)));
    line(say::Grounds::tr("It is what would be left of it after that look, given how exact such a look is."),
         {"judgement"});
    return under(
        say::Grounds::tr("What is missing or spare, known after another look within %1").arg(mass(Mass(kg), style_)));
}

const advice::Option* AutumnWriter::option(advice::OptionKind kind) const {
    for (const auto& option : a_.options)
        if (option.kind == kind) return &option;
    return nullptr;
}

std::optional<Grounds> AutumnWriter::shareOf(const std::optional<Share>& share, Below below, Way way) {
    if (!share) return std::nullopt;
    line(
        below == Below::Reserve
            ? say::Grounds::tr(
                  "Counted over %1 simulated winters: those in which less than the reserve of %2 is left on some day before spring forage starts.")
                  .arg(count(a_.winters, style_), amount(a_.reserve, style_))
            : say::Grounds::tr(
                  "Counted over %1 simulated winters: those in which nothing is left on some day before spring forage starts.")
                  .arg(count(a_.winters, style_)));
    if (a_.estimate)
        line(say::Grounds::tr("Each begins with other stores, as widely spread as they are known: %1.")
                 .arg(amount(a_.estimate->spread, style_)));
    if (way == Way::AsAdvised)
        line(say::Grounds::tr(
            "They are the same winters for everything that can be done, so the figures can be compared."));
    otherWintersLine(*share);
    eaten();
    demandRules();
    const QString of = ofHundred(*share, style_);
    if (below == Below::Reserve) {
        const QString kept = ofHundred(share->others(), style_), reserve = amount(a_.reserve, style_);
        line(say::Grounds::tr("That is %1; in the others so much or more is left.").arg(of));
        return under(
            way == Way::AsAdvised
                ? say::Grounds::tr("%2 or more left, if you do as advised: %1 simulated winters").arg(kept, reserve)
                : say::Grounds::tr("%2 or more left, left alone: %1 simulated winters").arg(kept, reserve));
    }
    return under(way == Way::AsAdvised
                     ? say::Grounds::tr("Runs out, if you do as advised: %1 simulated winters").arg(of)
                     : say::Grounds::tr("Runs out, left alone: %1 simulated winters").arg(of));
}

std::optional<Grounds> AutumnWriter::of(AskedNumber number) {
    const auto* advised =
        option(a_.verdict == advice::Verdict::Harvest ? advice::OptionKind::TakeNow : advice::OptionKind::Feed);
    const auto touches = advised ? std::optional(advised->touchReserve) : std::nullopt,
               runsOut = advised ? std::optional(advised->runOut) : std::nullopt;
    switch (number) {
    case AskedNumber::Stores: return stores();
    case AskedNumber::Need: return need();
    case AskedNumber::Target: return target();
    case AskedNumber::Forage: return forage();
    case AskedNumber::Spare: return spare();
    case AskedNumber::CombsOff: return combsOff();
    case AskedNumber::Sugar: return sugar();
    case AskedNumber::Fondant: return fondant();
    case AskedNumber::LastDay: return lastDay();
    case AskedNumber::Reserve: return ofReserve(a_.reserve, a_.shortRisk);
    case AskedNumber::Bees: return bees();
    case AskedNumber::Given: return given();
    case AskedNumber::KnownNow: return known(a_.anotherLook.narrowsFromKg, Look::Now);
    case AskedNumber::KnownThen: return known(a_.anotherLook.narrowsToKg, Look::Taken);
    case AskedNumber::KeptAlone: return shareOf(a_.touchReserve, Below::Reserve, Way::LeftAlone);
    case AskedNumber::RunsOutAlone: return shareOf(a_.runOut, Below::Food, Way::LeftAlone);
    case AskedNumber::KeptAsAdvised: return shareOf(touches, Below::Reserve, Way::AsAdvised);
    case AskedNumber::RunsOutAsAdvised: return shareOf(runsOut, Below::Food, Way::AsAdvised);
    default: return std::nullopt;
    }
}

std::optional<Grounds> groundsOf(AskedNumber number, const AutumnGrounds& of, const ReferenceData& reference,
                                 const WordStyle& style) {
    return AutumnWriter(of, reference, style).of(number);
}

} // namespace winterlarder::text
