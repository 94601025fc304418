// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/describe_parts.h"

//! The one description of a case file (exchange/case), key by key in the order of the manual; what it shares with the
//! entries of a book stands in describe_parts.h. Its visitors walk a tree (`V::nested`) and have field(field name,
//! member), series, textOrPart, list(key, items) and part(key, part). The key of a field is the last part of its name
//! in shared/fields.csv. Tested: tests/exchange/case_description_test.cpp.
namespace winterlarder::book {

template <class V> void describe(V& v, WeighingRecord& weighing) {
    v.field("weighings.date", weighing.date);
    describe(v, weighing.reading);
    v.field("weighings.sure", weighing.sure);
}

template <class V> void describe(V& v, FeedRecord& feed) {
    v.field("feeds.date", feed.date);
    describeAmounts(v, feed);
    v.field("feeds.sure", feed.sure);
    v.field("feeds.after_look", feed.afterLook);
}

template <class V> void describe(V& v, HarvestRecord& harvest) {
    v.field("harvests.date", harvest.date);
    v.field("harvests.kg", harvest.honey);
    v.field("harvests.sure", harvest.sure);
    v.field("harvests.after_look", harvest.afterLook);
}

template <class V> void describe(V& v, TreatmentRecord& treatment) {
    v.field("treatments.date", treatment.date);
    describeTreatment(v, treatment);
}

template <class V> void describe(V& v, SeasonRecord& season) { describeSeason(v, "season.", season); }

template <class V> void describe(V& v, FeederRecord& feeder) {
    FeederColumns columns = columnsOf(feeder);
    describe(v, columns);
    if constexpr (V::reads) feeder = {columns.kind.value_or(FeederKind::Round), columns.capacity};
}

//! What was learned from no winter, or no spring, is not said.
template <class V> void describe(V& v, LearnedRecord& learned) {
    if (V::reads || learned.winters > 0) {
        v.field("learned.winters", learned.winters);
        v.field("learned.use", learned.use);
        v.field("learned.use_spread", learned.useLogSd);
        v.field("learned.death", learned.death);
        v.field("learned.death_spread", learned.deathLogSd);
    }
    if (V::reads || learned.forageYears > 0) {
        v.field("learned.forage_years", learned.forageYears);
        v.field("learned.forage_shift_days", learned.forageShiftDays);
        v.field("learned.forage_shift_sd_days", learned.forageShiftSdDays);
    }
}

template <class V> void describe(V& v, ColonyCase& asked) {
    v.field("colony", asked.colony);
    v.field("yard", asked.yard);
    v.field("as_of", asked.asOf);
    v.field("looked_on", asked.lookedOn);
    v.field("sure", asked.sure);
    v.field("units", asked.units);
    v.part("site", asked.site);
    v.part("hive", asked.hive);
    v.part("bees", asked.bees);
    v.part("combs", asked.combs);
    v.list("weighings", asked.weighings);
    v.field("moisture_percent", asked.moisturePercent);
    v.field("honey_kind", asked.honeyKind);
    v.field("fed_or_treated", asked.fedOrTreated);
    v.list("feeds", asked.feeds);
    v.list("harvests", asked.harvests);
    v.list("treatments", asked.treatments);
    v.field("full_combs", asked.fullCombs);
    v.part("season", asked.season);
    v.part("feeder", asked.feeder);
    v.part("wish", asked.wish);
    v.part("learned", asked.learned);
}

} // namespace winterlarder::book
