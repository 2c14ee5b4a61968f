#include "core/store/trend_work.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

const lifts::Catalogue& workCatalogue()
{
    static const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    return catalogue;
}

exchange::StudioDocument studioWithSwap()
{
    exchange::StudioDocument document = test::smallStudio();
    auto& events = document.clients[0].lifts[1].events;
    events.push_back({{test::smallStudioDay() - 5, progression::Swap{test::fixedKit({20, 24}).equipment, {}, {}, {}, "goblet_squat", 2}}, {}});
    events.push_back({{test::smallStudioDay() - 3, test::exposureOf({{20, 8, 3}, {20, 8, 3}})}, {}});
    return document;
}

base::Mass volumeTogether(const std::vector<analysis::DatedWork>& work)
{
    return analysis::workTogether(work).volume;
}

}  // namespace

TEST(TrendWork, AClientsLogIsJudgedAnew)
{
    test::StudioOnTest studio(studioWithSwap());
    const base::Date day = test::smallStudioDay();
    const ClientLog log = readClientLog(studio.database(), workCatalogue(), test::clientNamed(studio.database(), "Ada Lund"), day);
    ASSERT_FALSE(studio.database().failure());
    ASSERT_EQ(log.lifts.size(), 3U);
    const checkin::TrendedLift& squat = log.lifts[0];
    EXPECT_EQ(squat.exerciseKey, "goblet_squat") << "as it is done now";
    ASSERT_EQ(squat.days.size(), 7U);
    EXPECT_FALSE(squat.days[0].single) << "a rehearsal";
    ASSERT_TRUE(squat.days[4].single);
    EXPECT_EQ(squat.days[4].single->toFailure, base::Reps(9)) << "8 and 1 in reserve, or 7 and 2";
    EXPECT_TRUE(squat.days[5].isSwap);
    EXPECT_DOUBLE_EQ(squat.days[6].single->load.kilograms(), 40) << "a pair of 20";
    EXPECT_EQ(log.lifts[1].name, "Trap-bar deadlift");
    // 2 × 8 × (30 + 35 + 40), 45 × 15, 2 × 8 × 60, 2 × 8 × 2 × 20 kg × reps (Σ sets × repetitions × load: Haff G.G. 2010).
    EXPECT_DOUBLE_EQ(volumeTogether(log.work).kilograms(), 1680 + 675 + 960 + 640);
}

TEST(TrendWork, WhatComesLaterIsLeftOut)
{
    test::StudioOnTest studio(studioWithSwap());
    const ClientLog log =
        readClientLog(studio.database(), workCatalogue(), test::clientNamed(studio.database(), "Ada Lund"), test::smallStudioDay() - 21);
    EXPECT_EQ(log.lifts[0].days.size(), 4U);
    EXPECT_EQ(log.lifts[0].exerciseKey, "back_squat");
    EXPECT_TRUE(log.lifts[1].days.empty());
}

TEST(TrendWork, EverybodysWorkIsThatOfTheirLogs)
{
    test::StudioOnTest studio(studioWithSwap());
    studio.rows(QStringLiteral("INSERT INTO event (root_id, replaces_id, lift_id, day, act_id, session_id, is_void, type, pain, detail) SELECT id, id, lift_id, day, "
                               "act_id, session_id, 1, type, pain, detail FROM event WHERE session_id IS NOT NULL AND pain = 5"));
    const base::Date day = test::smallStudioDay();
    const base::ClientId ada = test::clientNamed(studio.database(), "Ada Lund");
    const auto all = readAllWork(studio.database(), {day - 60, day});
    ASSERT_EQ(all.size(), 1U);
    EXPECT_DOUBLE_EQ(volumeTogether(all.at(ada)).kilograms(), 1680 + 675 + 640) << "the deadlift was taken back";
    EXPECT_EQ(volumeTogether(all.at(ada)), volumeTogether(readClientLog(studio.database(), workCatalogue(), ada, day).work));
    EXPECT_DOUBLE_EQ(volumeTogether(readAllWork(studio.database(), {day - 7, day - 4}).at(ada)).kilograms(), 675);
}

}  // namespace chalk::store
