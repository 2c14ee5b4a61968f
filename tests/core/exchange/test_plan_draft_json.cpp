#include "core/exchange/plan_draft_json.h"

#include <QJsonDocument>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::exchange {

namespace {

using planning::PlanDraft;

QJsonObject draftOf(const char* text)
{
    return QJsonDocument::fromJson(text).object();
}

/// Where reading fails; `none` where it does not.
std::string faultOfDraft(const char* text)
{
    const auto read = readPlanDraft(draftOf(text), "plan");
    return read ? "none" : read.error().field;
}

rc::Gen<PlanDraft> anyDraft()
{
    return rc::gen::exec([] {
        PlanDraft draft;
        draft.templateKey = *rc::gen::element<std::string>("", "one_full", "two_full");
        for (const lifts::Pattern pattern : lifts::kPatterns) {
            planning::LiftWish& wish = draft.of(pattern);
            if (*rc::gen::arbitrary<bool>()) {
                wish.start = progression::StartChoice{*rc::gen::element(progression::Stage::Pattern, progression::Stage::Control, progression::Stage::BaseLoad),
                                                      *rc::gen::element<std::string>("", "trained before")};
            }
            wish.exerciseKey = *rc::gen::element<std::string>("", "goblet_squat");
            wish.equipmentKey = *rc::gen::element<std::string>("", "bar");
            if (*rc::gen::arbitrary<bool>()) {
                wish.firstLoad = base::Load::fromCenti(*rc::gen::inRange(-20'000, 50'001));
            }
            wish.isLeftOut = *rc::gen::arbitrary<bool>();
            wish.whyLeftOut = *rc::gen::element<std::string>("", "not before the holidays");
        }
        const int slots = *rc::gen::inRange(0, 5);
        for (int i = 0; i < slots; ++i) {
            draft.slots.push_back({static_cast<std::size_t>(i), *rc::gen::inRange(0, 7), *rc::gen::inRange(0, 1440)});
        }
        const int filled = *rc::gen::inRange(0, 4);
        for (int i = 0; i < filled; ++i) {
            draft.contents.push_back(*rc::gen::container<std::vector<lifts::Pattern>>(rc::gen::elementOf(std::vector(lifts::kPatterns.begin(), lifts::kPatterns.end()))));
        }
        if (*rc::gen::arbitrary<bool>()) {
            draft.firstDay = base::Date::fromDays(*rc::gen::inRange(15'000, 30'000));
        }
        return draft;
    });
}

}  // namespace

RC_GTEST_PROP(PlanDraftJson, ReadsBackWhatItWrites, ())
{
    const PlanDraft draft = *anyDraft();
    const QJsonObject written = toJson(draft);
    const auto text = QJsonDocument(written).toJson();
    const auto read = readPlanDraft(QJsonDocument::fromJson(text).object(), {});
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == draft);
}

TEST(PlanDraftJson, AnEmptyDraftIsAnEmptyObject)
{
    EXPECT_TRUE(toJson(PlanDraft()).isEmpty());
    const auto read = readPlanDraft(QJsonObject(), {});
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, PlanDraft());
}

TEST(PlanDraftJson, FaultsNameTheirPlace)
{
    EXPECT_EQ(faultOfDraft(R"({"wishes": {"squat": {"exercise": "goblet_squat"}}})"), "none");
    EXPECT_EQ(faultOfDraft(R"({"wish": {}})"), "plan.wish");
    EXPECT_EQ(faultOfDraft(R"({"wishes": {"bench": {}}})"), "plan.wishes.bench");
    EXPECT_EQ(faultOfDraft(R"({"wishes": {"squat": {"stage": "sideways"}}})"), "plan.wishes.squat.stage");
    EXPECT_EQ(faultOfDraft(R"({"wishes": {"squat": {"first_load": 20.005}}})"), "plan.wishes.squat.first_load");
    EXPECT_EQ(faultOfDraft(R"({"wishes": {"squat": {"left_out": 1}}})"), "plan.wishes.squat.left_out");
    EXPECT_EQ(faultOfDraft(R"({"slots": [{"session": 0, "weekday": 7, "start": "09:00"}]})"), "plan.slots[0].weekday");
    EXPECT_EQ(faultOfDraft(R"({"slots": [{"session": 0, "weekday": 6, "start": "24:00"}]})"), "plan.slots[0].start");
    EXPECT_EQ(faultOfDraft(R"({"contents": [["squat"], ["bench"]]})"), "plan.contents[1][0]");
    EXPECT_EQ(faultOfDraft(R"({"contents": ["squat"]})"), "plan.contents[0]");
    EXPECT_EQ(faultOfDraft(R"({"first_day": "2026-02-30"})"), "plan.first_day");
}

}  // namespace chalk::exchange
