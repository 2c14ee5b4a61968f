#pragma once

#include "core/base/id.h"
#include "core/base/quantity.h"

#include <QString>

#include <chrono>
#include <functional>
#include <optional>
#include <vector>

namespace chalk::ui::floor {

/// Whose rest it is and how long it is meant to be.
struct PlannedRest {
    base::ClientId client;
    QString firstName;
    QString lift;           ///< `Back squat`
    base::Seconds planned;  ///< 0 and more
    bool operator==(const PlannedRest&) const = default;
};

/// A rest as it stands at one moment.
struct Rest {
    PlannedRest plan;
    base::Seconds left;  ///< begun seconds count whole; 0 when the rest is over
    base::Seconds over;  ///< whole seconds past the planned rest; 0 before that
    bool isOver = false;
    bool isHeld = false;

    /// The part that is left, 1 to 0.
    [[nodiscard]] double partLeft() const;
    bool operator==(const Rest&) const = default;
};

/// The rests that are taken on the floor: one a client, several at once. They count down to the planned rest, then up. Nothing
/// here waits: what time it is, is asked of the clock that it is handed.
class RestTimers {
public:
    using Moment = std::chrono::steady_clock::time_point;
    using SteadyNow = std::function<Moment()>;

    explicit RestTimers(SteadyNow now = [] { return std::chrono::steady_clock::now(); });

    /// Starts a client's rest; one that was under way for the client is forgotten.
    void start(const PlannedRest& plan);
    /// False, and nothing is changed, where the client has no rest under way. The same goes for what follows.
    bool stop(base::ClientId client);
    /// Holds a rest where it stands, or lets a held one go on.
    bool holdOrGoOn(base::ClientId client);
    /// From the whole planned rest again; a held one runs then.
    bool restart(base::ClientId client);

    [[nodiscard]] bool has(base::ClientId client) const;
    [[nodiscard]] bool isEmpty() const { return m_taken.empty(); }
    /// As they stand now: those that are over first, the longest over at the head, then by what is left; equal ones as started.
    [[nodiscard]] std::vector<Rest> rests() const;
    /// The clients whose rest ended since this was last asked.
    [[nodiscard]] std::vector<base::ClientId> endedSinceAsked();
    /// How long it is until a figure of rests() changes, 1 to 1000 ms; nothing where none runs.
    [[nodiscard]] std::optional<std::chrono::milliseconds> untilNextChange() const;

private:
    struct Taken {
        PlannedRest plan;
        std::chrono::nanoseconds before{0};  ///< rested before the last hold
        std::optional<Moment> since;         ///< none where it is held
        bool isEndTold = false;
    };

    [[nodiscard]] Taken* find(base::ClientId client);
    [[nodiscard]] static std::chrono::nanoseconds elapsed(const Taken& taken, Moment now);

    SteadyNow m_now;
    std::vector<Taken> m_taken;
};

}  // namespace chalk::ui::floor
