// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/advice_text.h"

#include "answer/json_values.h"
#include "cli/table.h"
#include "text/contexts.h"
#include "text/remarks.h"
#include "text/words.h"


namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

// Writes the parts of one answer, one after the other.
class AnswerText {
public:
    AnswerText(const book::ColonyCase& record, const advice::ColonyQuestion& question, const advice::Advice& advice,
               const Session& session)
        : record_(record), q_(question), a_(advice), session_(session), style_(session.style) {}

    QString all() {
        title();
        figures();
        months();
        options();
        feeding();
        combs();
        remarks(say::CommandLine::tr("Reasons"), a_.reasons);
        remarks(say::CommandLine::tr("Cautions"), a_.cautions);
        return text_;
    }

private:
    void heading(const QString& words) { text_ += QLatin1Char('\n') + session_.strong(words) + QLatin1Char('\n'); }
    QString on(SeasonDay day) const { return text::date(q_.winter.date(day), style_); }

    void title() {
        const QString name = record_.colony ? shown(*record_.colony) : say::CommandLine::tr("Colony without a name");
        const QString day = text::date(record_.asOf, style_);
        text_ += session_.strong(record_.yard ? say::CommandLine::tr("%1, %2, %3").arg(name, shown(*record_.yard), day)
                                              : say::CommandLine::tr("%1, %2").arg(name, day));
        text_ += QLatin1Char('\n') + session_.strong(text::headline(a_, style_)) + QLatin1Char('\n');
        const QString risk = text::riskSentence(a_, q_.reserve.value(), style_);
        if (!risk.isEmpty()) text_ += wrapped(risk, {});
        if (a_.verdict != advice::Verdict::CannotSay) text_ += wrapped(text::lookSentence(a_.anotherLook, style_), {});
    }

    void figures() {
        FactList facts;
        if (a_.estimate) facts.add(say::CommandLine::tr("Stores"), text::mass(a_.estimate->spread, style_));
        if (a_.bees) facts.add(say::CommandLine::tr("Bees"), text::bees(*a_.bees, style_));
        if (a_.use) facts.add(say::CommandLine::tr("Use to first forage"), text::mass(*a_.use, style_));
        if (a_.need)
            facts.add(say::CommandLine::tr("Need"), say::CommandLine::tr("%1, the reserve of %2 in it, at a short risk of %3")
                                      .arg(text::mass(*a_.need, style_), text::mass(q_.reserve, style_),
                                           text::ofHundred({q_.shortRisk, 0}, style_)));
        if (a_.springReserve) facts.add(say::CommandLine::tr("Left at first forage"), text::mass(*a_.springReserve, style_));
        if (a_.freeRoom) facts.add(say::CommandLine::tr("Room in the combs"), text::mass(*a_.freeRoom, style_));
        for (const NamedDate& named : seasonDateKeys)
            date(facts, named);
        heading(say::CommandLine::tr("Figures (10th to 90th percentile in brackets)"));
        text_ += facts.text();
    }

    void date(FactList& facts, const NamedDate& named) const {
        const auto& date = a_.season.*(named.date);
        if (!date) return;
        QString name = text::seasonDate(named.key);
        name[0] = name[0].toUpper();
        const QString origin = text::origin(date->origin);
        facts.add(name, date->exact
                            ? say::CommandLine::tr("%1 (%2, exact)").arg(on(date->day), origin)
                            : say::CommandLine::tr("%1 ± %2 days (%3)").arg(on(date->day), text::count(date->sdDays, style_), origin));
    }

    void months() {
        if (a_.useByMonth.empty()) return;
        heading(say::CommandLine::tr("Use by month"));
        TextTable table({say::CommandLine::tr("Month"), say::CommandLine::tr(">Use")});
        for (const advice::MonthUse& month : a_.useByMonth)
            table.add({text::month(month.year, month.month, style_), text::mass(month.use, style_)});
        text_ += table.text();
    }

    void options() {
        if (a_.options.empty()) return;
        heading(say::CommandLine::tr("Options, over the same %1 simulated winters").arg(text::count(a_.winters, style_)));
        TextTable table({say::CommandLine::tr("Option"), say::CommandLine::tr(">Amount"), say::CommandLine::tr(">Stores after"), say::CommandLine::tr(">Runs out"), say::CommandLine::tr(">Touches reserve"),
                         say::CommandLine::tr(">Left at first forage")});
        for (const advice::Option& option : a_.options)
            table.add({text::option(option.kind),
                       option.amount.value() > 0 ? text::mass(option.amount, style_) : QStringLiteral("-"),
                       text::mass(option.storesAfter, style_), text::ofHundred(option.runOut, style_),
                       text::ofHundred(option.touchReserve, style_), text::mass(option.springReserve, style_)});
        text_ += table.text();
    }

    void feeding() {
        if (!a_.feed) return;
        const feeding::FeedingPlan& plan = *a_.feed;
        heading(say::CommandLine::tr("Feeding"));
        FactList facts;
        if (plan.syrup.sugar.value() > 0) {
            facts.add(say::CommandLine::tr("Sugar"), text::mass(plan.syrup.sugar, style_));
            facts.add(say::CommandLine::tr("Water"), text::volume(plan.syrup.water, style_));
            facts.add(say::CommandLine::tr("Syrup"),
                      say::CommandLine::tr("%1, %2 by mass").arg(text::volume(plan.syrup.volume, style_), shown(plan.ratio.printed)));
        }
        if (plan.fondant.value() > 0) facts.add(say::CommandLine::tr("Fondant"), text::mass(plan.fondant, style_));
        if (plan.lastDay) facts.add(say::CommandLine::tr("Last day for syrup"), on(*plan.lastDay));
        text_ += facts.text();
        visits(plan);
    }

    void visits(const feeding::FeedingPlan& plan) {
        if (plan.visits.empty()) return;
        TextTable table({say::CommandLine::tr("Visit"), say::CommandLine::tr("What"), say::CommandLine::tr(">Sugar"), say::CommandLine::tr(">Syrup"), say::CommandLine::tr(">Fondant")});
        const auto kg = [&](Mass mass) { return mass.value() > 0 ? text::mass(mass, style_) : QString(); };
        for (const feeding::Visit& visit : plan.visits)
            table.add({text::date(visit.date, style_), text::visit(visit.kind), kg(visit.sugar),
                       visit.syrup.value() > 0 ? text::volume(visit.syrup, style_) : QString(), kg(visit.fondant)});
        text_ += table.text();
    }

    // Combs count from 1 for a person.
    static QString listed(const std::vector<int>& combs) {
        QStringList words;
        for (int comb : combs)
            words << QString::number(comb + 1);
        return words.join(QLatin1String(", "));
    }

    void combs() {
        if (a_.harvest && !a_.harvest->combs.empty()) {
            heading(say::CommandLine::tr("Harvest"));
            text_ += wrapped(say::CommandLine::tr("Combs to take, counted as listed: %1 (%2).")
                                 .arg(listed(a_.harvest->combs), text::mass(a_.harvest->combsHold, style_)),
                             QStringLiteral("  "));
        }
        if (a_.gifts.empty()) return;
        heading(say::CommandLine::tr("Combs to move within the yard"));
        for (const advice::CombGift& gift : a_.gifts)
            text_ +=
                wrapped(say::CommandLine::tr("From %1 to %2: combs %3 (%4).")
                            .arg(shown(gift.from), shown(gift.to), listed(gift.combs), text::mass(gift.honey, style_)),
                        QStringLiteral("  "));
    }

    QString citation(const std::string& id) const {
        const CautionRule* rule = session_.reference.caution(id);
        return rule && !rule->sources.empty()
                   ? QStringLiteral(" [%1]").arg(QString::fromStdString(rule->sources.front()))
                   : QString();
    }

    void remarks(const QString& words, const std::vector<advice::Remark>& remarks) {
        if (remarks.empty()) return;
        heading(words);
        for (const advice::Remark& remark : remarks)
            text_ += wrapped(shown(text::sentence(remark, style_).toStdString()) + citation(remark.id),
                             QStringLiteral("  - "));
    }

    const book::ColonyCase& record_;
    const advice::ColonyQuestion& q_;
    const advice::Advice& a_;
    const Session& session_;
    const text::WordStyle& style_;
    QString text_;
};

} // namespace

QString adviceText(const book::ColonyCase& record, const advice::ColonyQuestion& question, const advice::Advice& advice,
                   const Session& session) {
    return AnswerText(record, question, advice, session).all();
}

} // namespace winterlarder::cli
