// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "hive/tracing.h"

#include <QImage>
#include <QPointF>
#include <QString>

#include <optional>
#include <stop_token>
#include <vector>

namespace winterlarder::desk {

//! How the comb's place in a picture is marked.
enum class MarkedBy {
    Corners, //!< four corners of the comb or its frame
    Hanging, //!< both bar ends, a point on each sloping side, and the lowest point
};
//! A comb with sloping sides hangs from a bar and often ends rounded; others have corners.
MarkedBy usualMarks(const hive::Outline& outline);

//! One face of a comb on a photograph.
struct PhotographedFace {
    QString path;
    QImage picture; //!< turned upright as its EXIF orientation says
    MarkedBy markedBy = MarkedBy::Corners;
    std::vector<QPointF> marks;          //!< [px of the picture], in the order of markNames
    std::vector<hive::Tracing> tracings; //!< [mm in the comb's plane]
    bool traced() const;                 //!< at least one zone
};
//! "top left corner", for each mark.
QStringList markNames(MarkedBy markedBy);

//! Reads a picture and turns it upright; nothing with a reason in `fault` where it cannot be read.
std::optional<QImage> readUpright(const QString& path, QString& fault, const std::stop_token& stop = {});

//! A face with its marks where a comb fills most of the picture.
PhotographedFace facePictured(const QString& path, const QImage& picture, const hive::Outline& outline,
                              MarkedBy markedBy);

//! From the picture [px] to the comb's plane [mm]; nothing where the marks determine none.
std::optional<hive::ProjectiveMap> planeOf(const hive::Outline& outline, const PhotographedFace& face);

//! The comb's plane as a picture: so many pixels a millimetre, `edge` mm more on every side.
struct Rectified {
    QImage picture;
    double pixelsPerMm = 1;
    double edge = 0;
    hive::Outline outline;
    QPointF pixel(hive::PlanePoint mm) const;
    hive::PlanePoint millimetres(QPointF pixel) const;
};
//! The plane without a picture yet: grey.
Rectified emptyPlane(const hive::Outline& outline, double pixelsPerMm);
//! Takes some hundredths of a second. Nothing where the marks determine no plane.
std::optional<Rectified> rectify(const hive::Outline& outline, const PhotographedFace& face, double pixelsPerMm);

//! A comb with the shares traced on one or both faces (their mean, weighed by what is built); marked as measured. Zones of
//! which nothing was traced are 0.
book::CombRecord measuredComb(const book::CombRecord& comb, const hive::Outline& outline,
                              const std::vector<PhotographedFace>& faces);

//! Puts a point into a curve where it lengthens it least.
void insertPoint(std::vector<hive::PlanePoint>& curve, hive::PlanePoint point);

} // namespace winterlarder::desk
