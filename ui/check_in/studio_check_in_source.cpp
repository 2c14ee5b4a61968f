#include "ui/check_in/studio_check_in_source.h"

#include "core/store/check_in_reader.h"
#include "core/store/database.h"
#include "core/store/decision_writer.h"
#include "core/store/history_reader.h"
#include "ui/board/client_presenter.h"
#include "ui/common/settling.h"

#include <algorithm>
#include <utility>

namespace chalk::ui::check_in {

namespace {

/// When a lift last became another exercise; nothing where it never did.
store::Result<std::optional<base::Date>> lastSwapOf(store::Database& database, base::LiftId lift)
{
    const auto history = store::HistoryReader(database).read(lift);
    if (!history) {
        return tl::make_unexpected(history.error());
    }
    std::optional<base::Date> last;
    for (const store::HistoryEntry& entry : *history) {
        if (std::holds_alternative<progression::Swap>(entry.event.body)) {
            last = entry.event.date;
        }
    }
    return last;
}

}  // namespace

StudioCheckInSource::StudioCheckInSource(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc,
                                         common::Dialogs* dialogs)
    : m_database(database), m_access(database.access()), m_catalogue(catalogue), m_atUtc(std::move(atUtc)), m_dialogs(dialogs)
{
}

store::Result<std::vector<checkin::QueueEntry>> StudioCheckInSource::queue(base::Date day)
{
    auto database = store::Database::open(m_access, store::OpenMode::ReadOnly);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    return store::CheckInReader(**database, m_catalogue).queue(day);
}

store::Result<CheckInCase> StudioCheckInSource::page(base::ClientId client, base::Date day)
{
    auto database = store::Database::open(m_access, store::OpenMode::ReadOnly);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    store::CheckInReader reader(**database, m_catalogue);
    auto evidence = reader.page(client, day);
    if (!evidence) {
        return tl::make_unexpected(evidence.error());
    }
    CheckInCase page;
    page.evidence = *std::move(evidence);
    for (const checkin::LiftEvidence& lift : page.evidence.lifts) {
        auto forecast = reader.forecast(client, lift.lift, day);
        auto swap = lastSwapOf(**database, lift.lift);
        if (!forecast || !swap) {
            return tl::make_unexpected(!forecast ? forecast.error() : swap.error());
        }
        page.forecasts.push_back(*std::move(forecast));
        if (*swap) {
            page.swaps.push_back({lift.lift, **swap});
        }
    }
    return page;
}

store::Result<EditedLift> StudioCheckInSource::lift(base::ClientId client, base::LiftId lift, base::Date day)
{
    board::ClientPresenter presenter(m_database, m_catalogue, m_atUtc);
    auto read = presenter.read(client, day);
    if (!read) {
        return tl::make_unexpected(read.error());
    }
    const auto found = std::ranges::find(read->lifts, lift, &board::LiftCase::id);
    if (found == read->lifts.end()) {
        return store::storeError(store::StoreError::Kind::Refused, QStringLiteral("There is no such lift of this client."));
    }
    auto offers = presenter.swapOffers(*found, *read);
    if (!offers) {
        return tl::make_unexpected(offers.error());
    }
    return EditedLift{*found, *std::move(offers)};
}

store::Result<base::ActId> StudioCheckInSource::decide(const checkin::Decision& decision, const std::optional<progression::EventBody>& event,
                                                        base::ActId seenOfDay)
{
    const auto write = [&](const common::Settling& settling) {
        return store::DecisionWriter(m_database, m_atUtc).decide(decision, event, settling.seen ? std::nullopt : std::optional(seenOfDay));
    };
    const auto outcome = m_dialogs == nullptr ? write({}) : common::settled(*m_dialogs, m_database, {}, write);
    if (!outcome) {
        return tl::make_unexpected(outcome.error());
    }
    return outcome->act;
}

}  // namespace chalk::ui::check_in
