#pragma once

#include "ui/floor/floor_desk.h"

#include <QWidget>

namespace chalk::ui::floor {

class EntryChips;
class EntryField;
class LiftHeading;
class NextTimeBar;
class RehearsalSheet;

/// Where one lift's result is entered: a line for what is loaded, a sheet for a rehearsal, and below it what follows.
class EntryPane : public QWidget {
    Q_OBJECT

public:
    explicit EntryPane(const common::Look& look, QWidget* parent = nullptr);

    /// Shows the desk's client and lift; there is one.
    void showDesk(const FloorDesk& desk);
    void focusEntry();
    /// What was typed is written: Ctrl+Z takes back the writing now, not the typing.
    void forgetTyping();
    /// Puts the focus where the fault of the entry is.
    void focusFault(const EntryReading& reading);

Q_SIGNALS:
    void typed(const QString& line);
    void judged(const chalk::ui::floor::RehearsalDraft& draft);
    void saveAsked();

private:
    LiftHeading* m_heading;
    EntryField* m_field;
    RehearsalSheet* m_sheet;
    EntryChips* m_chips;
    NextTimeBar* m_next;
};

}  // namespace chalk::ui::floor
