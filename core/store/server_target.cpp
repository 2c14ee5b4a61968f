#include "core/store/server_target.h"

#include <QRegularExpression>
#include <QUrl>
#include <QUrlQuery>

#include <algorithm>

namespace chalk::store {

namespace {

// Of the server's client library. What it is told of the time it may wait is ours.
constexpr const char* kConnectionOptions[] = {"sslmode", "sslrootcert", "sslcert", "sslkey", "sslcrl", "channel_binding", "application_name"};

/// A value as it is written for Qt: no semicolon, which parts options, and no blank, which would begin another.
bool isPlain(const QString& value)
{
    return !value.isEmpty() && std::none_of(value.begin(), value.end(), [](QChar c) { return c == QLatin1Char(';') || c.isSpace() || c == QLatin1Char('\'') || c == QLatin1Char('\\'); });
}

tl::unexpected<StoreError> noTarget(const QString& url, const QString& why)
{
    return storeError(StoreError::Kind::NotThere, QStringLiteral("%1 leads to no server: %2").arg(url.section(QLatin1Char('?'), 0, 0), why));
}

}  // namespace

bool isServerTarget(const QString& target)
{
    return target.startsWith(QLatin1String("postgresql://")) || target.startsWith(QLatin1String("postgres://"));
}

Result<ServerTarget> serverTargetOf(const QString& text)
{
    const QUrl url(text, QUrl::StrictMode);
    if (!isServerTarget(text) || !url.isValid()) {
        return noTarget(text, QStringLiteral("it is no URL like postgresql://LOGIN@HOST/DATABASE"));
    }
    ServerTarget target{url.host(QUrl::FullyDecoded), std::max(url.port(), 0), url.path(QUrl::FullyDecoded).mid(1), url.userName(QUrl::FullyDecoded), {}};
    const auto asked = QUrlQuery(url).queryItems(QUrl::FullyDecoded);
    for (const auto& [name, value] : asked) {
        const bool isKnown = std::any_of(std::begin(kConnectionOptions), std::end(kConnectionOptions),
                                         [&name = name](const char* known) { return name == QLatin1String(known); });
        if (!isKnown) {
            return noTarget(text, QStringLiteral("there is no option %1").arg(name));
        }
        if (!isPlain(value)) {
            return noTarget(text, QStringLiteral("the value of %1 cannot be read").arg(name));
        }
        target.options.append(name + QLatin1Char('=') + value);
    }
    return target;
}

Access withoutPasswordInTarget(Access access)
{
    if (!isServerTarget(access.target)) {
        return access;
    }
    // By its look: a password that makes the URL invalid must not be shown either.
    static const QRegularExpression withPassword(QStringLiteral("^(\\w+://[^:@/?]*):(.*)@"));
    const auto found = withPassword.match(access.target);
    if (found.hasMatch()) {
        access.password = access.password.isEmpty() ? QUrl::fromPercentEncoding(found.captured(2).toUtf8()) : access.password;
        access.target = found.captured(1) + access.target.mid(found.capturedEnd(2));
    }
    return access;
}

}  // namespace chalk::store
