// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/advice_json.h"
#include "answer/style_of_place.h"
#include "cli/advice_text.h"
#include "cli/batch.h"
#include "cli/commands.h"
#include "exchange/json/line_reader.h"
#include "support/caught.h"

#include <algorithm>
#include <fmt/format.h>
#include <istream>
#include <ostream>

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

using exchange::Json;

Json faultyCaseJson(const std::string& at, const Problems& problems) {
    return Json::object().add("case_at", at).add("faults", problemsJson(problems));
}

Json answerJson(const BatchAnswer& answer, const Session& session) {
    return adviceJson(*answer.record, answer.member->question, answer.member->advice, session.reference, session.style);
}

QString answerText(const BatchAnswer& answer, const Session& session) {
    return adviceText(*answer.record, answer.member->question, answer.member->advice, session);
}

Status adviseOne(Session& session, const std::string& file) {
    const auto text = textOf(file, session.in, limits::caseText);
    if (!text) return session.fail(text.problems());
    const BatchAnswer answer = answerOf({.file = shownName(file), .text = *text, .units = session.units},
                                        session.reference, session.sampling, session.threads);
    if (!answer.problems.empty()) return session.fail(answer.problems);
    session.ask(answer.asked);
    if (session.json) session.print(answerJson(answer, session));
    else session.print(answerText(answer, session));
    return Status::Done;
}

// Shows the answers of a batch as they come and remembers how it went.
class BatchOutput {
public:
    explicit BatchOutput(Session& session) : session_(session) {}
    void show(const BatchAnswer& answer) {
        session_.ask(answer.asked);
        const auto said = answer.problems.empty() ? spoken(answer) : Outcome<std::string>(answer.problems);
        if (!said) showFaults(answer.at, said.problems());
        else if (session_.json) session_.out << *said << '\n';
        else showText(*said);
        session_.out.flush();
    }
    Status status() const { return statusOfAll_; }

private:
    Outcome<std::string> spoken(const BatchAnswer& answer) const {
        return caught({answer.at, 0, 0}, "this answer", [&]() -> Outcome<std::string> {
            return session_.json ? answerJson(answer, session_).compact() : answerText(answer, session_).toStdString();
        });
    }
    void showFaults(const std::string& at, const Problems& problems) {
        statusOfAll_ = worse(statusOfAll_, session_.fail(problems));
        if (session_.json) session_.out << faultyCaseJson(at, problems).compact() << '\n';
        else
            showText(
                fmt::format("{}: not answered, {} fault{}\n", at, problems.size(), problems.size() == 1 ? "" : "s"));
    }
    void showText(const std::string& text) {
        if (shown_++ > 0) session_.out << '\n';
        session_.out << text;
    }
    Session& session_;
    Status statusOfAll_ = Status::Done;
    int shown_ = 0;
};

void addLines(Batch& batch, std::uint64_t& position, std::istream& in, std::optional<UnitSystem> units) {
    exchange::LineReader lines(in);
    while (auto line = lines.next()) {
        BatchItem item{.position = position++,
                       .file = "<stdin>",
                       .line = line->number,
                       .text = std::move(line->text),
                       .units = units};
        if (line->tooLong)
            item.problems = {{ProblemKind::Input,
                              {"<stdin>", line->number, 1},
                              "the line is too long to be a case",
                              fmt::format("at most {}", limits::bytesInWords(limits::caseText.bytes))}};
        batch.add(std::move(item));
    }
}

void addFile(Batch& batch, std::uint64_t& position, const std::string& file, std::istream& in,
             std::optional<UnitSystem> units) {
    BatchItem item{.position = position++, .file = file, .units = units};
    auto text = textOf(file, in, limits::caseText);
    if (text) item.text = *std::move(text);
    else item.problems = text.problems();
    batch.add(std::move(item));
}

} // namespace

Status advise(Session& session, const std::vector<std::string>& cases) {
    if (std::count(cases.begin(), cases.end(), "-") > 1)
        return session.fail({argumentProblem("\"-\" is given more than once", "standard input can be read once")});
    if (cases.size() == 1 && cases.front() != "-") return adviseOne(session, cases.front());
    BatchOutput output(session);
    OrderedAnswers ordered({session.reference, session.sampling, session.threads, session.combs},
                           [&](const BatchAnswer& answer) { output.show(answer); });
    {
        Batch batch(session.reference, session.sampling, session.threads, ordered);
        std::uint64_t position = 0;
        for (const std::string& file : cases) {
            if (file == "-") addLines(batch, position, session.in, session.units);
            else addFile(batch, position, file, session.in, session.units);
        }
    }
    ordered.finish();
    if (session.in.bad())
        return session.fail({{ProblemKind::File, {"<stdin>", 0, 0}, "standard input cannot be read", ""}});
    return output.status();
}

} // namespace winterlarder::cli
