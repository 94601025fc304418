// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/tare.h"

#include "support/require.h"

#include <algorithm>
#include <optional>
#include <string_view>

namespace winterlarder::stores {

namespace {

constexpr Mass germanFloorAndLids = kilograms(3 * 1.5);
constexpr Mass polystyreneFloorAndLids = kilograms(3);
constexpr Mass polystyreneLess = kilograms(2);
constexpr Mass nucleusHive = kilograms(12);
constexpr int nucleusPlaces = 6;
constexpr Mass partsSd = kilograms(2);
constexpr Mass ruleSd = kilograms(3);
constexpr Mass ruleOfBuiltComb = kilograms(0.09); // per dm2 of one face
constexpr Mass woodOfEmptyPlace = kilograms(0.07);
constexpr Mass unsaidWax = (newWax + oldWax) / 2.0;
constexpr double langstrothDeepFace = 4.28 * 2.05; // dm2

//! Weight of a box as published: with its wax counted in when all its places are built, or without any.
struct PublishedBox {
    std::string_view format;
    int fewestPlaces, mostPlaces;
    Walls walls;
    Mass mass;
    bool withWax;
};

// Dadant: the whole hive less the floor and lids above, less 2 kg of bees.
constexpr PublishedBox publishedBoxes[] = {
    {"langstroth-deep", 9, 10, Walls::Timber, kilograms(6.2), false},
    {"nz-full-depth", 9, 10, Walls::Timber, kilograms(6.2), false},
    {"langstroth-medium", 9, 10, Walls::Timber, kilograms(4.7), true},
    {"langstroth-deep", 9, 10, Walls::Polystyrene, kilograms(7), true},
    {"dadant-blatt-10", 10, 10, Walls::Timber, kilograms(20 - 2 - 6.5), true},
    {"dadant-blatt-12", 12, 12, Walls::Timber, kilograms(23 - 2 - 6.5), true},
    {"russian-dadant", 12, 12, Walls::Timber, kilograms(23 - 2 - 6.5), true},
    {"warre", 8, 8, Walls::Timber, kilograms(4), true},
};
constexpr std::string_view germanNormal = "deutsch-normal";
constexpr Mass germanNormalBox = kilograms(3.2);

//! A box and the combs built in it.
struct FilledBox {
    const hive::CombFormat& format;
    Area placesArea{0}; //!< every place built
    Area builtArea{0};
    Mass wax{0};
};

Mass waxPerArea(const Comb& comb) {
    if (comb.oldNest) return oldWax;
    return comb.inSuper ? newWax : unsaidWax;
}

FilledBox filledBox(const TareQuestion& question, int index) {
    const hive::CombFormat& format = question.boxes[static_cast<std::size_t>(index)];
    FilledBox box{format};
    box.placesArea = hive::faceArea(format.outline) * format.combsPerBox;
    if (question.combs.empty()) {
        box.builtArea = box.placesArea;
        box.wax = unsaidWax * box.placesArea.value();
    }
    for (const Comb& comb : question.combs) {
        if (comb.box != index) continue;
        box.builtArea += areaOf(comb);
        box.wax += waxPerArea(comb) * areaOf(comb).value();
    }
    return box;
}

Mass missingWax(const FilledBox& box) { return unsaidWax * std::max(0.0, (box.placesArea - box.builtArea).value()); }

std::optional<Mass> publishedWeight(const FilledBox& box, Walls walls) {
    if (box.format.id == germanNormal && walls == Walls::Timber) {
        const Mass combs = (drawnComb(box.placesArea, CombAge::Light) + drawnComb(box.placesArea, CombAge::Old)) / 2.0;
        return germanNormalBox + combs - missingWax(box);
    }
    for (const PublishedBox& published : publishedBoxes) {
        const bool fits = published.format == box.format.id && published.walls == walls &&
                          box.format.combsPerBox >= published.fewestPlaces &&
                          box.format.combsPerBox <= published.mostPlaces;
        if (fits) return published.withWax ? published.mass - missingWax(box) : published.mass + box.wax;
    }
    return std::nullopt;
}

Mass ruleWeight(const FilledBox& box) {
    const double empty = std::max(0.0, (box.placesArea - box.builtArea).value());
    const Mass emptyWood = box.format.combsPerBox >= hive::longHiveCombs ? woodOfEmptyPlace * empty : kilograms(0);
    return ruleOfBuiltComb * box.builtArea.value() + emptyWood;
}

bool isNucleusHive(const TareQuestion& question) {
    return question.nucleus && question.walls == Walls::Timber && question.boxes.size() == 1 &&
           question.boxes.front().combsPerBox <= nucleusPlaces;
}

Mass floorAndLidsOf(const TareQuestion& question, bool allPublished) {
    if (question.walls == Walls::Polystyrene)
        return allPublished ? polystyreneFloorAndLids : floorAndLids - polystyreneLess;
    const bool german = allPublished && question.boxes.front().id == germanNormal;
    return german ? germanFloorAndLids : floorAndLids;
}

} // namespace

Tare tareFromParts(const TareQuestion& question) {
    require(!question.boxes.empty(), "a hive without boxes has no weight");
    if (isNucleusHive(question)) return {nucleusHive, partsSd};
    Mass boxes{0}, boxesByRule{0};
    bool allPublished = true;
    for (int index = 0; index < static_cast<int>(question.boxes.size()); ++index) {
        const FilledBox box = filledBox(question, index);
        const auto published = publishedWeight(box, question.walls);
        allPublished = allPublished && published;
        boxesByRule += ruleWeight(box);
        boxes += published.value_or(ruleWeight(box));
    }
    const bool polystyreneByRule = question.walls == Walls::Polystyrene && !allPublished;
    return {floorAndLidsOf(question, allPublished) + (polystyreneByRule ? boxesByRule : boxes),
            allPublished ? partsSd : ruleSd};
}

Mass drawnComb(Area face, CombAge age) {
    return kilograms(age == CombAge::Light ? 0.40 : 0.55) * (face.value() / langstrothDeepFace);
}

} // namespace winterlarder::stores
