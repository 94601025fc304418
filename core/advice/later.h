// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! What is likely to be wanted after what is planned now: in summer sugar for what will be missing when winter begins, else fondant until a
//! fortnight before first forage (quantiles over winters and stores together). Nothing where it is under half a kilogram even at its high end.
std::optional<ExpectedLater> expectedLater(const AdviceBasis& basis, const Decided& decided);

//! When to look again, and at what; never a day that is past (judgement; common practice for winter: within six weeks, after fondant within two).
NextLook nextLook(const AdviceBasis& basis, const Decided& decided);

//! Gross weights to expect on the first of each month until first forage under what was decided, feeds on their dates; the band counts the look's doubt and,
//! where the hive was not weighed, the doubt of its empty weight.
//! Where a super for people is on: whether the weights to expect are with it and the honey in it, or without.
std::optional<bool> weighedWithSuper(const AdviceBasis& basis, const Decided& decided);
std::vector<WeighPoint> weighLine(const AdviceBasis& basis, const Decided& decided);

//! The changes of the stores that a decision makes, by day.
std::vector<winter::StoresStep> stepsOf(const AdviceBasis& basis, const Decided& decided);

} // namespace winterlarder::advice
