#include "core/plateau/entry_mark.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::plateau {

TEST(EntryMarks, HaveAKeyEach)
{
    std::set<std::string_view> keys;
    for (const EntryMark mark : kEntryMarks) {
        keys.insert(keyOf(mark));
    }
    EXPECT_EQ(keys.size(), kEntryMarks.size());
    EXPECT_EQ(keyOf(EntryMark::LighterWeek), "deload");
    EXPECT_EQ(keyOf(EntryMark::NewLevel), "new_level");
}

}  // namespace chalk::plateau
