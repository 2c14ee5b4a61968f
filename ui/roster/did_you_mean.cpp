#include "ui/roster/did_you_mean.h"

#include <QStringList>

#include <algorithm>
#include <optional>

namespace chalk::ui::roster {

namespace {

/// The distance of a typed word to a word of a name, which may be longer: only its beginning may have been typed.
int distanceToStart(const QString& typed, const QString& word)
{
    return std::min(editDistance(typed, word), editDistance(typed, word.left(typed.size())) + 1);
}

/// How far the typed words are from a name altogether; nothing where one of them is too far from every word of it.
std::optional<int> distanceToName(const QStringList& typed, const QString& name)
{
    const QStringList words = folded(name).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    int sum = 0;
    for (const QString& one : typed) {
        int nearest = static_cast<int>(one.size());
        for (const QString& word : words) {
            nearest = std::min(nearest, distanceToStart(one, word));
        }
        if (nearest > std::max<int>(1, static_cast<int>(one.size()) / 3)) {
            return std::nullopt;
        }
        sum += nearest;
    }
    return sum;
}

}  // namespace

int editDistance(const QString& a, const QString& b)
{
    const auto width = static_cast<std::size_t>(b.size()) + 1;
    std::vector<int> beforeLast(width);
    std::vector<int> last(width);
    std::vector<int> row(width);
    for (std::size_t j = 0; j < width; ++j) {
        last[j] = static_cast<int>(j);
    }
    for (qsizetype i = 1; i <= a.size(); ++i) {
        row[0] = static_cast<int>(i);
        for (qsizetype j = 1; j <= b.size(); ++j) {
            const auto at = static_cast<std::size_t>(j);
            row[at] = std::min({last[at] + 1, row[at - 1] + 1, last[at - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
                row[at] = std::min(row[at], beforeLast[at - 2] + 1);
            }
        }
        std::swap(beforeLast, last);
        std::swap(last, row);
    }
    return last.back();
}

const RosterRow* didYouMean(const QString& typed, const std::vector<RosterRow>& rows)
{
    const QStringList words = folded(typed).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const RosterRow* nearest = nullptr;
    std::optional<int> least;
    for (const RosterRow& row : rows) {
        const auto distance = distanceToName(words, row.name);
        if (!words.isEmpty() && distance && (!least || *distance < *least)) {
            least = distance;
            nearest = &row;
        }
    }
    return nearest;
}

}  // namespace chalk::ui::roster
