#pragma once

#include "ui/people/import_desk.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace chalk::ui::common {
class Look;
class Panel;
}

namespace chalk::ui::people {

/// Before it goes in: who may be a client already, exercises nobody knows, rows with faults, and what is taken for granted.
class PeopleForm : public QWidget {
    Q_OBJECT

public:
    /// `look` and `desk` outlive the form.
    PeopleForm(const common::Look& look, ImportDesk& desk, QWidget* parent = nullptr);

    /// Builds the form anew where the files were read again; else only counts anew.
    void refresh();

private:
    void build();
    void addPersons();
    void addExercises();
    void addFaults();
    [[nodiscard]] common::Panel* addPanel(const QString& title, const QString& note);

    const common::Look& m_look;
    ImportDesk& m_desk;
    QVBoxLayout* m_column;
    QWidget* m_parts = nullptr;
    QLabel* m_summary = nullptr;
    const tables::TableContent* m_shown = nullptr;
};

}  // namespace chalk::ui::people
