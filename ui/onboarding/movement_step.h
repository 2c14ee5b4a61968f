#pragma once

#include "core/clients/client.h"
#include "core/planning/plan_draft.h"
#include "core/progression/policy.h"
#include "core/progression/screen_start.h"
#include "core/screens/pattern_screen.h"
#include "ui/onboarding/onboarding_services.h"
#include "ui/onboarding/onboarding_step.h"
#include "ui/onboarding/rescreen_case.h"
#include "ui/onboarding/stopwatch.h"

#include <array>
#include <optional>

class QStackedWidget;
class QTimer;

namespace chalk::ui::common {
class ActionButton;
class Panel;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class FieldTestsPage;
class PatternList;
class PatternSheet;
class RescreenPage;
class ScreenOutcome;

/// The movement screen of all eight patterns and where each lift starts by it; on pages of their own the field tests, and the screen before
/// beside this one. A finished screen stays as it is: a new one begins on its own day.
class MovementStep : public OnboardingStep {
    Q_OBJECT

public:
    explicit MovementStep(const OnboardingServices& services, QWidget* parent = nullptr);

    /// What is being typed in is kept.
    ~MovementStep() override;

    void setCase(const OnboardingCase& onboarding) override;
    void takeFocus() override;
    bool keep() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

    /// What the middle shows. Earlier is there once there is a screen before this one.
    enum class Part : std::uint8_t { Patterns, FieldTests, Earlier };

    [[nodiscard]] lifts::Pattern pattern() const { return m_present; }
    [[nodiscard]] Part part() const { return m_part; }
    void showPart(Part part);
    /// With another clock, for tests.
    void setNow(Stopwatch::Now now);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void buildActions();
    PatternSheet* sheetOf(lifts::Pattern pattern);
    void buildParts();
    void readEarlier(const OnboardingCase& onboarding);
    void goTo(lifts::Pattern pattern);
    void goOn();
    /// What is written is in the argument afterwards: it may have something of somebody else in it.
    [[nodiscard]] store::Result<void> writeScreen(screens::MovementScreen& screen);
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
    common::SegmentedChoice* m_parts;
    QStackedWidget* m_pages;
    PatternList* m_list;
    QStackedWidget* m_sheets;
    FieldTestsPage* m_fieldTests;
    RescreenPage* m_earlier;
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
    RescreenCase m_rescreen;
    Part m_part = Part::Patterns;
    lifts::Pattern m_present = lifts::Pattern::Squat;
    base::Date m_today;
    bool m_canKeep = false;
};

}  // namespace chalk::ui::onboarding
