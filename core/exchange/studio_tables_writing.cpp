#include "core/exchange/studio_tables_folder.h"

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QLocale>

#include <cmath>

namespace chalk::exchange {

namespace {

constexpr double kMostExact = 9e15;

QByteArray jsonCell(const QJsonValue& value)
{
    return value.isArray() ? QJsonDocument(value.toArray()).toJson(QJsonDocument::Compact) : QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact);
}

QByteArray numberCell(double value)
{
    const bool isWhole = value == std::floor(value) && std::abs(value) < kMostExact;
    return isWhole ? QByteArray::number(static_cast<qint64>(value)) : QString::number(value, 'g', QLocale::FloatingPointShortest).toUtf8();
}

/// The text of a cell; nothing where the value is of another kind than the column, or would be read as not there.
std::optional<QByteArray> cellOf(const QJsonValue& value, CellKind kind)
{
    switch (kind) {
    case CellKind::Text:
        return value.isString() && !value.toString().isEmpty() ? std::optional(value.toString().toUtf8()) : std::nullopt;
    case CellKind::KeptText:
        return value.isString() ? std::optional(value.toString().toUtf8()) : std::nullopt;
    case CellKind::Number:
        return value.isDouble() ? std::optional(numberCell(value.toDouble())) : std::nullopt;
    case CellKind::Truth:
        return value.isBool() ? std::optional(QByteArray(value.toBool() ? "true" : "false")) : std::nullopt;
    case CellKind::Json:
        return value.isArray() || value.isObject() ? std::optional(jsonCell(value)) : std::nullopt;
    }
    return std::nullopt;
}

/// Takes the value of a column out of `rest` and answers its cell; what does not fit stays.
QByteArray takeCell(QJsonObject& rest, const TableColumn& column)
{
    const QString path = QLatin1String(column.path);
    const qsizetype point = path.indexOf(QLatin1Char('.'));
    if (point < 0) {
        const auto cell = cellOf(rest.value(path), column.kind);
        if (cell) {
            rest.remove(path);
        }
        return cell.value_or(QByteArray());
    }
    const QString outer = path.left(point);
    QJsonObject inner = rest.value(outer).toObject();
    const auto cell = cellOf(inner.value(path.mid(point + 1)), column.kind);
    if (cell) {
        inner.remove(path.mid(point + 1));
        if (inner.isEmpty()) {
            rest.remove(outer);
        } else {
            rest.insert(outer, inner);
        }
    }
    return cell.value_or(QByteArray());
}

QString fileOf(const StudioTable& table)
{
    return QLatin1String(table.name) + QStringLiteral(".csv");
}

}  // namespace

TablesWriter::TablesWriter(QString folder) : m_folder(std::move(folder))
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
    QByteArrayList names;
    for (const QByteArray& name : columnNames(table, numbers)) {
        names.append(name);
    }
    write(fileOf(table), csvRow(names));
    std::vector<const char*> deeper;
    if (&table != &studioTable()) {
        deeper = numbers;
        deeper.push_back(table.number);
    }
    for (const StudioTable& part : table.parts) {
        begin(part, deeper);
    }
}

void TablesWriter::write(const QString& name, const QByteArray& bytes)
{
    if (m_fault) {
        return;
    }
    std::unique_ptr<QSaveFile>& file = m_files[name];
    if (!file) {
        file = std::make_unique<QSaveFile>(m_folder + QLatin1Char('/') + name);
        if (file->open(QIODevice::WriteOnly)) {
            file->setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
        }
    }
    if (!file->isOpen() || file->write(bytes) != bytes.size()) {
        m_fault = StudioFault{name, {}, {{}, "cannot be written: " + file->errorString().toStdString()}};
    }
}

void TablesWriter::add(const StudioTable& table, const std::vector<int>& numbers, const QJsonObject& object)
{
    QJsonObject rest = object;
    std::vector<std::pair<const StudioTable*, QJsonArray>> lists;
    for (const StudioTable& part : table.parts) {
        const QJsonValue list = rest.value(QLatin1String(part.list));
        if (list.isArray() && (part.isAlways || !list.toArray().isEmpty())) {
            lists.emplace_back(&part, list.toArray());
            rest.remove(QLatin1String(part.list));
        }
    }
    QByteArrayList cells;
    for (const int number : numbers) {
        cells.append(QByteArray::number(number));
    }
    for (const TableColumn& column : table.columns) {
        cells.append(takeCell(rest, column));
    }
    cells.append(rest.isEmpty() ? QByteArray() : jsonCell(rest));
    write(fileOf(table), csvRow(cells));
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

StudioResult<void> TablesWriter::finish()
{
    write(QStringLiteral("README.txt"), tablesReadme().toUtf8());
    for (const auto& [name, file] : m_files) {
        if (!m_fault && !file->commit()) {
            m_fault = StudioFault{name, {}, {{}, "cannot be written: " + file->errorString().toStdString()}};
        }
    }
    return m_fault ? StudioResult<void>(tl::make_unexpected(*m_fault)) : StudioResult<void>();
}

}  // namespace chalk::exchange
