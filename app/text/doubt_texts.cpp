// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remark_texts.h"

#include <QCoreApplication>

namespace winterlarder::text {

const std::vector<RemarkText>& doubtTexts() {
    static const std::vector<RemarkText> texts{
        {"doubt-heavy/pounds",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?"),
         "boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?")},
        {"doubt-heavy/comma",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{meant}?"),
         "boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{meant}?")},
        {"doubt-heavy/plain",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is a box not written down?"),
         "boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is a box not written down?")},
        {"doubt-light/comma",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Is it %{meant}?")},
        {"doubt-light/plain",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Was all of it on the scale?")},
        {"doubt-light/one-side",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{side} on one side cannot well be: one side of this hive weighs %{least} or more when it is empty. Was it lifted clear, and is it in the right unit?")},
        {"doubt-two-weights/comma",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{weight} does not go with the %{other} of %{day}: ten times as much. Has a decimal point slipped?")},
        {"doubt-two-weights/pounds",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{weight} does not go with the %{other} of %{day}: as much as pounds differ from kilograms. Which is it?")},
        {"doubt-harvest",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "%{taken} of honey cannot well come out of %n boxes of this size, which hold %{most} at the most. Is a box not written down?"),
         "boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{taken} of honey cannot well come out of one box of this size, which holds %{most} at the most. Is a box not written down?")},
        {"doubt-harvest-there/weighed",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{taken} of honey is more than can have been there: at most %{most}, going by the weight of %{day}. Is it right?")},
        {"doubt-harvest-there/seen",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{taken} of honey is more than can have been there: at most %{most}, going by the %{combs} of %{day}. Is it right?")},
        {"doubt-feed",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "A feed that makes %{stores} of stores cannot be: %n boxes of this size hold %{most}. How much was it?"),
         "boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "A feed that makes %{stores} of stores cannot be: one box of this size holds %{most}. How much was it?")},
        {"doubt-feed-at-once",
         QT_TRANSLATE_NOOP("Remark",
                           "%{given} in one day is much: few feeders let bees take more than %{most}. Is it right?")},
        {"doubt-feed-recently",
         QT_TRANSLATE_N_NOOP(
             "Remark", "The feeds of %n days make %{stores} of stores, and this hive holds %{most}. Is it right?"),
         "days",
         QT_TRANSLATE_NOOP("Remark",
                           "The feeds of a day make %{stores} of stores, and this hive holds %{most}. Is it right?")},
        {"doubt-covered",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{covered:1} covered %{combs} are more than the %{most:0} places of this hive. How many were covered on both sides?")},
        {"doubt-seams",
         QT_TRANSLATE_NOOP(
             "Remark", "%{seams:1} seams are more than the %{most:0} this hive has. How many were filled with bees?")},
        {"doubt-bees",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{bees:hundreds} bees are more than this hive houses, %{most:hundreds} at the very most. Is it right?")},
        {"doubt-brood",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{cells:hundreds} cells of brood leave no room for food: all %{combs} of this hive have %{most:hundreds} cells. Is it right?")},
        {"doubt-full-combs",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{combs:1} %{combs} with stores are more than the %{most:0} places of this hive. How many were there?")},
        {"doubt-stores-left",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "%{stores} of stores cannot well be left in %n boxes of this size, which hold %{most} at the most. Is it right?"),
         "boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{stores} of stores cannot well be left in one box of this size, which holds %{most} at the most. Is it right?")},
        {"doubt-moisture",
         QT_TRANSLATE_NOOP(
             "Remark",
             "%{water:1} % of water is out of the usual: honey in combs has %{low:0} to %{high:0} %. Is it right?")},
        {"doubt-later", QT_TRANSLATE_NOOP("Remark", "%{day} is still to come: today is %{today}. Is the day right?")},
        {"doubt-other-hive",
         QT_TRANSLATE_NOOP(
             "Remark",
             "It had other boxes then than when it was looked at, so its weight does not tell its stores. What is in it now?")},
        {"doubt-tare-heavy",
         QT_TRANSLATE_N_NOOP(
             "Remark",
             "An empty weight of %{weight} is much: %n boxes of this size weigh up to %{most} with all %{combs} drawn and no honey in them. Is it right?"),
         "boxes",
         QT_TRANSLATE_NOOP(
             "Remark",
             "An empty weight of %{weight} is much: one box of this size weighs up to %{most} with all %{combs} drawn and no honey in it. Is it right?")},
        {"doubt-tare-light",
         QT_TRANSLATE_NOOP(
             "Remark",
             "An empty weight of %{weight} is little: this hive weighs %{least} or more without a single %{comb}. Was all of it on the scale?")},
        {"doubt-before",
         QT_TRANSLATE_NOOP("Remark", "%{day} is before the colony was there, from %{since} on. Is the day right?")},
    };
    return texts;
}

} // namespace winterlarder::text
