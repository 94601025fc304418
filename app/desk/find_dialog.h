// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QString>

#include <functional>
#include <string>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;

namespace winterlarder::desk {

//! One thing that can be found by its words, and what shows it.
struct Findable {
    QString kind;    //!< "colony", "weighing"
    QString words;   //!< by which it is found, with its kind; shown
    QString details; //!< shown in the quiet part of its line, and searched too
    std::function<void()> show;
};

//! A line to type in and a list of what holds every word typed, accents and capitals left aside; Enter (or a click) shows it and closes the
//! dialog. Tested: tests/desk/find_test.cpp.
class FindDialog : public QDialog {
    Q_OBJECT

public:
    explicit FindDialog(QWidget* parent = nullptr);

    //! What can be found; more may be offered once it is read.
    void offer(std::vector<Findable> more);
    //! What is searched elsewhere, once for each text of three letters or more.
    void alsoAsk(std::function<std::vector<Findable>(const QString& typed)> elsewhere);
    QLineEdit* line() const { return line_; }
    QListWidget* found() const { return found_; }
    QLabel* said() const { return said_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override; //!< arrows move in the list while letters are typed

private:
    struct Searched {
        Findable what;
        std::string letters; //!< of all its words, plain
    };
    static Searched searched(Findable what);
    void list();
    void addRow(const Findable& found);
    void show(int row);

    std::vector<Searched> all_;
    std::vector<Findable> listed_;
    std::function<std::vector<Findable>(const QString&)> elsewhere_;
    QLineEdit* line_;
    QListWidget* found_;
    QLabel* said_;
};

} // namespace winterlarder::desk
