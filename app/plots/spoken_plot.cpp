// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/spoken_plot.h"

#include <QAccessibleWidget>
#include <QVariant>
#include <QWidget>

namespace winterlarder::desk {

namespace {

constexpr auto chartProperty = "winterlarderChart";

QAccessibleInterface* spokenChart(const QString&, QObject* object) {
    auto* widget = qobject_cast<QWidget*>(object);
    return widget && widget->property(chartProperty).toBool() ? new QAccessibleWidget(widget, QAccessible::Chart)
                                                              : nullptr;
}

} // namespace

void speakAsChart(QWidget& widget) {
    static const bool once = [] {
        QAccessible::installFactory(spokenChart);
        return true;
    }();
    (void)once;
    widget.setProperty(chartProperty, true);
}

} // namespace winterlarder::desk
