#include "core/clients/client.h"

#include "core/base/enum_keys.h"

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
    const std::string_view view = name;
    const auto first = view.find_first_not_of(' ');
    if (first == std::string_view::npos) {
        return {};
    }
    const auto end = view.find_last_not_of(' ') + 1;
    const std::string_view trimmed = view.substr(first, end - first);
    std::string initials = firstCharacterOf(trimmed);
    if (const auto space = trimmed.rfind(' '); space != std::string_view::npos) {
        initials += firstCharacterOf(trimmed.substr(space + 1));
    }
    return initials;
}

}  // namespace chalk::clients
