// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/entry_rows.h"

#include "book/form/visitors.h"

#include <fmt/format.h>

namespace winterlarder::book {

template <class Entry> Row rowOf(Entry entry) {
    RowWriter writer;
    describeWhole(writer, entry);
    return std::move(writer.row);
}

template <class Entry> Outcome<Entry> entryOf(std::int64_t id, const Row& row) {
    Entry entry = blank<Entry>();
    entry.id = {id};
    RowReader reader(row.values, &row.lists);
    describeWhole(reader, entry);
    if (reader.faults.empty()) return entry;
    Problems problems;
    for (const auto& field : reader.faults)
        problems.push_back({ProblemKind::File,
                            {},
                            fmt::format("{} {}: {} is damaged", tableOf(kindOf<Entry>).singular, id, field),
                            "salvage the book"});
    return problems;
}

#define WINTERLARDER_ROWS_OF(Entry)                                                                                    \
    template Row rowOf(Entry);                                                                                         \
    template Outcome<Entry> entryOf(std::int64_t, const Row&);
WINTERLARDER_FOR_ENTRIES(WINTERLARDER_ROWS_OF)
#undef WINTERLARDER_ROWS_OF

} // namespace winterlarder::book
