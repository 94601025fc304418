// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/grounds/grounds_parts.h"
#include "text/remarks.h"
#include "text/words.h"

#include <algorithm>

namespace winterlarder::text {

//! Puts together the grounds of one number of an autumn's answer. Tested: tests/app/grounds_test.cpp.
class AutumnWriter : GroundsWriter {
public:
    AutumnWriter(const AutumnGrounds& of, const ReferenceData& reference, const WordStyle& style)
        : GroundsWriter(reference, style), q_(of.question), a_(of.advice), use_(of.use) {}

    std::optional<Grounds> of(AskedNumber number);

private:
    enum class Look { Now, Taken };     //!< what is known without another look, or after it
    enum class Below { Reserve, Food }; //!< winters that fall below the reserve, or run out
    enum class Way { LeftAlone, AsAdvised };

    QString day(SeasonDay day) const {
        return date(q_.winter.date(std::clamp(day, firstSeasonDay, lastSeasonDay)), style_);
    }
    QString today() const { return date(q_.winter.date(q_.asOf), style_); }
    void reasons(std::initializer_list<const char*> ids) { remarks(a_.reasons, ids); }

    std::optional<Grounds> stores();
    std::optional<Grounds> need();
    std::optional<Grounds> target();
    std::optional<Grounds> forage();
    std::optional<Grounds> spare();
    std::optional<Grounds> apart();
    std::optional<Grounds> combsOff();
    std::optional<Grounds> sugar();
    std::optional<Grounds> fondant();
    std::optional<Grounds> lastDay();
    std::optional<Grounds> bees();
    std::optional<Grounds> given();
    std::optional<Grounds> known(double kg, Look look);
    std::optional<Grounds> shareOf(const std::optional<Share>& share, Below below, Way way);
    void eaten();
    void demandRules();
    void missing();
    void piece(const stores::EvidenceShare& share);
    void rulesOfEvidence();
    const advice::Option* option(advice::OptionKind kind) const;

    const advice::ColonyQuestion& q_;
    const advice::Advice& a_;
    const std::optional<UseParts>& use_;
};

} // namespace winterlarder::text
