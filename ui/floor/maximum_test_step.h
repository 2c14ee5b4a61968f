#pragma once

#include "ui/floor/maximum_test_run.h"
#include "ui/floor/rest_watch.h"

#include <QWidget>

class QComboBox;
class QHBoxLayout;
class QLabel;
class QSpinBox;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

class TestPlates;

/// One step of a test: what to load, how many repetitions, the rest before it as it runs, and how it went.
class MaximumTestStep : public QWidget {
    Q_OBJECT

public:
    /// `look` and `lift` outlive the widget.
    MaximumTestStep(const common::Look& look, const TestedLift& lift, RestServices rests, QWidget* parent = nullptr);

    /// Shows the step that comes next; the rest before it begins.
    void showStep(const MaximumTestRun& run);

    [[nodiscard]] QComboBox* loads() const { return m_loads; }
    [[nodiscard]] QSpinBox* reps() const { return m_reps; }
    [[nodiscard]] QSpinBox* pain() const { return m_pain; }
    [[nodiscard]] QString restWords() const;
    /// The set went as asked; one attempt was missed; it hurt; nobody goes on.
    void made();
    void missed();
    void hurt();

Q_SIGNALS:
    void done(const chalk::ui::floor::DoneTestSet& set);
    void stopAsked();

protected:
    /// Letters are keys of the buttons in the fields too.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QLabel* addLine(const char* role);
    void addFields();
    void addButtons();
    common::ActionButton* addButton(const QString& text, const QString& key, QHBoxLayout* row, void (MaximumTestStep::*act)());
    void showLoad();
    void showRest();
    void stop() { Q_EMIT stopAsked(); }
    [[nodiscard]] base::Load load() const;
    [[nodiscard]] bool isSingleAttempt() const { return m_kind == TestKind::Single && m_set.step == chalk::direction::TestStep::Attempt; }

    const common::Look& m_look;
    const TestedLift& m_lift;
    RestWatch m_watch;
    TestKind m_kind = TestKind::Single;
    chalk::direction::TestSet m_set;
    QLabel* m_title = nullptr;
    QLabel* m_work = nullptr;
    TestPlates* m_plates = nullptr;
    QLabel* m_setUp = nullptr;
    QLabel* m_rest = nullptr;
    QLabel* m_how = nullptr;
    QLabel* m_stand = nullptr;
    QLabel* m_fault = nullptr;
    QComboBox* m_loads = nullptr;
    QLabel* m_repsLabel = nullptr;
    QSpinBox* m_reps = nullptr;
    QSpinBox* m_pain = nullptr;
    common::ActionButton* m_made = nullptr;
    common::ActionButton* m_missed = nullptr;
};

}  // namespace chalk::ui::floor
