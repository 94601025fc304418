// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/raw_file.h"

#include "book/form/row.h"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <fstream>
#include <string>
#include <string_view>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <vector>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;

constexpr std::size_t pieceSize = 1 << 20;
constexpr std::uint32_t smallestPage = 512, largestPage = 65536, usualPage = 4096;

std::uint32_t numberAt(std::string_view bytes, std::size_t at) {
    return static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[at]) << 8 |
                                      static_cast<unsigned char>(bytes[at + 1]));
}

bool definesTable(std::string_view text) {
    const std::string_view definition = "CREATE TABLE \"";
    for (auto at = text.find(definition); at != text.npos; at = text.find(definition, at + 1)) {
        const auto rest = text.substr(at + definition.size());
        const auto& all = tables();
        if (std::any_of(all.begin(), all.end(),
                        [&](const Table& table) { return rest.starts_with(table.name + "\""); }))
            return true;
    }
    return false;
}

//! Whether the first bytes of a page are those of a table's or index's page.
bool looksLikePage(std::string_view start, std::uint32_t size) {
    if (start.size() < 8) return false;
    const auto type = start[0];
    if (type != 2 && type != 5 && type != 10 && type != 13) return false;
    const std::uint32_t header = type <= 5 ? 12 : 8, firstFree = numberAt(start, 1), cells = numberAt(start, 3);
    const std::uint32_t content = numberAt(start, 5) == 0 ? largestPage : numberAt(start, 5);
    return firstFree < size && header + 2 * cells <= content && content <= size;
}

//! The share of page starts that look like ones; nothing where there are too few to tell.
double shareOfPages(const RawFile& file, std::uint32_t size) {
    constexpr std::uint64_t few = 16, enough = 4000;
    const auto pages = std::min(file.size() / size, enough);
    if (pages < few) return 0;
    std::uint64_t alike = 0;
    for (std::uint64_t page = 1; page < pages; ++page) alike += looksLikePage(file.bytes(page * size, 8), size);
    return static_cast<double>(alike) / static_cast<double>(pages - 1);
}

std::uint32_t guessedPageSize(const RawFile& file) {
    std::vector<std::pair<std::uint32_t, double>> shares;
    double best = 0;
    for (auto size = smallestPage; size <= largestPage; size *= 2) {
        shares.emplace_back(size, shareOfPages(file, size));
        best = std::max(best, shares.back().second);
    }
    if (best == 0) return usualPage;
    const double nearly =
        0.75 * best; // at half the true size about half of the starts look like ones, at twice as many as at it
    return std::find_if(shares.begin(), shares.end(), [&](const auto& share) { return share.second >= nearly; })->first;
}

} // namespace

RawFile::RawFile(const files::path& file) : descriptor_(::open(file.c_str(), O_RDONLY | O_CLOEXEC)) {
    struct stat found {};
    if (descriptor_ < 0 || ::fstat(descriptor_, &found) != 0)
        throw std::system_error(errno, std::generic_category(), file.string());
    size_ = static_cast<std::uint64_t>(found.st_size);
}

RawFile::~RawFile() {
    if (descriptor_ >= 0) ::close(descriptor_);
}

std::string RawFile::bytes(std::uint64_t at, std::size_t most) const {
    std::string bytes(most, '\0');
    std::size_t got = 0;
    while (got < most) {
        const auto count = ::pread(descriptor_, bytes.data() + got, most - got, static_cast<off_t>(at + got));
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) throw std::system_error(errno, std::generic_category(), "the file cannot be read");
        if (count == 0) break;
        got += static_cast<std::size_t>(count);
    }
    bytes.resize(got);
    return bytes;
}

void RawFile::eachStretch(const std::function<bool(std::uint64_t, std::uint64_t)>& visit) const {
    for (std::uint64_t at = 0; at < size_;) {
        const auto begin = ::lseek(descriptor_, static_cast<off_t>(at), SEEK_DATA);
        if (begin < 0 && errno == ENXIO) return; // only a hole is left
        const auto end = begin < 0 ? begin : ::lseek(descriptor_, begin, SEEK_HOLE);
        if (end < 0) { // a file system that knows no holes
            visit(at, size_);
            return;
        }
        if (!visit(static_cast<std::uint64_t>(begin), static_cast<std::uint64_t>(end))) return;
        at = static_cast<std::uint64_t>(end);
    }
}

bool holdsTables(const RawFile& file) {
    constexpr std::size_t longestDefinition = 100;
    bool found = false;
    file.eachStretch([&](std::uint64_t begin, std::uint64_t end) {
        for (auto at = begin; at < end && !found; at += pieceSize)
            found = definesTable(file.bytes(at, pieceSize + longestDefinition));
        return !found;
    });
    return found;
}

std::uint32_t pageSizeOf(const RawFile& file) {
    const auto header = file.bytes(0, 18);
    if (header.size() == 18 && header.starts_with(std::string_view("SQLite format 3\0", 16))) {
        const auto said = numberAt(header, 16) == 1 ? largestPage : numberAt(header, 16);
        if (said >= smallestPage && (said & (said - 1)) == 0) return said;
    }
    return guessedPageSize(file);
}

void copySparse(const RawFile& file, const files::path& empty) {
    std::ofstream out(empty, std::ios::binary | std::ios::in);
    file.eachStretch([&](std::uint64_t begin, std::uint64_t end) {
        out.seekp(static_cast<std::streamoff>(begin));
        for (auto at = begin; at < end && out; at += pieceSize) {
            const auto piece = file.bytes(at, static_cast<std::size_t>(std::min<std::uint64_t>(pieceSize, end - at)));
            out.write(piece.data(), static_cast<std::streamsize>(piece.size()));
        }
        return out.good();
    });
    if (!out.flush()) throw std::system_error(errno, std::generic_category(), "the copy for salvage cannot be written");
    files::resize_file(empty, file.size());
}

} // namespace winterlarder::book
