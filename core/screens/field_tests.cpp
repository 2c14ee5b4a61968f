#include "core/screens/field_tests.h"

#include "core/base/enum_keys.h"
#include "core/screens/norm_tables.h"

#include <algorithm>
#include <cstdlib>

namespace chalk::screens {

namespace {

using clients::NormSex;

constexpr std::array<std::string_view, 6> kTestKeys{"chair_stand", "push_ups", "single_leg_stance", "plank", "weight_bearing_lunge", "sit_and_reach"};
constexpr std::array<std::string_view, 18> kClassKeys{
    "outside_age",     "sex_needed",        "other_form",   "other_zero", "below_average", "average",
    "above_average",   "below_mean",        "at_or_above_mean", "needs_improvement", "fair", "good",
    "very_good",       "excellent",         "below_target", "at_or_above_target", "inside_error", "beyond_error"};
constexpr std::array<std::string_view, 9> kRemarkKeys{"arms_used",     "sources_disagree", "limit_not_confirmed", "rounded_mean",
                                                      "capped_at_45_s", "students_only",   "small_group",         "age_bands_assumed",
                                                      "side_outside_usual"};
constexpr std::array<std::string_view, 2> kFormKeys{"toes", "knees"};

constexpr int kStanceCapMs = 45'000;
constexpr int kMsPerSecond = 1000;
constexpr int kMmPerCm = 10;
/// Minimal detectable change, 1.6 cm between and 1.9 cm within raters (Powden 2015): a difference under 2 cm is no finding.
constexpr int kLungeErrorMm = 20;
/// 12 ± 2.8 cm in 35 healthy adults (Hoch and McKeon 2011).
constexpr NormRange kLungeUsual{92, 148};
constexpr int kAdultAge = 18;
/// The usual age of students; the source prints none.
constexpr NormRange kStudentAges{18, 25};

NormRange agesOf(int from, int to)
{
    return {from, to == kOldest ? std::nullopt : std::optional(to)};
}

template <class Row>
const Row* rowFor(std::span<const Row> rows, int age)
{
    const auto found = std::find_if(rows.begin(), rows.end(), [age](const Row& row) { return age >= row.ageFrom && age <= row.ageTo; });
    return found == rows.end() ? nullptr : &*found;
}

/// The class below, inside or above a published range.
void placeInRange(NormResult& result, int from, int to)
{
    result.usual = {from, to};
    if (result.value < from) {
        result.normClass = NormClass::BelowAverage;
        result.range = {std::nullopt, from - 1};
    } else if (result.value <= to) {
        result.normClass = NormClass::Average;
        result.range = {from, to};
    } else {
        result.normClass = NormClass::AboveAverage;
        result.range = {to + 1, std::nullopt};
    }
}

/// Compares with one limit: from it on the better class.
void placeAtLimit(NormResult& result, int limit, NormClass below, NormClass from)
{
    const bool isBelow = result.value < limit;
    result.normClass = isBelow ? below : from;
    result.range = isBelow ? NormRange{std::nullopt, limit - 1} : NormRange{limit, std::nullopt};
}

/// Compares one test with its norm.
struct NormLookup {
    const NormPerson& person;

    [[nodiscard]] NormResult without(NormClass reason, int value, NormRange ages, std::string_view source) const
    {
        NormResult result;
        result.normClass = reason;
        result.value = value;
        result.ages = ages;
        result.source = source;
        return result;
    }

    NormResult operator()(const ChairStand& test) const
    {
        constexpr std::string_view source = "Rikli and Jones; CDC STEADI, 30-Second Chair Stand";
        const auto rows = chairStandRows();
        NormResult result = without(NormClass::OutsideAge, test.areArmsUsed ? 0 : test.stands.value(),
                                    agesOf(rows.front().ageFrom, rows.back().ageTo), source);
        if (test.areArmsUsed) {
            result.remarks.push_back(NormRemark::ArmsUsed);
        }
        const ChairStandRow* row = rowFor(rows, person.age);
        if (row == nullptr) {
            return result;
        }
        result.normClass = NormClass::SexNeeded;
        if (person.sex != NormSex::NotGiven) {
            result.ages = agesOf(row->ageFrom, row->ageTo);
            const bool isMale = person.sex == NormSex::Male;
            placeInRange(result, isMale ? row->menFrom : row->womenFrom, isMale ? row->menTo : row->womenTo);
        }
        return result;
    }

    NormResult operator()(const PushUps& test) const
    {
        constexpr std::string_view source = "CSEP and ACSM push-up classes";
        const auto rows = pushUpRows();
        NormResult result = without(NormClass::OutsideAge, test.reps.value(), agesOf(rows.front().ageFrom, rows.back().ageTo), source);
        if (rowFor(rows, person.age) == nullptr) {
            return result;
        }
        if (person.sex == NormSex::NotGiven) {
            result.normClass = NormClass::SexNeeded;
            return result;
        }
        if (test.form != (person.sex == NormSex::Male ? PushUpForm::Toes : PushUpForm::Knees)) {
            result.normClass = NormClass::OtherForm;
            return result;
        }
        classify(result, *std::find_if(rows.begin(), rows.end(), [this](const PushUpRow& row) {
            return row.sex == person.sex && person.age >= row.ageFrom && person.age <= row.ageTo;
        }));
        return result;
    }

    static void classify(NormResult& result, const PushUpRow& row)
    {
        const std::array limits{row.fair, row.good, row.veryGood, row.excellent};
        constexpr std::array classes{NormClass::NeedsImprovement, NormClass::Fair, NormClass::Good, NormClass::VeryGood, NormClass::Excellent};
        const auto next = std::upper_bound(limits.begin(), limits.end(), result.value);
        result.normClass = classes[static_cast<std::size_t>(next - limits.begin())];
        result.range = {next == limits.begin() ? std::nullopt : std::optional(*(next - 1)), next == limits.end() ? std::nullopt : std::optional(*next - 1)};
        result.ages = agesOf(row.ageFrom, row.ageTo);
        if (result.value >= row.disputedFrom && result.value < row.disputedTo) {
            result.remarks.push_back(NormRemark::SourcesDisagree);
        }
        if (result.normClass == NormClass::Fair || result.normClass == NormClass::NeedsImprovement) {
            result.remarks.push_back(NormRemark::LimitNotConfirmed);
        }
    }

    NormResult operator()(const SingleLegStance& test) const
    {
        constexpr std::string_view source = "Springer 2007, J Geriatr Phys Ther 30:8-15";
        const auto rows = stanceRows();
        NormResult result = without(NormClass::OutsideAge, std::min(test.heldMs, kStanceCapMs), agesOf(rows.front().ageFrom, rows.back().ageTo), source);
        if (test.heldMs > kStanceCapMs) {
            result.remarks.push_back(NormRemark::CappedAt45Seconds);
        }
        if (const StanceRow* row = rowFor(rows, person.age)) {
            result.ages = agesOf(row->ageFrom, row->ageTo);
            placeAtLimit(result, row->meanSeconds * kMsPerSecond, NormClass::BelowMean, NormClass::AtOrAboveMean);
            result.remarks.push_back(NormRemark::RoundedMean);
            if (row->doSourcesDisagree) {
                result.remarks.push_back(NormRemark::SourcesDisagree);
            }
        }
        return result;
    }

    NormResult operator()(const Plank& test) const
    {
        NormResult result = without(NormClass::OutsideAge, test.heldMs, kStudentAges, "Strand 2014, J Hum Kinet 40:93-102");
        result.remarks = {NormRemark::StudentsOnly, NormRemark::AgeBandsAssumed};
        if (person.age < *kStudentAges.from || person.age > *kStudentAges.to) {
            return result;
        }
        result.normClass = NormClass::SexNeeded;
        if (person.sex != NormSex::NotGiven) {
            const PlankRow row = plankRow(person.sex);
            placeInRange(result, (row.meanSeconds - row.deviationSeconds) * kMsPerSecond, (row.meanSeconds + row.deviationSeconds) * kMsPerSecond);
        }
        return result;
    }

    NormResult operator()(const WeightBearingLunge& test) const
    {
        NormResult result = without(NormClass::InsideError, std::abs(test.leftMm - test.rightMm), {},
                                    "Powden 2015, Man Ther 20:524-532; usual range: Hoch and McKeon 2011, Man Ther 16:516-519");
        placeAtLimit(result, kLungeErrorMm, NormClass::InsideError, NormClass::BeyondError);
        if (person.age >= kAdultAge) {
            result.usual = kLungeUsual;
            const auto [low, high] = std::minmax(test.leftMm, test.rightMm);
            if (low < *kLungeUsual.from || high > *kLungeUsual.to) {
                result.remarks = {NormRemark::SideOutsideUsual, NormRemark::SmallGroup};
            }
        }
        return result;
    }

    NormResult operator()(const SitAndReach& test) const
    {
        constexpr int kZeroMm = 380;
        constexpr int kZeroInInchesMm = 381;  // 15 in
        constexpr int kHalfBand = 5;          // 25 stands for 20 to 29
        const auto rows = reachRows();
        const NormRange all{rows.front().age - kHalfBand, rows.back().age + kHalfBand - 1};
        NormResult result = without(NormClass::OtherZero, test.reachMm, all, "Mayo Clinic sit-and-reach targets, 38 cm at the feet");
        if (test.zeroMm != kZeroMm && test.zeroMm != kZeroInInchesMm) {
            return result;
        }
        const auto row = std::find_if(rows.begin(), rows.end(), [this](const ReachRow& one) {
            return person.age >= one.age - kHalfBand && person.age < one.age + kHalfBand;
        });
        if (row == rows.end()) {
            result.normClass = NormClass::OutsideAge;
        } else if (person.sex == NormSex::NotGiven) {
            result.normClass = NormClass::SexNeeded;
        } else {
            result.ages = {row->age - kHalfBand, row->age + kHalfBand - 1};
            placeAtLimit(result, (person.sex == NormSex::Male ? row->menCm : row->womenCm) * kMmPerCm, NormClass::BelowTarget, NormClass::AtOrAboveTarget);
            result.remarks.push_back(NormRemark::AgeBandsAssumed);
        }
        return result;
    }
};

}  // namespace

NormResult normOf(const FieldTest& test, const NormPerson& person)
{
    return std::visit(NormLookup{person}, test);
}

bool isClass(NormClass normClass)
{
    return normClass > NormClass::OtherZero;
}

std::string_view keyOf(const FieldTest& test)
{
    return kTestKeys[test.index()];
}

std::string_view keyOf(NormClass normClass)
{
    return base::keyIn(kClassKeys, normClass);
}

std::string_view keyOf(NormRemark remark)
{
    return base::keyIn(kRemarkKeys, remark);
}

std::string_view keyOf(PushUpForm form)
{
    return base::keyIn(kFormKeys, form);
}

std::optional<PushUpForm> pushUpFormOf(std::string_view key)
{
    return base::enumOf<PushUpForm>(kFormKeys, key);
}

}  // namespace chalk::screens
