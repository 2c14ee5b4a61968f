#include "ui/onboarding/plan_desk.h"

#include "core/exchange/plan_template_json.h"
#include "core/planning/lift_choice.h"
#include "core/planning/plan_wishes.h"
#include "core/progression/screen_start.h"
#include "core/screens/screen_catalogue.h"
#include "core/store/client_forms.h"
#include "core/store/client_reader.h"
#include "core/store/plan_templates.h"
#include "ui/common/clock.h"
#include "ui/common/formats.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/plan_words.h"
#include "ui/onboarding/studio_kit.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::onboarding {

void PlanDesk::take(const OnboardingCase& onboarding)
{
    m_client = onboarding.client;
    m_today = onboarding.today;
    m_minutes = onboarding.profile.sessionMinutes;
    m_templates = exchange::builtInPlanTemplates(m_services.catalogue);
    if (auto own = store::PlanTemplates(m_services.database, m_services.catalogue).all()) {
        m_templates.insert(m_templates.end(), own->begin(), own->end());
    }
    m_draft = store::ClientForms(m_services.database).planDraft(m_client.id).value_or(planning::PlanDraft());
    m_request = {};
    m_request.firstDay = m_today;
    m_request.hours = {onboarding.profile.free, onboarding.profile.preferred, m_minutes};
    m_begun = onboarding.begun;
    m_request.equipment.clear();
    for (const studio::StudioEquipment& item : studioEquipment(m_services.database, m_client.unit)) {
        m_request.equipment.push_back({item.key, item.kind, item.equipment});
        m_equipmentNames[item.key] = common::qstring(item.name);
    }
    if (const auto file = store::ClientReader(m_services.database).read(m_client.id, m_today)) {
        for (const clients::Caution& caution : file->cautions) {
            m_request.cautions.insert(m_request.cautions.end(), caution.tags.begin(), caution.tags.end());
        }
    }
    const screens::MovementScreen screen = onboarding.screen.value_or(m_services.screens.blankScreen(m_today));
    m_request.standings = planning::standingsOf(progression::startsOf(screen, progression::Policy::defaultsFor(m_client.unit)), m_draft);
    m_request.isLoadBlocked = clients::isBlocked(onboarding.clearance, m_today);
    workOut();
    if (!m_plan.sessions.empty() && m_plan.sessions.front().date == m_today && m_plan.sessions.front().startMinute <= m_services.clock.minuteOfDay()) {
        m_request.firstDay = m_today + 1;  // that hour of today is over
        workOut();
    }
}

std::size_t PlanDesk::templateIndex() const
{
    const auto chosen = std::find_if(m_templates.begin(), m_templates.end(), [this](const planning::PlanTemplate& one) { return one.key == m_draft.templateKey; });
    if (chosen != m_templates.end()) {
        return static_cast<std::size_t>(chosen - m_templates.begin());
    }
    const planning::PlanTemplate* fitting = planning::templateFor(m_templates, m_client.sessionsPerWeek);
    return fitting == nullptr ? m_templates.size() - 1 : static_cast<std::size_t>(fitting - m_templates.data());
}

void PlanDesk::workOut()
{
    const planning::PlanTemplate& chosen = m_templates[templateIndex()];
    m_suggestion = planning::startingPlanOf(chosen, m_request, m_services.catalogue);
    m_plan = planning::wishedPlanOf(chosen, m_request, m_draft, m_services.catalogue);
}

std::vector<ExerciseOffer> PlanDesk::offersFor(lifts::Pattern pattern) const
{
    std::vector<ExerciseOffer> offers;
    for (const lifts::Exercise* exercise : planning::allowedExercises(pattern, m_request, m_services.catalogue, false)) {
        if (exercise->equipment != lifts::EquipmentKind::None) {
            offers.push_back({exercise, {}});
        }
    }
    for (const lifts::Exercise& exercise : m_services.catalogue.exercises()) {
        if (exercise.pattern == pattern && exercise.equipment != lifts::EquipmentKind::None) {
            if (const auto pass = planning::passOf(exercise, m_request)) {
                offers.push_back({&exercise, passText(*pass, m_services.catalogue).section(QStringLiteral(": "), 1)});
            }
        }
    }
    return offers;
}

std::size_t PlanDesk::templateSessionOf(std::size_t session) const
{
    return planning::keptSessions(m_templates[templateIndex()], m_draft).at(session);
}

WeekContents PlanDesk::contents() const
{
    const planning::PlanTemplate& used = m_templates[templateIndex()];
    WeekContents week;
    week.all = planning::isFor(used, m_draft.contents) ? m_draft.contents : planning::contentsOf(used);
    week.shown.resize(week.all.size());
    for (const planning::PlannedSession& session : m_plan.sessions) {
        week.shown[templateSessionOf(session.session)] = session.patterns;
    }
    for (std::size_t i = 0; i < week.all.size(); ++i) {
        const auto& shown = week.shown[i];
        std::erase_if(week.all[i], [&shown](lifts::Pattern pattern) { return std::find(shown.begin(), shown.end(), pattern) != shown.end(); });
        week.all[i].insert(week.all[i].begin(), shown.begin(), shown.end());
        week.names.append(common::qstring(used.sessions[i].name));
    }
    return week;
}

std::vector<EquipmentOffer> PlanDesk::equipmentFor(const planning::PlannedLift& lift) const
{
    const lifts::Exercise* exercise = m_services.catalogue.find(lift.exerciseKey);
    std::vector<EquipmentOffer> fitting;
    for (const planning::EquipmentOnHand& one : m_request.equipment) {
        if (exercise != nullptr && one.kind == exercise->equipment) {
            fitting.push_back({one.key, m_equipmentNames.at(one.key)});
        }
    }
    return fitting;
}

bool PlanDesk::hasBegun(lifts::Pattern pattern) const
{
    return std::find(m_begun.begin(), m_begun.end(), pattern) != m_begun.end();
}

const planning::EquipmentOnHand* PlanDesk::equipmentOf(const planning::PlannedLift& lift) const
{
    const auto found = std::find_if(m_request.equipment.begin(), m_request.equipment.end(), [&lift](const planning::EquipmentOnHand& one) { return one.key == lift.equipmentKey; });
    return lift.equipmentKey.empty() || found == m_request.equipment.end() ? nullptr : &*found;
}

std::vector<base::Load> PlanDesk::loadsFor(const planning::PlannedLift& lift) const
{
    const planning::EquipmentOnHand* equipment = equipmentOf(lift);
    if (equipment == nullptr) {
        return {};
    }
    const auto table = lifts::LoadTable::of(equipment->equipment);
    return table ? std::vector<base::Load>(table->loads().begin(), table->loads().end()) : std::vector<base::Load>();
}

tl::expected<store::NewLift, QString> PlanDesk::newLiftOf(const planning::PlannedLift& lift) const
{
    const lifts::Exercise* exercise = m_services.catalogue.find(lift.exerciseKey);
    if (exercise == nullptr) {
        exercise = m_services.catalogue.find(lift.rehearsalKey);
    }
    if (exercise == nullptr) {
        return tl::make_unexpected(QCoreApplication::translate("Plan", "%1 has no exercise.").arg(common::patternName(lift.pattern)));
    }
    if (exercise->bodyShare.value() > 0 && !m_client.bodyMass) {
        return tl::make_unexpected(QCoreApplication::translate("Plan", "%1 lifts part of the body: the body mass is needed first. Add it in the profile.").arg(common::qstring(exercise->name)));
    }
    store::NewLift fresh;
    fresh.pattern = lift.pattern;
    fresh.equipmentKey = lift.equipmentKey;
    fresh.startedOn = m_today;
    fresh.setup.unit = m_client.unit;
    fresh.setup.region = exercise->region;
    fresh.setup.bodyMass = m_client.bodyMass;
    // What is rehearsed begins without load, whatever the screen earned.
    fresh.setup.startStage = lift.kind == planning::PlannedKind::Rehearse ? std::min(lift.stage, progression::Stage::Control) : lift.stage;
    fresh.setup.policy = progression::Policy::defaultsFor(m_client.unit);
    const planning::EquipmentOnHand* equipment = equipmentOf(lift);
    fresh.setup.kit = {equipment == nullptr ? lifts::Equipment(lifts::BodyAdded{{base::Load()}}) : equipment->equipment, exercise->bodyShare, exercise->measure,
                       m_draft.of(lift.pattern).firstLoad ? lift.firstLoad : std::nullopt, exercise->key, exercise->pieces};
    return fresh;
}

tl::expected<store::PlanToStart, QString> PlanDesk::toStart() const
{
    store::PlanToStart start;
    start.coach = m_client.coach;
    start.place = "Floor";
    for (const planning::PlannedLift& lift : m_plan.lifts) {
        auto fresh = newLiftOf(lift);
        if (!fresh) {
            return tl::make_unexpected(fresh.error());
        }
        start.lifts.push_back(*std::move(fresh));
    }
    if (start.lifts.empty()) {
        return tl::make_unexpected(QCoreApplication::translate("Plan", "No lift can begin yet."));
    }
    for (const planning::PlannedSession& session : m_plan.sessions) {
        start.visits.push_back({session.date, session.startMinute, m_minutes, session.patterns});
    }
    return start;
}

}  // namespace chalk::ui::onboarding
