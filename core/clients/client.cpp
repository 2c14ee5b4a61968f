#include "core/clients/client.h"

#include "core/base/enum_keys.h"

#include <vector>

namespace chalk::clients {

namespace {

constexpr std::array<std::string_view, 5> kClearanceKeys{"not_needed", "recommended", "stop_and_seek", "granted", "unanswered"};

/// The first UTF-8 character of a word, ASCII letters in upper case.
std::string firstCharacterOf(std::string_view word)
{
    std::size_t length = 1;
    while (length < word.size() && (static_cast<unsigned char>(word[length]) & 0xC0U) == 0x80U) {
        ++length;
    }
    std::string first(word.substr(0, length));
    if (first.size() == 1 && first[0] >= 'a' && first[0] <= 'z') {
        first[0] = static_cast<char>(first[0] - 'a' + 'A');
    }
    return first;
}

/// Of the first and the last word.
std::vector<std::string> firstLettersOf(std::string_view name)
{
    const auto first = name.find_first_not_of(' ');
    if (first == std::string_view::npos) {
        return {};
    }
    const auto end = name.find_last_not_of(' ') + 1;
    const std::string_view trimmed = name.substr(first, end - first);
    std::vector<std::string> letters{firstCharacterOf(trimmed)};
    if (const auto space = trimmed.rfind(' '); space != std::string_view::npos) {
        letters.push_back(firstCharacterOf(trimmed.substr(space + 1)));
    }
    return letters;
}

}  // namespace

bool isBlocked(const Clearance& clearance, base::Date day)
{
    switch (clearance.state) {
    case ClearanceState::NotNeeded:
        return false;
    case ClearanceState::Recommended:
    case ClearanceState::StopAndSeek:
    case ClearanceState::Unanswered:
        return true;
    case ClearanceState::Granted:
        return clearance.validUntil && day > *clearance.validUntil;
    }
    return true;
}

std::string_view keyOf(ClearanceState state)
{
    return base::keyIn(kClearanceKeys, state);
}

std::optional<ClearanceState> clearanceStateOf(std::string_view key)
{
    return base::enumOf<ClearanceState>(kClearanceKeys, key);
}

std::string initialsOf(const std::string& name)
{
    std::string initials;
    for (const std::string& letter : firstLettersOf(name)) {
        initials += letter;
    }
    return initials;
}

std::string dottedInitialsOf(const std::string& name)
{
    std::string initials;
    for (const std::string& letter : firstLettersOf(name)) {
        initials += (initials.empty() ? "" : " ") + letter + '.';
    }
    return initials;
}

}  // namespace chalk::clients
