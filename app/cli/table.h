// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

namespace winterlarder::cli {

//! A table in plain text: columns as wide as their widest cell, two spaces between, numbers to the right.
class TextTable {
public:
    //! Headings; one that begins with '>' has its column aligned to the right.
    explicit TextTable(const QStringList& headings);
    void add(const QStringList& cells);
    //! Every line indented by two and ended by a line feed.
    QString text() const;

private:
    QStringList headings_;
    std::vector<bool> right_;
    std::vector<QStringList> rows_;
};

//! Lines of "label   value", the values under each other, indented by two.
class FactList {
public:
    void add(const QString& label, const QString& value);
    QString text() const;

private:
    std::vector<std::pair<QString, QString>> facts_;
};

//! The text in lines of at most 100 characters, the first begun with `lead`, the others indented as far.
QString wrapped(const QString& text, const QString& lead);

} // namespace winterlarder::cli
