#pragma once

#include "ui/people/import_desk.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QVBoxLayout;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::people {

/// How the files are read, a panel for each: encoding, separator, days, numbers and unit, and what each column says beside its first cells.
class ColumnsForm : public QWidget {
    Q_OBJECT

public:
    /// `look` and `desk` outlive the form.
    ColumnsForm(const common::Look& look, ImportDesk& desk, QWidget* parent = nullptr);

    /// Builds the form anew where the files are others, or were looked at again.
    void refresh();

private:
    /// Names the columns of which nothing is taken in, as the layouts are now.
    void showNotTaken();
    void addFile(std::size_t index);
    void addReading(std::size_t index, QVBoxLayout& body);
    void addColumns(std::size_t index, QVBoxLayout& body);
    [[nodiscard]] QComboBox* choice(const QString& name, const QStringList& items, int current);

    const common::Look& m_look;
    ImportDesk& m_desk;
    QVBoxLayout* m_column;
    QWidget* m_files = nullptr;
    std::vector<QLabel*> m_notTaken;  ///< by file
    int m_shown = 0;
};

}  // namespace chalk::ui::people
