// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace winterlarder {

//! What sort of thing went wrong; decides the exit status of the command line (input 2, file 3, internal 70).
enum class ProblemKind {
    Input,    //!< something the user wrote is wrong: a value, a key, an argument
    File,     //!< a file cannot be read or written
    Internal, //!< an error of the program itself; never told as the user's
};

//! Where in a file; line and column count from 1, 0 = not known. Columns count bytes.
struct Place {
    std::string file;
    int line = 0;
    int column = 0;
    bool operator==(const Place&) const = default;
};

//! One expected failure: what is wrong, where, and what would be right (may be empty).
struct Problem {
    ProblemKind kind = ProblemKind::Input;
    Place place;
    std::string detail;
    std::string remedy;
    bool operator==(const Problem&) const = default;
};

//! "FILE:LINE:COLUMN: what is wrong; what would be right" - parts that are not known are left out.
std::string describe(const Problem& problem);

using Problems = std::vector<Problem>;

//! In the order of their lines and columns; those of one place stay as they were.
void sortByPlace(Problems& problems);

//! A fault in what the user wrote, where no place is known.
inline Problem inputProblem(std::string detail, std::string remedy) {
    return {ProblemKind::Input, {}, std::move(detail), std::move(remedy)};
}

//! A value, or the list of everything that kept us from making it. Expected failures travel as values; see require()
//! for programmer errors.
template <class T> class [[nodiscard]] Outcome {
public:
    Outcome(T value) : state_(std::in_place_index<0>, std::move(value)) {}
    Outcome(Problem problem) : state_(std::in_place_index<1>, Problems{std::move(problem)}) {}
    Outcome(Problems problems) : state_(std::in_place_index<1>, std::move(problems)) {}

    bool ok() const { return state_.index() == 0; }
    explicit operator bool() const { return ok(); }

    //! The value; std::bad_variant_access where there is none.
    const T& value() const& { return std::get<0>(state_); }
    T& value() & { return std::get<0>(state_); }
    T&& value() && { return std::get<0>(std::move(state_)); }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

    //! The problems; std::bad_variant_access where there is a value.
    const Problems& problems() const { return std::get<1>(state_); }

private:
    std::variant<T, Problems> state_;
};

//! What is known of something that was done and tells nothing else: Outcome<Done>.
struct Done {};

} // namespace winterlarder
