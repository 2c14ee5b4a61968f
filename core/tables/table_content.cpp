#include "core/tables/table_content.h"

#include "core/tables/folded_text.h"

namespace chalk::tables {

namespace {

void fill(std::string& gap, const std::string& text)
{
    gap = gap.empty() ? text : gap;
}

template <class T>
void fill(std::optional<T>& gap, const std::optional<T>& value)
{
    gap = gap ? gap : value;
}

}  // namespace

bool canBeOne(const ListedPerson& a, const ListedPerson& b)
{
    const bool isBirthSame = !a.birthDate || !b.birthDate || a.birthDate == b.birthDate;
    return isBirthSame && (a.mail.empty() || b.mail.empty() || foldedText(a.mail) == foldedText(b.mail));
}

void fillGaps(ListedPerson& person, const ListedPerson& other)
{
    fill(person.birthDate, other.birthDate);
    fill(person.phone, other.phone);
    fill(person.mail, other.mail);
    fill(person.goal, other.goal);
    fill(person.coach, other.coach);
    fill(person.note, other.note);
    fill(person.unit, other.unit);
    fill(person.bodyMass, other.bodyMass);
    fill(person.sessionsPerWeek, other.sessionsPerWeek);
    fill(person.startedOn, other.startedOn);
}

std::int32_t TableContent::personFor(const ListedPerson& named)
{
    const std::string key = sortedWords(named.name);
    const auto range = m_byName.equal_range(key);
    for (auto found = range.first; found != range.second; ++found) {
        ListedPerson& known = persons[static_cast<std::size_t>(found->second)];
        if (canBeOne(known, named)) {
            fillGaps(known, named);
            return found->second;
        }
    }
    const auto index = static_cast<std::int32_t>(persons.size());
    persons.push_back(named);
    m_byName.emplace(key, index);
    return index;
}

std::int32_t TableContent::exerciseFor(const std::string& name)
{
    const auto [found, isNew] = m_byExercise.emplace(foldedText(name), static_cast<std::int32_t>(exercises.size()));
    if (isNew) {
        exercises.push_back(name);
    }
    return found->second;
}

}  // namespace chalk::tables
