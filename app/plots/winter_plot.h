// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "series/day_window.h"
#include "text/style.h"
#include "theme/colours.h"
#include "theme/named_keys.h"

#include <QWidget>

#include <memory>
#include <set>

class QCustomPlot;

namespace winterlarder::desk {

class LatePlot;
class WinterCanvas;

//! The winter picture: stores of twenty winters from today to first forage, fifty dots at the right, the season's dates, and below
//! them what is eaten and how cold it is. Left and right arrow read out a day, as does the pointer; the wheel (on a page that is scrolled
//! once the picture was clicked, or with Ctrl), plus and minus show fewer or
//! more days, dragging moves along them, a double click or 0 shows the whole winter again.
//! Tested: tests/app/winter_plot_test.cpp.
class WinterPlot : public QWidget {
    Q_OBJECT

public:
    explicit WinterPlot(QWidget* parent = nullptr);
    ~WinterPlot() override;

    void show(std::shared_ptr<const WinterPicture> picture);
    void showOptions(const std::set<advice::OptionKind>& options);
    const std::set<advice::OptionKind>& options() const { return options_; }
    void setColours(const Colours& colours);
    void useWording(const text::Wording& wording); //!< what combs are called in what is drawn of this colony
    void setTitle(const QString& title);           //!< above the picture; used on paper
    const WinterPicture* picture() const { return picture_.get(); }

    //! The days that are seen; nothing: the whole winter. Kept from one picture to the next.
    std::optional<DayWindow> seen() const { return seen_; }
    void see(std::optional<DayWindow> days);
    void seeFewerDays(); //!< about the day read out, or the middle
    void seeMoreDays();
    void seeWholeWinter() { see(std::nullopt); }

    //! What the picture says of a day, as one line.
    QString readout(SeasonDay day) const;
    //! The whole of it in a few clauses, for who does not see it; the accessible description while no day is read out.
    QString summary() const;
    //! Days, stores of the options shown, use and temperature as tab-separated text.
    QString numbers() const;
    //! Writes the picture; the form follows the name's ending: png, svg or pdf.
    bool save(const QString& path, QSize size);

    QSize sizeHint() const override { return {980, 420}; }
    QSize minimumSizeHint() const override { return {380, 11 * fontMetrics().height()}; } //!< less says nothing

    static std::vector<NamedKeys> namedKeys();

signals:
    void dayRead(const QString& text); //!< empty when the pointer has left
    void seenChanged();                //!< other days are seen

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override; //!< where there is little height the stores get all of it
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent*) override; //!< a ring around the picture while the keys go to it
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    text::WordStyle told() const;
    void redraw();
    void fillCanvas();
    void readDay(std::optional<SeasonDay> day);
    DayWindow shownDays() const;
    void stretch(double factor, double about);
    void stretchAboutDay(double factor);
    void moveDays(double days);
    bool seeByKey(int key);
    bool mouseOnPlot(QEvent* event);
    void wheelOnPlot(const QWheelEvent& event);
    void drag(double x);

    std::shared_ptr<const WinterPicture> picture_;
    std::set<advice::OptionKind> options_{advice::OptionKind::Leave};
    text::Wording wording_;
    QCustomPlot* plot_;
    LatePlot* late_;
    std::unique_ptr<WinterCanvas> canvas_;
    std::optional<SeasonDay> day_;
    std::optional<DayWindow> seen_;
    std::optional<double> dragFrom_; //!< where the pointer was when it last moved the days
};

//! Writes a picture in the light colours of paper, whatever the screen is; all its days where none are named.
bool savePaperPicture(std::shared_ptr<const WinterPicture> picture, const std::set<advice::OptionKind>& options,
                      const text::Wording& wording, const QString& title, const QString& path,
                      std::optional<DayWindow> seen = {}, QSize size = {1200, 680});

} // namespace winterlarder::desk
