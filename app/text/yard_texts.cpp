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
             "%{receiver} is short, and this colony has about %{kg:amount} above its target; but no whole comb of it without brood can go there.")},
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
