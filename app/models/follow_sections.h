// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/dead_hive.h"
#include "models/followed_winter.h"

#include <QString>
#include <QStringList>

namespace winterlarder::desk {

//! A heading and the lines under it.
struct FollowSection {
    QString heading;
    QStringList lines;
};

//! All that is said of a followed winter under its picture: the dates that matter, what to feed, the safe way to look or feed at this
//! temperature, spring, and what was seen beside what was expected; of a dead hive what was found in it points to, and what is still to be looked
//! for. A section with nothing to say is left out.
//! Tested: tests/app/following_test.cpp.
//! Its reasons; after a death also what was found in the hive points to. Nothing where it could not be followed.
std::vector<Remark> followReasons(const FollowedWinter& followed);
std::vector<FollowSection> followSections(const FollowedWinter& followed);

} // namespace winterlarder::desk
