#include "core/planning/plan_template.h"

#include <algorithm>
#include <set>

#include <fmt/core.h>

namespace chalk::planning {

namespace {

using MaybeTemplateFault = std::optional<TemplateFault>;

bool isTemplateKey(const std::string& key)
{
    return !key.empty() && key.front() >= 'a' && key.front() <= 'z' &&
           std::all_of(key.begin(), key.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; });
}

MaybeTemplateFault faultOfSessions(const PlanTemplate& plan)
{
    if (plan.sessions.empty() || plan.sessions.size() > static_cast<std::size_t>(kMostTemplateSessions)) {
        return TemplateFault{"sessions", fmt::format("must be 1 to {}", kMostTemplateSessions)};
    }
    for (std::size_t i = 0; i < plan.sessions.size(); ++i) {
        const TemplateSession& session = plan.sessions[i];
        if (session.name.empty()) {
            return TemplateFault{fmt::format("sessions[{}].name", i), "is empty"};
        }
        if (session.patterns.empty()) {
            return TemplateFault{fmt::format("sessions[{}].patterns", i), "is empty"};
        }
        std::set<lifts::Pattern> seen;
        for (const lifts::Pattern pattern : session.patterns) {
            if (!seen.insert(pattern).second) {
                return TemplateFault{fmt::format("sessions[{}].patterns", i), fmt::format("has {} twice", keyOf(pattern))};
            }
        }
    }
    return std::nullopt;
}

/// Why a list of exercises does not fit its pattern; empty where it does.
std::string faultOfExercises(const std::vector<std::string>& keys, lifts::Pattern pattern, bool isLoaded, const lifts::Catalogue& catalogue)
{
    std::set<std::string_view> seen;
    for (const std::string& key : keys) {
        const lifts::Exercise* exercise = catalogue.find(key);
        if (exercise == nullptr) {
            return key + " is no exercise of the catalogue";
        }
        if (exercise->pattern != pattern) {
            return key + " is an exercise of another pattern";
        }
        if ((exercise->equipment != lifts::EquipmentKind::None) != isLoaded) {
            return key + (isLoaded ? " is done without load" : " is done with load");
        }
        if (!seen.insert(key).second) {
            return key + " is there twice";
        }
    }
    return {};
}

}  // namespace

std::optional<TemplateFault> faultOf(const PlanTemplate& plan, const lifts::Catalogue& catalogue)
{
    if (!isTemplateKey(plan.key)) {
        return TemplateFault{"key", "must be lower-case letters, digits and _"};
    }
    if (plan.name.empty()) {
        return TemplateFault{"name", "is empty"};
    }
    if (auto fault = faultOfSessions(plan)) {
        return fault;
    }
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        if (const auto reason = faultOfExercises(plan.of(pattern).loaded, pattern, true, catalogue); !reason.empty()) {
            return TemplateFault{fmt::format("exercises.{}.loaded", keyOf(pattern)), reason};
        }
        if (const auto reason = faultOfExercises(plan.of(pattern).rehearsed, pattern, false, catalogue); !reason.empty()) {
            return TemplateFault{fmt::format("exercises.{}.rehearsed", keyOf(pattern)), reason};
        }
    }
    return std::nullopt;
}

std::vector<lifts::Pattern> patternsLeftOut(const PlanTemplate& plan)
{
    std::vector<lifts::Pattern> left;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const bool isTrained = std::any_of(plan.sessions.begin(), plan.sessions.end(), [pattern](const TemplateSession& session) {
            return std::find(session.patterns.begin(), session.patterns.end(), pattern) != session.patterns.end();
        });
        if (!isTrained) {
            left.push_back(pattern);
        }
    }
    return left;
}

const PlanTemplate* templateFor(std::span<const PlanTemplate> templates, int sessionsPerWeek)
{
    const auto found = std::find_if(templates.begin(), templates.end(),
                                    [sessionsPerWeek](const PlanTemplate& plan) { return plan.sessionsPerWeek() == sessionsPerWeek; });
    return found == templates.end() ? nullptr : &*found;
}

}  // namespace chalk::planning
