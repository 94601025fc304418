// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/session.h"

#include "book/entries/plain_text.h"
#include "cli/table.h"
#include "reference/csv_table.h"
#include "text/remarks.h"

#include <algorithm>
#include <ostream>

namespace winterlarder::cli {

void Session::print(const exchange::Json& document) { out << document.pretty(); }

void Session::print(const QString& text) { out << text.toStdString(); }

QString Session::strong(const QString& text) const {
    return colour ? QStringLiteral("\x1b[1m%1\x1b[0m").arg(text) : text;
}

void Session::tell(const std::string& sentence) { err << book::visible(sentence) << '\n'; }

void Session::ask(const Problems& questions) {
    for (const Problem& question : questions) tell(describe(question));
}

Status Session::fail(const Problems& problems) {
    ask(problems);
    return statusOf(problems);
}

Status statusOf(const Problems& problems) {
    const auto some = [&](ProblemKind kind) {
        return std::any_of(problems.begin(), problems.end(),
                           [kind](const Problem& problem) { return problem.kind == kind; });
    };
    if (some(ProblemKind::Internal)) return Status::OurFault;
    return some(ProblemKind::Input) ? Status::WrongInput : Status::FileTrouble;
}

Status worse(Status a, Status b) {
    for (const Status status : {Status::OurFault, Status::WrongInput, Status::FileTrouble})
        if (a == status || b == status) return status;
    return Status::Done;
}

Problems placedAt(Problems problems, const std::string& file) {
    for (Problem& problem : problems)
        if (problem.place.file.empty()) problem.place.file = file;
    return problems;
}

exchange::Json problemsJson(const Problems& problems) {
    auto list = exchange::Json::list();
    for (const Problem& problem : problems) list.push(describe(problem));
    return list;
}

exchange::Json setAsideJson(const std::vector<Remark>& setAside, const text::WordStyle& style) {
    auto list = exchange::Json::list();
    for (const Remark& remark : setAside)
        list.push(
            exchange::Json::object().add("id", remark.id).add("text", text::sentence(remark, style).toStdString()));
    return list;
}

QString setAsideText(const std::vector<Remark>& setAside, const text::WordStyle& style) {
    QString text;
    for (const Remark& remark : setAside) text += wrapped(text::sentence(remark, style), QStringLiteral("  "));
    return text;
}

Problem argumentProblem(std::string detail, std::string remedy) {
    return {ProblemKind::Input, {"winterlarder-cli", 0, 0}, std::move(detail), std::move(remedy)};
}

std::string shownName(const std::string& file) { return file == "-" ? "<stdin>" : file; }

Outcome<std::string> textOf(const std::string& file, std::istream& in, const limits::TextSize& most) {
    return file == "-" ? textOfStream(in, shownName(file), most) : textOfFile(file, most);
}

} // namespace winterlarder::cli
