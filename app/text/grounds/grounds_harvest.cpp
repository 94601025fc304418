// SPDX-License-Identifier: GPL-3.0-or-later
// Where the figures for honey come from: to spare, in combs that come off, given to other colonies.
#include "text/contexts.h"
#include "text/grounds/autumn_writer.h"

namespace winterlarder::text {

std::optional<Grounds> AutumnWriter::spare() {
    const auto* take = option(advice::OptionKind::TakeNow);
    if (!a_.harvest && !take) return std::nullopt;
    const Mass most = a_.harvest ? a_.harvest->upTo : take->amount;
    if (a_.harvest && a_.harvest->fromStores <= Mass(0)) return apart();
    line(worded(
        say::Grounds::tr(
            "What stays is never below what the colony should winter on, nor below what is usual here; what comes off are whole supers and whole outer %{combs}."),
        style_));
    if (a_.estimate && a_.need)
        line(say::Grounds::tr("About %1 are in the hive, %2 are needed.")
                 .arg(amount(a_.estimate->spread, style_), amount(*a_.need, style_)));
    reasons({"surplus", "autumn-flow-not-harvested", "no-comb-to-take", "quick-form-no-combs", "take-in-spring"});
    return under(say::Grounds::tr("To spare on %1: %2").arg(today(), amount(most, style_)));
}

// Honey that was never among the stores is not weighed against what the bees need.
std::optional<Grounds> AutumnWriter::apart() {
    line(worded(
        say::Grounds::tr(
            "The super is for people: its honey was not counted with what the bees have, and its %{combs} hold no brood."),
        style_));
    line(say::Grounds::tr("A comb's honey is its area times what a square decimetre of sealed comb holds."),
         {"baudoux", "demuth-503"});
    reasons({"super-apart", "fed-combs", "treated-honey", "moist-honey"});
    return under(say::Grounds::tr("Honey in the super: %1").arg(amount(a_.harvest->upTo, style_)));
}

std::optional<Grounds> AutumnWriter::combsOff() {
    if (!a_.harvest || a_.harvest->combs.empty()) return std::nullopt;
    if (a_.harvest->fromStores <= Mass(0)) return apart();
    line(
        worded(
            say::Grounds::tr(
                "%n %{combs} that hold no brood, are capped enough, took no syrup and are not of the old brood nest weigh together no more than what is to spare.",
                nullptr, static_cast<int>(a_.harvest->combs.size())),
            style_),
        {"honey-course", "judgement"});
    line(say::Grounds::tr("To spare are %1.").arg(amount(a_.harvest->upTo, style_)));
    line(say::Grounds::tr("A comb's honey is its area times what a square decimetre of sealed comb holds."),
         {"baudoux", "demuth-503"});
    reasons({"fed-combs", "old-nest-combs", "treated-honey", "moist-honey"});
    return under(worded(say::Grounds::tr("Honey in the %{combs} that may come off: %1"), style_)
                     .arg(amount(a_.harvest->combsHold, style_)));
}

std::optional<Grounds> AutumnWriter::given() {
    Mass all{0};
    for (const auto& gift : a_.gifts) {
        if (gift.from != q_.colony) continue;
        all = all + gift.honey;
        line(say::Grounds::tr("%1 to %2, which lacks stores.")
                 .arg(amount(gift.honey, style_), QString::fromStdString(gift.to)));
    }
    if (all <= Mass(0)) return std::nullopt;
    line(
        worded(
            say::Grounds::tr(
                "%{Combs} within the yard come before sugar; a colony gives no more than it can spare at the risk you accept."),
            style_),
        {"common-practice"});
    return under(worded(say::Grounds::tr("Honey in %{combs} to give: %1"), style_).arg(amount(all, style_)));
}

} // namespace winterlarder::text
