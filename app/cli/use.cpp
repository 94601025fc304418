// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/basis.h"
#include "advice/looking/evidence_today.h"
#include "answer/doubt_words.h"
#include "answer/json_values.h"
#include "answer/style_of_place.h"
#include "calendar/other_date_forms.h"
#include "cli/commands.h"
#include "cli/named_place.h"
#include "cli/table.h"
#include "text/contexts.h"
#include "text/remarks.h"

#include <fmt/format.h>
#include <numeric>

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

using exchange::Json;

constexpr double secondsPerDay = 86400;

// The days asked about, inclusive, as season days.
struct Period {
    SeasonDay from, to;
};

struct MonthOfUse {
    int year, month;
    Spread<Mass> use;
    double meanKg;
};

// One run of the model read out between two days.
class Use {
public:
    Use(const advice::ColonyQuestion& question, const ModelConstants& constants, winter::DemandEnsemble ensemble,
        Period period)
        : q_(question), k_(constants), ensemble_(std::move(ensemble)),
          flow_(advice::autumnFlow(question, advice::freeRoomAtLook(question))), period_(period) {}

    Period period() const { return period_; }
    const std::vector<Remark>& setAside() const { return q_.setAside; }
    Date date(SeasonDay day) const { return q_.winter.date(day); }
    std::vector<double> eaten(SeasonDay from, SeasonDay to) const {
        std::vector<double> kg;
        for (std::size_t i = 0; i < static_cast<std::size_t>(ensemble_.winters()); ++i)
            kg.push_back(usedUntil(to, i) - usedUntil(from - 1, i));
        return kg;
    }
    double incomeKg(SeasonDay from, SeasonDay to) const {
        return mean(eaten(from, to)) - mean(winter::netLossBetween(ensemble_, flow_, from, to + 1));
    }
    const winter::DayMeans& day(SeasonDay day) const { return ensemble_.means(day); }
    double sumKg(double (*gramsOf)(const winter::DayMeans&, const ModelConstants&)) const {
        double grams = 0;
        for (SeasonDay d = period_.from; d <= period_.to; d = d + 1) grams += gramsOf(ensemble_.means(d), k_);
        return grams / 1000;
    }
    Spread<BeeCount> beesAtEnd() const {
        const SeasonDay after = std::min(period_.to + 1, ensemble_.lastDay());
        const auto bees = ensemble_.bees(after);
        const std::vector<double> counts(bees.begin(), bees.end());
        return {{winter::quantile(counts, 0.1)}, {winter::quantile(counts, 0.5)}, {winter::quantile(counts, 0.9)}};
    }
    std::vector<MonthOfUse> months() const {
        std::vector<MonthOfUse> result;
        for (SeasonDay first = period_.from; first <= period_.to;) {
            SeasonDay last = first;
            while (last < period_.to && date(last + 1).month() == date(first).month()) last = last + 1;
            const auto kg = eaten(first, last);
            result.push_back({date(first).year(), date(first).month(), spread(kg), mean(kg)});
            first = last + 1;
        }
        return result;
    }
    static Spread<Mass> spread(const std::vector<double>& kg) {
        return {kilograms(winter::quantile(kg, 0.1)), kilograms(winter::quantile(kg, 0.5)),
                kilograms(winter::quantile(kg, 0.9))};
    }
    static double mean(const std::vector<double>& values) {
        return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
    }

private:
    double usedUntil(SeasonDay day, std::size_t winter) const {
        return day < ensemble_.firstDay() ? 0 : static_cast<double>(ensemble_.used(day)[winter]);
    }
    const advice::ColonyQuestion& q_;
    const ModelConstants& k_;
    winter::DemandEnsemble ensemble_;
    winter::AutumnFlow flow_;
    Period period_;
};

double adultGrams(const winter::DayMeans& day, const ModelConstants& k) {
    return day.adultPowerW * secondsPerDay / k.honeyEnergy;
}
double broodHeatGrams(const winter::DayMeans& day, const ModelConstants& k) {
    return day.broodPowerW * secondsPerDay / k.honeyEnergy;
}
double broodFoodGrams(const winter::DayMeans& day, const ModelConstants&) { return day.broodFoodG; }

// Why the use of a colony cannot be simulated at all.
Problems refusals(const advice::ColonyQuestion& question, const std::string& file) {
    Problems problems;
    const auto refuse = [&](std::string detail, std::string remedy) {
        problems.push_back({ProblemKind::Input, {file, 0, 0}, std::move(detail), std::move(remedy)});
    };
    if (!question.bees)
        for (const Remark& remark : question.setAside)
            refuse(text::sentence(remark, {}).toStdString(), "see CASE FILES in the manual");
    if (!question.bees && question.setAside.empty())
        refuse("nothing tells how many bees there are", "bees with count, covered_combs or seams");
    if (question.bees && question.bees->count <= 0) refuse("there are no bees", "a colony with bees");
    if (!question.site) refuse(noStationNear(), "a climate of your own");
    if (question.site && !question.season.derivable())
        refuse("no season can be derived for the place", "the dates buildup and forage in the part season");
    if (question.asOf > lastSimulatedDay) refuse("as_of lies outside the model's season", "a day of the season");
    return problems;
}

std::optional<SeasonDay> dayOf(const std::string& option, const std::string& text, const Winter& winter,
                               Problems& problems) {
    const auto date = Date::parse(text);
    if (!date) {
        problems.push_back(
            argumentProblem(fmt::format("{} is {}, which is not a date", option, text), dateMeant(text)));
        return std::nullopt;
    }
    if (winter.contains(*date)) return winter.seasonDay(*date);
    problems.push_back(argumentProblem(
        fmt::format("{} {} is not a day of the winter asked about", option, text),
        fmt::format("a day from {} to {}", winter.date(firstSeasonDay).iso(), winter.date(lastSimulatedDay).iso())));
    return std::nullopt;
}

Outcome<Period> periodOf(const UseOptions& options, const advice::ColonyQuestion& question, SeasonDay start) {
    Problems problems;
    const auto from = dayOf("--from", options.from, question.winter, problems);
    const auto to = dayOf("--to", options.to, question.winter, problems);
    const auto iso = [&](SeasonDay day) { return question.winter.date(day).iso(); };
    if (from && *from < start)
        problems.push_back(argumentProblem(fmt::format("--from {} is before the look on {}", options.from, iso(start)),
                                           "a day from the look on"));
    if (to && *to > lastSimulatedDay)
        problems.push_back(argumentProblem(fmt::format("--to {} is after the last day the model runs to", options.to),
                                           fmt::format("a day up to {}", iso(lastSimulatedDay))));
    if (from && to && *to < *from)
        problems.push_back(
            argumentProblem(fmt::format("--to {} is before --from {}", options.to, options.from), "a later day"));
    if (!problems.empty()) return problems;
    return Period{*from, *to};
}

// Runs to the last day asked about, however long after forage.
winter::DemandEnsemble run(const Session& session, const winter::WinterQuestion& question, bool central) {
    ModelConstants constants = session.reference.constants;
    constants.daysPastForage = daysInYear;
    if (central) return winter::simulateCentral(question, constants);
    return *winter::simulate(question, constants, session.sampling, session.threads);
}

Json withMean(const Spread<Mass>& spread, double mean) {
    Json object = json(spread);
    return std::move(object.add("mean", mean));
}

Json monthsJson(const Use& use) {
    Json list = Json::list();
    for (const MonthOfUse& month : use.months()) {
        Json entry = Json::object();
        entry.add("month", fmt::format("{:04}-{:02}", month.year, month.month));
        addSpread(entry, month.use);
        entry.add("mean", month.meanKg);
        list.push(std::move(entry));
    }
    return list;
}

Json daysJson(const Use& use) {
    Json list = Json::list();
    for (SeasonDay day = use.period().from; day <= use.period().to; day = day + 1) {
        const winter::DayMeans& means = use.day(day);
        list.push(Json::object()
                      .add("date", use.date(day).iso())
                      .add("use_g", means.useG)
                      .add("income_g", 1000 * use.incomeKg(day, day))
                      .add("bees", means.bees)
                      .add("brood_cells", means.broodCells)
                      .add("temperature_c", means.temperatureC)
                      .add("power_w", means.adultPowerW + means.broodPowerW));
    }
    return list;
}

Json useJson(const Use& use, bool daily, const text::WordStyle& style) {
    const auto [from, to] = use.period();
    const auto eaten = use.eaten(from, to);
    Json answer = Json::object();
    answer.add("from", use.date(from).iso()).add("to", use.date(to).iso());
    answer.add("total_kg", withMean(Use::spread(eaten), Use::mean(eaten))).add("by_month_kg", monthsJson(use));
    answer.add("parts_kg", Json::object()
                               .add("adults", use.sumKg(adultGrams))
                               .add("brood_heat", use.sumKg(broodHeatGrams))
                               .add("brood_food", use.sumKg(broodFoodGrams))
                               .add("income", use.incomeKg(from, to)));
    answer.add("bees_at_end", json(use.beesAtEnd()));
    if (!use.setAside().empty()) answer.add("set_aside", setAsideJson(use.setAside(), style));
    if (daily) answer.add("days", daysJson(use));
    return answer;
}

QString daysText(const Use& use, const text::WordStyle& style) {
    TextTable table({say::CommandLine::tr("Day"), say::CommandLine::tr(">Use g"), say::CommandLine::tr(">Income g"),
                     say::CommandLine::tr(">Bees"), say::CommandLine::tr(">Brood cells"),
                     say::CommandLine::tr(">Mean °C"), say::CommandLine::tr(">Power W")});
    for (SeasonDay day = use.period().from; day <= use.period().to; day = day + 1) {
        const winter::DayMeans& means = use.day(day);
        const auto number = [&](double value, int decimals) { return text::number(value, decimals, style); };
        table.add({QString::fromStdString(use.date(day).iso()), number(means.useG, 1),
                   number(1000 * use.incomeKg(day, day), 1), text::count(means.bees, style),
                   text::count(means.broodCells, style), number(means.temperatureC, 1),
                   number(means.adultPowerW + means.broodPowerW, 2)});
    }
    return table.text();
}

QString useText(const Use& use, bool daily, const text::WordStyle& style, const Session& session) {
    const auto [from, to] = use.period();
    const auto kg = [&](double value) { return text::mass(kilograms(value), style); };
    QString text = session.strong(say::CommandLine::tr("Use from %1 to %2")
                                      .arg(text::date(use.date(from), style), text::date(use.date(to), style))) +
                   QLatin1Char('\n');
    const auto eaten = use.eaten(from, to);
    FactList facts;
    facts.add(say::CommandLine::tr("Food eaten"),
              say::CommandLine::tr("%1, mean %2").arg(text::mass(Use::spread(eaten), style), kg(Use::mean(eaten))));
    facts.add(say::CommandLine::tr("  adult bees"), kg(use.sumKg(adultGrams)));
    facts.add(say::CommandLine::tr("  warmth for brood"), kg(use.sumKg(broodHeatGrams)));
    facts.add(say::CommandLine::tr("  food for brood"), kg(use.sumKg(broodFoodGrams)));
    facts.add(say::CommandLine::tr("Income"), kg(use.incomeKg(from, to)));
    facts.add(say::CommandLine::tr("Bees at the end"), text::bees(use.beesAtEnd(), style));
    text += facts.text() + setAsideText(use.setAside(), style) + QLatin1Char('\n');
    TextTable table({say::CommandLine::tr("Month"), say::CommandLine::tr(">Use"), say::CommandLine::tr(">Mean")});
    for (const MonthOfUse& month : use.months())
        table.add({text::month(month.year, month.month, style), text::mass(month.use, style), kg(month.meanKg)});
    text += table.text();
    return daily ? text + QLatin1Char('\n') + daysText(use, style) : text;
}

} // namespace

Status use(Session& session, const UseOptions& options) {
    const auto text = textOf(options.caseFile, session.in, limits::caseText);
    if (!text) return session.fail(text.problems());
    const std::string file = shownName(options.caseFile);
    const auto read = answer::readQuestion(*text, file, session.reference, 0);
    if (!read) return session.fail(read.problems());
    const advice::ColonyQuestion& question = read->question;
    if (const auto problems = refusals(question, file); !problems.empty()) return session.fail(problems);
    session.ask(read->asked);
    const winter::WinterQuestion asked = advice::winterQuestion(question, session.reference.constants);
    const auto period = periodOf(options, question, asked.start);
    if (!period) return session.fail(period.problems());
    const Use used(question, session.reference.constants, run(session, asked, options.central), *period);
    const auto style = styleFor(session.style, question);
    if (session.json) session.print(useJson(used, options.daily, style));
    else session.print(useText(used, options.daily, style, session));
    return Status::Done;
}

} // namespace winterlarder::cli
