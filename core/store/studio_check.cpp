#include "core/store/studio_check.h"

#include "core/seal/text_seal.h"
#include "core/store/event_log.h"
#include "core/store/lift_cache.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>

#include <map>
#include <optional>

namespace chalk::store {

namespace {

/// A cache, with the columns that name a row of it.
struct CacheTable {
    const char* rows;   ///< what is selected of it, the key first
    int keyColumns;
    int idColumn;       ///< of the key: whose it is
    const char* words;  ///< what a row is
};

// A week whose work was taken back may be kept with nothing in it.
constexpr CacheTable kCacheTables[] = {{"SELECT * FROM lift_state", 1, 0, "the state of lift %1"},
                                       {"SELECT lift_id, cycle, stage, day FROM stage_reached", 3, 0, "a stage of lift %1"},
                                       {"SELECT monday, client_id, load_volume FROM client_week WHERE load_volume <> 0", 2, 1, "a week of client %1"},
                                       {"SELECT lift_id, log FROM lift_log", 1, 0, "the log of lift %1 for the check-in"}};

using CacheRows = std::map<QString, QString>;  ///< by key

/// A sealed text among them is that of the state of a lift, whose id comes first.
QString textOfColumns(Database& database, const QSqlQuery& row, int from, int to)
{
    QStringList parts;
    for (int column = from; column < to; ++column) {
        const QVariant value = row.value(column);
        QString text = value.typeId() == QMetaType::QByteArray ? QString::fromLatin1(value.toByteArray().toHex()) : value.toString();
        if (seal::isSealedText(text)) {
            text = database.vault().opened(database.vault().toRead("lift_state", row.value(0).toLongLong()), "state", text);
        }
        parts.append(text);
    }
    return parts.join(QLatin1Char('\x1f'));
}

/// Work that is rolled back whatever comes of it; inside of a transaction, to where it began.
class Trial {
public:
    Trial(Database& database, bool isInTransaction) : m_database(database)
    {
        if (isInTransaction) {
            run("SAVEPOINT trial");
        } else {
            m_transaction.emplace(database);
        }
    }
    ~Trial()
    {
        if (!m_transaction) {
            run("ROLLBACK TO SAVEPOINT trial");
        }
    }
    Trial(const Trial&) = delete;
    Trial& operator=(const Trial&) = delete;

private:
    void run(const char* statement)
    {
        QSqlQuery query(m_database.connection());
        if (!query.exec(QLatin1String(statement))) {
            m_database.failWith(query.lastError());
        }
    }

    Database& m_database;
    std::optional<Transaction> m_transaction;
};

/// Adds a fault, or counts it where enough were told.
class Telling {
public:
    Telling(StudioCheck& check, CheckPart part) : m_check(check), m_part(part) {}
    ~Telling()
    {
        if (m_count > kMostCheckFaults) {
            m_check.faults.push_back({m_part, QStringLiteral("and %1 more").arg(m_count - kMostCheckFaults)});
        }
    }
    Telling(const Telling&) = delete;
    Telling& operator=(const Telling&) = delete;

    void tell(const QString& message)
    {
        if (++m_count <= kMostCheckFaults) {
            m_check.faults.push_back({m_part, message});
        }
    }

private:
    StudioCheck& m_check;
    CheckPart m_part;
    int m_count = 0;
};

class Checking {
public:
    Checking(Database& database, const Progress& progress, bool isInTransaction = false)
        : m_database(database), m_progress(progress), m_isInTransaction(isInTransaction)
    {
    }

    Result<StudioCheck> run();

private:
    void tellAll(CheckPart part, const Result<QStringList>& faults);
    void checkIntegrity();
    void checkReferences();
    void checkReplay();
    [[nodiscard]] CacheRows rowsOf(const CacheTable& table);
    void compare(const CacheTable& table, const CacheRows& kept, const CacheRows& replayed, Telling& telling);
    [[nodiscard]] bool goesOn(int step) const { return !m_progress || m_progress(step, kSteps); }

    static constexpr int kSteps = 3;

    Database& m_database;
    const Progress& m_progress;
    bool m_isInTransaction;
    StudioCheck m_check;
};

void Checking::tellAll(CheckPart part, const Result<QStringList>& faults)
{
    Telling telling(m_check, part);
    if (!faults) {
        m_database.fail(faults.error());
        return;
    }
    for (const QString& fault : *faults) {
        telling.tell(fault);
    }
}

void Checking::checkIntegrity()
{
    tellAll(CheckPart::Integrity, m_database.engine().structureFaults(m_database.connection(), m_database.target()));
}

void Checking::checkReferences()
{
    tellAll(CheckPart::References, m_database.engine().referenceFaults(m_database.connection(), m_database.target()));
}

CacheRows Checking::rowsOf(const CacheTable& table)
{
    CacheRows found;
    QSqlQuery rows(m_database.connection());
    rows.setForwardOnly(m_database.engine().readsRowByRow());
    if (!rows.exec(QLatin1String(table.rows))) {
        m_database.failWith(rows.lastError());
        return found;
    }
    const int columns = rows.record().count();
    while (rows.next()) {
        found.emplace(textOfColumns(m_database, rows, 0, table.keyColumns), textOfColumns(m_database, rows, table.keyColumns, columns));
    }
    return found;
}

void Checking::compare(const CacheTable& table, const CacheRows& kept, const CacheRows& replayed, Telling& telling)
{
    const auto nameOf = [&table](const QString& key) { return QString::fromLatin1(table.words).arg(key.section(QLatin1Char('\x1f'), table.idColumn, table.idColumn)); };
    for (const auto& [key, row] : replayed) {
        const auto found = kept.find(key);
        if (found == kept.end()) {
            telling.tell(QStringLiteral("%1 is missing").arg(nameOf(key)));
        } else if (found->second != row) {
            telling.tell(QStringLiteral("%1 is not what its log says").arg(nameOf(key)));
        }
    }
    for (const auto& [key, row] : kept) {
        if (replayed.count(key) == 0) {
            telling.tell(QStringLiteral("%1 is kept though no log says so").arg(nameOf(key)));
        }
    }
}

/// Builds the caches anew on trial.
void Checking::checkReplay()
{
    Telling telling(m_check, CheckPart::Replay);
    std::vector<CacheRows> kept;
    std::vector<CacheRows> replayed;
    {
        const Trial trial(m_database, m_isInTransaction);
        for (const CacheTable& table : kCacheTables) {
            kept.push_back(rowsOf(table));
        }
        EventLog log(m_database);
        LiftCache(m_database, log).rebuildAll();
        for (const CacheTable& table : kCacheTables) {
            replayed.push_back(rowsOf(table));
        }
        m_check.lifts = static_cast<int>(replayed.front().size());
        if (m_database.failure()) {
            telling.tell(m_database.failure()->message);
            return;
        }
    }
    for (std::size_t i = 0; i < std::size(kCacheTables); ++i) {
        compare(kCacheTables[i], kept[i], replayed[i], telling);
    }
}

Result<StudioCheck> Checking::run()
{
    if (m_database.isReadOnly()) {
        return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 has to be opened for writing to be checked").arg(m_database.target()));
    }
    const std::pair<void (Checking::*)(), int> steps[] = {{&Checking::checkIntegrity, 0}, {&Checking::checkReferences, 1}, {&Checking::checkReplay, 2}};
    for (const auto& [step, number] : steps) {
        if (!goesOn(number)) {
            return storeError(StoreError::Kind::Cancelled, QStringLiteral("Stopped"));
        }
        (this->*step)();
        // A damaged file can end any statement: what it says is a fault, and the next part is still looked at.
        if (const auto& failure = m_database.failure(); failure && m_check.faults.empty()) {
            m_check.faults.push_back({static_cast<CheckPart>(number), failure->message});
        }
        if (m_database.failure() && number < 2) {
            const Snapshot forgotten(m_database);
        }
    }
    return m_check;
}

}  // namespace

Result<StudioCheck> checkStudio(Database& database, const Progress& progress)
{
    return Checking(database, progress).run();
}

Result<StudioCheck> checkTransaction(Database& database, const Progress& progress)
{
    return Checking(database, progress, true).run();
}

}  // namespace chalk::store
