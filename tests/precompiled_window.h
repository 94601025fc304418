// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What most tests of the window read first, read once for all of them; as of precompiled.h, no test leans on it.
#include "precompiled.h"

#include "models/words.h"
#include "models/yard.h"

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>
