// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "climate/gazetteer.h"
#include "reference/reference.h"

#include <QWidget>

#include <memory>
#include <optional>
#include <string>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;

namespace winterlarder::desk {

using PlaceChoice = decltype(book::SiteRecord::where);

//! "45.1, -64.5", "45,1 -64,5", "45.1 N 64.5 W" as coordinates; nothing where it is none. Tested: tests/app/fields_test.cpp.
std::optional<book::Coordinates> readCoordinates(const QString& text);
//! Stations whose town begins with, then whose town, region or country holds, what was typed; at most `most`.
std::vector<const Station*> stationsNamed(const ReferenceData& reference, const QString& text, int most);

//! Where the bees stand: a place searched by name in the gazetteer (in the shipped stations until that is read), or coordinates. Under it
//! stands whose weather it has, how far that is, and what the difference in height does. Tested: tests/app/first_run_test.cpp.
class PlaceField : public QWidget {
    Q_OBJECT

public:
    explicit PlaceField(QWidget* parent = nullptr);
    void useReference(std::shared_ptr<const ReferenceData> reference);

    void usePlaces(std::shared_ptr<const climate::Gazetteer> places);

    void show(const PlaceChoice& place, std::optional<double> heightM = {});
    const std::optional<PlaceChoice>& place() const { return place_; }
    std::optional<double> heightM() const {
        return heightM_;
    }                            //!< of a place that was chosen; coordinates and stations have none
    std::string country() const; //!< ISO 3166: of the place, else of its station; empty where nothing is chosen
    //! As if the name were typed: what is called so is offered, nothing is chosen.
    void lookFor(const QString& name);
    QString said() const;
    QLineEdit* search() const { return search_; }
    QListWidget* found() const { return found_; }

signals:
    void chosen(); //!< by hand

private:
    struct Offered {
        PlaceChoice place;
        std::optional<double> heightM;
        QString words;
    };
    void look(const QString& text);
    void offer(const QString& text);
    void offerPlaces(const QString& text);
    void listOffered();
    void take(int row);
    void say();
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override; //!< distances in other units

    std::shared_ptr<const ReferenceData> reference_;
    std::shared_ptr<const climate::Gazetteer> places_;
    std::optional<PlaceChoice> place_;
    std::optional<double> heightM_;
    std::vector<Offered> offered_;
    bool nearlySpelled_ = false; //!< nothing is called as was typed; what is offered is spelled nearly so
    QLineEdit* search_;
    QListWidget* found_;
    QLabel* said_;
};

//! The place in words: "Halifax (Canada, Nova Scotia)" of a station, "45.10, -64.50: weather of Halifax, 92 km away ..." (the name of
//! the place there, where `places` knows it), "own climate".
QString placeWords(const PlaceChoice& place, const ReferenceData& reference, std::optional<double> heightM = {},
                   const climate::Gazetteer* places = nullptr);

} // namespace winterlarder::desk
