#include "core/exchange/event_json.h"
#include "core/exchange/lift_history_json.h"

#include <cstdlib>

namespace {

/// What was read can be written and read again.
bool isSameAgain(const chalk::exchange::LiftHistory& history)
{
    QJsonArray array;
    auto measure = history.setup.kit.measure;
    for (const auto& event : history.events) {
        array.append(chalk::exchange::toJson(event, measure));
        if (std::holds_alternative<chalk::progression::Swap>(event.body)) {
            return true;  // what sets are counted in follows the dates, not this order
        }
    }
    const auto again = chalk::exchange::readEvents(array, "events", measure);
    return again && *again == history.events;
}

}  // namespace

/// Text that is a lift's history or nearly so: read, written, read again, judged twice with one result.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    const QByteArray text(reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(size));
    const auto history = chalk::exchange::readLiftHistory(text);
    if (!history) {
        return 0;
    }
    auto machine = chalk::progression::LiftMachine::create(history->setup);
    if (!isSameAgain(*history)) {
        std::abort();
    }
    if (!machine) {
        return 0;
    }
    auto twin = *machine;
    const auto decisions = chalk::progression::replay(*machine, history->events);
    const auto again = chalk::progression::replay(twin, history->events);
    if (decisions.has_value() != again.has_value() || !(machine->state() == twin.state())) {
        std::abort();
    }
    return 0;
}
