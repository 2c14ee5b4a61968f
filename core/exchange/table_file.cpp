#include "core/exchange/table_file.h"

#include "core/exchange/csv_records.h"
#include "core/exchange/vcard_reading.h"

#include <algorithm>
#include <array>

namespace chalk::exchange {

namespace {

constexpr int kSampleRows = 8;
constexpr int kRowsPerReport = 2000;
constexpr int kWhole = 1000;

std::vector<std::string> textsOfRecord(const CsvRecord& record)
{
    std::vector<std::string> texts;
    for (const CsvField& field : record) {
        texts.push_back(std::string(tables::trimmed({field.text.constData(), static_cast<std::size_t>(field.text.size())})));
    }
    return texts;
}

int thousandthsOf(const CsvRecords& records, const QByteArray& text)
{
    return static_cast<int>(records.position() * kWhole / std::max<qsizetype>(text.size(), 1));
}

void nameColumns(TableFile& file, std::size_t columns)
{
    for (std::size_t i = 0; i < columns; ++i) {
        file.headings.push_back("column " + std::to_string(i + 1));
    }
}

/// Adds a row of data to what is known of the columns.
void lookAtRow(TableFile& file, std::vector<tables::ColumnFacts>& facts, std::vector<std::string> texts)
{
    ++file.records;
    for (std::size_t i = 0; i < std::min(texts.size(), facts.size()); ++i) {
        facts[i].add(texts[i]);
    }
    if (static_cast<int>(file.sample.size()) < kSampleRows) {
        file.sample.push_back(std::move(texts));
    }
}

/// Headings from the first record, or made-up ones where it is data; then it is a row too.
void beginColumns(TableFile& file, std::vector<tables::ColumnFacts>& facts, std::vector<std::string> first)
{
    facts.resize(first.size());
    file.hasHeadings = !tables::isWithoutHeadings(first);
    if (file.hasHeadings) {
        file.headings = std::move(first);
    } else {
        nameColumns(file, first.size());
        lookAtRow(file, facts, std::move(first));
    }
}

CsvResult<TableFile> inspectColumns(TableFile file, const TableWishes& wishes, const ReadingProgress& progress)
{
    file.separator = wishes.separator.value_or(separatorOf(file.text));
    CsvRecords records(file.text, file.separator);
    std::vector<tables::ColumnFacts> facts;
    int rows = 0;
    while (const auto record = records.next()) {
        if (progress && ++rows % kRowsPerReport == 0 && !progress(thousandthsOf(records, file.text))) {
            return tl::make_unexpected(CsvFault());
        }
        if (!*record && facts.empty()) {
            return tl::make_unexpected(record->error());
        }
        if (!*record) {
            ++file.records;
        } else if (facts.empty()) {
            beginColumns(file, facts, textsOfRecord(**record));
        } else {
            lookAtRow(file, facts, textsOfRecord(**record));
        }
    }
    if (facts.empty()) {
        return tl::make_unexpected(CsvFault{1, 1, {}, "there is nothing in it"});
    }
    file.layout = tables::guessLayout(file.headings, facts, file.separator == ';', wishes.usualUnit);
    return file;
}

void addFault(tables::TableContent& content, int index, const CsvFault& fault)
{
    ++content.rows;
    content.faults.push_back({{index, fault.line, fault.column}, fault.field, fault.reason});
}

}  // namespace

char separatorOf(const QByteArray& text)
{
    constexpr std::array<char, 4> kSeparators{',', ';', '\t', '|'};
    constexpr int kLines = 12;
    char best = ',';
    int bestScore = 0;
    for (const char separator : kSeparators) {
        CsvRecords records(text, separator);
        std::size_t columns = 0;
        int score = 0;
        for (int i = 0; i < kLines; ++i) {
            const auto record = records.next();
            if (!record) {
                break;
            }
            columns = i == 0 && *record ? (*record)->size() : columns;
            score += *record && columns > 1 && (*record)->size() == columns ? static_cast<int>(columns) + 10 : -10;
        }
        if (score > bestScore) {
            bestScore = score;
            best = separator;
        }
    }
    return best;
}

CsvResult<TableFile> inspectTable(const QByteArray& bytes, const TableWishes& wishes, const ReadingProgress& progress)
{
    TableFile file;
    file.encoding = wishes.encoding.value_or(encodingOf(bytes));
    auto text = decoded(bytes, file.encoding);
    if (!text) {
        return tl::make_unexpected(text.error());
    }
    file.text = *std::move(text);
    if (isVCard(file.text)) {
        file.kind = TableKind::Cards;
        file.records = static_cast<int>(file.text.toUpper().count("BEGIN:VCARD"));
        return file;
    }
    return inspectColumns(std::move(file), wishes, progress);
}

bool readTable(const TableFile& file, const tables::TableLayout& layout, tables::TableContent& content, int index, base::Date today, const ReadingProgress& progress)
{
    if (file.kind == TableKind::Cards) {
        readVCards(file.text, content, index, today);
        return true;
    }
    tables::TableReader reader(content, layout, file.headings, index, today);
    CsvRecords records(file.text, file.separator);
    bool isHeading = file.hasHeadings;
    int rows = 0;
    std::vector<tables::Cell> row;
    while (auto record = records.next()) {
        if (progress && ++rows % kRowsPerReport == 0 && !progress(thousandthsOf(records, file.text))) {
            return false;
        }
        if (!*record) {
            addFault(content, index, record->error());
        } else if (!std::exchange(isHeading, false)) {
            row.clear();
            for (const CsvField& field : **record) {
                row.push_back({field.text.toStdString(), field.line, field.column});
            }
            reader.add(row);
        }
    }
    return true;
}

}  // namespace chalk::exchange
