#include "core/exchange/csv_rows.h"

#include <QBuffer>

#include <cstdlib>
#include <vector>

namespace {

void require(bool holds)
{
    if (!holds) {
        std::abort();
    }
}

}  // namespace

/// Text that is a table or nearly so: read, or refused with a place in it; what was read is written as CSV that reads back the same.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    QByteArray text(reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(size));
    const qsizetype lines = text.count('\n') + text.count('\r') + 1;  // either ends a line inside of quotes
    QBuffer file(&text);
    file.open(QIODevice::ReadOnly);
    chalk::exchange::CsvRows records(file);
    std::vector<QByteArrayList> read;
    while (records.next()) {
        require(records.fields().size() == records.columns().size() && records.line() >= 1 && records.line() <= lines);
        read.push_back(records.fields());
    }
    if (records.fault()) {
        require(records.fault()->line >= 0 && records.fault()->line <= lines + 1 && !records.fault()->reason.empty());
        return 0;
    }
    if (records.columns().size() < 2) {
        return 0;  // a line of one empty field is an empty line
    }
    QByteArray written = chalk::exchange::csvRow(records.columns());
    for (const QByteArrayList& fields : read) {
        written += chalk::exchange::csvRow(fields);
    }
    QBuffer again(&written);
    again.open(QIODevice::ReadOnly);
    chalk::exchange::CsvRows back(again);
    require(back.columns() == records.columns());
    for (const QByteArrayList& fields : read) {
        require(back.next() && back.fields() == fields);
    }
    require(!back.next() && !back.fault());
    return 0;
}
