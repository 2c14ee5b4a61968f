#pragma once

#include "core/checkin/attention.h"
#include "core/checkin/roster_order.h"
#include "core/lifts/catalogue.h"

#include <QString>

#include <optional>

namespace chalk::ui::roster {

/// What the sentences need to know besides the reason.
struct AttentionSetting {
    base::Date today;
    const lifts::Catalogue& catalogue;
    std::optional<checkin::SessionTime> next;  ///< the client's next session
};

/// What choosing an item does, and where on the client's page it leads: an empty tab is the board.
struct AttentionAction {
    QString text;
    QString tab;
};

/// Why a client needs attention: a sentence or two with the numbers and dates, and when the client comes today.
[[nodiscard]] QString attentionSentence(const checkin::AttentionReason& reason, const AttentionSetting& setting);
[[nodiscard]] AttentionAction attentionAction(const checkin::AttentionReason& reason);

/// `1 day`, `13 days`, from two weeks on `2 weeks`.
[[nodiscard]] QString spanText(int days);
/// The name of an exercise; the pattern's where the catalogue does not know it.
[[nodiscard]] QString exerciseName(const std::string& key, lifts::Pattern pattern, const lifts::Catalogue& catalogue);

}  // namespace chalk::ui::roster
