#pragma once

#include "core/exchange/catalogue_json.h"
#include "core/store/record_writer.h"
#include "tests/support/fake_clock.h"
#include "tests/support/small_studio.h"
#include "ui/common/act_history.h"
#include "ui/week/week_desk.h"

#include <gtest/gtest.h>

namespace chalk::test {

/// The small studio on Tuesday 24 November 2026 at 8:42. Ada comes twice a week: she is booked for today at 9:00 with Ines, and was there a week
/// ago; Bo waits for clearance.
class WeekStudioTest : public ::testing::Test {
protected:
    [[nodiscard]] ui::week::WeekStudio studio() { return {m_studio.database(), m_catalogue, m_clock, m_acts, someMoment}; }
    /// `2026-11-24 540 1 0` for each booking of Ada that stands: day, start, coach, locked.
    [[nodiscard]] QStringList bookings()
    {
        return m_studio.rows(QStringLiteral("SELECT s.day || ' ' || s.start_minute || ' ' || s.coach_id || ' ' || s.is_locked FROM session s "
                                            "WHERE s.client_id = 1 AND s.state IN ('planned', 'printed') ORDER BY s.day, s.start_minute"));
    }
    static base::Date today() { return smallStudioDay(); }

    StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    tests::FakeClock m_clock;
    ui::common::ActHistory m_acts{m_clock, [this](base::ActId act) -> tl::expected<base::ActId, QString> {
                                      auto outcome = store::RecordWriter(m_studio.database(), someMoment).undo(act);
                                      return outcome ? tl::expected<base::ActId, QString>(outcome->act) : tl::make_unexpected(outcome.error().message);
                                  }};
};

/// Minutes since Monday.
constexpr int weekMinute(int day, int hour, int minute = 0)
{
    return day * week::kDayMinutes + hour * 60 + minute;
}

}  // namespace chalk::test
