// A list of people or of what they did, in any encoding, from the bytes to the content: whatever they are, the reading ends and every fault has a place.

#include "core/exchange/table_file.h"

#include <QByteArray>

#include <cstdint>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    const QByteArray text(reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(size));
    const auto file = chalk::exchange::inspectTable(text);
    if (!file) {
        return 0;
    }
    chalk::tables::TableContent content;
    chalk::exchange::readTable(*file, file->layout, content, 0, *chalk::base::Date::fromYmd(2026, 11, 25));
    for (const chalk::tables::CellFault& fault : content.faults) {
        if (fault.place.line < 1 || fault.place.column < 1 || fault.reason.empty()) {
            std::abort();
        }
    }
    for (const chalk::tables::ListedSet& set : content.sets) {
        if (set.count < 1 || set.amount < 0 || set.rir < -1 || set.restSeconds < -1 || static_cast<std::size_t>(set.person) >= content.persons.size()) {
            std::abort();
        }
    }
    return 0;
}
