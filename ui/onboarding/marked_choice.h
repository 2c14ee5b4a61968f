#pragma once

#include <QWidget>

namespace chalk::ui::common {
class SegmentedChoice;
}

namespace chalk::ui::onboarding {

/// A choice of three that the digits answer, going on to the next: 1, 2 and 3 mark, Up and Down move.
class MarkedChoice : public QObject {
    Q_OBJECT

public:
    /// Watches the answers of `choice`, which it belongs to.
    explicit MarkedChoice(common::SegmentedChoice& choice);

    void takeFocus();

Q_SIGNALS:
    /// 1: on to what comes next, -1: back.
    void moveAsked(int by);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    common::SegmentedChoice& m_choice;
};

}  // namespace chalk::ui::onboarding
