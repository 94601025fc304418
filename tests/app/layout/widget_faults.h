// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QStyleOptionComboBox>
#include <QStyleOptionFrame>
#include <QTabBar>
#include <QTabWidget>
#include <QTextDocument>
#include <qcustomplot.h>

//! What is wrong with how the widgets of a window lie, as sentences; nothing where all is well.
namespace winterlarder::desk::layout {

constexpr int leastTarget = 24; // px, to be hit: WCAG 2.2, 2.5.8

inline QString called(const QWidget& widget) {
    QString words = widget.property("text").toString();
    if (words.isEmpty()) words = widget.accessibleName();
    const QRect at(widget.mapTo(widget.window(), QPoint(0, 0)), widget.size());
    return QStringLiteral("%1 \"%2\" (%3, %4; %5 x %6)")
        .arg(QLatin1String(widget.metaObject()->className()), words.left(60))
        .arg(at.x())
        .arg(at.y())
        .arg(at.width())
        .arg(at.height());
}

//! What Qt puts together by itself, and pictures.
inline bool madeByQt(const QWidget& widget) {
    for (const QWidget* each = widget.parentWidget(); each; each = each->parentWidget()) {
        if (qobject_cast<const QComboBox*>(each) || qobject_cast<const QAbstractSpinBox*>(each) ||
            qobject_cast<const QLineEdit*>(each) || qobject_cast<const QTabBar*>(each) ||
            qobject_cast<const QAbstractItemView*>(each) || qobject_cast<const QCustomPlot*>(each) ||
            each->inherits("QMenuBar"))
            return true;
        if (each->isWindow()) break;
    }
    return widget.objectName() == QStringLiteral("qt_menubar_ext_button") || qobject_cast<const QScrollBar*>(&widget);
}

inline std::vector<QWidget*> seenIn(const QWidget& window) {
    std::vector<QWidget*> seen;
    for (auto* each : window.findChildren<QWidget*>())
        if (each->isVisible() && each->window() == &window && !madeByQt(*each)) seen.push_back(each);
    return seen;
}

inline bool saysWhole(const QWidget& widget, const QString& words) {
    QTextDocument tip;
    tip.setHtml(widget.toolTip());
    return tip.toPlainText().contains(QString(words).remove(QLatin1Char('&')));
}

inline bool isCut(const QLabel& label) {
    if (label.text().isEmpty() || !label.pixmap().isNull()) return false;
    if (!label.wordWrap())
        return label.sizeHint().width() > label.width() || label.sizeHint().height() > label.height();
    return label.minimumSizeHint().width() > label.width() || label.heightForWidth(label.width()) > label.height();
}

inline bool isCut(const QComboBox& choice) {
    QStyleOptionComboBox option;
    option.initFrom(&choice);
    option.editable = choice.isEditable();
    const QRect room =
        choice.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &choice);
    return choice.fontMetrics().horizontalAdvance(choice.currentText()) > room.width();
}

inline bool isCut(const QLineEdit& line) {
    QStyleOptionFrame option;
    option.initFrom(&line);
    option.lineWidth = line.style()->pixelMetric(QStyle::PM_DefaultFrameWidth, &option, &line);
    const int room = line.style()->subElementRect(QStyle::SE_LineEditContents, &option, &line).width();
    return line.fontMetrics().horizontalAdvance(line.displayText()) > room;
}

inline bool isCut(const QAbstractSpinBox& spin) {
    const auto* line = spin.findChild<QLineEdit*>();
    return line && isCut(*line);
}

inline bool isCut(const QAbstractButton& button) {
    const QSize wanted = button.sizeHint();
    return !button.text().isEmpty() && (wanted.width() > button.width() || wanted.height() > button.height());
}

//! Words cut by their own widget, where no tool tip says the whole.
inline QStringList cutWords(const QWidget& window) {
    QStringList faults;
    const auto check = [&](const QWidget& widget, bool cut, const QString& words) {
        if (cut && !saysWhole(widget, words)) faults << called(widget) + QStringLiteral(" is cut");
    };
    for (const auto* each : seenIn(window)) {
        if (const auto* label = qobject_cast<const QLabel*>(each)) check(*each, isCut(*label), label->text());
        if (const auto* choice = qobject_cast<const QComboBox*>(each))
            check(*each, isCut(*choice), choice->currentText());
        if (const auto* line = qobject_cast<const QLineEdit*>(each)) check(*each, isCut(*line), line->displayText());
        if (const auto* spin = qobject_cast<const QAbstractSpinBox*>(each)) check(*each, isCut(*spin), spin->text());
        if (const auto* button = qobject_cast<const QAbstractButton*>(each))
            check(*each, isCut(*button), button->text());
    }
    return faults;
}

inline bool laysOutByItself(const QWidget& parent) {
    return qobject_cast<const QAbstractScrollArea*>(&parent) || qobject_cast<const QTabWidget*>(&parent) ||
           qobject_cast<const QSplitter*>(&parent) || qobject_cast<const QStackedWidget*>(&parent);
}

//! Widgets that reach out of the one around them, or are wider than what they are scrolled in.
inline QStringList reachingOut(const QWidget& window) {
    QStringList faults;
    for (const auto* each : seenIn(window)) {
        const auto* parent = each->parentWidget();
        if (!parent || laysOutByItself(*parent)) continue;
        const bool scrolled = qobject_cast<const QAbstractScrollArea*>(parent->parentWidget()) &&
                              static_cast<const QAbstractScrollArea*>(parent->parentWidget())->viewport() == parent;
        if (scrolled ? each->width() > parent->width() : !parent->rect().contains(each->geometry()))
            faults << QStringLiteral("%1 reaches out of %2").arg(called(*each), called(*parent));
    }
    return faults;
}

//! Two widgets of one parent on each other.
inline QStringList overlaps(const QWidget& window) {
    QStringList faults;
    const auto all = seenIn(window);
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const auto* parent = all[i]->parentWidget();
            if (parent != all[j]->parentWidget() || !parent || laysOutByItself(*parent)) continue;
            if (all[i]->objectName() == QStringLiteral("notices") || all[j]->objectName() == QStringLiteral("notices"))
                continue; // said over the page for a while
            if (all[i]->geometry().intersects(all[j]->geometry()))
                faults << QStringLiteral("%1 lies on %2").arg(called(*all[i]), called(*all[j]));
        }
    return faults;
}

struct Target {
    QRect seen; //!< of the window
    QString name;
    bool small = false;
};

inline std::vector<Target> targetsOf(const QWidget& window) {
    std::vector<Target> targets;
    for (const auto* each : seenIn(window)) {
        const auto add = [&](const QRect& whole, const QString& name) {
            const QRect seen = each->visibleRegion().boundingRect() & whole;
            if (seen.isEmpty()) return;
            targets.push_back({seen.translated(each->mapTo(each->window(), QPoint(0, 0))), name,
                               whole.width() < leastTarget || whole.height() < leastTarget});
        };
        if (const auto* tabs = qobject_cast<const QTabBar*>(each))
            for (int i = 0; i < tabs->count(); ++i)
                add(tabs->tabRect(i).adjusted(1, 0, -1, 0), QStringLiteral("tab ") + tabs->tabText(i));
        if (qobject_cast<const QAbstractButton*>(each) || qobject_cast<const QComboBox*>(each) ||
            qobject_cast<const QLineEdit*>(each) || qobject_cast<const QAbstractSpinBox*>(each) ||
            qobject_cast<const QAbstractSlider*>(each))
            add(each->rect(), called(*each));
    }
    return targets;
}

//! Controls too small to be hit, or that touch another.
inline QStringList badTargets(const QWidget& window) {
    QStringList faults;
    const auto targets = targetsOf(window);
    for (std::size_t i = 0; i < targets.size(); ++i) {
        if (targets[i].small) faults << targets[i].name + QStringLiteral(" is small to hit");
        for (std::size_t j = 0; j < i; ++j)
            if (targets[i].seen.adjusted(-1, -1, 1, 1).intersects(targets[j].seen))
                faults << QStringLiteral("%1 touches %2").arg(targets[i].name, targets[j].name);
    }
    return faults;
}

} // namespace winterlarder::desk::layout
