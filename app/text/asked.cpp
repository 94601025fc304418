// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/asked.h"

namespace winterlarder::text {

namespace {

// Characters nobody writes: of the private range of Unicode. One opens a number and says which, one closes it.
constexpr char16_t firstOpening = 0xE100;
constexpr char16_t closing = 0xE0FF;

std::optional<AskedNumber> openedBy(QChar letter) {
    const int number = letter.unicode() - firstOpening;
    return number >= 0 && number < askedNumbers ? std::optional(static_cast<AskedNumber>(number)) : std::nullopt;
}

} // namespace

QString plainly(AskedNumber /*number*/, const QString& text) { return text; }

QString askably(AskedNumber number, const QString& text) {
    if (text.isEmpty()) return text;
    return QChar(static_cast<char16_t>(firstOpening + static_cast<int>(number))) + text + QChar(closing);
}

std::vector<SentencePart> partsOf(const QString& sentence) {
    std::vector<SentencePart> parts;
    SentencePart part;
    const auto close = [&] {
        if (!part.text.isEmpty()) parts.push_back(part);
        part = {};
    };
    for (const QChar letter : sentence) {
        if (const auto number = openedBy(letter)) {
            close();
            part.number = number;
        } else if (letter == QChar(closing)) {
            close();
        } else {
            part.text += letter;
        }
    }
    close();
    return parts;
}

} // namespace winterlarder::text
