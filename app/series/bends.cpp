// SPDX-License-Identifier: GPL-3.0-or-later
#include "series/bends.h"

#include <algorithm>
#include <cstddef>
#include <limits>

namespace winterlarder::desk {

namespace {

// The slopes from one place that meet every value passed since within the tolerance.
class Wedge {
public:
    Wedge(const std::vector<double>& values, double tolerance) : values_(values), tolerance_(tolerance) {}

    bool meets(std::size_t at) const { return slopeTo(at, 0) >= least_ && slopeTo(at, 0) <= most_; }
    void pass(std::size_t at) {
        least_ = std::max(least_, slopeTo(at, -tolerance_));
        most_ = std::min(most_, slopeTo(at, tolerance_));
    }
    void beginAt(std::size_t from) {
        from_ = from;
        least_ = -std::numeric_limits<double>::infinity();
        most_ = std::numeric_limits<double>::infinity();
    }

private:
    double slopeTo(std::size_t at, double off) const {
        return (values_[at] + off - values_[from_]) / static_cast<double>(at - from_);
    }

    const std::vector<double>& values_;
    double tolerance_;
    std::size_t from_ = 0;
    double least_ = -std::numeric_limits<double>::infinity();
    double most_ = std::numeric_limits<double>::infinity();
};

} // namespace

std::vector<std::size_t> bendsOf(const std::vector<double>& values, double tolerance) {
    std::vector<std::size_t> bends;
    if (values.empty()) return bends;
    bends.push_back(0);
    Wedge wedge(values, tolerance);
    for (std::size_t at = 1; at < values.size(); ++at) {
        if (!wedge.meets(at)) {
            wedge.beginAt(at - 1);
            bends.push_back(at - 1);
        }
        wedge.pass(at);
    }
    if (values.size() > 1) bends.push_back(values.size() - 1);
    return bends;
}

} // namespace winterlarder::desk
