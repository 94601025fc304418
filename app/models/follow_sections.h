// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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
//! temperature, spring, and what was seen beside what was expected. A section with nothing to say is left out.
//! Tested: tests/app/following_test.cpp.
std::vector<FollowSection> followSections(const FollowedWinter& followed);

} // namespace winterlarder::desk
