#include "core/exchange/studio_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace chalk::exchange {

namespace {

constexpr qint64 kMostBytes = 64 * 1024 * 1024;

tl::unexpected<StudioFault> fileFault(const QString& name, const QString& reason)
{
    return tl::make_unexpected(StudioFault{name, {}, {{}, reason.toStdString()}});
}

}  // namespace

QStringList clientFilesIn(const QString& folder)
{
    QStringList names;
    for (const QString& name : QDir(folder + QStringLiteral("/clients")).entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        names.append(QStringLiteral("clients/") + name);
    }
    return names;
}

StudioResult<QByteArray> studioTextIn(const QString& folder, const QString& name)
{
    QFile file(folder + QLatin1Char('/') + name);
    if (!file.open(QIODevice::ReadOnly)) {
        return fileFault(name, QStringLiteral("cannot be read: ") + file.errorString());
    }
    if (file.size() > kMostBytes) {
        return fileFault(name, QStringLiteral("has more than 64 MB"));
    }
    QByteArray text = file.readAll();
    if (file.error() != QFileDevice::NoError) {
        return fileFault(name, QStringLiteral("cannot be read: ") + file.errorString());
    }
    return text;
}

StudioResult<StudioFiles> studioFilesIn(const QString& folder)
{
    const QString header = QStringLiteral("studio.json");
    if (!QFileInfo(folder).isDir()) {
        return fileFault(header, QStringLiteral("is missing: there is no such folder"));
    }
    if (!QFileInfo::exists(folder + QLatin1Char('/') + header)) {
        return fileFault(header, QStringLiteral("is missing"));
    }
    StudioFiles files;
    for (const QString& name : QStringList{header} + clientFilesIn(folder)) {
        auto text = studioTextIn(folder, name);
        if (!text) {
            return tl::make_unexpected(text.error());
        }
        files[name] = *std::move(text);
    }
    return files;
}

StudioResult<void> writeFilesInto(const QString& folder, const StudioFiles& files)
{
    if (!QDir().mkpath(folder + QStringLiteral("/clients"))) {
        return fileFault(QStringLiteral("clients"), QStringLiteral("cannot be made"));
    }
    for (const QString& name : clientFilesIn(folder)) {
        if (files.count(name) == 0) {
            return fileFault(name, QStringLiteral("is there already and is not of this studio"));
        }
    }
    for (const auto& [name, text] : files) {
        QSaveFile file(folder + QLatin1Char('/') + name);
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size() || !file.commit()) {
            return fileFault(name, QStringLiteral("cannot be written: ") + file.errorString());
        }
    }
    return {};
}

}  // namespace chalk::exchange
