#pragma once

#include "ui/onboarding/onboarding_step.h"
#include "ui/onboarding/plan_desk.h"
#include "ui/onboarding/plan_words.h"

#include <optional>
#include <QJsonObject>

#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QScrollArea;
class QHBoxLayout;
class QVBoxLayout;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class EmptyState;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class PlanLiftRow;
class VisitTable;

/// The first two weeks: a template, a lift for every pattern, the sessions with their days; Ctrl+Enter begins it. Once it runs the step says
/// so, and takes it back while nothing was done in it.
class PlanStep : public OnboardingStep {
    Q_OBJECT

public:
    explicit PlanStep(const OnboardingServices& services, QWidget* parent = nullptr);

    void setCase(const OnboardingCase& onboarding) override;
    void takeFocus() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    bool closeOrClear() override;

private:
    void build();
    void buildTop(QVBoxLayout& column);
    void buildSide();
    void keepDraft();
    void showPlan();
    void start();
    void takeBack();
    void buildRow(lifts::Pattern pattern);
    void buildTemplateKeeping(QVBoxLayout& foot);
    /// What can be done with the template on show and the name in the field.
    void showTemplateKeeping();
    [[nodiscard]] bool isOwnTemplate() const;
    void saveTemplate();
    /// Keeps one under its name. Where somebody else wrote under that name since it was read, the person decides. False where it is not kept.
    bool writeTemplate(const planning::PlanTemplate& plan);
    void renameTemplate();
    void removeTemplate();
    void putTemplateBack();
    void goOut(lifts::Pattern pattern, WayOut way);
    void beginLift(lifts::Pattern pattern);
    [[nodiscard]] QString sideHtml() const;

    OnboardingServices m_services;
    PlanDesk m_desk;
    QJsonObject m_seenDraft;  ///< the draft as the studio has it
    common::Panel* m_panel;
    common::Panel* m_side;
    QComboBox* m_template;
    QLineEdit* m_firstDay;
    QLineEdit* m_templateName;
    common::ActionButton* m_saveTemplate;
    common::ActionButton* m_renameTemplate;
    common::ActionButton* m_removeTemplate;
    common::ActionButton* m_putBack;
    std::optional<planning::PlanTemplate> m_removed;  ///< the template that was removed last
    std::vector<PlanLiftRow*> m_rows;
    VisitTable* m_visits;
    QWidget* m_editable;
    QScrollArea* m_scroll = nullptr;
    common::EmptyState* m_noPlan = nullptr;  ///< in its place where lifts run without a plan
    QLabel* m_words;
    common::ActionButton* m_start;
    common::ActionButton* m_back;
    common::ActionButton* m_board;
    clients::Client m_client;
    base::Date m_today;
    bool m_hasLifts = false;
};

}  // namespace chalk::ui::onboarding
