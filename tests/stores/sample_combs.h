// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"

#include <rapidcheck.h>
#include <string>
#include <vector>

//! Combs and boxes the tests of stores share. Measures are those of the shipped formats of the same name.
namespace winterlarder::stores::samples {

inline hive::CombFormat box(std::string id, double width, double height, double pitch, double beesPerSide, int places) {
    return {std::move(id),
            {millimetres(width), millimetres(width), millimetres(height)},
            millimetres(pitch),
            {beesPerSide},
            places};
}
inline hive::CombFormat deep(int places = 10) { return box("langstroth-deep", 428, 205, 35, 1100, places); }
inline hive::CombFormat medium(int places = 10) { return box("langstroth-medium", 428, 135, 35, 754, places); }
inline hive::CombFormat longHive() { return box("langstroth-long", 428, 205, 35, 1100, 24); }

//! A comb of a format with some of it capped and some open, brood not spoken of.
inline Comb comb(const hive::CombFormat& format, int place, double capped, double open = 0) {
    Comb made;
    made.format = format;
    made.place = place;
    made.capped = capped;
    made.open = open;
    return made;
}

inline Comb unseen(const hive::CombFormat& format, int place, int inBox = 0) {
    Comb made = comb(format, place, 0);
    made.box = inBox;
    made.facesSeen = 0;
    return made;
}

//! Honey of one sealed dm2 at 35 mm, phi 0.84, both faces [kg]: 14.177 g x (35 - 10.2) x 0.84.
inline constexpr double sealedPerArea = 0.2953383;

inline Date day(int month, int dayOfMonth) { return *Date::of(2026, month, dayOfMonth); }

//! Any comb a keeper may record; one in four not looked at.
inline Comb anyComb(int place) {
    int zones[5];
    int sum = 0;
    for (int& zone : zones) sum += zone = *rc::gen::inRange(0, 101);
    const double whole = sum > 0 ? sum : 1;
    Comb made = comb(deep(), place, zones[0] / whole, zones[1] / whole);
    made.brood = zones[2] / whole;
    made.pollen = zones[3] / whole;
    made.broodSaid = *rc::gen::arbitrary<bool>();
    made.built = *rc::gen::inRange(1, 101) / 100.0;
    made.inSuper = *rc::gen::arbitrary<bool>();
    made.facesSeen = *rc::gen::element(0, 1, 2, 2);
    return made;
}

//! One to ten combs of one box, the first looked at.
inline std::vector<Comb> anyCombs() {
    const int count = *rc::gen::inRange(1, 11);
    std::vector<Comb> combs;
    for (int place = 0; place < count; ++place) combs.push_back(anyComb(place));
    if (combs.front().facesSeen == 0) combs.front().facesSeen = 2;
    return combs;
}

} // namespace winterlarder::stores::samples
