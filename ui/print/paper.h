#pragma once

#include <QSizeF>

#include <cstdint>

class QPageSize;

namespace chalk::ui::print {

/// What is printed on, upright: cards on A5, 148 × 210 mm, papers on A4, 210 × 297 mm (ISO 216); or on half Letter, 5.5 × 8.5 in, and Letter,
/// 8.5 × 11 in.
enum class PaperSize : std::uint8_t { A5, HalfLetter, A4, Letter };

/// Width and height in millimetres.
[[nodiscard]] QSizeF millimetresOf(PaperSize paper);
[[nodiscard]] QPageSize pageSizeOf(PaperSize paper);

}  // namespace chalk::ui::print
