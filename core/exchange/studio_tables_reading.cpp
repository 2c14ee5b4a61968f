#include "core/exchange/studio_tables_folder.h"

#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <array>
#include <charconv>
#include <string_view>
#include <system_error>

namespace chalk::exchange {

namespace {

QString tableFile(const StudioTable& table)
{
    return QLatin1String(table.name) + QStringLiteral(".csv");
}

/// Qt's reading is the measure; what it takes of plain numbers is read more quickly.
std::optional<double> numberIn(const QByteArray& text)
{
    double number = 0;
    const auto read = std::from_chars(text.constBegin(), text.constEnd(), number);
    if (read.ec == std::errc() && read.ptr == text.constEnd()) {
        return number;
    }
    bool isNumber = false;
    number = text.toDouble(&isNumber);
    return isNumber ? std::optional(number) : std::nullopt;
}

/// Nothing, and `reason`, where the text is none of that kind.
std::optional<QJsonValue> valueOf(const QByteArray& text, CellKind kind, std::string& reason)
{
    switch (kind) {
    case CellKind::Text:
    case CellKind::KeptText:
        return QJsonValue(QString::fromUtf8(text));
    case CellKind::Number: {
        const std::optional<double> number = numberIn(text);
        reason = "must be a number with a decimal point";
        return number ? std::optional(QJsonValue(*number)) : std::nullopt;
    }
    case CellKind::Truth:
        reason = "must be true or false";
        return text == "true" || text == "false" ? std::optional(QJsonValue(text == "true")) : std::nullopt;
    case CellKind::Json: {
        const auto parsed = parseJson(text);
        reason = parsed ? std::string() : parsed.error().field + " " + parsed.error().reason;
        return parsed ? std::optional(*parsed) : std::nullopt;
    }
    }
    return std::nullopt;
}

void putAt(QJsonObject& object, const QString& path, const QJsonValue& value)
{
    const qsizetype point = path.indexOf(QLatin1Char('.'));
    if (point < 0) {
        object.insert(path, value);
        return;
    }
    QJsonObject inner = object.value(path.left(point)).toObject();
    inner.insert(path.mid(point + 1), value);
    object.insert(path.left(point), inner);
}

bool isNumber(const QByteArray& field, int number)
{
    constexpr std::size_t kLongest = 12;
    std::array<char, kLongest> digits{};
    const char* end = std::to_chars(digits.begin(), digits.end(), number).ptr;
    return std::string_view(field.constData(), static_cast<std::size_t>(field.size())) == std::string_view(digits.data(), static_cast<std::size_t>(end - digits.data()));
}

/// Adds the fields of `more`, those of objects that are there already too.
void addMore(QJsonObject& object, const QJsonObject& more)
{
    for (auto field = more.begin(); field != more.end(); ++field) {
        const QJsonObject inner = object.value(field.key()).toObject();
        if (inner.isEmpty() || !field.value().isObject()) {
            object.insert(field.key(), field.value());
            continue;
        }
        QJsonObject both = inner;
        addMore(both, field.value().toObject());
        object.insert(field.key(), both);
    }
}

/// The column that the value of a path inside of an object came from; empty where it has none of its own.
std::string columnOf(const StudioTable& table, const std::string& rest)
{
    for (const TableColumn& column : table.columns) {
        const std::string path = column.path;
        if (rest.rfind(path, 0) == 0 && (rest.size() == path.size() || rest[path.size()] == '.' || rest[path.size()] == '[')) {
            return column.name;
        }
    }
    return {};
}

/// A fault of a value inside of the object of a row.
StudioFault faultIn(const StudioTable& table, int line, const JsonFault& inside)
{
    const std::string column = columnOf(table, inside.field);
    return {tableFile(table), JsonPlace{line, 1}, {column.empty() ? inside.field : column, inside.reason}};
}

}  // namespace

bool TablesReader::isThere(const QString& folder)
{
    return QFileInfo::exists(folder + QStringLiteral("/studio.csv")) && QFileInfo::exists(folder + QStringLiteral("/clients.csv"));
}

void TablesReader::fail(const StudioTable& table, int line, const std::string& column, const std::string& reason)
{
    if (!m_fault) {
        m_fault = StudioFault{tableFile(table), JsonPlace{line, 1}, {column, reason}};
    }
}

bool TablesReader::open(const StudioTable& table, const std::vector<const char*>& numbers)
{
    OpenTable open;
    open.file = std::make_unique<QFile>(m_folder + QLatin1Char('/') + tableFile(table));
    if (!open.file->open(QIODevice::ReadOnly)) {
        fail(table, 1, {}, "cannot be read: " + open.file->errorString().toStdString());
        return false;
    }
    open.records = std::make_unique<CsvRows>(*open.file);
    const QByteArrayList& columns = open.records->columns();
    QByteArrayList known;
    for (const QByteArray& name : columnNames(table, numbers)) {
        known.append(name);
        if (const int at = static_cast<int>(columns.indexOf(name)); known.size() <= static_cast<qsizetype>(numbers.size()) + 1) {
            open.numbers.push_back(at);
        } else {
            open.columns.push_back(at);
        }
    }
    open.more = open.columns.back();
    open.columns.pop_back();
    for (const QByteArray& name : columns) {
        if (!known.contains(name)) {
            fail(table, 1, name.toStdString(), "is no column of this table");
        }
    }
    if (std::count(open.numbers.begin(), open.numbers.end(), -1) > 0) {
        fail(table, 1, {}, "a column of numbers is missing: " + QByteArray(table.number).toStdString() + " and those of the tables around it");
    }
    advance(open, table);
    for (const TableColumn& column : table.columns) {
        open.paths.push_back(QLatin1String(column.path));
    }
    m_tables[&table] = std::move(open);
    std::vector<const char*> deeper;
    if (&table != &studioTable()) {
        deeper = numbers;
        deeper.push_back(table.number);
    }
    return std::all_of(table.parts.begin(), table.parts.end(), [&](const StudioTable& part) { return this->open(part, deeper); });
}

void TablesReader::advance(OpenTable& table, const StudioTable& about)
{
    table.hasRow = !m_fault && table.records->next();
    if (const auto& fault = table.records->fault()) {
        fail(about, fault->line, fault->field, fault->reason);
    }
}

bool TablesReader::isNext(const OpenTable& table, const std::vector<int>& numbers) const
{
    if (m_fault || !table.hasRow || table.numbers.size() != numbers.size()) {
        return false;
    }
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        if (!isNumber(table.records->fields()[table.numbers[i]], numbers[i])) {
            return false;
        }
    }
    return true;
}

QJsonObject TablesReader::rowOf(const StudioTable& table, const OpenTable& open)
{
    QJsonObject object;
    const QByteArrayList& fields = open.records->fields();
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const TableColumn& column = table.columns[i];
        const QByteArray text = open.columns[i] < 0 ? QByteArray() : fields[open.columns[i]];
        if (text.isEmpty() && column.kind != CellKind::KeptText) {
            continue;
        }
        std::string reason;
        if (const auto value = valueOf(text, column.kind, reason)) {
            putAt(object, open.paths[i], *value);
        } else {
            fail(table, open.records->line(), column.name, reason);
        }
    }
    if (open.more >= 0 && !fields[open.more].isEmpty()) {
        std::string reason;
        const auto more = valueOf(fields[open.more], CellKind::Json, reason);
        if (more && more->isObject()) {
            addMore(object, more->toObject());
        } else {
            fail(table, open.records->line(), kMoreColumn, reason.empty() ? "must be an object" : reason);
        }
    }
    return object;
}

QJsonObject TablesReader::read(const StudioTable& table, const std::vector<int>& numbers, const std::string& path, ListPlace& around)
{
    OpenTable& open = m_tables[&table];
    QJsonObject object = rowOf(table, open);
    around.table = &table;
    around.lines.push_back(open.records->line());
    advance(open, table);
    readParts(table, numbers, path, object);
    return object;
}

void TablesReader::readParts(const StudioTable& table, const std::vector<int>& numbers, const std::string& path, QJsonObject& object)
{
    for (const StudioTable& part : table.parts) {
        std::vector<int> deeper = &table == &studioTable() ? std::vector<int>() : numbers;
        deeper.push_back(1);
        QJsonArray list;
        const OpenTable& open = m_tables[&part];
        if (isNext(open, deeper)) {
            const std::string listPath = (path.empty() ? "" : path + ".") + part.list;
            ListPlace& place = m_places[listPath];
            for (; isNext(open, deeper); ++deeper.back()) {
                const std::string itemPath = part.parts.empty() ? std::string() : listPath + "[" + std::to_string(list.size()) + "]";
                list.append(read(part, deeper, itemPath, place));
            }
        }
        if (part.isAlways || !list.isEmpty()) {
            object.insert(QLatin1String(part.list), list);
        }
    }
}

StudioResult<QJsonObject> TablesReader::studio()
{
    m_tables.clear();
    m_places.clear();
    m_client = 0;
    if (open(studioTable(), {}) && open(clientTable(), {}) && !isNext(m_tables[&studioTable()], {1})) {
        fail(studioTable(), 2, studioTable().number, "must be 1: the studio itself");
    }
    const QJsonObject object = m_fault ? QJsonObject() : read(studioTable(), {1}, {}, m_places[{}]);
    if (!m_fault) {
        checkNothingLeft(studioTable());
    }
    return m_fault ? StudioResult<QJsonObject>(tl::make_unexpected(*m_fault)) : StudioResult<QJsonObject>(object);
}

void TablesReader::checkNothingLeft(const StudioTable& table)
{
    if (const OpenTable& open = m_tables[&table]; open.hasRow) {
        fail(table, open.records->line(), table.number,
             "belongs to no row around it, or is out of order: numbers count from 1, and rows of a client stand together");
    }
    for (const StudioTable& part : table.parts) {
        checkNothingLeft(part);
    }
}

StudioResult<std::optional<QJsonObject>> TablesReader::nextClient()
{
    m_places.clear();
    std::optional<QJsonObject> client;
    if (isNext(m_tables[&clientTable()], {m_client + 1})) {
        client = read(clientTable(), {++m_client}, {}, m_places[{}]);
    } else if (!m_fault) {
        checkNothingLeft(clientTable());
    }
    return m_fault ? StudioResult<std::optional<QJsonObject>>(tl::make_unexpected(*m_fault)) : StudioResult<std::optional<QJsonObject>>(std::move(client));
}

StudioFault TablesReader::placed(const JsonFault& fault) const
{
    // Of the objects on the way to the value, the deepest one that is a row: the `[` before each is the end of its list's path.
    for (std::size_t bracket = fault.field.rfind('['); bracket != std::string::npos; bracket = bracket == 0 ? bracket - 1 : fault.field.rfind('[', bracket - 1)) {
        const auto list = m_places.find(fault.field.substr(0, bracket));
        const std::size_t close = fault.field.find(']', bracket);
        std::size_t index = 0;
        std::from_chars(fault.field.data() + bracket + 1, fault.field.data() + fault.field.size(), index);
        if (list != m_places.end() && close != std::string::npos && index < list->second.lines.size()) {
            return faultIn(*list->second.table, list->second.lines[index], {fault.field.substr(std::min(fault.field.size(), close + 2)), fault.reason});
        }
    }
    const auto top = m_places.find({});
    return top == m_places.end() ? StudioFault{tableFile(clientTable()), {}, fault} : faultIn(*top->second.table, top->second.lines.front(), fault);
}

}  // namespace chalk::exchange
