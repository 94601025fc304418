// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/scale_answer.h"
#include "calendar/date.h"
#include "cli/session.h"

#include <optional>
#include <string>
#include <vector>

//! The commands: each takes what the command line said and answers on the session's streams.
//! Tested: tests/cli.
namespace winterlarder::cli {

Status advise(Session& session, const std::vector<std::string>& cases);

struct UseOptions {
    std::string caseFile, from, to;
    bool daily = false, central = false;
};
Status use(Session& session, const UseOptions& options);

struct HeatOptions {
    double bees = 0, temperatureC = 0, broodCells = 0;
    std::string shell = "timber";
    bool topInsulation = false, steady = false;
    std::string kind = "carniolan";
};
Status heat(Session& session, const HeatOptions& options);

Status stores(Session& session, const std::string& caseFile);

struct SyrupOptions {
    std::optional<double> sugarKg, storesKg;
    std::string ratio, basis = "mass";
};
Status syrup(Session& session, const SyrupOptions& options);

struct StationsOptions {
    std::optional<std::string> near, find;
};
Status stations(Session& session, const StationsOptions& options);

struct PlacesOptions {
    std::vector<std::string> query;
    int most = 10;
};
Status places(Session& session, const PlacesOptions& options);

struct SeasonOptions {
    std::optional<std::string> station, caseFile;
    std::optional<int> winter;
    bool daily = false;
};
Status season(Session& session, const SeasonOptions& options);

struct ClimateOptions {
    std::string file, columns, unit = "c";
    double latitude = 0;
    std::optional<double> longitude;
    bool sure = false; //!< days still to come are right
};
Status climate(Session& session, const ClimateOptions& options);

struct ScaleOptions {
    std::string file;
    std::optional<std::string> delimiter, decimal, date, time, weight, unit, dateOrder, timeZone, clock;
    bool daily = false;
};
Status scale(Session& session, const ScaleOptions& options);
//! What a log tells; problems are those of the arguments and of the file.
Outcome<answer::ScaleAnswer> readScale(Session& session, const ScaleOptions& options);

Status hiveFormats(Session& session);
//! Keys of a case file and columns of a book's tables with what they may be: all, one, or those of a group ("hive").
Status keys(Session& session, const std::optional<std::string>& group);
Status sources(Session& session, const std::optional<std::string>& id);

struct GuideOptions {
    std::optional<std::string> page, hive;
};
//! A page of the guide; without one its contents.
Status guide(Session& session, const GuideOptions& options);

} // namespace winterlarder::cli
