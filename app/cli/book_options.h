// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

//! What the command line said to the commands of `book`.
namespace winterlarder::cli {

//! The book, and who writes into it (the user of the system where not said).
struct BookFile {
    std::string file;
    std::optional<std::string> by;
    bool takeOver = false; //!< it is open nowhere, whatever another machine's sign says
};

struct NewBook : BookFile {
    std::string yard;
    std::optional<std::string> station, place, autumnFlow, units;
    std::optional<double> latitude, longitude, elevation, fullCombs;
    std::optional<bool> visitsInWinter;
};

//! A yard more in a book that is there.
using NewYard = NewBook;

//! The boxes of a hive, from the floor up.
struct BoxOptions {
    std::string format;
    std::optional<int> boxes;        //!< of that format (1 where not said)
    std::vector<std::string> supers; //!< formats of the supers on them
};

struct NewColony : BookFile {
    std::string name;
    BoxOptions boxes;
    std::optional<std::string> yard, shell, kind, origin, since, feeder, supersFor;
    std::optional<int> queenYear;
    std::optional<double> tare;
    bool topInsulation = false;
    bool sure = false; //!< an unlikely tare or day is right
};

//! What every record of a colony says.
struct RecordOf : BookFile {
    std::string colony, date, note;
    bool sure = false; //!< an unlikely entry is right
};

//! The boxes a hive has from a day on.
struct NewBoxes : RecordOf {
    BoxOptions boxes;
    std::optional<double> tare;
};

struct RenamedColony : BookFile {
    std::string colony, name;
};

struct NewLook : RecordOf {
    std::optional<std::string> combs, honeyKind;
    std::optional<double> coveredCombs, seams, count, broodCells, moisture, mites;
    std::optional<bool> queenSeen, eggsSeen, mitesCounted, mitesTreated, foodBeside, fedOrTreated;
    bool trouble = false;
};

struct NewWeighing : RecordOf {
    std::optional<double> gross;
    std::vector<double> lift;
    std::optional<std::string> heft;
    bool wet = false;
};

struct NewFeed : RecordOf {
    std::optional<std::string> kind, ratio;
    std::optional<double> sugar, syrup, fondant;
    std::optional<bool> afterLook;
};

struct NewHarvest : RecordOf {
    double kg = 0;
    std::optional<int> combs;
    std::optional<double> moisture;
    std::optional<bool> afterLook;
};

struct NewTreatment : RecordOf {
    std::string what;
    std::optional<std::string> until;
};

//! A glance in winter, from outside or under the crown board.
struct NewSighting : RecordOf {
    std::string saw;
    std::optional<double> seams;
    std::optional<int> clusterFrom;
    bool storesInSight = false, noStoresInSight = false;
};

//! Daily temperatures of a yard from a CSV file.
struct NewWeather : BookFile {
    std::string source, columns, unit = "c";
    std::optional<std::string> yard;
    bool sure = false; //!< days still to come are right
};

//! The log of a scale under a hive.
struct NewScaleLog : BookFile {
    std::string colony;
    std::optional<std::string> ratio; //!< of the syrup that was fed meanwhile
    bool preview = false;
    bool sure = false; //!< unlikely records are right
};

//! How a colony left: united into another, sold or dead.
struct NewFate : RecordOf {
    std::string fate;
    std::optional<std::string> into;
    std::string cause;
};

//! Answers out of the book on a day (today where not said), of one colony or all.
struct BookAnswers : BookFile {
    std::optional<std::string> asOf, colony;
    bool withoutLearning = false; //!< what past winters taught is left out
    bool combsStay = false;       //!< yards are planned without moving combs
};

//! How winters go.
struct BookFollow : BookAnswers {
    bool daily = false;
};

//! How a winter ended.
struct NewOutcome : RecordOf {
    bool alive = false, dead = false;
    std::optional<double> coveredCombs, stores;
    std::optional<bool> foodLeft, headsInCells, mitesOnFloor, queen;
    std::optional<std::string> broodPattern;
};

struct BookStory : BookFile {
    int count = 100;
};

struct BookExport : BookFile {
    std::optional<std::string> table;
};

struct BookImport : BookFile {
    std::string source;
    std::optional<std::string> table;
    bool preview = false;
    bool sure = false; //!< unlikely rows are right
};

//! A second file beside the book: the copy, the backup, the salvaged book.
struct BookAndFile : BookFile {
    std::string other;
};

struct BookBackups : BookFile {
    bool make = false;
};

} // namespace winterlarder::cli
