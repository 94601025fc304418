// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "series/day_window.h"
#include "theme/colours.h"

#include <qcustomplot.h>

#include <set>
#include <vector>

namespace winterlarder::desk {

//! Draws a winter picture onto a plot: the axes once, everything else anew for each picture.
class WinterCanvas : public QObject {
public:
    explicit WinterCanvas(QCustomPlot* plot);

    void draw(const WinterPicture& picture, const std::set<advice::OptionKind>& options, DayWindow seen,
              const Colours& colours);
    void clear(const Colours& colours);
    void setTitle(const QString& title, const Colours& colours);
    //! A line through both panels at a day; nothing takes it away.
    void markDay(std::optional<SeasonDay> day);
    std::optional<SeasonDay> dayAt(QPointF point) const;
    double placeAt(double x) const; //!< on the time axis
    double daysIn(double pixels) const;
    bool showUse(bool shown); //!< what is eaten and how cold it is, below the stores; whether that is new

private:
    struct MarkLabel {
        QCPItemText* text;
        QCPItemLine* reach; //!< ten to ninety of a hundred winters, under the label; none where the date is known
        double day;
        double reachDays;
    };
    struct DotColumn {
        QCPGraph* open;
        QCPGraph* filled;
        QCPItemText* title;
        std::vector<double> values;
        double reserve;
    };
    void setUpAxes();
    void colourAxis(QCPAxis* axis, const Colours& colours, bool grid);
    void colourAll(const Colours& colours);
    void removeDrawn();
    void scaleAxes(const WinterPicture& picture, const std::set<advice::OptionKind>& options, DayWindow seen);
    void drawReserve(const WinterPicture& picture, const Colours& colours);
    void drawOption(const OptionPicture& option, const WinterPicture& picture, const Colours& colours);
    void drawEvidence(const WinterPicture& picture, const Colours& colours);
    void drawMarks(const WinterPicture& picture, const Colours& colours);
    void drawDots(const OptionPicture& option, const WinterPicture& picture, const Colours& colours);
    void drawDotsHeading(const Colours& colours);
    void drawUse(const WinterPicture& picture, const Colours& colours);
    QCPGraph* useArea(const QVector<double>& days, const QVector<double>& grams, const QBrush& fill,
                      const QString& name, QCPGraph* below);
    void fitToSize();
    QSize legendSize() const;
    void placeMarkLabels();
    void placeDots();
    double topForDots() const;

    QCustomPlot* plot_;
    QCPAxisRect* stores_ = nullptr;
    QCPAxisRect* dots_ = nullptr;
    QCPAxisRect* use_ = nullptr;
    QCPLegend* useLegend_ = nullptr;
    QCPTextElement* title_ = nullptr;
    QCPItemStraightLine* dayInStores_ = nullptr;
    QCPItemStraightLine* dayInUse_ = nullptr;
    std::vector<MarkLabel> markLabels_;
    std::vector<DotColumn> dotColumns_;
    double highestKg_ = 10;
    bool useShown_ = true;
    DayWindow days_;
};

QString dotsHeading();
//! Line colour of an option over the same winters.
QColor optionColour(advice::OptionKind kind, const Colours& colours);

} // namespace winterlarder::desk
