#pragma once

#include "core/checkin/check_in.h"
#include "core/lifts/catalogue.h"

#include <QString>

namespace chalk::ui::common {

/// What a client is told of a check-in.
struct CheckInMessage {
    const checkin::ClientEvidence& client;
    const checkin::LiftEvidence* lift = nullptr;  ///< that was talked about; null for none
    const checkin::Choice* choice = nullptr;      ///< that was made about it; null for none yet
    base::Date today;
    base::Date nextReview;
};

/// A short message in plain words, a paragraph a line: who came how often, what comes next, when it is looked at again. It promises nothing,
/// and where there is pain it sends the client to a doctor or physiotherapist.
[[nodiscard]] QString checkInMessage(const CheckInMessage& message, const lifts::Catalogue& catalogue);

}  // namespace chalk::ui::common
