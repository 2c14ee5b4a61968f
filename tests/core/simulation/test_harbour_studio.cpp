#include "core/simulation/harbour_studio.h"

#include "core/exchange/catalogue_json.h"
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
    bool isAnyOnHold = false;
};

void addLift(Occurrences& found, const exchange::DocumentLift& lift)
{
    auto machine = progression::LiftMachine::create(lift.setup).value();
    for (const exchange::DocumentEvent& entry : lift.events) {
        for (const progression::Rule rule : machine.apply(entry.event.date, entry.event.body)) {
            found.rules.emplace(progression::nameOf(rule));
        }
        for (const progression::Flag flag : progression::kFlags) {
            if (machine.state().flags.has(flag)) {
                found.flags.emplace(progression::keyOf(flag));
            }
        }
    }
    found.stages.insert(machine.state().stage);
    found.isAnyOnHold = found.isAnyOnHold || machine.state().isOnHold;
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

}  // namespace

TEST(HarbourStudio, IsWhatTheSimulationInvents)
{
    const auto files = exchange::writeStudio(harbourStudio(exchange::builtInCatalogue()));
    const auto embedded = exchange::studioFilesIn(QStringLiteral(":/demo")).value();
    ASSERT_EQ(files.size(), embedded.size());
    for (const auto& [name, text] : files) {
        EXPECT_TRUE(embedded.at(name) == text) << name.toStdString() << " is not what `chalkrung demo --write` writes";
    }
}

TEST(HarbourStudio, HasTheScenario)
{
    const auto studio = embeddedStudio();
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
    EXPECT_EQ(found.sessionStates.size(), 6U);
    EXPECT_TRUE(found.isAnyOnHold);
    EXPECT_EQ(found.clearances, (std::set{clients::ClearanceState::NotNeeded, clients::ClearanceState::Recommended, clients::ClearanceState::Granted}));
    for (int tag = 0; tag <= static_cast<int>(lifts::CautionTag::GripStrength); ++tag) {
        EXPECT_TRUE(found.cautions.count(static_cast<lifts::CautionTag>(tag))) << lifts::keyOf(static_cast<lifts::CautionTag>(tag));
    }
    // Rules that need somebody to do what the plan did not ask for are tried in their own tests.
    const std::set<std::string> elsewhere{"P-3", "P-5", "V-1", "K-3", "C-1", "C-2", "U-3", "B-1", "B-6", "B-7", "A-2", "R-5"};
    for (int rule = 0; rule < progression::kRuleCount; ++rule) {
        const std::string name(progression::nameOf(static_cast<progression::Rule>(rule)));
        EXPECT_TRUE(found.rules.count(name) || elsewhere.count(name)) << name;
    }
}

}  // namespace chalk::simulation
