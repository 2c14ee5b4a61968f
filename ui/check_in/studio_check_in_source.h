#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/access.h"
#include "ui/check_in/check_in_source.h"

#include <functional>

namespace chalk::store {
class Database;
}

namespace chalk::ui::common {
class Dialogs;
}

namespace chalk::ui::check_in {

/// The check-ins of a studio. Each reading opens a connection of its own, so that it can run beside the window's; decisions are written through
/// the window's.
class StudioCheckInSource final : public CheckInSource {
public:
    /// The database and the catalogue outlive the source. `atUtc` is the moment of an act, ISO 8601. `dialogs` ask
    /// where somebody else decided in the meantime.
    StudioCheckInSource(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc, common::Dialogs* dialogs = nullptr);

    [[nodiscard]] store::Result<std::vector<checkin::QueueEntry>> queue(base::Date day) override;
    [[nodiscard]] store::Result<CheckInCase> page(base::ClientId client, base::Date day) override;
    [[nodiscard]] store::Result<EditedLift> lift(base::ClientId client, base::LiftId lift, base::Date day) override;
    [[nodiscard]] store::Result<base::ActId> decide(const checkin::Decision& decision, const std::optional<progression::EventBody>& event,
                                                     base::ActId seenOfDay) override;

private:
    store::Database& m_database;
    store::Access m_access;
    const lifts::Catalogue& m_catalogue;
    std::function<QString()> m_atUtc;
    common::Dialogs* m_dialogs;
};

}  // namespace chalk::ui::check_in
