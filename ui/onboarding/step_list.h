#pragma once

#include "ui/onboarding/onboarding_case.h"

#include <QAbstractButton>
#include <QWidget>

#include <vector>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

/// One step in the list: its number, a tick or a lock in a ring, its name and what is in it.
class StepButton : public QAbstractButton {
    Q_OBJECT

public:
    StepButton(const common::Look& look, StepKind step, int number, QWidget* parent = nullptr);

    [[nodiscard]] StepKind step() const { return m_step; }
    void setState(StepState state, bool isPresent);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintRing(QPainter& painter, const QRectF& ring) const;
    [[nodiscard]] bool isWaiting() const;
    [[nodiscard]] bool hasRoomForWords(double width) const;

    const common::Look& m_look;
    StepKind m_step;
    int m_number;
    StepState m_state = StepState::Open;
    bool m_isPresent = false;
};

/// How much of a step the list shows: its name and note, the same in less width, or its number alone.
enum class ListRoom : std::uint8_t { Wide, Narrow, Tight };

/// The steps of onboarding with how far each is. A click, or Up, Down and Space, chooses.
class StepList : public QWidget {
    Q_OBJECT

public:
    StepList(const common::Look& look, const std::vector<StepKind>& steps, QWidget* parent = nullptr);

    void setCase(const OnboardingCase& onboarding, StepKind present);
    void setRoom(ListRoom room);

Q_SIGNALS:
    void stepChosen(chalk::ui::onboarding::StepKind step);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void dress();

    const common::Look& m_look;
    std::vector<StepButton*> m_buttons;
    ListRoom m_room = ListRoom::Wide;
};

}  // namespace chalk::ui::onboarding
