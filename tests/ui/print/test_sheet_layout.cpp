#include "ui/print/sheet_layout.h"

#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/sheet_checks.h"

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using sessions::CardContent;
using test::textOf;

/// Two clients on two days, both at the same times.
std::vector<CardContent> twoByTwo()
{
    std::vector<CardContent> cards;
    for (const int day : {0, 2}) {
        for (const auto& [id, name] : {std::pair(1, "Joaquin Ferro"), std::pair(2, "Jutta Falk")}) {
            cards.push_back(test::ferroCard());
            cards.back().client = base::ClientId(id);
            cards.back().clientName = name;
            cards.back().date = cards.back().date + day;
        }
    }
    return cards;
}

constexpr SheetLayout kEveryLayout[] = {SheetLayout::Card, SheetLayout::FourCards, SheetLayout::Group, SheetLayout::Week};

}  // namespace

TEST(SheetLayout, EachHasItsPaper)
{
    EXPECT_EQ(paperOf(SheetLayout::Card, PaperFamily::Iso), PaperSize::A5);
    EXPECT_EQ(paperOf(SheetLayout::Card, PaperFamily::NorthAmerican), PaperSize::HalfLetter);
    for (const SheetLayout layout : {SheetLayout::FourCards, SheetLayout::Group, SheetLayout::Week}) {
        EXPECT_EQ(paperOf(layout, PaperFamily::Iso), PaperSize::A4);
        EXPECT_EQ(paperOf(layout, PaperFamily::NorthAmerican), PaperSize::Letter);
    }
}

TEST(SheetLayout, CardsComeTogetherByWhatTheyShare)
{
    const std::vector<CardContent> cards = twoByTwo();
    SheetRequest request;
    for (const auto& [layout, sheets] : {std::pair(SheetLayout::Card, 4U), std::pair(SheetLayout::FourCards, 1U), std::pair(SheetLayout::Group, 2U), std::pair(SheetLayout::Week, 2U)}) {
        request.layout = layout;
        EXPECT_EQ(sheetsOf(cards, request).size(), sheets) << static_cast<int>(layout);
    }
    request.layout = SheetLayout::Week;
    const auto weeks = sheetsOf(cards, request);
    EXPECT_TRUE(textOf({weeks[0]}).contains(QStringLiteral("Joaquin Ferro")));
    EXPECT_FALSE(textOf({weeks[0]}).contains(QStringLiteral("Jutta Falk")));
}

TEST(SheetLayout, InitialsAloneAndClientsWhoShareThemStayApart)
{
    SheetRequest request;
    request.hasInitialsOnly = true;
    for (const SheetLayout layout : kEveryLayout) {
        request.layout = layout;
        const QString text = textOf(sheetsOf(twoByTwo(), request));
        EXPECT_TRUE(text.contains(QStringLiteral("J. F."))) << static_cast<int>(layout);
        for (const char* part : {"Joaquin", "Ferro", "Jutta", "Falk"}) {
            EXPECT_FALSE(text.contains(QLatin1String(part))) << static_cast<int>(layout);
        }
    }
    EXPECT_EQ(sheetsOf(twoByTwo(), request).size(), 2U) << "two clients, two weeks";
}

TEST(SheetLayout, WhoSharesInitialsInAGroupIsToldApartByANumber)
{
    SheetRequest request;
    request.layout = SheetLayout::Group;
    request.hasInitialsOnly = true;
    const QStringList texts = textOf(sheetsOf(twoByTwo(), request)).split(QLatin1Char('\n'));
    EXPECT_TRUE(texts.contains(QStringLiteral("J. F. 1")));
    EXPECT_TRUE(texts.contains(QStringLiteral("J. F. 2")));
    EXPECT_FALSE(texts.contains(QStringLiteral("J. F.")));
}

TEST(SheetLayout, NoCardsAreNoSheets)
{
    SheetRequest request;
    for (const SheetLayout layout : kEveryLayout) {
        request.layout = layout;
        EXPECT_TRUE(sheetsOf({}, request).empty());
    }
}

}  // namespace chalk::ui::print
