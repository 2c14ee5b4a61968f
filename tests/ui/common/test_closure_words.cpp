#include "ui/common/closure_words.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(ClosureWords, SayWhatIsClosedWhenAndWhy)
{
    const std::vector<week::CoachOfWeek> coaches{{{base::CoachId(2), "Tobias"}, {}}};
    const base::Date day = *base::Date::fromYmd(2026, 12, 5);
    const auto text = [&](const week::Closure& closure) { return closureText(closure, coaches).toStdString(); };
    EXPECT_EQ(text({day, day, 720, week::kDayMinutes, {}, {}, 0, "Harbour lights"}), "Closed from 12:00: Harbour lights");
    EXPECT_EQ(text({day, day, 0, week::kDayMinutes, {}, {}, 0, {}}), "Closed all day");
    EXPECT_EQ(text({day, day, 960, 1200, base::CoachId(2), {}, 0, {}}), "Tobias away 16:00 – 20:00");
    EXPECT_EQ(text({day, day, 0, 600, {}, lifts::Station::Rack, 1, "Repair"}), "Of the racks there are 1, until 10:00: Repair");
}

TEST(ClosureWords, StandOnEachOfTheirDays)
{
    chalk::week::WeekFacts facts;
    facts.monday = *base::Date::fromYmd(2026, 11, 30);
    facts.closures = {{facts.monday + 5, facts.monday + 9, 0, chalk::week::kDayMinutes, {}, {}, 0, {}},
                      {facts.monday + 5, facts.monday + 5, 720, chalk::week::kDayMinutes, {}, lifts::Station::Rack, 1, {}}};
    const auto notes = closureNotes(facts);
    EXPECT_TRUE(notes[4].isEmpty());
    EXPECT_EQ(notes[5], QStringLiteral("Closed all day; Of the racks there are 1, from 12:00"));
    EXPECT_EQ(notes[6], QStringLiteral("Closed all day"));
}

}  // namespace chalk::ui::common
