#include "core/exchange/vcard_reading.h"

#include <QString>

#include <gtest/gtest.h>

namespace chalk::exchange {
namespace {

const base::Date kCardsDay = *base::Date::fromYmd(2026, 11, 25);

tables::TableContent cardsOf(const QByteArray& text)
{
    tables::TableContent content;
    readVCards(text, content, 0, kCardsDay);
    return content;
}

QByteArray cardWith(const QByteArray& lines, const QByteArray& version = "4.0")
{
    return "BEGIN:VCARD\r\nVERSION:" + version + "\r\n" + lines + "END:VCARD\r\n";
}

// RFC 6350, 8: the first of its authors' vCards, from memory. Its BDAY has no year.
TEST(VCardReading, ReadsTheExampleOfTheStandard)
{
    const auto content = cardsOf(cardWith("FN:Simon Perreault\r\nN:Perreault;Simon;;;ing. jr,M.Sc.\r\nBDAY:--0203\r\nANNIVERSARY:20090808T1430-0500\r\nGENDER:M\r\n"
                                          "LANG;PREF=1:fr\r\nLANG;PREF=2:en\r\nORG;TYPE=work:Viagenie\r\n"
                                          "ADR;TYPE=work:;Suite D2-630;2875 Laurier;\r\n Quebec;QC;G1V 2M2;Canada\r\n"
                                          "TEL;VALUE=uri;TYPE=\"work,voice\";PREF=1:tel:+1-418-656-9254;ext=102\r\n"
                                          "TEL;VALUE=uri;TYPE=\"work,cell,voice,video,text\":tel:+1-418-262-6501\r\n"
                                          "EMAIL;TYPE=work:simon.perreault@viagenie.ca\r\nGEO;TYPE=work:geo:46.772673,-71.282945\r\nTZ:-0500\r\n"));
    EXPECT_TRUE(content.faults.empty());
    ASSERT_EQ(content.persons.size(), 1U);
    EXPECT_EQ(content.persons[0].name, "Simon Perreault");
    EXPECT_EQ(content.persons[0].birthDate, std::nullopt);
    EXPECT_EQ(content.persons[0].phone, "+1-418-656-9254 x 102");
    EXPECT_EQ(content.persons[0].mail, "simon.perreault@viagenie.ca");
}

// RFC 6350, 6.2.1, 6.2.2 and 6.2.5, and RFC 2426, 3.1.5: examples of the properties, from memory.
TEST(VCardReading, ReadsNamesAndBirthDays)
{
    EXPECT_EQ(cardsOf(cardWith("FN:Mr. John Q. Public\\, Esq.\r\n")).persons.at(0).name, "Mr. John Q. Public, Esq.");
    EXPECT_EQ(cardsOf(cardWith("N:Public;John;Quinlan;Mr.;Esq.\r\n")).persons.at(0).name, "John Quinlan Public");
    const auto born = base::Date::fromYmd(1996, 4, 15);
    EXPECT_EQ(cardsOf(cardWith("FN:A B\r\nBDAY:19960415\r\n")).persons.at(0).birthDate, born);
    EXPECT_EQ(cardsOf(cardWith("FN:A B\r\nBDAY:1996-04-15\r\n", "3.0")).persons.at(0).birthDate, born);
    EXPECT_EQ(cardsOf(cardWith("FN:A B\r\nBDAY:19531015T231000Z\r\n")).persons.at(0).birthDate, base::Date::fromYmd(1953, 10, 15));
    EXPECT_EQ(cardsOf(cardWith("FN:A B\r\nTEL;VALUE=uri:tel:+1-555\r\n")).persons.at(0).phone, "+1-555");
    for (const char* silent : {"BDAY:--0415\r\n", "BDAY;VALUE=text:circa 1800\r\n", "BDAY:1953\r\n", "BDAY:1953-10\r\n"}) {
        const auto content = cardsOf(cardWith(QByteArray("FN:A B\r\n") + silent));
        EXPECT_TRUE(content.faults.empty()) << silent;
        EXPECT_EQ(content.persons.at(0).birthDate, std::nullopt) << silent;
    }
}

TEST(VCardReading, PrefersWhatTheCardPrefers)
{
    const auto content = cardsOf(cardWith("FN:A B\r\nTEL:1\r\nTEL;PREF=2:2\r\nTEL;PREF=1:3\r\nEMAIL:x@y.z\r\nEMAIL;TYPE=pref:p@y.z\r\nNOTE:one\\ntwo\r\n", "3.0"));
    EXPECT_EQ(content.persons.at(0).phone, "3");
    EXPECT_EQ(content.persons.at(0).mail, "p@y.z");
    EXPECT_EQ(content.persons.at(0).note, "one\ntwo");
}

TEST(VCardReading, LeavesGroupsOutAndFaultyCardsToo)
{
    EXPECT_TRUE(cardsOf(cardWith("KIND:org\r\nFN:A Club\r\n")).persons.empty());
    const auto content = cardsOf(cardWith("FN:A B\r\nBDAY:19961315\r\n") + "stray\r\n" + cardWith("NOTE:nobody\r\n") + cardWith("FN:C D\r\n") + "BEGIN:VCARD\r\nFN:E F\r\n");
    ASSERT_EQ(content.persons.size(), 1U);
    EXPECT_EQ(content.persons[0].name, "C D");
    const std::vector<tables::CellFault> expected{{{0, 4, 6}, "BDAY", "there is no such day as 19961315"},
                                                  {{0, 6, 1}, "", "stands outside of any card"},
                                                  {{0, 7, 1}, "FN", "the card names nobody"},
                                                  {{0, 15, 1}, "BEGIN", "the card that begins here has no END"}};
    EXPECT_EQ(content.faults, expected);
    EXPECT_EQ(content.rows, 4);
    EXPECT_EQ(cardsOf(cardWith("FN:A B\r\nBDAY:in May\r\n")).faults.at(0).reason, "must be a day such as 1996-04-15 or 19960415");
    EXPECT_TRUE(isVCard("\r\nbegin:vcard\r\n"));
    EXPECT_FALSE(isVCard("Name,Mail\n"));
}

}  // namespace
}  // namespace chalk::exchange
