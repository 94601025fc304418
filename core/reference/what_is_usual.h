// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"
#include "reference/mark.h"

#include <optional>
#include <string>

//! What is usual where: two shipped tables, row by row as published.
namespace winterlarder {

//! A day that returns every year; 29 February is none.
struct MonthDay {
    int month = 1, day = 1;
    auto operator<=>(const MonthDay&) const = default;
};

//! The size of hive a figure holds for; what is larger than two boxes is told of as two.
enum class HiveSize { Any, Nucleus, OneBox, TwoBoxes };

//! What keepers of a place are told to leave or feed for winter (shared/rules/usual_stores.csv).
struct UsualStores {
    //! May be held against a target; is shown with its meaning only; is not used (sugar, feed, food eaten).
    enum class Use { Target, Shown, No };
    std::string id;
    std::string country;                //!< ISO 3166, two capitals
    std::string region;                 //!< empty: all of the country
    double latitude = 0, longitude = 0; //!< degrees, the middle of the region
    std::string winterClass;            //!< "confined", "flying", "dearth"; empty: no station near enough tells
    std::string hive;                   //!< as published
    HiveSize size = HiveSize::Any;
    std::optional<Mass> low, high;           //!< stores in the hive; no high: a lower bound
    std::optional<Mass> grossLow, grossHigh; //!< weight of the whole hive
    std::string means;                       //!< what the number means, in words
    std::string atDate;                      //!< "09-15", "end of feeding"; may be empty
    Use use = Use::No;
    char quality =
        'C'; //!< A paper, law or measurement; B official body, institute, association, textbook; C common practice
    Mark mark = Mark::Published;
    std::string source;
};

//! A late or winter flow, or a known dearth (shared/rules/late_flows.csv).
struct LateFlow {
    enum class Typical {
        None,
        Little,
        Fair,
        Strong
    }; //!< what an average colony brings in in an average year; none: a known dearth
    enum class Stores { Fine, SetsHard, DysenteryRisk };
    std::string id;
    std::string country;
    std::string region;
    double latitude = 0, longitude = 0;
    std::string plant;
    MonthDay from, to; //!< both included; may run over the new year
    Typical typical = Typical::None;
    Stores stores = Stores::Fine;
    std::string note;
    char quality = 'C';
    Mark mark = Mark::Published;
    std::string source;
};

} // namespace winterlarder
