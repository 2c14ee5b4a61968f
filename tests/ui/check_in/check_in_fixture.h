#pragma once

#include "ui/check_in/check_in_source.h"

#include <deque>
#include <memory>

namespace chalk::test {

/// Tuesday 24 November 2026.
[[nodiscard]] base::Date checkInDay();

/// A bench press over the twelve weeks up to checkInDay, judged by the detector: stalled, with six choices, the lighter week suggested.
[[nodiscard]] checkin::LiftEvidence stalledBench();
/// A squat that has four exposures with load: too few to judge, and no estimate.
[[nodiscard]] checkin::LiftEvidence youngSquat();
/// `Tomasz Wyre` with both lifts.
[[nodiscard]] ui::check_in::CheckInCase tomasz();

/// What a fake source is asked and answers; lives longer than the page.
struct CheckInStudio {
    std::vector<checkin::QueueEntry> queue;  ///< Hanne 11 with pain, Tomasz 12 with a plateau, Gwen 13 on course
    std::deque<checkin::Decision> decided;
    std::deque<std::optional<progression::EventBody>> events;
    bool isInPlan = false; ///< the first choice opens the plan that the bench press follows
    QString failure;       ///< of every reading, where there is one
    QString writeFailure;  ///< of every decision

    CheckInStudio();
};

class FakeCheckInSource final : public ui::check_in::CheckInSource {
public:
    explicit FakeCheckInSource(CheckInStudio& studio) : m_studio(studio) {}

    store::Result<std::vector<checkin::QueueEntry>> queue(base::Date day) override;
    store::Result<ui::check_in::CheckInCase> page(base::ClientId client, base::Date day) override;
    store::Result<ui::check_in::EditedLift> lift(base::ClientId client, base::LiftId lift, base::Date day) override;
    store::Result<base::ActId> decide(const checkin::Decision& decision, const std::optional<progression::EventBody>& event, base::ActId /*seenOfDay*/) override;

private:
    CheckInStudio& m_studio;
};

}  // namespace chalk::test
