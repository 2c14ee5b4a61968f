#include "core/store/lift_setup_rows.h"

#include "core/store/lift_codec.h"

namespace chalk::store {

std::optional<progression::LiftSetup> setupIn(const Statement& row, int first)
{
    progression::LiftSetup setup;
    setup.unit = unitOf(row.qtext(first));
    const auto region = lifts::regionOf(row.text(first + 1));
    auto kit = kitOf(row.qtext(first + 3));
    const auto stage = progression::stageOf(row.text(first + 4));
    auto policy = policyOf(row.qtext(first + 5), setup.unit);
    if (!region || !kit || !stage || !policy) {
        return std::nullopt;
    }
    setup.region = *region;
    setup.bodyMass = row.optionalLoad(first + 2);
    setup.kit = *std::move(kit);
    setup.startStage = *stage;
    setup.policy = *std::move(policy);
    return setup;
}

}  // namespace chalk::store
