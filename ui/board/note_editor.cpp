#include "ui/board/note_editor.h"

namespace chalk::ui::board {

NoteEditor::NoteEditor(const common::Look& look, const QString& title, const QString& hint, const QString& notePrompt,
                       const QString& acceptText, QWidget* parent)
    : decisions::CoachEditor(look, title, notePrompt, parent)
{
    setHint(hint);
    setAcceptText(acceptText);
    review();
}

}  // namespace chalk::ui::board
