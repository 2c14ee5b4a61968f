#pragma once

#include "ui/floor/maximum_test_run.h"
#include "ui/floor/rest_watch.h"

#include <QDialog>

#include <functional>

class QLabel;
class QLineEdit;
class QStackedWidget;
class QVBoxLayout;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

class MaximumTestStart;
class MaximumTestStep;

/// The guided test of a maximum in a window of its own: what to see to first, step by step, what was found. Nothing is written before the end; to close
/// it in the middle asks.
class MaximumTestDialog : public QDialog {
    Q_OBJECT

public:
    /// Keeps what was done; answers why it was refused, empty where it was kept.
    using Keep = std::function<QString(const MaximumTestRun& run, const QString& note)>;

    /// `look` outlives the dialog.
    MaximumTestDialog(const common::Look& look, TestedLift lift, Keep keep, RestServices rests = {}, QWidget* parent = nullptr);

    /// Esc, and the window's cross: where sets were done, it is asked what becomes of them.
    void reject() override;

    [[nodiscard]] MaximumTestStart* startPage() const { return m_start; }
    [[nodiscard]] MaximumTestStep* stepPage() const { return m_step; }
    /// Whether it is asked what becomes of the sets.
    [[nodiscard]] bool isAsking() const;
    [[nodiscard]] bool isAtResult() const;
    [[nodiscard]] const std::optional<MaximumTestRun>& run() const { return m_run; }

private:
    void buildResult();
    void buildQuestion();
    QVBoxLayout* addPage(QWidget*& page);
    common::ActionButton* addButton(const QString& text, QWidget* page, std::function<void()> act);
    void begin(TestKind kind);
    void take(const DoneTestSet& set);
    void finish();
    void showResult();
    void keep();

    const common::Look& m_look;
    TestedLift m_lift;
    Keep m_keep;
    std::optional<MaximumTestRun> m_run;
    QStackedWidget* m_pages;
    MaximumTestStart* m_start = nullptr;
    MaximumTestStep* m_step = nullptr;
    QWidget* m_question = nullptr;
    QWidget* m_result = nullptr;
    QWidget* m_askedFrom = nullptr;  ///< the page that was on show when the question came
    common::ActionButton* m_goOn = nullptr;
    QLabel* m_found = nullptr;
    QLabel* m_ending = nullptr;
    QLabel* m_fault = nullptr;
    QLineEdit* m_note = nullptr;
};

}  // namespace chalk::ui::floor
