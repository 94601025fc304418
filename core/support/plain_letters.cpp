// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/plain_letters.h"

#include "support/letters.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace winterlarder {

namespace {

struct Group {
    const char* plain;
    const char* letters; //!< UTF-8
};

constexpr Group accented[] = {
    {"a", "àáâãäåāăąǎạảấầẩẫậắằẳẵặÀÁÂÃÄÅĀĂĄǍẠẢẤẦẨẪẬẮẰẲẴẶ"},
    {"ae", "æǽÆǼ"},
    {"c", "çćĉċčÇĆĈĊČ"},
    {"d", "ďđðĎĐÐ"},
    {"e", "èéêëēĕėęěẹẻẽếềểễệəÈÉÊËĒĔĖĘĚẸẺẼẾỀỂỄỆƏ"},
    {"g", "ĝğġģǧĜĞĠĢǦ"},
    {"h", "ĥħḥḩĤĦḤḨ"},
    {"i", "ìíîïĩīĭįıǐỉịÌÍÎÏĨĪĬĮİǏỈỊ"},
    {"ij", "ĳĲ"},
    {"j", "ĵĴ"},
    {"k", "ķĸǩḳĶǨḲ"},
    {"l", "ĺļľŀłḷĹĻĽĿŁḶ"},
    {"n", "ñńņňŉŋǹṇÑŃŅŇŊǸṆ"},
    {"o", "òóôõöøōŏőơǒọỏốồổỗộớờởỡợÒÓÔÕÖØŌŎŐƠǑỌỎỐỒỔỖỘỚỜỞỠỢ"},
    {"oe", "œŒ"},
    {"r", "ŕŗřṛŔŖŘṚ"},
    {"s", "śŝşšșṣŚŜŞŠȘṢ"},
    {"ss", "ßẞ"},
    {"t", "ţťŧțṭŢŤŦȚṬ"},
    {"th", "þÞ"},
    {"u", "ùúûüũūŭůűųưǔụủứừửữựÙÚÛÜŨŪŬŮŰŲƯǓỤỦỨỪỬỮỰ"},
    {"w", "ŵẁẃẅŴẀẂẄ"},
    {"y", "ýÿŷȳỳỵỷỹÝŶŸȲỲỴỶỸ"},
    {"z", "źżžẓŹŻŽẒ"},
    {"", "'`´‘’ʻʼʹ"},
};

constexpr Group twoLetters[] = {{"ae", "äÄ"}, {"oe", "öøÖØ"}, {"ue", "üÜ"}, {"aa", "åÅ"}};

constexpr std::uint32_t noLetter = 0xFFFFFFFF;

// The letter at the start of the text, which it takes off; noLetter for a byte that begins none.
std::uint32_t takeLetter(std::string_view& text) {
    const auto first = static_cast<unsigned char>(text.front());
    const std::size_t length = first < 0x80         ? 1
                               : first >> 5 == 0x6  ? 2
                               : first >> 4 == 0xE  ? 3
                               : first >> 3 == 0x1E ? 4
                                                    : 0;
    std::uint32_t letter = length < 2 ? first : first & (0x7FU >> length);
    bool right = length > 0 && length <= text.size();
    for (std::size_t i = 1; right && i < length; ++i) {
        const auto next = static_cast<unsigned char>(text[i]);
        right = (next & 0xC0) == 0x80;
        letter = letter << 6 | (next & 0x3FU);
    }
    text.remove_prefix(right ? length : 1);
    return right ? letter : noLetter;
}

using Letters = std::vector<std::pair<std::uint32_t, const char*>>; // by letter

template <std::size_t N> Letters lettersOf(const Group (&groups)[N]) {
    Letters letters;
    for (const Group& group : groups)
        for (std::string_view rest = group.letters; !rest.empty();) letters.emplace_back(takeLetter(rest), group.plain);
    std::sort(letters.begin(), letters.end());
    return letters;
}

const char* find(const Letters& letters, std::uint32_t letter) {
    const auto found = std::lower_bound(letters.begin(), letters.end(), letter,
                                        [](const auto& row, std::uint32_t wanted) { return row.first < wanted; });
    return found != letters.end() && found->first == letter ? found->second : nullptr;
}

constexpr bool isCombining(std::uint32_t letter) { return letter >= 0x300 && letter <= 0x36F; }
// Signs and blanks of Latin-1 and of general punctuation.
constexpr bool partsWords(std::uint32_t letter) {
    return letter < 0xC0 || letter == 0xD7 || letter == 0xF7 || (letter >= 0x2000 && letter <= 0x206F);
}

class PlainText {
public:
    void sign() { blank_ = !text_.empty(); }
    void add(std::string_view letters) {
        if (letters.empty()) return;
        if (std::exchange(blank_, false)) text_ += ' ';
        text_ += letters;
    }
    std::string taken() { return std::move(text_); }

private:
    std::string text_;
    bool blank_ = false;
};

void addAscii(PlainText& plain, char letter, const Letters& known) {
    letter = lower(letter);
    if (isLetter(letter) || isDigit(letter)) return plain.add({&letter, 1});
    if (!find(known, static_cast<unsigned char>(letter))) plain.sign();
}

std::string written(std::string_view text, const Letters* first, const Letters& then) {
    PlainText plain;
    while (!text.empty()) {
        const std::string_view before = text;
        const std::uint32_t letter = takeLetter(text);
        if (letter == noLetter || isCombining(letter)) continue;
        const char* known = first ? find(*first, letter) : nullptr;
        if (letter < 0x80) addAscii(plain, static_cast<char>(letter), then);
        else if (known || (known = find(then, letter))) plain.add(known);
        else if (partsWords(letter)) plain.sign();
        else plain.add(before.substr(0, before.size() - text.size()));
    }
    return plain.taken();
}

const Letters& accentedLetters() {
    static const Letters letters = lettersOf(accented);
    return letters;
}

} // namespace

std::string plainLetters(std::string_view text) { return written(text, nullptr, accentedLetters()); }

std::string spelledOut(std::string_view text) {
    static const Letters letters = lettersOf(twoLetters);
    return written(text, &letters, accentedLetters());
}

std::vector<std::string> plainWords(std::string_view text) {
    std::vector<std::string> words;
    const std::string plain = plainLetters(text);
    for (std::size_t at = 0; at < plain.size();) {
        const std::size_t end = std::min(plain.find(' ', at), plain.size());
        words.push_back(plain.substr(at, end - at));
        at = end + 1;
    }
    return words;
}

} // namespace winterlarder
