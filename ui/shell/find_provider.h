#pragma once

#include <QString>
#include <QStringList>

#include <cstdint>
#include <functional>
#include <vector>

namespace chalk::ui::shell {

/// The heading that a result stands under.
enum class FindGroup : std::uint8_t { Do, GoTo };

/// How a part of a result is written.
enum class FindWeight : std::uint8_t { Plain, Bold, Detail, DetailBold };

/// Whether it is written small, behind what the result is about.
[[nodiscard]] constexpr bool isDetail(FindWeight weight)
{
    return weight == FindWeight::Detail || weight == FindWeight::DetailBold;
}

struct FindPart {
    QString text;
    FindWeight weight = FindWeight::Plain;
};

/// One thing that can be found. `run` is called after the box is closed.
struct FindItem {
    FindGroup group = FindGroup::GoTo;
    QString icon;                 ///< a name of resources/icons
    std::vector<FindPart> parts;  ///< `Record `, **bench press, 5 × 8 at 60 kg**, `for Joaquin, today 09:00`
    QString keys;                 ///< the keys that do the same from anywhere: `Ctrl+P`; may be empty
    int score = 0;                ///< see common::matchScore; results read out of the text itself score kReadResult
    std::function<void()> run;
};

/// The score of a result that was read out of what was typed, such as the sets of a lift: above any match of words.
inline constexpr int kReadResult = 10'000;

/// Finds things of one kind. Asked at every key, so a look-up stays within a few milliseconds.
class FindProvider {
public:
    virtual ~FindProvider() = default;

    /// The box opens: reads what can be found.
    virtual void prepare() {}
    /// What fits `query`, in any order. For an empty query, what is worth offering unasked; mostly nothing.
    [[nodiscard]] virtual std::vector<FindItem> find(const QString& query) const = 0;
    /// Names that a misspelt query may have meant.
    [[nodiscard]] virtual QStringList names() const { return {}; }
};

}  // namespace chalk::ui::shell
