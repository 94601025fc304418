// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/opening.h"

#include "answer/data_folder.h"
#include "answer/doubt_words.h"
#include "book/book.h"
#include "exchange/case/case_file.h"
#include "work/read_file.h"

#include <QFile>
#include <QFileInfo>

namespace winterlarder::desk {

namespace {

answer::DataFolderChoice choiceOf(const Arguments& arguments) {
    answer::DataFolderChoice choice;
    if (arguments.data) choice.option = std::filesystem::path(arguments.data->toStdString());
    const QString environment = qEnvironmentVariable("WINTERLARDER_DATA");
    if (!environment.isEmpty()) choice.environment = std::filesystem::path(environment.toStdString());
    choice.executable = answer::executableFile();
    return choice;
}

void add(Problems& all, const Problems& more) { all.insert(all.end(), more.begin(), more.end()); }

void readInto(Opened& opened, const QString& path) {
    const auto text = readFile(path, limits::caseText, {});
    if (!text.ok()) return add(opened.problems, text.problems());
    auto read = exchange::readCaseWithPlaces(*text, path.toStdString(), *opened.reference);
    if (!read.problems.empty()) return add(opened.problems, read.problems);
    const auto inWords = [&](const stores::Doubt& doubt, Place place, const book::ColonyCase& record) {
        return answer::problemOf(doubt, std::move(place), {}, record.site, record.hive, *opened.reference);
    };
    add(opened.asked, answer::askedOfCase(*read.record, read.places, *opened.reference, inWords));
    opened.records.push_back(std::move(*read.record));
    opened.recordFiles.push_back(QFileInfo(path).fileName().toStdString());
}

// Beside the shipped data where installed, else beside the program, where the build makes it.
Outcome<QString> findDemo(const answer::DataFolderChoice& choice) {
    const std::string name = std::string("demo/orchard") + book::bookExtension;
    for (const auto& folder : {answer::dataFolder(choice), choice.executable.parent_path()})
        if (std::filesystem::exists(folder / name)) return QString::fromStdString((folder / name).string());
    return Problem{ProblemKind::File, {name, 0, 0}, "the demo book is not there", "make it with demo/make-book"};
}

} // namespace

Opened openFiles(const QStringList& files, std::shared_ptr<const ReferenceData> reference) {
    Opened opened;
    opened.reference = std::move(reference);
    for (const QString& path : files) {
        if (path.endsWith(QLatin1String(book::bookExtension))) opened.books << path;
        else readInto(opened, path);
    }
    return opened;
}

Opened openAll(const Arguments& arguments) {
    const auto choice = choiceOf(arguments);
    auto reference = answer::loadShippedData(choice);
    if (!reference.ok()) return {.problems = reference.problems()};
    auto data = std::make_shared<const ReferenceData>(std::move(reference).value());
    if (!arguments.demo && !(arguments.pictures && arguments.files.isEmpty()))
        return openFiles(arguments.files, std::move(data));
    const auto demo = findDemo(choice);
    if (!demo.ok()) return {.reference = std::move(data), .problems = demo.problems()};
    return {.reference = std::move(data), .demo = *demo};
}

Outcome<std::shared_ptr<const climate::Gazetteer>> readPlaces(const Arguments& arguments,
                                                              const ReferenceData& reference) {
    auto places = climate::Gazetteer::load(answer::dataFolder(choiceOf(arguments)), reference);
    if (!places.ok()) return places.problems();
    return std::make_shared<const climate::Gazetteer>(std::move(places).value());
}

void copyDemo(Opened& opened, const QString& copy) {
    QFile demo(opened.demo);
    const bool copied = demo.copy(copy) && QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    if (!copied)
        opened.problems.push_back({ProblemKind::File,
                                   {opened.demo.toStdString(), 0, 0},
                                   "cannot be copied: " + demo.errorString().toStdString(),
                                   {}});
    opened.demo = copied ? copy : QString();
}

} // namespace winterlarder::desk
