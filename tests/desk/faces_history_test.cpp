// SPDX-License-Identifier: GPL-3.0-or-later
#include "photograph/faces_history.h"

#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

const FacesHistory::Point firstMark{0, false, std::nullopt, 0}, secondMark{0, false, std::nullopt, 1};

struct FacesOfAComb : ::testing::Test {
    FacesHistory history;
    void mark(double x) { history.faces[0].marks = {{x, 0}}; }
    double marked() const { return history.faces[0].marks.empty() ? -1 : history.faces[0].marks[0].x(); }
};

} // namespace

TEST_F(FacesOfAComb, AreTakenBackAndMadeAgain) {
    EXPECT_FALSE(history.undo());
    history.keep();
    mark(1);
    history.keep();
    mark(2);
    EXPECT_TRUE(history.undo());
    EXPECT_EQ(marked(), 1);
    EXPECT_TRUE(history.undo());
    EXPECT_EQ(marked(), -1);
    EXPECT_FALSE(history.canUndo());
    EXPECT_TRUE(history.redo());
    EXPECT_EQ(marked(), 1);
    history.keep();
    mark(3);
    EXPECT_FALSE(history.canRedo()) << "what was taken back is gone once something else was done";
}

TEST_F(FacesOfAComb, ADragIsTakenBackAsOne) {
    mark(1);
    for (double x : {2, 3, 4}) {
        history.dragged();
        mark(x);
    }
    history.dragEnded();
    EXPECT_TRUE(history.undo());
    EXPECT_EQ(marked(), 1);
    EXPECT_FALSE(history.canUndo());
}

TEST_F(FacesOfAComb, ARowOfStepsOfOnePointIsTakenBackAsOne) {
    mark(1);
    for (double x : {2, 3, 4}) {
        history.keepForStep(firstMark);
        mark(x);
    }
    history.keepForStep(secondMark);
    mark(5);
    history.keepForStep(firstMark);
    mark(6);
    for (double before : {5, 4, 1}) {
        EXPECT_TRUE(history.undo());
        EXPECT_EQ(marked(), before);
    }
    history.keepForStep(firstMark);
    mark(7);
    EXPECT_TRUE(history.undo());
    EXPECT_EQ(marked(), 1) << "a step after something was taken back begins a row of its own";
}

} // namespace winterlarder::desk
