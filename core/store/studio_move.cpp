#include "core/store/studio_move.h"

#include "core/store/migrations.h"
#include "core/store/statement.h"
#include "core/store/unfinished_file.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <QSqlError>
#include <QSqlField>
#include <QSqlRecord>

#include <algorithm>
#include <vector>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

constexpr int kValuesAtOnce = 2000;  // of one statement
constexpr int kRowsAStep = 1000;

struct CopiedTable {
    QString name;
    QStringList columns;
    qint64 rows = 0;
    quint64 digest = 0;  ///< the same for the same rows in any order
};

/// The same value whichever engine it came from: numbers are whole and signed, an empty text is no missing one.
QVariant plainValue(const QSqlQuery& row, int column)
{
    if (row.isNull(column)) {
        return {};
    }
    const QVariant value = row.value(column);
    if (value.typeId() == QMetaType::QString) {
        const QString text = value.toString();
        return text.isEmpty() ? QVariant(QStringLiteral("")) : QVariant(text);
    }
    return value.typeId() == QMetaType::QByteArray ? value : QVariant(value.toLongLong());
}

void addToDigest(CopiedTable& table, const std::vector<QVariant>& values)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const QVariant& value : values) {
        const QByteArray bytes = value.typeId() == QMetaType::QByteArray ? value.toByteArray() : value.toString().toUtf8();
        const QByteArray head = QByteArray::number(value.isNull() ? 0 : value.typeId()) + ':' + QByteArray::number(bytes.size()) + ':';
        hash.addData(head);
        hash.addData(bytes);
    }
    quint64 number = 0;
    const QByteArray result = hash.result();
    for (int i = 0; i < 8; ++i) {
        number = number << 8U | static_cast<quint8>(result[i]);
    }
    table.digest += number;
}

class RowCopying {
public:
    RowCopying(Database& from, Database& to, const Progress& progress) : m_from(from), m_to(to), m_progress(progress) {}

    Result<qint64> run(const std::function<Result<void>()>& verify);

private:
    void findTables();
    void refuseStudio();
    void copy(CopiedTable& table);
    void flush(const CopiedTable& table);
    void compare(const CopiedTable& table);
    /// Reads all rows of a table, the oldest first: a row refers to older ones only.
    template <class TakeRow>
    void read(Database& database, const CopiedTable& table, TakeRow takeRow);
    void step();
    [[nodiscard]] bool hasFailed() const { return m_from.failure() || m_to.failure(); }

    Database& m_from;
    Database& m_to;
    const Progress& m_progress;
    std::vector<CopiedTable> m_tables;
    std::vector<std::vector<QVariant>> m_waiting;
    qint64 m_rows = 0;
    qint64 m_done = 0;
};

void RowCopying::step()
{
    if (++m_done % kRowsAStep != 0 || !m_progress) {
        return;
    }
    // Each row is read, and read back.
    if (!m_progress(static_cast<int>(m_done / kRowsAStep), static_cast<int>(2 * m_rows / kRowsAStep) + 1)) {
        m_to.fail({Kind::Cancelled, QStringLiteral("Stopped: nothing was moved")});
    }
}

void RowCopying::findTables()
{
    for (const QString& name : schemaTables()) {
        CopiedTable& table = m_tables.emplace_back();
        table.name = name;
        QSqlQuery columns(m_from.connection());
        if (!columns.exec(QStringLiteral("SELECT * FROM %1 LIMIT 0").arg(name))) {
            m_from.failWith(columns.lastError());
            return;
        }
        for (int i = 0; i < columns.record().count(); ++i) {
            table.columns.append(columns.record().fieldName(i));
        }
        columns.finish();
        Statement count(m_from, QStringLiteral("SELECT count(*) FROM %1").arg(name));
        table.rows = count.run() && count.next() ? count.integer(0) : 0;
        m_rows += table.rows;
    }
}

void RowCopying::refuseStudio()
{
    for (const char* table : {"studio", "coach", "client", "act"}) {
        Statement any(m_to, QStringLiteral("SELECT 1 FROM %1 LIMIT 1").arg(QLatin1String(table)));
        if (any.run() && any.next()) {
            m_to.fail({Kind::Refused, QStringLiteral("There is a studio in %1 already: it is left as it is").arg(m_to.target())});
        }
    }
    // What the steps of the schema put into a new database comes with the other rows.
    for (auto table = m_tables.rbegin(); table != m_tables.rend(); ++table) {
        Statement(m_to, QStringLiteral("DELETE FROM %1").arg(table->name)).run();
    }
}

template <class TakeRow>
void RowCopying::read(Database& database, const CopiedTable& table, TakeRow takeRow)
{
    if (hasFailed()) {
        return;
    }
    QSqlQuery rows(database.connection());
    rows.setForwardOnly(true);  // nothing else runs on its connection meanwhile
    if (!rows.exec(QStringLiteral("SELECT %1 FROM %2 ORDER BY 1").arg(table.columns.join(QLatin1String(", ")), table.name))) {
        database.failWith(rows.lastError());
        return;
    }
    while (!hasFailed() && rows.next()) {
        std::vector<QVariant> values;
        for (int i = 0; i < table.columns.size(); ++i) {
            values.push_back(plainValue(rows, i));
        }
        takeRow(std::move(values));
        step();
    }
    if (rows.lastError().isValid()) {
        database.failWith(rows.lastError());
    }
}

void RowCopying::flush(const CopiedTable& table)
{
    if (m_waiting.empty() || hasFailed()) {
        return;
    }
    const QString row = QLatin1Char('(') + QStringList(table.columns.size(), QStringLiteral("?")).join(QLatin1Char(',')) + QLatin1Char(')');
    QSqlQuery insert(m_to.connection());
    bool isDone = insert.prepare(QStringLiteral("INSERT INTO %1 (%2) VALUES ").arg(table.name, table.columns.join(QLatin1String(", "))) +
                                 QStringList(static_cast<qsizetype>(m_waiting.size()), row).join(QLatin1Char(',')));
    for (const std::vector<QVariant>& values : m_waiting) {
        for (const QVariant& value : values) {
            insert.addBindValue(value);
        }
    }
    isDone = isDone && insert.exec();
    if (!isDone) {
        m_to.failWith(insert.lastError());
    }
    m_waiting.clear();
}

void RowCopying::copy(CopiedTable& table)
{
    const std::size_t most = std::max<std::size_t>(1, kValuesAtOnce / static_cast<std::size_t>(table.columns.size()));
    read(m_from, table, [&](std::vector<QVariant> values) {
        addToDigest(table, values);
        m_waiting.push_back(std::move(values));
        if (m_waiting.size() >= most) {
            flush(table);
        }
    });
    flush(table);
    if (table.columns.contains(QLatin1String("id"))) {
        for (const QString& statement : m_to.engine().afterCopying(table.name)) {
            Statement(m_to, statement).run();
        }
    }
}

void RowCopying::compare(const CopiedTable& table)
{
    CopiedTable written = table;
    written.digest = 0;
    qint64 rows = 0;
    read(m_to, written, [&](const std::vector<QVariant>& values) {
        addToDigest(written, values);
        ++rows;
    });
    if (!hasFailed() && (rows != table.rows || written.digest != table.digest)) {
        m_to.fail({Kind::Damaged, QStringLiteral("What was written to %1 is not what was read: %2 differs. Nothing was moved").arg(m_to.target(), table.name)});
    }
}

Result<qint64> RowCopying::run(const std::function<Result<void>()>& verify)
{
    const Snapshot snapshot(m_from);
    Transaction transaction(m_to);
    findTables();
    refuseStudio();
    for (CopiedTable& table : m_tables) {
        copy(table);
    }
    for (const CopiedTable& table : m_tables) {
        compare(table);
    }
    if (m_from.failure()) {
        return tl::make_unexpected(*m_from.failure());
    }
    if (const auto verified = hasFailed() || !verify ? Result<void>() : verify(); !verified) {
        return tl::make_unexpected(verified.error());
    }
    if (const auto committed = transaction.commit(); !committed) {
        return tl::make_unexpected(committed.error());
    }
    m_to.engine().settle(m_to.connection());
    return m_rows;
}

}  // namespace

Result<qint64> copyRows(Database& from, Database& to, const Progress& progress, const std::function<Result<void>()>& verify)
{
    if (to.isOnServer() && from.vault().wrapped()) {
        return storeError(Kind::Refused, QStringLiteral("%1 is sealed by a passphrase, and a server's studio is guarded by its roles: take the passphrase away first").arg(from.target()));
    }
    return RowCopying(from, to, progress).run(verify);
}

Result<qint64> copyRowsToFile(Database& from, const QString& file, const Progress& progress)
{
    if (QFileInfo::exists(file)) {
        return storeError(Kind::Refused, QStringLiteral("%1 is there already").arg(file));
    }
    UnfinishedFile unfinished(file);
    if (const auto made = unfinished.make(); !made) {
        return tl::make_unexpected(made.error());
    }
    // The connection is closed behind the copying: all of it is in the one file.
    return Database::open(unfinished.path(), OpenMode::CreateIfMissing)
        .and_then([&](const std::unique_ptr<Database>& to) { return copyRows(from, *to, progress); })
        .and_then([&](qint64 rows) { return unfinished.finish().map([rows] { return rows; }); });
}

}  // namespace chalk::store
