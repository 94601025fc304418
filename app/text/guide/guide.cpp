// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/guide/guide.h"

#include "support/require.h"
#include "text/guide/guide_parts.h"

#include <algorithm>

namespace winterlarder::text {

namespace {

constexpr const char* exampleFormat = "langstroth-deep";

GuideHive shippedHive(const HiveFormat& format) {
    return {QString::fromStdString(format.name), hive::combFormat(format)};
}

} // namespace

const char* guideId(GuidePage page) {
    static constexpr std::array ids{"when", "weight", "full-comb", "cells", "bees", "opening", "feeding", "winter"};
    return ids.at(static_cast<std::size_t>(page));
}

std::optional<GuidePage> guideCalled(std::string_view id) {
    for (const GuidePage page : allGuidePages)
        if (id == guideId(page)) return page;
    return std::nullopt;
}

QString guideTitle(GuidePage page) {
    switch (page) {
    case GuidePage::When: return say::Guide::tr("When to look, and why");
    case GuidePage::Weight: return say::Guide::tr("Hefting and weighing");
    case GuidePage::FullComb: return say::Guide::tr("What a comb holds");
    case GuidePage::Cells: return say::Guide::tr("What is in the cells");
    case GuidePage::Bees: return say::Guide::tr("Counting bees and brood");
    case GuidePage::Opening: return say::Guide::tr("Opening a hive gently");
    case GuidePage::Feeding: return say::Guide::tr("Mixing and giving feed");
    case GuidePage::Winter: return say::Guide::tr("Checks in winter");
    }
    return {};
}

GuideText guideText(GuidePage page, const GuideReader& reader) {
    static constexpr std::array write{guideWhen, guideWeight,  guideFullComb, guideCells,
                                      guideBees, guideOpening, guideFeeding,  guideWinter};
    return write.at(static_cast<std::size_t>(page))(reader);
}

QString guideHiveHeading() { return say::Guide::tr("Hive"); }

GuideHive exampleHive(const GuideReader& reader) {
    if (!reader.hives.empty()) return reader.hives.front();
    const HiveFormat* shipped = reader.reference.format(exampleFormat);
    require(shipped, "the shipped hives have no {}", exampleFormat);
    return shippedHive(*shipped);
}

std::vector<GuideHive> hivesOf(const GuideReader& reader) {
    if (!reader.everyHive && !reader.hives.empty()) return reader.hives;
    std::vector<GuideHive> all;
    for (const HiveFormat& format : reader.reference.formats) all.push_back(shippedHive(format));
    return all;
}

QString GuideWriter::length(Length length) const { return text::length(length, reader.style); }

QString GuideWriter::ruled(const char* rule, const char* number, const char* unit) {
    return text::quantity(QStringLiteral("%1 %2").arg(ruled(rule, number), QString::fromUtf8(unit)), reader.style);
}

QString GuideWriter::ruled(const char* rule, const char* number) {
    text_.rules.push_back({rule, QString::fromUtf8(number)});
    return text_.rules.back().number;
}

GuideText GuideWriter::from(const std::vector<std::string>& sources) {
    text_.sources = sources;
    for (const RuledNumber& ruled : text_.rules)
        for (const PublishedRule& rule : reader.reference.rules)
            if (rule.id == ruled.rule) text_.sources.push_back(rule.source);
    auto& all = text_.sources;
    for (auto each = all.begin(); each != all.end();)
        each = std::find(all.begin(), each, *each) == each ? each + 1 : all.erase(each);
    return std::move(text_);
}

QString GuideWriter::percent(double share) const {
    constexpr double hundred = 100;
    return say::Guide::tr("%1 %", "a share").arg(number(hundred * share, 0, reader.style));
}

} // namespace winterlarder::text
