// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/csv_table.h"

#include "support/as_number.h"
#include "support/require.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <csv.h>
#include <fmt/format.h>
#include <fstream>
#include <iterator>
#include <unordered_set>

namespace winterlarder {

namespace {

using Row = std::vector<CsvCell>;

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(" \t") - first + 1));
}

// Feeds the text to libcsv piece by piece, so that the start of every cell is known.
class RowReader {
public:
    RowReader(std::string_view text, std::string file, char delimiter, int firstLine)
        : text_(text), file_(std::move(file)), delimiter_(delimiter), line_(firstLine), cellLine_(firstLine) {
        require(csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI) == 0, "the CSV reader cannot be set up");
        csv_set_delim(&parser_, static_cast<unsigned char>(delimiter));
    }
    ~RowReader() { csv_free(&parser_); }
    RowReader(const RowReader&) = delete;
    RowReader& operator=(const RowReader&) = delete;

    Outcome<std::vector<Row>> rows() {
        for (std::size_t from = 0; from < text_.size();) {
            const std::size_t to = endOfPiece(from);
            if (!feed(from, to)) return fault();
            from = to;
        }
        if (csv_fini(&parser_, &RowReader::onCell, &RowReader::onRow, this) != 0) return fault();
        return std::move(rows_);
    }

private:
    std::size_t endOfPiece(std::size_t from) const {
        std::size_t end = from;
        while (end < text_.size() && !isEnd(text_[end])) ++end;
        return std::min(end + 1, text_.size());
    }

    bool feed(std::size_t from, std::size_t to) {
        const std::size_t wanted = to - from;
        const std::size_t done =
            csv_parse(&parser_, text_.data() + from, wanted, &RowReader::onCell, &RowReader::onRow, this);
        if (done != wanted) {
            faultColumn_ = static_cast<int>(from + done - lineStart_) + 1;
            return false;
        }
        if (text_[to - 1] == '\n') {
            ++line_;
            lineStart_ = to;
        }
        if (isEnd(text_[to - 1]) && !insideQuotes()) startCell(to);
        return true;
    }

    bool isEnd(char c) const { return c == delimiter_ || c == '\n' || c == '\r'; }
    // A delimiter or line end inside quotation marks ends no cell.
    bool insideQuotes() const { return parser_.quoted != 0; }

    void startCell(std::size_t at) {
        cellLine_ = line_;
        cellColumn_ = static_cast<int>(at - lineStart_) + 1;
    }

    Problem fault() const {
        const bool open = faultColumn_ == 0;
        return {ProblemKind::Input,
                {file_, open ? cellLine_ : line_, open ? cellColumn_ : faultColumn_},
                open ? "a quotation mark is never closed" : "a quotation mark stands where none may stand",
                "quote the whole cell and double each quotation mark inside it"};
    }

    static void onCell(void* text, std::size_t length, void* self) {
        static_cast<RowReader*>(self)->endCell(std::string_view(static_cast<const char*>(text), length));
    }
    static void onRow(int, void* self) { static_cast<RowReader*>(self)->endRow(); }

    void endCell(std::string_view text) { row_.push_back({std::string(text), cellLine_, cellColumn_}); }
    void endRow() {
        const std::size_t cells = row_.size();
        rows_.push_back(std::move(row_));
        row_ = {};
        row_.reserve(cells);
    }

    std::string_view text_;
    std::string file_;
    char delimiter_;
    csv_parser parser_{};
    std::vector<Row> rows_;
    Row row_;
    std::size_t lineStart_ = 0;
    int line_;
    int cellLine_;
    int cellColumn_ = 1;
    int faultColumn_ = 0;
};

void checkHeader(const Row& header, const std::string& file, Problems& problems) {
    if (header.size() > limits::tableColumns) {
        problems.push_back({ProblemKind::Input,
                            {file, header.front().line, 1},
                            fmt::format("the table has {} columns", header.size()),
                            fmt::format("at most {}", limits::tableColumns)});
        return;
    }
    std::unordered_set<std::string_view> seen;
    for (std::size_t i = 0; i < header.size(); ++i) {
        const Place place{file, header[i].line, header[i].column};
        if (header[i].text.empty())
            problems.push_back({ProblemKind::Input, place, "a column has no name", "name every column"});
        else if (!seen.insert(header[i].text).second)
            problems.push_back({ProblemKind::Input, place, fmt::format("column {} is there twice", header[i].text),
                                "name every column once"});
    }
}

void checkLength(const Row& row, std::size_t columns, const std::string& file, Problems& problems) {
    if (row.size() == columns) return;
    const CsvCell& at = row.size() > columns ? row[columns] : row.front();
    problems.push_back({ProblemKind::Input,
                        {file, at.line, at.column},
                        fmt::format("the row has {} cells", row.size()),
                        fmt::format("the header names {}", columns)});
}

// Takes the lines that open with # off the text.
std::vector<std::string> takeDescription(std::string_view& text) {
    std::vector<std::string> lines;
    while (text.starts_with('#')) {
        const auto end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(1, end - 1);
        if (line.ends_with('\r')) line.remove_suffix(1);
        lines.push_back(trimmed(line));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

Problems emptyTable(const std::string& file, int line) {
    Problem problem;
    problem.place = {file, line, 1};
    problem.detail = "the table is empty";
    problem.remedy = "a header row that names the columns";
    return {problem};
}

} // namespace

Outcome<CsvTable> CsvTable::parse(std::string_view text, std::string file, char delimiter) {
    CsvTable table;
    table.file_ = std::move(file);
    if (text.size() > limits::tableText.bytes) return limits::tooLarge({table.file_}, limits::tableText);
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    table.description_ = takeDescription(text);
    const int firstLine = static_cast<int>(table.description_.size()) + 1;
    auto rows = RowReader(text, table.file_, delimiter, firstLine).rows();
    if (!rows) return rows.problems();
    if (rows->empty()) return emptyTable(table.file_, firstLine);

    Problems problems;
    table.header_ = std::move(rows->front());
    checkHeader(table.header_, table.file_, problems);
    if (table.header_.size() > limits::tableColumns) return problems;
    table.cells_.reserve((rows->size() - 1) * table.header_.size());
    for (std::size_t i = 1; i < rows->size(); ++i) {
        Row& row = (*rows)[i];
        checkLength(row, table.header_.size(), table.file_, problems);
        std::move(row.begin(), row.end(), std::back_inserter(table.cells_));
    }
    if (!problems.empty()) return problems;
    return table;
}

Outcome<CsvTable> CsvTable::read(const std::filesystem::path& path, char delimiter) {
    auto text = textOfFile(path);
    if (!text) return text.problems();
    return parse(*text, path.string(), delimiter);
}

std::optional<std::size_t> CsvTable::column(std::string_view name) const {
    for (std::size_t i = 0; i < header_.size(); ++i)
        if (header_[i].text == name) return i;
    return std::nullopt;
}

const CsvCell& CsvTable::cell(std::size_t row, std::size_t column) const {
    require(row < rows() && column < header_.size(), "{} has no cell in row {}, column {}", file_, row, column);
    return cells_[row * header_.size() + column];
}

const CsvCell& CsvTable::cell(std::size_t row, std::string_view name) const {
    const auto at = column(name);
    require(at.has_value(), "{} has no column {}", file_, name);
    return cell(row, *at);
}

std::optional<double> numberFrom(std::string_view text) {
    const auto value = asNumber<double>(text);
    return value && std::isfinite(*value) ? value : std::nullopt;
}

Outcome<std::string> textOfStream(std::istream& stream, const std::string& file, const limits::TextSize& most) {
    std::string text;
    std::array<char, 65536> piece{};
    while (stream.read(piece.data(), piece.size()) || stream.gcount() > 0) {
        text.append(piece.data(), static_cast<std::size_t>(stream.gcount()));
        if (text.size() > most.bytes) return limits::tooLarge({file}, most);
    }
    if (stream.bad()) return Problem{ProblemKind::File, {file}, "cannot be read", "a file that can be read"};
    return text;
}

Outcome<std::string> textOfFile(const std::filesystem::path& path, const limits::TextSize& most) {
    const Place place{path.string()};
    std::error_code none;
    if (std::filesystem::is_directory(path, none))
        return Problem{ProblemKind::File, place, "this is a folder", "name a file"};
    std::ifstream stream(path, std::ios::binary);
    if (!stream) return Problem{ProblemKind::File, place, "cannot be opened", "a file that can be read"};
    return textOfStream(stream, path.string(), most);
}

} // namespace winterlarder
