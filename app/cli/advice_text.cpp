// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/advice_text.h"

#include "answer/json_values.h"
#include "answer/style_of_place.h"
#include "cli/table.h"
#include "text/ask_words.h"
#include "text/contexts.h"
#include "text/foreign_text.h"
#include "text/remarks.h"
#include "text/task_words.h"
#include "text/words.h"

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

// Writes the parts of one answer, one after the other.
class AnswerText {
public:
    AnswerText(const book::ColonyCase& record, const advice::ColonyQuestion& question, const advice::Advice& advice,
               const Session& session)
        : record_(record), q_(question), a_(advice), session_(session), style_(styleFor(session.style, question)),
          inTables_(style_) {
        inTables_.poundsBeside = false; // a table has one unit
    }

    QString all() {
        title();
        options();
        feeding();
        combs();
        remarks(say::CommandLine::tr("Reasons"), a_.reasons);
        remarks(say::CommandLine::tr("Cautions"), a_.cautions);
        weighLine();
        figures();
        months();
        remarks(say::CommandLine::tr("Good practice"), a_.goodPractice);
        return text_;
    }

private:
    void heading(const QString& words) { text_ += QLatin1Char('\n') + session_.strong(words) + QLatin1Char('\n'); }
    QString on(SeasonDay day) const { return text::date(q_.winter.date(day), style_); }

    void title() {
        const QString name =
            record_.colony ? text::shown(*record_.colony) : say::CommandLine::tr("Colony without a name");
        const QString day = text::date(record_.asOf, style_);
        text_ +=
            session_.strong(record_.yard ? say::CommandLine::tr("%1, %2, %3").arg(name, text::shown(*record_.yard), day)
                                         : say::CommandLine::tr("%1, %2").arg(name, day));
        text_ +=
            QLatin1Char('\n') + session_.strong(wrapped(text::headline(a_, style_), {}).trimmed()) + QLatin1Char('\n');
        if (a_.verdict == advice::Verdict::CannotSay) return;
        sentence(text::targetSentence(a_, style_));
        sentence(text::thereSentence(a_, style_));
        sentence(text::lookSentence(a_, style_));
        if (a_.ask) text_ += wrapped(say::CommandLine::tr("One question: %1").arg(text::question(*a_.ask, style_)), {});
        sentence(text::riskSentence(a_, style_));
        if (a_.expectedLater) text_ += wrapped(text::laterSentence(*a_.expectedLater, style_), {});
    }

    //! No amount is told before one of two that contradict each other is found wrong.
    bool untold() const { return a_.decidedBy == advice::DecidedBy::Contradiction; }

    void sentence(const QString& words) {
        if (!words.isEmpty()) text_ += wrapped(words, {});
    }

    void figures() {
        FactList facts;
        if (a_.alone) {
            facts.add(say::CommandLine::tr("Its own stores"), text::amount(a_.alone->stores, style_));
            facts.add(say::CommandLine::tr("Its own bees"), text::bees(a_.alone->bees, style_));
        }
        if (a_.estimate && untold()) // what contradicts itself has no middle
            facts.add(say::CommandLine::tr("Stores"), say::CommandLine::tr("%1 to %2")
                                                          .arg(text::amount(a_.estimate->spread.low, style_),
                                                               text::amount(a_.estimate->spread.high, style_)));
        else if (a_.estimate)
            facts.add(a_.alone ? say::CommandLine::tr("Stores of both") : say::CommandLine::tr("Stores"),
                      text::amount(a_.estimate->spread, style_));
        if (a_.bees)
            facts.add(a_.alone ? say::CommandLine::tr("Bees of both") : say::CommandLine::tr("Bees"),
                      text::bees(*a_.bees, style_));
        if (a_.use) facts.add(say::CommandLine::tr("Eaten until spring forage"), text::amount(*a_.use, style_));
        if (a_.need)
            facts.add(say::CommandLine::tr("Need"),
                      say::CommandLine::tr("%1: typically eaten %2, for a harder winter %3, to be left %4")
                          .arg(text::amount(*a_.need, style_), text::amount(a_.needParts->typicalUse, style_),
                               text::amount(a_.needParts->harderWinter, style_),
                               text::amount(a_.needParts->reserve, style_)));
        if (a_.missing && !untold()) missing(facts, *a_.missing);
        if (a_.untilTarget && a_.target->date > record_.asOf)
            facts.add(
                say::CommandLine::tr("Until %1").arg(text::date(a_.target->date, style_)),
                say::CommandLine::tr("eaten %1, found %2")
                    .arg(text::amount(a_.untilTarget->eaten, style_), text::amount(a_.untilTarget->found, style_)));
        if (a_.capacity)
            facts.add(worded(say::CommandLine::tr("The %{combs} hold"), style_), text::amount(*a_.capacity, style_));
        if (a_.springReserve && !untold())
            facts.add(say::CommandLine::tr("Left when spring forage starts"), text::amount(*a_.springReserve, style_));
        if (a_.freeRoom) facts.add(say::CommandLine::tr("Empty comb at the look"), text::amount(*a_.freeRoom, style_));
        for (const NamedDate& named : seasonDateKeys) date(facts, named);
        heading(say::CommandLine::tr("Figures (10th to 90th percentile in brackets)"));
        text_ += facts.text();
    }

    //! A negative amount is nothing missing but that much to spare.
    void missing(FactList& facts, const Spread<Mass>& spread) const {
        const QString day = text::date(a_.target->date, style_), low = text::amount(-spread.low, inTables_),
                      high = text::amount(spread.high, inTables_);
        const bool either = spread.low < Mass(0) && spread.high > Mass(0);
        if (spread.typical >= Mass(0))
            return facts.add(say::CommandLine::tr("Missing on %1").arg(day),
                             either ? say::CommandLine::tr("%1 (from %2 to spare to %3 missing)")
                                          .arg(text::amount(spread.typical, inTables_), low, high)
                                    : text::amount(spread, style_));
        const Spread<Mass> spare{-spread.high, -spread.typical, -spread.low};
        facts.add(say::CommandLine::tr("To spare on %1").arg(day),
                  either ? say::CommandLine::tr("%1 (from %2 missing to %3 to spare)")
                               .arg(text::amount(spare.typical, inTables_), high, low)
                         : text::amount(spare, style_));
    }

    //! Days that say what to do, which is nothing once they are past.
    static bool isForSyrup(std::string_view key) {
        return key == "feed_advised_by" || key == "syrup_deadline" || key == "syrup_refused";
    }

    void date(FactList& facts, const NamedDate& named) const {
        const auto& date = a_.season.*(named.date);
        if (!date || (isForSyrup(named.key) && date->day < q_.asOf)) return;
        QString name = text::seasonDate(named.key);
        name[0] = name[0].toUpper();
        const QString origin = text::origin(date->origin);
        facts.add(name, date->exact ? say::CommandLine::tr("%1 (%2, exact)").arg(on(date->day), origin)
                                    : say::CommandLine::tr("%1 ± %2 days (%3)")
                                          .arg(on(date->day), text::count(date->sdDays, style_), origin));
    }

    void weighLine() {
        if (a_.weighLine.empty()) return;
        heading(a_.expectedLater ? say::CommandLine::tr("Weight to expect, hive and all, without what is fed later")
                                 : say::CommandLine::tr("Weight to expect, hive and all"));
        if (a_.weighedWithSuper)
            text_ += wrapped(*a_.weighedWithSuper
                                 ? say::CommandLine::tr("With your super on, and the honey that is in it now.")
                                 : say::CommandLine::tr("With your super off."),
                             QStringLiteral("  "));
        TextTable table({say::CommandLine::tr("Day"), say::CommandLine::tr(">Weight")});
        for (const advice::WeighPoint& point : a_.weighLine)
            table.add({text::date(point.date, style_), text::amount(point.gross, style_)});
        text_ += table.text();
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
        if (a_.options.empty() || untold()) return;
        const QString winters = text::count(a_.winters, style_);
        heading(a_.alone ? say::CommandLine::tr("Options once %1 is united onto it, over the same %2 simulated winters")
                               .arg(text::shown(a_.plan->uniteWith), winters)
                         : say::CommandLine::tr("Options, over the same %1 simulated winters").arg(winters));
        TextTable table({say::CommandLine::tr("Option"), say::CommandLine::tr(">Of stores"),
                         say::CommandLine::tr(">Stores after"), say::CommandLine::tr(">Runs out"),
                         say::CommandLine::tr(">Falls below %1").arg(text::amount(a_.reserve, style_)),
                         say::CommandLine::tr(">Left in spring")});
        for (const advice::Option& option : a_.options) {
            if (option.kind == advice::OptionKind::Unite)
                continue; // told below: what becomes of two together is for their yard's plan
            table.add({text::option(option, a_, style_),
                       option.amount.value() > 0 ? text::amount(option.amount, inTables_) : QStringLiteral("-"),
                       text::amount(option.storesAfter, inTables_), text::ofHundred(option.runOut, style_),
                       text::ofHundred(option.touchReserve, style_), text::amount(option.springReserve, style_)});
        }
        text_ += table.text();
        const QString fits = text::fitsSentence(a_, style_);
        if (!fits.isEmpty()) text_ += wrapped(fits, QStringLiteral("  "));
        if (a_.unite)
            text_ += wrapped(say::CommandLine::tr("Unite it soon, at the latest on %1. %2")
                                 .arg(text::date(a_.unite->by, style_), text::howToUnite(*a_.unite, style_)),
                             QStringLiteral("  "));
    }

    void feeding() {
        if (!a_.feed) return;
        const feeding::FeedingPlan& plan = *a_.feed;
        heading(say::CommandLine::tr("Feeding"));
        FactList facts;
        if (plan.syrup.sugar.value() > 0) {
            facts.add(say::CommandLine::tr("Sugar"), text::amount(plan.syrup.sugar, style_));
            facts.add(say::CommandLine::tr("Water"), text::amount(plan.syrup.water, style_));
            facts.add(say::CommandLine::tr("Syrup"),
                      say::CommandLine::tr("%1, %2 by mass")
                          .arg(text::amount(plan.syrup.volume, style_), text::shown(plan.ratio.printed)));
        }
        if (plan.fondant.value() > 0) facts.add(say::CommandLine::tr("Fondant"), text::amount(plan.fondant, style_));
        if (plan.lastDay && plan.syrup.sugar.value() > 0 && *plan.lastDay >= q_.asOf)
            facts.add(say::CommandLine::tr("Last day for syrup"), on(*plan.lastDay));
        text_ += facts.text();
        visits(plan);
    }

    void visits(const feeding::FeedingPlan& plan) {
        if (plan.visits.empty()) return;
        TextTable table({say::CommandLine::tr("Visit"), say::CommandLine::tr("What"), say::CommandLine::tr(">Sugar"),
                         say::CommandLine::tr(">Syrup"), say::CommandLine::tr(">Fondant")});
        const auto kg = [&](Mass mass) { return mass.value() > 0 ? text::amount(mass, inTables_) : QString(); };
        std::vector<report::Task> tasks;
        for (const feeding::Visit& visit : plan.visits) tasks.push_back(report::taskOf(visit));
        tasks = text::asShown(std::move(tasks), style_);
        for (std::size_t i = 0; i < tasks.size(); ++i)
            table.add({text::date(plan.visits[i].date, style_),
                       text::visit(plan.visits[i].kind, style_, text::Register::Brief), kg(tasks[i].sugar),
                       tasks[i].syrup.value() > 0 ? text::amount(tasks[i].syrup, style_) : QString(),
                       kg(tasks[i].fondant)});
        text_ += table.text();
    }

    QString given(const advice::CombGift& gift) const {
        const QString said = say::CommandLine::tr("From %1 to %2: %3 (%4).")
                                 .arg(text::shown(gift.from), text::shown(gift.to),
                                      text::combPlaces(gift.places, static_cast<std::size_t>(gift.boxes), style_),
                                      text::amount(gift.honey, style_));
        return gift.back.empty()
                   ? said
                   : worded(say::CommandLine::tr(
                                "%1 As many of the emptiest outer %{combs} go back, and are taken off that weight."),
                            style_)
                         .arg(said);
    }
    // The receiver's own combs can be named in its own answer.
    QString received(const advice::CombGift& gift) const {
        const QString said = given(gift);
        return gift.back.empty() ? said
                                 : say::CommandLine::tr("%1 Back go: %2.")
                                       .arg(said, text::combPlaces(gift.back, q_.combs, q_.boxes.size(), style_));
    }

    void combs() {
        if (a_.harvest && !a_.harvest->combs.empty()) {
            heading(say::CommandLine::tr("Harvest"));
            text_ += wrapped(say::CommandLine::tr("%1 in all: %2.")
                                 .arg(text::amount(a_.harvest->combsHold, style_),
                                      text::combPlaces(a_.harvest->combs, q_.combs, q_.boxes.size(), style_)),
                             QStringLiteral("  "));
        }
        if (!a_.plan || a_.gifts.empty()) return;
        heading(worded(say::CommandLine::tr("%{Combs} to move within the yard"), style_));
        for (const advice::CombGift& gift : a_.plan->given) text_ += wrapped(given(gift), QStringLiteral("  "));
        for (const advice::CombGift& gift : a_.plan->received) text_ += wrapped(received(gift), QStringLiteral("  "));
    }

    QString citation(const advice::Remark& remark) const {
        const auto sources = session_.reference.sourcesOf(remark);
        return sources.empty() ? QString() : QStringLiteral(" [%1]").arg(QString::fromStdString(sources.front()));
    }

    void remarks(const QString& words, const std::vector<advice::Remark>& remarks) {
        if (remarks.empty()) return;
        heading(words);
        for (const advice::Remark& remark : remarks)
            text_ += wrapped(text::shown(text::sentence(remark, style_).toStdString()) + citation(remark),
                             QStringLiteral("  - "));
    }

    const book::ColonyCase& record_;
    const advice::ColonyQuestion& q_;
    const advice::Advice& a_;
    const Session& session_;
    const text::WordStyle style_;
    text::WordStyle inTables_;
    QString text_;
};

} // namespace

QString adviceText(const book::ColonyCase& record, const advice::ColonyQuestion& question, const advice::Advice& advice,
                   const Session& session) {
    return AnswerText(record, question, advice, session).all();
}

} // namespace winterlarder::cli
