// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/book_options.h"
#include "cli/commands.h"
#include "cli/session.h"

#include <functional>
#include <string>

namespace CLI {
class App;
} // namespace CLI

namespace winterlarder::cli {

//! A command that was chosen, to be run once the data are loaded.
using Chosen = std::function<Status(Session&)>;

//! The options that say how the log of a scale is written, as `scale` takes them.
void addScaleOptions(CLI::App* command, ScaleOptions& options);

//! The commands of `book` as the command line reads them.
class BookLine {
public:
    using AddCommand =
        std::function<CLI::App*(CLI::App& parent, const std::string& name, const std::string& does, Chosen run)>;
    void addTo(CLI::App& book, const AddCommand& add);

private:
    void addYards(CLI::App& book, const AddCommand& add);
    void addColonies(CLI::App& book, const AddCommand& add);
    void addLooks(CLI::App& book, const AddCommand& add);
    void addStores(CLI::App& book, const AddCommand& add);
    void addOthers(CLI::App& book, const AddCommand& add);
    void addWinter(CLI::App& book, const AddCommand& add);
    void addAnswers(CLI::App& book, const AddCommand& add);
    void addFollowing(CLI::App& book, const AddCommand& add);
    void addStory(CLI::App& book, const AddCommand& add);
    void addDocuments(CLI::App& book, const AddCommand& add);
    void addCopies(CLI::App& book, const AddCommand& add);

    NewBook new_, yard_;
    NewColony colony_;
    NewBoxes boxes_;
    RenamedColony rename_;
    NewLook look_;
    NewWeighing weighing_;
    NewFeed feed_;
    NewHarvest harvest_;
    NewTreatment treatment_;
    NewFate fate_;
    NewSighting sighting_;
    NewWeather weather_;
    NewScaleLog scaleLog_;
    ScaleOptions scale_;
    BookAnswers advise_, case_, accept_, learned_, calendar_;
    BookFollow follow_;
    NewOutcome outcome_;
    BookStory story_;
    BookFile info_, check_, undo_, redo_;
    BookExport export_;
    BookImport import_;
    BookAndFile copy_, restore_, salvage_;
    BookBackups backups_;
};

} // namespace winterlarder::cli
