// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/opening.h"

#include "answer/data_folder.h"
#include "book/book.h"
#include "exchange/case_file.h"

#include <QDir>
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

} // namespace

QStringList demoFiles(const QString& dataFolder) {
    for (const QString& folder : {dataFolder + QStringLiteral("/demo"), dataFolder + QStringLiteral("/../demo")}) {
        const QDir demo(folder);
        QStringList files;
        for (const QString& name : demo.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) files << demo.filePath(name);
        if (!files.isEmpty()) return files;
    }
    return {};
}

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
    if (!reference.ok()) return {nullptr, {}, {}, reference.problems()};
    const QString folder = QString::fromStdString(answer::dataFolder(choice).string());
    const bool demo = arguments.demo || (arguments.pictures && arguments.files.isEmpty());
    const QStringList files = demo ? demoFiles(folder) : arguments.files;
    return openFiles(files, std::make_shared<const ReferenceData>(std::move(reference).value()));
}

} // namespace winterlarder::desk
