// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <unistd.h>

//! What tests of the book share: the shipped data, a folder of their own in memory, and short ways to open and edit.
namespace winterlarder::book::support {

//! The shipped reference data, read once, never changed.
inline const ReferenceData& shipped() {
    static const ReferenceData data = [] {
        auto loaded = loadReference(SHARED_FOLDER);
        if (!loaded) throw std::runtime_error(describe(loaded.problems().front()));
        return std::move(loaded).value();
    }();
    return data;
}

//! A new folder, on the memory disk unless said otherwise, gone with its owner.
class BookFolder {
public:
    explicit BookFolder(const std::string& where = "/dev/shm") {
        std::string name = where + "/winterlarder-test-XXXXXX";
        if (!::mkdtemp(name.data())) throw std::runtime_error("no folder for the test in " + where);
        path_ = name;
    }
    ~BookFolder() {
        std::error_code ignored;
        std::filesystem::permissions(path_, std::filesystem::perms::owner_all, ignored);
        std::filesystem::remove_all(path_, ignored);
    }
    BookFolder(const BookFolder&) = delete;
    BookFolder& operator=(const BookFolder&) = delete;
    std::filesystem::path operator/(const std::string& name) const { return path_ / name; }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

inline Timestamp at(const char* iso) {
    const auto time = Timestamp::parse(iso);
    if (!time) throw std::runtime_error(std::string("not a time: ") + iso);
    return *time;
}
inline Date day(const char* iso) {
    const auto date = Date::parse(iso);
    if (!date) throw std::runtime_error(std::string("not a date: ") + iso);
    return *date;
}
inline const Timestamp morning = at("2026-09-12T08:00:00Z");
inline Timestamp later(std::int64_t seconds) { return {morning.seconds + seconds}; }

inline Opening opening(OpenFor purpose = OpenFor::Writing) { return {{"Ada", "test machine", morning}, purpose}; }

//! The value, or a thrown failure that names the problem.
template <class T> T must(Outcome<T> outcome) {
    if (outcome) return std::move(outcome).value();
    std::string all;
    for (const auto& problem : outcome.problems()) all += describe(problem) + "\n";
    throw std::runtime_error(all);
}

inline Book newBook(const std::filesystem::path& file) { return must(Book::create(file, shipped(), opening())); }
inline Book openBook(const std::filesystem::path& file, OpenFor purpose = OpenFor::Writing) {
    return must(Book::open(file, shipped(), opening(purpose)));
}
//! Far enough after the last that nothing merges.
inline Applied edit(Book& book, const SingleEdit& single) { return must(book.apply(Edit(single), morning, "Ada")); }

inline Yard orchard() {
    Yard yard;
    yard.name = "Orchard";
    yard.site.where = std::string("ca-halifax");
    yard.site.elevationM = 145;
    return yard;
}
inline HiveRecord twoDeeps() {
    HiveRecord hive;
    hive.boxes = {BoxRecord{std::string("langstroth-deep"), {}, false},
                  BoxRecord{std::string("langstroth-deep"), {}, false}};
    return hive;
}
inline Colony colonyIn(YardId yard, std::string name) {
    Colony colony;
    colony.yard = yard;
    colony.name = std::move(name);
    colony.hive = twoDeeps();
    return colony;
}
inline CombRecord comb(double capped, std::optional<double> brood = {}) {
    CombRecord record;
    record.capped = capped;
    record.brood = brood;
    return record;
}
inline Look lookAt(ColonyId colony, Date date) {
    Look look{.colony = colony, .date = date};
    look.bees.coveredCombs = 8.5;
    look.combs = std::vector<CombRecord>{comb(0.7), comb(0.35, 0.3), comb(0.4)};
    return look;
}
inline Weighing weighingOf(ColonyId colony, Date date, double gross) {
    return {.colony = colony, .weighing = {date, ScaleReading{kilograms(gross)}}};
}

inline std::string bytesOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    return all.str();
}
inline void writeBytes(const std::filesystem::path& file, const std::string& bytes) {
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (!out) throw std::runtime_error("cannot write " + file.string());
}

} // namespace winterlarder::book::support
