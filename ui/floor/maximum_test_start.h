#pragma once

#include "ui/floor/maximum_test_run.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QLabel;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

/// What is to be seen to before a maximum is tested, to be ticked off, and what can be tested at all.
class MaximumTestStart : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the widget.
    MaximumTestStart(const common::Look& look, const TestedLift& lift, QWidget* parent = nullptr);

    [[nodiscard]] const std::vector<QCheckBox*>& checks() const { return m_checks; }
    /// Null where it cannot be begun.
    [[nodiscard]] common::ActionButton* singleButton() const { return m_single; }
    [[nodiscard]] common::ActionButton* repsButton() const { return m_reps; }

Q_SIGNALS:
    void begun(chalk::ui::floor::TestKind kind);

private:
    void addChecks(const TestedLift& lift);
    void addButtons(const TestedLift& lift);
    void readChecks();

    const common::Look& m_look;
    std::vector<QCheckBox*> m_checks;
    QLabel* m_missing = nullptr;
    common::ActionButton* m_single = nullptr;
    common::ActionButton* m_reps = nullptr;
};

}  // namespace chalk::ui::floor
