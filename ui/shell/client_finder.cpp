#include "ui/shell/client_finder.h"

#include "ui/common/fuzzy_match.h"
#include "ui/shell/find_parts.h"
#include "ui/shell/typed_result.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

namespace chalk::ui::shell {

namespace {

QString findText(const char* text)
{
    return QCoreApplication::translate("ClientFinder", text);
}

QString firstName(const FindableClient& client)
{
    return client.name.section(QLatin1Char(' '), 0, 0);
}

std::optional<int> nameScore(const FindableClient& client, const QString& query)
{
    return common::matchScore(query, client.name, common::Typos::Allowed);
}

QString liftTitle(const FindableClient& client, const FindableLift& lift)
{
    return QStringLiteral("%1, %2").arg(client.name, lift.name.toLower());
}

void append(std::vector<FindPart>& parts, std::vector<FindPart> more)
{
    std::move(more.begin(), more.end(), std::back_inserter(parts));
}

/// `for Joaquin, today 09:00`.
QString forWhom(const FindableClient& client)
{
    return findText(QT_TRANSLATE_NOOP("ClientFinder", "for %1, today %2")).arg(firstName(client), client.todayAt);
}

}  // namespace

ClientFinder::ClientFinder(ClientPages pages, std::function<std::vector<FindableClient>()> clients, std::function<void(const Place&)> go)
    : m_pages(std::move(pages)), m_source(std::move(clients)), m_go(std::move(go))
{
}

void ClientFinder::prepare()
{
    m_clients = m_source();
}

std::function<void()> ClientFinder::going(Place place) const
{
    return [go = m_go, place = std::move(place)] { go(place); };
}

Place ClientFinder::homeOf(const FindableClient& client) const
{
    return {.page = client.lifts.empty() ? m_pages.onboarding : m_pages.client, .client = client.id};
}

Place ClientFinder::floorFor(const FindableClient& client) const
{
    return {.page = m_pages.floor, .client = client.id, .session = client.sessionToday};
}

std::vector<FindItem> ClientFinder::find(const QString& query) const
{
    Items items;
    if (query.isEmpty()) {
        addToday(items);
        return items;
    }
    const auto result = typedResultOf(query);
    const QString who = result ? result->who : query;
    for (const FindableClient& client : m_clients) {
        if (result) {
            addResults(client, *result, items);
        }
        addClient(client, who, items);
        addLifts(client, who, items);
    }
    const auto isNamed = [&who](const FindableClient& client) { return nameScore(client, who).has_value(); };
    if (std::count_if(m_clients.begin(), m_clients.end(), isNamed) == 1) {
        const auto named = std::find_if(m_clients.begin(), m_clients.end(), isNamed);
        addParts(*named, *nameScore(*named, who), items);
    }
    return items;
}

void ClientFinder::addToday(Items& items) const
{
    std::vector<const FindableClient*> booked;
    for (const FindableClient& client : m_clients) {
        if (!client.sessionToday.isNone()) {
            booked.push_back(&client);
        }
    }
    std::stable_sort(booked.begin(), booked.end(), [](const auto* a, const auto* b) { return a->todayAt < b->todayAt; });
    for (const FindableClient* client : booked) {
        items.push_back({FindGroup::GoTo,
                         QStringLiteral("client"),
                         {{client->name}, {findText(QT_TRANSLATE_NOOP("ClientFinder", "today %1")).arg(client->todayAt), FindWeight::Detail}},
                         {},
                         0,
                         going(homeOf(*client))});
    }
}

void ClientFinder::addClient(const FindableClient& client, const QString& query, Items& items) const
{
    // The name counts before the goal: a match that needs the goal stands behind every match of a name.
    auto score = nameScore(client, query);
    const bool isByName = score.has_value();
    if (!score) {
        score = common::matchScore(query, client.name + QLatin1Char(' ') + client.about);
        if (!score) {
            return;
        }
        *score /= 2;
    }
    std::vector<FindPart> parts = markedParts(client.name, query);
    parts.push_back({client.lifts.empty() ? findText(QT_TRANSLATE_NOOP("ClientFinder", ", first steps")) : findText(QT_TRANSLATE_NOOP("ClientFinder", ", board"))});
    append(parts, markedParts(client.about, isByName ? QString() : query, FindWeight::Detail));
    items.push_back({FindGroup::GoTo, QStringLiteral("board"), std::move(parts), {}, *score, going(homeOf(client))});
}

void ClientFinder::addParts(const FindableClient& client, int score, Items& items) const
{
    const auto add = [this, &client, &items](int least, const char* icon, const QString& tab, const QString& what) {
        items.push_back({FindGroup::GoTo,
                         QLatin1String(icon),
                         {{client.name}, {QStringLiteral(", ") + what}},
                         {},
                         least,
                         going({.page = m_pages.client, .client = client.id, .tab = tab})});
    };
    add(score - 1, "calendar", QStringLiteral("sessions"), findText(QT_TRANSLATE_NOOP("ClientFinder", "sessions")));
    add(score - 2, "clearance", QStringLiteral("health"), findText(QT_TRANSLATE_NOOP("ClientFinder", "health")));
    if (!client.sessionToday.isNone() && !client.isBlocked) {
        items.push_back({FindGroup::Do,
                         QStringLiteral("edit"),
                         {{findText(QT_TRANSLATE_NOOP("ClientFinder", "Record the session"))}, {forWhom(client), FindWeight::Detail}},
                         {},
                         score - 1,
                         going(floorFor(client))});
    }
}

void ClientFinder::addLifts(const FindableClient& client, const QString& query, Items& items) const
{
    if (nameScore(client, query)) {
        return;
    }
    for (const FindableLift& lift : client.lifts) {
        const auto score = common::matchScore(query, client.name + QLatin1Char(' ') + lift.name, common::Typos::Allowed);
        if (!score) {
            continue;
        }
        std::vector<FindPart> parts = markedParts(liftTitle(client, lift), query);
        parts.push_back({lift.stand, FindWeight::Detail});
        items.push_back({FindGroup::GoTo, QStringLiteral("bar"), std::move(parts), {}, *score,
                         going({.page = m_pages.client, .client = client.id, .lift = lift.pattern})});
    }
}

FindItem ClientFinder::obstacleTo(const FindableClient& client, const FindableLift& lift, int score) const
{
    const QString why = client.isBlocked ? findText(QT_TRANSLATE_NOOP("ClientFinder", "locked until the clearance is there"))
                                         : findText(QT_TRANSLATE_NOOP("ClientFinder", "not booked today, so there is no session to record in"));
    const QString tab = client.isBlocked ? QStringLiteral("health") : QString();
    return {FindGroup::GoTo,
            client.isBlocked ? QStringLiteral("lock") : QStringLiteral("calendar"),
            {{liftTitle(client, lift)}, {why, FindWeight::Detail}},
            {},
            score,
            going({.page = m_pages.client, .client = client.id, .tab = tab, .lift = lift.pattern})};
}

void ClientFinder::addResults(const FindableClient& client, const TypedResult& result, Items& items) const
{
    for (const FindableLift& lift : client.lifts) {
        const auto score = common::matchScore(result.who, client.name + QLatin1Char(' ') + lift.name, common::Typos::Allowed);
        if (!score) {
            continue;
        }
        if (client.isBlocked || client.sessionToday.isNone()) {
            items.push_back(obstacleTo(client, lift, kReadResult + *score));
            continue;
        }
        const QString unknown = unknownWordOf(result);
        const QString said = resultText(result.entry, client.unit);
        const QString detail = unknown.isEmpty() ? forWhom(client)
                                                 : findText(QT_TRANSLATE_NOOP("ClientFinder", "“%1” is not understood yet, %2")).arg(unknown, forWhom(client));
        Place floor = floorFor(client);
        floor.lift = lift.pattern;
        floor.text = result.line;
        items.push_back({FindGroup::Do,
                         QStringLiteral("edit"),
                         {{findText(QT_TRANSLATE_NOOP("ClientFinder", "Record "))},
                          {said.isEmpty() ? lift.name.toLower() : QStringLiteral("%1, %2").arg(lift.name.toLower(), said), FindWeight::Bold},
                          {detail, FindWeight::Detail}},
                         {},
                         kReadResult + *score,
                         going(std::move(floor))});
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
