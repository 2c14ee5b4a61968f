#include "core/exchange/studio_tables_folder.h"

#include <QDir>
#include <QFileInfo>
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

StudioFault cannotBeWritten(const QSaveFile& file)
{
    return {QFileInfo(file.fileName()).fileName(), {}, {{}, "cannot be written: " + file.errorString().toStdString()}};
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
    OpenTable& open = m_tables[&table];
    for (int column = 0; column < static_cast<int>(table.columns.size()); ++column) {
        const QString path = QLatin1String(table.columns[static_cast<std::size_t>(column)].path);
        const qsizetype point = path.indexOf(QLatin1Char('.'));
        if (point < 0) {
            open.fields[path].column = column;
        } else {
            open.fields[path.left(point)].inner.emplace_back(path.mid(point + 1), column);
        }
    }
    for (const StudioTable& part : table.parts) {
        open.fields[QLatin1String(part.list)].part = &part;
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

void TablesWriter::keep(QSaveFile& file)
{
    if (!m_fault && !file.commit()) {
        m_fault = cannotBeWritten(file);
    }
}

QJsonValue TablesWriter::place(const StudioTable& table, const Field& field, const QJsonValue& value, QByteArray* cells)
{
    const auto take = [&](int column, const QJsonValue& one) {
        auto cell = cellOf(one, table.columns[static_cast<std::size_t>(column)].kind);
        if (cell) {
            cells[column] = *std::move(cell);
        }
        return cell.has_value();
    };
    if (field.column >= 0) {
        return take(field.column, value) ? QJsonValue(QJsonValue::Undefined) : value;
    }
    if (field.inner.empty() || !value.isObject()) {
        return value;
    }
    QJsonObject rest = value.toObject();
    const bool wasEmpty = rest.isEmpty();
    for (const auto& [name, column] : field.inner) {
        if (take(column, rest.value(name))) {
            rest.remove(name);
        }
    }
    return rest.isEmpty() && !wasEmpty ? QJsonValue(QJsonValue::Undefined) : QJsonValue(rest);
}

void TablesWriter::add(const StudioTable& table, const std::vector<int>& numbers, const QJsonObject& object)
{
    const OpenTable& open = m_tables.at(&table);
    QByteArrayList cells(static_cast<qsizetype>(numbers.size() + table.columns.size()) + 1);
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        cells[static_cast<qsizetype>(i)] = QByteArray::number(numbers[i]);
    }
    QJsonObject rest;
    std::vector<std::pair<const StudioTable*, QJsonArray>> lists;
    for (auto entry = object.begin(); entry != object.end(); ++entry) {
        const QString name = entry.key();
        const auto field = open.fields.constFind(name);
        const QJsonValue value = entry.value();
        if (field == open.fields.constEnd()) {
            rest.insert(name, value);
        } else if (field->part != nullptr && value.isArray() && (field->part->isAlways || !value.toArray().isEmpty())) {
            lists.emplace_back(field->part, value.toArray());
        } else if (const QJsonValue left = place(table, *field, value, cells.data() + numbers.size()); !left.isUndefined()) {
            rest.insert(name, left);
        }
    }
    if (!rest.isEmpty()) {
        cells.back() = jsonCell(rest);
    }
    write(*open.file, csvRow(cells));
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
