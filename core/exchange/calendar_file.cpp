// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/calendar_file.h"

#include "book/entries/plain_text.h"

#include <algorithm>
#include <fmt/format.h>
#include <libical/ical.h>
#include <memory>

namespace winterlarder::exchange {

namespace {

using Component = std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)>;

icaltimetype dayOf(Date date) {
    icaltimetype time = icaltime_null_date();
    time.year = date.year();
    time.month = date.month();
    time.day = date.day();
    return time;
}

// RFC 5545 allows no control characters but the tab in text; those of names in older books are written out.
std::string printable(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        const auto length = std::min(text.find_first_of("\n\t"), text.size());
        result += book::visible(text.substr(0, length));
        if (length < text.size()) result += text[length];
        text.remove_prefix(std::min(length + 1, text.size()));
    }
    return result;
}

std::string compactUtc(book::Timestamp moment) {
    std::string text;
    for (char c : moment.iso())
        if (c != '-' && c != ':') text += c;
    return text;
}

icalcomponent* reminder(const std::string& summary) {
    icaltriggertype eveningBefore{};
    eveningBefore.time = icaltime_null_time();
    eveningBefore.duration = icaldurationtype_from_int(-6 * 60 * 60);
    return icalcomponent_vanew(ICAL_VALARM_COMPONENT, icalproperty_new_action(ICAL_ACTION_DISPLAY),
                               icalproperty_new_description(summary.c_str()), icalproperty_new_trigger(eveningBefore),
                               nullptr);
}

icalcomponent* eventOf(const DueOn& due, icaltimetype written) {
    const std::string summary = printable(due.summary);
    icalcomponent* event = icalcomponent_vanew(
        ICAL_VEVENT_COMPONENT, icalproperty_new_uid(printable(due.id).c_str()), icalproperty_new_dtstamp(written),
        icalproperty_new_dtstart(dayOf(due.day)), icalproperty_new_dtend(dayOf(due.day.plusDays(1))),
        icalproperty_new_summary(summary.c_str()), icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT), nullptr);
    if (!due.details.empty())
        icalcomponent_add_property(event, icalproperty_new_description(printable(due.details).c_str()));
    icalcomponent_add_component(event, reminder(summary));
    return event;
}

} // namespace

std::string calendarFile(const std::string& name, const std::vector<DueOn>& due, book::Timestamp written) {
    icalproperty* shownName = icalproperty_new_x(printable(name).c_str());
    icalproperty_set_x_name(shownName, "X-WR-CALNAME");
    const Component calendar(icalcomponent_vanew(ICAL_VCALENDAR_COMPONENT, icalproperty_new_version("2.0"),
                                                 icalproperty_new_prodid("-//Winterlarder//Winterlarder//EN"),
                                                 shownName, nullptr),
                             &icalcomponent_free);
    const icaltimetype stamp = icaltime_from_string(compactUtc(written).c_str());
    for (const DueOn& each : due) icalcomponent_add_component(calendar.get(), eventOf(each, stamp));
    const std::unique_ptr<char, decltype(&icalmemory_free_buffer)> text(icalcomponent_as_ical_string_r(calendar.get()),
                                                                        &icalmemory_free_buffer);
    return text.get();
}

} // namespace winterlarder::exchange
