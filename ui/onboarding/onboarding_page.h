#pragma once

#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/onboarding_services.h"
#include "ui/onboarding/onboarding_steps.h"
#include "ui/shell/page.h"

#include <map>
#include <memory>
#include <vector>

class QLabel;
class QStackedWidget;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class EmptyState;
class PageHeader;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class OnboardingStep;
class StepList;

/// A client from nothing to the first two weeks, step by step, and every later change of the same things. A place without a client is
/// somebody new; its tab is the key of a step, without one the first step that is open.
class OnboardingPage : public shell::Page {
    Q_OBJECT

public:
    explicit OnboardingPage(OnboardingServices services, QWidget* parent = nullptr);
    /// With other steps than stepFactories, for tests.
    OnboardingPage(OnboardingServices services, std::map<StepKind, StepFactory> factories, QWidget* parent = nullptr);
    ~OnboardingPage() override;

    [[nodiscard]] QString title() const override;
    void open(const shell::Place& place) override;
    [[nodiscard]] shell::Place place() const override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    [[nodiscard]] std::optional<shell::OpenClient> openClient() const override;
    [[nodiscard]] bool canPrint() const override;
    void print() override;
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

    [[nodiscard]] StepKind presentStep() const { return m_present; }
    /// The step on show; made when it is first gone to.
    [[nodiscard]] OnboardingStep* step() const;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void fitList();
    void build();
    void buildHeader();
    void buildActions();
    OnboardingStep* stepOfKind(StepKind kind);
    void connectStep(OnboardingStep& step);
    /// Leaves the step on show, whose answers are kept first, for another one. Stays where the studio refused them.
    void goTo(StepKind kind, bool isFocusMoved);
    void goBy(int steps);
    void closePage();
    /// Takes who was only begun out of the studio, after a question.
    void discardClient();
    /// Reads the case of m_client, or begins an empty one. False where it cannot be read; then that is shown.
    bool readCase();
    void showCase();
    void showTrouble(const QString& message);

    OnboardingServices m_services;
    std::map<StepKind, StepFactory> m_factories;
    std::map<StepKind, OnboardingStep*> m_steps;
    std::unique_ptr<OnboardingCase> m_case;
    base::ClientId m_client;
    StepKind m_present = StepKind::Profile;
    bool m_isNarrow = false;
    bool m_isLow = false;

    common::PageHeader* m_header;
    QLabel* m_saved;
    common::ActionButton* m_discard = nullptr;
    StepList* m_list;
    common::Banner* m_trouble;
    common::Banner* m_wait;
    common::ActionButton* m_wayOut = nullptr;
    QStackedWidget* m_pages;
    common::EmptyState* m_failure;
};

}  // namespace chalk::ui::onboarding
