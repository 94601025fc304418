// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <utility>

namespace winterlarder::climate {

//! All ways the names of one place or region are typed in plain letters, each once; internal to the gazetteer. "Köln" and "Koeln" both
//! give "koln" and "koeln", "St. John's" also "saint johns" and "st john s".
class NameForms {
public:
    void add(std::string_view name);
    //! Each word behind a blank, each form behind a line end: "\n koln\n koeln\n".
    std::string taken() { return std::move(forms_); }

private:
    void addForm(const std::string& form);
    std::string forms_ = "\n";
};

} // namespace winterlarder::climate
