#include "core/tables/people_match.h"

#include "core/base/enum_keys.h"
#include "core/tables/folded_text.h"

#include <algorithm>
#include <array>

namespace chalk::tables {

namespace {

constexpr std::array<std::string_view, 5> kGroundKeys{"mail", "name", "phone", "near_name", "birth_date"};
constexpr std::size_t kPhoneDigits = 9;
constexpr std::size_t kLeastPhoneDigits = 6;
constexpr std::size_t kLongName = 10;  // letters, from which two typing errors are allowed
constexpr std::size_t kShortName = 5;  // below it none is

/// What two records are compared by.
struct Marks {
    std::string name;
    std::string mail;
    std::string phone;
    std::optional<base::Date> birthDate;
};

std::string lastDigits(const std::string& phone)
{
    std::string digits;
    std::copy_if(phone.begin(), phone.end(), std::back_inserter(digits), [](char letter) { return letter >= '0' && letter <= '9'; });
    if (digits.size() < kLeastPhoneDigits) {
        return {};
    }
    return digits.size() > kPhoneDigits ? digits.substr(digits.size() - kPhoneDigits) : digits;
}

template <class Person>
std::vector<Marks> marksOf(std::span<const Person> persons)
{
    std::vector<Marks> marks;
    for (const Person& person : persons) {
        marks.push_back({sortedWords(person.name), foldedText(person.mail), lastDigits(person.phone), person.birthDate});
    }
    return marks;
}

bool isNear(const std::string& a, const std::string& b)
{
    const std::size_t shorter = std::min(a.size(), b.size());
    const int most = shorter >= kLongName ? 2 : shorter >= kShortName ? 1 : 0;
    return most > 0 && editDistance(a, b, most) <= most;
}

std::optional<MatchGround> groundOf(const Marks& a, const Marks& b)
{
    if (!a.mail.empty() && a.mail == b.mail) {
        return MatchGround::Mail;
    }
    if (a.name == b.name) {
        return MatchGround::Name;
    }
    if (!a.phone.empty() && a.phone == b.phone) {
        return MatchGround::Phone;
    }
    const bool isBornElse = a.birthDate && b.birthDate && a.birthDate != b.birthDate;
    if (!isBornElse && isNear(a.name, b.name)) {
        return MatchGround::NearName;
    }
    return a.birthDate && a.birthDate == b.birthDate ? std::optional(MatchGround::BirthDate) : std::nullopt;
}

bool isCertain(MatchGround ground, const Marks& a, const Marks& b)
{
    const bool isBornElse = a.birthDate && b.birthDate && a.birthDate != b.birthDate;
    const bool hasOtherMail = !a.mail.empty() && !b.mail.empty() && a.mail != b.mail;
    return !isBornElse && ((ground == MatchGround::Mail && (a.name == b.name || isNear(a.name, b.name))) || (ground == MatchGround::Name && !hasOtherMail));
}

}  // namespace

std::string_view keyOf(MatchGround ground)
{
    return base::keyIn(kGroundKeys, ground);
}

std::vector<PersonMatch> matchesWith(std::span<const ListedPerson> listed, std::span<const KnownPerson> known)
{
    const std::vector<Marks> theirs = marksOf(listed);
    const std::vector<Marks> ours = marksOf(known);
    std::vector<PersonMatch> matches;
    for (std::size_t i = 0; i < theirs.size(); ++i) {
        std::optional<PersonMatch> best;
        for (std::size_t j = 0; j < ours.size(); ++j) {
            const auto ground = groundOf(theirs[i], ours[j]);
            const bool isSure = ground && isCertain(*ground, theirs[i], ours[j]);
            if (ground && (!best || (isSure && !best->isCertain) || (isSure == best->isCertain && *ground < best->ground))) {
                best = PersonMatch{i, j, *ground, isSure};
            }
        }
        if (best) {
            matches.push_back(*best);
        }
    }
    return matches;
}

std::vector<PersonMatch> matchesAmong(std::span<const KnownPerson> known)
{
    const std::vector<Marks> marks = marksOf(known);
    std::vector<PersonMatch> matches;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        for (std::size_t j = i + 1; j < marks.size(); ++j) {
            if (const auto ground = groundOf(marks[i], marks[j])) {
                matches.push_back({i, j, *ground, isCertain(*ground, marks[i], marks[j])});
            }
        }
    }
    std::stable_sort(matches.begin(), matches.end(), [](const PersonMatch& a, const PersonMatch& b) { return a.ground < b.ground; });
    return matches;
}

}  // namespace chalk::tables
