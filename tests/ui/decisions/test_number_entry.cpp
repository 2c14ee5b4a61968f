#include "ui/decisions/number_entry.h"

#include <gtest/gtest.h>

namespace chalk::ui::decisions {

namespace {

std::optional<int> centiOf(const char* text)
{
    const auto load = loadOf(QString::fromUtf8(text));
    return load ? std::optional(load->centi()) : std::nullopt;
}

std::optional<int> secondsOf(const char* text)
{
    const auto rest = restOf(QString::fromUtf8(text));
    return rest ? std::optional(rest->value()) : std::nullopt;
}

}  // namespace

TEST(NumberEntry, ALoadHasAPointOrACommaAndTwoDecimalsAtMost)
{
    EXPECT_EQ(centiOf("77.5"), 7750);
    EXPECT_EQ(centiOf(" 77,25 "), 7725);
    EXPECT_EQ(centiOf("100"), 10'000);
    EXPECT_EQ(centiOf("-20"), -2000);
    EXPECT_EQ(centiOf("\u221210"), -1000);
    for (const char* text : {"", "abc", "77.555", "7 7", "77.", "12345", "5000.01", "--5", "1e3"}) {
        EXPECT_EQ(centiOf(text), std::nullopt) << text;
    }
}

TEST(NumberEntry, ARestIsMinutesAndSecondsOrSeconds)
{
    EXPECT_EQ(secondsOf("2:30"), 150);
    EXPECT_EQ(secondsOf("90"), 90);
    EXPECT_EQ(secondsOf("0:05"), 5);
    EXPECT_EQ(secondsOf("3600"), 3600);
    for (const char* text : {"", "2:60", "2:3", "3601", "-5", "two"}) {
        EXPECT_EQ(secondsOf(text), std::nullopt) << text;
    }
}

TEST(NumberEntry, AWholeNumberStaysInItsRange)
{
    EXPECT_EQ(wholeNumberOf(QStringLiteral("8"), 1, 100), 8);
    EXPECT_EQ(wholeNumberOf(QStringLiteral("0"), 1, 100), std::nullopt);
    EXPECT_EQ(wholeNumberOf(QStringLiteral("101"), 1, 100), std::nullopt);
    EXPECT_EQ(wholeNumberOf(QStringLiteral("8.5"), 1, 100), std::nullopt);
}

TEST(NumberEntry, TheLoadsBesideOneThatCannotBeSetUpAreNamed)
{
    const auto loads =
        lifts::LoadTable::of(lifts::Stack{base::Load::fromCenti(500), base::Load::fromCenti(2000), base::Load::fromCenti(500)}).value();
    const auto text = [&loads](int centi) { return nearestLoadsText(loads, base::Load::fromCenti(centi), base::MassUnit::Pound); };
    EXPECT_EQ(text(1200), QStringLiteral("This equipment gives 10 or 15 lb."));
    EXPECT_EQ(text(9000), QStringLiteral("This equipment gives no more than 20 lb."));
    EXPECT_EQ(text(100), QStringLiteral("This equipment gives no less than 5 lb."));
}

}  // namespace chalk::ui::decisions
