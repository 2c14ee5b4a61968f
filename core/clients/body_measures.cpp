#include "core/clients/body_measures.h"

#include "core/base/enum_keys.h"
#include "core/clients/resting_reading.h"

namespace chalk::clients {

namespace {

constexpr std::array<std::string_view, 6> kBmiKeys{"underweight", "normal", "overweight", "obese_1", "obese_2", "obese_3"};
constexpr std::array<std::string_view, 3> kWaistKeys{"not_raised", "raised", "high"};

/// Lower borders of the classes after the first, in tenths of kg/m².
constexpr std::array<std::int64_t, 5> kBmiBorders{185, 250, 300, 350, 400};

constexpr std::int64_t kRawPerKilogram = 10'000'000'000;
/// A mass of so many raw units on a square millimetre is a tenth of a kg/m².
constexpr std::int64_t kRawPerTenthOfIndex = 1000;

bool isFoldOutside(int tenths)
{
    return tenths < 10 || tenths > 1000;
}

bool isLengthOutside(const std::optional<Millimetres>& length, int low, int high)
{
    return length && (length->value() < low || length->value() > high);
}

}  // namespace

double bmiOf(base::Mass mass, Millimetres height)
{
    const double metres = height.value() / 1000.0;
    return mass.kilograms() / (metres * metres);
}

BmiClass bmiClassOf(base::Mass mass, Millimetres height)
{
    const std::int64_t square = std::int64_t{height.value()} * height.value();
    int reached = 0;
    for (const std::int64_t border : kBmiBorders) {
        reached += mass.raw() >= border * square * kRawPerTenthOfIndex ? 1 : 0;
    }
    return static_cast<BmiClass>(reached);
}

std::optional<WaistClass> waistClassOf(Millimetres waist, NormSex sex)
{
    if (sex == NormSex::NotGiven) {
        return std::nullopt;
    }
    const bool isMale = sex == NormSex::Male;
    if (waist.value() > (isMale ? 1020 : 880)) {
        return WaistClass::High;
    }
    return waist.value() > (isMale ? 940 : 800) ? WaistClass::Raised : WaistClass::NotRaised;
}

std::optional<double> densityOf(const Skinfolds& folds, int age, NormSex sex)
{
    const double sum = folds.sumMillimetres();
    switch (sex) {
    case NormSex::Male:
        return age >= 18 && age <= 61 ? std::optional(1.10938 - 0.0008267 * sum + 0.0000016 * sum * sum - 0.0002574 * age) : std::nullopt;
    case NormSex::Female:
        return age >= 18 && age <= 55 ? std::optional(1.0994921 - 0.0009929 * sum + 0.0000023 * sum * sum - 0.0001392 * age) : std::nullopt;
    case NormSex::NotGiven:
        return std::nullopt;
    }
    return std::nullopt;
}

double siriFatPercent(double density)
{
    return 495.0 / density - 450.0;
}

std::string_view keyOf(BmiClass bmiClass)
{
    return base::keyIn(kBmiKeys, bmiClass);
}

std::string_view keyOf(WaistClass waistClass)
{
    return base::keyIn(kWaistKeys, waistClass);
}

std::optional<ProfileFault> faultOf(const BodyMeasures& measures, base::Date today)
{
    if (measures.date > today) {
        return ProfileFault{"date", "is still to come"};
    }
    if (measures.mass && (measures.mass->raw() < 20 * kRawPerKilogram || measures.mass->raw() > 400 * kRawPerKilogram)) {
        return ProfileFault{"mass", "must be 20 to 400 kg"};
    }
    if (isLengthOutside(measures.height, 500, 2600)) {
        return ProfileFault{"height", "must be 50 to 260 cm"};
    }
    if (isLengthOutside(measures.waist, 300, 2500)) {
        return ProfileFault{"waist", "must be 30 to 250 cm"};
    }
    if (const auto& folds = measures.skinfolds; folds && (isFoldOutside(folds->first) || isFoldOutside(folds->second) || isFoldOutside(folds->third))) {
        return ProfileFault{"skinfolds", "must be 1 to 100 mm each"};
    }
    if (const auto field = faultyFieldOf({measures.heartRate, measures.systolic, measures.diastolic})) {
        return ProfileFault{*field, "cannot be"};
    }
    return std::nullopt;
}

}  // namespace chalk::clients
