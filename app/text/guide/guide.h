// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hive/hive.h"
#include "reference/reference.h"
#include "text/style.h"

#include <QString>
#include <QStringList>

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

//! The guide "Judging stores": eight short pages for people who never did it. Its words and numbers; what is drawn is app/guide.
namespace winterlarder::text {

enum class GuidePage { When, Weight, FullComb, Cells, Bees, Opening, Feeding, Winter };
inline constexpr std::array allGuidePages{GuidePage::When, GuidePage::Weight,  GuidePage::FullComb, GuidePage::Cells,
                                          GuidePage::Bees, GuidePage::Opening, GuidePage::Feeding,  GuidePage::Winter};

//! What a page shows beside its words.
enum class GuideDrawing {
    Year,
    Heft,
    BothSides,
    Eighths,
    PartFull,
    CellKinds,
    Zones,
    Seams,
    Brood,
    Thermometer,
    Order,
    Syrup,
    Feeder,
    Reach,
    Snow
};
inline constexpr std::array allGuideDrawings{GuideDrawing::Year,        GuideDrawing::Heft,     GuideDrawing::BothSides,
                                             GuideDrawing::Eighths,     GuideDrawing::PartFull, GuideDrawing::CellKinds,
                                             GuideDrawing::Zones,       GuideDrawing::Seams,    GuideDrawing::Brood,
                                             GuideDrawing::Thermometer, GuideDrawing::Order,    GuideDrawing::Syrup,
                                             GuideDrawing::Feeder,      GuideDrawing::Reach,    GuideDrawing::Snow};

//! A kind of comb the reader has, by the name of its hive.
struct GuideHive {
    QString name;
    hive::CombFormat format;
};

//! For whom a page is written: whose numbers, in which units, for which hives.
struct GuideReader {
    const ReferenceData& reference;
    WordStyle style;
    //! those the reader keeps; none: examples speak of the shipped Langstroth deep, tables of every hive
    std::vector<GuideHive> hives{};
    bool everyHive = false; //!< tables list every shipped hive, whichever the reader keeps
};

// The parts of a page, in the order they are read.
struct GuideParagraph {
    QString words;
};
struct GuidePoint {
    QString name, words;
}; //!< of a list; the name stands out
struct GuideTable {
    QStringList headings; //!< columns after the first hold numbers
    std::vector<QStringList> rows;
};
struct GuidePicture {
    GuideDrawing drawing;
    QString says; //!< what is to be seen on it, for those too who cannot see it
};
using GuidePart = std::variant<GuideParagraph, GuidePoint, GuideTable, GuidePicture>;

//! A number of a page that stands in a row of shared/rules/feeding.csv.
struct RuledNumber {
    std::string rule;
    QString number; //!< as the row writes it
};

struct GuideText {
    GuidePage page;
    QString title;
    std::vector<GuidePart> parts;
    std::vector<std::string> sources; //!< ids of shared/sources.csv, named at the foot; those of its rules among them
    std::vector<RuledNumber> rules;   //!< each is held against its row by a test
};

//! "weight": the page's name on the command line and in links.
const char* guideId(GuidePage page);
std::optional<GuidePage> guideCalled(std::string_view id); //!< nothing where no page is called so
QString guideTitle(GuidePage page);

//! A page with every number worked out by the core or read from the shipped tables, written by the reader's style.
//! Tested: tests/guide/words_test.cpp.
GuideText guideText(GuidePage page, const GuideReader& reader);

//! How the first column of a table of hives is headed.
QString guideHiveHeading();
//! The reader's first hive, which examples speak of.
GuideHive exampleHive(const GuideReader& reader);
//! The reader's hives; where none are known every shipped one.
std::vector<GuideHive> hivesOf(const GuideReader& reader);

} // namespace winterlarder::text
