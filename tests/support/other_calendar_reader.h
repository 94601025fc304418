// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <utility>

namespace winterlarder::testing {

//! What another reader of iCalendar (python3-icalendar, no code of libical's) makes of a file: one line an event, "day|uid|summary|
//! details|minutes of the reminder|stamp". Status of the reader, and what it said.
inline std::pair<int, std::string> readByAnother(const std::string& calendar) {
    const auto path =
        std::filesystem::temp_directory_path() / ("winterlarder-calendar-" + std::to_string(getpid()) + ".ics");
    std::ofstream(path, std::ios::binary) << calendar;
    const std::string script =
        "import sys, datetime\n"
        "from icalendar import Calendar\n"
        "calendar = Calendar.from_ical(open(sys.argv[1], 'rb').read())\n"
        "assert calendar['VERSION'] == '2.0' and calendar['PRODID']\n"
        "for event in calendar.walk('VEVENT'):\n"
        "    day, end = event['DTSTART'].dt, event['DTEND'].dt\n"
        "    assert type(day) is datetime.date and end - day == datetime.timedelta(days=1)\n"
        "    alarm = event.walk('VALARM')[0]\n"
        "    assert alarm['ACTION'] == 'DISPLAY' and alarm['DESCRIPTION']\n"
        "    minutes = int(alarm['TRIGGER'].dt.total_seconds() // 60)\n"
        "    print(day, event['UID'], event['SUMMARY'], str(event.get('DESCRIPTION', '')).replace('\\n', ' / '), minutes,\n"
        "          event['DTSTAMP'].dt.strftime('%Y%m%dT%H%M%SZ'), sep='|')\n";
    const auto program = std::filesystem::path(path).replace_extension(".py");
    std::ofstream(program) << script;
    FILE* pipe = popen(
        ("PYTHONIOENCODING=utf-8 /usr/bin/python3 '" + program.string() + "' '" + path.string() + "' 2>&1").c_str(),
        "r");
    std::string said;
    for (int c = 0; pipe && (c = std::fgetc(pipe)) != EOF;) said += static_cast<char>(c);
    const int ended = pipe ? pclose(pipe) : -1;
    std::filesystem::remove(path);
    std::filesystem::remove(program);
    return {WIFEXITED(ended) ? WEXITSTATUS(ended) : -1, said};
}

} // namespace winterlarder::testing
