#include "core/exchange/catalogue_json.h"

#include <cstdlib>

/// Text that is a catalogue of lifts or nearly so: what is read holds together.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    const auto catalogue = chalk::exchange::readCatalogue(QByteArray(reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(size)));
    if (!catalogue) {
        return 0;
    }
    for (const auto& exercise : catalogue->exercises()) {
        if (catalogue->find(exercise.key) != &exercise) {
            std::abort();
        }
        for (const auto* other : catalogue->alternativesTo(exercise, {}, exercise.ruledOutBy)) {
            if (other == &exercise || other->pattern != exercise.pattern) {
                std::abort();
            }
        }
    }
    return 0;
}
