#pragma once

#include "core/exchange/csv_rows.h"
#include "core/exchange/studio_json.h"
#include "core/exchange/studio_tables.h"
#include "core/exchange/table_row.h"

#include <QFile>
#include <QJsonObject>
#include <QSaveFile>

#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

namespace chalk::exchange {

/// Writes a studio into a folder as tables, client by client. Files are readable by their owner only and get their names at the end: what is
/// not finished leaves nothing behind.
class TablesWriter {
public:
    explicit TablesWriter(QString folder);
    ~TablesWriter();

    /// The object of the studio's own file.
    void addStudio(const QJsonObject& studio);
    /// The object of a client's file; clients come in their order.
    void addClient(const QJsonObject& client);
    /// The same where the object has no events of its lifts: they come from `lifts`, for a log may have very many.
    void addClient(const QJsonObject& client, const std::vector<DocumentLift>& lifts);
    /// Fails with the first file that could not be written.
    [[nodiscard]] StudioResult<void> finish();

private:
    /// A column, where its value stands in an object: in a field, or in a field of a field.
    struct Column {
        QLatin1String name;
        QLatin1String inner;
        CellKind kind;
    };
    struct OpenTable {
        std::unique_ptr<QSaveFile> file;
        std::vector<Column> columns;
        std::set<QLatin1String> outer;  ///< fields whose fields have columns
    };

    void begin(const StudioTable& table, const std::vector<const char*>& numbers);
    void add(const StudioTable& table, const std::vector<int>& numbers, const QJsonObject& object);
    /// The log of a lift; `numbers` are its own with a 0 behind them.
    void addEvents(std::vector<int> numbers, const DocumentLift& lift);
    void addExposure(const std::vector<int>& numbers, const DocumentEvent& entry, lifts::Measure measure);
    [[nodiscard]] static bool isListOf(const StudioTable& part, const QJsonValue& value);
    /// What of an object has no column and no table.
    [[nodiscard]] static QJsonObject restOf(const StudioTable& table, const OpenTable& open, QJsonObject object);
    void write(QSaveFile& file, const QByteArray& bytes);
    void write(const StudioTable& table, const std::string& rows);
    void keep(QSaveFile& file);

    QString m_folder;
    std::map<const StudioTable*, OpenTable> m_tables;
    TableRow m_exposureRow;
    TableRow m_setRow;
    QByteArray m_row;  ///< that is being written: one buffer for all
    std::string m_rows;  ///< the same of exposures and their sets
    std::optional<StudioFault> m_fault;
    int m_clients = 0;
};

/// Reads such a folder again, client by client, into the objects of the open format.
class TablesReader {
public:
    explicit TablesReader(QString folder) : m_folder(std::move(folder)) {}

    /// Whether a folder holds tables.
    [[nodiscard]] static bool isThere(const QString& folder);

    [[nodiscard]] StudioResult<QJsonObject> studio();
    /// Nothing behind the last client: rows that belong to none are a fault then.
    [[nodiscard]] StudioResult<std::optional<QJsonObject>> nextClient();
    /// A fault of the last object that was read, at the file, the line and the column that its value came from.
    [[nodiscard]] StudioFault placed(const JsonFault& fault) const;

private:
    struct OpenTable {
        std::unique_ptr<QFile> file;
        std::unique_ptr<CsvRows> records;
        std::vector<int> columns;    ///< where each column of the table stands in the file; -1 where it is not there
        std::vector<QString> paths;  ///< of the columns
        int more = -1;
        std::vector<int> numbers;  ///< where the numbers stand
        bool hasRow = false;
    };
    /// Where the objects of a list came from.
    struct ListPlace {
        const StudioTable* table = nullptr;
        std::vector<int> lines;
    };

    bool open(const StudioTable& table, const std::vector<const char*>& numbers);
    void advance(OpenTable& table, const StudioTable& about);
    [[nodiscard]] bool isNext(const OpenTable& table, const std::vector<int>& numbers) const;
    /// An object of the list `around`, and what it holds; `path` names it.
    [[nodiscard]] QJsonObject read(const StudioTable& table, const std::vector<int>& numbers, const std::string& path, ListPlace& around);
    [[nodiscard]] QJsonObject rowOf(const StudioTable& table, const OpenTable& open);
    void readParts(const StudioTable& table, const std::vector<int>& numbers, const std::string& path, QJsonObject& object);
    void fail(const StudioTable& table, int line, const std::string& column, const std::string& reason);
    void checkNothingLeft(const StudioTable& table);

    QString m_folder;
    std::map<const StudioTable*, OpenTable> m_tables;
    std::map<std::string, ListPlace> m_places;  ///< by the path of the list; the top is a list of one without a path
    std::optional<StudioFault> m_fault;
    int m_client = 0;
};

}  // namespace chalk::exchange
