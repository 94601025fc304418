// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/scale_log_cells.h"

#include "support/require.h"

#include <cstring>
#include <csv.h>

namespace winterlarder::exchange {

namespace {

constexpr std::size_t pieceSize = 256 * 1024;

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!text.empty() && blank(text.front())) text.remove_prefix(1);
    while (!text.empty() && blank(text.back())) text.remove_suffix(1);
    return text;
}

} // namespace

bool LogLines::fill() {
    buffer_.resize(pieceSize);
    stream_.read(buffer_.data(), static_cast<std::streamsize>(pieceSize));
    buffer_.resize(static_cast<std::size_t>(stream_.gcount()));
    at_ = 0;
    if (buffer_.empty()) return false;
    sawZero_ = sawZero_ || buffer_.find('\0') != std::string::npos;
    if (end_ == 0) {
        if (buffer_.starts_with("\xEF\xBB\xBF")) at_ = 3;
        const bool carriage = buffer_.find('\n') == std::string::npos && buffer_.find('\r') != std::string::npos;
        end_ = carriage ? '\r' : '\n';
    }
    return true;
}

void LogLines::keep(std::string_view part) {
    pending_ = true;
    length_ += part.size();
    if (line_.size() + part.size() > limits::logLine) {
        tooLong_ = true;
        line_.clear();
    } else if (!tooLong_) {
        line_.append(part);
    }
}

bool LogLines::finish(LogLine& line) {
    pending_ = false;
    if (!tooLong_ && line_.ends_with('\r')) line_.pop_back();
    line = {++number_, tooLong_ ? std::string_view() : std::string_view(line_), tooLong_};
    return true;
}

bool LogLines::next(LogLine& line) {
    line_.clear();
    tooLong_ = false;
    if (length_ > limits::passedOver) return false;
    length_ = 0;
    const bool begun = number_ > 0;
    for (;;) {
        if (length_ > limits::passedOver) return finish(line);
        if (at_ >= buffer_.size() && !fill()) return pending_ && finish(line);
        if (sawZero_ && !begun) return false; // no text at all
        const char* begin = buffer_.data() + at_;
        const std::size_t left = buffer_.size() - at_;
        const auto* found = static_cast<const char*>(std::memchr(begin, end_, left));
        const std::size_t length = found ? static_cast<std::size_t>(found - begin) : left;
        keep({begin, length});
        at_ += found ? length + 1 : length;
        if (found) return finish(line);
    }
}

// One row as libcsv reads it.
struct CellSplitter::Quoted {
    csv_parser parser{};
    std::vector<std::string> cells;
    std::size_t count = 0;

    explicit Quoted(char delimiter) {
        require(csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI) == 0, "the CSV reader cannot be set up");
        csv_set_delim(&parser, static_cast<unsigned char>(delimiter));
    }
    ~Quoted() { csv_free(&parser); }
    Quoted(const Quoted&) = delete;
    Quoted& operator=(const Quoted&) = delete;

    static void onCell(void* text, std::size_t length, void* self) {
        auto& row = *static_cast<Quoted*>(self);
        if (row.count == row.cells.size()) row.cells.emplace_back();
        row.cells[row.count++].assign(static_cast<const char*>(text), length);
    }
    static void onRow(int, void*) {}

    bool read(std::string_view line) {
        count = 0;
        const bool all = csv_parse(&parser, line.data(), line.size(), &onCell, &onRow, this) == line.size();
        if (all && csv_fini(&parser, &onCell, &onRow, this) == 0) return true;
        const unsigned char delimiter = csv_get_delim(&parser);
        csv_free(&parser);
        require(csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI) == 0, "the CSV reader cannot be set up");
        csv_set_delim(&parser, delimiter);
        return false;
    }
};

CellSplitter::CellSplitter(char delimiter) : delimiter_(delimiter), quoted_(std::make_unique<Quoted>(delimiter)) {}
CellSplitter::~CellSplitter() = default;

bool CellSplitter::split(std::string_view line, std::vector<std::string_view>& cells) {
    cells.clear();
    if (std::memchr(line.data(), '"', line.size())) {
        if (!quoted_->read(line)) return false;
        for (std::size_t i = 0; i < quoted_->count; ++i) cells.push_back(trimmed(quoted_->cells[i]));
        return true;
    }
    for (;;) {
        const auto end = line.find(delimiter_);
        cells.push_back(trimmed(line.substr(0, end)));
        if (end == std::string_view::npos) return true;
        line.remove_prefix(end + 1);
    }
}

} // namespace winterlarder::exchange
