#pragma once

#include "core/base/quantity.h"
#include "core/lifts/catalogue.h"
#include "core/screens/pattern_screen.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::screens {

/// Where a point is watched from.
enum class ViewFrom : std::uint8_t { Side, Front };

/// Points of a pattern: no more, no fewer.
inline constexpr std::size_t kPointsPerPattern = 6;

/// One thing about a movement that can be seen.
struct ScreenPoint {
    std::string key;   ///< stable, snake_case, unique in its pattern: `heels_down`
    std::string text;  ///< for people: `Heels stay down`
    ViewFrom from = ViewFrom::Side;
};

/// What one of the three pauses is called in a pattern, and how it is known: `Quarter`, `knees bent`.
struct DepthName {
    std::string name;
    std::string hint;
};

/// How much of a piece of corrective work is done.
struct Dose {
    base::Sets sets;                                 ///< 1 to 5
    int amount = 0;                                  ///< repetitions, 1 to 30, or seconds, 5 to 120
    lifts::Measure measure = lifts::Measure::Reps;   ///< Reps or Seconds
    bool isEachSide = false;

    bool operator==(const Dose&) const = default;
};

/// A drill has words of its own; a regression is an easier exercise of the catalogue of lifts.
enum class WorkKind : std::uint8_t { Drill, Regression };

/// Something to do first about points that are not met.
struct CorrectiveWork {
    WorkKind kind = WorkKind::Drill;
    std::string key;                             ///< a drill's own, or the exercise's
    std::string name;                            ///< for people: `Ankle rocks`, `Sit to stand, heels on a wedge`
    std::string how;                             ///< one sentence
    Dose dose;
    std::vector<std::string> helps;              ///< keys of points of its pattern, at least one
    std::vector<lifts::CautionTag> ruledOutBy;   ///< cautions that take a drill away; a regression has those of its exercise too
};

/// How one pattern is screened and what is done about what it shows.
struct PatternGuide {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string how;                  ///< how it is done: `Bodyweight, 5 slow reps`
    std::string look;                 ///< from where it is watched: `Watch from the side, then from the front`
    std::vector<ScreenPoint> points;  ///< six
    std::vector<DepthName> depths;    ///< three: top, middle, bottom
    std::vector<CorrectiveWork> work;

    /// Nothing where the key is unknown.
    [[nodiscard]] const ScreenPoint* find(std::string_view pointKey) const;
};

/// What is wrong with a list of guides: which one, counted from 0, its field by the name in files (`work[3].helps`), and why.
struct GuideFault {
    std::size_t index = 0;
    std::string field;
    std::string reason;  ///< begins with the key of the pattern
};

/// One piece of work and the points in the way that it is for.
struct WorkForPoints {
    const CorrectiveWork* work = nullptr;  ///< lives as long as the catalogue
    std::vector<std::string> points;       ///< in the order of the guide, at least one
};

/// How all eight patterns are screened. Never changes once made.
class ScreenCatalogue {
public:
    /// Fails where a pattern is missing or there twice; where points are not six, depths not three; where a key is no snake_case
    /// word or is there twice; where a text is empty; where work names a point that is not there, an exercise that is not in
    /// `lifts` or of another pattern, or has a dose out of range; and where a point has no work that helps it.
    [[nodiscard]] static tl::expected<ScreenCatalogue, GuideFault> of(std::vector<PatternGuide> guides, const lifts::Catalogue& lifts);

    /// In the order of lifts::kPatterns.
    [[nodiscard]] std::span<const PatternGuide> guides() const { return m_guides; }
    [[nodiscard]] const PatternGuide& of(lifts::Pattern pattern) const { return m_guides[static_cast<std::size_t>(pattern)]; }
    /// A screen of that day with every point unmarked.
    [[nodiscard]] MovementScreen blankScreen(base::Date date) const;
    /// All work for these points of a pattern that no caution takes away: what helps most of them first, then in the order of
    /// the guide. Unknown points are passed over.
    [[nodiscard]] std::vector<WorkForPoints> allWorkFor(lifts::Pattern pattern, std::span<const std::string> points,
                                                        std::span<const lifts::CautionTag> cautions) const;
    /// A short list out of it that leaves out no point for which there is work.
    [[nodiscard]] std::vector<WorkForPoints> workFor(lifts::Pattern pattern, std::span<const std::string> points,
                                                     std::span<const lifts::CautionTag> cautions) const;

private:
    explicit ScreenCatalogue(std::vector<PatternGuide> guides) : m_guides(std::move(guides)) {}
    std::vector<PatternGuide> m_guides;
};

[[nodiscard]] std::string_view keyOf(ViewFrom from);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<ViewFrom> viewFromOf(std::string_view key);

}  // namespace chalk::screens
