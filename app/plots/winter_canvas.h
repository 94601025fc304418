// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "series/day_window.h"
#include "text/style.h"
#include "theme/colours.h"

#include <qcustomplot.h>

#include <array>
#include <set>
#include <vector>

namespace winterlarder::desk {

//! Draws a winter picture onto a plot: the axes once, everything else anew for each picture.
class WinterCanvas : public QObject {
public:
    explicit WinterCanvas(QCustomPlot* plot);

    void draw(const WinterPicture& picture, const std::set<advice::OptionKind>& options, DayWindow seen,
              const Colours& colours, const text::WordStyle& told);
    void clear(const Colours& colours);
    void setTitle(const QString& title, const Colours& colours);
    //! A line through both panels at a day; nothing takes it away.
    void markDay(std::optional<SeasonDay> day);
    std::optional<SeasonDay> dayAt(QPointF point) const;
    double placeAt(double x) const; //!< on the time axis
    double daysIn(double pixels) const;
    bool legendFits() const { return useLegend_->wrap() == legendWrap(); }
    bool showUse(bool shown); //!< what is eaten and how cold it is, below the stores; whether that is new

private:
    struct MarkLabel {
        QCPItemText* text;
        QCPItemLine* reach; //!< ten to ninety of a hundred winters, under the label; none where the date is known
        double day;
        double reachDays;
        int importance; //!< 0: the last to be left out
        std::optional<std::size_t> line;
        bool leftwards = false; //!< of its day, where there is no room to the right
    };
    struct DotColumn {
        QCPGraph* open;
        QCPGraph* filled;
        QCPItemText* title;
        std::vector<double> values;
        double reserve;
    };
    //! A winter with all of its days, of which those are drawn that stay below the names of the dates.
    struct Line {
        QCPGraph* graph;
        QVector<double> days, kilograms;
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
    void drawDots(const OptionPicture& option, const WinterPicture& picture, const Colours& colours,
                  const text::WordStyle& told);
    void drawDotsHeading(const Colours& colours);
    void drawUse(const WinterPicture& picture, const Colours& colours);
    QCPGraph* useArea(const QVector<double>& days, const QVector<double>& grams, const QBrush& fill,
                      const QString& name, QCPGraph* below);
    void fitToSize();
    QSize legendSize() const;
    int legendWrap() const;  //!< names in a row; 0: all
    double bandLine() const; //!< height of a line of the band [px]
    std::size_t lineUp(int leastImportance);
    void place(const MarkLabel& mark, double height) const;
    void placeMarkLabels();
    void keepLinesBelow(double kilograms);
    static QString reserveWords(const WinterPicture& picture);
    void placeReserve();
    static double underNothing(); //!< px of the scale below an empty hive
    bool nameScales();            //!< whether other names are shown than before
    void layOutAgain();
    void placeDots();
    double topForDots() const;
    double linesOfHeading() const;

    QCustomPlot* plot_;
    QCPAxisRect* stores_ = nullptr;
    QCPAxisRect* dots_ = nullptr;
    QCPAxisRect* use_ = nullptr;
    QCPLegend* useLegend_ = nullptr;
    QCPTextElement* title_ = nullptr;
    QCPItemStraightLine* dayInStores_ = nullptr;
    QCPItemStraightLine* dayInUse_ = nullptr;
    QCPItemText* reserve_ = nullptr;
    QCPItemText* heading_ = nullptr; //!< of the dots
    double reserveKg_ = 0;
    std::vector<MarkLabel> markLabels_;
    std::vector<Line> lines_;
    std::vector<DotColumn> dotColumns_;
    double highestKg_ = 10;
    bool useShown_ = true;
    DayWindow days_;
};

QString dotsHeading();
std::array<QString, 4> useNames(); //!< of what is drawn below the stores, in their order
enum class InHeight { Kilograms, Share };
//! Ties an item to a day and to a height in a panel.
void anchorAt(QCPItemPosition* position, QCPAxisRect* rect, QPointF at, InHeight height);
//! Line colour of an option over the same winters.
QColor optionColour(advice::OptionKind kind, const Colours& colours);

} // namespace winterlarder::desk
