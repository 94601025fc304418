// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/session.h"

#include "book/plain_text.h"
#include "reference/csv_table.h"

#include <algorithm>
#include <istream>
#include <iterator>
#include <ostream>

namespace winterlarder::cli {

void Session::print(const exchange::Json& document) { out << document.pretty(); }

void Session::print(const QString& text) { out << text.toStdString(); }

QString Session::strong(const QString& text) const {
    return colour ? QStringLiteral("\x1b[1m%1\x1b[0m").arg(text) : text;
}

void Session::tell(const std::string& sentence) { err << book::visible(sentence) << '\n'; }

Status Session::fail(const Problems& problems) {
    for (const Problem& problem : problems)
        tell(describe(problem));
    return statusOf(problems);
}

Status statusOf(const Problems& problems) {
    const bool input = std::any_of(problems.begin(), problems.end(),
                                   [](const Problem& problem) { return problem.kind == ProblemKind::Input; });
    return input ? Status::WrongInput : Status::FileTrouble;
}

Problem argumentProblem(std::string detail, std::string remedy) {
    return {ProblemKind::Input, {"winterlarder-cli", 0, 0}, std::move(detail), std::move(remedy)};
}

std::string shownName(const std::string& file) { return file == "-" ? "<stdin>" : file; }

Outcome<std::string> textOf(const std::string& file, std::istream& in) {
    if (file != "-") return textOfFile(file);
    std::string text{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    if (in.bad()) return Problem{ProblemKind::File, {"<stdin>", 0, 0}, "standard input cannot be read", ""};
    return text;
}

} // namespace winterlarder::cli
