#pragma once

#include "core/store/session_writer.h"
#include "core/week/week_case.h"

#include <functional>

namespace chalk::store {

/// Which sessions of a plan are meant, by index.
using SessionChoice = std::function<bool(std::size_t session)>;

/// Where a session lies.
[[nodiscard]] week::BookingPlace placeOf(const sessions::Session& session);

/// A booking as the facts of a week show it; nothing where they do not.
[[nodiscard]] std::optional<SeenBooking> seenBooking(const week::WeekFacts& facts, base::ClientId client, base::SessionId session);

/// What has to be written so that a week is as its plan says: bookings for what is proposed, moves for what lies elsewhere. A booking that the
/// plan leaves over is not touched: that is for its coach to say. A booking
/// that was moved since the facts were read is a Conflict. Without `isMeant`, all of it.
[[nodiscard]] BookingChanges changesTo(const week::WeekFacts& facts, const week::WeekCase& week, const week::WeekPlan& plan, const SessionChoice& isMeant = {});

}  // namespace chalk::store
