#pragma once

#include "ui/decisions/coach_editor.h"

namespace chalk::ui::board {

/// A decision that needs nothing but words: to hold a lift here, to release it.
class NoteEditor : public decisions::CoachEditor {
    Q_OBJECT

public:
    NoteEditor(const common::Look& look, const QString& title, const QString& hint, const QString& notePrompt, const QString& acceptText,
               QWidget* parent = nullptr);
};

}  // namespace chalk::ui::board
