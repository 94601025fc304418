// SPDX-License-Identifier: GPL-3.0-or-later
#include "photograph/photograph.h"

#include "text/contexts.h"
#include "work/read_file.h"

#include <QImageReader>
#include <QPainter>
#include <QTransform>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr int largestSide = 4000;    // px; a phone's picture is made no larger than this in memory
constexpr double rectifiedEdge = 12; // mm

hive::PlanePoint plane(QPointF point) { return {point.x(), point.y()}; }

double apart(hive::PlanePoint a, hive::PlanePoint b) { return std::hypot(a.x - b.x, a.y - b.y); }

// A projective map does not care for a common factor; QTransform does: what has a small or negative third part it takes to lie behind
// the eye and leaves out. So the factor is such that the third part is 1 at a place that is seen.
QTransform transformOf(const hive::ProjectiveMap& map, QPointF seen) {
    auto m = map.matrix();
    const double third = m[6] * seen.x() + m[7] * seen.y() + m[8];
    for (double& each : m) each /= third;
    return {m[0], m[3], m[6], m[1], m[4], m[7], m[2], m[5], m[8]};
}

// Of the rectified picture [mm].
double wideOf(const hive::Outline& outline) {
    return std::max(outline.top.value(), outline.bottom.value()) + 2 * rectifiedEdge;
}

void setShare(std::optional<double>& share, double value) {
    share = std::clamp(std::round(value * 1000) / 1000, 0.0, 1.0);
}

} // namespace

MarkedBy usualMarks(const hive::Outline& outline) {
    return outline.top > outline.bottom ? MarkedBy::Hanging : MarkedBy::Corners;
}

bool PhotographedFace::traced() const {
    return std::any_of(tracings.begin(), tracings.end(), [](const hive::Tracing& each) {
        return each.kind != hive::TracedKind::Comb && each.points.size() >= 3;
    });
}

QStringList markNames(MarkedBy markedBy) {
    if (markedBy == MarkedBy::Corners)
        return {say::Photograph::tr("top left corner"), say::Photograph::tr("top right corner"),
                say::Photograph::tr("bottom right corner"), say::Photograph::tr("bottom left corner")};
    return {say::Photograph::tr("left end of the comb at the bar"),
            say::Photograph::tr("right end of the comb at the bar"),
            say::Photograph::tr("somewhere low on the left side"),
            say::Photograph::tr("somewhere low on the right side"), say::Photograph::tr("lowest point")};
}

std::optional<QImage> readUpright(const QString& path, QString& fault, const std::stop_token& stop) {
    StoppableFile file(path, stop);
    QImageReader reader(&file);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && std::max(size.width(), size.height()) > largestSide)
        reader.setScaledSize(size.scaled(largestSide, largestSide, Qt::KeepAspectRatio));
    const QImage picture = reader.read();
    if (!picture.isNull()) return picture.convertToFormat(QImage::Format_RGB32);
    fault = say::Photograph::tr("%1 is no picture that can be read (%2). Choose a JPEG or PNG file.")
                .arg(path, reader.errorString());
    return std::nullopt;
}

PhotographedFace facePictured(const QString& path, const QImage& picture, const hive::Outline& outline,
                              MarkedBy markedBy) {
    PhotographedFace face{.path = path, .picture = picture, .markedBy = markedBy};
    const double wide = std::max(outline.top.value(), outline.bottom.value());
    const double scale = 0.8 * std::min(picture.width() / wide, picture.height() / outline.height.value());
    const QPointF bar(picture.width() / 2.0, (picture.height() - outline.height.value() * scale) / 2);
    const auto at = [&](double x, double y) { return bar + QPointF(x, y) * scale; };
    const auto corners = hive::cornersOf(outline);
    if (markedBy == MarkedBy::Corners) {
        for (const auto& corner : corners) face.marks.push_back(at(corner.x, corner.y));
        return face;
    }
    const double low = 0.6;
    const double side = std::lerp(outline.top.value(), outline.bottom.value(), low) / 2;
    face.marks = {at(corners[0].x, 0), at(corners[1].x, 0), at(-side, low * outline.height.value()),
                  at(side, low * outline.height.value()), at(0, outline.height.value())};
    return face;
}

std::optional<hive::ProjectiveMap> planeOf(const hive::Outline& outline, const PhotographedFace& face) {
    const auto& marks = face.marks;
    if (face.markedBy == MarkedBy::Corners && marks.size() == 4)
        return hive::planeFromCorners(outline, {plane(marks[0]), plane(marks[1]), plane(marks[2]), plane(marks[3])});
    if (face.markedBy == MarkedBy::Hanging && marks.size() == 5)
        return hive::planeFromHanging(
            outline, {plane(marks[0]), plane(marks[1]), plane(marks[2]), plane(marks[3]), plane(marks[4])},
            outline.height);
    return std::nullopt;
}

QPointF Rectified::pixel(hive::PlanePoint mm) const {
    const double half = std::max(outline.top.value(), outline.bottom.value()) / 2 + edge;
    return {(mm.x + half) * pixelsPerMm, (mm.y + edge) * pixelsPerMm};
}

hive::PlanePoint Rectified::millimetres(QPointF point) const {
    const double half = std::max(outline.top.value(), outline.bottom.value()) / 2 + edge;
    return {point.x() / pixelsPerMm - half, point.y() / pixelsPerMm - edge};
}

Rectified emptyPlane(const hive::Outline& outline, double pixelsPerMm) {
    Rectified rectified{{}, pixelsPerMm, rectifiedEdge, outline};
    const QSize size(static_cast<int>(std::ceil(wideOf(outline) * pixelsPerMm)),
                     static_cast<int>(std::ceil((outline.height.value() + 2 * rectifiedEdge) * pixelsPerMm)));
    rectified.picture = QImage(size, QImage::Format_RGB32);
    rectified.picture.fill(Qt::darkGray);
    return rectified;
}

std::optional<Rectified> rectify(const hive::Outline& outline, const PhotographedFace& face, double pixelsPerMm) {
    const auto toPlane = planeOf(outline, face);
    if (!toPlane) return std::nullopt;
    auto rectified = emptyPlane(outline, pixelsPerMm);
    const double wide = wideOf(outline);
    QPainter painter(&rectified.picture);
    painter.setRenderHints(QPainter::SmoothPixmapTransform | QPainter::Antialiasing);
    const QTransform toPixels =
        QTransform::fromTranslate(wide / 2, rectifiedEdge) * QTransform::fromScale(pixelsPerMm, pixelsPerMm);
    painter.setTransform(transformOf(*toPlane, face.marks.front()) * toPixels);
    painter.drawImage(QPointF(0, 0), face.picture);
    return rectified;
}

book::CombRecord measuredComb(const book::CombRecord& comb, const hive::Outline& outline,
                              const std::vector<PhotographedFace>& faces) {
    double built = 0, capped = 0, open = 0, brood = 0, bread = 0;
    int seen = 0;
    for (const auto& face : faces) {
        if (!face.traced()) continue;
        const auto shares = hive::sharesOf(outline, face.tracings);
        built += shares.built;
        capped += shares.built * shares.capped;
        open += shares.built * shares.open;
        brood += shares.built * shares.brood;
        bread += shares.built * shares.beeBread;
        ++seen;
    }
    if (seen == 0 || built <= 0) return comb;
    auto measured = comb;
    setShare(measured.capped, capped / built);
    setShare(measured.open, open / built);
    setShare(measured.brood, brood / built);
    setShare(measured.pollen, bread / built);
    measured.built = std::round(1000 * built / seen) / 1000;
    measured.facesSeen = seen;
    measured.throughWindow = false;
    measured.measured = true;
    return measured;
}

void insertPoint(std::vector<hive::PlanePoint>& curve, hive::PlanePoint point) {
    std::size_t best = curve.size();
    double least = 0;
    for (std::size_t i = 0; curve.size() >= 3 && i < curve.size(); ++i) {
        const auto& a = curve[i];
        const auto& b = curve[(i + 1) % curve.size()];
        const double longer = apart(a, point) + apart(point, b) - apart(a, b);
        if (best != curve.size() && longer >= least) continue;
        least = longer;
        best = i;
    }
    const auto place = best == curve.size() ? curve.size() : best + 1;
    curve.insert(curve.begin() + static_cast<std::ptrdiff_t>(place), point);
}

} // namespace winterlarder::desk
