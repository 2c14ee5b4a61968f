#pragma once

#include <QByteArray>

#include <array>
#include <charconv>
#include <cmath>

namespace chalk::exchange {

inline void appendNumber(QByteArray& text, qint64 value)
{
    constexpr std::size_t kLongest = 20;
    std::array<char, kLongest> digits{};
    text.append(digits.data(), std::to_chars(digits.begin(), digits.end(), value).ptr - digits.data());
}

inline void appendNumber(QByteArray& text, int value)
{
    appendNumber(text, qint64{value});
}

/// As short as reads back the same.
inline void appendNumber(QByteArray& text, double value)
{
    constexpr double kMostExact = 9e15;
    if (value == std::floor(value) && std::abs(value) < kMostExact) {
        appendNumber(text, static_cast<qint64>(value));
        return;
    }
    constexpr std::size_t kLongest = 32;
    std::array<char, kLongest> digits{};
    text.append(digits.data(), std::to_chars(digits.begin(), digits.end(), value).ptr - digits.data());
}

}  // namespace chalk::exchange
