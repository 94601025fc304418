// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <optional>
#include <vector>

//! Numbers within sentences that can be asked where they come from. Tested: tests/app/asked_test.cpp.
namespace winterlarder::text {

enum class AskedNumber {
    // autumn's question
    Stores,
    Comb,
    Need,
    Target,
    Forage,
    Spare,
    CombsOff,
    Sugar,
    Fondant,
    LastDay,
    Reserve,
    Bees,
    KeptAlone,
    RunsOutAlone,
    KeptAsAdvised,
    RunsOutAsAdvised,
    Given,
    KnownNow,
    KnownThen,
    // a winter that is followed
    LeftToday,
    ExpectedToday,
    TouchesNow,
    RunsOutNow,
    TouchedInAutumn,
    RanOutInAutumn,
    FeedNow,
    FeedBy,
    ReserveGone,
    WeighBy,
    WeighingChanges,
    ForageNow
};
inline constexpr int askedNumbers = static_cast<int>(AskedNumber::ForageNow) + 1;

//! The form a number takes within a sentence: plainly(), or askably() where the window shows it.
using NumberForm = QString (*)(AskedNumber, const QString&);
QString plainly(AskedNumber number, const QString& text); //!< as it is
QString askably(AskedNumber number,
                const QString& text); //!< between marks that partsOf() finds; never shown to anybody

//! A piece of a sentence; with a number: one that can be asked about.
struct SentencePart {
    QString text;
    std::optional<AskedNumber> number;
};
//! The pieces of a sentence, in order; what is between marks stands alone.
std::vector<SentencePart> partsOf(const QString& sentence);

} // namespace winterlarder::text
