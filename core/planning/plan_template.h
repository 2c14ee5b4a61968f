#pragma once

#include "core/lifts/catalogue.h"
#include "core/lifts/pattern.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace chalk::planning {

/// The most sessions a week that a template can have.
inline constexpr int kMostTemplateSessions = 7;

/// One session of a template: which patterns are trained in it.
struct TemplateSession {
    std::string name;                      ///< `A`, `Lower 1`
    std::vector<lifts::Pattern> patterns;  ///< none twice

    bool operator==(const TemplateSession&) const = default;
};

/// Exercises that a template would rather have for a pattern, the best first; keys of the catalogue.
struct TemplateExercises {
    std::vector<std::string> loaded;
    std::vector<std::string> rehearsed;  ///< unloaded, for a pattern that is not earned yet

    bool operator==(const TemplateExercises&) const = default;
};

/// A week of training: sessions in their order, repeated every week. Plain values: a studio can have its own.
struct PlanTemplate {
    std::string key;                        ///< snake_case
    std::string name;                       ///< for people
    std::vector<TemplateSession> sessions;  ///< one a session of the week
    bool isOrderKept = false;               ///< patterns stay in the order given; else large to small, hard to easy
    std::array<TemplateExercises, lifts::kPatterns.size()> exercises;  ///< by pattern

    [[nodiscard]] int sessionsPerWeek() const { return static_cast<int>(sessions.size()); }
    [[nodiscard]] const TemplateExercises& of(lifts::Pattern pattern) const { return exercises[static_cast<std::size_t>(pattern)]; }
    bool operator==(const PlanTemplate&) const = default;
};

/// What is wrong with a template: its field by the name in files (`sessions[1].patterns`) and why.
struct TemplateFault {
    std::string field;
    std::string reason;
};

/// The first thing that is wrong: no session or too many, a pattern twice in a session, no name, an exercise that is not in the
/// catalogue, of another pattern, or with the wrong side of loaded and unloaded.
[[nodiscard]] std::optional<TemplateFault> faultOf(const PlanTemplate& plan, const lifts::Catalogue& catalogue);

/// Patterns that no session of the template trains.
[[nodiscard]] std::vector<lifts::Pattern> patternsLeftOut(const PlanTemplate& plan);

/// The template with that many sessions a week; nothing where there is none.
[[nodiscard]] const PlanTemplate* templateFor(std::span<const PlanTemplate> templates, int sessionsPerWeek);

}  // namespace chalk::planning
