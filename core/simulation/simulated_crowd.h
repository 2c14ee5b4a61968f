#pragma once

#include "core/lifts/catalogue.h"
#include "core/studio/studio_document.h"

namespace chalk::simulation {

/// A large studio for trying the program out: client after client, so that none but the present one is in memory.
class SimulatedCrowd {
public:
    /// `weeks` of history up to `today`.
    SimulatedCrowd(const lifts::Catalogue& catalogue, int weeks, base::Date today, std::uint64_t seed);

    [[nodiscard]] const std::vector<clients::Coach>& coaches() const { return m_coaches; }
    [[nodiscard]] const std::vector<studio::StudioEquipment>& equipment() const { return m_equipment; }
    /// Client number `number`, from 1.
    [[nodiscard]] studio::DocumentClient client(int number) const;

private:
    const lifts::Catalogue& m_catalogue;
    int m_weeks;
    base::Date m_today;
    std::uint64_t m_seed;
    std::vector<clients::Coach> m_coaches;
    std::vector<studio::StudioEquipment> m_equipment;
};

}  // namespace chalk::simulation
