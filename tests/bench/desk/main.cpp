// SPDX-License-Identifier: GPL-3.0-or-later
//! bench_desk [COLONIES [PART...]]: what a keeper waits for at the window, with as many colonies in a yard (300 unless said otherwise).
//! Parts: start, session, waits; all where none is named. Runs on the platform of the environment: QT_QPA_PLATFORM=offscreen, or a
//! screen (xvfb-run). The machine should have nothing else to do.
#include "desk/qt_types.h"
#include "large_yard.h"
#include "session.h"
#include "start_times.h"
#include "theme/icons.h"
#include "waits.h"

#include <QStandardPaths>
#include <QStyleFactory>
#include <QTemporaryDir>
#include <cstdlib>
#include <set>
#include <sys/resource.h>

using namespace winterlarder;
using namespace winterlarder::bench;

namespace {

constexpr int starts = 15;

void work(WatchedApplication& application, const QString& book, int colonies, const std::set<std::string>& parts) {
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    desk::openResources();
    desk::registerQtTypes();
    desk::Arguments arguments;
    arguments.files = {book};
    arguments.day = yardDay;
    desk::MainWindow window(arguments);
    window.show();
    QApplication::setActiveWindow(&window); // where there is no window manager nobody else does
    Keeper keeper(window, application);
    keeper.begin("opening the book");
    application.act([&] { window.begin(); });
    application.waitFor([&] { return static_cast<int>(window.yard()->colonies().size()) == colonies; });
    if (parts.contains("session")) showSession(keeper);
    if (!parts.contains("waits")) return;
    const auto start = Clock::now();
    application.waitFor([&] { return window.settled(); });
    show("waiting until every colony is answered", millisecondsSince(start) / 1000, "s");
    showWaits(keeper);
}

} // namespace

int main(int count, char** given) {
    const int colonies = count > 1 ? std::atoi(given[1]) : 300;
    std::set<std::string> parts(given + std::min(count, 2), given + count);
    if (parts.empty()) parts = {"start", "session", "waits"};
    const QTemporaryDir folder;
    qputenv("XDG_CONFIG_HOME", folder.path().toLocal8Bit()); // the keeper's own settings stay as they are
    const QString book = folder.filePath(QStringLiteral("meadow.larder"));
    {
        const auto reference = loadReference(SHARED_FOLDER);
        writeLargeYard(book.toStdString(), colonies, *reference);
    }
    double load = 0;
    ::getloadavg(&load, 1);
    show("load of the machine before", load, "");
    if (parts.contains("start")) showStart(book.toStdString(), colonies, starts);
    if (parts.contains("session") || parts.contains("waits")) {
        WatchedApplication application(count, given);
        std::printf("platform: %s, %d colonies\n", qPrintable(QGuiApplication::platformName()), colonies);
        work(application, book, colonies, parts);
        rusage usage{};
        ::getrusage(RUSAGE_SELF, &usage);
        show("most memory of the whole program", static_cast<double>(usage.ru_maxrss) / 1024, "MB");
    }
}
