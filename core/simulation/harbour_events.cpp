#include "core/simulation/harbour_people.h"

#include <algorithm>

namespace chalk::simulation {

namespace {

using lifts::Pattern;

/// One person's lift while its story is being told. Days are counted back from the studio's day.
class Telling {
public:
    Telling(LiftStory& story, const std::string& name, base::Date today) : m_story(story), m_name(name), m_today(today) {}

    [[nodiscard]] bool isOf(const char* name) const { return m_name == name; }
    [[nodiscard]] bool isOf(const char* name, Pattern pattern) const { return m_name == name && m_story.pattern == pattern; }

    /// The last session on a day or before it; else the first one.
    [[nodiscard]] base::Date sessionBefore(int daysAgo) const { return m_story.sessions[placeBefore(daysAgo)].date; }
    /// The session after that one; the same where it is the last.
    [[nodiscard]] base::Date sessionAfter(int daysAgo) const
    {
        return m_story.sessions[std::min(placeBefore(daysAgo) + 1, m_story.sessions.size() - 1)].date;
    }

    void hurts(int daysAgo, int pain) { m_story.pains[sessionBefore(daysAgo)] = pain; }
    void turns(base::Date session, Turn kind) { m_story.turns[session] = kind; }
    /// A week, or more, in which everything is lighter.
    void goesLighter(int fromDaysAgo, int toDaysAgo)
    {
        for (const StorySession& session : m_story.sessions) {
            const int ago = m_today - session.date;
            if (ago <= fromDaysAgo && ago >= toDaysAgo) {
                turns(session.date, Turn::GoesLighter);
            }
        }
    }
    void slips(int daysAgo) { m_story.slips.insert(sessionBefore(daysAgo)); }
    void isTypedTwice(int daysAgo) { m_story.doubles.insert(sessionBefore(daysAgo)); }
    void acts(int daysAgo, progression::EventBody body) { m_story.coachActs[m_today - daysAgo] = std::move(body); }
    void isHeld(int daysAgo, const char* reason) { m_story.holds[sessionBefore(daysAgo)] = reason; }
    void isSet(int daysAgo, progression::Stage stage, const char* reason)
    {
        progression::CoachSet set;
        set.stage = stage;
        set.reason = reason;
        acts(daysAgo, set);
    }

    [[nodiscard]] LiftStory& story() { return m_story; }

private:
    [[nodiscard]] std::size_t placeBefore(int daysAgo) const
    {
        std::size_t found = 0;
        for (std::size_t i = 0; i < m_story.sessions.size(); ++i) {
            found = m_story.sessions[i].date <= m_today - daysAgo ? i : found;
        }
        return found;
    }

    LiftStory& m_story;
    const std::string& m_name;
    base::Date m_today;
};

void tellOfPain(Telling& lift)
{
    if (lift.isOf("Hanne Skov-Adler", Pattern::VerticalPush)) {
        lift.hurts(5, 2);
        lift.hurts(0, 4);
    } else if (lift.isOf("Gwen Tarrant", Pattern::HorizontalPush)) {
        lift.hurts(63, 5);
        lift.turns(lift.sessionAfter(63), Turn::TriesOnHold);
        lift.acts(45, progression::Release{"Seen by a physiotherapist: free to press again"});
    } else if (lift.isOf("Tomasz Wyre", Pattern::VerticalPush)) {
        lift.acts(70, progression::Release{"Letter of the surgeon: free to press overhead"});
    }
}

void tellOfChoices(Telling& lift)
{
    if (lift.isOf("Callum Strand", Pattern::Squat)) {
        lift.isSet(133, progression::Stage::LoadBuild, "Squatted for two years at another studio");
    } else if (lift.isOf("Priya Venn", Pattern::SingleLeg)) {
        lift.acts(100, progression::Swap{lift.story().setup.kit.equipment, {}, {}, {}, "split_squat", 2});
    } else if (lift.isOf("Beatrix Lowe", Pattern::Hinge)) {
        lift.isSet(40, progression::Stage::LoadBuild, "Moved house: starts again a little lower");
    } else if (lift.isOf("Lars Pemberley", Pattern::HorizontalPull)) {
        lift.isHeld(28, "Slept badly: the same once more");
    } else if (lift.isOf("Noor Castell", Pattern::CarryBrace)) {
        progression::CoachSet set;
        set.stage = progression::Stage::RestCut;
        set.reps = base::Reps(8);
        set.sets = base::Sets(2);
        set.rest = base::Seconds(75);
        set.reason = "Short rests before the show, fewer metres for them";
        lift.acts(61, set);
    }
}

void tellOfLighterWeeks(Telling& lift)
{
    if (lift.isOf("Mireille Dacosta", Pattern::HorizontalPull)) {
        lift.acts(38, progression::LighterWeek{"Long days at work, little sleep"});
    } else if (lift.isOf("Dmitri Oake")) {
        lift.acts(14, progression::LighterWeek{"Moves house this week"});
    }
}

void tellOfDays(Telling& lift)
{
    if (lift.isOf("Joaquin Ferro", Pattern::Squat)) {
        lift.turns(lift.sessionAfter(101), Turn::IsScreened);  // back from a holiday
    } else if (lift.isOf("Tomasz Wyre", Pattern::Squat) || lift.isOf("Noor Castell", Pattern::Squat)) {
        lift.turns(lift.sessionBefore(60), Turn::IsScreened);
    } else if (lift.isOf("Mireille Dacosta", Pattern::Squat)) {
        lift.turns(lift.sessionBefore(96), Turn::LosesASet);
        lift.turns(lift.sessionAfter(96), Turn::LosesASet);
    } else if (lift.isOf("Pella Nakamura-Voss", Pattern::Squat)) {
        lift.turns(lift.sessionBefore(24), Turn::LosesASet);
    } else if (lift.isOf("Dmitri Oake", Pattern::Hinge)) {
        lift.turns(lift.sessionBefore(16), Turn::LoadsTooSoon);
    } else if (lift.isOf("Priya Venn", Pattern::HorizontalPull)) {
        lift.turns(lift.sessionBefore(52), Turn::OnlyWarmsUp);
    } else if (lift.isOf("Callum Strand")) {
        lift.goesLighter(33, 27);  // examinations
    } else if (lift.isOf("Sefa Reid")) {
        lift.goesLighter(47, 40);  // a regatta
    }
}

void tellOfSlips(Telling& lift)
{
    if (lift.isOf("Noor Castell", Pattern::HorizontalPush)) {
        lift.slips(33);
    } else if (lift.isOf("Sefa Reid", Pattern::Hinge)) {
        lift.slips(12);
    } else if (lift.isOf("Noor Castell", Pattern::Hinge)) {
        lift.isTypedTwice(20);
    }
}

}  // namespace

void addPolicy(progression::Policy& policy, const std::string& name, Pattern pattern)
{
    if (name == "Hanne Skov-Adler") {
        policy.stepLower = base::Load::fromCenti(250);  // low bone density: steps stay small
    } else if (name == "Lars Pemberley" || name == "Yara Hadley") {
        policy.reserve = 3;
        policy.painHold = 3;
    } else if (name == "Noor Castell" && pattern == Pattern::SingleLeg) {
        policy.repGoal = base::Reps(15);
    }
}

void addEvents(LiftStory& story, const std::string& name, base::Date today)
{
    Telling lift(story, name, today);
    tellOfPain(lift);
    tellOfChoices(lift);
    tellOfLighterWeeks(lift);
    tellOfDays(lift);
    tellOfSlips(lift);
}

}  // namespace chalk::simulation
