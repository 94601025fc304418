// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/pictures.h"

#include "desk/colony_view.h"
#include "models/words.h"
#include "pages/look_page.h"
#include "plots/winter_plot.h"
#include "print/yard_sheet.h"

#include <QApplication>
#include <QDir>
#include <QTabWidget>

namespace winterlarder::desk {

namespace {

QString fileName(const QString& what, const ColonyEntry& colony, int position) {
    QString name = QString::fromStdString(colony.record.colony.value_or("")).toLower().simplified();
    QString plain;
    for (const QChar letter : name) plain += letter.isLetterOrNumber() ? letter : QLatin1Char('-');
    return QStringLiteral("%1-%2-%3")
        .arg(what)
        .arg(position + 1)
        .arg(plain.isEmpty() ? QStringLiteral("colony") : plain);
}

// What a person would look at first: the colony with honey to spare, else the first.
ColonyId worthShowing(const Yard& yard) {
    for (const auto& colony : yard.colonies())
        if (colony.answered && colony.answered->answer.advice.verdict == advice::Verdict::Harvest) return colony.id;
    return yard.colonies().empty() ? ColonyId{} : yard.colonies().front().id;
}

class Writer {
public:
    explicit Writer(const QString& folder) : folder_(folder) {}
    QString path(const QString& name) const { return folder_.filePath(name); }
    void note(bool written, const QString& name) {
        if (written) files_ << path(name);
        else
            problems_.push_back({ProblemKind::File,
                                 {path(name).toStdString(), 0, 0},
                                 "cannot be written",
                                 "name a folder that can be"});
    }
    Outcome<QStringList> outcome() const {
        if (!problems_.empty()) return problems_;
        return files_;
    }

private:
    QDir folder_;
    QStringList files_;
    Problems problems_;
};

void writeWindow(MainWindow& window, Writer& writer, ColourScheme colours, const QString& suffix) {
    window.useColours(colours);
    window.choose(worthShowing(*window.yard()));
    QApplication::processEvents();
    writer.note(window.grab().save(writer.path(QStringLiteral("window-%1.png").arg(suffix))),
                QStringLiteral("window-%1.png").arg(suffix));
    window.choose({});
    QApplication::processEvents();
    writer.note(window.grab().save(writer.path(QStringLiteral("yard-%1.png").arg(suffix))),
                QStringLiteral("yard-%1.png").arg(suffix));
}

void writeColony(const ColonyEntry& colony, int position, Writer& writer) {
    if (!colony.answered || colony.answered->picture.empty()) return;
    const auto picture = std::shared_ptr<const WinterPicture>(colony.answered, &colony.answered->picture);
    const QString title = QStringLiteral("%1. %2").arg(QString::fromStdString(colony.record.colony.value_or("")),
                                                       words::answerSentence(*colony.answered));
    const auto wording = words::styleOf(colony.answered->question).wording;
    for (const QString& form : {QStringLiteral("png"), QStringLiteral("svg")}) {
        const QString name = fileName(QStringLiteral("winter"), colony, position) + QLatin1Char('.') + form;
        writer.note(savePaperPicture(picture, {advice::OptionKind::Leave}, wording, title, writer.path(name)), name);
    }
}

void writeSheets(MainWindow& window, Writer& writer) {
    const auto& yard = *window.yard();
    const auto write = [&writer](const Paper& paper, const QString& name) {
        writer.note(saveSheet(paper, writer.path(name)), name);
    };
    write(yardSheet(yard, window.yardList()->inOrder()), QStringLiteral("yard-plan.pdf"));
    int position = 0;
    for (const auto& colony : yard.colonies()) {
        const QString name = fileName(QStringLiteral("sheet"), colony, position++) + QStringLiteral(".pdf");
        if (const auto paper = colonySheet(colony, *yard.book()->reference())) write(*paper, name);
    }
}

} // namespace

Outcome<QStringList> writePictures(MainWindow& window, const QString& folder) {
    if (!QDir().mkpath(folder))
        return Problem{ProblemKind::File, {folder.toStdString(), 0, 0}, "the folder cannot be made", "name another"};
    Writer writer(folder);
    writeWindow(window, writer, ColourScheme::Light, QStringLiteral("light"));
    writeWindow(window, writer, ColourScheme::Dark, QStringLiteral("dark"));
    int position = 0;
    for (const auto& colony : window.yard()->colonies()) writeColony(colony, position++, writer);
    writeSheets(window, writer);
    return writer.outcome();
}

} // namespace winterlarder::desk
