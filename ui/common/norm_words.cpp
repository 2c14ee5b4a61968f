#include "ui/common/norm_words.h"

#include <QCoreApplication>

#include <array>

namespace chalk::ui::common {

namespace {

using screens::FieldTest;
using screens::NormClass;
using screens::NormRange;
using screens::NormRemark;
using screens::NormResult;

QString normWord(const char* text)
{
    return QCoreApplication::translate("NormWords", text);
}

QString unitSuffix(const FieldTest& test)
{
    if (std::holds_alternative<screens::SingleLegStance>(test) || std::holds_alternative<screens::Plank>(test)) {
        return normWord(" s");
    }
    return std::holds_alternative<screens::WeightBearingLunge>(test) || std::holds_alternative<screens::SitAndReach>(test) ? normWord(" cm") : QString();
}

/// The number alone: whole units and at most the decimals that the test is measured in.
QString bareValue(const FieldTest& test, int value)
{
    if (unitSuffix(test).isEmpty()) {
        return QString::number(value);
    }
    const bool isTime = std::holds_alternative<screens::SingleLegStance>(test) || std::holds_alternative<screens::Plank>(test);
    return QString::number(value / (isTime ? 1000.0 : 10.0), 'g', 7);
}

/// The class by itself; empty where there is none.
QString className(NormClass normClass)
{
    switch (normClass) {
    case NormClass::BelowAverage: return normWord("Below average");
    case NormClass::Average: return normWord("Average");
    case NormClass::AboveAverage: return normWord("Above average");
    case NormClass::BelowMean: return normWord("Below the mean of this age");
    case NormClass::AtOrAboveMean: return normWord("At or above the mean of this age");
    case NormClass::NeedsImprovement: return normWord("Needs improvement");
    case NormClass::Fair: return normWord("Fair");
    case NormClass::Good: return normWord("Good");
    case NormClass::VeryGood: return normWord("Very good");
    case NormClass::Excellent: return normWord("Excellent");
    case NormClass::BelowTarget: return normWord("Below the target of this age");
    case NormClass::AtOrAboveTarget: return normWord("At or above the target of this age");
    case NormClass::InsideError: return normWord("No finding: the sides differ by less than the error of the test");
    case NormClass::BeyondError: return normWord("The sides differ by more than the error of the test");
    case NormClass::OutsideAge:
    case NormClass::SexNeeded:
    case NormClass::OtherForm:
    case NormClass::OtherZero:
        break;
    }
    return {};
}

}  // namespace

QString testName(const FieldTest& test)
{
    constexpr std::array names{"30-second chair stand", "Push-ups", "Single-leg stance", "Plank", "Weight-bearing lunge", "Sit-and-reach"};
    return normWord(names[test.index()]);
}

QString testValueText(const FieldTest& test, int value)
{
    return bareValue(test, value) + unitSuffix(test);
}

QString normRangeText(const FieldTest& test, const NormRange& range)
{
    if (range.from && range.to) {
        return normWord("%1 to %2").arg(bareValue(test, *range.from), testValueText(test, *range.to));
    }
    if (range.from) {
        return normWord("%1 or more").arg(testValueText(test, *range.from));
    }
    const bool isTimed = std::holds_alternative<screens::SingleLegStance>(test) || std::holds_alternative<screens::Plank>(test);
    if (range.to && isTimed) {
        return normWord("below %1").arg(testValueText(test, *range.to + 1));  // times are kept by the millisecond
    }
    return range.to ? normWord("up to %1").arg(testValueText(test, *range.to)) : QString();
}

QString normAgesText(const NormRange& ages)
{
    if (ages.from && ages.to) {
        return normWord("%1 to %2 years").arg(*ages.from).arg(*ages.to);
    }
    return ages.from ? normWord("%1 years and over").arg(*ages.from) : normWord("all ages");
}

QString normSentence(const FieldTest& test, const NormResult& result)
{
    if (screens::isClass(result.normClass)) {
        return normWord("%1: %2.").arg(className(result.normClass), normRangeText(test, result.range));
    }
    if (result.normClass == NormClass::SexNeeded) {
        return normWord("No class: this norm is split by sex, and none is given.");
    }
    if (result.normClass == NormClass::OtherForm) {
        return normWord("No class: this norm is for men on the toes and women on the knees.");
    }
    if (result.normClass == NormClass::OtherZero) {
        return normWord("No class: this norm is for a scale that shows 38 cm at the feet.");
    }
    return normWord("No class: outside the age range of this norm, which is %1.").arg(normAgesText(result.ages));
}

QString remarkSentence(NormRemark remark)
{
    switch (remark) {
    case NormRemark::ArmsUsed: return normWord("The arms were used, so the result counts as 0.");
    case NormRemark::SourcesDisagree: return normWord("Another print of this norm has another limit here.");
    case NormRemark::LimitNotConfirmed: return normWord("The limit between needs improvement and fair was found in one print only.");
    case NormRemark::RoundedMean: return normWord("Compared with the mean in whole seconds.");
    case NormRemark::CappedAt45Seconds: return normWord("The test ends at 45 seconds.");
    case NormRemark::StudentsOnly: return normWord("The people measured were college students.");
    case NormRemark::SmallGroup: return normWord("Fewer than 50 people were measured.");
    case NormRemark::AgeBandsAssumed: return normWord("The age range is common practice, not from the source.");
    case NormRemark::SideOutsideUsual: return normWord("A side is outside the usual range.");
    }
    return {};
}

}  // namespace chalk::ui::common
