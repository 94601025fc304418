// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/name_forms.h"

#include "support/plain_letters.h"

#include <algorithm>

namespace winterlarder::climate {

namespace {

std::string apostrophesAsBlanks(std::string_view name) {
    std::string text(name);
    std::replace(text.begin(), text.end(), '\'', ' ');
    return text;
}

// "koeln" is also typed "koln", for the o with two dots.
std::string withoutSecondLetters(const std::string& plain) {
    std::string text;
    for (std::size_t i = 0; i < plain.size(); ++i) {
        const bool second =
            plain[i] == 'e' && i > 0 && (plain[i - 1] == 'a' || plain[i - 1] == 'o' || plain[i - 1] == 'u');
        if (!second) text += plain[i];
    }
    return text;
}

std::string otherSaint(const std::string& plain) {
    if (plain.starts_with("saint ")) return "st " + plain.substr(6);
    if (plain.starts_with("st ")) return "saint " + plain.substr(3);
    return {};
}

} // namespace

void NameForms::add(std::string_view name) {
    const std::string plain = plainLetters(name);
    addForm(plain);
    addForm(spelledOut(name));
    if (name.find('\'') != std::string_view::npos) addForm(plainLetters(apostrophesAsBlanks(name)));
    addForm(withoutSecondLetters(plain));
    addForm(otherSaint(plain));
}

void NameForms::addForm(const std::string& form) {
    if (form.empty() || forms_.find("\n " + form + '\n') != std::string::npos) return;
    forms_ += ' ' + form + '\n';
}

} // namespace winterlarder::climate
