#include "core/tables/cell_reading.h"

#include "core/base/enum_keys.h"
#include "core/tables/folded_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace chalk::tables {

namespace {

constexpr std::array<std::string_view, 2> kSignKeys{"point", "comma"};
constexpr std::array<std::string_view, 3> kOrderKeys{"ymd", "dmy", "mdy"};
constexpr int kMostWholeDigits = 7;
constexpr std::int64_t kMostHundredths = 100'000'000;
constexpr int kCentury = 100;
constexpr int kYearDigits = 4;

bool isDigit(char letter)
{
    return letter >= '0' && letter <= '9';
}

/// The number that all of the digits say; nothing for none, other letters or more than nine.
std::optional<int> numberOf(std::string_view digits)
{
    int number = 0;
    constexpr std::size_t kMostDigits = 9;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    const bool isWhole = read.ec == std::errc() && read.ptr == digits.data() + digits.size();
    return isWhole && digits.size() <= kMostDigits && isDigit(digits.front()) ? std::optional(number) : std::nullopt;
}

/// The digits before the decimals, without what parts thousands; nothing where the groups are not of three.
std::optional<std::string> wholeDigits(std::string_view text, DecimalSign sign)
{
    std::string digits;
    std::size_t sinceGroup = 0;
    bool isGrouped = false;
    for (const char letter : text) {
        const bool isThousands = letter == (sign == DecimalSign::Point ? ',' : '.') || letter == '\'' || letter == ' ';
        if (isThousands && !digits.empty() && (isGrouped ? sinceGroup == 3 : sinceGroup <= 3)) {
            isGrouped = true;
            sinceGroup = 0;
        } else if (isDigit(letter)) {
            digits += letter;
            ++sinceGroup;
        } else {
            return std::nullopt;
        }
    }
    return !digits.empty() && (!isGrouped || sinceGroup == 3) ? std::optional(digits) : std::nullopt;
}

/// Hundredths of decimals, rounded half up.
int decimalHundredths(std::string_view decimals)
{
    const auto digit = [decimals](std::size_t at) { return at < decimals.size() ? decimals[at] - '0' : 0; };
    return digit(0) * 10 + digit(1) + (digit(2) >= 5 ? 1 : 0);
}

/// A text that ends with letters, parted before them.
std::pair<std::string_view, std::string_view> splitSuffix(std::string_view text)
{
    std::size_t at = text.size();
    while (at > 0 && !isDigit(text[at - 1])) {
        --at;
    }
    return {trimmed(text.substr(0, at)), trimmed(text.substr(at))};
}

int fullYear(int year, base::Date today)
{
    const int thisYear = static_cast<int>(today.ymd().year());
    const int full = thisYear - thisYear % kCentury + year;
    return full > thisYear ? full - kCentury : full;
}

}  // namespace

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view kBlanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(kBlanks);
    return first == std::string_view::npos ? std::string_view() : text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

std::string_view keyOf(DecimalSign sign)
{
    return base::keyIn(kSignKeys, sign);
}

std::string_view keyOf(DateOrder order)
{
    return base::keyIn(kOrderKeys, order);
}

std::optional<DecimalSign> decimalSignOf(std::string_view key)
{
    return base::enumOf<DecimalSign>(kSignKeys, key);
}

std::optional<DateOrder> dateOrderOf(std::string_view key)
{
    return base::enumOf<DateOrder>(kOrderKeys, key);
}

std::optional<base::MassUnit> unitOfWord(std::string_view word)
{
    constexpr std::array<std::string_view, 6> kKilogramWords{"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"};
    constexpr std::array<std::string_view, 6> kPoundWords{"lb", "lbs", "pound", "pounds", "livres", "libras"};
    const std::string folded = foldedText(word);
    if (std::find(kKilogramWords.begin(), kKilogramWords.end(), folded) != kKilogramWords.end()) {
        return base::MassUnit::Kilogram;
    }
    return std::find(kPoundWords.begin(), kPoundWords.end(), folded) != kPoundWords.end() ? std::optional(base::MassUnit::Pound) : std::nullopt;
}

std::optional<base::MassUnit> unitInHeading(std::string_view heading)
{
    const auto words = wordsOf(heading);
    return words.empty() ? std::nullopt : unitOfWord(words.back());
}

std::optional<std::int32_t> readHundredths(std::string_view cell, DecimalSign sign)
{
    std::string_view text = trimmed(cell);
    const bool isNegative = text.starts_with('-') || text.starts_with("\xE2\x88\x92");  // U+2212, the minus
    text.remove_prefix(isNegative ? (text.front() == '-' ? 1 : 3) : text.starts_with('+') ? 1 : 0);
    const std::size_t point = text.rfind(sign == DecimalSign::Point ? '.' : ',');
    const std::string_view decimals = point == std::string_view::npos ? std::string_view() : text.substr(point + 1);
    const auto digits = wholeDigits(text.substr(0, point), sign);
    if (!digits || (point != std::string_view::npos && decimals.empty()) || !std::all_of(decimals.begin(), decimals.end(), isDigit)) {
        return std::nullopt;
    }
    const auto whole = numberOf(*digits);
    if (!whole || digits->size() > kMostWholeDigits) {
        return std::nullopt;
    }
    const std::int64_t hundredths = std::int64_t{*whole} * 100 + decimalHundredths(decimals);
    return hundredths <= kMostHundredths ? std::optional(static_cast<std::int32_t>(isNegative ? -hundredths : hundredths)) : std::nullopt;
}

std::optional<int> readWhole(std::string_view cell, DecimalSign sign)
{
    const auto hundredths = readHundredths(cell, sign);
    return hundredths && *hundredths % 100 == 0 ? std::optional(*hundredths / 100) : std::nullopt;
}

std::optional<CellMass> readMass(std::string_view cell, DecimalSign sign)
{
    const auto [number, suffix] = splitSuffix(trimmed(cell));
    const auto hundredths = readHundredths(number, sign);
    const auto unit = unitOfWord(suffix);
    if (!hundredths || (!suffix.empty() && !unit)) {
        return std::nullopt;
    }
    return CellMass{base::Load::fromCenti(*hundredths), unit};
}

std::optional<DayParts> dayParts(std::string_view cell)
{
    const std::string_view text = trimmed(cell);
    std::array<std::string_view, 3> parts;
    std::size_t at = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::size_t begin = at;
        while (at < text.size() && isDigit(text[at])) {
            ++at;
        }
        parts[i] = text.substr(begin, at - begin);
        const bool isParted = at < text.size() && std::string_view("./- ").find(text[at]) != std::string_view::npos;
        if (parts[i].empty() || (i < 2 && !isParted)) {
            return std::nullopt;
        }
        while (i < 2 && at < text.size() && !isDigit(text[at]) && std::string_view("./- ").find(text[at]) != std::string_view::npos) {
            ++at;
        }
    }
    const bool isOver = at == text.size() || ((text[at] == ' ' || text[at] == 'T') && at + 1 < text.size() && isDigit(text[at + 1]) && text.find(':', at) != std::string_view::npos);
    const bool isYearFirst = parts[0].size() == kYearDigits;
    const std::string_view year = isYearFirst ? parts[0] : parts[2];
    const bool isShort = parts[1].size() <= 2 && (isYearFirst ? parts[2] : parts[0]).size() <= 2 && (year.size() == 2 || year.size() == kYearDigits);
    return isOver && isShort ? std::optional(DayParts{*numberOf(parts[0]), *numberOf(parts[1]), *numberOf(parts[2]), isYearFirst}) : std::nullopt;
}

std::optional<base::Date> readDay(std::string_view cell, DateOrder order, base::Date today)
{
    const auto parts = dayParts(cell);
    if (!parts) {
        return std::nullopt;
    }
    if (parts->isYearFirst || order == DateOrder::Ymd) {
        return parts->isYearFirst ? base::Date::fromYmd(parts->first, parts->second, parts->third) : std::nullopt;
    }
    const int year = parts->third < kCentury ? fullYear(parts->third, today) : parts->third;
    const bool isDayFirst = order == DateOrder::Dmy;
    return base::Date::fromYmd(year, isDayFirst ? parts->second : parts->first, isDayFirst ? parts->first : parts->second);
}

std::optional<int> readSeconds(std::string_view cell, int secondsPerUnit, DecimalSign sign)
{
    constexpr int kSecondsPerMinute = 60;
    const std::string_view text = trimmed(cell);
    if (const std::size_t colon = text.find(':'); colon != std::string_view::npos) {
        const auto minutes = readWhole(text.substr(0, colon), sign);
        const auto seconds = readWhole(text.substr(colon + 1), sign);
        const bool isClock = minutes && seconds && *minutes >= 0 && *seconds >= 0 && *seconds < kSecondsPerMinute && *minutes < kMostHundredths / 100;
        return isClock ? std::optional(*minutes * kSecondsPerMinute + *seconds) : std::nullopt;
    }
    const auto [number, suffix] = splitSuffix(text);
    const std::string word = foldedText(suffix);
    const auto hundredths = readHundredths(number, sign);
    if (!hundredths || *hundredths < 0) {
        return std::nullopt;
    }
    const bool isSeconds = word == "s" || word == "sec" || word == "secs" || word == "sek" || word == "seconds";
    const bool isMinutes = word == "min" || word == "mins" || word == "m" || word == "minutes" || word == "minuten";
    if (!word.empty() && !isSeconds && !isMinutes) {
        return std::nullopt;
    }
    const std::int64_t per = isSeconds ? 1 : isMinutes ? kSecondsPerMinute : secondsPerUnit;
    return static_cast<int>(std::min<std::int64_t>(*hundredths * per / 100, kMostHundredths));
}

}  // namespace chalk::tables
