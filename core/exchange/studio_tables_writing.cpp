#include "core/exchange/studio_tables_folder.h"

#include "core/exchange/entry_fields.h"
#include "core/exchange/lift_json.h"
#include "core/exchange/number_text.h"

#include <QDir>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <string_view>

namespace chalk::exchange {

namespace {

QByteArray jsonCell(const QJsonValue& value)
{
    return value.isArray() ? QJsonDocument(value.toArray()).toJson(QJsonDocument::Compact) : QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact);
}

/// Appends the field of a value, and answers whether it fits into its column; nothing is appended where it is of another kind, or would be read as
/// not there.
bool appendCell(QByteArray& row, const QJsonValue& value, CellKind kind)
{
    switch (kind) {
    case CellKind::Text:
    case CellKind::KeptText: {
        const QString text = value.toString();
        const bool fits = value.isString() && (kind == CellKind::KeptText || !text.isEmpty());
        appendCsvField(row, text.toUtf8());
        return fits;
    }
    case CellKind::Number:
        if (value.isDouble()) {
            appendNumber(row, value.toDouble());
        }
        return value.isDouble();
    case CellKind::Truth:
        if (value.isBool()) {
            row.append(value.toBool() ? "true" : "false");
        }
        return value.isBool();
    case CellKind::Json:
        if (value.isArray() || value.isObject()) {
            appendCsvField(row, jsonCell(value));
        }
        return value.isArray() || value.isObject();
    }
    return false;
}

QString fileOf(const StudioTable& table)
{
    return QLatin1String(table.name) + QStringLiteral(".csv");
}

void openForOwner(QSaveFile& file)
{
    if (file.open(QIODevice::WriteOnly)) {
        file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    }
}

const StudioTable& partOf(const StudioTable& table, std::string_view name)
{
    return *std::find_if(table.parts.begin(), table.parts.end(), [name](const StudioTable& part) { return part.name == name; });
}

const StudioTable& eventTable()
{
    return partOf(partOf(clientTable(), "lifts"), "events");
}

StudioFault cannotBeWritten(const QSaveFile& file)
{
    return {QFileInfo(file.fileName()).fileName(), {}, {{}, "cannot be written: " + file.errorString().toStdString()}};
}

}  // namespace

TablesWriter::TablesWriter(QString folder)
    : m_folder(std::move(folder)), m_exposureRow(eventTable()), m_setRow(partOf(eventTable(), "sets"))
{
    if (!QDir().mkpath(m_folder)) {
        m_fault = StudioFault{m_folder, {}, {{}, "cannot be made"}};
    }
    begin(studioTable(), {});
    begin(clientTable(), {});
}

TablesWriter::~TablesWriter() = default;

void TablesWriter::begin(const StudioTable& table, const std::vector<const char*>& numbers)
{
    OpenTable& open = m_tables[&table];
    for (const TableColumn& column : table.columns) {
        const QLatin1String path(column.path);
        const qsizetype point = path.indexOf(QLatin1Char('.'));
        open.columns.push_back(point < 0 ? Column{path, {}, column.kind} : Column{path.left(point), path.mid(point + 1), column.kind});
        if (point >= 0) {
            open.outer.insert(path.left(point));
        }
    }
    QByteArrayList names;
    for (const QByteArray& name : columnNames(table, numbers)) {
        names.append(name);
    }
    open.file = std::make_unique<QSaveFile>(m_folder + QLatin1Char('/') + fileOf(table));
    openForOwner(*open.file);
    write(*open.file, csvRow(names));
    std::vector<const char*> deeper;
    if (&table != &studioTable()) {
        deeper = numbers;
        deeper.push_back(table.number);
    }
    for (const StudioTable& part : table.parts) {
        begin(part, deeper);
    }
}

void TablesWriter::write(QSaveFile& file, const QByteArray& bytes)
{
    if (!m_fault && (!file.isOpen() || file.write(bytes) != bytes.size())) {
        m_fault = cannotBeWritten(file);
    }
}

void TablesWriter::write(const StudioTable& table, const std::string& rows)
{
    write(*m_tables.at(&table).file, QByteArray::fromRawData(rows.data(), static_cast<qsizetype>(rows.size())));
}

void TablesWriter::keep(QSaveFile& file)
{
    if (!m_fault && !file.commit()) {
        m_fault = cannotBeWritten(file);
    }
}

bool TablesWriter::isListOf(const StudioTable& part, const QJsonValue& value)
{
    return value.isArray() && (part.isAlways || !value.toArray().isEmpty());
}

QJsonObject TablesWriter::restOf(const StudioTable& table, const OpenTable& open, QJsonObject object)
{
    for (const StudioTable& part : table.parts) {
        if (isListOf(part, object.value(QLatin1String(part.list)))) {
            object.remove(QLatin1String(part.list));
        }
    }
    QByteArray unused;
    for (const Column& column : open.columns) {
        const QJsonValue value = object.value(column.name);
        QJsonObject inner = value.toObject();
        if (column.inner.isEmpty() ? appendCell(unused, value, column.kind) : inner.size() == 1 && appendCell(unused, inner.value(column.inner), column.kind)) {
            object.remove(column.name);
        } else if (!column.inner.isEmpty() && appendCell(unused, inner.value(column.inner), column.kind)) {
            inner.remove(column.inner);
            object.insert(column.name, inner);
        }
    }
    return object;
}

void TablesWriter::add(const StudioTable& table, const std::vector<int>& numbers, const QJsonObject& object)
{
    const OpenTable& open = m_tables.at(&table);
    m_row.resize(0);
    for (const int number : numbers) {
        appendNumber(m_row, number);
        m_row.append(',');
    }
    qsizetype fields = object.size();
    for (const QLatin1String name : open.outer) {
        fields += std::max(qsizetype{0}, object.value(name).toObject().size() - 1);
    }
    for (const Column& column : open.columns) {
        const QJsonValue value = object.value(column.name);
        fields -= appendCell(m_row, column.inner.isEmpty() ? value : value.toObject().value(column.inner), column.kind) ? 1 : 0;
        m_row.append(',');
    }
    std::vector<std::pair<const StudioTable*, QJsonArray>> lists;
    for (const StudioTable& part : table.parts) {
        const QJsonValue list = object.value(QLatin1String(part.list));
        if (isListOf(part, list)) {
            lists.emplace_back(&part, list.toArray());
            --fields;
        }
    }
    if (fields > 0) {
        appendCsvField(m_row, jsonCell(restOf(table, open, object)));
    }
    write(*open.file, m_row.append("\r\n"));
    for (const auto& [part, list] : lists) {
        std::vector<int> deeper = &table == &studioTable() ? std::vector<int>() : numbers;
        deeper.push_back(0);
        for (const QJsonValue& item : list) {
            ++deeper.back();
            add(*part, deeper, item.toObject());
        }
    }
}

void TablesWriter::addStudio(const QJsonObject& studio)
{
    add(studioTable(), {1}, studio);
}

void TablesWriter::addClient(const QJsonObject& client)
{
    add(clientTable(), {++m_clients}, client);
}

void TablesWriter::addClient(const QJsonObject& client, const std::vector<DocumentLift>& lifts)
{
    addClient(client);
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        addEvents({m_clients, static_cast<int>(i) + 1, 0}, lifts[i]);
    }
}

void TablesWriter::addEvents(std::vector<int> numbers, const DocumentLift& lift)
{
    const std::vector<lifts::Measure> measures = measuresOf(lift);
    for (std::size_t i = 0; i < lift.events.size(); ++i) {
        ++numbers.back();
        if (isPlainExposure(lift.events[i])) {
            addExposure(numbers, lift.events[i], measures[i]);
        } else {
            add(eventTable(), numbers, toJson(lift.events[i], measures[i]));
        }
    }
}

void TablesWriter::addExposure(const std::vector<int>& numbers, const DocumentEvent& entry, lifts::Measure measure)
{
    m_rows.clear();
    eachField(entry, m_exposureRow, [&](const std::vector<progression::SetRecord>& sets) {
        std::vector<int> deeper = numbers;
        deeper.push_back(0);
        for (const progression::SetRecord& set : sets) {
            ++deeper.back();
            eachField(set, measure, m_setRow);
            m_setRow.appendTo(m_rows, deeper);
        }
    });
    write(m_setRow.table(), m_rows);
    m_rows.clear();
    m_exposureRow.appendTo(m_rows, numbers);
    write(m_exposureRow.table(), m_rows);
}

StudioResult<void> TablesWriter::finish()
{
    QSaveFile readme(m_folder + QStringLiteral("/README.txt"));
    openForOwner(readme);
    write(readme, tablesReadme().toUtf8());
    keep(readme);
    for (const auto& [table, open] : m_tables) {
        keep(*open.file);
    }
    return m_fault ? StudioResult<void>(tl::make_unexpected(*m_fault)) : StudioResult<void>();
}

}  // namespace chalk::exchange
