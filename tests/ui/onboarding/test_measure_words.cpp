#include "ui/onboarding/measure_words.h"

#include <gtest/gtest.h>

namespace chalk::ui::onboarding {

namespace {

const base::Date kMeasureDay = base::Date::fromYmd(2026, 11, 24).value();

MeasuresTyped onThatDay()
{
    MeasuresTyped typed;
    typed.day = QStringLiteral("24 Nov 2026");
    return typed;
}

QString faultyFieldIn(const MeasuresTyped& typed)
{
    const auto read = measuresOf(typed, base::MassUnit::Kilogram, kMeasureDay);
    return read ? QString() : read.error().field;
}

const MeasureLine* lineNamed(const std::vector<MeasureLine>& lines, const char* name)
{
    for (const MeasureLine& line : lines) {
        if (line.name == QLatin1String(name)) {
            return &line;
        }
    }
    return nullptr;
}

}  // namespace

TEST(MeasureWordsTest, PointAndCommaReadAlike)
{
    for (const char* typed : {"82.4", "82,4", " 82.4 "}) {
        EXPECT_EQ(centimetresOf(QLatin1String(typed)), clients::Millimetres(824)) << typed;
    }
    for (const char* typed : {"", "82.45", "eighty", "-82", "8 2", "12345"}) {
        EXPECT_FALSE(centimetresOf(QLatin1String(typed))) << typed;
    }
}

TEST(MeasureWordsTest, ReadsAWholeDay)
{
    MeasuresTyped typed = onThatDay();
    typed.mass = QStringLiteral("180");
    typed.height = QStringLiteral("178");
    typed.waist = QStringLiteral("91,5");
    typed.folds = QStringLiteral("12 24.5 18");
    typed.heartRate = QStringLiteral("62");
    typed.pressure = QStringLiteral("128 / 82");
    const auto read = measuresOf(typed, base::MassUnit::Pound, kMeasureDay);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->mass, base::Mass::of(base::Load::fromCenti(18000), base::MassUnit::Pound));
    EXPECT_EQ(read->waist, clients::Millimetres(915));
    EXPECT_EQ(read->skinfolds, (clients::Skinfolds{120, 245, 180}));
    EXPECT_EQ(read->systolic, 128);
    EXPECT_EQ(read->diastolic, 82);
}

TEST(MeasureWordsTest, NamesTheFieldThatMakesNoSense)
{
    MeasuresTyped typed = onThatDay();
    EXPECT_EQ(faultyFieldIn(typed), QString());
    typed.day = QStringLiteral("25 Nov 2026");
    EXPECT_EQ(faultyFieldIn(typed), QStringLiteral("date"));
    typed = onThatDay();
    typed.mass = QStringLiteral("19.9");
    EXPECT_EQ(faultyFieldIn(typed), QStringLiteral("mass"));
    typed.mass = QStringLiteral("20");
    EXPECT_EQ(faultyFieldIn(typed), QString());
    typed.height = QStringLiteral("1.78");
    EXPECT_EQ(faultyFieldIn(typed), QStringLiteral("height"));
    typed = onThatDay();
    typed.waist = QStringLiteral("251");
    EXPECT_EQ(faultyFieldIn(typed), QStringLiteral("waist"));
    typed = onThatDay();
    typed.folds = QStringLiteral("12 24");
    EXPECT_EQ(faultyFieldIn(typed), QStringLiteral("skinfolds"));
    typed = onThatDay();
    typed.heartRate = QStringLiteral("300");
    EXPECT_EQ(faultyFieldIn(typed), QStringLiteral("heart_rate"));
    typed = onThatDay();
    for (const char* pressure : {"80/120", "120", "120/", "400/90"}) {
        typed.pressure = QLatin1String(pressure);
        EXPECT_EQ(faultyFieldIn(typed), QStringLiteral("pressure")) << pressure;
    }
}

TEST(MeasureWordsTest, ReadingsAboveTheLimitsOfTheStudioWarn)
{
    clients::BodyMeasures day;
    day.date = kMeasureDay;
    day.heartRate = 100;
    day.systolic = 181;
    day.diastolic = 90;
    const auto warnings = [&day](const clients::RestingLimits& limits) {
        const auto lines = measureLinesOf({day}, {}, {}, limits);
        return std::count_if(lines.begin(), lines.end(), [](const MeasureLine& line) { return line.isWarning; });
    };
    EXPECT_EQ(warnings({100, 180, 100}), 1);
    EXPECT_EQ(warnings({100, 181, 100}), 0);
    EXPECT_EQ(warnings({99, 180, 100}), 2);
}

TEST(MeasureWordsTest, TheNewestOfEachKindCountsAndAClassNeedsASex)
{
    clients::BodyMeasures first;
    first.date = kMeasureDay - 30;
    first.waist = clients::Millimetres(1010);
    clients::BodyMeasures second;
    second.date = kMeasureDay;
    second.mass = base::Mass::of(base::Load::fromCenti(8000), base::MassUnit::Kilogram);
    clients::Profile profile;
    auto lines = measureLinesOf({first, second}, {}, profile, {});
    ASSERT_NE(lineNamed(lines, "Waist"), nullptr);
    EXPECT_EQ(lineNamed(lines, "Waist")->value, QStringLiteral("101 cm"));
    EXPECT_EQ(lineNamed(lines, "Waist")->note, QStringLiteral("no class without a sex for norms"));
    EXPECT_EQ(lineNamed(lines, "Body mass index"), nullptr) << "no height";
    profile.sex = clients::NormSex::Female;
    lines = measureLinesOf({first, second}, {}, profile, {});
    EXPECT_EQ(lineNamed(lines, "Waist")->note, QStringLiteral("high")) << "WHO 2008: above 88 cm for women";
}

TEST(MeasureWordsTest, ADayInOneLine)
{
    clients::BodyMeasures day;
    day.date = kMeasureDay;
    day.mass = base::Mass::of(base::Load::fromCenti(8240), base::MassUnit::Kilogram);
    day.waist = clients::Millimetres(910);
    day.heartRate = 62;
    day.systolic = 128;
    day.diastolic = 82;
    EXPECT_EQ(dayLineOf(day, base::MassUnit::Kilogram), QStringLiteral("24 Nov 2026: 82.4 kg, waist 91 cm, 62/min, 128/82"));
}

}  // namespace chalk::ui::onboarding
