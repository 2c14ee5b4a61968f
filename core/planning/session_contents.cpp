#include "core/planning/session_contents.h"

#include <algorithm>

namespace chalk::planning {

namespace {

bool holds(const std::vector<lifts::Pattern>& patterns, lifts::Pattern pattern)
{
    return std::find(patterns.begin(), patterns.end(), pattern) != patterns.end();
}

bool isSound(const std::vector<lifts::Pattern>& patterns)
{
    return !patterns.empty() &&
           std::all_of(patterns.begin(), patterns.end(), [&patterns](lifts::Pattern one) { return std::count(patterns.begin(), patterns.end(), one) == 1; });
}

}  // namespace

SessionContents contentsOf(const PlanTemplate& plan)
{
    SessionContents contents;
    for (const TemplateSession& session : plan.sessions) {
        contents.push_back(session.patterns);
    }
    return contents;
}

bool isFor(const PlanTemplate& plan, const SessionContents& contents)
{
    return contents.size() == plan.sessions.size() && std::all_of(contents.begin(), contents.end(), isSound);
}

void shift(SessionContents& contents, std::size_t session, lifts::Pattern pattern, int places)
{
    auto& patterns = contents.at(session);
    const auto found = std::find(patterns.begin(), patterns.end(), pattern);
    if (found == patterns.end()) {
        return;
    }
    const auto from = found - patterns.begin();
    const auto to = std::clamp<std::ptrdiff_t>(from + places, 0, static_cast<std::ptrdiff_t>(patterns.size()) - 1);
    patterns.erase(found);
    patterns.insert(patterns.begin() + to, pattern);
}

void addTo(SessionContents& contents, std::size_t session, lifts::Pattern pattern)
{
    auto& patterns = contents.at(session);
    if (!holds(patterns, pattern)) {
        patterns.push_back(pattern);
    }
}

void takeOutOf(SessionContents& contents, std::size_t session, lifts::Pattern pattern)
{
    auto& patterns = contents.at(session);
    if (patterns.size() > 1) {
        std::erase(patterns, pattern);
    }
}

std::size_t shortestOf(const SessionContents& contents)
{
    const auto least = std::min_element(contents.begin(), contents.end(), [](const auto& a, const auto& b) { return a.size() < b.size(); });
    return static_cast<std::size_t>(least - contents.begin());
}

}  // namespace chalk::planning
