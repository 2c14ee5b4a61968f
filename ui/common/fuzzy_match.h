#pragma once

#include <QString>
#include <QStringList>

#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::ui::common {

/// Whether a misspelt word may still match.
enum class Typos : std::uint8_t { Refused, Allowed };

/// Lower case and without accents: `Brånemark Łucja` is `branemark lucja`.
[[nodiscard]] QString foldedText(const QString& text);

/// How well `query` fits `text`; nothing where it does not. Every word of the query has to fit a word of the text, in any order:
/// whole, as a beginning, or inside of it, and with `Typos::Allowed` with one letter wrong (two from seven letters on). Higher is
/// better; an empty query fits everything with 0.
[[nodiscard]] std::optional<int> matchScore(const QString& query, const QString& text, Typos typos = Typos::Refused);

/// A stretch of a text, in its letters.
struct MatchSpan {
    qsizetype begin = 0;
    qsizetype length = 0;

    bool operator==(const MatchSpan&) const = default;
};

/// What the words of `query` fit in `text`, each at the word that fits it best; in order and without overlaps. A misspelt word
/// marks the whole word that it was taken for; a word that fits nothing marks nothing.
[[nodiscard]] std::vector<MatchSpan> matchSpans(const QString& query, const QString& text, Typos typos = Typos::Refused);

/// The candidate that was probably meant where nothing fits: the one with the fewest letters wrong in its nearest word. Nothing
/// where none is near.
[[nodiscard]] std::optional<qsizetype> probablyMeant(const QString& query, const QStringList& candidates);

/// Letters to put in, leave out, replace or swap with their neighbour to make one text into the other.
[[nodiscard]] int lettersApart(const QString& a, const QString& b);

}  // namespace chalk::ui::common
