#include "core/screens/field_tests.h"

#include "tests/support/table_file.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace chalk::screens {

namespace {

using clients::NormSex;
using test::TableRow;

NormClass classOf(const FieldTest& test, int age, NormSex sex = NormSex::NotGiven)
{
    return normOf(test, {age, sex}).normClass;
}

bool hasRemark(const NormResult& result, NormRemark remark)
{
    return std::find(result.remarks.begin(), result.remarks.end(), remark) != result.remarks.end();
}

ChairStand stands(int count)
{
    return {base::Reps(count), false};
}

PushUps pushUps(int count, PushUpForm form)
{
    return {base::Reps(count), form};
}

SitAndReach reach(int cm, int zeroMm = 380)
{
    return {cm * 10, zeroMm};
}

/// The whole line of one row's classes around its limits, at both ends of its ages.
void expectChairRow(const TableRow& row, NormSex sex, const std::string& prefix)
{
    const auto [youngest, oldest] = test::agesIn(row);
    const int low = test::numberIn(row, "rj_" + prefix + "_lo");
    const int high = test::numberIn(row, "rj_" + prefix + "_hi");
    EXPECT_EQ(low, test::numberIn(row, "steadi_below_avg_" + prefix + "_lt"));
    for (const int age : {youngest, oldest}) {
        EXPECT_EQ(classOf(stands(low - 1), age, sex), NormClass::BelowAverage) << age << prefix;
        EXPECT_EQ(classOf(stands(low), age, sex), NormClass::Average) << age << prefix;
        EXPECT_EQ(classOf(stands(high), age, sex), NormClass::Average) << age << prefix;
        EXPECT_EQ(classOf(stands(high + 1), age, sex), NormClass::AboveAverage) << age << prefix;
        const NormResult result = normOf(stands(low), {age, sex});
        EXPECT_EQ(result.range, (NormRange{low, high}));
        EXPECT_EQ(result.ages, (NormRange{youngest, oldest}));
    }
}

struct Limit {
    const char* column;
    NormClass below;
    NormClass from;
};
constexpr Limit kPushUpLimits[] = {{"fair_from", NormClass::NeedsImprovement, NormClass::Fair},
                                   {"good_from", NormClass::Fair, NormClass::Good},
                                   {"very_good_from", NormClass::Good, NormClass::VeryGood},
                                   {"excellent_from", NormClass::VeryGood, NormClass::Excellent}};

}  // namespace

// Source: Rikli and Jones; CDC STEADI, 30-Second Chair Stand (tests/data/norms/chair_stand.csv).
TEST(FieldTestNorms, ChairStandInEveryCell)
{
    const auto rows = test::readTable("norms/chair_stand.csv");
    ASSERT_EQ(rows.size(), 7U);
    for (const TableRow& row : rows) {
        expectChairRow(row, NormSex::Male, "men");
        expectChairRow(row, NormSex::Female, "women");
    }
}

TEST(FieldTestNorms, ChairStandOutsideItsAges)
{
    for (const int age : {59, 95}) {
        const NormResult result = normOf(stands(14), {age, NormSex::Male});
        EXPECT_EQ(result.normClass, NormClass::OutsideAge);
        EXPECT_EQ(result.ages, (NormRange{60, 94}));
        EXPECT_EQ(result.range, NormRange());
        EXPECT_FALSE(isClass(result.normClass));
    }
    EXPECT_EQ(classOf(stands(14), 60), NormClass::SexNeeded);
}

TEST(FieldTestNorms, ChairStandWithTheArmsIsNothing)
{
    const NormResult result = normOf(ChairStand{base::Reps(20), true}, {62, NormSex::Female});
    EXPECT_EQ(result.value, 0);
    EXPECT_EQ(result.normClass, NormClass::BelowAverage);
    EXPECT_TRUE(hasRemark(result, NormRemark::ArmsUsed));
}

// Source: CSEP and ACSM push-up classes (tests/data/norms/pushup.csv).
TEST(FieldTestNorms, PushUpsInEveryCell)
{
    const auto rows = test::readTable("norms/pushup.csv");
    ASSERT_EQ(rows.size(), 12U);
    for (const TableRow& row : rows) {
        const NormSex sex = row.at("sex") == "M" ? NormSex::Male : NormSex::Female;
        const PushUpForm form = pushUpFormOf(row.at("form")).value();
        const auto [youngest, oldest] = test::agesIn(row);
        for (const int age : {youngest, oldest}) {
            for (const Limit& limit : kPushUpLimits) {
                const int from = test::numberIn(row, limit.column);
                EXPECT_EQ(classOf(pushUps(from - 1, form), age, sex), limit.below) << age << limit.column;
                EXPECT_EQ(classOf(pushUps(from, form), age, sex), limit.from) << age << limit.column;
                EXPECT_EQ(normOf(pushUps(from, form), {age, sex}).range.from, from);
                EXPECT_EQ(normOf(pushUps(from - 1, form), {age, sex}).range.to, from - 1);
            }
        }
    }
}

TEST(FieldTestNorms, PushUpsWherePrintsDiffer)
{
    const auto isDisputed = [](int reps, int age, NormSex sex) {
        const PushUpForm form = sex == NormSex::Male ? PushUpForm::Toes : PushUpForm::Knees;
        return hasRemark(normOf(pushUps(reps, form), {age, sex}), NormRemark::SourcesDisagree);
    };
    EXPECT_TRUE(isDisputed(22, 45, NormSex::Male)) << "excellent from 22 or from 25";
    EXPECT_TRUE(isDisputed(24, 45, NormSex::Male));
    EXPECT_FALSE(isDisputed(21, 45, NormSex::Male));
    EXPECT_FALSE(isDisputed(25, 45, NormSex::Male));
    EXPECT_TRUE(isDisputed(4, 65, NormSex::Male)) << "fair from 4 or from 5";
    EXPECT_TRUE(isDisputed(1, 55, NormSex::Female)) << "fair from 1 or from 2";
    EXPECT_FALSE(isDisputed(2, 55, NormSex::Female));
}

TEST(FieldTestNorms, PushUpsOfTheOtherFormHaveNone)
{
    EXPECT_EQ(classOf(pushUps(20, PushUpForm::Knees), 30, NormSex::Male), NormClass::OtherForm);
    EXPECT_EQ(classOf(pushUps(20, PushUpForm::Toes), 30, NormSex::Female), NormClass::OtherForm);
    EXPECT_EQ(classOf(pushUps(20, PushUpForm::Toes), 30), NormClass::SexNeeded);
    EXPECT_EQ(classOf(pushUps(20, PushUpForm::Toes), 14, NormSex::Male), NormClass::OutsideAge);
    EXPECT_EQ(classOf(pushUps(20, PushUpForm::Toes), 70, NormSex::Male), NormClass::OutsideAge);
}

// Source: Springer 2007, J Geriatr Phys Ther 30:8-15, rounded means (tests/data/norms/single_leg_stance.csv; its tenths are not confirmed).
TEST(FieldTestNorms, SingleLegStanceAtEveryRoundedMean)
{
    const auto rows = test::readTable("norms/single_leg_stance.csv");
    ASSERT_EQ(rows.size(), 6U);
    for (const TableRow& row : rows) {
        const int meanMs = static_cast<int>(std::lround(std::stod(row.at("eyes_open_mean_s")))) * 1000;
        const auto [youngest, oldest] = test::agesIn(row);
        for (const int age : {youngest, oldest}) {
            EXPECT_EQ(classOf(SingleLegStance{meanMs - 1}, age), NormClass::BelowMean) << age;
            EXPECT_EQ(classOf(SingleLegStance{meanMs}, age), NormClass::AtOrAboveMean) << age;
            EXPECT_TRUE(hasRemark(normOf(SingleLegStance{meanMs}, {age}), NormRemark::RoundedMean));
        }
        EXPECT_EQ(hasRemark(normOf(SingleLegStance{meanMs}, {youngest}), NormRemark::SourcesDisagree), row.at("status_eo").find("another") != std::string::npos);
    }
    EXPECT_EQ(classOf(SingleLegStance{45000}, 17), NormClass::OutsideAge);
}

TEST(FieldTestNorms, SingleLegStanceIsCappedAt45Seconds)
{
    const NormResult capped = normOf(SingleLegStance{45001}, {30});
    EXPECT_EQ(capped.value, 45000);
    EXPECT_TRUE(hasRemark(capped, NormRemark::CappedAt45Seconds));
    EXPECT_FALSE(hasRemark(normOf(SingleLegStance{45000}, {30}), NormRemark::CappedAt45Seconds));
}

// Source: Strand 2014, J Hum Kinet 40:93-102 (tests/data/norms/plank.csv). That students are 18 to 25 is common practice.
TEST(FieldTestNorms, PlankOfStudents)
{
    for (const TableRow& row : test::readTable("norms/plank.csv")) {
        const NormSex sex = row.at("sex") == "M" ? NormSex::Male : NormSex::Female;
        const int low = (test::numberIn(row, "mean_s") - test::numberIn(row, "deviation_s")) * 1000;
        const int high = (test::numberIn(row, "mean_s") + test::numberIn(row, "deviation_s")) * 1000;
        EXPECT_EQ(classOf(Plank{low - 1}, 18, sex), NormClass::BelowAverage);
        EXPECT_EQ(classOf(Plank{low}, 18, sex), NormClass::Average);
        EXPECT_EQ(classOf(Plank{high}, 25, sex), NormClass::Average);
        EXPECT_EQ(classOf(Plank{high + 1}, 25, sex), NormClass::AboveAverage);
        EXPECT_TRUE(hasRemark(normOf(Plank{low}, {20, sex}), NormRemark::StudentsOnly));
        EXPECT_EQ(classOf(Plank{low}, 17, sex), NormClass::OutsideAge);
        EXPECT_EQ(classOf(Plank{low}, 26, sex), NormClass::OutsideAge);
    }
    EXPECT_EQ(classOf(Plank{60000}, 20), NormClass::SexNeeded);
}

// Source: Powden 2015, Man Ther 20:524-532 (minimal detectable change 1.6 and 1.9 cm); Hoch and McKeon 2011, Man Ther 16:516-519 (12 ± 2.8 cm, n = 35).
TEST(FieldTestNorms, LungeSidesWithinTheErrorAreNoFinding)
{
    for (const int sign : {1, -1}) {
        EXPECT_EQ(classOf(WeightBearingLunge{110, 110 + sign * 19}, 40), NormClass::InsideError);
        EXPECT_EQ(classOf(WeightBearingLunge{110, 110 + sign * 20}, 40), NormClass::BeyondError);
    }
    EXPECT_EQ(normOf(WeightBearingLunge{100, 130}, {40}).value, 30);
    EXPECT_FALSE(hasRemark(normOf(WeightBearingLunge{92, 148}, {40}), NormRemark::SideOutsideUsual));
    EXPECT_TRUE(hasRemark(normOf(WeightBearingLunge{91, 100}, {40}), NormRemark::SideOutsideUsual));
    EXPECT_TRUE(hasRemark(normOf(WeightBearingLunge{140, 149}, {40}), NormRemark::SmallGroup));
    EXPECT_EQ(normOf(WeightBearingLunge{91, 100}, {17}).usual, NormRange()) << "adults were measured";
}

// Source: Mayo Clinic targets at a zero of 38 cm (tests/data/norms/sit_and_reach.csv); the bands around the ages are common practice.
TEST(FieldTestNorms, SitAndReachForTheSameZeroAlone)
{
    for (const TableRow& row : test::readTable("norms/sit_and_reach.csv")) {
        const int men = test::numberIn(row, "men_cm");
        const int women = test::numberIn(row, "women_cm");
        for (const int age : {test::numberIn(row, "age") - 5, test::numberIn(row, "age") + 4}) {
            EXPECT_EQ(normOf(reach(men), {age, NormSex::Male}).range.from, men * 10);
            EXPECT_EQ(classOf(SitAndReach{men * 10 - 1, 380}, age, NormSex::Male), NormClass::BelowTarget) << age;
            EXPECT_EQ(classOf(reach(men), age, NormSex::Male), NormClass::AtOrAboveTarget) << age;
            EXPECT_EQ(classOf(SitAndReach{women * 10 - 1, 381}, age, NormSex::Female), NormClass::BelowTarget) << age;
            EXPECT_EQ(classOf(reach(women), age, NormSex::Female), NormClass::AtOrAboveTarget) << age;
        }
    }
    for (const int zero : {0, 150, 230, 260, 379, 382}) {
        EXPECT_EQ(classOf(reach(60, zero), 30, NormSex::Male), NormClass::OtherZero) << zero;
    }
    EXPECT_EQ(classOf(reach(60), 19, NormSex::Male), NormClass::OutsideAge);
    EXPECT_EQ(classOf(reach(60), 70, NormSex::Male), NormClass::OutsideAge);
    EXPECT_EQ(classOf(reach(60), 30), NormClass::SexNeeded);
}

TEST(FieldTestNorms, EveryAnswerNamesItsSource)
{
    for (const FieldTest& test : {FieldTest(stands(1)), FieldTest(pushUps(1, PushUpForm::Toes)), FieldTest(SingleLegStance{1}), FieldTest(Plank{1}),
                                  FieldTest(WeightBearingLunge{1, 1}), FieldTest(reach(1))}) {
        for (int age = 0; age <= 120; ++age) {
            for (const NormSex sex : {NormSex::NotGiven, NormSex::Female, NormSex::Male}) {
                const NormResult result = normOf(test, {age, sex});
                EXPECT_FALSE(result.source.empty()) << keyOf(test);
                EXPECT_EQ(isClass(result.normClass), result.range.from || result.range.to) << keyOf(test) << age << keyOf(result.normClass);
            }
        }
    }
}

}  // namespace chalk::screens
