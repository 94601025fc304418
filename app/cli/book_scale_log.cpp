// SPDX-License-Identifier: GPL-3.0-or-later
// The log of a hive scale as records of a book.
#include "answer/scale_doubts.h"
#include "cli/book_commands.h"
#include "cli/open_book.h"
#include "cli/table.h"
#include "feeding/syrup.h"
#include "text/contexts.h"

#include <fmt/format.h>
#include <ostream>

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

using exchange::Json;

Status told(Session& session, const ScaleRecords& records, const Problems& doubts = {}) {
    const auto count = [](const auto& entries) { return static_cast<int>(entries.size()); };
    if (session.json) {
        auto document = Json::object()
                            .add("weighings", count(records.weighings))
                            .add("feeds", count(records.feeds))
                            .add("harvests", count(records.harvests))
                            .add("manipulations", count(records.works))
                            .add("left_out", records.left);
        if (!doubts.empty()) document.add("asked", problemsJson(doubts));
        session.print(document);
        return Status::Done;
    }
    session.print(
        say::CommandLine::tr(
            "weighings: %1, feeds: %2, harvests: %3, changes of equipment: %4; on days the book has already: %5\n")
            .arg(count(records.weighings))
            .arg(count(records.feeds))
            .arg(count(records.harvests))
            .arg(count(records.works))
            .arg(records.left));
    session.ask(doubts);
    return Status::Done;
}

} // namespace

Status addScaleLog(Session& session, const NewScaleLog& options, const ScaleOptions& log) {
    std::optional<feeding::Ratio> ratio;
    if (options.ratio) {
        const auto read = feeding::parseRatio(*options.ratio);
        if (!read)
            return session.fail(
                {argumentProblem("--ratio: " + read.problems().front().detail, read.problems().front().remedy)});
        ratio = *read;
    }
    const auto found = readScale(session, log);
    if (!found) return session.fail(found.problems());
    auto opened = openBook(session, options, options.preview ? For::Reading : For::Writing);
    if (!opened) return session.fail(opened.problems());
    const auto colony = colonyOf(*opened, options.colony);
    if (!colony) return session.fail(colony.problems());
    auto records = scaleRecordsOf(*opened, colony->id, found->proposals, ratio);
    if (!records) return session.fail(records.problems());
    const auto doubts =
        judge(*opened, *records, shownName(log.file), session.moment.today, options.sure, ifSure, session.style);
    if (!doubts) return session.fail(doubts.problems());
    if (options.preview || records->empty()) return told(session, *records, doubts->problems);
    if (!doubts->problems.empty()) return session.fail(doubts->problems);
    const auto applied = opened->apply(records->asOneStep(), session.moment.now, writerOf(session, options));
    if (!applied) return session.fail(applied.problems());
    for (const auto& notice : applied->notices) session.tell(notice);
    return told(session, *records);
}

} // namespace winterlarder::cli
