// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_levels.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr int columns = 80;        // of half a comb; the other half is its mirror image
constexpr double archSag = 0.16;   // how much lower the honey arch comes at the sides
constexpr double roundEdge = 0.35; // how much shallower a part-built comb is at the sides
constexpr double wholeComb = 2;    // a level below every outline
constexpr int halvings = 20;       // to a millionth of the depth

template <class Height> double overColumns(const Height& height) {
    double sum = 0;
    for (int i = 0; i < columns; ++i) sum += std::max(0.0, height((i + 0.5) / columns));
    return sum * 2 / columns;
}

// The level at which a growing area reaches what is wanted.
template <class AreaAt> double levelFor(double wanted, double low, double high, const AreaAt& areaAt) {
    if (wanted <= 0) return low;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        (areaAt(middle) < wanted ? low : high) = middle;
    }
    return high;
}

double archLevel(CombPoint p) { return p.y - archSag * p.x * p.x; }

} // namespace

CombFilling fillingOf(const book::CombRecord& comb) {
    return {comb.built, shareOf(comb, Zone::Capped), shareOf(comb, Zone::Open), shareOf(comb, Zone::Brood),
            shareOf(comb, Zone::BeeBread)};
}

std::optional<Zone> zoneOf(CombEdge edge) {
    switch (edge) {
    case CombEdge::Capped: return Zone::Capped;
    case CombEdge::Open: return Zone::Open;
    case CombEdge::Brood: return Zone::Brood;
    case CombEdge::BeeBread: return Zone::BeeBread;
    case CombEdge::Built: break;
    }
    return std::nullopt;
}

CombEdge edgeOf(Zone zone) {
    switch (zone) {
    case Zone::Capped: return CombEdge::Capped;
    case Zone::Open: return CombEdge::Open;
    case Zone::Brood: return CombEdge::Brood;
    case Zone::BeeBread: break;
    }
    return CombEdge::BeeBread;
}

CombLevels::CombLevels(const hive::Outline& outline, const CombFilling& filling) {
    const double wide = std::max({outline.top.value(), outline.bottom.value(), 1.0});
    halfTop_ = outline.top.value() / wide;
    halfBottom_ = outline.bottom.value() / wide;
    const double built = std::clamp(filling.built, 0.0, 1.0);
    builtLevel_ = wholeComb;
    const auto builtArea = [this](double level) {
        builtLevel_ = level;
        return overColumns([this](double x) { return column(x).second - column(x).first; });
    };
    area_ = builtArea(wholeComb);
    if (built < 0.999) builtLevel_ = levelFor(built * area_, 0, 1 + roundEdge, builtArea);
    area_ = builtArea(builtLevel_);

    const auto overIt = [this](double level) { return areaAbove(level); };
    capped_ = levelFor(filling.capped * area_, -archSag, 1, overIt);
    open_ = levelFor((filling.capped + filling.open) * area_, capped_, 1, overIt);
    placeNest();
    const auto nest = [this](double reach) { return nestArea(reach); };
    brood_ = levelFor(filling.brood * area_, 0, 4, nest);
    bread_ = filling.beeBread > 0 ? levelFor((filling.brood + filling.beeBread) * area_, brood_, 4, nest) : brood_;
}

void CombLevels::placeNest() {
    const double top = std::max(column(0).first, open_);
    const double bottom = std::max(top, column(0).second);
    nestY_ = std::lerp(top, bottom, 0.54);
    nestWidth_ = std::clamp(halfWidthAt(nestY_) * 0.8 / (std::max(0.2, bottom - top) / 2), 0.9, 2.2);
}

double CombLevels::halfWidthAt(double y) const { return std::lerp(halfTop_, halfBottom_, y); }

double CombLevels::builtAt(double x) const { return builtLevel_ - roundEdge * x * x; }

std::pair<double, double> CombLevels::column(double x) const {
    const double away = std::abs(x);
    double from = 0, to = 1;
    if (halfTop_ != halfBottom_) {
        const double side = (away - halfTop_) / (halfBottom_ - halfTop_);
        if (halfTop_ > halfBottom_) to = std::min(to, side);
        else from = std::max(from, side);
    } else if (away > halfTop_) {
        to = 0;
    }
    if (builtLevel_ < wholeComb) to = std::min(to, builtAt(x));
    return {from, std::max(from, to)};
}

double CombLevels::archAt(CombEdge edge, double x) const {
    return (edge == CombEdge::Capped ? capped_ : open_) + archSag * x * x;
}

double CombLevels::areaAbove(double level) const {
    return overColumns([&](double x) {
        const auto [from, to] = column(x);
        return std::min(to, level + archSag * x * x) - from;
    });
}

double CombLevels::nestArea(double reach) const {
    return overColumns([&](double x) {
        const double across = x / nestWidth_;
        const double inside = reach * reach - across * across;
        if (inside <= 0) return 0.0;
        const double tall = std::sqrt(inside);
        const auto [from, to] = column(x);
        const double top = std::max(from, archAt(CombEdge::Open, x));
        return std::min(to, nestY_ + tall) - std::max(top, nestY_ - tall);
    });
}

double CombLevels::nestField(CombPoint p) const { return std::hypot(p.x / nestWidth_, p.y - nestY_); }

double CombLevels::shareThrough(CombEdge edge, CombPoint p) const {
    if (edge == CombEdge::Built) {
        CombLevels other = *this;
        const auto areaOf = [&other](double level) {
            other.builtLevel_ = level;
            return overColumns([&other](double x) { return other.column(x).second - other.column(x).first; });
        };
        const double whole = areaOf(wholeComb);
        return std::clamp(areaOf(p.y + roundEdge * p.x * p.x) / whole, 0.0, 1.0);
    }
    double area = 0;
    switch (edge) {
    case CombEdge::Capped: area = areaAbove(archLevel(p)); break;
    case CombEdge::Open: area = areaAbove(archLevel(p)) - areaAbove(capped_); break;
    case CombEdge::Brood: area = nestArea(nestField(p)); break;
    default: area = nestArea(nestField(p)) - nestArea(brood_); break;
    }
    return area_ > 0 ? std::clamp(area / area_, 0.0, 1.0) : 0;
}

double CombLevels::distance(CombEdge edge, CombPoint p, double wide, double tall) const {
    if (edge == CombEdge::Brood || edge == CombEdge::BeeBread) {
        const double field = nestField(p);
        if (field < 1e-6) return nestReach(edge) * std::min(tall, nestWidth_ * wide / 2);
        const double slope =
            std::hypot(p.x / (nestWidth_ * nestWidth_ * field) / (wide / 2), (p.y - nestY_) / field / tall);
        return std::abs(field - nestReach(edge)) / slope;
    }
    const auto [from, to] = column(p.x);
    const double whole = std::clamp(halfTop_ == halfBottom_ ? 1.0 : to, 0.0, 1.0);
    const double y = edge == CombEdge::Built ? std::min(builtAt(p.x), whole) : archAt(edge, p.x);
    return std::abs(p.y - std::clamp(y, from, std::max(from, to))) * tall;
}

} // namespace winterlarder::desk
