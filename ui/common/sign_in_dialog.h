#pragma once

#include <QDialog>
#include <QString>

#include <functional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace chalk::ui::common {

/// Asks for a login and its password at a studio's server, until somebody is let in or gives up. The password is kept nowhere.
class SignInDialog : public QDialog {
    Q_OBJECT

public:
    /// Tries to get in; answers why not, in words, or nothing.
    using Attempt = std::function<QString(const QString& login, const QString& password)>;

    /// `server` is shown, without any password; `login` is what was typed the last time.
    SignInDialog(const QString& server, const QString& login, Attempt attempt, QWidget* parent = nullptr);

    [[nodiscard]] QString login() const;
    [[nodiscard]] QString fault() const;
    /// Says why the person is asked, as of an earlier attempt.
    void sayFault(const QString& fault);

private:
    void signIn();

    Attempt m_attempt;
    QLineEdit* m_login;
    QLineEdit* m_password;
    QLabel* m_fault;
    QPushButton* m_enter;
};

}  // namespace chalk::ui::common
