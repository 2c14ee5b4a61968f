#include "core/checkin/choice_reason.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::checkin {

TEST(ChoiceReason, EveryReasonHasAKeyOfItsOwn)
{
    std::set<std::string_view> keys;
    for (std::size_t i = 0; i < kChoiceReasons.size(); ++i) {
        EXPECT_EQ(static_cast<std::size_t>(kChoiceReasons[i]), i);
        keys.insert(keyOf(kChoiceReasons[i]));
    }
    EXPECT_EQ(keys.size(), kChoiceReasons.size());
    EXPECT_EQ(keyOf(ChoiceReason::AfterLayoff), "after_layoff");
}

}  // namespace chalk::checkin
