#include "app/studio_opening.h"

#include "core/store/server_target.h"
#include "ui/common/look.h"
#include "ui/common/sign_in_dialog.h"
#include "ui/common/theme.h"
#include "ui/lock/lock_desk.h"

#include <QApplication>
#include <QSettings>
#include <QUrl>

namespace chalk::app {

namespace {

using store::StoreError;

/// Where a login is remembered: by the server, whoever signs in.
QString loginKey(const QUrl& server)
{
    return QStringLiteral("server/%1/login").arg(server.host() + QLatin1Char(':') + QString::number(server.port(0)) + server.path().replace(QLatin1Char('/'), QLatin1Char(':')));
}

store::Access accessWith(QUrl server, const QString& login, const QString& password)
{
    server.setUserName(login);
    store::Access access(server.toString());
    access.password = password;
    return access;
}

store::Result<std::unique_ptr<store::Database>> openFile(const store::Access& access, store::OpenMode mode)
{
    auto opened = store::Database::open(access, mode);
    if (opened || opened.error().kind != StoreError::Kind::Locked) {
        return opened;
    }
    const ui::common::Look look;
    ui::common::applyTheme(*qApp, look.theme());
    if (!ui::lock::askBeforeOpening(look, access)) {
        return store::storeError(StoreError::Kind::Cancelled, QStringLiteral("%1 was not unlocked").arg(access.target));
    }
    return store::Database::open(access, mode);
}

}  // namespace

store::Result<std::unique_ptr<store::Database>> openForWindow(const store::Access& access, store::OpenMode mode)
{
    const QString& target = access.target;
    if (!store::isServerTarget(target)) {
        return openFile(access, mode);
    }
    // The server may let the login of the URL in without being told a password here.
    auto opened = store::Database::open(target, store::OpenMode::MustExist);
    if (opened || opened.error().kind != StoreError::Kind::NotAllowed) {
        return opened;
    }
    QUrl server(store::withoutPasswordInTarget(target).target);
    QSettings settings;
    const QString key = loginKey(server);
    const QString login = server.userName().isEmpty() ? settings.value(key).toString() : server.userName();
    ui::common::applyTheme(*qApp, ui::common::Look().theme());
    ui::common::SignInDialog dialog(server.host() + server.path(), login, [&](const QString& typed, const QString& password) {
        opened = store::Database::open(accessWith(server, typed, password), store::OpenMode::MustExist);
        return opened                                                ? QString()
               : opened.error().kind == StoreError::Kind::NotAllowed ? QApplication::translate("StudioOpening", "The login or the password is not right.")
                                                                     : opened.error().message;
    });
    if (dialog.exec() != QDialog::Accepted) {
        return store::storeError(StoreError::Kind::Cancelled, QStringLiteral("Nobody signed in at %1").arg(server.toString(QUrl::RemoveUserInfo)));
    }
    settings.setValue(key, dialog.login());
    return opened;
}

}  // namespace chalk::app
