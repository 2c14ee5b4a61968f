#include "core/clients/body_measures.h"

#include <gtest/gtest.h>

namespace chalk::clients {

namespace {

using base::Load;
using base::Mass;
using base::MassUnit;

Mass kilograms(std::int32_t centi)
{
    return Mass::of(Load::fromCenti(centi), MassUnit::Kilogram);
}

BmiClass classAtTwoMetres(std::int32_t centiKilograms)
{
    return bmiClassOf(kilograms(centiKilograms), Millimetres(2000));
}

std::string faultyMeasure(const BodyMeasures& measures)
{
    const auto fault = faultOf(measures, *base::Date::fromYmd(2026, 11, 25));
    return fault ? fault->field : std::string();
}

}  // namespace

// Reckoned from the definition, kg/m².
TEST(BodyMeasures, BodyMassIndex)
{
    EXPECT_NEAR(bmiOf(kilograms(8000), Millimetres(1800)), 24.691358, 1e-6);
    EXPECT_NEAR(bmiOf(Mass::of(Load::fromCenti(15400), MassUnit::Pound), Millimetres(1700)), 24.170, 1e-3);
}

// Classes of the World Health Organization: 18.5, 25, 30, 35, 40. At 2 m they begin at 74, 100, 120, 140 and 160 kg.
TEST(BodyMeasures, EveryBorderOfTheIndexBelongsToTheClassAbove)
{
    EXPECT_EQ(classAtTwoMetres(7399), BmiClass::Under);
    EXPECT_EQ(classAtTwoMetres(7400), BmiClass::Normal);
    EXPECT_EQ(classAtTwoMetres(9999), BmiClass::Normal);
    EXPECT_EQ(classAtTwoMetres(10000), BmiClass::Over);
    EXPECT_EQ(classAtTwoMetres(11999), BmiClass::Over);
    EXPECT_EQ(classAtTwoMetres(12000), BmiClass::ObeseOne);
    EXPECT_EQ(classAtTwoMetres(13999), BmiClass::ObeseOne);
    EXPECT_EQ(classAtTwoMetres(14000), BmiClass::ObeseTwo);
    EXPECT_EQ(classAtTwoMetres(15999), BmiClass::ObeseTwo);
    EXPECT_EQ(classAtTwoMetres(16000), BmiClass::ObeseThree);
}

// 53.465 kg at 1.70 m is 18.5 exactly, and something else in floating point.
TEST(BodyMeasures, TheBorderIsExactToTheGram)
{
    const Mass onTheBorder = Mass::fromRaw(534'650'000'000);
    EXPECT_EQ(bmiClassOf(onTheBorder, Millimetres(1700)), BmiClass::Normal);
    EXPECT_EQ(bmiClassOf(Mass::fromRaw(onTheBorder.raw() - 1), Millimetres(1700)), BmiClass::Under);
}

// World Health Organization 2008, from memory: above 94 and 102 cm (men), above 80 and 88 cm (women).
TEST(BodyMeasures, Waist)
{
    EXPECT_EQ(waistClassOf(Millimetres(940), NormSex::Male), WaistClass::NotRaised);
    EXPECT_EQ(waistClassOf(Millimetres(941), NormSex::Male), WaistClass::Raised);
    EXPECT_EQ(waistClassOf(Millimetres(1020), NormSex::Male), WaistClass::Raised);
    EXPECT_EQ(waistClassOf(Millimetres(1021), NormSex::Male), WaistClass::High);
    EXPECT_EQ(waistClassOf(Millimetres(800), NormSex::Female), WaistClass::NotRaised);
    EXPECT_EQ(waistClassOf(Millimetres(801), NormSex::Female), WaistClass::Raised);
    EXPECT_EQ(waistClassOf(Millimetres(881), NormSex::Female), WaistClass::High);
    EXPECT_EQ(waistClassOf(Millimetres(881), NormSex::NotGiven), std::nullopt);
}

// Jackson and Pollock 1978, as worked in a collection of medical formulas: a man of 30, 15 + 18 + 20 mm: density 1.0623372, 16.0 % (Siri 1961).
TEST(BodyMeasures, ThreeSkinfoldsOfAMan)
{
    const auto density = densityOf({150, 180, 200}, 30, NormSex::Male);
    ASSERT_TRUE(density);
    EXPECT_NEAR(*density, 1.0623372, 2e-7);
    EXPECT_NEAR(siriFatPercent(*density), 16.0, 0.05);
}

// Jackson, Pollock and Ward 1980; reckoned by hand from the printed equation.
TEST(BodyMeasures, ThreeSkinfoldsOfAWoman)
{
    EXPECT_NEAR(densityOf({200, 200, 200}, 25, NormSex::Female).value(), 1.0447181, 1e-7);
    EXPECT_NEAR(siriFatPercent(densityOf({250, 250, 250}, 40, NormSex::Female).value()), 29.4681, 1e-4);
}

// Siri 1961, printed: density 1.0650 is 14.8 %.
TEST(BodyMeasures, Siri)
{
    EXPECT_NEAR(siriFatPercent(1.0650), 14.8, 0.05);
}

TEST(BodyMeasures, NoDensityOutsideOfTheAgesOfTheEquation)
{
    const Skinfolds folds{100, 100, 100};
    EXPECT_FALSE(densityOf(folds, 17, NormSex::Male));
    EXPECT_TRUE(densityOf(folds, 61, NormSex::Male));
    EXPECT_FALSE(densityOf(folds, 62, NormSex::Male));
    EXPECT_FALSE(densityOf(folds, 56, NormSex::Female));
    EXPECT_FALSE(densityOf(folds, 30, NormSex::NotGiven));
}

TEST(BodyMeasures, NamesTheMeasureThatCannotBe)
{
    BodyMeasures measures;
    measures.date = *base::Date::fromYmd(2026, 11, 25);
    EXPECT_EQ(faultyMeasure(measures), "");
    const auto with = [&measures](auto change) {
        BodyMeasures changed = measures;
        change(changed);
        return faultyMeasure(changed);
    };
    EXPECT_EQ(with([](BodyMeasures& m) { m.date = m.date + 1; }), "date");
    EXPECT_EQ(with([](BodyMeasures& m) { m.mass = kilograms(1999); }), "mass");
    EXPECT_EQ(with([](BodyMeasures& m) { m.mass = kilograms(2000); }), "");
    EXPECT_EQ(with([](BodyMeasures& m) { m.mass = kilograms(40001); }), "mass");
    EXPECT_EQ(with([](BodyMeasures& m) { m.height = Millimetres(499); }), "height");
    EXPECT_EQ(with([](BodyMeasures& m) { m.waist = Millimetres(2501); }), "waist");
    EXPECT_EQ(with([](BodyMeasures& m) { m.skinfolds = Skinfolds{9, 100, 100}; }), "skinfolds");
    EXPECT_EQ(with([](BodyMeasures& m) { m.systolic = 400; }), "systolic");
}

TEST(BodyMeasures, ClassesHaveKeys)
{
    EXPECT_EQ(keyOf(BmiClass::ObeseThree), "obese_3");
    EXPECT_EQ(keyOf(WaistClass::NotRaised), "not_raised");
}

}  // namespace chalk::clients
