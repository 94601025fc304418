// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/answer_parts.h"
#include "reference/reference.h"

#include <QWidget>

#include <optional>
#include <vector>

class QBoxLayout;
class QLabel;

namespace winterlarder::desk {

//! The one question an advice asks back, with what it may be answered by: a button for each choice, or a field for a number.
class AskRow : public QWidget {
    Q_OBJECT

public:
    explicit AskRow(QWidget* parent = nullptr);
    //! Hidden where nothing is asked. `reference`: bounds of a number.
    void show(const std::optional<advice::Ask>& ask, const ReferenceData* reference);
    //! What it may be answered by, as it is read.
    const std::vector<QWidget*>& answers() const { return answers_; }

signals:
    void answered(winterlarder::advice::AskKind kind, double value);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();
    void offer(const advice::Ask& ask, const ReferenceData* reference);

    QLabel* question_;
    QWidget* choices_ = nullptr;
    QBoxLayout* across_;
    std::vector<QWidget*> answers_;
    std::optional<advice::AskKind> shown_;
};

} // namespace winterlarder::desk
