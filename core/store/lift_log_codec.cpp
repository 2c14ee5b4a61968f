#include "core/store/lift_log_codec.h"

#include <QtEndian>

#include <algorithm>
#include <limits>
#include <string>

namespace chalk::store {

namespace {

using plateau::LoggedExposure;

enum class LogMark : std::uint8_t { Swap = 1, Exposure = 2 };

constexpr std::uint8_t kIsSteady = 1;
constexpr std::uint8_t kHasPain = 2;
constexpr std::uint8_t kIsLighterWeek = 4;
constexpr std::uint8_t kFollowsPlan = 8;  ///< the single of the plan stands behind the repetitions
constexpr std::int32_t kNothing = -1;
constexpr int kUsualBytes = 45;  ///< of an exposure with two sets: how many rows there may be

template <class Number>
void put(QByteArray& log, Number value)
{
    const Number little = qToLittleEndian(value);
    log.append(reinterpret_cast<const char*>(&little), sizeof little);
}

/// Takes numbers off a log from its beginning.
class LogBytes {
public:
    explicit LogBytes(const QByteArray& log) : m_at(log.constData()), m_end(log.constData() + log.size()) {}

    [[nodiscard]] bool isAtEnd() const { return m_at == m_end; }
    [[nodiscard]] bool isShort() const { return m_isShort; }

    template <class Number>
    [[nodiscard]] Number take()
    {
        if (m_end - m_at < static_cast<std::ptrdiff_t>(sizeof(Number))) {
            m_isShort = true;
            m_at = m_end;
            return Number();
        }
        const Number value = qFromLittleEndian<Number>(m_at);
        m_at += sizeof(Number);
        return value;
    }

private:
    const char* m_at;
    const char* m_end;
    bool m_isShort = false;
};

LoggedExposure exposureFrom(LogBytes& bytes)
{
    LoggedExposure row;
    row.stage = static_cast<progression::Stage>(bytes.take<std::uint8_t>());
    const auto flags = bytes.take<std::uint8_t>();
    row.isSteady = (flags & kIsSteady) != 0;
    row.hasPain = (flags & kHasPain) != 0;
    row.isLighterWeek = (flags & kIsLighterWeek) != 0;
    row.date = base::Date::fromDays(bytes.take<std::int32_t>());
    row.targetLoad = base::Load::fromCenti(bytes.take<std::int32_t>());
    row.load = base::Load::fromCenti(bytes.take<std::int32_t>());
    row.targetSets = base::Sets(bytes.take<std::int32_t>());
    row.targetReps = base::Reps(bytes.take<std::int32_t>());
    row.targetRest = base::Seconds(bytes.take<std::int32_t>());
    const auto rest = bytes.take<std::int32_t>();
    const auto reserve = bytes.take<std::int32_t>();
    row.rest = rest == kNothing ? std::nullopt : std::optional(base::Seconds(rest));
    row.reserve = reserve == kNothing ? std::nullopt : std::optional<int>(reserve);
    const auto sets = bytes.take<std::uint16_t>();
    row.reps.reserve(std::min<std::size_t>(sets, kUsualBytes));
    for (int i = 0; i < sets && !bytes.isShort(); ++i) {
        row.reps.emplace_back(bytes.take<std::int32_t>());
    }
    if ((flags & kFollowsPlan) != 0) {
        row.planSingle = base::Load::fromCenti(bytes.take<std::int32_t>());
    }
    return row;
}

bool isSound(const LoggedExposure& row)
{
    return row.stage >= progression::Stage::BaseLoad && row.stage <= progression::Stage::RestCut && !row.reps.empty() && row.targetLoad > base::Load();
}

}  // namespace

void addExposure(QByteArray& log, const LoggedExposure& exposure)
{
    put(log, static_cast<std::uint8_t>(LogMark::Exposure));
    put(log, static_cast<std::uint8_t>(exposure.stage));
    put(log, static_cast<std::uint8_t>((exposure.isSteady ? kIsSteady : 0) | (exposure.hasPain ? kHasPain : 0) |
                                       (exposure.isLighterWeek ? kIsLighterWeek : 0) | (exposure.planSingle ? kFollowsPlan : 0)));
    for (const std::int32_t number : {exposure.date.daysSince1970(), exposure.targetLoad.centi(), exposure.load.centi(), exposure.targetSets.value(),
                                      exposure.targetReps.value(), exposure.targetRest.value(), exposure.rest ? exposure.rest->value() : kNothing,
                                      std::int32_t{exposure.reserve.value_or(kNothing)}}) {
        put(log, number);
    }
    const std::size_t sets = std::min<std::size_t>(exposure.reps.size(), std::numeric_limits<std::uint16_t>::max());
    put(log, static_cast<std::uint16_t>(sets));
    for (std::size_t i = 0; i < sets; ++i) {
        put(log, exposure.reps[i].value());
    }
    if (exposure.planSingle) {
        put(log, exposure.planSingle->centi());
    }
}

void addSwap(QByteArray& log)
{
    put(log, static_cast<std::uint8_t>(LogMark::Swap));
}

std::optional<std::vector<LoggedExposure>> loggedIn(const QByteArray& log)
{
    std::vector<LoggedExposure> rows;
    rows.reserve(static_cast<std::size_t>(log.size() / kUsualBytes));
    LogBytes bytes(log);
    int swaps = 0;
    while (!bytes.isAtEnd()) {
        const auto mark = bytes.take<std::uint8_t>();
        if (mark == static_cast<std::uint8_t>(LogMark::Swap)) {
            ++swaps;
            continue;
        }
        LoggedExposure row = exposureFrom(bytes);
        if (mark != static_cast<std::uint8_t>(LogMark::Exposure) || bytes.isShort() || !isSound(row)) {
            return std::nullopt;
        }
        row.variation = std::to_string(swaps);
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace chalk::store
