#include "core/exchange/catalogue_json.h"
#include "core/exchange/studio_json.h"

#include <cstdlib>

namespace {

void require(bool holds)
{
    if (!holds) {
        std::abort();
    }
}

}  // namespace

/// A studio in the open format or nearly so, its own file and that of one client with a zero byte between: read, or refused with a reason; what was
/// read is written as files that say the same.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    static const chalk::lifts::Catalogue catalogue = chalk::exchange::builtInCatalogue();
    const QByteArray text(reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(size));
    const qsizetype cut = text.indexOf('\0');
    chalk::exchange::StudioFiles files{{chalk::exchange::studioFileName(), text.left(cut)}};
    if (cut >= 0) {
        files[QStringLiteral("clients/01-a.json")] = text.mid(cut + 1);
    }
    const auto studio = chalk::exchange::readStudio(files, catalogue);
    if (!studio) {
        require(!studio.error().fault.reason.empty());
        return 0;
    }
    const auto written = chalk::exchange::writeStudio(*studio);
    const auto back = chalk::exchange::readStudio(written, catalogue);
    require(back.has_value() && chalk::exchange::writeStudio(*back) == written);
    return 0;
}
