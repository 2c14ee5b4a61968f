#include "ui/records/client_records.h"

#include "core/store/client_reader.h"
#include "core/store/erasure.h"
#include "ui/common/clock.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/records/dossier.h"
#include "ui/records/erase_dialog.h"
#include "ui/records/erasure_words.h"
#include "ui/settings/waited_work.h"

namespace chalk::ui::records {

ClientRecords::ClientRecords(ClientRecordsServices services, QObject* parent) : QObject(parent), m_services(services) {}

void ClientRecords::sayFailure(QWidget* window, const QString& headline, const QString& why)
{
    m_services.dialogs.ask(window, {common::Signal::Warn, headline, why, {}, {}, 0});
}

void ClientRecords::makeDossier(base::ClientId client, QWidget* window)
{
    if (m_isMaking) {
        return;  // one at a time: while it is made, the window goes on
    }
    const base::Date today = m_services.clock.today();
    const auto file = store::ClientReader(m_services.database).read(client, today);
    if (!file) {
        return sayFailure(window, tr("The dossier was not made."), file.error().message);
    }
    const auto folder = m_services.dialogs.folder(window, {tr("Where the dossier goes"), {}, {}, {}, {}});
    if (!folder) {
        return;
    }
    const QString place = *folder + QLatin1Char('/') + dossierName(common::qstring(file->client.name));
    const auto written = dossierBeside(client, today, place, window);
    if (!written && written.error().kind == store::StoreError::Kind::Cancelled) {
        return;
    }
    if (!written) {
        return sayFailure(window, tr("The dossier was not made."), written.error().message);
    }
    Q_EMIT done(tr("The dossier is in %1.").arg(place));
}

store::Result<QStringList> ClientRecords::dossierBeside(base::ClientId client, base::Date today, const QString& place, QWidget* window)
{
    m_isMaking = true;
    const auto written = settings::waitFor<store::Result<QStringList>>(
        m_services.look, window, tr("Making the dossier"),
        [access = m_services.database.access(), author = m_services.database.author(), client, today, place, &catalogue = m_services.catalogue](
            const store::Progress& progress) -> store::Result<QStringList> {
            const auto database = store::Database::open(access, store::OpenMode::MustExist);
            if (!database) {
                return tl::make_unexpected(database.error());
            }
            (*database)->setAuthor(author);
            return writeDossier(**database, catalogue, client, today, place, progress);
        });
    m_isMaking = false;
    return written;
}

void ClientRecords::erase(base::ClientId client, QWidget* window)
{
    const base::Date today = m_services.clock.today();
    const auto preview = store::previewErasure(m_services.database, client, today);
    if (!preview) {
        return sayFailure(window, tr("Nobody was erased."), preview.error().message);
    }
    EraseDialog dialog(m_services.look, *preview, window);
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    const auto erased = store::eraseClient(m_services.database, client, dialog.typedName().toStdString(), today);
    if (!erased) {
        return sayFailure(window, tr("Nobody was erased."), erased.error().message);
    }
    Q_EMIT this->erased(client);
    Q_EMIT done(erasedText(*erased));
}

}  // namespace chalk::ui::records
