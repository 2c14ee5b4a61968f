#include "core/tables/column_facts.h"

#include "core/tables/cell_reading.h"
#include "core/tables/folded_text.h"

#include <algorithm>

namespace chalk::tables {

namespace {

constexpr int kMonths = 12;

bool isDigitLetter(char letter)
{
    return letter >= '0' && letter <= '9';
}

bool looksLikeMail(std::string_view cell)
{
    const std::size_t at = cell.find('@');
    return at != std::string_view::npos && at > 0 && cell.find('.', at) != std::string_view::npos && cell.find(' ') == std::string_view::npos;
}

bool looksLikePhone(std::string_view cell)
{
    constexpr int kLeastDigits = 6;
    const bool isPlain = std::all_of(cell.begin(), cell.end(), [](char letter) { return isDigitLetter(letter) || std::string_view("+()/- .").find(letter) != std::string_view::npos; });
    return isPlain && std::count_if(cell.begin(), cell.end(), isDigitLetter) >= kLeastDigits;
}

bool looksLikeName(std::string_view cell)
{
    return std::none_of(cell.begin(), cell.end(), isDigitLetter) && cell.find('@') == std::string_view::npos && wordsOf(cell).size() >= 2;
}

void countDay(ColumnFacts& facts, const DayParts& parts)
{
    if (parts.isYearFirst) {
        ++facts.yearFirstDays;
    } else if (parts.first > kMonths && parts.second <= kMonths) {
        ++facts.dayFirstDays;
    } else if (parts.second > kMonths && parts.first <= kMonths) {
        ++facts.monthFirstDays;
    } else if (parts.first <= kMonths && parts.second <= kMonths) {
        ++facts.eitherDays;
    }
}

void countNumber(ColumnFacts& facts, std::string_view cell)
{
    const auto point = readMass(cell, DecimalSign::Point);
    const auto comma = readMass(cell, DecimalSign::Comma);
    if (!point && !comma) {
        return;
    }
    ++facts.numbers;
    facts.pointNumbers += point && !comma ? 1 : 0;
    facts.commaNumbers += comma && !point ? 1 : 0;
    const auto unit = point ? point->unit : comma->unit;
    facts.kilograms += unit == base::MassUnit::Kilogram ? 1 : 0;
    facts.pounds += unit == base::MassUnit::Pound ? 1 : 0;
}

}  // namespace

void ColumnFacts::add(std::string_view cell)
{
    const std::string_view text = trimmed(cell);
    if (text.empty()) {
        return;
    }
    ++filled;
    if (looksLikeMail(text)) {
        ++mails;
    } else if (const auto parts = dayParts(text)) {
        countDay(*this, *parts);
    } else {
        countNumber(*this, text);
        phones += looksLikePhone(text) ? 1 : 0;
        names += looksLikeName(text) ? 1 : 0;
    }
}

}  // namespace chalk::tables
