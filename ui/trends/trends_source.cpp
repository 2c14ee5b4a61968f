#include "ui/trends/trends_source.h"

#include "core/store/client_reader.h"
#include "ui/common/formats.h"

namespace chalk::ui::trends {

StudioTrendsSource::StudioTrendsSource(store::Access access, lifts::Catalogue catalogue) : m_access(std::move(access)), m_catalogue(std::move(catalogue)) {}

store::Result<TrendsView> StudioTrendsSource::read(const TrendsAsk& ask)
{
    const auto database = store::Database::open(m_access, store::OpenMode::ReadOnly);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    const auto names = store::ClientReader(**database).names();
    if (!names) {
        return tl::make_unexpected(names.error());
    }
    TrendsView view;
    view.ask = ask;
    for (const auto& [id, name] : *names) {
        view.clients.emplace_back(id, common::qstring(name));
    }
    store::TrendsReader reader(**database, m_catalogue);
    if (ask.client.isNone()) {
        return reader.readAll(ask.day, ask.weeks).map([&view](checkin::StudioTrends trends) {
            view.trends = std::move(trends);
            return std::move(view);
        });
    }
    return reader.read(ask.client, ask.day, ask.weeks).map([&view](store::ClientTrends trends) {
        view.trends = std::move(trends);
        return std::move(view);
    });
}

}  // namespace chalk::ui::trends
