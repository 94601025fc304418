// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/command_line.h"

#include "answer/data_folder.h"
#include "answer/version.h"
#include "book/entries/plain_text.h"
#include "cli/book_line.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <charconv>
#include <fmt/format.h>
#include <map>
#include <ostream>

namespace winterlarder::cli {

namespace {

// Options every command takes.
struct Common {
    bool json = false;
    std::string winters = "2500", seed = "1", threads;
    std::optional<std::string> data;
};

// Names as they are typed: no sign of what a flag is inside.
struct PlainNames : CLI::Formatter {
    std::string make_option_name(const CLI::Option* option, bool positional) const override {
        std::string name = CLI::Formatter::make_option_name(option, positional);
        for (const std::string_view inside : {"{false}", "{true}"})
            if (const auto at = name.find(inside); at != std::string::npos) name.erase(at, inside.size());
        return name;
    }
};

class CommandLine {
public:
    CommandLine() : app_("Winter stores of honey bee colonies: take honey, leave it, or feed.", "winterlarder-cli") {
        app_.formatter(std::make_shared<PlainNames>());
        app_.set_version_flag("--version", "winterlarder-cli " + answer::versionInWords());
        app_.require_subcommand(1);
        app_.failure_message(CLI::FailureMessage::simple);
        app_.footer(
            "Exit status: 0 done, 2 input or arguments are wrong, 3 a file cannot be read or written, 70 an error of the program.\n"
            "Cases are JSON files; \"-\" reads JSON Lines from standard input. See winterlarder-cli(1).");
        addCommon(&app_);
        addAdvise();
        addUse();
        addHeat();
        addStores();
        addSyrup();
        addStations();
        addPlaces();
        addSeason();
        addClimate();
        addScale();
        addShipped();
        addBook();
    }

    void parse(std::vector<std::string> arguments) {
        std::reverse(arguments.begin(), arguments.end());
        app_.parse(arguments);
    }
    int explain(const CLI::ParseError& error, std::ostream& out, std::ostream& err) {
        return app_.exit(error, out, err);
    }

    //! What is wrong with the first word (after `book`, the second) where it is no command; nothing where it is one, or an option, or
    //! missing.
    std::optional<Problem> unknownCommand(const std::vector<std::string>& arguments) const {
        const CLI::App* place = &app_;
        for (const std::string& word : arguments) {
            if (word.rfind('-', 0) == 0) return std::nullopt;
            std::vector<std::string> commands;
            for (const CLI::App* each : place->get_subcommands([](const CLI::App*) { return true; }))
                commands.push_back(each->get_name());
            if (commands.empty()) return std::nullopt;
            if (std::find(commands.begin(), commands.end(), word) == commands.end())
                return argumentProblem(fmt::format("no command {}", exchange::inQuotes(word)),
                                       exchange::suggestion(word, commands));
            place = place->get_subcommand(word);
        }
        return std::nullopt;
    }

    const Common& common() const { return common_; }
    const Chosen& chosen() const { return chosen_; }

private:
    void addCommon(CLI::App* command) {
        command->add_flag("--json", common_.json, "print one JSON document (JSON Lines for a batch)");
        command->add_option("--winters", common_.winters, "simulated winters (default 2500)")->type_name("N");
        command->add_option("--seed", common_.seed, "seed of the random numbers (default 1)")->type_name("N");
        command->add_option("--threads", common_.threads, "threads at work (default: all cores); changes no digit")
            ->type_name("N");
        optional(command, "--data", common_.data, "folder of the shipped data")->type_name("FOLDER");
    }
    CLI::App* command(const std::string& name, const std::string& does, Chosen run) {
        return command(app_, name, does, std::move(run));
    }
    CLI::App* command(CLI::App& parent, const std::string& name, const std::string& does, Chosen run) {
        CLI::App* added = parent.add_subcommand(name, does);
        addCommon(added);
        added->callback([this, run = std::move(run)] { chosen_ = run; });
        return added;
    }
    template <class T>
    static CLI::Option* optional(CLI::App* command, const std::string& name, std::optional<T>& target,
                                 const std::string& does) {
        return command->add_option_function<T>(
            name, [&target](const T& value) { target = value; }, does);
    }

    void addUnits(CLI::App* command, const std::string& otherwise) {
        const std::map<std::string, UnitSystem> names{
            {"metric", UnitSystem::Metric}, {"us", UnitSystem::UnitedStates}, {"imperial", UnitSystem::Imperial}};
        command->add_option("--units", units_, "metric, us or imperial (default: " + otherwise + ")")
            ->transform(CLI::CheckedTransformer(names))
            ->option_text("UNITS");
    }
    void addAdvise() {
        auto* added = command("advise", "stores, need, verdict, feeding, harvest, cautions of one or several colonies",
                              [this](Session& session) {
                                  session.units = units_;
                                  if (combsStay_) session.combs = advice::MovingCombs::Not;
                                  return advise(session, cases_);
                              });
        addUnits(added, "the case's, else those of its place");
        added->add_flag("--combs-stay", combsStay_, "plan yards without moving combs between hives");
        added->add_option("CASE", cases_, "case files, or - for JSON Lines on standard input")->required();
    }
    void addUse() {
        auto* added = command("use", "what a colony eats between two days, by month and cause",
                              [this](Session& session) { return use(session, use_); });
        added->add_option("CASE", use_.caseFile, "case file, or - for standard input")->required();
        added->add_option("--from", use_.from, "first day, YYYY-MM-DD, not before the look")
            ->required()
            ->type_name("DATE");
        added->add_option("--to", use_.to, "last day, counted in")->required()->type_name("DATE");
        added->add_flag("--daily", use_.daily, "day by day as well");
        added->add_flag("--central", use_.central, "one noiseless winter with median constants");
    }
    void addHeat() {
        auto* added = command("heat", "power and food of a colony on one day",
                              [this](Session& session) { return heat(session, heat_); });
        added->add_option("--bees", heat_.bees, "adult bees")->required()->type_name("N");
        added->add_option("--temperature", heat_.temperatureC, "mean of the day, degC")->required()->type_name("C");
        added->add_option("--brood", heat_.broodCells, "cells with brood of all ages (default 0)")->type_name("CELLS");
        added->add_option("--shell", heat_.shell, "timber (default), thick-timber, wrapped, polystyrene, straw")
            ->type_name("SHELL");
        added->add_flag("--top-insulation", heat_.topInsulation, "insulation above the combs");
        added->add_option("--kind", heat_.kind, "dark, carniolan (default), buckfast, italian")->type_name("KIND");
        added->add_flag("--steady", heat_.steady, "no swing between day and night");
    }
    void addStores() {
        auto* added = command("stores", "stores and bees of a colony today, and what each observation says",
                              [this](Session& session) { return stores(session, storesCase_); });
        added->add_option("CASE", storesCase_, "case file, or - for standard input")->required();
    }
    void addSyrup() {
        auto* added = command("syrup", "sugar, water and litres of a syrup, and the stores it becomes",
                              [this](Session& session) { return syrup(session, syrup_); });
        optional(added, "--sugar", syrup_.sugarKg, "kilograms of sugar")->type_name("KG");
        optional(added, "--stores", syrup_.storesKg, "kilograms of stores wanted")->type_name("KG");
        added->add_option("--ratio", syrup_.ratio, "sugar to water, decimals allowed")->required()->type_name("A:B");
        added->add_option("--by", syrup_.basis, "what the ratio counts: mass (default), volume, kg-l (kg to litres)")
            ->type_name("BASIS");
    }
    void addPlaces() {
        auto* added = command("places", "places of the world by name, each with its weather station and height",
                              [this](Session& session) { return places(session, places_); });
        added
            ->add_option("QUERY", places_.query,
                         "name or its beginning, then state or country: wolfville, halifax canada, springfield il")
            ->required()
            ->type_name("WORDS");
        added->add_option("--most", places_.most, "how many at most (default 10)")->type_name("N");
    }
    void addStations() {
        auto* added = command("stations", "the shipped climate stations",
                              [this](Session& session) { return stations(session, stations_); });
        optional(added, "--near", stations_.near, "nearest first, to LAT,LON or to a place by its name")
            ->type_name("PLACE");
        optional(added, "--find", stations_.find, "only those whose id, place or country holds the text")
            ->type_name("TEXT");
    }
    void addSeason() {
        auto* added = command("season", "cold-season curve and the dates derived from it",
                              [this](Session& session) { return season(session, season_); });
        optional(added, "PLACE", season_.station, "id of a shipped station, or the name of a place");
        optional(added, "--case", season_.caseFile, "the place and dates of a case instead")->type_name("CASE");
        optional(added, "--winter", season_.winter,
                 "the winter whose autumn lies in this year (default 2026, or the case's)")
            ->type_name("YEAR");
        added->add_flag("--daily", season_.daily, "every day of the curve");
    }
    void addClimate() {
        auto* added = command("climate", "a climate of your own from a table of daily temperatures",
                              [this](Session& session) { return climate(session, climate_); });
        added->add_option("FILE", climate_.file, "CSV table, or - for standard input")->required();
        added->add_option("--latitude", climate_.latitude, "degrees, north positive")->required()->type_name("D");
        optional(added, "--longitude", climate_.longitude, "degrees, east positive")->type_name("D");
        added->add_option("--columns", climate_.columns, "date=D,mean=T or date=D,min=TMIN,max=TMAX")
            ->type_name("NAMES");
        added->add_option("--unit", climate_.unit, "c (default) or f")->type_name("UNIT");
        added->add_flag("--sure", climate_.sure, "days still to come are right");
    }
    void addScale() {
        auto* added = command("scale", "daily weights, months and steps from the log of a hive scale",
                              [this](Session& session) { return scale(session, scale_); });
        added->add_option("FILE", scale_.file, "CSV table of times and weights, or - for standard input")->required();
        addScaleOptions(added, scale_);
        added->add_flag("--daily", scale_.daily, "every day's weight as well (--json always has them)");
    }
    void addShipped() {
        command("hive-formats", "the shipped hive formats with comb area and honey of a full comb",
                [](Session& session) { return hiveFormats(session); });
        auto* listed = command("keys", "keys of a case file and columns of a book's tables, and what they may be",
                               [this](Session& session) { return keys(session, keys_); });
        optional(listed, "KEY", keys_, "only this key, or all of a group: hive, bees, combs, weighings, ...");
        auto* added = command("sources", "where the shipped numbers come from",
                              [this](Session& session) { return sources(session, source_); });
        optional(added, "ID", source_, "only this source");
        auto* pages = command("guide", "how stores, bees and brood are judged, page by page", [this](Session& session) {
            session.units = units_;
            return guide(session, guide_);
        });
        optional(pages, "PAGE", guide_.page, "only this page; without one the contents");
        optional(pages, "--hive", guide_.hive, "numbers of this hive only")->type_name("FORMAT");
        addUnits(pages, "metric");
    }

    void addBook() {
        CLI::App* book =
            app_.add_subcommand("book", "a keeper's book: years of yards, colonies and records in one file");
        book->require_subcommand(1);
        book_.addTo(*book, [this](CLI::App& parent, const std::string& name, const std::string& does, Chosen run) {
            return command(parent, name, does, std::move(run));
        });
    }

    CLI::App app_;
    Common common_;
    Chosen chosen_;
    std::vector<std::string> cases_;
    std::optional<UnitSystem> units_;
    bool combsStay_ = false;
    UseOptions use_;
    HeatOptions heat_;
    std::string storesCase_;
    SyrupOptions syrup_;
    StationsOptions stations_;
    PlacesOptions places_;
    SeasonOptions season_;
    ClimateOptions climate_;
    ScaleOptions scale_;
    std::optional<std::string> source_, keys_;
    GuideOptions guide_;
    BookLine book_;
};

// A whole number between the limits of the data dictionary, else a problem.
template <class Number>
Number wholeNumber(const char* option, const std::string& text, const FieldLimits& limits, Problems& problems) {
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const double low = limits.minimum.value_or(0), high = limits.maximum.value_or(0);
    const bool whole = error == std::errc() && end == text.data() + text.size();
    if (!whole || static_cast<double>(number) < low || static_cast<double>(number) > high)
        problems.push_back(argumentProblem(fmt::format("{} is {}", option, text),
                                           fmt::format("a whole number from {} to {}", exchange::shortestNumber(low),
                                                       exchange::shortestNumber(high))));
    return number;
}

Problems fillRun(Session& session, const Common& common, int cores) {
    const ReferenceData& reference = session.reference;
    Problems problems;
    const auto limits = [&](const char* field) -> const FieldLimits& {
        const FieldLimits* found = reference.field(field);
        if (!found) throw std::logic_error(fmt::format("the data dictionary has no field {}", field));
        return *found;
    };
    session.sampling.winters = wholeNumber<int>("--winters", common.winters, limits("run.winters"), problems);
    session.sampling.seed = wholeNumber<std::uint64_t>("--seed", common.seed, limits("run.seed"), problems);
    session.threads = cores;
    if (!common.threads.empty())
        session.threads = wholeNumber<int>("--threads", common.threads, limits("run.threads"), problems);
    return problems;
}

int status(Status status) { return static_cast<int>(status); }

} // namespace

int run(const std::vector<std::string>& arguments, const Surroundings& around) {
    CommandLine line;
    try {
        line.parse(arguments);
    } catch (const CLI::ParseError& error) {
        if (error.get_exit_code() == static_cast<int>(CLI::ExitCodes::Success)) {
            line.explain(error, around.out, around.err);
            return status(Status::Done);
        }
        const Problem wrong =
            line.unknownCommand(arguments).value_or(argumentProblem(error.what(), "winterlarder-cli --help tells how"));
        around.err << book::visible(describe(wrong)) << '\n';
        return status(Status::WrongInput);
    }
    const answer::DataFolderChoice choice{line.common().data, around.dataFromEnvironment, around.executable};
    const auto reference = answer::loadShippedData(choice);
    if (!reference) {
        for (const Problem& problem : reference.problems()) around.err << book::visible(describe(problem)) << '\n';
        return status(statusOf(reference.problems()));
    }
    Session session{
        *reference, around.in, around.out, around.err,   line.common().json, around.colour && !line.common().json,
        {1, 2500},  1,         {},         around.moment};
    session.dataFolder = answer::dataFolder(choice);
    if (const Problems problems = fillRun(session, line.common(), around.cores); !problems.empty())
        return status(session.fail(problems));
    return status(line.chosen()(session));
}

} // namespace winterlarder::cli
