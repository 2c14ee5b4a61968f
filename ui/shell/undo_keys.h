#pragma once

#include <QObject>

namespace chalk::ui::shell {

/// Lets Ctrl+Z and Ctrl+Shift+Z through to the window where the field that has the focus has nothing of its own to take back. Qt's
/// fields keep these keys to themselves even then.
class UndoKeys : public QObject {
    Q_OBJECT

public:
    /// Watches the fields of the whole program; the parent is the window.
    explicit UndoKeys(QObject* parent);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace chalk::ui::shell
