#include "core/screens/screen_catalogue.h"

#include "core/base/enum_keys.h"
#include "core/screens/guide_fault.h"

#include <algorithm>

namespace chalk::screens {

namespace {

constexpr std::array<std::string_view, 2> kViewKeys{"side", "front"};

bool isTakenAway(const CorrectiveWork& work, std::span<const lifts::CautionTag> cautions)
{
    return std::any_of(work.ruledOutBy.begin(), work.ruledOutBy.end(),
                       [&cautions](lifts::CautionTag tag) { return std::find(cautions.begin(), cautions.end(), tag) != cautions.end(); });
}

/// Puts the cautions that rule a regression's exercise out beside its own.
void inheritCautions(CorrectiveWork& work, const lifts::Catalogue& lifts)
{
    if (work.kind != WorkKind::Regression) {
        return;
    }
    for (const lifts::CautionTag tag : lifts.find(work.key)->ruledOutBy) {
        if (std::find(work.ruledOutBy.begin(), work.ruledOutBy.end(), tag) == work.ruledOutBy.end()) {
            work.ruledOutBy.push_back(tag);
        }
    }
}

}  // namespace

const ScreenPoint* PatternGuide::find(std::string_view pointKey) const
{
    const auto found = std::find_if(points.begin(), points.end(), [pointKey](const ScreenPoint& point) { return point.key == pointKey; });
    return found == points.end() ? nullptr : &*found;
}

tl::expected<ScreenCatalogue, GuideFault> ScreenCatalogue::of(std::vector<PatternGuide> guides, const lifts::Catalogue& lifts)
{
    if (auto fault = faultOf(guides, lifts)) {
        return tl::make_unexpected(*std::move(fault));
    }
    std::sort(guides.begin(), guides.end(), [](const PatternGuide& a, const PatternGuide& b) { return a.pattern < b.pattern; });
    for (PatternGuide& guide : guides) {
        for (CorrectiveWork& work : guide.work) {
            inheritCautions(work, lifts);
        }
    }
    return ScreenCatalogue(std::move(guides));
}

MovementScreen ScreenCatalogue::blankScreen(base::Date date) const
{
    MovementScreen screen;
    screen.date = date;
    for (const PatternGuide& guide : m_guides) {
        PatternScreen& one = screen.of(guide.pattern);
        one.pattern = guide.pattern;
        for (const ScreenPoint& point : guide.points) {
            one.points.push_back({point.key, Mark::NotJudged});
        }
    }
    return screen;
}

std::vector<WorkForPoints> ScreenCatalogue::allWorkFor(lifts::Pattern pattern, std::span<const std::string> points,
                                                       std::span<const lifts::CautionTag> cautions) const
{
    std::vector<WorkForPoints> found;
    const PatternGuide& guide = of(pattern);
    for (const CorrectiveWork& work : guide.work) {
        WorkForPoints one{&work, {}};
        for (const ScreenPoint& point : guide.points) {
            const bool isAsked = std::find(points.begin(), points.end(), point.key) != points.end();
            if (isAsked && std::find(work.helps.begin(), work.helps.end(), point.key) != work.helps.end()) {
                one.points.push_back(point.key);
            }
        }
        if (!one.points.empty() && !isTakenAway(work, cautions)) {
            found.push_back(std::move(one));
        }
    }
    std::stable_sort(found.begin(), found.end(), [](const WorkForPoints& a, const WorkForPoints& b) { return a.points.size() > b.points.size(); });
    return found;
}

std::vector<WorkForPoints> ScreenCatalogue::workFor(lifts::Pattern pattern, std::span<const std::string> points,
                                                    std::span<const lifts::CautionTag> cautions) const
{
    std::vector<WorkForPoints> chosen;
    std::vector<std::string> open(points.begin(), points.end());
    std::vector<WorkForPoints> rest = allWorkFor(pattern, open, cautions);
    while (!rest.empty()) {
        const auto isHelped = [&rest](const std::string& point) {
            return std::find(rest.front().points.begin(), rest.front().points.end(), point) != rest.front().points.end();
        };
        std::erase_if(open, isHelped);
        chosen.push_back(rest.front());
        rest = allWorkFor(pattern, open, cautions);
    }
    const std::vector<WorkForPoints> all = allWorkFor(pattern, points, cautions);
    for (WorkForPoints& one : chosen) {
        one = *std::find_if(all.begin(), all.end(), [&one](const WorkForPoints& whole) { return whole.work == one.work; });
    }
    return chosen;
}

std::string_view keyOf(ViewFrom from)
{
    return base::keyIn(kViewKeys, from);
}

std::optional<ViewFrom> viewFromOf(std::string_view key)
{
    return base::enumOf<ViewFrom>(kViewKeys, key);
}

}  // namespace chalk::screens
