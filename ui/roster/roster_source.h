#pragma once

#include "core/base/date.h"
#include "core/lifts/catalogue.h"
#include "core/store/access.h"
#include "core/store/store_error.h"
#include "ui/roster/roster_row.h"

#include <QString>

namespace chalk::ui::roster {

/// Where the roster comes from.
class RosterSource {
public:
    virtual ~RosterSource() = default;

    /// Reads everybody as they stand on `today`. Called from any thread, but never from two at a time.
    [[nodiscard]] virtual store::Result<RosterView> read(base::Date today) = 0;
};

/// The roster of a studio. Each reading opens a connection of its own, so that it can run beside the window's.
class StudioRosterSource final : public RosterSource {
public:
    /// `access` is what store::Database::open takes.
    StudioRosterSource(store::Access access, lifts::Catalogue catalogue);

    [[nodiscard]] store::Result<RosterView> read(base::Date today) override;

private:
    store::Access m_access;
    lifts::Catalogue m_catalogue;
};

}  // namespace chalk::ui::roster
