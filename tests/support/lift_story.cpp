#include "tests/support/lift_story.h"

#include "tests/support/lift_on_test.h"

#include <algorithm>

namespace chalk::test {

LiftStory::LiftStory(base::Date start, progression::LiftSetup setup)
    : m_fresh(*progression::LiftMachine::create(std::move(setup))), m_machine(m_fresh), m_day(start)
{
}

progression::LiftSetup LiftStory::loadedSetup()
{
    progression::LiftSetup setup = lowerLift();
    setup.startStage = progression::Stage::BaseLoad;
    setup.kit.startLoad = kilos(40);
    setup.kit.exerciseKey = "back_squat";
    return setup;
}

progression::Exposure LiftStory::asAsked(int repsAbove, int reserve) const
{
    const progression::Prescription asked = m_machine.prescriptionOn(m_day);
    progression::Exposure exposure;
    for (int i = 0; i < asked.sets.value(); ++i) {
        progression::SetRecord set;
        set.load = asked.load;
        set.amount = std::max(1, asked.repsLow.value() + repsAbove);
        set.rir = static_cast<std::int16_t>(reserve);
        set.restSeconds = static_cast<std::int16_t>(asked.rest.value());
        exposure.sets.push_back(set);
    }
    return exposure;
}

void LiftStory::passTime()
{
    constexpr int kToThursday = 3;
    constexpr int kToMonday = 4;
    m_day = m_day + (m_day.weekday() == 0 ? kToThursday : kToMonday);
}

LiftStory& LiftStory::train(int exposures, int repsAbove, int reserve)
{
    for (int i = 0; i < exposures; ++i) {
        take(asAsked(repsAbove, reserve));
    }
    return *this;
}

LiftStory& LiftStory::take(const progression::EventBody& body)
{
    m_machine.apply(m_day, body);
    m_events.push_back({m_day, body});
    passTime();
    return *this;
}

LiftStory& LiftStory::rest(int weeks)
{
    m_day = m_day + 7 * weeks;
    return *this;
}

LiftStory& LiftStory::painful(int pain)
{
    progression::Exposure exposure = asAsked(0, 2);
    exposure.pain = pain;
    return take(exposure);
}

}  // namespace chalk::test
