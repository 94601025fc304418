// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/yard_sheet.h"

#include "models/due.h"
#include "models/job_table_model.h"
#include "models/words.h"
#include "models/yard_plan.h"
#include "models/yard_plan_words.h"
#include "plots/winter_plot.h"
#include "print/sheet_html.h"
#include "report/colony_sheet.h"
#include "report/yard_plan.h"
#include "text/contexts.h"
#include "text/words.h"
#include "theme/colours.h"

#include <QTemporaryDir>

#include <algorithm>
#include <map>

namespace winterlarder::desk {

namespace {

QString footerOf(const QString& name, Date date) { return say::Sheet::tr("%1, %2").arg(name, words::longDate(date)); }

// The ground a card has on the screen would be printed as a haze of dots.
QImage onWhite(QImage picture) {
    picture = picture.convertToFormat(QImage::Format_RGB32);
    const QRgb ground = lightColours().card.rgb();
    for (int y = 0; y < picture.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(picture.scanLine(y));
        std::replace(line, line + picture.width(), ground, qRgb(255, 255, 255));
    }
    return picture;
}

// Twice as fine as it is laid out, which is what paper shows.
QImage drawn(const AnsweredPointer& answered, QSize size) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("picture.png"));
    const auto picture = std::shared_ptr<const WinterPicture>(answered, &answered->picture);
    std::set<advice::OptionKind> options{advice::OptionKind::Leave};
    if (answered->answer.advice.feed) options.insert(advice::OptionKind::Feed);
    if (answered->answer.advice.verdict == advice::Verdict::Harvest) options.insert(advice::OptionKind::TakeNow);
    if (!savePaperPicture(picture, options, words::styleOf(answered->question).wording, {}, path, {}, size)) return {};
    return onWhite(QImage(path));
}

std::vector<const ColonyEntry*> inOrder(const Yard& yard, const std::vector<ColonyId>& order) {
    std::map<ColonyId, std::size_t> places;
    for (std::size_t place = 0; place < order.size(); ++place) places.emplace(order[place], place);
    std::vector<const ColonyEntry*> colonies;
    for (const auto& colony : yard.colonies()) colonies.push_back(&colony);
    const auto placeOf = [&](const ColonyEntry* colony) {
        const auto found = places.find(colony->id);
        return found == places.end() ? order.size() : found->second;
    };
    std::stable_sort(colonies.begin(), colonies.end(),
                     [&](const auto* a, const auto* b) { return placeOf(a) < placeOf(b); });
    return colonies;
}

report::SugarPrice priceOf(const book::Yard* yard) {
    if (!yard) return {};
    return {yard->sugarPricePerKg, yard->currency.value_or(""), yard->bag};
}

const PlannedJob* jobOf(const std::vector<report::Cell>& visit, const YardPlan& plan) {
    const auto* colony = std::get_if<std::string>(&visit[1]);
    const auto* what = std::get_if<report::Word>(&visit[2]);
    const auto* honey = std::get_if<Mass>(&visit[3]);
    for (const auto& job : plan.jobs)
        if (colony && what && job.colony.toStdString() == *colony && report::idOf(job.kind) == what->id &&
            (!job.exchange || (honey && *honey == job.honey)))
            return &job;
    return nullptr;
}

std::string placesOf(const std::vector<report::Cell>& row, const YardPlan& plan) {
    for (const auto& gift : plan.gifts)
        if (std::get<std::string>(row[0]) == gift.from && std::get<std::string>(row[1]) == gift.to &&
            std::get<Mass>(row[3]) == gift.honey)
            return giftPlaces(gift, plan).toStdString();
    return {};
}

// Which combs move, and who is united with whom, in the words of the plan's page.
void nameCombsAndPairs(report::Sheet& sheet, const YardPlan& plan) {
    for (auto& section : sheet.sections)
        for (auto& row : section.table.rows) {
            if (section.id == "gifts") row[2] = report::Cell(placesOf(row, plan));
            if (section.id != "visits") continue;
            const auto* job = jobOf(row, plan);
            const bool own = job && (job->exchange || !job->partner.isEmpty() || job->kind == JobKind::CountBees);
            if (own) row[2] = report::Cell(jobWords(*job).toStdString());
        }
}

} // namespace

Paper yardSheet(const Yard& yard, const std::vector<ColonyId>& order, const ReferenceData* reference) {
    static const ReferenceData nothing{};
    if (!reference && yard.book()) reference = yard.book()->reference().get();
    const auto& known = reference ? *reference : nothing;
    const auto plan = planOf(yard);
    std::vector<report::PlannedColony> colonies;
    for (const auto* colony : inOrder(yard, order)) {
        if (!colony->answered) continue;
        colonies.push_back(plannedColony(*colony, plan.jobs, yard.leading(colony->id).get()));
    }
    const auto date = yard.asOf();
    if (!date) return {};
    auto sheet = report::yardPlan(yard.title().toStdString(), *date, colonies, priceOf(yard.shownYard()), known);
    nameCombsAndPairs(sheet, plan);
    return {print::htmlOf(sheet, {yardSentence(plan), {yardSmallLine(plan)}, words::style()}, known),
            footerOf(yard.title(), *date),
            2,
            {}};
}

std::optional<Paper> colonySheet(const ColonyEntry& colony, const ReferenceData& reference) {
    if (!colony.answered || colony.pending) return std::nullopt;
    const auto answered = colony.answered;
    std::vector<report::Task> tasks; // in the amounts that are printed
    for (const auto& job : jobsOf(colony))
        if (!job.forbidden) tasks.push_back(job);
    auto sheet = report::colonySheet(answered->question, answered->answer.advice, reference, tasks);
    const QString name = QString::fromStdString(sheet.title);
    Paper paper{print::htmlOf(sheet,
                              {words::answerSentence(*answered),
                               {words::riskLine(*answered), words::lookLine(*answered)},
                               words::styleOf(answered->question)},
                              reference),
                footerOf(name, sheet.date),
                1,
                {}};
    if (!answered->picture.empty()) paper.picture = [answered](QSize size) { return drawn(answered, size); };
    return paper;
}

} // namespace winterlarder::desk
