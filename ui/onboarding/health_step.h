#pragma once

#include "core/clients/client.h"
#include "core/clients/health_intake.h"
#include "core/store/client_forms.h"
#include "ui/onboarding/onboarding_services.h"
#include "ui/onboarding/onboarding_step.h"
#include "ui/print/health_papers.h"

#include <optional>

class QScrollArea;
class QTimer;

namespace chalk::ui::common {
class ActionButton;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class CautionSection;
class RestingLimitsSection;
class HealthFields;
class LetterEditor;
class OutcomePanel;

/// The health intake and what it leads to, the doctor's letter, the cautions. An intake that was finished on an earlier day stays as it was:
/// what is changed later is one of its own, which begins with the same answers.
class HealthStep : public OnboardingStep {
    Q_OBJECT

public:
    explicit HealthStep(const OnboardingServices& services, QWidget* parent = nullptr);

    void setCase(const OnboardingCase& onboarding) override;
    void takeFocus() override;
    bool keep() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    [[nodiscard]] bool canPrint() const override;
    void print() override;
    bool closeOrClear() override;

protected:
    bool event(QEvent* event) override;

private:
    void build();
    void buildActions();
    bool save();
    /// Closes the intake of an earlier day that was whole, so that `next` is a new one, which was not agreed to yet.
    bool closeEarlierIntake(clients::HealthIntake& next);
    void showOutcome();
    void recordLetter(const store::Letter& letter);
    void noteLetterGone();
    void remindInAWeek();
    void showPaper(print::HealthPaper paper);
    [[nodiscard]] bool isDoctorAsked() const;
    void showEditor(bool isOpen);
    void fail(const store::StoreError& error);

    OnboardingServices m_services;
    common::Panel* m_panel;
    QScrollArea* m_scroll;
    HealthFields* m_fields;
    RestingLimitsSection* m_restingLimits;
    CautionSection* m_cautions;
    OutcomePanel* m_outcome;
    LetterEditor* m_letter;
    common::ActionButton* m_intake = nullptr;
    common::ActionButton* m_printLetter;
    common::ActionButton* m_record;
    common::ActionButton* m_gone;
    common::ActionButton* m_remind;
    QTimer* m_pause;
    clients::HealthIntake m_kept;
    clients::RestingLimits m_limits;
    clients::Client m_client;
    clients::Clearance m_clearance;
    base::Date m_today;
    bool m_canKeep = false;  ///< consent is given
};

}  // namespace chalk::ui::onboarding
