// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remark_texts.h"

#include <QCoreApplication>

namespace winterlarder::text {

const std::vector<RemarkText>& yardTexts() {
    static const std::vector<RemarkText> texts{
        {"united-here",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{from} is united onto this colony by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.")},
        {"united-here/unnamed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Another colony of the yard is united onto this one by %{day}: its bees, brood and stores are counted with these, and neither "
             "moves %{combs}.")},
        {"move-combs-first",
         QT_TRANSLATE_N_NOOP("Remark",
                             "Before buying sugar: %n %{combs} with about %{kg:amount} can come from %{from}."),
         "combs",
         QT_TRANSLATE_NOOP("Remark",
                           "Before buying sugar: one %{comb} with about %{kg:amount} can come from %{from}.")},
        {"move-combs-first/unnamed",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "Before buying sugar: %n %{combs} with about %{kg:amount} can come from another colony of the yard."),
         "combs",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Before buying sugar: one %{comb} with about %{kg:amount} can come from another colony of the yard.")},
        {"combs-given",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{Combs} with about %{kg:amount} more than those that come back go to %{receiver}, which is short: this hive keeps what it should winter on.")},
        {"combs-given/unnamed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{Combs} with about %{kg:amount} more than those that come back go to another colony of the yard, which is short: this hive keeps "
             "what it should winter on.")},
        {"united-sort",
         QT_TRANSLATE_NOOP(
             "Remark",
             "When they have become one, after about a week, sort the %{combs}: brood and the full ones stay, in two boxes at most, "
             "and the boxes with empty ones come off.")},
        {"may-be-united",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{from} may be united onto this colony by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask "
             "again when they are one.")},
        {"may-be-united/unnamed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Another colony of the yard may be united onto this one by %{day}, once it is certain that it has no queen. Until then this one is weighed and "
             "fed alone; ask again when they are one.")},
        {"gives-none-usual",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{receiver} is short, and this colony has about %{kg:amount} above its target; but beyond what keepers here leave a colony it is too "
             "little to give %{combs} away.")},
        {"gives-none-unlisted",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{receiver} is short, and this colony has about %{kg:amount} above its target; but which of its %{combs} could go is not known: look at them "
             "one by one, write them down, and ask again.")},
        {"gives-none-combs",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{receiver} is short, and this colony has about %{kg:amount} above its target; but no whole %{comb} of it without brood can go there.")},
        {"united-counted",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{from} was united onto this colony on %{day}: its bees, brood and stores, as they were seen on %{seen}, are counted with these.")},
        {"united-box-on-top",
         QT_TRANSLATE_NOOP(
             "Remark",
             "The boxes of %{from} are taken to stand on top, with their %{combs}. If they do not, write down which boxes the hive has now.")},
        {"united-bees-unknown",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Nothing tells how many bees %{from} brought, which was united onto this colony on %{day}: count the %{combs} they cover now.")},
        {"united-stores-unknown",
         QT_TRANSLATE_NOOP(
             "Remark",
             "Nothing tells what stores %{from} brought, which was united onto this colony on %{day}: they are not counted. Weigh the hive.")},
    };
    return texts;
}

} // namespace winterlarder::text
