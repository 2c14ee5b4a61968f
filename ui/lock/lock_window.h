#pragma once

#include "core/seal/passphrase.h"

#include <QWidget>

class QLabel;

namespace chalk::ui::common {
class ActionButton;
class Look;
}

namespace chalk::ui::lock {

class PassphraseField;

/// A window that asks for the passphrase of a studio, and shows nothing else: before the program opens, and while it is locked.
class LockWindow : public QWidget {
    Q_OBJECT

public:
    /// `words` says why it asks.
    LockWindow(const common::Look& look, const QString& title, const QString& words, QWidget* parent = nullptr);

    /// While the passphrase is being tried.
    void setBusy(bool isBusy);
    /// What the button says that gives up, where that does not end the program.
    void setLeaveText(const QString& text);
    /// Says why it did not open, and empties the field.
    void sayWhy(const QString& why);
    [[nodiscard]] QString saying() const;
    [[nodiscard]] PassphraseField* field() const { return m_field; }

Q_SIGNALS:
    void passphraseGiven(const chalk::seal::Passphrase& passphrase);
    void quitAsked();

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void lay(const QString& title, const QString& words);
    void give();

    const common::Look& m_look;
    PassphraseField* m_field;
    common::ActionButton* m_open;
    common::ActionButton* m_leave = nullptr;
    QLabel* m_why;
};

}  // namespace chalk::ui::lock
