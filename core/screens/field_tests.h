#pragma once

#include "core/base/date.h"
#include "core/base/quantity.h"
#include "core/clients/profile.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <variant>
#include <vector>

namespace chalk::screens {

/// Whom a result is compared for.
struct NormPerson {
    int age = 0;                                      ///< whole years, 0 to 120
    clients::NormSex sex = clients::NormSex::NotGiven;///< where it is not given, norms that are split by sex say so
};

/// Stands from a chair in 30 seconds. With the arms used the result is 0.
struct ChairStand {
    base::Reps stands;  ///< more than half-way up at the end counts
    bool areArmsUsed = false;

    bool operator==(const ChairStand&) const = default;
};

enum class PushUpForm : std::uint8_t { Toes, Knees };

struct PushUps {
    base::Reps reps;
    PushUpForm form = PushUpForm::Toes;

    bool operator==(const PushUps&) const = default;
};

/// On one leg, eyes open; counted up to 45 s.
struct SingleLegStance {
    int heldMs = 0;

    bool operator==(const SingleLegStance&) const = default;
};

struct Plank {
    int heldMs = 0;

    bool operator==(const Plank&) const = default;
};

/// Weight-bearing lunge: toe to wall, heel down.
struct WeightBearingLunge {
    int leftMm = 0;
    int rightMm = 0;

    bool operator==(const WeightBearingLunge&) const = default;
};

/// The value means something only with the number that the scale shows at the feet.
struct SitAndReach {
    int reachMm = 0;
    int zeroMm = 0;  ///< what the scale shows at the feet: 0, 150, 230, 260, 380 …

    bool operator==(const SitAndReach&) const = default;
};

using FieldTest = std::variant<ChairStand, PushUps, SingleLegStance, Plank, WeightBearingLunge, SitAndReach>;

/// What was tested on one day, each test at most once.
struct FieldTestDay {
    base::Date date;
    std::vector<FieldTest> tests;

    bool operator==(const FieldTestDay&) const = default;
};

/// Where a result stands. The first four say why there is no class.
enum class NormClass : std::uint8_t {
    OutsideAge,         ///< the norm does not cover this age: `ages` says which it covers
    SexNeeded,          ///< the norm is split by sex
    OtherForm,          ///< the norm is for push-ups of the other form
    OtherZero,          ///< no norm for a scale with this zero
    BelowAverage,       ///< chair stand, under the published limit; plank, more than one standard deviation under the mean
    Average,            ///< inside the published range
    AboveAverage,       ///< above it
    BelowMean,          ///< single-leg stance
    AtOrAboveMean,
    NeedsImprovement,   ///< push-ups
    Fair,
    Good,
    VeryGood,
    Excellent,
    BelowTarget,        ///< sit-and-reach
    AtOrAboveTarget,
    InsideError,        ///< a side difference that is no finding
    BeyondError         ///< a side difference that is more than the error of the test
};

/// What to say besides the class.
enum class NormRemark : std::uint8_t {
    ArmsUsed,             ///< the result counts as 0
    SourcesDisagree,      ///< another print has another limit here
    LimitNotConfirmed,    ///< the lower limit of this class was found in one print only
    RoundedMean,          ///< compared with the mean in whole seconds: its decimals are not confirmed
    CappedAt45Seconds,
    StudentsOnly,         ///< the people measured were students
    SmallGroup,           ///< fewer than 50 people were measured
    AgeBandsAssumed,      ///< the source prints single ages; the bands around them are common practice
    SideOutsideUsual      ///< a side is outside the usual range
};

/// From and to, both inside, in the unit of the test (reps, ms or mm); open where nothing.
struct NormRange {
    std::optional<int> from;
    std::optional<int> to;

    bool operator==(const NormRange&) const = default;
};

/// What a norm says about a result.
struct NormResult {
    NormClass normClass = NormClass::OutsideAge;
    int value = 0;                  ///< what was compared: reps, ms or mm; of the lunge the side difference
    NormRange range;                ///< of the class; empty without one
    NormRange usual;                ///< where the source gives one: the average range, mean ± standard deviation
    NormRange ages;                 ///< the whole years that the norm, or the row of it, is for; open where it says none
    std::string_view source;        ///< a short citation
    std::vector<NormRemark> remarks;
};

/// Compares a result with its published norm. Values are 0 or more (reach may be negative).
[[nodiscard]] NormResult normOf(const FieldTest& test, const NormPerson& person);

/// Whether there is a class, and not only a reason why there is none.
[[nodiscard]] bool isClass(NormClass normClass);

/// The key of a test in files: `chair_stand`, `push_ups`, `single_leg_stance`, `plank`, `weight_bearing_lunge`, `sit_and_reach`.
[[nodiscard]] std::string_view keyOf(const FieldTest& test);
[[nodiscard]] std::string_view keyOf(NormClass normClass);
[[nodiscard]] std::string_view keyOf(NormRemark remark);
[[nodiscard]] std::string_view keyOf(PushUpForm form);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<PushUpForm> pushUpFormOf(std::string_view key);

}  // namespace chalk::screens
