#pragma once

#include "ui/common/banner.h"

#include <QWidget>

class QLabel;
class QTimer;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// What follows from what is typed, and why; told to screen readers after a short rest. A muted message is drawn as "here, now",
/// all others in the colours of their signal.
class NextTimeBar : public QWidget {
    Q_OBJECT

public:
    explicit NextTimeBar(const common::Look& look, QWidget* parent = nullptr);

    void setMessage(const common::BannerMessage& message);
    [[nodiscard]] const common::BannerMessage& message() const { return m_message; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void dress();
    void announce();

    const common::Look& m_look;
    common::BannerMessage m_message;
    QLabel* m_icon;
    QLabel* m_text;
    QTimer* m_rest;
};

}  // namespace chalk::ui::floor
