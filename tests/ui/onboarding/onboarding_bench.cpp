#include "tests/ui/onboarding/onboarding_bench.h"

#include "core/exchange/movement_screen_json.h"

#include <gtest/gtest.h>

namespace chalk::test {

base::ClientId OnboardingBench::addCleo(int daysAgo)
{
    const base::Date day = m_clock.today() - daysAgo;
    clients::Client client;
    client.name = "Cleo Marsh";
    client.birthDate = base::Date::fromYmd(1990, 4, 2);
    client.coach = base::CoachId(1);
    client.startedOn = day;
    store::ClientWriter writer(m_studio.database());
    const base::ClientId cleo = writer.add(client, m_clock.today()).value();
    clients::Profile profile;
    profile.consentOn = day;
    EXPECT_TRUE(writer.saveProfile(cleo, profile, m_clock.today()));
    return cleo;
}

void OnboardingBench::answerAllNo(base::ClientId client)
{
    clients::HealthIntake calm;
    for (clients::HealthAnswer& answer : calm.answers) {
        answer.isYes = false;
    }
    calm.isRegularExerciser = false;
    EXPECT_TRUE(store::ClientWriter(m_studio.database()).saveIntake(client, calm, {}, "calm", m_clock.today()));
}

void OnboardingBench::keepFinished(base::ClientId client, base::Date date, screens::Mark mark, screens::PauseMark pause)
{
    screens::MovementScreen screen = m_screens.blankScreen(date);
    for (screens::PatternScreen& pattern : screen.patterns) {
        for (screens::PointMark& point : pattern.points) {
            point.mark = mark;
        }
        for (screens::PauseTry& one : pattern.pauses) {
            one.mark = pause;
        }
    }
    screen.isFinished = true;
    store::ClientWriter writer(m_studio.database());
    EXPECT_TRUE(writer.saveForm(client, store::FormKind::MovementScreen, exchange::toJson(screen), date));
    EXPECT_TRUE(writer.finishForm(client, store::FormKind::MovementScreen));
}

}  // namespace chalk::test
