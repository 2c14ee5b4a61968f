#include "ui/shell/place.h"

#include <gtest/gtest.h>

namespace chalk::ui::shell {

TEST(Place, ComesBackFromItsLine)
{
    const Place places[] = {{.page = QStringLiteral("roster")},
                            {.page = QStringLiteral("client"), .client = base::ClientId(12), .lift = lifts::Pattern::HorizontalPush},
                            {.page = QStringLiteral("client"), .client = base::ClientId(3), .tab = QStringLiteral("a&b=c d")}};
    for (const Place& place : places) {
        EXPECT_EQ(placeOf(lineOf(place)), place) << lineOf(place).toStdString();
    }
    EXPECT_EQ(lineOf(places[1]).toStdString(), "client?client=12&lift=horizontal_push");
}

TEST(Place, LeavesOutWhatIsOfTheMoment)
{
    const Place place{.page = QStringLiteral("floor"), .session = base::SessionId(7), .text = QStringLiteral("8 8 7")};
    EXPECT_EQ(lineOf(place).toStdString(), "floor");
}

TEST(Place, RefusesWhatMakesNoSense)
{
    for (const char* line : {"", "?client=1", "client?client=x", "client?client=0", "client?client=-4", "client?lift=bench",
                             "client?client=99999999999999999999"}) {
        EXPECT_FALSE(placeOf(QLatin1String(line))) << line;
    }
    EXPECT_TRUE(placeOf(QStringLiteral("roster?unknown=1")));
}

}  // namespace chalk::ui::shell
