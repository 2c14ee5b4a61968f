#include "core/exchange/studio_document.h"

namespace chalk::exchange {

namespace {

void slide(std::optional<base::Date>& date, int days)
{
    if (date) {
        date = *date + days;
    }
}

void slideClient(DocumentClient& client, int days)
{
    client.client.startedOn = client.client.startedOn + days;
    slide(client.client.awayUntil, days);
    for (clients::Caution& caution : client.cautions) {
        slide(caution.until, days);
    }
    slide(client.clearance.askedOn, days);
    slide(client.clearance.grantedOn, days);
    slide(client.clearance.validUntil, days);
    for (sessions::Session& session : client.sessions) {
        session.date = session.date + days;
    }
    for (DocumentLift& lift : client.lifts) {
        lift.startedOn = lift.startedOn + days;
        for (DocumentEvent& entry : lift.events) {
            entry.event.date = entry.event.date + days;
        }
    }
}

}  // namespace

void slideTo(StudioDocument& document, base::Date day)
{
    const auto mondayOf = [](base::Date date) { return date - date.weekday(); };
    const int days = mondayOf(day) - mondayOf(document.today);
    for (DocumentClient& client : document.clients) {
        slideClient(client, days);
    }
    document.today = day;
}

}  // namespace chalk::exchange
