#include "core/exchange/json_places.h"

#include <gtest/gtest.h>

namespace chalk::exchange {

TEST(JsonPlaces, CountsLinesAndCharactersFromOne)
{
    const QByteArray text = "{\n \"n\u00e4me\": 5\n}";
    EXPECT_EQ(placeAt(text, 0), (JsonPlace{1, 1}));
    EXPECT_EQ(placeAt(text, text.indexOf('5')), (JsonPlace{2, 10}));
}

TEST(JsonPlaces, FindsTheValueOfAPath)
{
    const QByteArray text = "{\"a\": [1,\n {\"b\": \"]\", \"c\": {\"d\": 7}}]}";
    EXPECT_EQ(placeOf(text, "a[1].c.d"), placeAt(text, text.indexOf('7')));
    EXPECT_EQ(placeOf(text, "a[0]"), placeAt(text, text.indexOf('1')));
    EXPECT_EQ(placeOf(text, "a[1].missing"), placeAt(text, text.indexOf("{\"b\"")));
    EXPECT_EQ(placeOf(text, ""), (JsonPlace{1, 1}));
}

}  // namespace chalk::exchange
