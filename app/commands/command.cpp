#include "app/commands/command.h"

#include "app/commands/passphrase_input.h"
#include "app/commands/server_password.h"
#include "app/commands/way_back.h"
#include "core/store/key_ring.h"

#include <QFile>
#include <QFileInfo>

#include <cstdio>

namespace chalk::app {

QString CommandContext::value(const QString& option, const QString& fallback) const
{
    const auto found = options.find(option);
    return found == options.end() ? fallback : found->second;
}

std::optional<int> CommandContext::wholeNumber(const QString& option, int fallback, int low, int high) const
{
    bool isNumber = true;
    const int number = has(option) ? value(option).toInt(&isNumber) : fallback;
    if (!isNumber || number < low || number > high) {
        refuse(QStringLiteral("--%1 must be a whole number from %2 to %3").arg(option).arg(low).arg(high));
        return std::nullopt;
    }
    return number;
}

int CommandContext::refuse(const QString& message) const
{
    err << "chalkrung " << command << ": " << message << '\n';
    return kWrongUse;
}

int CommandContext::giveUp(const QString& message) const
{
    refuse(message);
    return kFailed;
}

std::optional<QString> CommandContext::passphraseText(QString& fault) const
{
    const QString file = value(QStringLiteral("passphrase-file"), qEnvironmentVariable(kPassphraseFileVariable));
    return file.isEmpty() ? std::nullopt : passphraseIn(file, fault);
}

store::Result<std::unique_ptr<store::Database>> CommandContext::openStudio(store::OpenMode mode) const
{
    QString fault;
    const auto text = passphraseText(fault);
    if (!fault.isEmpty()) {
        return store::storeError(store::StoreError::Kind::Locked, fault);
    }
    auto opened = openStudioWith(seal::Passphrase(text.value_or(QString())), mode);
    if (!opened && opened.error().kind == store::StoreError::Kind::Locked && !text) {
        if (const auto answer = askPassphrase(QStringLiteral("Passphrase"))) {
            return openStudioWith(seal::Passphrase(*answer), mode);
        }
        opened.error().message += QStringLiteral("; name a file that holds it by --passphrase-file");
    }
    return opened;
}

store::Result<std::unique_ptr<store::Database>> CommandContext::openStudioWith(const seal::Passphrase& passphrase, store::OpenMode mode) const
{
    store::Access access(studioFile);
    access.keys = std::make_shared<store::KeyRing>(passphrase);
    auto opened = withPassword(access, [mode](const store::Access& way) { return store::Database::open(way, mode); });
    if (!opened && opened.error().kind == store::StoreError::Kind::NotThere && !has(QStringLiteral("studio"))) {
        opened.error().message += QStringLiteral("; name one by --studio FILE, or make the demo studio by chalkrung demo --studio FILE");
    }
    return opened;
}

int CommandContext::report(const store::StoreError& error) const
{
    using Kind = store::StoreError::Kind;
    switch (error.kind) {
    case Kind::NotAStudio:
    case Kind::Damaged:
        if (const QString way = error.message.contains(studioFile) ? wayBackFrom(studioFile) : QString(); !way.isEmpty()) {
            return refuse(error.message + QStringLiteral("; ") + way);
        }
        return refuse(error.message);
    case Kind::NotThere:
    case Kind::Newer:
    case Kind::Older:
    case Kind::CannotRead:
    case Kind::Locked:
        return refuse(error.message);
    case Kind::CannotWrite:
    case Kind::Busy:
    case Kind::Refused:
    case Kind::Cancelled:
    case Kind::Conflict:
    case Kind::Unreachable:
    case Kind::NotAllowed:
    case Kind::Other:
        break;
    }
    return giveUp(error.message);
}

std::optional<QByteArray> CommandContext::readInput(const QString& name) const
{
    if (QFileInfo(name).isDir()) {
        refuse(QStringLiteral("%1 is a folder, not a file").arg(name));
        return std::nullopt;
    }
    QFile file(name);
    const bool isOpen = name == QLatin1String("-") ? file.open(stdin, QIODevice::ReadOnly) : file.open(QIODevice::ReadOnly);
    QByteArray text = isOpen ? file.readAll() : QByteArray();
    if (!isOpen || file.error() != QFileDevice::NoError) {
        refuse(QStringLiteral("%1: %2").arg(name, file.errorString()));
        return std::nullopt;
    }
    return text;
}

}  // namespace chalk::app
