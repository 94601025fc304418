// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json/json_tree.h"

#include <algorithm>
#include <charconv>
#include <fmt/format.h>
#include <unordered_map>
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wconversion"
#include <rapidjson/error/en.h>
#include <rapidjson/reader.h>
#pragma GCC diagnostic pop

namespace winterlarder::exchange {

namespace {

// The bytes of a text, counted as they are taken; a reader sees the end as a zero byte.
class ByteStream {
public:
    using Ch = char;
    explicit ByteStream(std::string_view text) : text_(text) {}
    char Peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
    char Take() { return at_ < text_.size() ? text_[at_++] : '\0'; }
    std::size_t Tell() const { return at_; }
    char* PutBegin() { return nullptr; }
    void Put(char) {}
    void Flush() {}
    std::size_t PutEnd(char*) { return 0; }

private:
    std::string_view text_;
    std::size_t at_ = 0;
};

class Lines {
public:
    Lines(std::string_view text, int firstLine) : firstLine_(firstLine), starts_{0} {
        for (std::size_t i = 0; i < text.size(); ++i)
            if (text[i] == '\n') starts_.push_back(i + 1);
    }
    Position position(std::size_t offset) const {
        const auto next = std::upper_bound(starts_.begin(), starts_.end(), offset);
        const auto line = next - starts_.begin() - 1;
        return {firstLine_ + static_cast<int>(line),
                static_cast<int>(offset - starts_[static_cast<std::size_t>(line)]) + 1};
    }

private:
    int firstLine_;
    std::vector<std::size_t> starts_;
};

constexpr const char* tooLargeDetail = "the number is too large";
constexpr const char* tooLargeRemedy = "a number below 1.8e308";

// A number out of a double's range is too small for it, and so nothing, rather than too large.
bool vanishes(std::string_view digits) {
    long double number = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    if (read.ec == std::errc()) return number > -1 && number < 1;
    return digits.find("e-") != std::string_view::npos || digits.find("E-") != std::string_view::npos;
}

// Builds the tree from the reader's events. A token begins at the first byte after the previous one that is neither
// white space nor a comma or colon.
class TreeBuilder {
public:
    TreeBuilder(std::string_view text, const ByteStream& stream, const Lines& lines, std::string file)
        : text_(text), stream_(stream), lines_(lines), file_(std::move(file)) {}

    bool Null() {
        return scalar([](JsonValue&) {});
    }
    bool Bool(bool flag) {
        return scalar([flag](JsonValue& value) { value.kind = JsonValue::Kind::Flag, value.flag = flag; });
    }
    bool String(const char* text, rapidjson::SizeType length, bool) {
        return scalar([=](JsonValue& value) { value.kind = JsonValue::Kind::Text, value.text.assign(text, length); });
    }
    bool RawNumber(const char*, rapidjson::SizeType, bool) {
        const std::size_t start = tokenStart();
        const std::string_view digits = text_.substr(start, stream_.Tell() - start);
        return scalar([&](JsonValue& value) {
            value.kind = JsonValue::Kind::Number;
            const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value.number);
            if (read.ec == std::errc::result_out_of_range && !vanishes(digits)) tooLarge(value.position);
        });
    }
    // Never called: numbers come as text.
    bool Int(int) { return false; }
    bool Uint(unsigned) { return false; }
    bool Int64(std::int64_t) { return false; }
    bool Uint64(std::uint64_t) { return false; }
    bool Double(double) { return false; }

    bool StartObject() { return open(JsonValue::Kind::Object); }
    bool StartArray() { return open(JsonValue::Kind::List); }
    bool EndObject(rapidjson::SizeType) { return close(); }
    bool EndArray(rapidjson::SizeType) { return close(); }
    bool Key(const char* name, rapidjson::SizeType length, bool) {
        keys_.push_back({std::string(name, length), lines_.position(tokenStart()), {}});
        end_ = stream_.Tell();
        return true;
    }

    std::optional<JsonValue> root;
    Problems problems;
    bool tooDeep = false, tooMany = false;

    //! Where the token after the last one told begins.
    std::size_t tokenStart() const {
        const std::size_t start = text_.find_first_not_of(" \t\r\n,:", end_);
        return start == std::string_view::npos ? text_.size() : start;
    }

private:
    void tooLarge(Position position) {
        problems.push_back(
            {ProblemKind::Input, {file_, position.line, position.column}, tooLargeDetail, tooLargeRemedy});
    }
    template <class Fill> bool scalar(Fill fill) {
        JsonValue value;
        value.position = lines_.position(tokenStart());
        fill(value);
        end_ = stream_.Tell();
        place(std::move(value));
        tooMany = ++values_ > limits::jsonValues;
        return !tooMany;
    }
    bool open(JsonValue::Kind kind) {
        tooDeep = open_.size() >= limits::jsonNesting;
        tooMany = ++values_ > limits::jsonValues;
        if (tooDeep || tooMany) return false;
        JsonValue value;
        value.kind = kind;
        value.position = lines_.position(tokenStart());
        end_ = tokenStart() + 1; // the reader tells of brackets before it takes them
        open_.push_back(std::move(value));
        keysSeen_.emplace_back();
        return true;
    }
    bool close() {
        JsonValue value = std::move(open_.back());
        open_.pop_back();
        keysSeen_.pop_back();
        value.items.shrink();
        value.members.shrink();
        end_ = tokenStart() + 1;
        place(std::move(value));
        return true;
    }
    void place(JsonValue value) {
        if (open_.empty()) root = std::move(value);
        else if (open_.back().kind == JsonValue::Kind::List) open_.back().items.push_back(std::move(value));
        else addMember(open_.back(), std::move(value));
    }
    void addMember(JsonValue& object, JsonValue value) {
        JsonMember member = std::move(keys_.back());
        keys_.pop_back();
        if (const auto earlier = whereSeen(object, member); earlier) {
            problems.push_back({ProblemKind::Input,
                                {file_, member.position.line, member.position.column},
                                fmt::format("the key {} is given twice, first at {}:{}", inQuotes(member.name),
                                            earlier->line, earlier->column),
                                "each key once"});
            return;
        }
        member.value = std::move(value);
        object.members.push_back(std::move(member));
    }

    // Where the key stood before in the object. A few keys are looked through; many are kept by name.
    std::optional<Position> whereSeen(const JsonValue& object, const JsonMember& member) {
        constexpr std::size_t few = 24;
        auto& seen = keysSeen_.back();
        if (object.members.size() < few) {
            for (const JsonMember& earlier : object.members)
                if (earlier.name == member.name) return earlier.position;
            return std::nullopt;
        }
        if (seen.empty())
            for (const JsonMember& earlier : object.members) seen.emplace(earlier.name, earlier.position);
        const auto [at, fresh] = seen.emplace(member.name, member.position);
        return fresh ? std::nullopt : std::optional(at->second);
    }

    std::string_view text_;
    const ByteStream& stream_;
    const Lines& lines_;
    std::string file_;
    std::size_t end_ = 0; // of the previous token
    std::size_t values_ = 0;
    std::vector<JsonValue> open_;
    std::vector<std::unordered_map<std::string, Position>> keysSeen_; // of each that is open
    std::vector<JsonMember> keys_;                                    // of objects still open
};

std::string remedy(rapidjson::ParseErrorCode code) {
    using namespace rapidjson;
    switch (code) {
    case kParseErrorDocumentEmpty: return "one JSON object that holds the case";
    case kParseErrorDocumentRootNotSingular: return "one JSON object and nothing after it";
    case kParseErrorStringInvalidEncoding: return "text in UTF-8";
    case kParseErrorValueInvalid: return "a number, a text in double quotes, true, false, a list or an object";
    case kParseErrorObjectMissName: return "a key in double quotes (no comma after the last member)";
    default: return "well-formed JSON (RFC 8259)";
    }
}

std::string sentence(const char* message) {
    std::string text = message;
    while (!text.empty() && text.back() == '.') text.pop_back();
    return "this is not JSON: " + text;
}

constexpr std::string_view numberBytes = "+-.0123456789eE";

// Numbers beyond a double are a fault of their own; a 0 of the same length in their place lets the reading go on.
void blankNumber(std::string& text, std::size_t offset) {
    std::size_t end = text.find_first_not_of(numberBytes, offset);
    if (end == std::string::npos) end = text.size();
    std::fill(text.begin() + static_cast<std::ptrdiff_t>(offset), text.begin() + static_cast<std::ptrdiff_t>(end), ' ');
    text[offset] = '0';
}

constexpr unsigned parseFlags =
    rapidjson::kParseIterativeFlag | rapidjson::kParseValidateEncodingFlag | rapidjson::kParseNumbersAsStringsFlag;
constexpr int mostHugeNumbers = 50;

} // namespace

std::string_view name(JsonValue::Kind kind) {
    switch (kind) {
    case JsonValue::Kind::Null: return "null";
    case JsonValue::Kind::Flag: return "true or false";
    case JsonValue::Kind::Number: return "a number";
    case JsonValue::Kind::Text: return "a text";
    case JsonValue::Kind::List: return "a list";
    case JsonValue::Kind::Object: return "an object";
    }
    return "";
}

std::string inQuotes(std::string_view text) {
    std::string result = "\"";
    for (char c : text.substr(0, 60)) result += (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) ? '?' : c;
    // A cut in the middle of a character leaves no half of it behind.
    if (text.size() > 60) {
        while (result.size() > 1 && (static_cast<unsigned char>(result.back()) & 0xC0) == 0x80) result.pop_back();
        if (result.size() > 1 && static_cast<unsigned char>(result.back()) >= 0xC0) result.pop_back();
        result += "...";
    }
    return result + '"';
}

JsonReading readJson(std::string_view given, const std::string& file, int firstLine) {
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    std::string_view text = given.substr(0, 3) == byteOrderMark ? given.substr(3) : given;
    std::string blanked; // a copy, where there is anything to blank
    const Lines lines(text, firstLine);
    JsonReading reading;
    const auto fault = [&](std::size_t offset, std::string detail, std::string remedyText) {
        const Position position = lines.position(offset);
        reading.problems.push_back(
            {ProblemKind::Input, {file, position.line, position.column}, std::move(detail), std::move(remedyText)});
    };
    for (int huge = 0;; ++huge) {
        ByteStream stream(text);
        TreeBuilder builder(text, stream, lines, file);
        rapidjson::GenericReader<rapidjson::UTF8<>, rapidjson::UTF8<>> reader;
        const auto result = reader.Parse<parseFlags>(stream, builder);
        if (result.Code() == rapidjson::kParseErrorNumberTooBig && huge < mostHugeNumbers) {
            fault(result.Offset(), tooLargeDetail, tooLargeRemedy);
            if (blanked.empty()) blanked = text;
            blankNumber(blanked, result.Offset());
            text = blanked;
            continue;
        }
        reading.problems.insert(reading.problems.end(), builder.problems.begin(), builder.problems.end());
        if (builder.tooDeep)
            fault(builder.tokenStart(), fmt::format("nested deeper than {} levels", limits::jsonNesting),
                  "a case as described in the manual");
        else if (builder.tooMany)
            fault(builder.tokenStart(), "there are too many values", fmt::format("at most {}", limits::jsonValues));
        else if (result.IsError())
            fault(result.Code() == rapidjson::kParseErrorValueInvalid ? builder.tokenStart() : result.Offset(),
                  sentence(rapidjson::GetParseError_En(result.Code())), remedy(result.Code()));
        else if (stream.Tell() < text.size()) fault(stream.Tell(), "a zero byte in the text", "text in UTF-8");
        else reading.value = std::move(builder.root);
        return reading;
    }
}

} // namespace winterlarder::exchange
