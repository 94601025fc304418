// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/edits.h"
#include "fields/quantity_field.h"
#include "forms/entry_form.h"

#include <QLabel>

#include <optional>

//! What forms of entries share: values out of their fields, and the edit that is made of them.
namespace winterlarder::desk {

//! The entry added, or changed where it has an id.
template <class Entry> EntryForm::Made written(const Entry& entry) {
    const bool added = entry.id == book::Id<Entry>{};
    return book::Edit(added ? book::SingleEdit(book::Add<Entry>{entry}) : book::SingleEdit(book::Change<Entry>{entry}));
}

inline std::optional<Mass> mass(const QuantityField* field) {
    const auto value = field->value();
    return value ? std::optional(Mass(*value)) : std::nullopt;
}

inline std::optional<Volume> volume(const QuantityField* field) {
    const auto value = field->value();
    return value ? std::optional(Volume(*value)) : std::nullopt;
}

template <class Quantity> std::optional<double> number(const std::optional<Quantity>& quantity) {
    return quantity ? std::optional(quantity->value()) : std::nullopt;
}

//! A field and its label, seen only where the choice wants them.
inline void showOnly(QWidget* field, bool shown) {
    field->setVisible(shown);
    for (auto* label : field->parentWidget()->findChildren<QLabel*>())
        if (label->buddy() == field) label->setVisible(shown);
}

} // namespace winterlarder::desk
