// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/named_keys.h"

#include <QImage>
#include <QPainterPath>
#include <QPen>
#include <QPixmap>
#include <QWidget>

#include <optional>
#include <vector>

namespace winterlarder::desk {

//! A picture with points that can be moved and curves drawn over it. The wheel, plus and minus zoom; a drag with the right or middle
//! button, with Control, or anywhere beside the points where none can be added, moves the picture; 0 shows all of it. Arrows move the
//! chosen point by a pixel of the screen (never less than one of the picture), with Shift by ten; Space goes to the next point, with
//! Shift to the one before, Return adds one after the chosen, Delete takes it away. A loupe shows what is under the point being moved.
//! Tested: tests/app/photograph_window_test.cpp.
class PhotographView : public QWidget {
    Q_OBJECT

public:
    struct Point {
        QPointF at; //!< [px of the picture]
        QString name;
    };
    struct Curve {
        QPainterPath path; //!< [px of the picture]
        QPen pen;
        QBrush fill;
    };

    static constexpr double zoomStep = 1.25;
    //! Of lines over the picture: dark, with a light edge, so that it is seen on honey, on brood and on new comb alike.
    static constexpr QColor ink{34, 24, 12}, lightEdge{255, 255, 255, 220};

    explicit PhotographView(QWidget* parent = nullptr);

    void showPicture(const QImage& picture);
    void showPoints(std::vector<Point> points, bool mayAdd);
    void showCurves(std::vector<Curve> curves);
    void choosePoint(int point);
    int chosenPoint() const { return chosen_; }
    const std::vector<Point>& points() const { return points_; }

    void fit();
    void zoomAt(QPointF place, double factor);
    void zoomAtChosen(double factor); //!< at the middle where no point is chosen
    double zoom() const { return zoom_; }
    QPointF toWidget(QPointF picture) const { return offset_ + picture * zoom_; }
    QPointF toPicture(QPointF widget) const { return (widget - offset_) / zoom_; }

    QSize sizeHint() const override { return {760, 460}; }
    QSize minimumSizeHint() const override { return {320, 220}; }

    static std::vector<NamedKeys> namedKeys();

signals:
    void pointMoved(int point, QPointF at, bool finished); //!< finished: the hand let go
    void pointNudged(int point, QPointF at);               //!< a key moved it
    void pointAdded(QPointF at);
    void pointAddedAfter(int point, QPointF at); //!< -1: the first
    void pointRemoved(int point);

protected:
    void paintEvent(QPaintEvent*) override;
    void resizeEvent(QResizeEvent*) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    int pointAt(QPointF place) const; //!< -1 where none is near
    QPointF kept(QPointF at) const;   //!< near the picture
    void put(int point, QPointF at);
    void moveByKey(QPointF by);
    void addByKey();
    void reveal(QPointF at); //!< moves the picture until the place is seen
    void paintLoupe(QPainter& painter) const;
    void announce();

    //! The picture as large as it is shown, kept until that changes: scaling a phone's picture takes longer than a frame.
    const QPixmap& shrunk() const;

    QImage picture_;
    mutable QPixmap shrunk_;
    mutable std::pair<qint64, QSize> shrunkFrom_;
    std::vector<Point> points_;
    std::vector<Curve> curves_;
    bool mayAdd_ = false;
    bool fitted_ = true;
    int chosen_ = -1;
    bool moving_ = false; //!< the chosen point, by hand
    bool loupe_ = false;
    QPointF grip_; //!< from the pointer to the point being moved
    std::optional<QPointF> panFrom_;
    double zoom_ = 1;
    QPointF offset_;
};

} // namespace winterlarder::desk
