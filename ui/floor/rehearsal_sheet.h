#pragma once

#include "ui/floor/rehearsal_draft.h"

#include <QWidget>

#include <array>

class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace chalk::ui::common {
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

/// Judges an unloaded trial: a row for each point with Met, Partly and Not met, then reps, pauses, steadiness and pain. The digits
/// 1 to 3 judge and go on to the next row, Up and Down move between the rows, Left and Right inside of one.
class RehearsalSheet : public QWidget {
    Q_OBJECT

public:
    explicit RehearsalSheet(const common::Look& look, QWidget* parent = nullptr);

    /// Shows a draft without telling, with a row for each of the points. `pauseMs` is how long a pause is held at least, `reps` how many are planned.
    void setRehearsal(const RehearsalPoints& points, const RehearsalDraft& draft, int pauseMs, int reps);
    [[nodiscard]] const RehearsalDraft& draft() const { return m_draft; }
    /// Puts the focus on the first point that is not judged, else on the pauses.
    void focusOpenPlace();
    void focusPlace(const RehearsalFault& fault);

Q_SIGNALS:
    void judged(const chalk::ui::floor::RehearsalDraft& draft);
    /// Enter was pressed in one of the rows.
    void saveAsked();

protected:
    /// Letters stay in the sheet: they are no keys of the window while it is filled in.
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildPoints();
    void buildNumbers();
    void buildFelt();
    QHBoxLayout* addRow(QLabel* label);
    QLineEdit* addSeconds(const QString& name);
    void watch(QWidget* row);
    void tell();
    /// Rows of points that there are not are out of sight and passed over.
    [[nodiscard]] bool isRowThere(int row) const;
    [[nodiscard]] int rowFrom(int row, int by) const;
    [[nodiscard]] int rowWithFocus() const;
    void focusRow(int row);
    bool moveRow(int by);

    const common::Look& m_look;
    RehearsalDraft m_draft;
    std::array<QLabel*, kMostRehearsalPoints> m_points{};
    std::array<common::SegmentedChoice*, kMostRehearsalPoints> m_verdicts{};
    QLineEdit* m_reps = nullptr;
    std::array<QLineEdit*, 3> m_pauses{};
    QLabel* m_numbersHint = nullptr;
    common::SegmentedChoice* m_felt = nullptr;
    common::SegmentedChoice* m_pain = nullptr;
    std::vector<std::vector<QWidget*>> m_rows;  ///< what takes the focus in each row
};

}  // namespace chalk::ui::floor
