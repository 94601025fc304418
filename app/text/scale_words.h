// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/logs/scale_log.h"
#include "scale/kinds.h"
#include "scale/order.h"
#include "text/style.h"

#include <QString>
#include <string>

//! Words for what a hive scale's log tells.
namespace winterlarder::text {

QString rowFault(exchange::RowFault why);    //!< "the weight is no number"
QString leftOut(const scale::LeftOut& left); //!< "line 12 has the same time"
QString stepKind(scale::StepKind kind);      //!< "equipment"
QString stepRule(scale::StepRule rule);      //!< "as much came and went again"
QString dayKind(scale::DayKind kind);        //!< "nectar"
QString monthEnd(scale::MonthEnd ends);      //!< "no weight on the first"
QString toldBy(exchange::ToldBy told);       //!< "by the header"

//! Text of a foreign file with '?' for what is not UTF-8 or steers a terminal.
QString printable(const std::string& text);

} // namespace winterlarder::text
