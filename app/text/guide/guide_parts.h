// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/contexts.h"
#include "text/guide/guide.h"

//! What the pages of the guide are made with.
namespace winterlarder::text {

//! Writes a page part by part, in the words of the reader's place.
class GuideWriter {
public:
    GuideWriter(GuidePage page, const GuideReader& forWhom)
        : reader(forWhom), text_{page, guideTitle(page), {}, {}, {}} {}
    void say(const QString& words) { text_.parts.push_back(GuideParagraph{there(words)}); }
    void point(const QString& name, const QString& words) {
        text_.parts.push_back(GuidePoint{there(name), there(words)});
    }
    void show(GuideDrawing drawing, const QString& says) { text_.parts.push_back(GuidePicture{drawing, there(says)}); }
    void table(GuideTable table) {
        for (QString& heading : table.headings) heading = there(heading);
        for (QStringList& row : table.rows) row.front() = there(row.front());
        text_.parts.push_back(std::move(table));
    }
    //! The page, with these sources and those of its rules at its foot.
    GuideText from(const std::vector<std::string>& sources);
    const GuideReader& reader;

    // Numbers as the reader writes them.
    QString kg(Mass mass) const { return text::mass(mass, reader.style); }
    //! A quantity written in a published rule: ruled("rule-175", "5", "°C").
    QString ruled(const char* rule, const char* number, const char* unit);
    //! A plain number of such a rule, as it is written there.
    QString ruled(const char* rule, const char* number);
    QString warmth(double degreesC) const {
        return text::quantity(QStringLiteral("%1 \u00b0C").arg(degreesC), reader.style);
    }
    QString length(Length length) const;
    QString percent(double share) const; //!< "35 %"
    QString whole(double number) const { return text::count(number, reader.style); }

private:
    QString there(const QString& words) const { return worded(words, reader.style); }
    GuideText text_;
};

GuideText guideWhen(const GuideReader& reader);
GuideText guideWeight(const GuideReader& reader);
GuideText guideFullComb(const GuideReader& reader);
GuideText guideCells(const GuideReader& reader);
GuideText guideBees(const GuideReader& reader);
GuideText guideOpening(const GuideReader& reader);
GuideText guideFeeding(const GuideReader& reader);
GuideText guideWinter(const GuideReader& reader);

} // namespace winterlarder::text
