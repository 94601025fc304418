// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/scale_words.h"

#include "text/contexts.h"

namespace winterlarder::text {

QString rowFault(exchange::RowFault why) {
    using exchange::RowFault;
    switch (why) {
    case RowFault::NoTime: return say::ScaleWords::tr("there is no time");
    case RowFault::BadTime: return say::ScaleWords::tr("the time cannot be read");
    case RowFault::NoSuchDay: return say::ScaleWords::tr("there is no such day");
    case RowFault::OtherTimeForm:
        return say::ScaleWords::tr("the time is written in another form than in the rows before");
    case RowFault::NoWeight: return say::ScaleWords::tr("there is no weight");
    case RowFault::BadWeight: return say::ScaleWords::tr("the weight is no number");
    case RowFault::WeightOutside: return say::ScaleWords::tr("no hive weighs that");
    case RowFault::Quotes: return say::ScaleWords::tr("a quotation mark is not closed");
    case RowFault::TooLong: return say::ScaleWords::tr("the line is too long");
    }
    return {};
}

QString leftOut(const scale::LeftOut& left) {
    if (left.why == scale::LeftOutWhy::ClockBack)
        return say::ScaleWords::tr("the clock was put back: its time contradicts the order of the rows");
    return say::ScaleWords::tr("line %1 has the same time").arg(left.other);
}

QString stepKind(scale::StepKind kind) {
    switch (kind) {
    case scale::StepKind::Equipment: return say::ScaleWords::tr("equipment");
    case scale::StepKind::Feed: return say::ScaleWords::tr("feed");
    case scale::StepKind::Harvest: return say::ScaleWords::tr("harvest");
    case scale::StepKind::Unknown: return say::ScaleWords::tr("unknown");
    }
    return {};
}

QString stepRule(scale::StepRule rule) {
    using scale::StepRule;
    switch (rule) {
    case StepRule::CameAndWent: return say::ScaleWords::tr("as much was put on and taken off again");
    case StepRule::AfterFeed: return say::ScaleWords::tr("soon after a feed: the feeder, perhaps");
    case StepRule::ShrankLikeSyrup: return say::ScaleWords::tr("it lost weight afterwards as syrup does");
    case StepRule::NothingComesIn: return say::ScaleWords::tr("put on while nothing came in");
    case StepRule::RoomInAFlow: return say::ScaleWords::tr("put on while nectar came in");
    case StepRule::TooMuchForFood: return say::ScaleWords::tr("more than a feeder holds");
    case StepRule::TookWhatCameIn: return say::ScaleWords::tr("taken off after as much nectar had come in");
    case StepRule::LikeASwarm: return say::ScaleWords::tr("gone at once by day in a flow: a swarm, perhaps");
    case StepRule::InAGap: return say::ScaleWords::tr("while nothing was recorded");
    case StepRule::NoRule: return say::ScaleWords::tr("nothing tells");
    }
    return {};
}

QString dayKind(scale::DayKind kind) {
    switch (kind) {
    case scale::DayKind::Nectar: return say::ScaleWords::tr("nectar");
    case scale::DayKind::Eating: return say::ScaleWords::tr("eating");
    case scale::DayKind::Wet: return say::ScaleWords::tr("wet");
    }
    return {};
}

QString monthEnd(scale::MonthEnd ends) {
    switch (ends) {
    case scale::MonthEnd::Known: return {};
    case scale::MonthEnd::FirstMissing: return say::ScaleWords::tr("no weight on the first");
    case scale::MonthEnd::LastMissing: return say::ScaleWords::tr("no weight on the first of the next month");
    case scale::MonthEnd::BothMissing: return say::ScaleWords::tr("no weight on either first");
    }
    return {};
}

QString toldBy(exchange::ToldBy told) {
    switch (told) {
    case exchange::ToldBy::Option: return say::ScaleWords::tr("as said");
    case exchange::ToldBy::Header: return say::ScaleWords::tr("by the header");
    case exchange::ToldBy::Content: return say::ScaleWords::tr("by its content");
    case exchange::ToldBy::Size: return say::ScaleWords::tr("by the size of the weights");
    }
    return {};
}

QString printable(const std::string& text) {
    QString result = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    for (QChar& c : result)
        if (c.category() == QChar::Other_Control || c == QChar::ReplacementCharacter) c = QLatin1Char('?');
    return result;
}

} // namespace winterlarder::text
