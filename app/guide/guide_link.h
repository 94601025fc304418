// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"
#include "text/guide/guide.h"

#include <QPushButton>

namespace winterlarder::desk {

//! Says which page of the guide a widget, and all within it, is judged by.
void setGuidePage(QWidget* widget, text::GuidePage page);
//! The page of a widget or the nearest one around it that has one; none (or no widget): the first.
text::GuidePage guidePageOf(const QWidget* widget);

class GuideWindow;
//! Opens a page over the window that asks, so that it can be read while a form is open; each window has one guide.
GuideWindow* openGuide(QWidget* from, Yard* yard, text::GuidePage page);

//! Leads to the page of the guide that says how something is judged: in words for all of its parent, by the
//! title of the page where several stand together, or as a question mark beside a field.
//! Tested: tests/guide/window_test.cpp.
class GuideLink : public QPushButton {
    Q_OBJECT

public:
    enum class As { Words, Title, Mark };
    GuideLink(QWidget* parent, Yard* yard, text::GuidePage page, As as = As::Words);
    text::GuidePage page() const { return page_; }

private:
    text::GuidePage page_;
};

//! A question mark right of a field: both are laid into one widget, which is given back; F1 in the field opens the same page.
QWidget* withGuideLink(QWidget* field, Yard* yard, text::GuidePage page);

} // namespace winterlarder::desk
