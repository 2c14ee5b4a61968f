#pragma once

#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/store/record_writer.h"
#include "tests/support/fake_clock.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"
#include "ui/common/act_history.h"
#include "ui/floor/floor_desk.h"

#include <gtest/gtest.h>

namespace chalk::test {

/// The small studio with an unloaded split squat for Ada, and a session for Bo, who waits for clearance, at 10:00.
[[nodiscard]] exchange::StudioDocument floorStudio();

/// A studio with its floor, on Tuesday 24 November 2026. Ada comes at 09:00: back squat in Load build at 50 kg, a deadlift on
/// hold, dumbbell press in Base load, split squat in Pattern.
class FloorTest : public ::testing::Test {
protected:
    explicit FloorTest(const exchange::StudioDocument& document = floorStudio()) : m_studio(document) {}

    /// The lift of the desk's client by the key of its exercise; it is chosen then.
    const ui::floor::FloorLift& chooseLift(ui::floor::FloorDesk& desk, const std::string& exercise);
    /// How many entries the log of a lift has that count.
    std::size_t entriesOf(base::LiftId lift);

    StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const screens::ScreenCatalogue m_screens = exchange::builtInScreenCatalogue(m_catalogue);
    const tests::FakeClock m_clock;
    ui::common::ActHistory m_acts{m_clock, [this](base::ActId act) -> tl::expected<base::ActId, QString> {
                                      auto outcome = store::RecordWriter(m_studio.database(), someMoment).undo(act);
                                      return outcome ? tl::expected<base::ActId, QString>(outcome->act) : tl::make_unexpected(outcome.error().message);
                                  }};
    ui::floor::FloorPresenter m_presenter{m_studio.database(), m_catalogue, m_screens, someMoment};
};

}  // namespace chalk::test
