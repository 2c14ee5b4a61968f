#include "ui/shell/client_finder.h"

#include "ui/common/fuzzy_match.h"

#include <QCoreApplication>

namespace chalk::ui::shell {

namespace {

QString findText(const char* text)
{
    return QCoreApplication::translate("ClientFinder", text);
}

}  // namespace

ClientFinder::ClientFinder(QString page, std::function<std::vector<FindableClient>()> clients, std::function<void(const Place&)> go)
    : m_page(std::move(page)), m_source(std::move(clients)), m_go(std::move(go))
{
}

void ClientFinder::prepare()
{
    m_clients = m_source();
}

std::vector<FindItem> ClientFinder::find(const QString& query) const
{
    std::vector<FindItem> items;
    if (query.isEmpty()) {
        return items;
    }
    for (const FindableClient& client : m_clients) {
        addClient(client, query, items);
        addLifts(client, query, items);
    }
    return items;
}

void ClientFinder::addClient(const FindableClient& client, const QString& query, std::vector<FindItem>& items) const
{
    // The name counts before the goal: a match that needs the goal stands behind every match of a name.
    auto score = common::matchScore(query, client.name, common::Typos::Allowed);
    if (!score) {
        score = common::matchScore(query, client.name + QLatin1Char(' ') + client.about);
        if (!score) {
            return;
        }
        *score /= 2;
    }
    items.push_back({FindGroup::GoTo,
                     QStringLiteral("board"),
                     {{client.name, FindWeight::Bold},
                      {findText(QT_TRANSLATE_NOOP("ClientFinder", ", board"))},
                      {client.about, FindWeight::Detail}},
                     {},
                     *score,
                     [go = m_go, place = Place{.page = m_page, .client = client.id}] { go(place); }});
}

void ClientFinder::addLifts(const FindableClient& client, const QString& query, std::vector<FindItem>& items) const
{
    for (const FindableLift& lift : client.lifts) {
        const auto score = common::matchScore(query, client.name + QLatin1Char(' ') + lift.name, common::Typos::Allowed);
        const bool isByName = common::matchScore(query, client.name, common::Typos::Allowed).has_value();
        if (!score || isByName) {
            continue;
        }
        items.push_back({FindGroup::GoTo,
                         QStringLiteral("bar"),
                         {{client.name, FindWeight::Bold}, {QStringLiteral(", ") + lift.name.toLower()}},
                         {},
                         *score,
                         [go = m_go, place = Place{.page = m_page, .client = client.id, .lift = lift.pattern}] { go(place); }});
    }
}

QStringList ClientFinder::names() const
{
    QStringList names;
    for (const FindableClient& client : m_clients) {
        names.append(client.name);
    }
    return names;
}

}  // namespace chalk::ui::shell
