#include "core/screens/guide_fault.h"

#include <algorithm>
#include <set>

#include <fmt/core.h>

namespace chalk::screens {

namespace {

/// A field of a guide and what is wrong with it.
struct GuideFieldFault {
    std::string field;
    std::string reason;
};
using MaybeGuideFault = std::optional<GuideFieldFault>;

bool isPlainKey(const std::string& key)
{
    return !key.empty() && key.front() >= 'a' && key.front() <= 'z' &&
           std::all_of(key.begin(), key.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; });
}

MaybeGuideFault faultOfPoints(const PatternGuide& guide)
{
    if (guide.points.size() != kPointsPerPattern) {
        return GuideFieldFault{"points", fmt::format("must be {}", kPointsPerPattern)};
    }
    std::set<std::string_view> seen;
    for (std::size_t i = 0; i < guide.points.size(); ++i) {
        const ScreenPoint& point = guide.points[i];
        if (!isPlainKey(point.key)) {
            return GuideFieldFault{fmt::format("points[{}].key", i), "must be lower-case letters, digits and _"};
        }
        if (!seen.insert(point.key).second) {
            return GuideFieldFault{fmt::format("points[{}].key", i), point.key + " is there twice"};
        }
        if (point.text.empty()) {
            return GuideFieldFault{fmt::format("points[{}].text", i), "is empty"};
        }
    }
    return std::nullopt;
}

MaybeGuideFault faultOfTexts(const PatternGuide& guide)
{
    if (guide.how.empty()) {
        return GuideFieldFault{"how", "is empty"};
    }
    if (guide.look.empty()) {
        return GuideFieldFault{"look", "is empty"};
    }
    if (guide.depths.size() != kPauseDepths.size()) {
        return GuideFieldFault{"depths", fmt::format("must be {}", kPauseDepths.size())};
    }
    for (std::size_t i = 0; i < guide.depths.size(); ++i) {
        if (guide.depths[i].name.empty() || guide.depths[i].hint.empty()) {
            return GuideFieldFault{fmt::format("depths[{}]", i), "must have a name and a hint"};
        }
    }
    return std::nullopt;
}

/// What is wrong with a dose; empty where it is sound.
std::string faultOfDose(const Dose& dose)
{
    if (dose.sets < base::Sets(1) || dose.sets > base::Sets(5)) {
        return "must be 1 to 5 sets";
    }
    if (dose.measure == lifts::Measure::Metres) {
        return "must be repetitions or seconds";
    }
    const bool isReps = dose.measure == lifts::Measure::Reps;
    if (dose.amount < (isReps ? 1 : 5) || dose.amount > (isReps ? 30 : 120)) {
        return isReps ? "must be 1 to 30 repetitions" : "must be 5 to 120 seconds";
    }
    return {};
}

MaybeGuideFault faultOfExercise(const CorrectiveWork& work, const PatternGuide& guide, const lifts::Catalogue& lifts)
{
    if (work.kind == WorkKind::Drill) {
        return std::nullopt;
    }
    const lifts::Exercise* exercise = lifts.find(work.key);
    if (exercise == nullptr) {
        return GuideFieldFault{"key", work.key + " is no exercise of the catalogue"};
    }
    return exercise->pattern == guide.pattern ? std::nullopt
                                              : MaybeGuideFault(GuideFieldFault{"key", work.key + " is an exercise of another pattern"});
}

MaybeGuideFault faultOfHelps(const CorrectiveWork& work, const PatternGuide& guide)
{
    if (work.helps.empty()) {
        return GuideFieldFault{"helps", "must name a point"};
    }
    std::set<std::string_view> seen;
    for (const std::string& point : work.helps) {
        if (guide.find(point) == nullptr) {
            return GuideFieldFault{"helps", point + " is no point of this pattern"};
        }
        if (!seen.insert(point).second) {
            return GuideFieldFault{"helps", point + " is there twice"};
        }
    }
    return std::nullopt;
}

MaybeGuideFault faultOfPiece(const CorrectiveWork& work, const PatternGuide& guide, const lifts::Catalogue& lifts)
{
    if (!isPlainKey(work.key)) {
        return GuideFieldFault{"key", "must be lower-case letters, digits and _"};
    }
    if (work.name.empty() || work.how.empty()) {
        return GuideFieldFault{work.name.empty() ? "name" : "how", "is empty"};
    }
    if (const std::string reason = faultOfDose(work.dose); !reason.empty()) {
        return GuideFieldFault{"dose", reason};
    }
    if (auto fault = faultOfExercise(work, guide, lifts)) {
        return fault;
    }
    return faultOfHelps(work, guide);
}

MaybeGuideFault faultOfWork(const PatternGuide& guide, const lifts::Catalogue& lifts)
{
    std::set<std::string_view> names;
    std::set<std::string_view> helped;
    for (std::size_t i = 0; i < guide.work.size(); ++i) {
        const CorrectiveWork& work = guide.work[i];
        if (auto fault = faultOfPiece(work, guide, lifts)) {
            return GuideFieldFault{fmt::format("work[{}].{}", i, fault->field), fault->reason};
        }
        if (!names.insert(work.name).second) {
            return GuideFieldFault{fmt::format("work[{}].name", i), work.name + " is there twice"};
        }
        helped.insert(work.helps.begin(), work.helps.end());
    }
    for (const ScreenPoint& point : guide.points) {
        if (helped.count(point.key) == 0) {
            return GuideFieldFault{"work", "nothing helps " + point.key};
        }
    }
    return std::nullopt;
}

MaybeGuideFault faultOfGuide(const PatternGuide& guide, const lifts::Catalogue& lifts)
{
    for (const auto& check : {faultOfTexts, faultOfPoints}) {
        if (auto fault = check(guide)) {
            return fault;
        }
    }
    return faultOfWork(guide, lifts);
}

}  // namespace

std::optional<GuideFault> faultOf(std::span<const PatternGuide> guides, const lifts::Catalogue& lifts)
{
    std::set<lifts::Pattern> seen;
    for (std::size_t i = 0; i < guides.size(); ++i) {
        const std::string pattern(keyOf(guides[i].pattern));
        if (!seen.insert(guides[i].pattern).second) {
            return GuideFault{i, "pattern", pattern + " is there twice"};
        }
        if (auto fault = faultOfGuide(guides[i], lifts)) {
            return GuideFault{i, fault->field, pattern + ": " + fault->reason};
        }
    }
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        if (seen.count(pattern) == 0) {
            return GuideFault{guides.size(), "pattern", std::string(keyOf(pattern)) + " is missing"};
        }
    }
    return std::nullopt;
}

}  // namespace chalk::screens
