// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/arguments.h"

#include "text/contexts.h"

namespace winterlarder::desk {

namespace {

// Takes the value of an option written "--name VALUE" or "--name=VALUE".
bool takeValue(const QStringList& given, qsizetype& at, const QString& name, std::optional<QString>& value,
               QString& fault) {
    const QString& word = given[at];
    if (word.startsWith(name + QLatin1Char('='))) {
        value = word.mid(name.size() + 1);
    } else if (word == name) {
        if (at + 1 < given.size()) value = given[++at];
        else fault = say::Arguments::tr("%1 needs a folder after it").arg(name);
    } else {
        return false;
    }
    if (fault.isEmpty() && (!value || value->isEmpty()))
        fault = say::Arguments::tr("%1 needs a folder after it").arg(name);
    return true;
}

bool takeDay(const QStringList& given, qsizetype& at, Arguments& arguments) {
    std::optional<QString> day;
    QString fault;
    if (!takeValue(given, at, QStringLiteral("--day"), day, fault)) return false;
    if (day) arguments.day = Date::parse(day->toStdString());
    if (!arguments.day) arguments.fault = say::Arguments::tr("--day needs a day after it, as 2026-09-14");
    return true;
}

} // namespace

Arguments readArguments(const QStringList& given) {
    Arguments arguments;
    bool onlyFiles = false;
    for (qsizetype at = 1; at < given.size(); ++at) {
        const QString& word = given[at];
        if (onlyFiles || !word.startsWith(QLatin1Char('-')) || word == QLatin1String("-")) arguments.files << word;
        else if (word == QLatin1String("--")) onlyFiles = true;
        else if (word == QLatin1String("--version")) arguments.version = true;
        else if (word == QLatin1String("--demo")) arguments.demo = true;
        else if (word == QLatin1String("--help") || word == QLatin1String("-h")) arguments.help = true;
        else if (takeValue(given, at, QStringLiteral("--pictures"), arguments.pictures, arguments.fault)) continue;
        else if (takeValue(given, at, QStringLiteral("--data"), arguments.data, arguments.fault)) continue;
        else if (takeDay(given, at, arguments)) continue;
        else if (arguments.fault.isEmpty())
            arguments.fault = say::Arguments::tr("unknown option %1; --help lists them").arg(word);
    }
    return arguments;
}

QString helpText() {
    return say::Arguments::tr(
        "Usage: winterlarder [FILE...]\n"
        "       winterlarder --pictures FOLDER [FILE...]\n\n"
        "Opens a book, or colonies from case files, on the desk; without files, the book last open.\n"
        "Will what is in the hive last until spring forage starts?\n\n"
        "  --demo             open the demo yard: six invented colonies in an orchard\n"
        "  --day DAY          ask about this day (2026-09-14) instead of today\n"
        "  --pictures FOLDER  write the window, each colony's winter picture and sheet, and the yard plan\n"
        "                     into the folder, print their names, and end; needs no display\n"
        "  --data FOLDER      take the shipped data from another folder\n"
        "  --version          say which version this is\n"
        "  --help             say this\n");
}

} // namespace winterlarder::desk
