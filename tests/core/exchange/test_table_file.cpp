#include "core/exchange/table_file.h"

#include <gtest/gtest.h>

namespace chalk::exchange {
namespace {

using tables::Field;

const base::Date kFileDay = *base::Date::fromYmd(2026, 11, 25);

TEST(TableFile, DetectsHowItIsWritten)
{
    const auto file = inspectTable("Name;Geburtsdatum;K\xF6rpergewicht (kg)\r\nJ\xFCrgen Lund;25.3.1980;81,5\r\nBo Lind;1.2.1990;70\r\n");
    ASSERT_TRUE(file);
    EXPECT_EQ(file->encoding, TextEncoding::Windows1252);
    EXPECT_EQ(file->separator, ';');
    EXPECT_EQ(file->records, 2);
    EXPECT_EQ(file->layout.days, tables::DateOrder::Dmy);
    EXPECT_EQ(file->layout.decimals, tables::DecimalSign::Comma);
    EXPECT_EQ(file->layout.columns, (std::vector<std::optional<Field>>{Field::Name, Field::BirthDate, Field::BodyMass}));
    tables::TableContent content;
    EXPECT_TRUE(readTable(*file, file->layout, content, 0, kFileDay));
    EXPECT_TRUE(content.faults.empty());
    EXPECT_EQ(content.persons.at(0).name, "Jürgen Lund");
    EXPECT_EQ(content.persons.at(0).bodyMass, base::Mass::of(base::Load::fromCenti(8150), base::MassUnit::Kilogram));
}

TEST(TableFile, FindsTheSeparator)
{
    EXPECT_EQ(separatorOf("a,b,c\n1,2,3\n"), ',');
    EXPECT_EQ(separatorOf("a;b;c\n1,5;2;3\n"), ';');
    EXPECT_EQ(separatorOf("a\tb\n1,5\t2\n"), '\t');
    EXPECT_EQ(separatorOf("\"a,b\"|c\n\"1,2\"|d\n"), '|');
    EXPECT_EQ(separatorOf("one column\nonly\n"), ',');
}

TEST(TableFile, ReadsAListWithoutHeadings)
{
    const auto file = inspectTable("Ada Cole,ada@example.org\nBo Lind,bo@example.org\n");
    ASSERT_TRUE(file);
    EXPECT_FALSE(file->hasHeadings);
    EXPECT_EQ(file->headings, (std::vector<std::string>{"column 1", "column 2"}));
    tables::TableContent content;
    EXPECT_TRUE(readTable(*file, file->layout, content, 0, kFileDay));
    ASSERT_EQ(content.persons.size(), 2U);
    EXPECT_EQ(content.persons[0].mail, "ada@example.org");
}

TEST(TableFile, NamesTheRowsThatAreNoCsvAndGoesOn)
{
    const auto file = inspectTable("Name,Mail\nAda,a@b.c\nBo,\"x\"y\nCy,c@d.e\n");
    ASSERT_TRUE(file);
    tables::TableContent content;
    EXPECT_TRUE(readTable(*file, file->layout, content, 3, kFileDay));
    EXPECT_EQ(content.persons.size(), 2U);
    ASSERT_EQ(content.faults.size(), 1U);
    EXPECT_EQ(content.faults[0].place, (tables::Place{3, 3, 7}));
}

TEST(TableFile, CanBeOverruledAndStopped)
{
    const auto file = inspectTable("Name;Mail\nAda;a@b.c\n", {TextEncoding::Windows1252, ','});
    ASSERT_TRUE(file);
    EXPECT_EQ(file->headings, (std::vector<std::string>{"Name;Mail"}));
    EXPECT_EQ(inspectTable("").error().reason, "there is nothing in it");
    QByteArray large("Name\n");
    for (int i = 0; i < 5000; ++i) {
        large += "Person " + QByteArray::number(i) + "\n";
    }
    EXPECT_FALSE(inspectTable(large, {}, [](int) { return false; }));
    const auto whole = inspectTable(large);
    tables::TableContent content;
    EXPECT_FALSE(readTable(*whole, whole->layout, content, 0, kFileDay, [](int) { return false; }));
}

TEST(TableFile, KnowsCards)
{
    const auto file = inspectTable("BEGIN:VCARD\nVERSION:3.0\nFN:Ada Cole\nEND:VCARD\n");
    ASSERT_TRUE(file);
    EXPECT_EQ(file->kind, TableKind::Cards);
    EXPECT_EQ(file->records, 1);
    tables::TableContent content;
    EXPECT_TRUE(readTable(*file, file->layout, content, 0, kFileDay));
    EXPECT_EQ(content.persons.at(0).name, "Ada Cole");
}

}  // namespace
}  // namespace chalk::exchange
