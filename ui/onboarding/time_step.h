#pragma once

#include "core/clients/client.h"
#include "core/clients/profile.h"
#include "core/planning/plan_template.h"
#include "ui/onboarding/onboarding_services.h"
#include "ui/onboarding/onboarding_step.h"

#include <vector>

class QCheckBox;
class QLabel;

namespace chalk::ui::common {
class HoursGrid;
class Panel;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

/// When the client can come and would rather, and what there is at home; at the right what that gives.
class TimeStep : public OnboardingStep {
    Q_OBJECT

public:
    explicit TimeStep(const OnboardingServices& services, QWidget* parent = nullptr);

    void setCase(const OnboardingCase& onboarding) override;
    void takeFocus() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;

private:
    void buildHours();
    void buildSide();
    void fill(int firstMinute, int endMinute, int days);
    void save();
    void showSummary();

    OnboardingServices m_services;
    common::Panel* m_panel;
    common::Panel* m_side;
    common::HoursGrid* m_grid;
    QLabel* m_summary;
    std::vector<QCheckBox*> m_kit;
    std::vector<planning::PlanTemplate> m_templates;
    clients::Client m_client;
    clients::Profile m_kept;
    base::Date m_today;
};

}  // namespace chalk::ui::onboarding
