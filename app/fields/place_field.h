// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "reference/reference.h"

#include <QWidget>

#include <memory>
#include <optional>

class QLabel;
class QLineEdit;
class QListWidget;

namespace winterlarder::desk {

using PlaceChoice = decltype(book::SiteRecord::where);

//! "45.1, -64.5", "45,1 -64,5", "45.1 N 64.5 W" as coordinates; nothing where it is none. Tested: tests/app/fields_test.cpp.
std::optional<book::Coordinates> readCoordinates(const QString& text);
//! Stations whose town begins with, then whose town, region or country holds, what was typed; at most `most`.
std::vector<const Station*> stationsNamed(const ReferenceData& reference, const QString& text, int most);

//! Where the bees stand: a place searched by name among the shipped stations, or coordinates, which take the nearest.
class PlaceField : public QWidget {
    Q_OBJECT

public:
    explicit PlaceField(QWidget* parent = nullptr);
    void useReference(std::shared_ptr<const ReferenceData> reference);

    void show(const PlaceChoice& place);
    const std::optional<PlaceChoice>& place() const { return place_; }
    QLineEdit* search() const { return search_; }
    QListWidget* found() const { return found_; }

signals:
    void chosen(); //!< by hand

private:
    void look(const QString& text);
    void take(int row);
    void say();
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override; //!< distances in other units

    std::shared_ptr<const ReferenceData> reference_;
    std::optional<PlaceChoice> place_;
    QLineEdit* search_;
    QListWidget* found_;
    QLabel* said_;
};

//! The place in words: "Halifax (Canada, Nova Scotia)", "45.10, -64.50; nearest station Halifax ..., 92 km", "own climate".
QString placeWords(const PlaceChoice& place, const ReferenceData& reference);

} // namespace winterlarder::desk
