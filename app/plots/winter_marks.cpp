// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/words.h"
#include "numerics/normal_law.h"
#include "plots/winter_canvas.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

//! The season's dates, named in a band over the winters.
namespace winterlarder::desk {

namespace {

constexpr double mostOfHeight = 0.42; // the band may take of the picture
constexpr double bandEdge = 10;       // px free between the band and the highest winter

// Where there is no room for all names, the first of these are left.
int importanceOf(SeasonMarkKind kind) {
    switch (kind) {
    case SeasonMarkKind::Forage: return 0;
    case SeasonMarkKind::SyrupDeadline: return 1;
    case SeasonMarkKind::BroodRestart: return 2;
    case SeasonMarkKind::LastIncome: return 3;
    case SeasonMarkKind::Buildup: return 4;
    case SeasonMarkKind::BroodStop: return 5;
    }
    return 6;
}

} // namespace

void WinterCanvas::drawMarks(const WinterPicture& picture, const Colours& colours) {
    for (const auto& mark : picture.marks) {
        auto* line = new QCPItemLine(plot_);
        line->setClipAxisRect(stores_);
        line->setLayer("grid");
        anchorAt(line->start, stores_, {double(mark.day.w), 0}, InHeight::Share);
        anchorAt(line->end, stores_, {double(mark.day.w), 1}, InHeight::Share);
        line->setPen(QPen(colours.mark, 1, Qt::DotLine));
        QCPItemLine* reach = nullptr;
        if (mark.sdDays > 0) {
            reach = new QCPItemLine(plot_);
            reach->setClipAxisRect(stores_);
            reach->setLayer("grid");
            anchorAt(reach->start, stores_, {mark.day.w - tenthPercentile * mark.sdDays, 0}, InHeight::Share);
            anchorAt(reach->end, stores_, {mark.day.w + tenthPercentile * mark.sdDays, 0}, InHeight::Share);
            reach->setPen(QPen(colours.band, 3, Qt::SolidLine, Qt::FlatCap));
        }
        auto* label = new QCPItemText(plot_);
        label->setLayer("axes");
        label->setClipToAxisRect(false);
        anchorAt(label->position, stores_, {double(mark.day.w), 0}, InHeight::Share);
        label->setText(
            QObject::tr("%1 %2").arg(words::seasonMark(mark.kind), words::date(picture.winter.date(mark.day))));
        label->setFont(plot_->font());
        label->setColor(colours.quietText);
        label->setBrush(colours.card);
        label->setPadding({3, 0, 3, 0});
        markLabels_.push_back({label,
                               reach,
                               static_cast<double>(mark.day.w),
                               tenthPercentile * mark.sdDays,
                               importanceOf(mark.kind),
                               {}});
    }
}

double WinterCanvas::bandLine() const { return QFontMetricsF(plot_->font()).height() + 5; }

// Each name takes the first line of the band on which it meets no other; the number of lines.
std::size_t WinterCanvas::lineUp(int leastImportance) {
    const QFontMetricsF metrics(plot_->font());
    std::vector<std::vector<std::pair<double, double>>> taken;
    for (auto& mark : markLabels_) {
        mark.line.reset();
        if (mark.importance > leastImportance || mark.day < days_.first || mark.day > days_.last) continue;
        const double at = stores_->axis(QCPAxis::atBottom)->coordToPixel(mark.day);
        const double wide = metrics.horizontalAdvance(mark.text->text()) + 10;
        mark.leftwards = at + wide > stores_->right();
        const std::pair span = mark.leftwards ? std::pair(at - wide, at + 2) : std::pair(at - 2, at + wide);
        const auto free = std::find_if(taken.begin(), taken.end(), [&](const auto& line) {
            return std::none_of(line.begin(), line.end(), [&](const auto& other) {
                return span.first < other.second && other.first < span.second;
            });
        });
        mark.line = static_cast<std::size_t>(free - taken.begin());
        if (free == taken.end()) taken.emplace_back();
        taken[*mark.line].push_back(span);
    }
    return taken.size();
}

// The least important names go where the band would take too much; the scale then leaves room for the band above the stores.
void WinterCanvas::placeMarkLabels() {
    const double height = std::max(1, stores_->height());
    const auto most =
        static_cast<std::size_t>(std::max(1.0, std::floor((mostOfHeight * height - bandEdge) / bandLine())));
    int least = importanceOf(SeasonMarkKind::BroodStop);
    std::size_t lines = lineUp(least);
    while (lines > most && least > 0) lines = lineUp(--least);
    for (const auto& mark : markLabels_) place(mark, height);
    const double head = (static_cast<double>(lines) * bandLine() + bandEdge) / height;
    // A little below nothing, so that dots of empty hives are whole.
    const double below = underNothing() / height;
    const double top = std::max(highestKg_ / std::max(0.3, (1 - head) * (1 + below) - below), topForDots());
    const double bottom = -top * below;
    keepLinesBelow(bottom + (top - bottom) * std::max(0.3, 1 - head));
    stores_->axis(QCPAxis::atLeft)->setRange(bottom, top);
    dots_->axis(QCPAxis::atLeft)->setRange(bottom, top);
}

// What flows in when forage has begun may be more than the scale is made for: there a line leaves the picture below the band.
void WinterCanvas::keepLinesBelow(double kilograms) {
    for (const auto& line : lines_) {
        QVector<double> days, kg;
        for (qsizetype i = 0; i < line.days.size(); ++i) {
            const bool above = line.kilograms[i] > kilograms;
            if (i > 0 && above != (line.kilograms[i - 1] > kilograms)) {
                const double share = (kilograms - line.kilograms[i - 1]) / (line.kilograms[i] - line.kilograms[i - 1]);
                days.append(line.days[i - 1] + share * (line.days[i] - line.days[i - 1]));
                kg.append(kilograms);
            }
            days.append(line.days[i]);
            kg.append(above ? qQNaN() : line.kilograms[i]);
        }
        line.graph->setData(days, kg, true);
    }
}

void WinterCanvas::place(const MarkLabel& mark, double height) const {
    mark.text->setVisible(mark.line.has_value());
    if (mark.reach) mark.reach->setVisible(mark.line.has_value());
    if (!mark.line) return;
    mark.text->setPositionAlignment((mark.leftwards ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop);
    const double top = 2 + static_cast<double>(*mark.line) * bandLine();
    mark.text->position->setCoords(mark.day, top / height);
    if (!mark.reach) return;
    mark.reach->start->setCoords(mark.day - mark.reachDays, (top + bandLine() - 3) / height);
    mark.reach->end->setCoords(mark.day + mark.reachDays, (top + bandLine() - 3) / height);
}

QString WinterCanvas::reserveWords(const WinterPicture& picture) {
    return QObject::tr("reserve\n%1").arg(words::wholeKilograms(Mass(picture.reserveKg)));
}

// Beside its line, in the margin between the winters and the dots, where neither comes.
void WinterCanvas::placeReserve() {
    if (!reserve_) return;
    const double tall = QFontMetricsF(plot_->font()).size(0, reserve_->text()).height();
    const double at = stores_->axis(QCPAxis::atLeft)->coordToPixel(reserveKg_);
    const double top =
        std::clamp(at - tall / 2, double(stores_->top()), std::max<double>(stores_->top(), stores_->bottom() - tall));
    reserve_->position->setCoords(stores_->right() + 5, top);
}

} // namespace winterlarder::desk
