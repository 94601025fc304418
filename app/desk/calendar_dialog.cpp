// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/due_looks.h"
#include "desk/banner.h"
#include "desk/core_adviser.h"
#include "desk/main_window.h"
#include "dialogs/documents.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "text/task_words.h"
#include "work/newest_work.h"

namespace winterlarder::desk {

namespace {

struct WrittenCalendar {
    bool written = false;
    Problems leftOut;               //!< colonies that could not be read or computed
    std::vector<std::string> notes; //!< on others of which less is told
};

} // namespace

void MainWindow::saveCalendar() {
    if (!book_.isOpen()) return;
    const QString file =
        askForNewFile(this, tr("Due looks as a calendar"), inDocuments(yard_.title() + QStringLiteral(".ics")),
                      tr("Calendars (*.ics)"), QStringLiteral("ics"));
    if (!file.isEmpty()) writeCalendar(file);
}

// Read on the book's thread, computed on another; the file is written once it is whole.
void MainWindow::writeCalendar(const QString& file) {
    const auto day = yard_.asOf();
    if (!day || !reference_) return;
    struct Known {
        ColonyId id{};
        std::string name;
        std::optional<answer::AdvisedDue> advised;
    };
    std::vector<Known> colonies;
    std::vector<std::string> notes;
    for (const auto& colony : yard_.colonies()) {
        colonies.push_back({colony.id, colony.record.colony.value_or(""), {}});
        if (!colony.answered)
            notes.push_back(tr("%1: its answer is not worked out, so of it only what is planned is in the calendar")
                                .arg(QString::fromStdString(colonies.back().name))
                                .toStdString());
        else
            colonies.back().advised =
                answer::advisedDue(colony.answered->question, colony.answered->answer.advice, words::style());
    }
    book_.ask(
        this,
        [colonies, notes, day = *day, past = yard_.past()](book::Book& book) {
            ReadToFollow read;
            read.notes = notes;
            const auto info = book.info();
            if (info.ok()) read.mark = answer::calendarMark(*info);
            else read.problems = info.problems();
            for (const auto& [id, name, advised] : colonies) {
                auto reading = answer::readDue(book, id, name, day, past ? &past->learned : nullptr);
                if (reading.ok()) read.colonies.push_back({std::move(reading).value(), advised});
                else read.problems.insert(read.problems.end(), reading.problems().begin(), reading.problems().end());
            }
            return read;
        },
        [this, file](const Outcome<ReadToFollow>& read) {
            if (read.ok()) takeDue(file, *read);
            else tell(read.problems());
        });
}

void MainWindow::takeDue(const QString& file, const ReadToFollow& read) {
    if (!calendar_) {
        calendar_ = new NewestWork(this);
        connect(calendar_, &NewestWork::idleAgain, this, &MainWindow::tellIfSettled);
    }
    calendar_->ask(
        this,
        [file, read, reference = reference_, style = words::style(),
         now = book_.scribe().now()](const std::stop_token& stop) -> Outcome<WrittenCalendar> {
            auto due = answer::dueLooks(read.mark, read.colonies, *reference, deskSampling, 1, style, stop);
            const bool written =
                !stop.stop_requested() && saveText(file, exchange::calendarFile(text::calendarName(), due.due, now));
            WrittenCalendar calendar{written, read.problems, read.notes};
            calendar.notes.insert(calendar.notes.end(), due.notes.begin(), due.notes.end());
            calendar.leftOut.insert(calendar.leftOut.end(), due.problems.begin(), due.problems.end());
            return calendar;
        },
        [this, file](const Outcome<WrittenCalendar>& calendar) {
            QString said = tr("What is due is in %1.").arg(file);
            if (!calendar.ok())
                said = tr("What is due could not be worked out.\n%1").arg(problemWords(calendar.problems()));
            else if (!calendar->written)
                said = tr("The calendar could not be written to %1. Choose another folder.").arg(file);
            else if (!calendar->leftOut.empty())
                said += QLatin1Char('\n') + tr("Left out:") + QLatin1Char('\n') + problemWords(calendar->leftOut);
            if (calendar.ok() && calendar->written)
                for (const auto& note : calendar->notes) said += QLatin1Char('\n') + QString::fromStdString(note);
            banner_->showMessage(QStringLiteral("calendar"), said);
        });
}

} // namespace winterlarder::desk
