#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/clients/profile.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace chalk::clients {

/// A length in whole millimetres: height, waist.
using Millimetres = base::Quantity<struct MillimetresTag>;

/// Three skinfolds, in tenths of a millimetre: chest, abdomen, thigh of a man; triceps, above the hip, thigh of a woman.
struct Skinfolds {
    int first = 0;   ///< 10 to 1000
    int second = 0;
    int third = 0;

    [[nodiscard]] double sumMillimetres() const { return (first + second + third) / 10.0; }
    bool operator==(const Skinfolds&) const = default;
};

/// What was measured on one day. Nothing where it was not.
struct BodyMeasures {
    base::Date date;
    std::optional<base::Mass> mass;           ///< 20 to 400 kg
    std::optional<Millimetres> height;        ///< 500 to 2600
    std::optional<Millimetres> waist;         ///< 300 to 2500
    std::optional<Skinfolds> skinfolds;
    std::optional<int> heartRate;             ///< at rest, as in RestingReading
    std::optional<int> systolic;
    std::optional<int> diastolic;

    bool operator==(const BodyMeasures&) const = default;
};

/// The World Health Organization's classes of the body mass index, kg/m²: below 18.5; below 25; below 30; below 35; below 40; 40 and above.
enum class BmiClass : std::uint8_t { Under, Normal, Over, ObeseOne, ObeseTwo, ObeseThree };

/// Of a waist, WHO 2008: raised above 94 cm (men) or 80 cm (women), high above 102 or 88. The figures were not read in the original.
enum class WaistClass : std::uint8_t { NotRaised, Raised, High };

/// kg/m², for showing. `height` above 0.
[[nodiscard]] double bmiOf(base::Mass mass, Millimetres height);
/// Exact on the borders: integers are compared.
[[nodiscard]] BmiClass bmiClassOf(base::Mass mass, Millimetres height);
/// Nothing without a sex that the classes are printed for.
[[nodiscard]] std::optional<WaistClass> waistClassOf(Millimetres waist, NormSex sex);

/// Body density, g/ml, from three skinfolds. Sources: men, Jackson and Pollock 1978; women, Jackson, Pollock and Ward 1980. Nothing without
/// a sex, or outside of the ages that they were made for (18 to 61, 18 to 55).
[[nodiscard]] std::optional<double> densityOf(const Skinfolds& folds, int age, NormSex sex);
/// Body fat in per cent: 495 / density - 450. Source: Siri 1961. `density` above 0.
[[nodiscard]] double siriFatPercent(double density);

[[nodiscard]] std::string_view keyOf(BmiClass bmiClass);
[[nodiscard]] std::string_view keyOf(WaistClass waistClass);

/// A measure out of its range, by its name in files; nothing where all are in range. `today` is the last day that it can be of.
[[nodiscard]] std::optional<ProfileFault> faultOf(const BodyMeasures& measures, base::Date today);

}  // namespace chalk::clients
