// vCards: whatever the bytes are, the reading ends, nobody without a name comes out, and every fault has a place.

#include "core/exchange/vcard_reading.h"

#include <QByteArray>

#include <cstdint>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    chalk::tables::TableContent content;
    chalk::exchange::readVCards(QByteArray(reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(size)), content, 0, *chalk::base::Date::fromYmd(2026, 11, 25));
    for (const chalk::tables::CellFault& fault : content.faults) {
        if (fault.place.line < 1 || fault.place.column < 1 || fault.reason.empty()) {
            std::abort();
        }
    }
    for (const chalk::tables::ListedPerson& person : content.persons) {
        if (person.name.empty()) {
            std::abort();
        }
    }
    return 0;
}
