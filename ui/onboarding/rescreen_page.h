#pragma once

#include "core/progression/policy.h"
#include "core/screens/screen_catalogue.h"

#include <QScrollArea>

#include <optional>

class QLabel;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

/// The screen before and the one on show side by side. Up and Down scroll.
class RescreenPage : public QScrollArea {
    Q_OBJECT

public:
    /// `catalogue` outlives the page.
    RescreenPage(const common::Look& look, const screens::ScreenCatalogue& catalogue, QWidget* parent = nullptr);

    void setScreens(const screens::MovementScreen& before, const screens::MovementScreen& after, const progression::Policy& policy);

private:
    void dress();

    const common::Look& m_look;
    const screens::ScreenCatalogue& m_catalogue;
    QLabel* m_table;
    QLabel* m_running;
    std::optional<screens::MovementScreen> m_before;
    screens::MovementScreen m_after;
    progression::Policy m_policy;
};

}  // namespace chalk::ui::onboarding
