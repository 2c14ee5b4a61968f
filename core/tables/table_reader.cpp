#include "core/tables/table_reader.h"

#include "core/clients/profile.h"
#include "core/tables/folded_text.h"

#include <algorithm>
#include <array>

namespace chalk::tables {

namespace {

constexpr int kMostAmount = 1000;
constexpr int kMostSetsOfRow = 30;
constexpr int kMostRir = 10;
constexpr int kMostRest = 3600;
constexpr int kMostLoadCenti = 200'000;  // in the other unit it is still one that the log takes
constexpr int kLeastMassCenti = 500;
constexpr int kMostMassCenti = 100'000;
constexpr int kLeastMinutes = 5;
constexpr int kMostMinutes = 480;
constexpr std::size_t kLongestText = 4000;
constexpr std::size_t kMostQuoted = 40;
constexpr int kLastMonth = 12;

/// A cell as a fault quotes it; a letter of several bytes is never cut in two.
std::string shortened(std::string_view cell)
{
    if (cell.size() <= kMostQuoted) {
        return std::string(cell);
    }
    std::size_t end = kMostQuoted;
    while (end > 0 && (static_cast<unsigned char>(cell[end]) & 0xC0U) == 0x80U) {
        --end;
    }
    return std::string(cell.substr(0, end)) + "\xE2\x80\xA6";  // an ellipsis
}

std::string rangeText(int low, int high)
{
    return "must be a whole number from " + std::to_string(low) + " to " + std::to_string(high);
}

/// Why a cell is no day: it is none in any year, or it is not written as one.
std::string whyNoDay(std::string_view cell, DateOrder order)
{
    const std::string wanted = std::string("must be a day such as ") + (order == DateOrder::Ymd ? "2026-11-25" : order == DateOrder::Dmy ? "25.11.2026" : "11/25/2026");
    const auto parts = dayParts(cell);
    if (!parts) {
        return wanted + ", not " + shortened(cell);
    }
    const int month = parts->isYearFirst || order == DateOrder::Dmy ? parts->second : parts->first;
    const bool isWrittenSo = parts->isYearFirst || order != DateOrder::Ymd;
    return isWrittenSo && month <= kLastMonth ? "there is no such day as " + std::string(cell) : "there is no such day as " + std::string(cell) + ": it " + wanted;
}

/// Parts of `8 8 7`, `8/8/7`, `8;8;7`.
std::vector<std::string_view> partsOf(std::string_view text)
{
    std::vector<std::string_view> parts;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find_first_of(" /;+", at), text.size());
        if (end > at) {
            parts.push_back(text.substr(at, end - at));
        }
        at = end + 1;
    }
    return parts;
}

/// Without a unit that an amount may be followed by: `30 s`, `20m`.
std::string_view withoutAmountUnit(std::string_view text)
{
    constexpr std::array<std::string_view, 6> kUnits{"reps", "rep", "sec", "x", "s", "m"};
    for (const std::string_view unit : kUnits) {
        if (text.size() > unit.size() && text.ends_with(unit)) {
            return trimmed(text.substr(0, text.size() - unit.size()));
        }
    }
    return text;
}

}  // namespace

TableReader::TableReader(TableContent& content, TableLayout layout, std::vector<std::string> headings, int file, base::Date today)
    : m_content(content), m_layout(std::move(layout)), m_headings(std::move(headings)), m_file(file), m_today(today)
{
}

const Cell* TableReader::cellOf(const std::vector<Cell>& row, Field field) const
{
    const auto found = std::find(m_layout.columns.begin(), m_layout.columns.end(), field);
    const auto at = static_cast<std::size_t>(found - m_layout.columns.begin());
    return found == m_layout.columns.end() || at >= row.size() || trimmed(row[at].text).empty() ? nullptr : &row[at];
}

std::string TableReader::textOf(const std::vector<Cell>& row, Field field) const
{
    const Cell* cell = cellOf(row, field);
    return cell == nullptr ? std::string() : std::string(trimmed(cell->text));
}

void TableReader::fail(const std::vector<Cell>& row, Field field, std::string reason)
{
    const Cell* cell = cellOf(row, field);
    const auto found = std::find(m_layout.columns.begin(), m_layout.columns.end(), field);
    const auto at = static_cast<std::size_t>(found - m_layout.columns.begin());
    const Cell& place = cell != nullptr ? *cell : at < row.size() ? row[at] : row.front();
    m_content.faults.push_back({{m_file, place.line, place.column}, at < m_headings.size() ? m_headings[at] : std::string(), std::move(reason),
                                found == m_layout.columns.end() ? 0 : static_cast<int>(at) + 1});
    m_isFaulty = true;
}

std::optional<base::Date> TableReader::dayIn(const std::vector<Cell>& row, Field field)
{
    const Cell* cell = cellOf(row, field);
    if (cell == nullptr) {
        return std::nullopt;
    }
    const auto day = readDay(cell->text, m_layout.days, m_today);
    if (!day) {
        fail(row, field, whyNoDay(trimmed(cell->text), m_layout.days));
    } else if (*day > m_today) {
        fail(row, field, "is still to come");
    }
    return day;
}

std::optional<int> TableReader::wholeIn(const std::vector<Cell>& row, Field field, int low, int high)
{
    const Cell* cell = cellOf(row, field);
    if (cell == nullptr) {
        return std::nullopt;
    }
    const auto hundredths = readHundredths(cell->text, m_layout.decimals);
    if (!hundredths || *hundredths % 100 != 0 || *hundredths < low * 100 || *hundredths > high * 100) {
        fail(row, field, rangeText(low, high));
        return std::nullopt;
    }
    return *hundredths / 100;
}

std::optional<CellMass> TableReader::massIn(const std::vector<Cell>& row, Field field)
{
    const Cell* cell = cellOf(row, field);
    if (cell == nullptr) {
        return std::nullopt;
    }
    auto mass = readMass(cell->text, m_layout.decimals);
    if (!mass) {
        fail(row, field, std::string("must be a number such as ") + (m_layout.decimals == DecimalSign::Comma ? "82,5" : "82.5") + ", with kg or lb behind it or nothing");
    }
    return mass;
}

base::MassUnit TableReader::unitOfMass(const CellMass& mass, Field field) const
{
    const auto found = std::find(m_layout.columns.begin(), m_layout.columns.end(), field);
    const auto at = static_cast<std::size_t>(found - m_layout.columns.begin());
    const auto ofColumn = at < m_layout.columnUnits.size() ? m_layout.columnUnits[at] : std::nullopt;
    return mass.unit.value_or(ofColumn.value_or(m_layout.unit));
}

std::string TableReader::nameIn(const std::vector<Cell>& row) const
{
    std::string name = textOf(row, Field::Name);
    if (name.empty()) {
        const std::string first = textOf(row, Field::FirstName);
        const std::string last = textOf(row, Field::LastName);
        return first.empty() ? last : last.empty() ? first : first + ' ' + last;
    }
    if (const std::size_t comma = name.find(','); comma != std::string::npos && name.find(',', comma + 1) == std::string::npos) {
        const std::string first(trimmed(std::string_view(name).substr(comma + 1)));
        const std::string last(trimmed(std::string_view(name).substr(0, comma)));
        return first.empty() || last.empty() ? name : first + ' ' + last;
    }
    return name;
}

ListedPerson TableReader::personIn(const std::vector<Cell>& row)
{
    ListedPerson person;
    person.name = nameIn(row);
    person.place = {m_file, row.front().line, row.front().column};
    if (sortedWords(person.name).empty()) {
        fail(row, m_layout.has(Field::Name) ? Field::Name : m_layout.has(Field::LastName) ? Field::LastName : Field::FirstName, "must name somebody");
    }
    person.birthDate = dayIn(row, Field::BirthDate);
    if (const auto fault = person.birthDate && *person.birthDate <= m_today ? clients::faultOfBirth(*person.birthDate, m_today) : std::nullopt) {
        fail(row, Field::BirthDate, fault->reason);
    }
    person.phone = textOf(row, Field::Phone);
    person.mail = textOf(row, Field::Mail);
    if (!person.mail.empty() && person.mail.find('@') == std::string::npos) {
        fail(row, Field::Mail, "must be an address with an @");
    }
    person.goal = textOf(row, Field::Goal);
    person.coach = textOf(row, Field::Coach);
    person.note = textOf(row, Field::ClientNote);
    if (const Cell* unit = cellOf(row, Field::Unit)) {
        person.unit = unitOfWord(unit->text);
        if (!person.unit) {
            fail(row, Field::Unit, "must be kg or lb");
        }
    }
    if (const auto mass = massIn(row, Field::BodyMass)) {
        if (mass->load.centi() < kLeastMassCenti || mass->load.centi() > kMostMassCenti) {
            fail(row, Field::BodyMass, "must be 5 to 1000");
        }
        person.bodyMass = base::Mass::of(mass->load, mass->unit || !person.unit ? unitOfMass(*mass, Field::BodyMass) : *person.unit);
    }
    person.sessionsPerWeek = wholeIn(row, Field::SessionsPerWeek, 1, 7);
    person.startedOn = dayIn(row, Field::StartedOn);
    return person;
}

void TableReader::readAmounts(const std::vector<Cell>& row, const ListedSet& pattern, std::vector<ListedSet>& sets)
{
    const std::string text = textOf(row, Field::Reps);
    std::string_view amounts = text;
    ListedSet set = pattern;
    if (const std::size_t times = amounts.find_first_of("xX"); times != std::string_view::npos && times + 1 < amounts.size()) {
        set.count = static_cast<std::int16_t>(readWhole(amounts.substr(0, times), m_layout.decimals).value_or(0));
        amounts = trimmed(amounts.substr(times + 1));
    }
    const auto whole = readWhole(withoutAmountUnit(amounts), m_layout.decimals);
    const std::vector<std::string_view> parts = whole ? std::vector<std::string_view>{amounts} : partsOf(amounts);
    for (const std::string_view part : parts) {
        const auto amount = readWhole(withoutAmountUnit(part), m_layout.decimals);
        if (!amount || *amount < 0 || *amount > kMostAmount || set.count < 1 || set.count > kMostSetsOfRow) {
            fail(row, Field::Reps, "must be a whole number from 0 to 1000, or several such as 8 8 7 or 3x8");
            return;
        }
        set.amount = static_cast<std::int16_t>(*amount);
        sets.push_back(set);
    }
    if (parts.empty()) {
        fail(row, Field::Reps, "must say how many");
    }
}

std::vector<ListedSet> TableReader::setsIn(const std::vector<Cell>& row)
{
    std::vector<ListedSet> sets;
    ListedSet set;
    const auto day = dayIn(row, Field::Day);
    if (!day && cellOf(row, Field::Day) == nullptr) {
        fail(row, Field::Day, "must be a day");
    }
    set.day = day.value_or(base::Date());
    set.line = row.front().line;
    if (cellOf(row, Field::Exercise) == nullptr) {
        fail(row, Field::Exercise, "must name an exercise");
    }
    const auto unit = cellOf(row, Field::Unit) == nullptr ? std::nullopt : unitOfWord(cellOf(row, Field::Unit)->text);
    if (const auto mass = massIn(row, Field::Load)) {
        set.load = mass->load;
        set.unit = mass->unit || !unit ? unitOfMass(*mass, Field::Load) : *unit;
        if (mass->load.centi() < -kMostLoadCenti || mass->load.centi() > kMostLoadCenti) {
            fail(row, Field::Load, "must be -2000 to 2000");
        }
    } else {
        set.unit = unitOfMass({}, Field::Load);
    }
    set.count = static_cast<std::int16_t>(wholeIn(row, Field::Sets, 1, kMostSetsOfRow).value_or(1));
    set.number = static_cast<std::int16_t>(wholeIn(row, Field::SetNumber, 0, kMostAmount).value_or(0));
    set.rir = static_cast<std::int16_t>(wholeIn(row, Field::Rir, 0, kMostRir).value_or(-1));
    if (const Cell* rest = cellOf(row, Field::Rest)) {
        constexpr int kSecondsPerMinute = 60;
        const auto seconds = readSeconds(rest->text, m_layout.areMinutesOfRest ? kSecondsPerMinute : 1, m_layout.decimals);
        if (!seconds || *seconds > kMostRest) {
            fail(row, Field::Rest, "must be seconds up to 3600, or minutes and seconds such as 1:30");
        } else {
            set.restSeconds = static_cast<std::int16_t>(*seconds);
        }
    }
    readAmounts(row, set, sets);
    return sets;
}

void TableReader::readSession(const std::vector<Cell>& row, ListedSession& session)
{
    session.note = textOf(row, Field::SessionNote);
    if (session.note.size() > kLongestText) {
        fail(row, Field::SessionNote, "is longer than 4000 letters");
    }
    const Cell* length = cellOf(row, Field::Minutes);
    constexpr int kSecondsPerMinute = 60;
    const auto seconds = length == nullptr ? std::nullopt : readSeconds(length->text, kSecondsPerMinute, m_layout.decimals);
    if (length != nullptr && (!seconds || *seconds < kLeastMinutes * kSecondsPerMinute || *seconds > kMostMinutes * kSecondsPerMinute)) {
        fail(row, Field::Minutes, "must be 5 to 480 minutes");
    } else if (seconds) {
        session.minutes = *seconds / kSecondsPerMinute;
    }
}

void TableReader::addNote(const std::vector<Cell>& row, const std::string& note, std::string& notes)
{
    const bool isThere = ('\n' + notes + '\n').find('\n' + note + '\n') != std::string::npos;
    if (note.empty() || isThere) {
        return;
    }
    const std::string all = notes.empty() ? note : notes + '\n' + note;
    if (all.size() > kLongestText) {
        fail(row, Field::SessionNote, "the notes of this day are longer than 4000 letters together: this note is left out, the sets go in");
        return;
    }
    notes = all;
}

void TableReader::keep(const ListedPerson& person, std::vector<ListedSet> sets, std::optional<base::Date> day, const ListedSession& session, const std::vector<Cell>& row)
{
    const std::int32_t index = m_content.personFor(person);
    if (!day) {
        if (!m_hereAlready.insert(index).second) {
            m_content.faults.push_back({{m_file, row.front().line, row.front().column}, {},
                                        "the same person stands in line " + std::to_string(m_content.persons[static_cast<std::size_t>(index)].place.line) + " already"});
        }
        return;
    }
    const std::int32_t exercise = m_content.exerciseFor(textOf(row, Field::Exercise));
    for (ListedSet& set : sets) {
        set.person = index;
        set.exercise = exercise;
        m_content.sets.push_back(set);
    }
    if (!session.note.empty() || session.minutes) {
        ListedSession& said = m_content.sessions[{index, *day}];
        addNote(row, session.note, said.note);
        said.minutes = said.minutes ? said.minutes : session.minutes;
    }
}

void TableReader::add(const std::vector<Cell>& row)
{
    if (std::all_of(row.begin(), row.end(), [](const Cell& cell) { return trimmed(cell.text).empty(); })) {
        return;
    }
    ++m_content.rows;
    m_isFaulty = false;
    if (row.size() != m_headings.size()) {
        m_content.faults.push_back({{m_file, row.front().line, row.front().column}, {},
                                    "the row has " + std::to_string(row.size()) + (row.size() == 1 ? " field for " : " fields for ") + std::to_string(m_headings.size()) + " columns"});
        return;
    }
    const ListedPerson person = personIn(row);
    const bool hasSets = m_layout.hasSessions();
    std::vector<ListedSet> sets = hasSets ? setsIn(row) : std::vector<ListedSet>();
    ListedSession session;
    if (hasSets) {
        readSession(row, session);
    }
    if (!m_isFaulty) {
        keep(person, std::move(sets), hasSets ? dayIn(row, Field::Day) : std::nullopt, session, row);
    }
}

}  // namespace chalk::tables
