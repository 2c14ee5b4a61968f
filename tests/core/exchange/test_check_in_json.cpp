#include "core/exchange/check_in_json.h"

#include <QJsonArray>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

const base::Date kJsonDay = *base::Date::parse("2026-11-25");

checkin::ClientEvidence smallPage()
{
    checkin::LiftEvidence lift;
    lift.lift = base::LiftId(7);
    lift.exerciseKey = "back_squat";
    lift.stage = progression::Stage::LoadBuild;
    lift.estimates = {{kJsonDay - 2, base::Mass::fromRaw(800'000'000'000), base::Mass::fromRaw(850'000'000'000), base::Mass::fromRaw(900'000'000'000)}};
    lift.flat = checkin::DayRange{kJsonDay - 28, kJsonDay};
    checkin::Choice choice;
    choice.kind = checkin::ChoiceKind::LighterWeek;
    choice.isSuggested = true;
    choice.why = checkin::ChoiceReason::Tired;
    choice.event = progression::LighterWeek{};
    choice.next = progression::Prescription{};
    checkin::Choice hold;
    lift.choices = {choice, hold};
    checkin::ClientEvidence page;
    page.client = base::ClientId(3);
    page.name = "Ada";
    page.finding = {checkin::FindingKind::Plateau, base::LiftId(7), 4};
    page.readiness = {{kJsonDay - 1, 2, std::nullopt, 5}};
    page.attendance = {{kJsonDay - 1, sessions::SessionState::Recorded}};
    page.lifts = {lift};
    return page;
}

/// What stands at `lifts.0.choices`; nothing where there is no such place.
QJsonValue valueAt(const QJsonObject& object, const char* path)
{
    QJsonValue value = object;
    for (const QString& step : QString::fromLatin1(path).split(QLatin1Char('.'))) {
        bool isIndex = false;
        const int index = step.toInt(&isIndex);
        value = isIndex ? value.toArray().at(index) : value.toObject().value(step);
    }
    return value;
}

std::string textAt(const QJsonObject& object, const char* path)
{
    return valueAt(object, path).toString().toStdString();
}

}  // namespace

TEST(CheckInJson, AQueueEntryIsWrittenWithItsDecision)
{
    checkin::QueueEntry entry;
    entry.client = base::ClientId(3);
    entry.name = "Ada";
    entry.finding = {checkin::FindingKind::Plateau, base::LiftId(7), 4};
    entry.exerciseKey = "back_squat";
    entry.came = 7;
    entry.of = 8;
    const QJsonObject open = toJson(entry);
    EXPECT_EQ(textAt(open, "name"), "Ada");
    EXPECT_EQ(textAt(open, "finding.kind"), "plateau");
    EXPECT_EQ(valueAt(open, "finding.lift").toInt(), 7);
    EXPECT_EQ(valueAt(open, "finding.flat_weeks").toInt(), 4);
    EXPECT_TRUE(valueAt(open, "finding.plan_end").isNull());
    EXPECT_EQ(valueAt(open, "came").toInt(), 7);
    EXPECT_TRUE(valueAt(open, "decided").isNull());
    entry.decided = checkin::Decision{{}, entry.client, std::nullopt, kJsonDay, checkin::FindingKind::Plateau, checkin::ChoiceKind::Hold, "New job", kJsonDay + 14};
    const QJsonObject decided = toJson(entry);
    EXPECT_EQ(textAt(decided, "decided.choice"), "hold");
    EXPECT_EQ(textAt(decided, "decided.note"), "New job");
    EXPECT_EQ(textAt(decided, "decided.next_review"), "2026-12-09");
    EXPECT_TRUE(valueAt(decided, "decided.lift").isNull());
}

TEST(CheckInJson, APageHasItsLiftsWithVerdictAndChoices)
{
    const QJsonObject page = toJson(smallPage(), kJsonDay);
    EXPECT_EQ(valueAt(page, "readiness.0.stress").toInt(), 5);
    EXPECT_TRUE(valueAt(page, "readiness.0.soreness").isNull());
    EXPECT_EQ(textAt(page, "attendance.0.state"), "recorded");
    EXPECT_EQ(valueAt(page, "lifts.0.estimates.0.median").toDouble(), 85);
    EXPECT_EQ(textAt(page, "lifts.0.flat.from"), "2026-10-28");
    EXPECT_EQ(textAt(page, "lifts.0.verdict.verdict"), "not_enough_data");
    EXPECT_TRUE(valueAt(page, "lifts.0.weeks_per_step").isNull());
    EXPECT_EQ(valueAt(page, "lifts.0.choices").toArray().size(), 2);
    EXPECT_EQ(textAt(page, "lifts.0.choices.0.why"), "tired");
    EXPECT_EQ(textAt(page, "lifts.0.choices.0.event.type"), "lighter");
    EXPECT_TRUE(valueAt(page, "lifts.0.choices.0.event.date").isUndefined());
    EXPECT_TRUE(valueAt(page, "lifts.0.choices.1.why").isNull());
    EXPECT_TRUE(valueAt(page, "lifts.0.choices.1.event").isNull());
}

TEST(CheckInJson, AForecastHasItsPacesAndWeeks)
{
    checkin::Forecast forecast;
    forecast.single = base::Mass::fromRaw(1'000'000'000'000);
    forecast.slow.exposuresPerWeek = 1.5;
    checkin::ForecastWeek week;
    week.monday = kJsonDay;
    week.fast.load = base::Load::fromCenti(8250);
    week.fast.sets = base::Sets(3);
    forecast.weeks = {week};
    const QJsonObject object = toJson(forecast);
    EXPECT_EQ(valueAt(object, "single").toDouble(), 100);
    EXPECT_EQ(valueAt(object, "paces.slow.exposures_per_week").toDouble(), 1.5);
    EXPECT_EQ(valueAt(object, "weeks.0.fast.load").toDouble(), 82.5);
    EXPECT_EQ(valueAt(object, "weeks.0.fast.sets").toInt(), 3);
    const QJsonObject lack = toJson(checkin::ForecastLack{checkin::NoForecast::FewExposures, 5});
    EXPECT_EQ(textAt(lack, "why"), "few_exposures");
    EXPECT_EQ(valueAt(lack, "missing").toInt(), 5);
}

}  // namespace chalk::exchange
