#include "core/store/open_files.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/client_json.h"
#include "core/exchange/studio_folder.h"
#include "core/exchange/studio_tables_folder.h"
#include "core/store/audit.h"
#include "core/store/folder_beside.h"
#include "core/store/studio_export.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>

#include <future>
#include <set>

namespace chalk::store {

namespace {

constexpr auto kOwnFile = QFileDevice::ReadOwner | QFileDevice::WriteOwner;

StoreError errorOfFiles(const QString& folder, const exchange::StudioFault& fault)
{
    return {StoreError::Kind::CannotWrite, folder + QLatin1Char('/') + fault.message()};
}

StoreError stopped(const char* what)
{
    return {StoreError::Kind::Cancelled, QLatin1String("Stopped: ") + QLatin1String(what)};
}

/// Writes the files of the JSON form beside the folder's own ones.
class JsonFiles {
public:
    JsonFiles(QString folder, QString beside) : m_folder(std::move(folder)), m_beside(std::move(beside)) {}

    Result<void> begin(const std::set<QString>& names)
    {
        for (const QString& name : exchange::clientFilesIn(m_folder)) {
            if (names.count(name) == 0) {
                return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1/%2 is there already and is not of this studio").arg(m_folder, name));
            }
        }
        if (!QDir().mkpath(m_beside + QStringLiteral("/clients"))) {
            return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1/clients cannot be made").arg(m_folder));
        }
        QFile readme(QStringLiteral(":/demo/README.md"));
        return readme.open(QIODevice::ReadOnly) ? add(QStringLiteral("README.md"), readme.readAll()) : Result<void>();
    }

    Result<void> add(const QString& name, const QByteArray& text)
    {
        QSaveFile file(m_beside + QLatin1Char('/') + name);
        if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(kOwnFile) || file.write(text) != text.size() || !file.commit()) {
            return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1/%2 cannot be written: %3").arg(m_folder, name, file.errorString()));
        }
        return {};
    }

private:
    QString m_folder;
    QString m_beside;
};

/// Writes the same studio in both forms, as wanted.
class OpenFilesWriting {
public:
    /// Into `beside`, for `folder`.
    OpenFilesWriting(const QString& folder, const QString& beside, const OpenFilesWish& wish) : m_json(folder, beside), m_isJson(wish.isJson)
    {
        if (wish.isCsv) {
            m_tablesFolder = folder + QStringLiteral("/tables");
            m_tables.emplace(beside + QStringLiteral("/tables"));
        }
    }

    Result<void> run(StudioExport& reading, const Progress& progress)
    {
        const auto header = reading.header();
        if (!header) {
            return tl::make_unexpected(header.error());
        }
        auto done = begin(reading, *header);
        const int count = static_cast<int>(reading.clientCount());
        for (int i = 0; i < count && done; ++i) {
            if (progress && !progress(i, count)) {
                return tl::make_unexpected(stopped("what was written is taken away again, and what was there before is as it was"));
            }
            done = addClient(reading, *header, static_cast<std::size_t>(i));
        }
        return done ? finish() : done;
    }

private:
    Result<void> begin(StudioExport& reading, const exchange::StudioDocument& header)
    {
        const exchange::WrittenObject file = exchange::writtenStudio(header);
        if (m_tables) {
            m_tables->addStudio(file.object);
        }
        if (!m_isJson) {
            return {};
        }
        std::set<QString> names;
        for (std::size_t i = 0; i < reading.clientCount(); ++i) {
            names.insert(exchange::clientFileName(i + 1, reading.clientCount(), reading.clientName(i)));
        }
        return m_json.begin(names).and_then([&] { return m_json.add(exchange::studioFileName(), file.text); });
    }

    Result<void> addClient(StudioExport& reading, const exchange::StudioDocument& header, std::size_t index)
    {
        const auto client = reading.client(index);
        if (!client) {
            return tl::make_unexpected(client.error());
        }
        const exchange::WrittenObject file = exchange::writtenClient(*client, header);
        if (m_tables) {
            m_tables->addClient(file.object, client->lifts);
        }
        return m_isJson ? m_json.add(exchange::clientFileName(index + 1, reading.clientCount(), reading.clientName(index)), file.text) : Result<void>();
    }

    Result<void> finish()
    {
        if (m_tables) {
            if (const auto finished = m_tables->finish(); !finished) {
                return tl::make_unexpected(errorOfFiles(m_tablesFolder, finished.error()));
            }
        }
        return {};
    }

    JsonFiles m_json;
    bool m_isJson;
    QString m_tablesFolder;
    std::optional<exchange::TablesWriter> m_tables;
};

/// A studio in open files, in either form, client by client.
class OpenStudio {
public:
    virtual ~OpenStudio() = default;
    virtual exchange::StudioResult<exchange::StudioDocument> header() = 0;
    virtual exchange::StudioResult<std::optional<exchange::DocumentClient>> next(const exchange::StudioDocument& header) = 0;
    /// How many clients there are; 0 where that is not known beforehand.
    [[nodiscard]] virtual int count() const = 0;
};

class JsonStudio final : public OpenStudio {
public:
    JsonStudio(QString folder, const lifts::Catalogue& catalogue) : m_folder(std::move(folder)), m_catalogue(catalogue), m_names(exchange::clientFilesIn(m_folder)) {}

    exchange::StudioResult<exchange::StudioDocument> header() override
    {
        return exchange::studioTextIn(m_folder, exchange::studioFileName()).and_then([this](const QByteArray& text) { return exchange::readStudioFile(text, m_catalogue); });
    }
    exchange::StudioResult<std::optional<exchange::DocumentClient>> next(const exchange::StudioDocument& header) override
    {
        if (m_next == m_names.size()) {
            return std::optional<exchange::DocumentClient>();
        }
        const QString name = m_names[m_next++];
        return exchange::studioTextIn(m_folder, name)
            .and_then([&](const QByteArray& text) { return exchange::readClientFile(name, text, header, m_catalogue, m_codes); })
            .map([](exchange::DocumentClient client) { return std::optional(std::move(client)); });
    }
    [[nodiscard]] int count() const override { return static_cast<int>(m_names.size()); }

private:
    QString m_folder;
    const lifts::Catalogue& m_catalogue;
    QStringList m_names;
    qsizetype m_next = 0;
    std::set<std::string> m_codes;
};

class TablesStudio final : public OpenStudio {
public:
    TablesStudio(const QString& folder, const lifts::Catalogue& catalogue) : m_reader(folder), m_catalogue(catalogue) {}

    exchange::StudioResult<exchange::StudioDocument> header() override
    {
        return m_reader.studio().and_then([this](const QJsonObject& object) {
            return exchange::readStudioHeader(object, m_catalogue).map_error([this](const exchange::JsonFault& fault) { return m_reader.placed(fault); });
        });
    }
    exchange::StudioResult<std::optional<exchange::DocumentClient>> next(const exchange::StudioDocument& header) override
    {
        const auto object = m_reader.nextClient();
        if (!object) {
            return tl::make_unexpected(object.error());
        }
        if (!*object) {
            return std::optional<exchange::DocumentClient>();
        }
        auto client = exchange::readClient(**object, header, m_catalogue, m_codes);
        if (!client) {
            return tl::make_unexpected(m_reader.placed(client.error()));
        }
        return std::optional(*std::move(client));
    }
    [[nodiscard]] int count() const override { return 0; }

private:
    exchange::TablesReader m_reader;
    const lifts::Catalogue& m_catalogue;
    std::set<std::string> m_codes;
};

/// Reads the next client while the last one is taken in.
class ReadAhead {
public:
    /// Both outlive it; nobody else reads of the studio.
    ReadAhead(OpenStudio& studio, const exchange::StudioDocument& header) : m_studio(studio), m_header(header) { begin(); }

    exchange::StudioResult<std::optional<exchange::DocumentClient>> next()
    {
        auto client = m_next.get();
        if (client && *client) {
            begin();
        }
        return client;
    }

private:
    void begin()
    {
        m_next = std::async(std::launch::async, [this] { return m_studio.next(m_header); });
    }

    OpenStudio& m_studio;
    const exchange::StudioDocument& m_header;
    std::future<exchange::StudioResult<std::optional<exchange::DocumentClient>>> m_next;
};

/// The studio of a folder, and the folder that its files are in.
std::pair<std::unique_ptr<OpenStudio>, QString> studioIn(const QString& folder, const lifts::Catalogue& catalogue)
{
    const QString tables = folder + QStringLiteral("/tables");
    const bool hasJson = QFile::exists(folder + QLatin1Char('/') + exchange::studioFileName());
    for (const QString& place : {folder, tables}) {
        if (!hasJson && exchange::TablesReader::isThere(place)) {
            return {std::make_unique<TablesStudio>(place, catalogue), place};
        }
    }
    return {std::make_unique<JsonStudio>(folder, catalogue), folder};
}

StoreError errorOfReading(const QString& folder, const exchange::StudioFault& fault)
{
    return {StoreError::Kind::Refused, folder + QLatin1Char('/') + fault.message()};
}

}  // namespace

Result<int> writeOpenFiles(Database& database, const QString& folder, const OpenFilesWish& wish, base::Date today, const Progress& progress)
{
    int count = 0;
    {
        StudioExport reading(database, today);
        if (!wish.client.isNone()) {
            if (const auto only = reading.onlyClient(wish.client); !only) {
                return tl::make_unexpected(only.error());
            }
        }
        count = static_cast<int>(reading.clientCount());
        FolderBeside beside(folder);
        auto done = beside.begin();
        if (done) {
            done = OpenFilesWriting(folder, beside.path(), wish).run(reading, progress);
        }
        if (done) {
            done = beside.keep();
        }
        if (!done) {
            return tl::make_unexpected(done.error());
        }
    }
    const auto noted = noteInAudit(database, wish.client.isNone() ? AuditWhat::StudioExported : AuditWhat::ClientExported, wish.client,
                                   {{QStringLiteral("clients"), count}, {QStringLiteral("json"), wish.isJson}, {QStringLiteral("csv"), wish.isCsv}});
    return noted ? Result<int>(count) : tl::make_unexpected(noted.error());
}

Result<int> readOpenFiles(Database& database, const QString& folder, const QString& atUtc, const Progress& progress)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto [studio, place] = studioIn(folder, catalogue);
    const auto header = studio->header();
    if (!header) {
        return tl::make_unexpected(errorOfReading(place, header.error()));
    }
    StudioImport import(database, header->name, header->coaches, header->equipment, atUtc);
    import.addOwn(*header);
    ReadAhead clients(*studio, *header);
    int count = 0;
    while (!import.hasFailed()) {
        if (progress && !progress(count, std::max(count, studio->count()))) {
            return tl::make_unexpected(stopped("nothing was taken in"));
        }
        const auto client = clients.next();
        if (!client) {
            return tl::make_unexpected(errorOfReading(place, client.error()));
        }
        if (!*client) {
            break;
        }
        import.add(**client);
        ++count;
    }
    return import.finish().map([count] { return count; });
}

}  // namespace chalk::store
