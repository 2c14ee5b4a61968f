#pragma once

#include "core/store/erasure.h"

#include <QDialog>

class QLineEdit;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::records {

/// Asks whether a client is to be erased: says what goes and what is kept, and waits until the client's name is typed.
class EraseDialog : public QDialog {
    Q_OBJECT

public:
    EraseDialog(const common::Look& look, const store::ErasurePreview& preview, QWidget* parent = nullptr);

    /// What was typed, without spaces around it.
    [[nodiscard]] QString typedName() const;

private:
    void build(const store::ErasurePreview& preview);
    void look(const QString& typed);

    const common::Look& m_look;
    QString m_wanted;
    QLineEdit* m_name;
    common::ActionButton* m_erase;
};

}  // namespace chalk::ui::records
