// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/opening.h"

#include "answer/data_folder.h"
#include "book/book.h"
#include "exchange/case/case_file.h"

#include <QFile>

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

void readInto(Opened& opened, const QString& path) {
    QFile file(path);
    const std::string name = path.toStdString();
    if (!file.open(QIODevice::ReadOnly)) {
        opened.problems.push_back({ProblemKind::File, {name, 0, 0}, "cannot be read: " + file.errorString().toStdString(), {}});
        return;
    }
    const QByteArray text = file.readAll();
    auto record = exchange::readCase(std::string_view(text.constData(), static_cast<std::size_t>(text.size())), name, *opened.reference);
    if (record.ok()) opened.records.push_back(std::move(record).value());
    else opened.problems.insert(opened.problems.end(), record.problems().begin(), record.problems().end());
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
    if (!reference.ok()) return {nullptr, {}, {}, {}, reference.problems()};
    auto data = std::make_shared<const ReferenceData>(std::move(reference).value());
    if (!arguments.demo && !(arguments.pictures && arguments.files.isEmpty())) return openFiles(arguments.files, std::move(data));
    const auto demo = findDemo(choice);
    if (!demo.ok()) return {std::move(data), {}, {}, {}, demo.problems()};
    return {std::move(data), {}, {}, *demo, {}};
}

} // namespace winterlarder::desk
