#pragma once

#include "core/base/date.h"
#include "core/lifts/catalogue.h"
#include "core/store/database.h"

#include <QObject>

class QWidget;

namespace chalk::ui::common {
class Clock;
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::records {

/// What it works with. Everything outlives it.
struct ClientRecordsServices {
    store::Database& database;
    const lifts::Catalogue& catalogue;
    const common::Look& look;
    const common::Clock& clock;
    common::Dialogs& dialogs;
};

/// What a client may ask for about their records: a dossier of all that is kept, and to be erased.
class ClientRecords : public QObject {
    Q_OBJECT

public:
    explicit ClientRecords(ClientRecordsServices services, QObject* parent = nullptr);

    /// Asks for a folder and writes the dossier into a new folder in it.
    void makeDossier(base::ClientId client, QWidget* window);
    /// Shows what goes, asks for the name, and erases.
    void erase(base::ClientId client, QWidget* window);

Q_SIGNALS:
    /// Something was done, in words.
    void done(const QString& words);
    /// A client is gone: no page may show them any more.
    void erased(base::ClientId client);

private:
    void sayFailure(QWidget* window, const QString& headline, const QString& why);

    /// Makes it beside the window's thread and waits; after a moment the window says so, and it can be stopped.
    [[nodiscard]] store::Result<QStringList> dossierBeside(base::ClientId client, base::Date today, const QString& place, QWidget* window);

    ClientRecordsServices m_services;
    bool m_isMaking = false;
};

}  // namespace chalk::ui::records
