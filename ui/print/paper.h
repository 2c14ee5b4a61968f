#pragma once

#include <QSizeF>

#include <cstdint>

class QPageSize;

namespace chalk::ui::print {

/// What a card is printed on, upright: A5 is 148 × 210 mm (ISO 216), half Letter 5.5 × 8.5 in.
enum class PaperSize : std::uint8_t { A5, HalfLetter };

/// Width and height in millimetres.
[[nodiscard]] QSizeF millimetresOf(PaperSize paper);
[[nodiscard]] QPageSize pageSizeOf(PaperSize paper);

}  // namespace chalk::ui::print
