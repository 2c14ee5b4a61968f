#pragma once

#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/lifts/equipment.h"
#include "core/lifts/pattern.h"

#include <cstdint>
#include <vector>

namespace chalk::sessions {

/// One set of the way up to a working load.
struct WarmUpSet {
    base::Load load;
    base::Reps reps;  ///< whatever the measure; shown as reps × seconds or metres per rep

    bool operator==(const WarmUpSet&) const = default;
};

/// How much of the way up is walked.
enum class WarmUpLength : std::uint8_t {
    Full,  ///< the session's first lift of a region
    Short  ///< a later one: the region is warm, the movement is not
};

/// The sets before a working load, lightest first, every load one that `equipment` can give and below `working`. Common practice
/// in the trade, no published table: on a bar the bare bar for 10, then about 50, 70 and 85 per cent for 5, 3 and 2; with
/// dumbbells, kettlebells and stacks about 50 and 70 per cent; with load added to the body the body alone for 5; for holds and
/// carries about 50 per cent once. A short way is about 50 and 70 per cent on a bar and one set of 50 with anything else.
/// Steps that lie closer than a tenth of the working load to each other or to it are left out, so light loads get fewer or none.
[[nodiscard]] std::vector<WarmUpSet> warmUpRamp(const lifts::Equipment& equipment, lifts::Measure measure, base::Load working,
                                                WarmUpLength length);

}  // namespace chalk::sessions
