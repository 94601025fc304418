// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"
#include "text/guide/guide.h"

#include <QDialog>
#include <QTextBrowser>

#include <functional>

class QListWidget;

namespace winterlarder::desk {

//! Shows a page of the guide; its drawings are made in its colours, as wide as there is room, sharp at any scale.
class GuideBrowser : public QTextBrowser {
    Q_OBJECT

public:
    explicit GuideBrowser(QWidget* parent);
    void setDrawing(std::function<QByteArray(text::GuideDrawing)> draw) { draw_ = std::move(draw); }
    int drawingWidth() const;

signals:
    void widthChanged();

protected:
    QVariant loadResource(int type, const QUrl& name) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    std::function<QByteArray(text::GuideDrawing)> draw_;
};

//! The guide "Judging stores": its pages at the left, the one chosen at the right, with the numbers of the hives of the yard that is
//! shown. Tested: tests/guide/window_test.cpp.
class GuideWindow : public QDialog {
    Q_OBJECT

public:
    GuideWindow(Yard* yard, QWidget* parent);
    ~GuideWindow() override;
    void show(text::GuidePage page);
    text::GuidePage page() const { return page_; }
    GuideBrowser* browser() const { return browser_; }
    QListWidget* pages() const { return pages_; }

protected:
    void changeEvent(QEvent* event) override; //!< other colours

private:
    void write();
    text::GuideReader reader(const ReferenceData& reference) const;
    std::vector<text::GuideHive> hivesOfYard(const ReferenceData& reference) const;

    Yard* yard_;
    QListWidget* pages_;
    GuideBrowser* browser_;
    text::GuidePage page_ = text::GuidePage::When;
    bool allHives_ = false;
};

} // namespace winterlarder::desk
