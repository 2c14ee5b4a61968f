#include "core/store/change_feed.h"

#include "core/store/statement.h"

#include <QSqlDriver>
#include <QVariant>

#include <algorithm>
#include <set>

namespace chalk::store {

namespace {

constexpr int kMostNews = 20;

}  // namespace

ChangeFeed::ChangeFeed(Database& database) : m_database(database), m_mark(database.engine().markOfOthers(database.connection())), m_lastAct(lastAct()) {}

std::int64_t ChangeFeed::lastAct()
{
    const Snapshot snapshot(m_database);
    Statement row(m_database, QStringLiteral("SELECT max(id) FROM act"));
    return row.run() && row.next() ? row.integer(0) : 0;
}

bool ChangeFeed::listen(std::function<void()> heard)
{
    const QString channel = m_database.engine().newsChannel();
    QSqlDriver* driver = m_database.connection().driver();
    if (channel.isEmpty()) {
        return true;
    }
    driver->disconnect(&m_context);
    QObject::connect(driver, &QSqlDriver::notification, &m_context,
                     [heard = std::move(heard)](const QString& /*name*/, QSqlDriver::NotificationSource /*source*/, const QVariant& news) {
                         if (!news.toString().startsWith(runToken())) {
                             heard();
                         }
                     });
    return driver->subscribedToNotifications().contains(channel) || driver->subscribeToNotification(channel);
}

bool ChangeFeed::look()
{
    const auto mark = m_database.engine().markOfOthers(m_database.connection());
    const bool isChanged = mark && m_mark && *mark != *m_mark;
    m_mark = mark ? mark : m_mark;
    return isChanged;
}

Result<std::vector<ActRecord>> ChangeFeed::news()
{
    std::set<std::int64_t> others;
    std::int64_t last = m_lastAct;
    {
        const Snapshot snapshot(m_database);
        Statement rows(m_database, QStringLiteral("SELECT id, token FROM act WHERE id > ? ORDER BY id"));
        rows.run(m_lastAct);
        while (rows.next()) {
            last = rows.integer(0);
            if (!rows.qtext(1).startsWith(runToken())) {
                others.insert(last);
            }
        }
        if (m_database.failure()) {
            return tl::make_unexpected(*m_database.failure());
        }
    }
    m_lastAct = last;
    if (others.empty()) {
        return std::vector<ActRecord>();
    }
    auto acts = ActReader(m_database).latest(kMostNews);
    if (acts) {
        acts->erase(std::remove_if(acts->begin(), acts->end(), [&others](const ActRecord& act) { return others.count(act.id.value()) == 0; }), acts->end());
        std::reverse(acts->begin(), acts->end());
    }
    return acts;
}

}  // namespace chalk::store
