#include "ui/direction/direction_case.h"

#include <algorithm>

namespace chalk::ui::direction {

namespace {

using chalk::direction::BlockPlan;
using chalk::direction::PlanSingle;

}  // namespace

std::optional<chalk::direction::Direction> DirectionCase::suggested() const
{
    const auto found = std::ranges::find_if(offers, [](const DirectionOffer& offer) { return offer.fit.isSuggested; });
    return found == offers.end() ? std::nullopt : std::optional(found->fit.direction);
}

const DirectionLift* DirectionCase::lift(base::LiftId id) const
{
    const auto found = std::ranges::find_if(lifts, [id](const DirectionLift& one) { return one.lift.lift == id; });
    return found == lifts.end() ? nullptr : &*found;
}

std::optional<StartBar> startBarOf(const DirectionCase& client, const DirectionOffer& offer)
{
    if (client.isBlocked()) {
        return StartBar::Clearance;
    }
    if (offer.plan.wishes.lifts.empty()) {
        return StartBar::NothingLoaded;
    }
    const std::vector<AsideLift> aside = asideLifts(client, offer.plan, offer.singles, false);
    if (aside.size() < offer.plan.wishes.lifts.size()) {
        return std::nullopt;
    }
    const auto has = [&aside](AsideWhy why) { return std::ranges::find(aside, why, &AsideLift::why) != aside.end(); };
    return has(AsideWhy::NoSingle) ? StartBar::NoSingle : has(AsideWhy::NotLoaded) ? StartBar::NoneLoaded : StartBar::AllOnHold;
}

std::vector<AsideLift> asideLifts(const DirectionCase& client, const BlockPlan& plan, const std::vector<PlanSingle>& singles, bool isRunning)
{
    std::vector<AsideLift> aside;
    for (std::size_t i = 0; i < plan.wishes.lifts.size(); ++i) {
        const DirectionLift* lift = client.lift(plan.wishes.lifts[i].lift);
        if (lift == nullptr) {
            continue;
        }
        const progression::LiftState& state = lift->lift.machine.state();
        if (state.isOnHold) {
            aside.push_back({i, AsideWhy::OnHold});
        } else if (!progression::isLoaded(state.stage)) {
            aside.push_back({i, AsideWhy::NotLoaded});
        } else if (isRunning && !state.block) {
            const bool isKnown = lift->lift.single.has_value() || singles[i].load > base::Load();
            aside.push_back({i, isKnown ? AsideWhy::LeftThePlan : AsideWhy::NoSingle});
        } else if (!isRunning && singles[i].load == base::Load()) {
            aside.push_back({i, AsideWhy::NoSingle});
        }
    }
    return aside;
}

}  // namespace chalk::ui::direction
