#include "core/simulation/harbour_forms.h"

#include "core/simulation/chance.h"
#include "core/simulation/harbour_facts.h"

#include <algorithm>
#include <fmt/format.h>

namespace chalk::simulation {

namespace {

using clients::HealthQuestion;
using studio::DocumentForm;
using studio::FormContent;

constexpr int kDaysBetweenScreens = 70;

/// Makes the forms of one person.
class FormsOfPerson {
public:
    FormsOfPerson(studio::DocumentClient& client, const Person& person, int number, base::Date today, const screens::ScreenCatalogue& guides)
        : m_client(client), m_person(person), m_facts(factsOf(person.name)), m_number(number), m_today(today), m_guides(guides),
          m_chance(static_cast<std::uint64_t>(515151 + 131 * number))
    {
    }

    void make()
    {
        const base::Date first = m_client.client.startedOn;
        add(first, false, profile());
        addIntakes();
        addLetter();
        addMeasures();
        addFieldTests();
        addScreens();
        std::stable_sort(m_client.forms.begin(), m_client.forms.end(), [](const DocumentForm& a, const DocumentForm& b) { return a.day < b.day; });
    }

private:
    void add(base::Date day, bool isFinished, FormContent content) { m_client.forms.push_back({day, isFinished, std::move(content)}); }

    clients::Profile profile() const
    {
        clients::Profile profile;
        profile.pronouns = m_facts.pronouns;
        profile.sex = m_facts.sex;
        // 01632 is kept free of subscribers, for drama: United Kingdom, Ofcom, telephone numbers for use in TV and radio drama programmes.
        profile.contact = {{}, fmt::format("01632 960 {:03}", 200 + m_number), fmt::format("client{}@example.org", m_number)};
        profile.emergency = {m_facts.emergency, fmt::format("01632 960 {:03}", 700 + m_number), {}};
        profile.trainingHistory = m_facts.history;
        profile.homeKit = m_facts.homeKit;
        profile.consentOn = m_client.client.startedOn;
        for (const Slot& slot : m_person.slots) {
            addHours(profile, slot);
        }
        if (m_number % 2 == 0 && !m_person.slots.empty()) {
            addOtherDay(profile, m_person.slots.front());
        }
        return profile;
    }

    /// Comes at the slot by choice, and could an hour before and after.
    static void addHours(clients::Profile& profile, const Slot& slot)
    {
        const auto down = [](int minute) { return minute / 30 * 30; };
        const int end = down(slot.startMinute + slot.minutes + 29);
        profile.sessionMinutes = slot.minutes;
        profile.isInGroup = slot.capacity > 1;
        [[maybe_unused]] const bool isPreferred = profile.preferred.add({slot.weekday, down(slot.startMinute), end});
        [[maybe_unused]] const bool isFree = profile.free.add({slot.weekday, down(slot.startMinute) - 60, std::min(end + 60, 24 * 60)});
    }

    /// Could come two days later as well, in the evening.
    static void addOtherDay(clients::Profile& profile, const Slot& slot)
    {
        constexpr int kFrom = 16 * 60;
        constexpr int kTo = 20 * 60;
        [[maybe_unused]] const bool isFree = profile.free.add({(slot.weekday + 2) % 5, kFrom, kTo});
    }

    clients::HealthIntake intake(const std::vector<YesAnswer>& yeses, base::Date day) const
    {
        clients::HealthIntake intake;
        for (clients::HealthAnswer& answer : intake.answers) {
            answer.isYes = false;
        }
        for (const YesAnswer& yes : yeses) {
            intake.answerTo(yes.question) = {true, yes.marks, yes.detail};
        }
        intake.isRegularExerciser = m_facts.isRegularExerciser;
        intake.agreedOn = day;
        if (m_person.age > 60) {
            intake.resting = {62 + m_person.age % 9, 128 + m_person.age % 13, 80 + m_person.age % 6};
        }
        return intake;
    }

    void addIntakes()
    {
        const base::Date first = m_client.client.startedOn;
        add(first, !m_facts.later.empty(), intake(m_facts.yeses, first));
        if (!m_facts.later.empty()) {
            const base::Date day = m_today - m_facts.laterDaysAgo;
            add(day, false, intake(m_facts.later, day));
        }
    }

    void addLetter()
    {
        const clients::Clearance& clearance = m_client.clearance;
        if (clearance.state != clients::ClearanceState::Granted) {
            return;
        }
        std::vector<clients::HealthMark> asked;
        for (const YesAnswer& yes : m_facts.later.empty() ? m_facts.yeses : m_facts.later) {
            asked.insert(asked.end(), yes.marks.begin(), yes.marks.end());
        }
        m_client.letters.push_back({clearance.grantedBy, *clearance.grantedOn, clearance.validUntil, clearance.limits, asked, {}, {}});
    }

    /// On the first day, and about every tenth week.
    void addMeasures()
    {
        const base::Date last = m_today - 5;
        const double now = m_person.bodyMass;
        for (base::Date day = m_client.client.startedOn; day <= last; day = day + kDaysBetweenScreens) {
            const bool isLast = day + kDaysBetweenScreens > last;
            const double drift = isLast ? 0 : (last - day) / 90.0 * (m_chance.unit() - 0.4);
            clients::BodyMeasures measures;
            measures.date = day;
            measures.mass = base::Mass::of(base::Load::fromCenti(static_cast<std::int32_t>((now + drift) * 10) * 10), m_person.unit);
            if (day == m_client.client.startedOn) {
                measures.height = clients::Millimetres(m_facts.heightMm);
                measures.heartRate = 58 + m_chance.below(22);
            }
            add(day, !isLast, measures);
        }
    }

    void addFieldTests()
    {
        const base::Date first = m_client.client.startedOn;
        const base::Date again = first + kDaysBetweenScreens;
        const bool isTestedAgain = again < m_today;
        if (m_person.age >= 60) {
            add(first, isTestedAgain, olderTests(first, 9, 6'000));
            if (isTestedAgain) {
                add(again, false, olderTests(again, 13, 15'000));
            }
        } else if (m_person.age < 30) {
            add(first, false, screens::FieldTestDay{first, {screens::PushUps{base::Reps(8 + m_chance.below(14))}, screens::Plank{40'000 + 500 * m_chance.below(90)}}});
        }
    }

    screens::FieldTestDay olderTests(base::Date day, int leastStands, int leastStanceMs)
    {
        const base::Reps stands(leastStands + m_chance.below(4));
        return {day, {screens::ChairStand{stands}, screens::SingleLegStance{leastStanceMs + 500 * m_chance.below(20)}}};
    }

    /// One when somebody comes and about every tenth week, each better than the one before; the first of a newcomer is half done.
    void addScreens()
    {
        if (m_person.choices.empty()) {
            return;
        }
        if (m_person.weeksHere < 2) {
            addHalfScreen(m_today - 7);  // at the trial session
            return;
        }
        int round = 0;
        for (base::Date day = m_client.client.startedOn; day <= m_today - 15; day = day + kDaysBetweenScreens, ++round) {
            screens::MovementScreen screen = m_guides.blankScreen(day);
            for (screens::PatternScreen& pattern : screen.patterns) {
                mark(pattern, round);
            }
            screen.isFinished = true;
            add(day, true, screen);
        }
    }

    /// Every point met but for some in the first rounds; where all are, the pauses are held, now and then shakily.
    void mark(screens::PatternScreen& pattern, int round)
    {
        bool isEveryPointMet = true;
        for (screens::PointMark& point : pattern.points) {
            const bool isPartly = m_chance.happens(std::max(2, 22 - 9 * round));
            point.mark = isPartly ? screens::Mark::Partly : screens::Mark::Met;
            isEveryPointMet = isEveryPointMet && !isPartly;
        }
        if (isEveryPointMet) {
            for (screens::PauseTry& pause : pattern.pauses) {
                pause.mark = m_chance.happens(std::max(5, 40 - 15 * round)) ? screens::PauseMark::Shaky : screens::PauseMark::Held;
            }
        }
    }

    /// Squat and hinge looked at, the horizontal push begun.
    void addHalfScreen(base::Date day)
    {
        screens::MovementScreen screen = m_guides.blankScreen(day);
        screens::PatternScreen& squat = screen.of(lifts::Pattern::Squat);
        for (screens::PointMark& point : squat.points) {
            point.mark = screens::Mark::Met;
        }
        squat.pauses = {screens::PauseTry{screens::PauseMark::Held, 3'000}, screens::PauseTry{screens::PauseMark::Held, 3'000},
                        screens::PauseTry{screens::PauseMark::Shaky, 2'000}};
        screens::PatternScreen& hinge = screen.of(lifts::Pattern::Hinge);
        for (std::size_t i = 0; i < hinge.points.size(); ++i) {
            hinge.points[i].mark = i == 1 ? screens::Mark::NotMet : i == 3 ? screens::Mark::Partly : screens::Mark::Met;
        }
        hinge.note = "Bends the knees instead of the hips; better with a stick along the back";
        screens::PatternScreen& push = screen.of(lifts::Pattern::HorizontalPush);
        push.points[0].mark = screens::Mark::Met;
        push.points[1].mark = screens::Mark::Partly;
        add(day, false, screen);
    }

    studio::DocumentClient& m_client;
    const Person& m_person;
    const PersonFacts& m_facts;
    int m_number;
    base::Date m_today;
    const screens::ScreenCatalogue& m_guides;
    Chance m_chance;
};

}  // namespace

void addForms(studio::DocumentClient& client, const Person& person, int number, base::Date today, const screens::ScreenCatalogue& guides)
{
    FormsOfPerson(client, person, number, today, guides).make();
}

}  // namespace chalk::simulation
