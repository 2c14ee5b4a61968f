#pragma once

#include "core/seal/passphrase.h"

#include <QWidget>

class QLineEdit;

namespace chalk::ui::common {
class ActionButton;
class Look;
}

namespace chalk::ui::lock {

/// A field for a passphrase: hidden, until the person wants to see it.
class PassphraseField : public QWidget {
    Q_OBJECT

public:
    /// `name` is what is asked, for screen readers too.
    PassphraseField(const common::Look& look, const QString& name, QWidget* parent = nullptr);

    [[nodiscard]] QString text() const;
    [[nodiscard]] seal::Passphrase passphrase() const;
    /// Empties the field, its history with it.
    void clear();
    /// A red edge; the reason stands beside it.
    void setInvalid(bool isInvalid);
    [[nodiscard]] QLineEdit* field() const { return m_field; }

Q_SIGNALS:
    void changed();
    void entered();

private:
    void show(bool isShown);

    QLineEdit* m_field;
    common::ActionButton* m_show;
};

}  // namespace chalk::ui::lock
