#pragma once

#include "core/progression/stage.h"

#include <QWidget>

#include <optional>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

/// The seven rungs with the one that a lift starts on; none where it does not start.
class StartLadder : public QWidget {
    Q_OBJECT

public:
    explicit StartLadder(const common::Look& look, QWidget* parent = nullptr);

    void setStage(std::optional<progression::Stage> stage);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const common::Look& m_look;
    std::optional<progression::Stage> m_stage;
};

}  // namespace chalk::ui::onboarding
