#pragma once

#include <QString>
#include <QStringList>

#include <cstdint>
#include <optional>

namespace chalk::ui::common {

/// Whether a misspelt word may still match.
enum class Typos : std::uint8_t { Refused, Allowed };

/// Lower case and without accents: `Brånemark Łucja` is `branemark lucja`.
[[nodiscard]] QString foldedText(const QString& text);

/// How well `query` fits `text`; nothing where it does not. Every word of the query has to fit a word of the text, in any order:
/// whole, as a beginning, or inside of it, and with `Typos::Allowed` with one letter wrong (two from seven letters on). Higher is
/// better; an empty query fits everything with 0.
[[nodiscard]] std::optional<int> matchScore(const QString& query, const QString& text, Typos typos = Typos::Refused);

/// The candidate that was probably meant where nothing fits: the one with the fewest letters wrong in its nearest word. Nothing
/// where none is near.
[[nodiscard]] std::optional<qsizetype> probablyMeant(const QString& query, const QStringList& candidates);

/// Letters to put in, leave out, replace or swap with their neighbour to make one text into the other.
[[nodiscard]] int lettersApart(const QString& a, const QString& b);

}  // namespace chalk::ui::common
