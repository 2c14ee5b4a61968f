#pragma once

#include "core/clients/client.h"
#include "core/clients/health_intake.h"
#include "ui/common/panel.h"

class QLabel;
class QVBoxLayout;

namespace chalk::ui::common {
class ActionButton;
}

namespace chalk::ui::onboarding {

/// The four levels side by side, the one that was reached filled; with a headline above in the colours of its signal.
class LevelScale : public QWidget {
    Q_OBJECT

public:
    explicit LevelScale(const common::Look& look, QWidget* parent = nullptr);

    /// `isCleared`: by a letter on file.
    void setOutcome(const clients::HealthOutcome& outcome, bool isCleared);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QString iconName() const;

    const common::Look& m_look;
    QString m_headline;
    clients::HealthLevel m_level = clients::HealthLevel::Clear;
    bool m_isOpen = true;  ///< nothing is reached yet
    bool m_isCareNeeded = false;
};

/// What an intake leads to, live: the level, why, what to say, what waits and what goes on; below room for what can be done about it.
class OutcomePanel : public common::Panel {
    Q_OBJECT

public:
    explicit OutcomePanel(const common::Look& look, QWidget* parent = nullptr);

    void setOutcome(const clients::HealthOutcome& outcome, const clients::Clearance& clearance, base::Date today);
    /// Where editors and buttons go, below the words.
    [[nodiscard]] QVBoxLayout* foot() const { return m_foot; }

private:
    QLabel* addPart(QVBoxLayout& column, const QString& caption);

    const common::Look& m_look;
    LevelScale* m_scale;
    QLabel* m_why;
    QLabel* m_say;
    QLabel* m_rest;
    QVBoxLayout* m_foot;
};

}  // namespace chalk::ui::onboarding
