// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/scale_words.h"

#include <QCoreApplication>

namespace winterlarder::text {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("ScaleWords", text); }

} // namespace

QString rowFault(exchange::RowFault why) {
    using exchange::RowFault;
    switch (why) {
    case RowFault::NoTime: return tr("there is no time");
    case RowFault::BadTime: return tr("the time cannot be read");
    case RowFault::NoSuchDay: return tr("there is no such day");
    case RowFault::OtherTimeForm: return tr("the time is written in another form than in the rows before");
    case RowFault::NoWeight: return tr("there is no weight");
    case RowFault::BadWeight: return tr("the weight is no number");
    case RowFault::WeightOutside: return tr("no hive weighs that");
    case RowFault::Quotes: return tr("a quotation mark is not closed");
    case RowFault::TooLong: return tr("the line is too long");
    }
    return {};
}

QString leftOut(const scale::LeftOut& left) {
    if (left.why == scale::LeftOutWhy::ClockBack) return tr("the clock was put back: its time contradicts the order of the rows");
    return tr("line %1 has the same time").arg(left.other);
}

QString stepKind(scale::StepKind kind) {
    switch (kind) {
    case scale::StepKind::Equipment: return tr("equipment");
    case scale::StepKind::Feed: return tr("feed");
    case scale::StepKind::Harvest: return tr("harvest");
    case scale::StepKind::Unknown: return tr("unknown");
    }
    return {};
}

QString stepRule(scale::StepRule rule) {
    using scale::StepRule;
    switch (rule) {
    case StepRule::CameAndWent: return tr("as much was put on and taken off again");
    case StepRule::AfterFeed: return tr("soon after a feed: the feeder, perhaps");
    case StepRule::ShrankLikeSyrup: return tr("it lost weight afterwards as syrup does");
    case StepRule::NothingComesIn: return tr("put on while nothing came in");
    case StepRule::RoomInAFlow: return tr("put on while nectar came in");
    case StepRule::TooMuchForFood: return tr("more than a feeder holds");
    case StepRule::TookWhatCameIn: return tr("taken off after as much nectar had come in");
    case StepRule::LikeASwarm: return tr("gone at once by day in a flow: a swarm, perhaps");
    case StepRule::InAGap: return tr("while nothing was recorded");
    case StepRule::NoRule: return tr("nothing tells");
    }
    return {};
}

QString dayKind(scale::DayKind kind) {
    switch (kind) {
    case scale::DayKind::Nectar: return tr("nectar");
    case scale::DayKind::Eating: return tr("eating");
    case scale::DayKind::Wet: return tr("wet");
    }
    return {};
}

QString monthEnd(scale::MonthEnd ends) {
    switch (ends) {
    case scale::MonthEnd::Known: return {};
    case scale::MonthEnd::FirstMissing: return tr("no weight on the first");
    case scale::MonthEnd::LastMissing: return tr("no weight on the first of the next month");
    case scale::MonthEnd::BothMissing: return tr("no weight on either first");
    }
    return {};
}

QString toldBy(exchange::ToldBy told) {
    switch (told) {
    case exchange::ToldBy::Option: return tr("as said");
    case exchange::ToldBy::Header: return tr("by the header");
    case exchange::ToldBy::Content: return tr("by its content");
    case exchange::ToldBy::Size: return tr("by the size of the weights");
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
