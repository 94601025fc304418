// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/book_line.h"

#include "cli/book_commands.h"
#include "cli/open_book.h"

#include <CLI/CLI.hpp>

namespace winterlarder::cli {
namespace {

template <class T>
CLI::Option* optional(CLI::App* command, const std::string& name, std::optional<T>& target, const std::string& does,
                      const char* type) {
    return command
        ->add_option_function<T>(
            name, [&target](const T& value) { target = value; }, does)
        ->type_name(type);
}

//! Yes as --NAME, no as --no-NAME; neither: not answered.
void yesOrNo(CLI::App* command, const std::string& name, std::optional<bool>& target, const std::string& does) {
    command->add_flag_function(
        "--" + name + ",!--no-" + name, [&target](std::int64_t times) { target = times > 0; }, does);
}

void addNameOfBook(CLI::App* command, BookFile& options) {
    command->add_option("BOOK", options.file, "the book's file, such as windfall.larder")->required();
}

void addWriter(CLI::App* command, BookFile& options) {
    optional(command, "--by", options.by, "who writes (default: the user of the system)", "NAME");
}

void addBookFile(CLI::App* command, BookFile& options, For purpose) {
    addNameOfBook(command, options);
    if (purpose == For::Reading) return;
    addWriter(command, options);
    command->add_flag("--take-over", options.takeOver, "another machine's sign that the book is open there is stale");
}

//! A book that is made by the command.
void addNewBookFile(CLI::App* command, BookFile& options) {
    addNameOfBook(command, options), addWriter(command, options);
}

void addRecordOf(CLI::App* command, RecordOf& options) {
    addBookFile(command, options, For::Writing);
    command->add_option("--colony", options.colony, "its name, or its number where none has the name")
        ->required()
        ->type_name("NAME");
    command->add_option("--date", options.date, "day of the record, YYYY-MM-DD")->required()->type_name("DATE");
    command->add_option("--note", options.note, "what else is to be remembered")->type_name("TEXT");
}

void addSure(CLI::App* command, bool& sure, const char* does = "it is right, unlikely as it may be") {
    command->add_flag("--sure", sure, does);
}

void addPlace(CLI::App* command, NewBook& options) {
    command->add_option("--yard", options.yard, "name of the yard")->required()->type_name("NAME");
    optional(command, "--station", options.station, "climate station it is near", "ID");
    optional(command, "--place", options.place,
             "town it is near: its coordinates, height and the nearest station are used", "NAME");
    optional(command, "--latitude", options.latitude, "degrees, north positive; the nearest station is used", "D");
    optional(command, "--longitude", options.longitude, "degrees, east positive", "D");
    optional(command, "--elevation", options.elevation, "height in metres; shifts the station's temperatures", "M");
    optional(command, "--autumn-flow", options.autumnFlow,
             "nectar still to come in autumn: none, trickle, fair, strong", "WORD");
    yesOrNo(command, "visits-in-winter", options.visitsInWinter, "the hives can be reached in the middle of winter");
    optional(command, "--full-combs", options.fullCombs, "full combs (frames) of honey in store", "N");
    optional(command, "--units", options.units, "metric, us, imperial (default: those of the country)", "WORD");
}

enum class ColoniesAsked { All, One };

void addAnswerOptions(CLI::App* command, BookAnswers& options, For purpose, ColoniesAsked asked = ColoniesAsked::All) {
    addBookFile(command, options, purpose);
    optional(command, "--as-of", options.asOf, "the day asked for (default: today); later records do not count",
             "DATE");
    optional(command, "--colony", options.colony,
             asked == ColoniesAsked::All ? "only this one" : "the colony; it must be named", "NAME");
}

void addLearnedAnswerOptions(CLI::App* command, BookAnswers& options, For purpose,
                             ColoniesAsked asked = ColoniesAsked::All) {
    addAnswerOptions(command, options, purpose, asked);
    command->add_flag("--without-learning", options.withoutLearning, "leave out what past winters taught");
}

void addOther(CLI::App* command, const char* name, BookAndFile& options, const std::string& does, For purpose) {
    addBookFile(command, options, purpose);
    command->add_option(name, options.other, does)->required();
}

} // namespace

void addScaleOptions(CLI::App* command, ScaleOptions& options) {
    optional(command, "--delimiter", options.delimiter, "comma, semicolon, tab", "SIGN");
    optional(command, "--decimal", options.decimal, "comma or point", "SIGN");
    optional(command, "--time", options.time, "column of the times, by name or number", "COLUMN");
    optional(command, "--date", options.date, "column of the dates, where they stand apart", "COLUMN");
    optional(command, "--weight", options.weight, "column of the weights", "COLUMN");
    optional(command, "--unit", options.unit, "kg, g or lb", "UNIT");
    optional(command, "--date-order", options.dateOrder, "dmy, mdy or ymd", "ORDER");
    optional(command, "--time-zone", options.timeZone, "where the hive stands: America/Halifax, UTC, +02:00", "ZONE");
    optional(command, "--clock", options.clock, "what the logger's clock shows, where that is another zone", "ZONE");
}

void BookLine::addTo(CLI::App& book, const AddCommand& add) {
    addYards(book, add);
    addColonies(book, add);
    addLooks(book, add);
    addStores(book, add);
    addOthers(book, add);
    addWinter(book, add);
    addAnswers(book, add);
    addFollowing(book, add);
    addStory(book, add);
    addDocuments(book, add);
    addCopies(book, add);
}

void BookLine::addYards(CLI::App& book, const AddCommand& add) {
    auto* made = add(book, "new", "begin a book with its first yard",
                     [this](Session& session) { return newBook(session, new_); });
    addNewBookFile(made, new_);
    addPlace(made, new_);
    auto* yard = add(book, "add-yard", "a further yard", [this](Session& session) { return addYard(session, yard_); });
    addBookFile(yard, yard_, For::Writing);
    addPlace(yard, yard_);
}

namespace {

void addBoxOptions(CLI::App* command, BoxOptions& boxes) {
    command->add_option("--format", boxes.format, "hive format, see winterlarder-cli hive-formats")
        ->required()
        ->type_name("ID");
    optional(command, "--boxes", boxes.boxes, "boxes of that format (default 1)", "K");
    command->add_option("--super", boxes.supers, "a super of this format on them; once for each")
        ->type_name("ID")
        ->allow_extra_args(false);
}

} // namespace

void BookLine::addColonies(CLI::App& book, const AddCommand& add) {
    auto* colony = add(book, "add-colony", "a colony and its hive",
                       [this](Session& session) { return addColony(session, colony_); });
    addBookFile(colony, colony_, For::Writing);
    colony->add_option("--name", colony_.name, "name of the colony")->required()->type_name("NAME");
    addBoxOptions(colony, colony_.boxes);
    optional(colony, "--yard", colony_.yard, "where it stands, if the book has several yards", "NAME");
    optional(colony, "--shell", colony_.shell, "timber (default), thick-timber, wrapped, polystyrene, straw", "SHELL");
    colony->add_flag("--top-insulation", colony_.topInsulation, "insulation above the combs");
    optional(colony, "--tare", colony_.tare, "weight of the hive with its empty combs", "KG");
    optional(colony, "--supers-for", colony_.supersFor, "whom the honey of the supers is for: people, bees", "WORD");
    optional(colony, "--feeder", colony_.feeder, "round, top, box, contact, frame, end", "KIND");
    optional(colony, "--kind", colony_.kind, "bees: dark, carniolan, buckfast, italian", "KIND");
    optional(colony, "--queen-year", colony_.queenYear, "year the queen was raised", "YEAR");
    optional(colony, "--origin", colony_.origin, "where the colony came from", "TEXT");
    optional(colony, "--since", colony_.since, "day the colony began", "DATE");
    addSure(colony, colony_.sure);
    auto* boxes = add(book, "add-boxes", "the boxes a hive has from a day on; the rest of the hive stays as it was",
                      [this](Session& session) { return addBoxes(session, boxes_); });
    addRecordOf(boxes, boxes_);
    addBoxOptions(boxes, boxes_.boxes);
    optional(boxes, "--tare", boxes_.tare, "weight of the hive with these boxes and their empty combs", "KG");
    addSure(boxes, boxes_.sure);
    auto* rename = add(book, "rename-colony", "another name for a colony",
                       [this](Session& session) { return renameColony(session, rename_); });
    addBookFile(rename, rename_, For::Writing);
    rename->add_option("--colony", rename_.colony, "its name, or #ID")->required()->type_name("NAME");
    rename->add_option("--name", rename_.name, "the new name")->required()->type_name("NAME");
}

void BookLine::addLooks(CLI::App& book, const AddCommand& add) {
    auto* look =
        add(book, "add-look", "what was seen in a hive", [this](Session& session) { return addLook(session, look_); });
    addRecordOf(look, look_);
    addSure(look, look_.sure);
    optional(look, "--combs", look_.combs, "the combs of a case file as a JSON file, or - for standard input", "FILE");
    auto* covered =
        optional(look, "--covered-combs", look_.coveredCombs, "combs (frames) covered with bees on both sides", "X");
    auto* seams = optional(look, "--seams", look_.seams, "gaps between combs (frames) filled with bees", "X");
    auto* count = optional(look, "--bees", look_.count, "bees, counted or weighed", "N");
    covered->excludes(seams)->excludes(count);
    seams->excludes(count);
    optional(look, "--brood-cells", look_.broodCells, "cells with brood of all ages", "CELLS");
    optional(look, "--moisture", look_.moisture, "water in the honey, percent", "PERCENT");
    yesOrNo(look, "queen-seen", look_.queenSeen, "the queen was seen");
    yesOrNo(look, "eggs-seen", look_.eggsSeen, "eggs were seen");
    look->add_flag("--trouble", look_.trouble, "there are signs of disease");
    yesOrNo(look, "mites-counted", look_.mitesCounted, "mites were counted this season");
    optional(look, "--mites", look_.mites, "mites on 100 bees, as counted", "X");
    yesOrNo(look, "mites-treated", look_.mitesTreated, "mites were treated this season");
    yesOrNo(look, "food-beside", look_.foodBeside, "food is beside or right above the bees");
    yesOrNo(look, "fed-or-treated", look_.fedOrTreated, "sugar or medicine was in the hive while its honey was made");
    optional(look, "--honey-kind", look_.honeyKind, "blossom, honeydew, heather", "WORD");
}

void BookLine::addStores(CLI::App& book, const AddCommand& add) {
    auto* weighing = add(book, "add-weighing", "a weight, a lift or a heft",
                         [this](Session& session) { return addWeighing(session, weighing_); });
    addRecordOf(weighing, weighing_);
    addSure(weighing, weighing_.sure);
    optional(weighing, "--gross", weighing_.gross, "the whole hive on a scale", "KG");
    weighing->add_option("--lift", weighing_.lift, "a side lifted, or both one after the other")
        ->expected(1, 2)
        ->type_name("KG");
    optional(weighing, "--heft", weighing_.heft, "light, fair or heavy", "WORD");
    weighing->add_flag("--wet", weighing_.wet, "rain or snow lay on the hive");
    auto* feed = add(book, "add-feed", "syrup, fondant or dry sugar that was given",
                     [this](Session& session) { return addFeed(session, feed_); });
    addRecordOf(feed, feed_);
    addSure(feed, feed_.sure);
    optional(feed, "--sugar", feed_.sugar, "sugar in it", "KG");
    optional(feed, "--syrup", feed_.syrup, "litres of syrup, with --ratio", "L");
    optional(feed, "--ratio", feed_.ratio, "sugar to water by mass", "A:B");
    optional(feed, "--fondant", feed_.fondant, "fondant", "KG");
    optional(feed, "--kind", feed_.kind, "syrup (default), fondant, dry-sugar", "KIND");
    yesOrNo(feed, "after-look", feed_.afterLook,
            "it came after the look of that day (default: where that look is written down already)");
    auto* harvest = add(book, "add-harvest", "honey that was taken",
                        [this](Session& session) { return addHarvest(session, harvest_); });
    addRecordOf(harvest, harvest_);
    addSure(harvest, harvest_.sure);
    harvest->add_option("--kg", harvest_.kg, "honey")->required()->type_name("KG");
    optional(harvest, "--combs", harvest_.combs, "combs (frames) taken", "N");
    optional(harvest, "--moisture", harvest_.moisture, "water in the honey, percent", "PERCENT");
    yesOrNo(harvest, "after-look", harvest_.afterLook,
            "it came after the look of that day (default: where that look is written down already)");
}

void BookLine::addOthers(CLI::App& book, const AddCommand& add) {
    auto* treatment = add(book, "add-treatment", "medicine given; its honey is then not for people",
                          [this](Session& session) { return addTreatment(session, treatment_); });
    addRecordOf(treatment, treatment_);
    addSure(treatment, treatment_.sure);
    treatment->add_option("--what", treatment_.what, "what was given")->required()->type_name("TEXT");
    optional(treatment, "--until", treatment_.until, "last day its honey is not for people, as the label says", "DATE");
    auto* fate = add(book, "add-fate", "how a colony left: united, sold or dead",
                     [this](Session& session) { return addFate(session, fate_); });
    addRecordOf(fate, fate_);
    addSure(fate, fate_.sure);
    fate->add_option("--fate", fate_.fate, "united, sold or dead")->required()->type_name("WORD");
    optional(fate, "--into", fate_.into, "the colony it was united into", "NAME");
    fate->add_option("--cause", fate_.cause, "what it died of")->type_name("TEXT");
}

void BookLine::addWinter(CLI::App& book, const AddCommand& add) {
    auto* sighting = add(book, "add-sighting", "a glance in winter: bees flying, the cluster, stores, a dead-out",
                         [this](Session& session) { return addSighting(session, sighting_); });
    addRecordOf(sighting, sighting_);
    addSure(sighting, sighting_.sure);
    sighting->add_option("--saw", sighting_.saw, "flying, cluster, stores or dead")->required()->type_name("WORD");
    optional(sighting, "--seams", sighting_.seams, "gaps between combs the cluster fills", "X");
    auto* stores =
        sighting->add_flag("--stores-in-sight", sighting_.storesInSight, "sealed stores were in sight beside the bees");
    optional(sighting, "--cluster-from", sighting_.clusterFrom,
             "first comb with bees of the cluster, from the left, from 1", "N");
    sighting->add_flag("--no-stores-in-sight", sighting_.noStoresInSight, "there were none")->excludes(stores);
    auto* weather = add(book, "add-weather",
                        "daily temperatures of a yard from a CSV table; they replace simulated days already past",
                        [this](Session& session) { return addWeather(session, weather_); });
    addBookFile(weather, weather_, For::Writing);
    weather->add_option("FILE", weather_.source, "CSV table, or - for standard input")->required();
    optional(weather, "--yard", weather_.yard, "whose, if the book has several yards", "NAME");
    weather->add_option("--columns", weather_.columns, "date=D,mean=T or date=D,min=TMIN,max=TMAX")->type_name("NAMES");
    weather->add_option("--unit", weather_.unit, "c (default) or f")->type_name("UNIT");
    addSure(weather, weather_.sure, "days still to come are right");
    auto* log = add(book, "add-scale-log",
                    "a few weighings and every feed, harvest and change of equipment out of a scale's log",
                    [this](Session& session) { return addScaleLog(session, scaleLog_, scale_); });
    addBookFile(log, scaleLog_, For::Writing);
    log->add_option("FILE", scale_.file, "CSV table of times and weights, or - for standard input")->required();
    log->add_option("--colony", scaleLog_.colony, "its name, or its number where none has the name")
        ->required()
        ->type_name("NAME");
    optional(log, "--ratio", scaleLog_.ratio, "of the syrup fed meanwhile, sugar to water by mass", "A:B");
    log->add_flag("--preview", scaleLog_.preview, "only say what would be added, and what is asked about it");
    addSure(log, scaleLog_.sure, "unlikely records are right");
    addScaleOptions(log, scale_);
}

void BookLine::addAnswers(CLI::App& book, const AddCommand& add) {
    auto* advised = add(book, "advise", "the answer for every living colony, or one",
                        [this](Session& session) { return adviseBook(session, advise_); });
    addLearnedAnswerOptions(advised, advise_, For::Reading);
    advised->add_flag("--combs-stay", advise_.combsStay, "plan yards without moving combs between hives");
    auto* asCase = add(book, "case", "a colony as a case file for advise",
                       [this](Session& session) { return bookCase(session, case_); });
    addLearnedAnswerOptions(asCase, case_, For::Reading, ColoniesAsked::One);
    auto* accepted = add(book, "accept", "act on the advice of a colony: freeze it in the book, plan its visits",
                         [this](Session& session) { return acceptAdvice(session, accept_); });
    addLearnedAnswerOptions(accepted, accept_, For::Writing, ColoniesAsked::One);
    accepted->add_flag("--combs-stay", accept_.combsStay, "as its yard is planned without moving combs between hives");
}

void BookLine::addFollowing(CLI::App& book, const AddCommand& add) {
    auto* followed =
        add(book, "follow", "how the winter of every living colony goes: forecast then and now, what to do",
            [this](Session& session) { return followBook(session, follow_); });
    addLearnedAnswerOptions(followed, follow_, For::Reading);
    followed->add_flag("--daily", follow_.daily, "every day in the JSON, not every seventh");
    auto* outcome =
        add(book, "outcome", "how a winter ended", [this](Session& session) { return addOutcome(session, outcome_); });
    addRecordOf(outcome, outcome_);
    addSure(outcome, outcome_.sure);
    auto* alive = outcome->add_flag("--alive", outcome_.alive, "the colony lives");
    outcome->add_flag("--dead", outcome_.dead, "it died")->excludes(alive);
    optional(outcome, "--covered-combs", outcome_.coveredCombs, "combs its bees cover", "X");
    optional(outcome, "--stores", outcome_.stores, "stores left", "KG");
    yesOrNo(outcome, "food-left", outcome_.foodLeft, "food was left within reach of the dead bees");
    yesOrNo(outcome, "heads-in-cells", outcome_.headsInCells, "dead bees were head down in the cells");
    yesOrNo(outcome, "mites-on-floor", outcome_.mitesOnFloor, "many mites lay on the floor");
    optional(outcome, "--brood-pattern", outcome_.broodPattern, "brood in the dead hive: none, solid, patchy", "WORD");
    yesOrNo(outcome, "queen-found", outcome_.queen, "the queen was found");
    addAnswerOptions(add(book, "learned", "what past winters taught, and how good their forecasts were",
                         [this](Session& session) { return learnedBook(session, learned_); }),
                     learned_, For::Reading);
    auto* calendar = add(book, "calendar", "what is due as an iCalendar file: visits, and what answers ask",
                         [this](Session& session) { return bookCalendar(session, calendar_); });
    addAnswerOptions(calendar, calendar_, For::Reading);
    calendar->add_flag("--combs-stay", calendar_.combsStay, "as yards are planned without moving combs between hives");
}

void BookLine::addStory(CLI::App& book, const AddCommand& add) {
    auto* story = add(book, "story", "every step of the book, newest first",
                      [this](Session& session) { return bookStory(session, story_); });
    addBookFile(story, story_, For::Reading);
    story->add_option("--count", story_.count, "at most so many steps (default 100)")->type_name("N");
    addBookFile(add(book, "info", "what the book holds", [this](Session& session) { return bookInfo(session, info_); }),
                info_, For::Reading);
    addBookFile(add(book, "check", "look for damage; 0 = sound",
                    [this](Session& session) { return checkBook(session, check_); }),
                check_, For::Reading);
    addBookFile(add(book, "undo", "take the last step back",
                    [this](Session& session) { return turnBook(session, undo_, book::Turned::Back); }),
                undo_, For::Writing);
    addBookFile(add(book, "redo", "do again the step undone last",
                    [this](Session& session) { return turnBook(session, redo_, book::Turned::Forth); }),
                redo_, For::Writing);
}

void BookLine::addDocuments(CLI::App& book, const AddCommand& add) {
    auto* exported = add(book, "export", "the whole book as JSON (--json), or one table as CSV",
                         [this](Session& session) { return exportBook(session, export_); });
    addBookFile(exported, export_, For::Reading);
    optional(exported, "--table", export_.table, "such as looks, look_combs, weighings", "NAME");
    const char* const what = "a JSON document in place of all there is, or CSV rows into one table; undoable";
    auto* imported = add(book, "import", what, [this](Session& session) { return importBook(session, import_); });
    addBookFile(imported, import_, For::Writing);
    imported->add_option("FILE", import_.source, "document or table, or - for standard input")->required();
    optional(imported, "--table", import_.table, "the table of a CSV file (default: its name)", "NAME");
    imported->add_flag("--preview", import_.preview, "only say what a table would add, and what is asked about it");
    addSure(imported, import_.sure, "unlikely entries are right");
}

void BookLine::addCopies(CLI::App& book, const AddCommand& add) {
    auto* copied =
        add(book, "copy", "a compact copy in one file", [this](Session& session) { return copyBook(session, copy_); });
    addOther(copied, "NEW", copy_, "file to write; never one that is there", For::Reading);
    auto* backups = add(book, "backups", "the backups beside the book, newest first",
                        [this](Session& session) { return bookBackups(session, backups_); });
    addBookFile(backups, backups_, For::Writing);
    backups->add_flag("--make", backups_.make, "make one now");
    addOther(add(book, "restore", "the book as it was in a backup; undoable",
                 [this](Session& session) { return restoreBook(session, restore_); }),
             "BACKUP", restore_, "file, or its name as backups lists it", For::Writing);
    auto* salvaged = add(book, "salvage", "what can be read of a damaged book, in a new one",
                         [this](Session& session) { return salvageBook(session, salvage_); });
    addNewBookFile(salvaged, salvage_);
    salvaged->add_option("NEW", salvage_.other, "the new book's file")->required();
}

} // namespace winterlarder::cli
