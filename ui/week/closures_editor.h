#pragma once

#include "ui/week/studio_hours.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QListWidget;
class QSpinBox;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::week {

/// The closures that are to come, and a line to add one: the days, the hours, what is not there, why.
class ClosuresEditor : public QWidget {
    Q_OBJECT

public:
    ClosuresEditor(const common::Look& look, StudioHours& hours, base::Date today, QWidget* parent = nullptr);

    /// What is typed; nothing where a day makes no sense, or the last one lies before the first.
    [[nodiscard]] std::optional<chalk::week::Closure> closure() const;

Q_SIGNALS:
    /// One was added or taken away.
    void changed();

private:
    void build();
    [[nodiscard]] QFormLayout* buildForm();
    void showAll();
    void showTyped();
    void add();
    void remove();

    const common::Look& m_look;
    StudioHours& m_hours;
    base::Date m_today;
    QListWidget* m_list;
    QLineEdit* m_first;
    QLineEdit* m_last;
    QComboBox* m_from;
    QComboBox* m_to;
    QComboBox* m_what;
    QSpinBox* m_units;
    QLineEdit* m_why;
    QLabel* m_typed;
    common::ActionButton* m_add;
    common::ActionButton* m_remove;
};

}  // namespace chalk::ui::week
