// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/day_said.h"
#include "answer/version.h"
#include "desk/arguments.h"
#include "desk/language.h"
#include "desk/main_window.h"
#include "desk/pictures.h"
#include "desk/qt_types.h"
#include "desk/settings.h"
#include "desk/text_size.h"
#include "theme/icons.h"

#include <QApplication>
#include <QStyleFactory>
#include <QTimer>

#include <cstdio>

namespace {

using namespace winterlarder;
using namespace winterlarder::desk;

void say(std::FILE* stream, const QString& text) { std::fputs(text.toUtf8().constData(), stream); }

int tellAll(const Problems& problems) {
    bool file = false, ours = false;
    for (const auto& problem : problems) {
        say(stderr, QString::fromStdString(describe(problem)) + QLatin1Char('\n'));
        file = file || problem.kind == ProblemKind::File;
        ours = ours || problem.kind == ProblemKind::Internal;
    }
    return ours ? 70 : file ? 3 : 2;
}

QStringList wordsOf(int count, char** given) {
    QStringList words;
    for (int i = 0; i < count; ++i) words << QString::fromLocal8Bit(given[i]);
    return words;
}

int writeAndEnd(QApplication& application, MainWindow& window, const QString& folder) {
    window.resize(1360, 900); // whatever the screen
    QObject::connect(
        &window, &MainWindow::becameSettled, &application,
        [&] {
            const auto written = writePictures(window, folder);
            if (!written.ok()) return application.exit(tellAll(written.problems()));
            for (const QString& path : *written) say(stdout, path + QLatin1Char('\n'));
            application.exit(window.openingProblems().empty() ? 0 : tellAll(window.openingProblems()));
        },
        static_cast<Qt::ConnectionType>(Qt::QueuedConnection | Qt::SingleShotConnection));
    window.begin();
    return application.exec();
}

} // namespace

int main(int count, char** given) {
    const Arguments arguments = readArguments(wordsOf(count, given));
    if (!arguments.fault.isEmpty()) {
        say(stderr, QStringLiteral("winterlarder: ") + arguments.fault + QLatin1Char('\n'));
        return 2;
    }
    if (const auto today = answer::daySaid("winterlarder"); !today.ok()) return tellAll(today.problems());
    if (arguments.help) return say(stdout, helpText()), 0;
    if (arguments.version)
        return say(stdout, QStringLiteral("winterlarder %1\n").arg(QString::fromStdString(answer::versionInWords()))),
               0;
    if (arguments.pictures && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");

    QApplication application(count, given);
    QApplication::setApplicationName(QStringLiteral("winterlarder"));
    QApplication::setApplicationDisplayName(QStringLiteral("Winterlarder"));
    QApplication::setApplicationVersion(QLatin1String(answer::programVersion));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    openResources();
    speakLanguageOf(settings::language().isEmpty() ? QLocale() : QLocale(settings::language()), application);
    registerQtTypes();
    if (!arguments.pictures) useTextSize(settings::textSize());

    MainWindow window(arguments);
    if (!arguments.pictures) {
        window.restoreGeometry(settings::windowPlace()); // as it was left; an empty one changes nothing
        QObject::connect(&application, &QApplication::aboutToQuit, &window, [&window] {
            settings::keepWindowPlace(window.saveGeometry());
            window.keepSession();
        });
    }
    window.show();
    if (arguments.pictures) return writeAndEnd(application, window, *arguments.pictures);
    QTimer::singleShot(0, &window, &MainWindow::begin);
    return application.exec();
}
