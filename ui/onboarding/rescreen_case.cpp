#include "ui/onboarding/rescreen_case.h"

#include "core/store/client_forms.h"
#include "core/store/history_reader.h"

namespace chalk::ui::onboarding {

namespace {

store::Result<std::vector<progression::RescreenLift>> rescreenLifts(store::Database& database, const store::ClientFile& file)
{
    std::vector<progression::RescreenLift> lifts;
    store::HistoryReader reader(database);
    for (const store::ClientLift& one : file.lifts) {
        const auto history = reader.read(one.lift.id);
        if (!history) {
            return tl::make_unexpected(history.error());
        }
        progression::RescreenLift lift{one.lift.pattern, one.lift.machine.state().flags.has(progression::Flag::Rescreen), std::nullopt};
        for (const store::HistoryEntry& entry : *history) {
            if (entry.rules.has(progression::Rule::P4)) {
                lift.releasedOn = entry.event.date;
            }
        }
        lifts.push_back(lift);
    }
    return lifts;
}

}  // namespace

store::Result<RescreenCase> readRescreenCase(store::Database& database, const store::ClientFile& file, const std::optional<screens::MovementScreen>& shown,
                                             base::Date today)
{
    RescreenCase rescreen;
    const auto all = store::ClientForms(database).movementScreens(file.client.id);
    if (!all) {
        return tl::make_unexpected(all.error());
    }
    std::optional<base::Date> lastFinished;
    for (std::size_t i = 0; i < all->size(); ++i) {
        const screens::MovementScreen& screen = (*all)[i];
        if (!screen.isFinished) {
            continue;
        }
        lastFinished = screen.date;
        if (!shown || i + 1 < all->size()) {
            rescreen.before = screen;
        }
    }
    if (!lastFinished) {
        return rescreen;
    }
    const auto lifts = rescreenLifts(database, file);
    if (!lifts) {
        return tl::make_unexpected(lifts.error());
    }
    rescreen.due = progression::rescreenDueOn(today, lastFinished, *lifts);
    return rescreen;
}

}  // namespace chalk::ui::onboarding
