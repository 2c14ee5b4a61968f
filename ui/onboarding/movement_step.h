#pragma once

#include "core/clients/client.h"
#include "core/planning/plan_draft.h"
#include "core/progression/policy.h"
#include "core/progression/screen_start.h"
#include "core/screens/pattern_screen.h"
#include "ui/onboarding/onboarding_services.h"
#include "ui/onboarding/onboarding_step.h"
#include "ui/onboarding/stopwatch.h"

#include <array>
#include <optional>

class QStackedWidget;
class QTimer;

namespace chalk::ui::common {
class ActionButton;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class PatternList;
class PatternSheet;
class ScreenOutcome;

/// The movement screen of all eight patterns and where each lift starts by it. A finished screen stays as it is: a new one begins on its own
/// day.
class MovementStep : public OnboardingStep {
    Q_OBJECT

public:
    explicit MovementStep(const OnboardingServices& services, QWidget* parent = nullptr);

    void setCase(const OnboardingCase& onboarding) override;
    void takeFocus() override;
    bool keep() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

    [[nodiscard]] lifts::Pattern pattern() const { return m_present; }
    /// With another clock, for tests.
    void setNow(Stopwatch::Now now);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void buildActions();
    PatternSheet* sheetOf(lifts::Pattern pattern);
    void goTo(lifts::Pattern pattern);
    void goOn();
    bool save();
    void finish();
    void beginAnew();
    void chooseStage(const std::optional<progression::StartChoice>& choice);
    void showOutcome();
    [[nodiscard]] screens::MovementScreen marked() const;
    [[nodiscard]] QString screenWords() const;
    [[nodiscard]] QString nextWords() const;
    [[nodiscard]] bool isClosed() const { return m_kept.isFinished; }

    OnboardingServices m_services;
    common::Panel* m_panel;
    PatternList* m_list;
    QStackedWidget* m_sheets;
    ScreenOutcome* m_outcome;
    common::ActionButton* m_again;
    QTimer* m_pause;
    std::array<PatternSheet*, lifts::kPatterns.size()> m_made{};
    Stopwatch::Now m_now;
    progression::Policy m_policy;
    clients::Client m_client;
    std::vector<lifts::CautionTag> m_cautions;
    screens::MovementScreen m_kept;
    planning::PlanDraft m_draft;
    lifts::Pattern m_present = lifts::Pattern::Squat;
    base::Date m_today;
    bool m_canKeep = false;
};

}  // namespace chalk::ui::onboarding
