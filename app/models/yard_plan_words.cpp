// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_plan_words.h"

#include "models/words.h"
#include "text/contexts.h"
#include "text/words.h"

#include <QLocale>

#include <cmath>

namespace winterlarder::desk {

QString yardSentence(const YardPlan& plan) {
    QStringList parts;
    if (plan.feed > 0) parts << say::YardPlan::tr("%n to feed", nullptr, plan.feed);
    if (plan.unite > 0) parts << say::YardPlan::tr("%n to unite", nullptr, plan.unite);
    if (plan.harvest > 0) parts << say::YardPlan::tr("%n with honey to spare", nullptr, plan.harvest);
    if (plan.leave > 0) parts << say::YardPlan::tr("%n to leave alone", nullptr, plan.leave);
    if (plan.cannotSay > 0) parts << say::YardPlan::tr("%n not known enough", nullptr, plan.cannotSay);
    int all = plan.feed + plan.unite + plan.harvest + plan.leave + plan.cannotSay + plan.waiting;
    for (const auto& [state, count] : plan.followed) {
        using State = tracking::FollowState;
        all += count;
        switch (state) {
        case State::OnCourse: parts << say::YardPlan::tr("%n on course", nullptr, count); break;
        case State::EatingFaster: parts << say::YardPlan::tr("%n eating faster than planned", nullptr, count); break;
        case State::FoodOutOfReach: parts << say::YardPlan::tr("%n with the food out of reach", nullptr, count); break;
        case State::Dwindling: parts << say::YardPlan::tr("%n dwindling", nullptr, count); break;
        case State::LessThanThought: parts << say::YardPlan::tr("%n with less than was thought", nullptr, count); break;
        case State::FeedNotRecorded:
            parts << say::YardPlan::tr("%n with a feed not written down", nullptr, count);
            break;
        case State::MoreThanNeeded: parts << say::YardPlan::tr("%n with more than is needed", nullptr, count); break;
        case State::ActNow: parts << say::YardPlan::tr("%n to be fed now", nullptr, count); break;
        case State::Dead: parts << say::YardPlan::tr("%n dead", nullptr, count); break;
        case State::CannotSay: parts << say::YardPlan::tr("%n that must be weighed again", nullptr, count); break;
        }
    }
    if (plan.waiting > 0) parts << say::YardPlan::tr("%n being worked out", nullptr, plan.waiting);
    if (all == 0) return say::YardPlan::tr("No colony stands in this yard yet.");
    return (all == 1 ? say::YardPlan::tr("One colony: %1.") : say::YardPlan::tr("%n colonies: %1.", nullptr, all))
        .arg(parts.join(QStringLiteral(", ")));
}

namespace {

QString toBuyLine(const YardPlan& plan) {
    if (!plan.totals.lastSyrupDay) return {};
    const QString said =
        plan.gifts.empty()
            ? say::YardPlan::tr(
                  "Buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.")
            : words::worded(say::YardPlan::tr(
                  "Move the %{combs} first, then buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening."));
    return said.arg(words::amount(plan.totals.sugar), words::date(*plan.totals.lastSyrupDay));
}

} // namespace

QString yardSmallLine(const YardPlan& plan) {
    QStringList lines{toBuyLine(plan)};
    if (plan.moving == advice::MovingCombs::Not)
        lines << words::worded(say::YardPlan::tr("Planned without moving %{combs} between hives."));
    lines.removeAll(QString());
    return lines.join(QLatin1Char(' '));
}

namespace {

text::WordStyle styleOf(const advice::CombGift& gift, const YardPlan& plan) {
    return words::styleOf(!plan.bareBars.contains(gift.to));
}

} // namespace

QString giftPlaces(const advice::CombGift& gift, const YardPlan& plan) {
    return text::combPlaces(gift.places, static_cast<std::size_t>(gift.boxes), styleOf(gift, plan));
}

QString giftWords(const advice::CombGift& gift, const YardPlan& plan) {
    const auto combs = static_cast<int>(gift.combs.size());
    const QString said = worded(combs == 1 ? say::YardPlan::tr("one %{comb} (%1) from %2 to %3: %4")
                                           : say::YardPlan::tr("%n %{combs} (%1) from %2 to %3: %4", nullptr, combs),
                                styleOf(gift, plan));
    return said.arg(words::amount(gift.honey), QString::fromStdString(gift.from), QString::fromStdString(gift.to),
                    giftPlaces(gift, plan));
}

QString movedCombsWords(const YardPlan& plan) {
    const bool stay = plan.moving == advice::MovingCombs::Not;
    if (plan.waiting > 0 || (stay && !plan.gifts.empty())) return QStringLiteral("\u2026");
    if (plan.disease) return say::YardPlan::tr("none: with signs of disease in the yard nothing moves between hives");
    if (stay) return words::worded(say::YardPlan::tr("none: %{combs} stay in their hives"));
    QStringList gifts;
    for (const auto& gift : plan.gifts) gifts << giftWords(gift, plan);
    return gifts.isEmpty() ? say::YardPlan::tr("none") : gifts.join(QLatin1Char('\n'));
}

QString costWords(const book::Yard& yard, Mass sugar) {
    const int bags =
        yard.bag && *yard.bag > Mass(0) ? static_cast<int>(std::ceil(sugar.value() / yard.bag->value() - 1e-9)) : 0;
    const QString held = yard.bag ? words::kilograms(*yard.bag) : QString();
    const QString cost = yard.sugarPricePerKg
                             ? QStringLiteral("%1\u00a0%2")
                                   .arg(QLocale().toString(sugar.value() * *yard.sugarPricePerKg, 'f', 2),
                                        QString::fromStdString(yard.currency.value_or("")))
                             : QString();
    if (bags == 0 && cost.isEmpty()) return {};
    if (bags == 0) return say::YardPlan::tr("costs %1").arg(cost);
    const QString said = bags == 1 ? say::YardPlan::tr("one bag of %1").arg(held)
                                   : say::YardPlan::tr("%n bags of %1", nullptr, bags).arg(held);
    return cost.isEmpty() ? said : say::YardPlan::tr("%1; the sugar itself costs %2").arg(said, cost);
}

} // namespace winterlarder::desk
