#include "ui/records/dossier.h"

#include "core/exchange/client_json.h"
#include "core/exchange/studio_json.h"
#include "core/store/audit.h"
#include "core/store/change_history.h"
#include "core/store/folder_beside.h"
#include "core/store/studio_export.h"
#include "ui/common/formats.h"
#include "ui/history/history_words.h"
#include "ui/print/sheet_printing.h"
#include "ui/records/dossier_content.h"

#include <QDir>
#include <QSaveFile>

#include <optional>

namespace chalk::ui::records {

namespace {

constexpr int kSteps = 3;  ///< reading, the open format, the papers

/// Files of a folder for their owner only; the first that cannot be written is kept as the fault.
class OwnFiles {
public:
    /// Into `beside`, for `folder`.
    OwnFiles(QString folder, QString beside) : m_folder(std::move(folder)), m_beside(std::move(beside)) {}

    void write(const QString& name, const QByteArray& bytes)
    {
        const QString path = m_beside + QLatin1Char('/') + name;
        QSaveFile file(path);
        if (m_fault || !QDir().mkpath(path.section(QLatin1Char('/'), 0, -2)) || !file.open(QIODevice::WriteOnly) ||
            !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) || file.write(bytes) != bytes.size() || !file.commit()) {
            m_fault = m_fault ? m_fault
                              : store::StoreError{store::StoreError::Kind::CannotWrite,
                                                  QStringLiteral("%1/%2 cannot be written: %3").arg(m_folder, name, file.errorString())};
            return;
        }
        m_names.append(name);
    }
    [[nodiscard]] store::Result<QStringList> result() const
    {
        return m_fault ? store::Result<QStringList>(tl::make_unexpected(*m_fault)) : store::Result<QStringList>(m_names);
    }

private:
    QString m_folder;
    QString m_beside;
    QStringList m_names;
    std::optional<store::StoreError> m_fault;
};

/// `letters/1-letter.pdf`: a name that goes nowhere else.
QString letterFile(std::size_t number, const std::string& fileName)
{
    QString name = common::qstring(fileName).section(QLatin1Char('/'), -1).section(QLatin1Char('\\'), -1);
    while (name.startsWith(QLatin1Char('.'))) {
        name.remove(0, 1);
    }
    return QStringLiteral("letters/%1-%2").arg(number).arg(name.isEmpty() ? QStringLiteral("letter") : name);
}

store::Result<void> writeOpenForm(store::Database& database, base::ClientId client, base::Date today, OwnFiles& files)
{
    store::StudioExport reading(database, today);
    const auto only = reading.onlyClient(client);
    if (!only) {
        return only;
    }
    const auto header = reading.header();
    const auto one = reading.client(0);
    if (!header || !one) {
        return tl::make_unexpected(header ? one.error() : header.error());
    }
    files.write(exchange::studioFileName(), exchange::writtenStudio(*header).text);
    files.write(exchange::clientFileName(1, 1, one->client.name), exchange::writtenClient(*one, *header).text);
    for (std::size_t i = 0; i < one->letters.size(); ++i) {
        if (!one->letters[i].copy.empty()) {
            files.write(letterFile(i + 1, one->letters[i].fileName), QByteArray::fromStdString(one->letters[i].copy));
        }
    }
    return {};
}

void writePaper(const DossierContent& content, const std::vector<store::ChangeEntry>& history, const lifts::Catalogue& catalogue, base::Date today, OwnFiles& files)
{
    files.write(QStringLiteral("history.json"), history::historyJsonOf(history, catalogue));
    files.write(QStringLiteral("history.csv"), history::historyCsvOf(history, catalogue));
    const QDate created = QDate(1970, 1, 1).addDays(today.daysSince1970());
    files.write(QStringLiteral("dossier.pdf"),
                print::sheetsPdf(dossierSheets(content, print::PaperSize::A4), print::PaperSize::A4, dossierName(content.clientName), created));
}

struct DossierRead {
    DossierContent content;
    std::vector<store::ChangeEntry> history;
};

/// What a dossier tells, with the note of the dossier itself at the end of its history. The note is not kept here: it may still be stopped.
store::Result<DossierRead> readWithItsNote(store::Database& database, const lifts::Catalogue& catalogue, base::ClientId client, base::Date today)
{
    std::optional<store::Transaction> passing;
    if (!database.isReadOnly()) {
        passing.emplace(database);
        store::writeAudit(database, store::AuditWhat::DossierMade, client);
    }
    auto content = readDossierContent(database, catalogue, client, today);
    auto history = store::ChangeHistory(database).of(client, 1'000'000);
    if (!content || !history) {
        return tl::make_unexpected(content ? history.error() : content.error());
    }
    return DossierRead{*std::move(content), *std::move(history)};
}

/// The note and the folder come to be together, or neither.
store::Result<void> keepAndNote(store::Database& database, base::ClientId client, store::FolderBeside& beside)
{
    if (database.isReadOnly()) {
        return beside.keep();
    }
    store::Transaction transaction(database);
    store::writeAudit(database, store::AuditWhat::DossierMade, client);
    if (const auto kept = beside.keep(); !kept) {
        return kept;
    }
    return transaction.commit();
}

store::StoreError dossierStopped()
{
    return {store::StoreError::Kind::Cancelled, QStringLiteral("Stopped: the folder is as it was")};
}

}  // namespace

QString dossierName(const QString& clientName)
{
    QString words;
    for (const QChar c : clientName.toLower()) {
        words += c.isLetterOrNumber() ? c : QLatin1Char('-');
    }
    return QStringLiteral("dossier-") + words.left(60);
}

store::Result<QStringList> writeDossier(store::Database& database, const lifts::Catalogue& catalogue, base::ClientId client, base::Date today, const QString& folder,
                                        const store::Progress& progress)
{
    const auto isStopped = [&progress](int done) { return progress && !progress(done, kSteps); };
    const auto read = readWithItsNote(database, catalogue, client, today);
    if (!read) {
        return tl::make_unexpected(read.error());
    }
    store::FolderBeside beside(folder);
    if (const auto begun = beside.begin(); !begun) {
        return tl::make_unexpected(begun.error());
    }
    OwnFiles files(folder, beside.path());
    if (isStopped(1)) {
        return tl::make_unexpected(dossierStopped());
    }
    if (const auto open = writeOpenForm(database, client, today, files); !open) {
        return tl::make_unexpected(open.error());
    }
    if (isStopped(2)) {
        return tl::make_unexpected(dossierStopped());
    }
    writePaper(read->content, read->history, catalogue, today, files);
    if (isStopped(kSteps)) {
        return tl::make_unexpected(dossierStopped());
    }
    return files.result().and_then([&](const QStringList& names) { return keepAndNote(database, client, beside).map([&names] { return names; }); });
}

}  // namespace chalk::ui::records
