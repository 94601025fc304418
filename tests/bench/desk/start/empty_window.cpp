// SPDX-License-Identifier: GPL-3.0-or-later
// The least a program with a window of Qt takes to start; the start of the real one is held against it.
#include <QApplication>
#include <QWidget>

int main(int count, char** given) {
    QApplication application(count, given);
    QWidget window;
    window.resize(1360, 900);
    window.show();
    return application.exec();
}
