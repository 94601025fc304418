// SPDX-License-Identifier: GPL-3.0-or-later
// The command that lists what may be entered: keys of a case file and columns of a book's tables.
#include "cli/commands.h"
#include "cli/table.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"
#include "text/contexts.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::cli {

namespace {

using exchange::Json;

bool isBelow(const std::string& name, const std::string& group) {
    return name == group || name.rfind(group + ".", 0) == 0;
}

std::string limitsOf(const FieldLimits& field) {
    if (!field.choices.empty()) return fmt::format("{}", fmt::join(field.choices, ", "));
    const std::string unit = field.unit.empty() ? "" : " " + field.unit;
    if (field.minimum && field.maximum) return fmt::format("{} to {}{}", *field.minimum, *field.maximum, unit);
    return field.type == "flag" ? "true, false" : field.type + unit;
}

Json keyJson(const FieldLimits& field) {
    Json choices = Json::list();
    for (const auto& choice : field.choices) choices.push(choice);
    return Json::object()
        .add("name", field.name)
        .add("type", field.type)
        .add("unit", field.unit)
        .add("min", field.minimum)
        .add("max", field.maximum)
        .add("default", field.defaultText)
        .add("choices", std::move(choices))
        .add("note", field.note);
}

QString keysText(const std::vector<const FieldLimits*>& listed) {
    QString text;
    for (const auto* field : listed) {
        const QString usual =
            field->defaultText.empty()
                ? QString()
                : say::CommandLine::tr("; %1 where not said").arg(QString::fromStdString(field->defaultText));
        text += wrapped(say::CommandLine::tr("%1 (%2%3): %4")
                            .arg(QString::fromStdString(field->name), QString::fromStdString(limitsOf(*field)), usual,
                                 QString::fromStdString(field->note)),
                        {});
    }
    return text;
}

} // namespace

Status keys(Session& session, const std::optional<std::string>& group) {
    std::vector<const FieldLimits*> listed;
    std::vector<std::string> groups;
    for (const auto& field : session.reference.fields) {
        if (!group || isBelow(field.name, *group)) listed.push_back(&field);
        const std::string first = field.name.substr(0, field.name.find('.'));
        if (std::find(groups.begin(), groups.end(), first) == groups.end()) groups.push_back(first);
    }
    if (listed.empty())
        return session.fail({argumentProblem(fmt::format("there is no key {}", exchange::inQuotes(*group)),
                                             exchange::suggestion(*group, groups))});
    if (!session.json) {
        session.print(keysText(listed));
        return Status::Done;
    }
    Json list = Json::list();
    for (const auto* field : listed) list.push(keyJson(*field));
    session.print(list);
    return Status::Done;
}

} // namespace winterlarder::cli
