#pragma once

#include "core/clients/client.h"
#include "core/planning/plan_draft.h"
#include "core/planning/starting_plan.h"
#include "core/store/plan_starter.h"
#include "ui/onboarding/onboarding_services.h"
#include "ui/onboarding/session_lifts.h"

#include <QString>

#include <map>
#include <vector>

namespace chalk::ui::onboarding {

struct OnboardingCase;

/// One exercise that a lift could be done with, or why not.
struct ExerciseOffer {
    const lifts::Exercise* exercise = nullptr;
    QString whyNot;  ///< empty where it can be done
};

/// One thing on hand that a lift could be loaded with.
struct EquipmentOffer {
    std::string key;
    QString name;
};

/// The starting plan of one client as it is now: the suggestion with the coach's wishes laid over it, worked out anew after every change.
class PlanDesk {
public:
    explicit PlanDesk(const OnboardingServices& services) : m_services(services) {}

    /// Reads everything that a plan is made from.
    void take(const OnboardingCase& onboarding);

    [[nodiscard]] const std::vector<planning::PlanTemplate>& templates() const { return m_templates; }
    /// The chosen one, or the first with as many sessions as wanted a week.
    [[nodiscard]] std::size_t templateIndex() const;
    [[nodiscard]] const planning::StartingPlan& plan() const { return m_plan; }
    /// The same without the coach's wishes but for the starting stages.
    [[nodiscard]] const planning::StartingPlan& suggestion() const { return m_suggestion; }
    [[nodiscard]] const planning::PlanDraft& draft() const { return m_draft; }
    [[nodiscard]] planning::PlanDraft& draft() { return m_draft; }
    /// After the draft was changed.
    void workOut();

    /// All of the pattern's loaded exercises: those that can be done first, the easiest first.
    [[nodiscard]] std::vector<ExerciseOffer> offersFor(lifts::Pattern pattern) const;
    /// The loads that the lift's equipment can give; none where it is done with nothing.
    [[nodiscard]] std::vector<base::Load> loadsFor(const planning::PlannedLift& lift) const;
    /// What the sessions of the week hold.
    [[nodiscard]] WeekContents contents() const;
    /// Where a session of the plan stands in the template.
    [[nodiscard]] std::size_t templateSessionOf(std::size_t session) const;
    /// The things on hand that the lift's exercise can be loaded with.
    [[nodiscard]] std::vector<EquipmentOffer> equipmentFor(const planning::PlannedLift& lift) const;
    [[nodiscard]] bool hasBegun(lifts::Pattern pattern) const;
    /// What PlanStarter takes; the words say what is missing where there cannot be a plan yet.
    [[nodiscard]] tl::expected<store::PlanToStart, QString> toStart() const;
    /// One lift of the plan, to be begun by itself.
    [[nodiscard]] tl::expected<store::NewLift, QString> newLiftOf(const planning::PlannedLift& lift) const;

private:
    [[nodiscard]] const planning::EquipmentOnHand* equipmentOf(const planning::PlannedLift& lift) const;

    OnboardingServices m_services;
    clients::Client m_client;
    base::Date m_today;
    int m_minutes = 60;
    std::vector<planning::PlanTemplate> m_templates;
    std::vector<lifts::Pattern> m_begun;
    std::map<std::string, QString> m_equipmentNames;  ///< by key
    planning::PlanRequest m_request;
    planning::PlanDraft m_draft;
    planning::StartingPlan m_plan;
    planning::StartingPlan m_suggestion;
};

}  // namespace chalk::ui::onboarding
