// SPDX-License-Identifier: GPL-3.0-or-later
// Linked into a program with a window: tells on a pipe when its first window was painted and when a list in it first showed as many rows
// as wanted, and then ends the program. The environment names the pipe and the rows.
#include <QAbstractItemView>
#include <QCoreApplication>
#include <QEvent>

#include <cstdio>
#include <ctime>
#include <string>
#include <unistd.h>

namespace {

long long nanosecondsNow() {
    timespec time{};
    clock_gettime(CLOCK_MONOTONIC, &time);
    return time.tv_sec * 1000000000LL + time.tv_nsec;
}

class FirstPaint : public QObject {
public:
    FirstPaint()
        : pipe_(qEnvironmentVariableIntValue("BENCH_PIPE")), rows_(qEnvironmentVariableIntValue("BENCH_ROWS")) {}

protected:
    // The window is painted with all that is in it before the next event comes; this one comes before all others.
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() != QEvent::Paint || !watched->isWidgetType()) return false;
        const auto* widget = static_cast<QWidget*>(watched);
        painted_ = painted_ || widget->isWindow();
        listed_ = listed_ || shows(qobject_cast<QAbstractItemView*>(widget->parentWidget()));
        QCoreApplication::postEvent(this, new QEvent(QEvent::User), Qt::HighEventPriority);
        return false;
    }
    void customEvent(QEvent*) override {
        tell("painted", painted_, toldPainted_);
        tell("listed", listed_, toldListed_);
        if (toldPainted_ && (toldListed_ || rows_ == 0)) QCoreApplication::quit();
    }

private:
    bool shows(const QAbstractItemView* list) const {
        return list && list->model() && rows_ > 0 && list->model()->rowCount() >= rows_;
    }
    void tell(const char* what, bool happened, bool& told) const {
        if (!happened || told) return;
        told = true;
        const std::string line = std::string(what) + ' ' + std::to_string(nanosecondsNow()) + '\n';
        if (::write(pipe_, line.data(), line.size()) < 0) std::perror("pipe");
    }

    int pipe_, rows_;
    bool painted_ = false, listed_ = false;
    bool toldPainted_ = false, toldListed_ = false;
};

void watchFirstPaint() {
    static FirstPaint watch;
    QCoreApplication::instance()->installEventFilter(&watch);
}

} // namespace

Q_COREAPP_STARTUP_FUNCTION(watchFirstPaint)
