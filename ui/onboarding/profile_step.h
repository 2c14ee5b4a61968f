#pragma once

#include "ui/onboarding/onboarding_services.h"
#include "ui/onboarding/onboarding_step.h"
#include "ui/onboarding/profile_fields.h"

#include <optional>

class QTimer;

namespace chalk::ui::common {
class Banner;
class Panel;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class MeasuresPanel;

/// Who the client is, the contacts, the goal, consent; at the right what was measured. Somebody new is in the studio as soon as the name is
/// left or Enter is pressed.
class ProfileStep : public OnboardingStep {
    Q_OBJECT

public:
    explicit ProfileStep(const OnboardingServices& services, QWidget* parent = nullptr);

    void setCase(const OnboardingCase& onboarding) override;
    void takeFocus() override;
    bool keep() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    bool closeOrClear() override;

private:
    void build();
    /// Adds somebody new, unless there is somebody of that name: then it is asked about first.
    /// What is written is in the argument afterwards: it may have something of somebody else in it.
    [[nodiscard]] store::Result<void> writeClient(clients::Client& client);
    [[nodiscard]] store::Result<void> writeProfile(base::ClientId client, clients::Profile& profile);
    bool addClient(bool isSameNameMeant);
    bool save();
    /// Always false.
    bool tellFailure(const store::StoreError& error);
    /// Whether something is typed that is not written yet. It is settled against what was seen when it was typed, so nothing is read over it.
    [[nodiscard]] bool isBeingTyped() const;

    OnboardingServices m_services;
    common::Panel* m_panel;
    ProfileFields* m_fields;
    common::Banner* m_sameName;
    MeasuresPanel* m_measures;
    QTimer* m_pause;
    ProfileEntry m_kept;
    bool m_isTyped = false;  ///< since it was written last
    base::ClientId m_other;  ///< the one of the same name
    base::Date m_today;
};

}  // namespace chalk::ui::onboarding
