#pragma once

#include <QRectF>

#include <cstdint>
#include <vector>

namespace chalk::ui::common {
struct Theme;
}

namespace chalk::ui::floor {

/// What a box of a lift's row holds.
enum class LiftField : std::uint8_t { Load, Amount, Left, Rest, Felt, Pain };

/// Where the columns of a row begin.
struct LiftColumns {
    double sets = 0;
    double left = 0;
    double rest = 0;
    double felt = 0;
    double pain = 0;
    double setsWidth = 0;
    bool isStacked = false;  ///< too narrow for a name beside the boxes: they stand below it
};

/// The columns of a row of that width; narrow rows get narrower boxes.
[[nodiscard]] LiftColumns liftColumnsFor(double width, const common::Theme& theme);

/// How much lower the boxes of a stacked row stand, at a text size of 100 %.
inline constexpr double kStackedBy = 40;
/// From the left edge of a row to its name, at a text size of 100 %.
inline constexpr double kRowSide = 16;

/// One box of a row.
struct LiftBox {
    LiftField field = LiftField::Amount;
    int set = 0;  ///< of an amount
    QRectF rect;
};

/// The boxes of a row with so many sets, from left to right; the target under the name comes first, as the box of the load.
[[nodiscard]] std::vector<LiftBox> liftBoxesOf(const QRectF& row, int sets, const common::Theme& theme);

}  // namespace chalk::ui::floor
