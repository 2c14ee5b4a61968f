#pragma once

#include "core/progression/stage.h"
#include "ui/decisions/coach_editor.h"

#include <memory>
#include <optional>

class QComboBox;
class QGridLayout;
class QLineEdit;

namespace chalk::progression {
struct CoachNumbers;
struct CoachSet;
}  // namespace chalk::progression

namespace chalk::ui::board {

struct LiftCase;

/// Other numbers than the rule's for a lift: stage, load, reps, sets and rest, as far as the stage has a use for them.
/// Numbers outside the rule need a reason; the rule's own need no entry.
class ChangeEditor : public decisions::CoachEditor {
    Q_OBJECT

public:
    /// A copy of `lift` is kept, with its usual numbers where a lighter week is on.
    ChangeEditor(const common::Look& look, const LiftCase& lift, QWidget* parent = nullptr);
    ~ChangeEditor() override;

    /// The event that makes the numbers the next prescription; nothing where a field makes no sense or nothing is different.
    [[nodiscard]] std::optional<progression::CoachSet> event() const;
    [[nodiscard]] QWidget* firstField() const override;

protected:
    [[nodiscard]] bool isReady() const override;

private:
    struct Fields;

    void chooseStage();
    void fill(const progression::CoachNumbers& numbers);
    void reviewNumbers();
    QLineEdit* addField(QGridLayout& grid, int row, const QString& name, const QString& unit);
    [[nodiscard]] std::optional<progression::CoachNumbers> numbers() const;
    /// The first thing wrong with the fields; empty where nothing is.
    [[nodiscard]] QString faultOfFields() const;
    [[nodiscard]] QString hintFor(const progression::CoachNumbers& numbers) const;

    std::unique_ptr<LiftCase> m_lift;
    QComboBox* m_stage;
    std::unique_ptr<Fields> m_numbers;
};

}  // namespace chalk::ui::board
