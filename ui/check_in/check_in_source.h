#pragma once

#include "core/checkin/check_in.h"
#include "core/checkin/forecast.h"
#include "core/progression/event.h"
#include "core/store/store_error.h"
#include "ui/board/client_case.h"
#include "ui/decisions/swap_offers.h"

#include <optional>
#include <vector>

namespace chalk::ui::check_in {

/// The day on which a lift last became another exercise.
struct SwappedLiftDay {
    base::LiftId lift;
    base::Date day;

    bool operator==(const SwappedLiftDay&) const = default;
};

/// A forecast, or why there is none.
using LiftForecast = tl::expected<checkin::Forecast, checkin::ForecastLack>;

/// One client at a check-in, with what only the form asks for.
struct CheckInCase {
    checkin::ClientEvidence evidence;
    std::vector<SwappedLiftDay> swaps;  ///< of the lifts that were ever swapped
    std::vector<LiftForecast> forecasts;  ///< in the order of the lifts, as far as they were made
};

/// A lift as the editors of a decision need it.
struct EditedLift {
    board::LiftCase lift;
    std::vector<decisions::SwapOffer> offers;  ///< other exercises that its client may do
};

/// Where check-ins come from and where decisions go.
class CheckInSource {
public:
    virtual ~CheckInSource() = default;

    /// Everybody who is due, in the order of the queue. Called from any thread, but no two of the readings at a time.
    [[nodiscard]] virtual store::Result<std::vector<checkin::QueueEntry>> queue(base::Date day) = 0;
    /// One client's page, likewise.
    [[nodiscard]] virtual store::Result<CheckInCase> page(base::ClientId client, base::Date day) = 0;

    /// A lift for an editor. In the window's thread.
    [[nodiscard]] virtual store::Result<EditedLift> lift(base::ClientId client, base::LiftId lift, base::Date day) = 0;
    /// Writes a decision with the event that it leads to, as one act. `seenOfDay` is the act of the last decision about the client on that day that
    /// is on show, none where there is none: a later one is a Conflict. In the window's thread.
    [[nodiscard]] virtual store::Result<base::ActId> decide(const checkin::Decision& decision, const std::optional<progression::EventBody>& event,
                                                                base::ActId seenOfDay) = 0;
};

}  // namespace chalk::ui::check_in
