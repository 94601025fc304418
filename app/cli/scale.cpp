// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands.h"

#include "answer/scale_answer.h"
#include "cli/table.h"
#include "exchange/json/json_tree.h"
#include "scale/dampness.h"
#include "text/contexts.h"
#include "text/scale_words.h"

#include <cmath>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <istream>

namespace winterlarder::cli {

namespace {

using answer::ScaleAnswer;

constexpr std::size_t mostLines = 12; // of a list in text

// ---- what the command line said

std::optional<char> delimiterOf(const std::string& text) {
    if (text == "tab" || text == "\\t" || text == "\t") return '\t';
    if (text == "comma") return ',';
    if (text == "semicolon") return ';';
    return text == "," || text == ";" || text == "|" ? std::optional<char>(text[0]) : std::nullopt;
}

Outcome<exchange::ScaleLogOptions> logOptions(const ScaleOptions& options) {
    exchange::ScaleLogOptions result;
    Problems problems;
    const auto wrong = [&](const char* option, const std::string& said, const char* right) {
        problems.push_back(argumentProblem(fmt::format("{} is {}", option, exchange::inQuotes(said)), right));
    };
    result.date = options.date.value_or("");
    result.time = options.time.value_or("");
    result.weight = options.weight.value_or("");
    if (options.delimiter && !(result.delimiter = delimiterOf(*options.delimiter)))
        wrong("--delimiter", *options.delimiter, "comma, semicolon, tab or the sign itself");
    if (options.decimal) {
        if (*options.decimal == "," || *options.decimal == "comma") result.decimal = ',';
        else if (*options.decimal == "." || *options.decimal == "point") result.decimal = '.';
        else wrong("--decimal", *options.decimal, "comma or point");
    }
    if (options.unit) {
        if (*options.unit == "kg") result.unit = MassUnit::Kilogram;
        else if (*options.unit == "g") result.unit = MassUnit::Gram;
        else if (*options.unit == "lb") result.unit = MassUnit::Pound;
        else wrong("--unit", *options.unit, "kg, g or lb");
    }
    if (options.dateOrder && !(result.dateOrder = exchange::dateOrderOf(*options.dateOrder)))
        wrong("--date-order", *options.dateOrder, "dmy, mdy or ymd");
    if (!problems.empty()) return problems;
    return result;
}

Outcome<exchange::ScaleLog> readLog(Session& session, const std::string& file,
                                    const exchange::ScaleLogOptions& options) {
    if (file == "-") return exchange::readScaleLog(session.in, shownName(file), options);
    std::error_code none;
    if (std::filesystem::is_directory(file, none))
        return Problem{ProblemKind::File, {file, 0, 0}, "this is a folder", "name a file"};
    std::ifstream stream(file, std::ios::binary);
    if (!stream) return Problem{ProblemKind::File, {file, 0, 0}, "cannot be opened", "a file that can be read"};
    return exchange::readScaleLog(stream, file, options);
}

// ---- words for a person

QString column(const exchange::LogColumn& column) {
    const QString number = say::CommandLine::tr("column %1").arg(column.number);
    const QString name =
        column.name.empty() ? number : say::CommandLine::tr("%1, \"%2\"").arg(number, text::printable(column.name));
    return say::CommandLine::tr("%1 (%2)").arg(name, text::toldBy(column.told));
}

QString timeForm(const ScaleAnswer& answer) {
    switch (answer.columns.timeForm) {
    case exchange::TimeForm::WallClock: return {};
    case exchange::TimeForm::WithOffset:
        return answer.utcDays ? say::CommandLine::tr(", in UTC")
                              : say::CommandLine::tr(", with their distance from UTC");
    case exchange::TimeForm::UnixTime: return say::CommandLine::tr(", in seconds since 1970");
    }
    return {};
}

QString understood(const ScaleAnswer& answer, const text::WordStyle& style) {
    const exchange::ScaleLogColumns& columns = answer.columns;
    const scale::Summary& summary = answer.summary;
    FactList facts;
    if (columns.date) facts.add(say::CommandLine::tr("Date"), column(*columns.date));
    facts.add(say::CommandLine::tr("Time"), column(columns.time) + timeForm(answer));
    if (columns.dateOrder)
        facts.add(
            say::CommandLine::tr("Date order"),
            say::CommandLine::tr("%1 (%2)").arg(QString::fromStdString(std::string(exchange::word(*columns.dateOrder))),
                                                text::toldBy(columns.dateOrderTold)));
    facts.add(say::CommandLine::tr("Weight"), column(columns.weight));
    facts.add(say::CommandLine::tr("Unit"),
              say::CommandLine::tr("%1 (%2)").arg(QString::fromStdString(std::string(symbol(columns.unit))),
                                                  text::toldBy(columns.unitTold)));
    facts.add(say::CommandLine::tr("Readings"),
              say::CommandLine::tr("%1, one in %2 minutes")
                  .arg(text::count(static_cast<double>(summary.readings), style),
                       text::number(static_cast<double>(summary.interval) / 60, 1, style)));
    if (summary.order == scale::RowOrder::NewestFirst)
        facts.add(say::CommandLine::tr("Order"), say::CommandLine::tr("newest first, turned round"));
    if (summary.order == scale::RowOrder::Mixed)
        facts.add(say::CommandLine::tr("Order"),
                  say::CommandLine::tr("rows were not in the order of time and are sorted"));
    if (summary.merged > 0)
        facts.add(say::CommandLine::tr("Same time"),
                  say::CommandLine::tr("%1 rows share their time with another and are taken together")
                      .arg(text::count(static_cast<double>(summary.merged), style)));
    if (answer.utcDays)
        facts.add(say::CommandLine::tr("Days"), say::CommandLine::tr("of UTC; --time-zone gives those of the place"));
    if (columns.daysOnly)
        facts.add(say::CommandLine::tr("Days"), say::CommandLine::tr("no time of day is given: taken as noon"));
    return facts.text();
}

QString signedKg(Mass mass, const text::WordStyle& style) {
    const double kg = std::round(mass.value() * 100) / 100;
    return (kg > 0 ? QStringLiteral("+") : QString()) + text::number(kg == 0 ? 0 : kg, 2, style);
}

QString monthsText(const scale::Summary& summary, const text::WordStyle& style) {
    TextTable table({say::CommandLine::tr("Month"), say::CommandLine::tr(">Change kg"),
                     say::CommandLine::tr(">Nectar days"), say::CommandLine::tr(">kg"),
                     say::CommandLine::tr(">Eating days"), say::CommandLine::tr(">kg"),
                     say::CommandLine::tr("Remark")});
    for (const scale::MonthChange& month : summary.months) {
        QStringList remarks;
        if (!month.change) remarks << text::monthEnd(month.ends);
        if (month.byDay) remarks << say::CommandLine::tr("an end was weighed by day, foragers out");
        if (month.wet) remarks << say::CommandLine::tr("an end in the wet");
        if (month.change && month.unknownDays > 0)
            remarks << say::CommandLine::tr("%1 days unknown").arg(month.unknownDays);
        table.add({text::month(month.year, month.month, style),
                   month.change ? signedKg(*month.change, style) : QStringLiteral("?"),
                   QString::number(month.nectarDays), text::number(month.nectar.value(), 1, style),
                   QString::number(month.eatingDays), text::number(month.eaten.value(), 1, style),
                   remarks.join(QStringLiteral("; "))});
    }
    return table.text();
}

// What a log of days alone cannot tell apart is said.
QString dampnessText(const scale::Summary& summary, const text::WordStyle& style) {
    const double damp = scale::dampnessOf(summary.days);
    if (damp < scale::muchDampness) return {};
    return wrapped(
        say::CommandLine::tr(
            "Water in the wood and on the hive moves this log by about %1 kg from day to day: while it is too cold to fly a single day of nectar "
            "is water. The months themselves are right.")
            .arg(text::number(damp, 2, style)),
        QStringLiteral("  "));
}

QString stepsText(const scale::Summary& summary, const text::WordStyle& style) {
    if (summary.steps.empty())
        return wrapped(say::CommandLine::tr("No steps: nothing was put on, taken off or poured in."),
                       QStringLiteral("  "));
    TextTable table({say::CommandLine::tr("Step"), say::CommandLine::tr("Time"), say::CommandLine::tr(">kg"),
                     say::CommandLine::tr("Kind"), say::CommandLine::tr("Why")});
    for (const scale::Step& step : summary.steps)
        table.add({text::date(step.date, style), QString::fromStdString(answer::localTime(step.local).substr(11, 5)),
                   signedKg(step.jump.change, style), text::stepKind(step.kind), text::stepRule(step.rule)});
    return table.text();
}

QString daysText(const scale::Summary& summary, const text::WordStyle& style) {
    TextTable table({say::CommandLine::tr("Day"), say::CommandLine::tr(">kg"), say::CommandLine::tr(">Change kg"),
                     say::CommandLine::tr("Kind"), say::CommandLine::tr("Remark")});
    for (const scale::DayWeight& day : summary.days) {
        QStringList remarks;
        if (day.basis == scale::Basis::NearNight) remarks << say::CommandLine::tr("late evening and early morning");
        if (day.basis == scale::Basis::Day) remarks << say::CommandLine::tr("by day");
        if (day.wet) remarks << say::CommandLine::tr("wet");
        table.add({text::date(day.date, style), text::number(day.weight.value(), 2, style),
                   day.change ? signedKg(*day.change, style) : QString(),
                   day.kind ? text::dayKind(*day.kind) : QString(), remarks.join(QStringLiteral("; "))});
    }
    return table.text();
}

// The first lines of a long list, and how many more there are.
class ShortList {
public:
    void add(const QString& line) {
        if (++count_ <= mostLines) text_ += wrapped(line, QStringLiteral("  "));
    }
    QString under(const QString& title) const {
        if (count_ == 0) return {};
        const QString more =
            count_ > mostLines
                ? wrapped(say::CommandLine::tr("and %1 more; --json lists them all").arg(count_ - mostLines),
                          QStringLiteral("  "))
                : QString();
        return QLatin1Char('\n') + title.arg(count_) + QLatin1Char('\n') + text_ + more;
    }

private:
    std::size_t count_ = 0;
    QString text_;
};

QString shownTime(std::int64_t local) {
    std::string time = answer::localTime(local).substr(0, 16);
    time[10] = ' ';
    return QString::fromStdString(time);
}

QString faultsText(const ScaleAnswer& answer) {
    ShortList list;
    for (const exchange::ScaleLogFault& fault : answer.faults) {
        const QString cell =
            fault.cell.empty() ? QString() : say::CommandLine::tr(" (%1)").arg(text::printable(fault.cell));
        list.add(say::CommandLine::tr("line %1: %2").arg(fault.line).arg(text::rowFault(fault.why) + cell));
    }
    for (const scale::LeftOut& left : answer.summary.leftOut)
        list.add(say::CommandLine::tr("line %1: %2").arg(left.line).arg(text::leftOut(left)));
    return list.under(say::CommandLine::tr("Rows left out: %1"));
}

QString oddities(const scale::Summary& summary, const text::WordStyle& style) {
    ShortList gaps, clock, disturbed;
    for (const scale::Gap& gap : summary.gaps)
        gaps.add(say::CommandLine::tr("%1 to %2").arg(shownTime(gap.from), shownTime(gap.to)));
    for (const scale::ClockJump& jump : summary.jumps) {
        const QString minutes = text::number(std::abs(static_cast<double>(jump.seconds)) / 60, 0, style);
        const QString way = jump.seconds < 0 ? say::CommandLine::tr("%1: %2 minutes back")
                                             : say::CommandLine::tr("%1: %2 minutes forward");
        const QString why = jump.kind == scale::ClockJump::Kind::DaylightSaving
                                ? say::CommandLine::tr(" (daylight saving)")
                                : QString();
        clock.add(way.arg(shownTime(jump.local), minutes) + why);
    }
    for (const scale::Stretch& stretch : summary.disturbed)
        disturbed.add(stretch.kind == scale::Stretch::Kind::Wet
                          ? say::CommandLine::tr("%1: %2 kg of rain or snow")
                                .arg(shownTime(stretch.begin), text::number(stretch.most.value(), 1, style))
                          : say::CommandLine::tr("%1: %2 kg and back")
                                .arg(shownTime(stretch.begin), signedKg(stretch.most, style)));
    return gaps.under(say::CommandLine::tr("Gaps: %1")) +
           clock.under(say::CommandLine::tr("Clock put back or forward: %1")) +
           disturbed.under(say::CommandLine::tr("Disturbed: %1"));
}

QString scaleText(const ScaleAnswer& answer, bool daily, const text::WordStyle& style) {
    QString result = understood(answer, style) + QLatin1Char('\n') + monthsText(answer.summary, style) +
                     dampnessText(answer.summary, style) + QLatin1Char('\n') + stepsText(answer.summary, style);
    if (daily) result += QLatin1Char('\n') + daysText(answer.summary, style);
    return result + oddities(answer.summary, style) + faultsText(answer);
}

} // namespace

Outcome<ScaleAnswer> readScale(Session& session, const ScaleOptions& options) {
    const auto asked = logOptions(options);
    if (!asked) return asked.problems();
    auto log = readLog(session, options.file, *asked);
    if (!log) return log.problems();
    auto found = answer::answerOf(std::move(log).value(), {options.timeZone, options.clock});
    if (found) return found;
    Problems problems = found.problems();
    for (Problem& problem : problems) problem.place.file = "winterlarder-cli";
    return problems;
}

Status scale(Session& session, const ScaleOptions& options) {
    const auto found = readScale(session, options);
    if (!found) return session.fail(found.problems());
    if (session.json) session.print(answer::json(*found));
    else session.print(scaleText(*found, options.daily, session.style));
    return Status::Done;
}

} // namespace winterlarder::cli
