#include "core/tables/table_reader.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

const base::Date kReaderDay = *base::Date::fromYmd(2026, 11, 25);

/// Reads rows, the first of line 2; each cell begins at ten times its number.
TableContent readRows(const std::vector<std::string>& headings, const std::vector<std::vector<std::string>>& rows)
{
    std::vector<ColumnFacts> facts(headings.size());
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < std::min(row.size(), facts.size()); ++i) {
            facts[i].add(row[i]);
        }
    }
    TableContent content;
    TableReader reader(content, guessLayout(headings, facts, false, base::MassUnit::Kilogram), headings, 0, kReaderDay);
    int line = 2;
    for (const auto& row : rows) {
        std::vector<Cell> cells;
        for (std::size_t i = 0; i < row.size(); ++i) {
            cells.push_back({row[i], line, static_cast<int>(i) * 10 + 1});
        }
        reader.add(cells);
        ++line;
    }
    return content;
}

TEST(TableReader, ReadsPeople)
{
    const auto content = readRows({"First name", "Last name", "Born", "Mail", "Body mass", "Sessions per week", "Unit"},
                                  {{"Ada", "Cole", "1991-05-14", "ada@example.org", "150", "3", "lb"}, {"Bo", "Lind", "", "", "", "", ""}});
    ASSERT_EQ(content.persons.size(), 2U);
    const ListedPerson& ada = content.persons[0];
    EXPECT_EQ(ada.name, "Ada Cole");
    EXPECT_EQ(ada.birthDate, base::Date::fromYmd(1991, 5, 14));
    EXPECT_EQ(ada.bodyMass, base::Mass::of(base::Load::fromCenti(15000), base::MassUnit::Pound));
    EXPECT_EQ(ada.sessionsPerWeek, 3);
    EXPECT_EQ(ada.place, (Place{0, 2, 1}));
    EXPECT_TRUE(content.faults.empty());
    EXPECT_EQ(content.rows, 2);
}

TEST(TableReader, LeavesAFaultyRowOutAndSaysWhere)
{
    const auto content = readRows({"Name", "Born", "Sessions per week"},
                                  {{"Ada", "1991-05-14", "9"}, {"Bo", "1991-05-41", "2"}, {"", "1991-05-14", "2"}, {"Cy", "2030-01-01", "2"}, {"Di", "1990-01-01"}, {"Ed", "", ""}, {"ed", "", ""}});
    ASSERT_EQ(content.persons.size(), 1U);
    EXPECT_EQ(content.persons[0].name, "Ed");
    const std::vector<CellFault> expected{{{0, 2, 21}, "Sessions per week", "must be a whole number from 1 to 7", 3},
                                          {{0, 3, 11}, "Born", "there is no such day as 1991-05-41", 2},
                                          {{0, 4, 1}, "Name", "must name somebody", 1},
                                          {{0, 5, 11}, "Born", "is still to come", 2},
                                          {{0, 6, 1}, "", "the row has 2 fields for 3 columns"},
                                          {{0, 8, 1}, "", "the same person stands in line 7 already"}};
    EXPECT_EQ(content.faults, expected);
}

TEST(TableReader, ReadsSets)
{
    const auto content = readRows({"Client", "Date", "Exercise", "Load (kg)", "Reps", "Sets", "RIR", "Rest", "Note", "Duration"},
                                  {{"Ada", "2025-04-03", "Back squat", "80", "8", "3", "2", "1:30", "left knee in", "50"},
                                   {"Ada", "2025-04-03", "Deadlift", "100 lb", "5 5 4", "", "", "", "", ""},
                                   {"Ada", "2025-04-03", "Plank", "", "3x45s", "", "", "", "late", ""}});
    EXPECT_TRUE(content.faults.empty());
    ASSERT_EQ(content.sets.size(), 5U);
    EXPECT_EQ(content.sets[0].load, base::Load::fromCenti(8000));
    EXPECT_EQ(content.sets[0].count, 3);
    EXPECT_EQ(content.sets[0].rir, 2);
    EXPECT_EQ(content.sets[0].restSeconds, 90);
    EXPECT_EQ(content.sets[1].unit, base::MassUnit::Pound);
    EXPECT_EQ(content.sets[3].amount, 4);
    EXPECT_EQ(content.sets[4].count, 3);
    EXPECT_EQ(content.sets[4].amount, 45);
    const auto session = content.sessions.at({0, *base::Date::fromYmd(2025, 4, 3)});
    EXPECT_EQ(session.note, "left knee in\nlate");
    EXPECT_EQ(session.minutes, 50);
}

TEST(TableReader, SaysWhyACellIsNoDay)
{
    const auto reasonOf = [](const char* cell, const char* other) {
        const auto content = readRows({"Name", "Born"}, {{"Ada", cell}, {"Bo", other}});
        return content.faults.empty() ? std::string() : content.faults[0].reason;
    };
    EXPECT_EQ(reasonOf("31.02.2026", "24.12.1990"), "there is no such day as 31.02.2026");
    EXPECT_EQ(reasonOf("29.02.2025", "24.12.1990"), "there is no such day as 29.02.2025");
    EXPECT_EQ(reasonOf("29.02.2024", "24.12.1990"), "") << "a leap year has it";
    EXPECT_EQ(reasonOf("12/24/1990", "24.12.1990"), "there is no such day as 12/24/1990: it must be a day such as 25.11.2026");
    EXPECT_EQ(reasonOf("in May", "24.12.1990"), "must be a day such as 25.11.2026, not in May");
    EXPECT_EQ(reasonOf("a day in the spring of the years \xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4", "24.12.1990"),
              "must be a day such as 25.11.2026, not a day in the spring of the years \xC3\xA4\xC3\xA4\xC3\xA4\xE2\x80\xA6");
}

TEST(TableReader, NoNoteOfADayIsLostInSilence)
{
    const std::string half(2000, 'a');
    const auto notesOf = [](const std::vector<std::string>& notes) {
        std::vector<std::vector<std::string>> rows;
        for (const std::string& note : notes) {
            rows.push_back({"Ada", "2025-04-03", "Squat", "8", note});
        }
        return readRows({"Client", "Date", "Exercise", "Reps", "Note"}, rows);
    };
    const auto noteIn = [](const TableContent& content) { return content.sessions.at({0, *base::Date::fromYmd(2025, 4, 3)}).note; };
    const auto longest = notesOf({half + half});
    EXPECT_TRUE(longest.faults.empty());
    EXPECT_EQ(noteIn(longest), half + half);
    const auto both = notesOf({half, "b" + half.substr(2)});
    EXPECT_TRUE(both.faults.empty());
    EXPECT_EQ(noteIn(both).size(), 4000U);
    const auto content = notesOf({half, "b" + half, "late"});
    const std::vector<CellFault> expected{{{0, 3, 41}, "Note", "the notes of this day are longer than 4000 letters together: this note is left out, the sets go in", 5}};
    EXPECT_EQ(content.faults, expected);
    EXPECT_EQ(noteIn(content), half + "\nlate");
    EXPECT_EQ(content.sets.size(), 3U) << "the rest of the row goes in";
    EXPECT_EQ(noteIn(notesOf({"plate", "late", "plate"})), "plate\nlate") << "a part of another note is a note of its own";
}

TEST(TableReader, RefusesSetsThatCannotBe)
{
    const auto content = readRows({"Client", "Date", "Exercise", "Load", "Reps", "Rest"},
                                  {{"Ada", "2025-04-03", "", "80", "8", ""},
                                   {"Ada", "2025-04-03", "Squat", "heavy", "8", ""},
                                   {"Ada", "2025-04-03", "Squat", "80", "many", ""},
                                   {"Ada", "2025-04-03", "Squat", "80", "8", "2 hours"},
                                   {"Ada", "", "Squat", "80", "8", ""},
                                   {"Ada", "2025-04-03", "Squat", "80", "1001", ""},
                                   {"Ada", "2025-04-03", "Squat", "600000", "8", ""}});
    EXPECT_TRUE(content.sets.empty());
    ASSERT_EQ(content.faults.size(), 7U);
    const std::vector<std::string> headings{"Exercise", "Load", "Reps", "Rest", "Date", "Reps", "Load"};
    for (std::size_t i = 0; i < headings.size(); ++i) {
        EXPECT_EQ(content.faults[i].heading, headings[i]);
        EXPECT_EQ(content.faults[i].place.line, static_cast<int>(i) + 2);
    }
}

}  // namespace
}  // namespace chalk::tables
