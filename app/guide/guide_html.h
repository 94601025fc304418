// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/guide/guide.h"
#include "theme/colours.h"

namespace winterlarder::desk {

//! A page of the guide as the window shows it; drawings as images "drawing:NUMBER" so wide, words escaped. Where the table lists the reader's
//! own hives a link leads to all of them and back.
struct GuideLook {
    int drawingWidth = 0; //!< px
    bool allHives = false;
    bool hasOwnHives = false;
};
QString guideHtml(const text::GuideText& page, const ReferenceData& reference, const Colours& colours,
                  const GuideLook& look);

inline constexpr const char* allHivesLink = "all-hives";
QString drawingName(text::GuideDrawing drawing); //!< "drawing:3"
std::optional<text::GuideDrawing> drawingCalled(const QString& name);

} // namespace winterlarder::desk
