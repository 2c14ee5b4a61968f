#include "ui/shell/find_ranking.h"

#include "ui/common/fuzzy_match.h"

#include <algorithm>
#include <iterator>

namespace chalk::ui::shell {

std::vector<FindItem> rankedItems(std::span<const FindProvider* const> providers, const QString& query)
{
    std::vector<FindItem> found;
    for (const FindProvider* provider : providers) {
        std::vector<FindItem> items = provider->find(query);
        std::move(items.begin(), items.end(), std::back_inserter(found));
    }
    std::stable_sort(found.begin(), found.end(), [](const FindItem& a, const FindItem& b) { return a.score > b.score; });
    std::vector<FindItem> ranked;
    if (found.empty()) {
        return ranked;
    }
    const FindGroup first = found.front().group;
    for (const FindGroup group : {first, first == FindGroup::Do ? FindGroup::GoTo : FindGroup::Do}) {
        int taken = 0;
        for (FindItem& item : found) {
            if (item.group == group && taken < kMostPerGroup) {
                ranked.push_back(std::move(item));
                ++taken;
            }
        }
    }
    return ranked;
}

std::optional<QString> meantName(std::span<const FindProvider* const> providers, const QString& query)
{
    QStringList names;
    for (const FindProvider* provider : providers) {
        names.append(provider->names());
    }
    const auto meant = common::probablyMeant(query, names);
    return meant ? std::optional(names.at(*meant)) : std::nullopt;
}

}  // namespace chalk::ui::shell
