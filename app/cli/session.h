// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/yard/yard_plan.h"
#include "book/entries/timestamp.h"
#include "exchange/json/json_output.h"
#include "reference/reference.h"
#include "reference/remark.h"
#include "support/input_limits.h"
#include "support/outcome.h"
#include "text/style.h"
#include "winter/question.h"

#include <QString>
#include <filesystem>
#include <iosfwd>
#include <string>

namespace winterlarder::cli {

//! Exit statuses of the program.
enum class Status { Done = 0, WrongInput = 2, FileTrouble = 3, OurFault = 70 };

//! Of two parts of one command the status that tells more: an error of the program, then wrong input, then files.
Status worse(Status a, Status b);

//! When the program runs, who runs it, and on which machine.
struct Moment {
    book::Timestamp now;
    Date today; //!< where the keeper is
    std::string who, machine;
};

//! Where a command reads and writes, and how its answer is to look.
struct Session {
    const ReferenceData& reference;
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
    bool json = false;
    bool colour = false;
    winter::Sampling sampling{1, 2500};
    int threads = 1;
    text::WordStyle style;
    Moment moment;
    std::optional<UnitSystem> units{};                        //!< chosen with --units; nothing: those of the place
    advice::MovingCombs combs = advice::MovingCombs::Allowed; //!< between the colonies of a yard
    std::filesystem::path dataFolder{}; //!< of the shipped data, for what is read where it is asked for alone

    //! One JSON document, indented.
    void print(const exchange::Json& document);
    void print(const QString& text);
    //! The text in bold on a terminal.
    QString strong(const QString& text) const;
    //! A line of standard error; what is in it from elsewhere cannot steer the terminal.
    void tell(const std::string& sentence);
    //! What is asked although nothing waits for the answer, a line of standard error each.
    void ask(const Problems& questions);
    //! Every problem on a line of standard error; the status they ask for.
    Status fail(const Problems& problems);
};

//! 70 where the program itself is to blame, else 2, or 3 where only files are.
Status statusOf(const Problems& problems);

//! The problems, those without a place at a file.
Problems placedAt(Problems problems, const std::string& file);

//! The problems as a JSON list of sentences with their places.
exchange::Json problemsJson(const Problems& problems);

//! Records in doubt that an answer does without: as JSON, and as indented lines.
exchange::Json setAsideJson(const std::vector<Remark>& setAside, const text::WordStyle& style);
QString setAsideText(const std::vector<Remark>& setAside, const text::WordStyle& style);

//! An argument that cannot be understood: "winterlarder-cli: --ratio is ...; ...".
Problem argumentProblem(std::string detail, std::string remedy);

//! Text of a file, or of standard input for "-"; refused where it is larger than allowed.
Outcome<std::string> textOf(const std::string& file, std::istream& in, const limits::TextSize& most);
//! The name of a file in messages: "<stdin>" for "-".
std::string shownName(const std::string& file);

} // namespace winterlarder::cli
