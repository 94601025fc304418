// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/doubt_words.h"

#include "answer/style_of_place.h"
#include "text/remarks.h"

namespace winterlarder::answer {

Problem problemOf(const stores::Doubt& doubt, Place place, const std::string& whereSure, const text::WordStyle& style) {
    const QString words = text::sentence(doubt.says, style);
    const auto end = words.lastIndexOf(QLatin1String(". ")); // what is wrong, then the question
    QString question = words.mid(end + 2);
    if (!question.isEmpty()) question[0] = question[0].toLower();
    std::string remedy = question.toStdString();
    if (!doubt.impossible && !whereSure.empty()) remedy += ' ' + whereSure;
    return {ProblemKind::Input, std::move(place), words.left(end < 0 ? words.size() : end).toStdString(),
            std::move(remedy)};
}

Problem problemOf(const stores::Doubt& doubt, Place place, const std::string& whereSure, const book::SiteRecord& site,
                  const book::HiveRecord& hive, const ReferenceData& reference, text::WordStyle style) {
    style.wording = wordingOf(site, hive, reference);
    return problemOf(doubt, std::move(place), whereSure, style);
}

Outcome<ReadQuestion> readQuestion(std::string_view text, std::string file, const ReferenceData& reference,
                                   std::uint64_t positionInBatch, int firstLine) {
    const auto inWords = [&](const stores::Doubt& doubt, Place place, const book::ColonyCase& record) {
        return problemOf(doubt, std::move(place),
                         "It is counted as it stands; \"sure\": true says that all of the case is right", record.site,
                         record.hive, reference);
    };
    return readQuestion(text, std::move(file), reference, positionInBatch, inWords, firstLine);
}

} // namespace winterlarder::answer
