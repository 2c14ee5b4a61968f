#pragma once

#include "ui/common/action_button.h"

#include <QWidget>

class QHBoxLayout;

namespace chalk::ui::common {

/// The last line of an editor that opens inside a panel: a button that keeps what was typed, one that leaves it, and any others between
/// them. Keys are only shown: who owns the editor acts on them.
class EditorFoot : public QWidget {
    Q_OBJECT

public:
    EditorFoot(const Look& look, const QString& keepText, QWidget* parent = nullptr);

    /// A further button, before the one that leaves.
    ActionButton* addButton(const QString& text);
    /// Small buttons without keys, where the panel is narrow.
    void setCompact();

Q_SIGNALS:
    void keepAsked();
    void leaveAsked();

private:
    const Look& m_look;
    QHBoxLayout* m_row;
    ActionButton* m_keep;
    ActionButton* m_leave;
};

}  // namespace chalk::ui::common
