#pragma once

#include "core/clients/body_measures.h"
#include "core/clients/client.h"
#include "core/store/store_error.h"
#include "ui/common/panel.h"
#include "ui/onboarding/onboarding_services.h"

#include <optional>
#include <vector>

class QLabel;
class QLineEdit;

namespace chalk::ui::common {
class ActionButton;
}

namespace chalk::ui::onboarding {

class FieldColumn;
struct OnboardingCase;

/// What was measured: the newest figures with their classes, the days below, and an editor for one day. Of one day all that is typed is kept
/// together; what was measured earlier that day stays.
class MeasuresPanel : public common::Panel {
    Q_OBJECT

public:
    explicit MeasuresPanel(const OnboardingServices& services, QWidget* parent = nullptr);

    void setCase(const OnboardingCase& onboarding);
    /// False where none is open.
    bool closeEditor();

Q_SIGNALS:
    void saved();
    void refused(const QString& message);

private:
    void buildEditor();
    void openEditor();
    void accept();
    void showLines(const OnboardingCase& onboarding);
    [[nodiscard]] std::optional<clients::BodyMeasures> seenOn(base::Date date) const;
    [[nodiscard]] store::Result<void> write(const clients::BodyMeasures& typed);
    [[nodiscard]] clients::BodyMeasures withThatDay(const clients::BodyMeasures& typed) const;

    OnboardingServices m_services;
    common::ActionButton* m_add;
    QLabel* m_lines;
    QLabel* m_days;
    FieldColumn* m_editor;
    QLineEdit* m_day = nullptr;
    QLineEdit* m_mass = nullptr;
    QLineEdit* m_height = nullptr;
    QLineEdit* m_waist = nullptr;
    QLineEdit* m_folds = nullptr;
    QLineEdit* m_heartRate = nullptr;
    QLineEdit* m_pressure = nullptr;
    std::vector<clients::BodyMeasures> m_measures;
    std::vector<clients::BodyMeasures> m_seen;  ///< those that were there when the editor was opened
    clients::Client m_client;
    base::Date m_today;
};

}  // namespace chalk::ui::onboarding
