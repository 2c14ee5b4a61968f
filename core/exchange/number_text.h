#pragma once

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace chalk::exchange {

// Numbers as JSON and CSV have them, appended to a std::string or a QByteArray. Of a double, as few digits as read back the same.

template <class Text, class Number>
void appendDigits(Text& text, Number value)
{
    constexpr std::size_t kLongest = 32;
    std::array<char, kLongest> digits{};
    const auto count = std::to_chars(digits.begin(), digits.end(), value).ptr - digits.data();
    text.append(digits.data(), static_cast<decltype(text.size())>(count));
}

template <class Text>
void appendNumber(Text& text, int value)
{
    appendDigits(text, value);
}

template <class Text>
void appendNumber(Text& text, double value)
{
    constexpr double kMostExact = 9e15;
    if (value == std::floor(value) && std::abs(value) < kMostExact) {
        appendDigits(text, static_cast<std::int64_t>(value));
    } else {
        appendDigits(text, value);
    }
}

}  // namespace chalk::exchange
