// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"

#include <QWidget>

#include <memory>
#include <string>
#include <vector>

class QLineEdit;
class QListWidget;
class QListWidgetItem;

namespace winterlarder::desk {

//! Formats all of whose words (name, family, region) begin with the words that were typed, in plain letters, in the order of the table: "top"
//! finds top-bar hives. All of them for an empty text.
std::vector<const HiveFormat*> formatsNamed(const ReferenceData& reference, const QString& text);

//! A hive format, chosen from a list by family with an outline and the comb's measures, searched by any word. What is usual in the keeper's
//! country stands first and is proposed. Tested: tests/app/first_run_test.cpp.
class FormatField : public QWidget {
    Q_OBJECT

public:
    explicit FormatField(QWidget* parent = nullptr);
    void useReference(std::shared_ptr<const ReferenceData> reference);
    //! What is usual there comes first; it is chosen, where none was chosen by hand. `country`: ISO 3166; `name`: as it is shown.
    void suggest(const std::string& country, const QString& name);

    const HiveFormat* format() const; //!< nothing before the shipped data are there
    void choose(const std::string& id);
    QLineEdit* search() const { return search_; }
    QListWidget* list() const { return list_; }

signals:
    void chosen();

private:
    void fill();
    void addGroup(const QString& title, const std::vector<const HiveFormat*>& formats);
    void take(QListWidgetItem* item);
    QListWidgetItem* itemOf(const std::string& id) const;
    QListWidgetItem* firstItem() const;
    bool eventFilter(QObject* watched, QEvent* event) override; //!< arrows and Enter in the search
    void changeEvent(QEvent* event) override;                   //!< other colours or units

    std::shared_ptr<const ReferenceData> reference_;
    std::string country_, chosen_;
    QString countryName_;
    bool byHand_ = false;
    bool filling_ = false;
    QLineEdit* search_;
    QListWidget* list_;
};

} // namespace winterlarder::desk
