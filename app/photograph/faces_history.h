// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "photograph/photograph.h"

#include <optional>
#include <tuple>
#include <vector>

namespace winterlarder::desk {

//! The two photographed faces of a comb, with what they were before: every change of a hand can be taken back, and made again. Tested:
//! tests/desk/faces_history_test.cpp.
class FacesHistory {
public:
    //! Face, whether its curves are moved (else its marks), which curve, which point.
    using Point = std::tuple<int, bool, std::optional<std::size_t>, int>;

    std::vector<PhotographedFace> faces{2};

    void keep(); //!< before a change
    //! Before a step of a point: a row of steps of one point is taken back as one.
    void keepForStep(const Point& point);
    //! Before each move of a point that is dragged; all of them up to its end are taken back as one.
    void dragged();
    void dragEnded();
    bool undo(); //!< whether there was anything
    bool redo();
    bool canUndo() const { return !before_.empty(); }
    bool canRedo() const { return !after_.empty(); }

private:
    using Faces = std::vector<PhotographedFace>;
    bool turn(std::vector<Faces>& from, std::vector<Faces>& to);
    void push(Faces before);

    std::vector<Faces> before_, after_;
    std::optional<Faces> dragging_; //!< as it was before the point began to move
    std::optional<Point> stepped_;
};

} // namespace winterlarder::desk
