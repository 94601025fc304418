// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/comb_typing.h"

#include "models/words.h"
#include "text/contexts.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr CombField allFields[] = {CombField::Capped, CombField::Open, CombField::Brood, CombField::BeeBread,
                                   CombField::Built};
constexpr double shareStep = 0.05;

bool isKey(const QString& typed, const QString& key) { return QString::compare(typed, key, Qt::CaseInsensitive) == 0; }

Seen nextSeen(Seen seen) {
    switch (seen) {
    case Seen::BothFaces: return Seen::OneFace;
    case Seen::OneFace: return Seen::NotAtAll;
    default: return Seen::BothFaces;
    }
}

QString emptyLetter() { return say::CombTyping::tr("E", "key that empties a comb"); }
QString facesLetter() { return say::CombTyping::tr("F", "key for the faces seen"); }
QString windowLetter() { return say::CombTyping::tr("W", "key for seen through a window"); }

} // namespace

std::optional<Zone> zoneOf(CombField field) {
    switch (field) {
    case CombField::Capped: return Zone::Capped;
    case CombField::Open: return Zone::Open;
    case CombField::Brood: return Zone::Brood;
    case CombField::BeeBread: return Zone::BeeBread;
    case CombField::Built: break;
    }
    return std::nullopt;
}

CombField fieldOf(Zone zone) {
    for (const auto field : allFields)
        if (zoneOf(field) == zone) return field;
    return CombField::Built;
}

double shareOf(const book::CombRecord& comb, CombField field) {
    const auto zone = zoneOf(field);
    return zone ? shareOf(comb, *zone) : comb.built;
}

book::CombRecord withShare(const book::CombRecord& comb, CombField field, double share) {
    const auto zone = zoneOf(field);
    return zone ? withShare(comb, *zone, share) : withBuilt(comb, share);
}

QString nameOf(CombField field) {
    const auto zone = zoneOf(field);
    return zone ? words::zone(*zone) : say::CombTyping::tr("built");
}

QString letterOf(CombField field) {
    switch (field) {
    case CombField::Capped: return say::CombTyping::tr("C", "key that picks capped stores");
    case CombField::Open: return say::CombTyping::tr("O", "key that picks open nectar");
    case CombField::Brood: return say::CombTyping::tr("B", "key that picks brood");
    case CombField::BeeBread: return say::CombTyping::tr("P", "key that picks bee bread (pollen)");
    case CombField::Built: break;
    }
    return say::CombTyping::tr("U", "key that picks how much is built");
}

void CombTyping::pick(CombField field) {
    picked_ = field;
    tenths_.reset();
    before_.reset();
}

void CombTyping::entered(const book::CombRecord& record) {
    last_ = record;
    before_.reset();
    tenths_.reset();
}

void CombTyping::forget() {
    last_.reset();
    before_.reset();
    tenths_.reset();
}

CombEdit CombTyping::done(CombEdit edit) {
    last_ = edit.record;
    return edit;
}

CombEdit CombTyping::share(double value, int comb, const book::CombRecord& from) {
    return done({comb, withShare(from, picked_, value)});
}

CombEdit CombTyping::digit(int value, int comb, const book::CombRecord& record) {
    const bool goesOn = before_ && typedInto_ == comb && after_ == record;
    if (!goesOn) {
        before_ = record;
        typedInto_ = comb;
        tenths_.reset();
    }
    const double said = tenths_ ? *tenths_ / 10.0 + value / 100.0 : value / 10.0;
    if (tenths_) tenths_.reset();
    else tenths_ = value;
    auto edit = share(said, comb, *before_);
    after_ = edit.record;
    return edit;
}

CombTyping::Typed CombTyping::type(const QString& text, bool shift, int comb, const book::CombRecord& record) {
    if (text.size() != 1) return {};
    const QChar key = text.front();
    if (key.isDigit()) return {true, digit(key.digitValue(), comb, record)};
    for (const auto field : allFields) {
        if (!isKey(text, letterOf(field))) continue;
        pick(field);
        if (!shift || !zoneOf(field)) return {true, std::nullopt};
        return {true, share(std::min(1.0, shareOf(record, field) + emptyShare(record)), comb, record)};
    }
    if (key == QLatin1Char('+') || key == QLatin1Char('-')) {
        const double by = key == QLatin1Char('+') ? shareStep : -shareStep;
        return {true, share(std::clamp(shareOf(record, picked_) + by, 0.0, 1.0), comb, record)};
    }
    if (isKey(text, emptyLetter())) return emptyComb(comb, record);
    std::optional<Seen> seen;
    if (isKey(text, facesLetter())) seen = nextSeen(seenOf(record));
    if (isKey(text, windowLetter()))
        seen = seenOf(record) == Seen::ThroughWindow ? Seen::BothFaces : Seen::ThroughWindow;
    if (!seen) return {};
    return {true, done({comb, withSeen(record, *seen)})};
}

std::vector<std::pair<QStringList, QString>> typingKeys() {
    std::vector<std::pair<QStringList, QString>> keys;
    for (const auto field : allFields)
        keys.push_back({{letterOf(field)}, say::CombTyping::tr("picks %1: digits set its share").arg(nameOf(field))});
    QStringList whole;
    for (const auto field : allFields)
        if (zoneOf(field)) whole << QStringLiteral("Shift+") + letterOf(field);
    keys.push_back({whole, say::CombTyping::tr("gives the zone all cells that are empty")});
    QStringList digits;
    for (int digit = 0; digit <= 9; ++digit) digits << QString::number(digit);
    keys.push_back(
        {digits, say::CombTyping::tr("the share in tenths; a second digit makes it finer: 7 is 70 %, 75 is 75 %")});
    keys.push_back({{QStringLiteral("+"), QStringLiteral("-")}, say::CombTyping::tr("5 % more or less")});
    keys.push_back(
        {{emptyLetter(), QStringLiteral("Del"), QStringLiteral("Backspace")}, say::CombTyping::tr("empties the comb")});
    keys.push_back({{facesLetter()}, say::CombTyping::tr("both faces seen, one, or none")});
    keys.push_back({{windowLetter()}, say::CombTyping::tr("seen through a window, or not")});
    return keys;
}

CombTyping::Typed CombTyping::emptyComb(int comb, const book::CombRecord& record) {
    return {true, done({comb, emptied(record)})};
}

CombTyping::Typed CombTyping::repeat(int comb, const book::CombRecord& record, const book::CombRecord* before) {
    if (!last_ && !before) return {true, std::nullopt};
    const auto& other = last_ ? *last_ : *before;
    return {true, done({comb, withContentsOf(record, other)})};
}

} // namespace winterlarder::desk
