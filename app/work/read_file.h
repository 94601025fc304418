// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/input_limits.h"
#include "support/outcome.h"

#include <QFile>

#include <fstream>
#include <stop_token>
#include <string>

//! Reading files on a worker thread so that it ends soon after it is stopped. Tested: tests/app/work_test.cpp.
namespace winterlarder::desk {

//! A file that reads as broken off once it is stopped.
class StoppableFile : public QFile {
public:
    StoppableFile(const QString& name, std::stop_token stop) : QFile(name), stop_(std::move(stop)) {}

protected:
    qint64 readData(char* to, qint64 most) override { return stop_.stop_requested() ? -1 : QFile::readData(to, most); }

private:
    std::stop_token stop_;
};

//! The same under a std::istream: it ends where it was stopped.
class StoppableBuffer : public std::filebuf {
public:
    explicit StoppableBuffer(std::stop_token stop) : stop_(std::move(stop)) {}

protected:
    int_type underflow() override { return stop_.stop_requested() ? traits_type::eof() : std::filebuf::underflow(); }
    std::streamsize xsgetn(char* to, std::streamsize most) override {
        return stop_.stop_requested() ? 0 : std::filebuf::xsgetn(to, most);
    }

private:
    std::stop_token stop_;
};

//! The whole of a file; a File problem where it cannot be read, or the reading was stopped. One that is larger than `most` is refused once
//! that is known: a device or a pipe may have no end.
inline Outcome<std::string> readFile(const QString& name, const limits::TextSize& most, const std::stop_token& stop) {
    constexpr qint64 piece = 1 << 20;
    StoppableFile file(name, stop);
    QByteArray text, more;
    if (file.open(QIODevice::ReadOnly))
        while (static_cast<std::size_t>(text.size()) <= most.bytes && !(more = file.read(piece)).isEmpty())
            text += more;
    if (static_cast<std::size_t>(text.size()) > most.bytes) return limits::tooLarge({name.toStdString(), 0, 0}, most);
    if (!stop.stop_requested() && file.error() == QFileDevice::NoError) return text.toStdString();
    const QString why = stop.stop_requested() ? QStringLiteral("the reading was stopped") : file.errorString();
    return Problem{ProblemKind::File, {name.toStdString(), 0, 0}, "cannot be read: " + why.toStdString(), {}};
}

} // namespace winterlarder::desk
