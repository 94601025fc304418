// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remarks.h"

#include "climate/site.h"
#include "text/remark_texts.h"
#include "text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

namespace winterlarder::text {

namespace {

using advice::Detail;
using advice::Remark;

const Detail* detailOf(const Remark& remark, const std::string& name) {
    const auto found = remark.details.find(name);
    return found == remark.details.end() ? nullptr : &found->second;
}

const std::string* textOf(const Remark& remark, const std::string& name) {
    const Detail* detail = detailOf(remark, name);
    return detail ? std::get_if<std::string>(detail) : nullptr;
}

std::optional<Mass> massOf(const Remark& remark, const std::string& name) {
    const Detail* detail = detailOf(remark, name);
    const Mass* value = detail ? std::get_if<Mass>(detail) : nullptr;
    return value ? std::optional(*value) : std::nullopt;
}

// Remarks with a text for each class.
bool isClassed(const std::string& id) {
    static constexpr std::array ids{"cluster-gap",       "enough",     "heft-alone",     "more-than-it-holds",
                                    "small-portions",    "surplus",    "usual-here",     "varroa-first",
                                    "spring-starvation", "next-look",  "locked-in-long", "follow-course",
                                    "look-from-outside", "weak-unite", "act-now",        "no-food-in-reach",
                                    "spring-surplus"};
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

// Which of several texts an id has is said with.
std::string variantOf(const Remark& remark) {
    if (remark.id == "moisture" && !detailOf(remark, "water")) return "/unmeasured";
    if (remark.id == "laying-stopped" && !detailOf(remark, "day")) return "/undated";
    if ((remark.id == "station-used" || remark.id == "far-from-stations") && !detailOf(remark, "km"))
        return "/unmeasured";
    if (remark.id == "stores-carried-forward" && massOf(remark, "used").value_or(kilograms(0)).value() < 0)
        return "/gained";
    const bool ofNeighbour = remark.id == "move-combs-first" || remark.id == "combs-given" ||
                             remark.id == "united-here" || remark.id == "may-be-united";
    if (const std::string* name = textOf(remark, remark.id == "combs-given" ? "receiver" : "from");
        ofNeighbour && (!name || name->empty()))
        return "/unnamed";
    const bool classed =
        isClassed(remark.id) || remark.id.rfind("learned-", 0) == 0 || remark.id.rfind("doubt-", 0) == 0;
    if (const std::string* word = textOf(remark, "class"); classed && word) return "/" + *word;
    return "";
}

const RemarkText* textWithKey(const std::string& key) {
    for (const auto* texts : {&cautionTexts(), &reasonTexts(), &doubtTexts(), &yardTexts(), &followTexts()})
        for (const RemarkText& candidate : *texts)
            if (candidate.id == key) return &candidate;
    return nullptr;
}

QString inWords(const std::string& word, const QString& how, const WordStyle& style) {
    if (how == QLatin1String("season")) return seasonDate(word);
    if (how == QLatin1String("evidence")) return evidence(word, style);
    if (how == QLatin1String("flow")) return flow(word);
    return QString::fromStdString(word);
}

QString inWords(const Detail& detail, const QString& how, const WordStyle& style) {
    if (const auto* value = std::get_if<Mass>(&detail))
        return how == QLatin1String("amount") ? amount(*value, style) : mass(*value, style);
    if (const auto* value = std::get_if<Volume>(&detail)) return volume(*value, style);
    if (const auto* value = std::get_if<Date>(&detail)) return date(*value, style);
    if (const auto* value = std::get_if<Temperature>(&detail))
        return QString::fromStdString(format(*value, style.numbers, 1));
    if (const auto* value = std::get_if<std::string>(&detail)) return inWords(*value, how, style);
    const double value = std::get<double>(detail);
    constexpr double hundred = 100;
    if (how == QLatin1String("kelvins")) return kelvins(value, style);
    if (how == QLatin1String("distance")) return distance(value, style);
    if (how == QLatin1String("halves")) return number(value, std::round(value) == value ? 0 : 1, style);
    if (how == QLatin1String("hundreds")) return count(std::round(value / hundred) * hundred, style);
    return how == QLatin1String("0") ? count(value, style) : number(value, how.toInt(), style);
}

// Puts every detail in its place; a detail that is missing leaves its name to be seen.
QString filled(const QString& text, const Remark& remark, const WordStyle& style) {
    QString result;
    qsizetype at = 0;
    for (;;) {
        const qsizetype open = text.indexOf(QLatin1String("%{"), at);
        if (open < 0) return result + text.mid(at);
        const qsizetype close = text.indexOf(QLatin1Char('}'), open);
        const QStringList parts = text.mid(open + 2, close - open - 2).split(QLatin1Char(':'));
        result += text.mid(at, open - at);
        const Detail* detail = detailOf(remark, parts[0].toStdString());
        if (parts[0].startsWith(QLatin1Char('='))) result += quantity(parts[0].mid(1), style);
        else result += detail ? inWords(*detail, parts.value(1), style) : parts[0];
        at = close + 1;
    }
}

int countOf(const Remark& remark, const RemarkText& text) {
    const Detail* detail = text.countOf ? detailOf(remark, text.countOf) : nullptr;
    const double* value = detail ? std::get_if<double>(detail) : nullptr;
    return value ? static_cast<int>(std::lround(*value)) : -1;
}

// Where an answer does without a record it is named first, then what is to be asked about it.
QString recordSetAside(const Remark& remark, const WordStyle& style) {
    const std::string* record = textOf(remark, "record");
    const Detail* day = detailOf(remark, "recorded");
    if (!record || !day) return {};
    static const std::map<std::string, const char*> words{
        {"weighing", QT_TRANSLATE_NOOP("Remark", "The weighing of %1 is not counted.")},
        {"feed", QT_TRANSLATE_NOOP("Remark", "The feed of %1 is not counted.")},
        {"harvest", QT_TRANSLATE_NOOP("Remark", "The harvest of %1 is not counted.")},
        {"bees", QT_TRANSLATE_NOOP("Remark", "The bees seen on %1 are not counted.")},
        {"brood", QT_TRANSLATE_NOOP("Remark", "The brood seen on %1 is not counted.")},
        {"combs", QT_TRANSLATE_NOOP("Remark", "The %{combs} of %1 are not counted.")},
        {"moisture", QT_TRANSLATE_NOOP("Remark", "The water measured on %1 is not counted.")},
        {"tare", QT_TRANSLATE_NOOP("Remark", "The empty weight that is given is not counted.")},
        {"glance", QT_TRANSLATE_NOOP("Remark", "The seams seen on %1 are not counted.")},
        {"outcome", QT_TRANSLATE_NOOP("Remark", "What was found on %1 is not counted.")}};
    const auto found = words.find(*record);
    if (found == words.end()) return {};
    QString said = worded(QCoreApplication::translate("Remark", found->second), style);
    said.replace(QLatin1String("%1"), inWords(*day, {}, style)); // not every record has its day in its name
    return said + QLatin1Char(' ');
}

} // namespace

QString sentence(const Remark& remark, const WordStyle& style) {
    const RemarkText* text = textWithKey(remark.id + variantOf(remark));
    if (!text) text = textWithKey(remark.id);
    if (!text) return QString::fromStdString(remark.id);
    Remark shown = remark;
    shown.details["farthest"] = climate::farthestStationKm;
    if (const auto used = massOf(remark, "used"); used && used->value() < 0) shown.details["gained"] = -*used;
    const int n = countOf(remark, *text);
    const char* source = n == 1 && text->forOne ? text->forOne : text->text;
    const QString said = worded(QCoreApplication::translate("Remark", source, nullptr, n), style);
    QString words = recordSetAside(remark, style) + filled(said, shown, style);
    if (!words.isEmpty()) words.front() = words.front().toUpper(); // a sentence may begin with what fills it in
    return words;
}

bool isSaid(const std::vector<advice::Remark>& remarks, const std::string& id, const std::string& word) {
    return std::any_of(remarks.begin(), remarks.end(), [&](const advice::Remark& remark) {
        const std::string* said = textOf(remark, "class");
        return remark.id == id && said && *said == word;
    });
}

std::vector<std::string> idsWithWords() {
    std::vector<std::string> ids;
    for (const auto* texts : {&cautionTexts(), &reasonTexts(), &doubtTexts(), &yardTexts(), &followTexts()})
        for (const RemarkText& text : *texts) {
            const std::string id = std::string(text.id).substr(0, std::string(text.id).find('/'));
            if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
        }
    return ids;
}

} // namespace winterlarder::text
