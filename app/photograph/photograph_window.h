// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/drawn_combs.h"
#include "photograph/faces_history.h"
#include "work/newest_work.h"

#include <QDialog>

#include <optional>
#include <utility>
#include <vector>

class QButtonGroup;
class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTabBar;

namespace winterlarder::desk {

class PhotographView;

//! Measuring a comb on photographs of its faces: open a picture, mark where the comb is, trace its zones over the picture brought
//! into the comb's true outline. Shares follow every point. Nothing is changed until they are taken, and nothing traced is thrown away
//! unasked. What is said above and below the picture keeps its room, so that the picture stays where it is while it is traced.
//! Tested: tests/app/photograph_window_test.cpp.
class PhotographWindow : public QDialog {
    Q_OBJECT

public:
    enum class Step { Mark, Trace };

    PhotographWindow(const DrawnComb& comb, QWidget* parent = nullptr);

    //! Reads a picture on another thread and takes it for the face shown now; says why where it cannot be read.
    void openPicture(const QString& path);
    bool idle() const { return work_.idle(); } //!< no picture is being read or straightened
    //! Pictures the look already has; they can be opened again without a search for them.
    void offerPictures(const QStringList& paths);
    void showFace(int face); //!< 0 or 1
    void showStep(Step step);
    Step step() const { return step_; }
    void pickKind(hive::TracedKind kind);
    void beginCurve(); //!< another patch of the picked kind

    PhotographView* view() const { return view_; }
    const std::vector<PhotographedFace>& faces() const { return history_.faces; }
    //! The comb with what was measured so far, and the pictures it was measured on.
    book::CombRecord measured() const;
    QStringList pictures() const;
    QString readout() const; //!< what is said of it
    QString hint() const;    //!< what is to be done now, or what went wrong
    QTabBar* stepsBar() const { return steps_; }

public slots:
    void undo();
    void redo();
    void reject() override; //!< asks first where something was traced

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QLayout* buildHead();
    QWidget* buildTools();
    QLayout* buildKinds();
    QLayout* buildFoot();
    QLayout* buildButtons();
    void connectView();
    void askForPicture();
    PhotographedFace& face() { return history_.faces[static_cast<std::size_t>(shownFace_)]; }
    const PhotographedFace& face() const { return history_.faces[static_cast<std::size_t>(shownFace_)]; }
    hive::Tracing* curve(); //!< the one points go into; nothing where none of the kind is begun
    void keep();            //!< for undo
    void showRestored();
    bool traceable() const; //!< there is a picture, and its marks tell where the comb is
    void rectifyAnew();     //!< where picture or marks changed since; the picture comes a little later than its plane
    void takePicture(int face, const QString& path, const QImage& picture);
    void showPicture(); //!< marks or tracings anew
    void showCurves();
    void showReadout();
    void showUndo();
    void say(const QString& words, bool fault);
    static std::vector<QString> everyHint();
    QString whatToDo() const;               //!< the one for now
    void pickByHand(hive::TracedKind kind); //!< the picked kind again: the patch before
    bool setPoint(int point, QPointF at);
    void movePoint(int point, QPointF at, bool finished);
    void nudgePoint(int point, QPointF at);
    void addPoint(QPointF at);
    void addPointAfter(int point, QPointF at);
    hive::Tracing& curveToGrow(); //!< begun where there is none
    void removePoint(int point);

    DrawnComb comb_;
    FacesHistory history_;
    int shownFace_ = 0;
    Step step_ = Step::Mark;
    hive::TracedKind kind_ = hive::TracedKind::Capped;
    std::optional<std::size_t> curve_; //!< of the shown face
    std::optional<Rectified> rectified_;
    std::pair<qint64, std::vector<QPointF>> rectifiedFrom_; //!< which picture, and its marks
    NewestWork work_{nullptr, Pace::Prompt};

    QTabBar* facesBar_;
    QTabBar* steps_;
    QComboBox* markedBy_;
    QPushButton* open_;
    QLabel* hint_;
    QButtonGroup* kinds_;
    QStackedWidget* tools_; //!< of the step
    PhotographView* view_;
    QLabel* readout_;
    QPushButton* take_;
    QPushButton* undoButton_;
    QPushButton* redoButton_;
};

//! Nothing: the comb itself.
std::optional<Zone> zoneOf(hive::TracedKind kind);
//! "capped", "the comb itself".
QString nameOf(hive::TracedKind kind);

} // namespace winterlarder::desk
