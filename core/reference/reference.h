// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"
#include "reference/decision_constants.h"
#include "reference/mark.h"
#include "reference/model_constants.h"
#include "reference/remark.h"
#include "reference/what_is_usual.h"
#include "support/outcome.h"

#include <array>
#include <filesystem>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder {

//! A publication, data set or practice that shipped numbers come from (shared/sources.csv).
struct Source {
    std::string id;
    std::string citation;
    std::optional<int> year;
    Mark mark =
        Mark::Published; //!< memory if it was not re-read; handbook, common practice, judgement by kind; else published
    std::vector<std::string> usedBy; //!< shipped files (path below shared/) that name it; filled when loading
};

//! A shipped climate station (shared/climate/stations.csv). Temperatures are monthly means of air, January first.
//! Spreads are standard deviations of daily means round the annual curve; a missing one is filled by the climate module.
struct Station {
    std::string id;
    std::string place;
    std::string country;
    double latitude = 0;  //!< degrees north
    double longitude = 0; //!< degrees east
    double elevationM = 0;
    std::array<double, 12> monthlyMeanC{};
    double dailySdWinterK = 0;
    double dailySdSummerK = 0;
    double lag1 = 0; //!< correlation of consecutive daily anomalies in the cold season
    std::optional<double> seasonOffsetSdK;
    std::string source;
    Mark mark = Mark::Measured;
};

//! Outline and spacing of a comb and how many a box holds (shared/hives/formats.csv). bottomWidth == combWidth is a
//! rectangle; otherwise a trapezoid (sloping sides).
struct HiveFormat {
    std::string id;
    std::string name;
    std::string region;
    Length combWidth;
    Length combHeight;
    Length bottomWidth;
    int combsPerBox = 0;
    Length pitch; //!< centre to centre = bar width in a top-bar hive
    std::optional<Length> pitchMax;
    BeeCount beesPerSide; //!< one face fully covered
    std::string note;
    std::string family;                                  //!< formats of one make
    std::vector<std::string> countries;                  //!< ISO 3166: where it is usual
    bool isOneRoom() const { return combsPerBox >= 20; } //!< long and top-bar hives: no second box stands on it
};

//! A kind of feeder (shared/hives/feeders.csv): what holds of it where the keeper says no more than its kind.
struct FeederType {
    std::string id; //!< word of feeder.kind
    Volume capacity;
    bool overAll = false;   //!< a filling of any size is one portion
    bool atCluster = false; //!< bees reach it without leaving the cluster
    bool slow = false;      //!< few bees reach the syrup at once
};

//! A caution, a reason or a refusal the advice may give: its id and the sources behind it (shared/rules/cautions.csv).
struct CautionRule {
    enum class Kind { Caution, Reason, Refusal };
    std::string id;
    Kind kind = Kind::Caution;
    std::vector<std::string> sources; //!< ids of Source, the first is the one shown
};

//! A published rule of feeding, harvest and winter care (shared/rules/feeding.csv).
struct PublishedRule {
    std::string id;
    std::string topic;
    std::string region;
    std::string condition;
    std::string value;
    std::string unit;
    std::string source;
    char quality =
        'C'; //!< A paper, law or measurement; B official body, institute, association, textbook; C common practice
    Mark mark = Mark::Published;
};

//! One entry of the data dictionary (shared/fields.csv): type, unit and limits of something a user may enter.
struct FieldLimits {
    std::string name; //!< key of the case file or column of the book, dotted: "bees.count", "combs.capped"
    std::string type; //!< "number", "integer", "text", "date", "flag", "choice"
    std::string unit; //!< "kg", "mm", "" for none
    std::optional<double> minimum;
    std::optional<double> maximum;
    std::optional<double> step;
    std::string defaultText;
    std::vector<std::string> choices; //!< for "choice"
    std::vector<std::string> sources; //!< ids of Source behind the default or the factors, may be none
    std::string note;
};

//! What a number may be, both ends allowed.
struct NumberRange {
    double least = std::numeric_limits<double>::lowest();
    double most = std::numeric_limits<double>::max();
    bool holds(double value) const { return value >= least && value <= most; } //!< never of what is no number
};

//! Everything that ships in shared/, read once and never changed. Look-ups by id give nullptr where there is none.
struct ReferenceData {
    ModelConstants constants;
    DecisionConstants decisions;
    std::vector<Station> stations;
    std::vector<HiveFormat> formats;
    std::vector<FeederType> feeders; //!< every word of feeder.kind, in its order
    std::vector<Source> sources;
    std::vector<CautionRule> cautions;
    std::vector<PublishedRule> rules;
    std::vector<UsualStores> usualStores;
    std::vector<LateFlow> lateFlows;
    std::vector<FieldLimits> fields;

    const Station* station(std::string_view id) const;
    const HiveFormat* format(std::string_view id) const;
    const FeederType* feeder(std::string_view id) const;
    const Source* source(std::string_view id) const;
    const CautionRule* caution(std::string_view id) const;
    //! The sources behind a remark: its own (detail "source"), where it names one, else those of its rule.
    std::vector<std::string> sourcesOf(const Remark& remark) const;
    const FieldLimits* field(std::string_view name) const;
    //! Limits of a field of the dictionary, in its unit; the field must be there.
    NumberRange range(std::string_view field) const;
};

//! Reads and strictly checks the data folder (shared/). Every fault of every file is listed with file, line, column and
//! what would be right: unknown or missing columns, numbers out of range, ids that do not resolve, doubles. The check
//! values in shared/reference/ are not kept, but the sources they name are checked and counted in Source::usedBy.
//! Tested: tests/reference.
Outcome<ReferenceData> loadReference(const std::filesystem::path& folder);

} // namespace winterlarder
