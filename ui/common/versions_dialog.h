#pragma once

#include "ui/common/dialogs.h"

#include <QDialog>

class QGridLayout;
class QHBoxLayout;
class QPushButton;

namespace chalk::ui::common {

/// Two versions of the same thing side by side, and a button for each way out. Esc is the answer that changes nothing.
class VersionsDialog : public QDialog {
    Q_OBJECT

public:
    explicit VersionsDialog(const Question& question, QWidget* parent = nullptr);

    /// The index of the answer; the safe one until another is given.
    [[nodiscard]] int answer() const { return m_answer; }
    [[nodiscard]] const std::vector<QPushButton*>& buttons() const { return m_buttons; }

private:
    QWidget* table(const Question& question);
    void addRow(QGridLayout& grid, int row, const VersionRow& version);
    void addButtons(const Question& question, QHBoxLayout& row);

    int m_answer;
    std::vector<QPushButton*> m_buttons;
};

}  // namespace chalk::ui::common
