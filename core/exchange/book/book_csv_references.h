// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>

namespace winterlarder::exchange {

//! How CSV names other entries: yards and colonies by name where the name is theirs alone, everything by "#number".
class CsvReferences {
public:
    static Outcome<CsvReferences> in(book::Book& from);

    std::string textOf(book::Kind kind, std::int64_t id) const;
    //! Problem: no such entry, or more than one of that name.
    Outcome<std::int64_t> find(book::Kind kind, const std::string& text) const;

    //! "#12" or "12".
    static std::optional<std::int64_t> numberOf(std::string_view text);
    //! The same, where it is a number an entry can have.
    static std::optional<std::int64_t> idOf(std::string_view text);

private:
    struct Names {
        std::multimap<std::string, std::int64_t> ids;
        std::map<std::int64_t, std::string> names;
        void add(const std::string& name, std::int64_t id);
    };
    const Names* namesOf(book::Kind kind) const;
    Names yards_, colonies_;
};

} // namespace winterlarder::exchange
