#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace chalk::tables {

// Names and headings as they are compared: people write the same one in many ways.

/// The letters and digits of a UTF-8 text in lower case and without accents, everything else as single blanks: `Élodie O'Brien-Ström` is
/// `elodie o brien strom`. Latin letters up to U+017F become plain ones, Greek and Cyrillic ones small; other letters stay.
[[nodiscard]] std::string foldedText(std::string_view text);
/// The words of a folded text in their order.
[[nodiscard]] std::vector<std::string> wordsOf(std::string_view text);
/// The words in order of the alphabet, joined by blanks: the same for `Ferro, Joaquin` and `Joaquin Ferro`.
[[nodiscard]] std::string sortedWords(std::string_view text);

/// Letters to put in, take out, change or swap with their neighbour until one text is the other, counted in bytes up to `most`; `most` + 1 for
/// anything above. Optimal string alignment: Damerau 1964, A technique for computer detection and correction of spelling errors, in the restricted
/// form that edits no part of a text twice.
[[nodiscard]] int editDistance(std::string_view a, std::string_view b, int most);

}  // namespace chalk::tables
