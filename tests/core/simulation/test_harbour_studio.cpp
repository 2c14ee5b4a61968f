#include "core/simulation/harbour_studio.h"

#include "core/clients/intake_clearance.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/exchange/studio_folder.h"

#include <QFile>

#include <gtest/gtest.h>

#include <set>

namespace chalk::simulation {

namespace {

/// What occurs in the demo studio.
struct Occurrences {
    std::set<progression::Stage> stages;
    std::set<std::string> flags;
    std::set<std::string> rules;
    std::set<lifts::CautionTag> cautions;
    std::set<sessions::SessionState> sessionStates;
    std::set<clients::ClearanceState> clearances;
    std::set<std::string> choices;  ///< types of events, `former` and `taken back`
    bool isAnyOnHold = false;
    bool hasOwnPolicy = false;
};

void addLift(Occurrences& found, const exchange::DocumentLift& lift)
{
    auto machine = progression::LiftMachine::create(lift.setup).value();
    for (const progression::Event& event : studio::countingEvents(lift)) {
        found.choices.emplace(progression::typeKeyOf(event.body));
        for (const progression::Rule rule : machine.apply(event.date, event.body)) {
            found.rules.emplace(progression::nameOf(rule));
        }
        for (const progression::Flag flag : progression::kFlags) {
            if (machine.state().flags.has(flag)) {
                found.flags.emplace(progression::keyOf(flag));
            }
        }
    }
    for (const exchange::DocumentEvent& entry : lift.events) {
        if (entry.isTakenBack) {
            found.choices.emplace("taken back");
        } else if (!entry.former.empty()) {
            found.choices.emplace("former");
        }
    }
    found.stages.insert(machine.state().stage);
    found.isAnyOnHold = found.isAnyOnHold || machine.state().isOnHold;
    found.hasOwnPolicy = found.hasOwnPolicy || lift.setup.policy != progression::Policy::defaultsFor(lift.setup.unit);
}

Occurrences occurrencesIn(const exchange::StudioDocument& document)
{
    Occurrences found;
    for (const exchange::DocumentClient& client : document.clients) {
        found.clearances.insert(client.clearance.state);
        for (const clients::Caution& caution : client.cautions) {
            found.cautions.insert(caution.tags.begin(), caution.tags.end());
        }
        for (const sessions::Session& session : client.sessions) {
            found.sessionStates.insert(session.state);
        }
        for (const exchange::DocumentLift& lift : client.lifts) {
            addLift(found, lift);
        }
    }
    return found;
}

exchange::StudioDocument embeddedStudio()
{
    return exchange::readStudio(exchange::studioFilesIn(QStringLiteral(":/demo")).value(), exchange::builtInCatalogue()).value();
}

/// As it is on a morning.
exchange::StudioDocument studioOn(base::Date day)
{
    exchange::StudioDocument studio = embeddedStudio();
    openOn(studio, day);
    return studio;
}

const base::Date kScenarioDay = *base::Date::fromYmd(2026, 11, 24);

bool isDone(sessions::SessionState state)
{
    return state != sessions::SessionState::Planned && state != sessions::SessionState::Printed;
}

/// How many clients come on a day, from its first minute on.
int clientsOn(const exchange::StudioDocument& studio, base::Date day)
{
    int count = 0;
    for (const exchange::DocumentClient& client : studio.clients) {
        for (const sessions::Session& session : client.sessions) {
            count += session.date == day ? 1 : 0;
        }
    }
    return count;
}

/// What lies ahead of a morning though it is done; empty where nothing does.
std::string aheadOf(const exchange::StudioDocument& studio, base::Date day)
{
    for (const exchange::DocumentClient& client : studio.clients) {
        for (const sessions::Session& session : client.sessions) {
            if (isDone(session.state) && std::pair(session.date, session.startMinute) >= std::pair(day, kOpeningMinute)) {
                return client.client.name + ": session of " + session.date.toString();
            }
        }
        for (const exchange::DocumentLift& lift : client.lifts) {
            if (lift.startedOn > day) {
                return client.client.name + ": a lift that begins on " + lift.startedOn.toString();
            }
            for (const exchange::DocumentEvent& entry : lift.events) {
                if (entry.event.date > day) {
                    return client.client.name + ": entry of " + entry.event.date.toString();
                }
            }
        }
        const auto& clearance = client.clearance;
        if (client.client.startedOn > day || clearance.askedOn.value_or(day) > day || clearance.grantedOn.value_or(day) > day) {
            return client.client.name + ": profile";
        }
    }
    return {};
}

}  // namespace

TEST(HarbourStudio, IsWhatTheSimulationInvents)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto files = exchange::writeStudio(harbourStudio(catalogue, exchange::builtInScreenCatalogue(catalogue)));
    const auto embedded = exchange::studioFilesIn(QStringLiteral(":/demo")).value();
    ASSERT_EQ(files.size(), embedded.size());
    for (const auto& [name, text] : files) {
        EXPECT_TRUE(embedded.at(name) == text) << name.toStdString() << " is not what `chalkrung demo --write` writes";
    }
}

TEST(HarbourStudio, HasTheScenario)
{
    const auto studio = studioOn(kScenarioDay);
    EXPECT_EQ(studio.clients.size(), 18U);
    EXPECT_EQ(studio.coaches.size(), 2U);
    std::set<std::pair<int, std::int64_t>> slots;
    for (const auto& client : studio.clients) {
        for (const auto& session : client.sessions) {
            if (session.date == studio.today) {
                slots.emplace(session.startMinute, session.coach.value());
            }
        }
    }
    EXPECT_EQ(slots.size(), 7U) << "seven sessions today";
}

TEST(HarbourStudio, OpensOnEveryDayOfAWeekWithNothingAheadButWhatIsBooked)
{
    for (const base::Date monday : {kScenarioDay - 1, kScenarioDay - 1 + 7 * 57, kScenarioDay - 1 - 7 * 40}) {
        for (int weekday = 0; weekday < 7; ++weekday) {
            const base::Date day = monday + weekday;
            const auto studio = studioOn(day);
            EXPECT_EQ(studio.today, day);
            EXPECT_EQ(aheadOf(studio, day), "") << day.toString();
            EXPECT_GT(clientsOn(studio, day), 0) << day.toString();
            EXPECT_GT(clientsOn(studio, day + 7), 0) << "a week on from " << day.toString();
        }
    }
}

TEST(HarbourStudio, AMondaysStudioIsSoundInTheOpenFormat)
{
    const auto read = exchange::readStudio(exchange::writeStudio(studioOn(kScenarioDay - 1)), exchange::builtInCatalogue());
    EXPECT_TRUE(read) << read.error().message().toStdString();
}

TEST(HarbourStudio, NobodyTrainsWhatACautionRulesOut)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    for (const exchange::DocumentClient& client : embeddedStudio().clients) {
        std::vector<lifts::CautionTag> cautions;
        for (const clients::Caution& caution : client.cautions) {
            cautions.insert(cautions.end(), caution.tags.begin(), caution.tags.end());
        }
        for (const exchange::DocumentLift& lift : client.lifts) {
            auto machine = progression::LiftMachine::create(lift.setup).value();
            for (const exchange::DocumentEvent& entry : lift.events) {
                machine.apply(entry.event.date, entry.event.body);
            }
            const lifts::Exercise* exercise = catalogue.find(machine.setup().kit.exerciseKey);
            ASSERT_NE(exercise, nullptr) << lift.exerciseKey;
            EXPECT_TRUE(machine.state().isOnHold || !isRuledOut(*exercise, cautions)) << client.client.name << ", " << exercise->name;
        }
    }
}

TEST(HarbourStudio, EveryStageFlagCautionAndOutcomeOccurs)
{
    const Occurrences found = occurrencesIn(embeddedStudio());
    EXPECT_EQ(found.stages.size(), 7U);
    EXPECT_EQ(found.flags.size(), 3U);
    EXPECT_EQ(found.sessionStates.size(), 5U) << "all but a printed card, which belongs to a morning";
    EXPECT_TRUE(found.isAnyOnHold);
    EXPECT_TRUE(found.hasOwnPolicy);
    EXPECT_EQ(found.clearances.size(), 4U);
    EXPECT_EQ(found.choices, (std::set<std::string>{"exposure", "rehearsal", "release", "set", "swap", "lighter", "block", "former", "taken back"}));
    for (int tag = 0; tag <= static_cast<int>(lifts::CautionTag::GripStrength); ++tag) {
        EXPECT_TRUE(found.cautions.count(static_cast<lifts::CautionTag>(tag))) << lifts::keyOf(static_cast<lifts::CautionTag>(tag));
    }
    // Nobody of the scenario breaks a plan off: the rules of that (N-4, N-5) do not occur.
    for (int rule = 0; rule < static_cast<int>(progression::Rule::N4); ++rule) {
        const std::string name(progression::nameOf(static_cast<progression::Rule>(rule)));
        EXPECT_TRUE(found.rules.count(name)) << name << " does not occur";
    }
}

TEST(HarbourStudio, TheMorningOfTheScenarioHasEveryStageAHoldAndAPrintedCard)
{
    const Occurrences found = occurrencesIn(studioOn(kScenarioDay));
    EXPECT_EQ(found.stages.size(), 7U);
    EXPECT_EQ(found.sessionStates.size(), 6U);
    EXPECT_TRUE(found.isAnyOnHold);
}

namespace {

/// The latest form of a kind; nothing where there is none.
template <typename Content>
const Content* latestOf(const exchange::DocumentClient& client)
{
    const Content* latest = nullptr;
    for (const studio::DocumentForm& form : client.forms) {
        const auto* content = std::get_if<Content>(&form.content);
        latest = content != nullptr ? content : latest;
    }
    return latest;
}

}  // namespace

TEST(HarbourStudio, EverybodysClearanceIsWhatTheIntakeAsksFor)
{
    for (const auto& client : studioOn(kScenarioDay).clients) {
        const auto* intake = latestOf<clients::HealthIntake>(client);
        ASSERT_NE(intake, nullptr) << client.client.name;
        const clients::HealthOutcome outcome = clients::outcomeOf(*intake, {});
        EXPECT_TRUE(outcome.isComplete()) << client.client.name;
        const clients::ClearanceState asked = clients::clearanceStateAfter(outcome);
        if (client.clearance.state == clients::ClearanceState::Granted) {
            EXPECT_EQ(client.letters.size(), 1U) << client.client.name;
        } else {
            EXPECT_EQ(client.clearance.state, asked) << client.client.name;
            EXPECT_TRUE(client.letters.empty()) << client.client.name;
        }
    }
}

TEST(HarbourStudio, EverybodyHasAProfileWithConsentAndWhoTrainsWasLookedAt)
{
    for (const auto& client : studioOn(kScenarioDay).clients) {
        const auto* profile = latestOf<clients::Profile>(client);
        ASSERT_NE(profile, nullptr) << client.client.name;
        EXPECT_TRUE(clients::canKeepHealth(*profile, client.client.birthDate, kScenarioDay)) << client.client.name;
        EXPECT_FALSE(clients::faultOf(*profile, kScenarioDay)) << client.client.name;
        const auto* screen = latestOf<screens::MovementScreen>(client);
        EXPECT_EQ(screen != nullptr, !client.lifts.empty()) << client.client.name;
        const bool isNewcomer = client.client.name == "Marit Eskelin";
        EXPECT_TRUE(screen == nullptr || screen->isFinished != isNewcomer) << client.client.name;
        const auto* measures = latestOf<clients::BodyMeasures>(client);
        ASSERT_NE(measures, nullptr) << client.client.name;
        ASSERT_TRUE(measures->mass && client.client.bodyMass);
        EXPECT_EQ(measures->mass->in(client.client.unit), *client.client.bodyMass) << client.client.name;
    }
}

TEST(HarbourStudio, WhatWasDecidedAboutALiftIsInItsLog)
{
    std::set<checkin::ChoiceKind> choices;
    const auto document = embeddedStudio();
    for (const studio::DocumentClient& client : document.clients) {
        for (const studio::DocumentDecision& decision : client.decisions) {
            choices.insert(decision.choice);
            EXPECT_LE(decision.day, document.today);
            EXPECT_GT(decision.nextReview, decision.day);
            if (!decision.lift) {
                continue;
            }
            const auto lift = std::find_if(client.lifts.begin(), client.lifts.end(), [&](const auto& one) { return one.pattern == decision.lift; });
            ASSERT_NE(lift, client.lifts.end()) << client.client.name;
            const auto isIts = [&decision](const progression::Event& event) {
                const std::string_view type = progression::typeKeyOf(event.body);
                const bool isKind = decision.choice == checkin::ChoiceKind::LighterWeek ? type == "lighter"
                                    : decision.choice == checkin::ChoiceKind::Swap      ? type == "swap"
                                    : decision.choice == checkin::ChoiceKind::Rescreen  ? type == "rehearsal"
                                                                                        : type == "set";
                return isKind && event.date == decision.day;
            };
            const auto events = studio::countingEvents(*lift);
            EXPECT_TRUE(std::any_of(events.begin(), events.end(), isIts)) << client.client.name << ", " << decision.day.toString();
        }
    }
    EXPECT_GE(choices.size(), 6U);
}

TEST(HarbourStudio, RecordedSessionsOfTheLastWeeksAreReportedWithConsent)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto document = harbourStudio(catalogue, exchange::builtInScreenCatalogue(catalogue));
    std::size_t reports = 0;
    std::size_t notes = 0;
    std::size_t readiness = 0;
    for (const studio::DocumentClient& client : document.clients) {
        for (const sessions::Session& session : client.sessions) {
            const auto report = client.reports.find(session.code);
            if (report == client.reports.end()) {
                continue;
            }
            EXPECT_EQ(session.state, sessions::SessionState::Recorded) << session.code;
            EXPECT_EQ(sessions::faultOf(report->second), std::nullopt) << session.code;
            EXPECT_LE(report->second.minutes.value_or(0), session.minutes);
            ++reports;
            notes += report->second.note.empty() ? 0U : 1U;
            readiness += report->second.hasReadiness() ? 1U : 0U;
        }
        const auto& profile = std::get<clients::Profile>(client.forms.front().content);
        EXPECT_TRUE(client.reports.empty() || clients::canKeepHealth(profile, client.client.birthDate, document.today)) << client.client.name;
    }
    EXPECT_GT(reports, 100U);
    EXPECT_GT(readiness, reports / 4);
    EXPECT_LT(readiness, reports / 4 * 3) << "asked of some";
    EXPECT_GT(notes, 4U);
    EXPECT_LT(notes, reports / 5) << "now and then";
}

}  // namespace chalk::simulation
