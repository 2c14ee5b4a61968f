#include "ui/shell/place.h"

#include "ui/common/formats.h"

#include <QUrlQuery>

namespace chalk::ui::shell {

QString lineOf(const Place& place)
{
    QUrlQuery query;
    if (!place.client.isNone()) {
        query.addQueryItem(QStringLiteral("client"), QString::number(place.client.value()));
    }
    if (!place.tab.isEmpty()) {
        query.addQueryItem(QStringLiteral("tab"), place.tab);
    }
    if (place.lift) {
        query.addQueryItem(QStringLiteral("lift"), common::qstring(lifts::keyOf(*place.lift)));
    }
    return query.isEmpty() ? place.page : place.page + QLatin1Char('?') + query.toString(QUrl::FullyEncoded);
}

std::optional<Place> placeOf(const QString& line)
{
    Place place;
    place.page = line.section(QLatin1Char('?'), 0, 0);
    if (place.page.isEmpty()) {
        return std::nullopt;
    }
    const QUrlQuery query(line.section(QLatin1Char('?'), 1));
    if (const QString id = query.queryItemValue(QStringLiteral("client")); !id.isEmpty()) {
        bool isNumber = false;
        place.client = base::ClientId(id.toLongLong(&isNumber));
        if (!isNumber || place.client.value() <= 0) {
            return std::nullopt;
        }
    }
    place.tab = query.queryItemValue(QStringLiteral("tab"), QUrl::FullyDecoded);
    if (const QString lift = query.queryItemValue(QStringLiteral("lift")); !lift.isEmpty()) {
        place.lift = lifts::patternOf(lift.toStdString());
        if (!place.lift) {
            return std::nullopt;
        }
    }
    return place;
}

}  // namespace chalk::ui::shell
