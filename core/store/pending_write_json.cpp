#include "core/exchange/event_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/session_report_json.h"
#include "core/exchange/studio_week_json.h"
#include "core/store/pending_write.h"
#include "core/store/week_changes.h"

#include <QJsonArray>

#include <array>

namespace chalk::store {

namespace {

using exchange::put;
using exchange::textOf;

constexpr std::array kWriteKeys{"entry", "report", "state", "bookings"};

template <class Id>
void putId(QJsonObject& object, const char* field, Id id)
{
    if (!id.isNone()) {
        put(object, field, static_cast<qint64>(id.value()));
    }
}

template <class Id>
Id idIn(const QJsonObject& object, const char* field)
{
    return Id(object.value(QLatin1String(field)).toInteger());
}

void putReport(QJsonObject& object, const char* field, const std::optional<sessions::SessionReport>& report)
{
    if (report) {
        put(object, field, exchange::toJson(*report));
    }
}

/// Nothing where there is none; what cannot be read makes the whole unreadable.
std::optional<sessions::SessionReport> reportIn(const QJsonObject& object, const char* field, bool& isSound)
{
    const QJsonValue value = object.value(QLatin1String(field));
    if (value.isUndefined()) {
        return std::nullopt;
    }
    const auto report = exchange::readSessionReport(value, field);
    isSound = isSound && report.has_value();
    return report ? std::optional(*report) : std::nullopt;
}

QJsonObject written(const EntryWrite& write)
{
    QJsonObject object;
    putId(object, "client", write.client);
    putId(object, "session", write.session);
    putId(object, "lift", write.lift);
    putId(object, "replaces", write.replaces);
    put(object, "measure", textOf(lifts::keyOf(write.measure)));
    put(object, "event", exchange::toJson(write.event, write.measure));
    putReport(object, "report", write.report);
    putReport(object, "seen_report", write.seenReport);
    return object;
}

QJsonObject written(const ReportWrite& write)
{
    QJsonObject object;
    putId(object, "session", write.session);
    putReport(object, "report", write.report);
    putReport(object, "seen", write.seen);
    return object;
}

QJsonObject written(const StateWrite& write)
{
    QJsonObject object;
    putId(object, "session", write.session);
    put(object, "state", textOf(sessions::keyOf(write.state)));
    if (write.seen) {
        put(object, "seen", textOf(sessions::keyOf(*write.seen)));
    }
    return object;
}

QJsonObject written(const BookingChanges& changes)
{
    const exchange::CoachNames byId;
    QJsonArray booked;
    for (const sessions::Session& session : changes.booked) {
        QJsonObject object = exchange::toJson(placeOf(session), byId);
        putId(object, "client", session.client);
        put(object, "kind", textOf(sessions::keyOf(session.kind)));
        booked.append(object);
    }
    QJsonArray moved;
    for (const MovedBooking& one : changes.moved) {
        QJsonObject object{{QStringLiteral("to"), exchange::toJson(one.place, byId)}};
        putId(object, "session", one.session);
        if (one.seen) {
            put(object, "seen", exchange::toJson(*one.seen, byId));
        }
        moved.append(object);
    }
    QJsonArray withdrawn;
    for (const base::SessionId session : changes.withdrawn) {
        QJsonObject object;
        putId(object, "session", session);
        if (const auto seen = changes.seenWithdrawn.find(session); seen != changes.seenWithdrawn.end()) {
            put(object, "seen", exchange::toJson(seen->second.place, byId));
            put(object, "seen_state", textOf(sessions::keyOf(seen->second.state)));
        }
        withdrawn.append(object);
    }
    return {{QStringLiteral("booked"), booked}, {QStringLiteral("moved"), moved}, {QStringLiteral("withdrawn"), withdrawn}};
}

std::optional<PendingWrite> entryIn(const QJsonObject& object)
{
    const auto measure = lifts::measureOf(object.value(QLatin1String("measure")).toString().toStdString());
    if (!measure) {
        return std::nullopt;
    }
    const auto event = exchange::readEvent(object.value(QLatin1String("event")), "event", *measure);
    bool isSound = event.has_value();
    auto report = reportIn(object, "report", isSound);
    auto seen = reportIn(object, "seen_report", isSound);
    if (!isSound) {
        return std::nullopt;
    }
    return EntryWrite{idIn<base::ClientId>(object, "client"), idIn<base::SessionId>(object, "session"), idIn<base::LiftId>(object, "lift"),
                      idIn<base::EventId>(object, "replaces"), *measure, *event, std::move(report), std::move(seen)};
}

std::optional<PendingWrite> reportWriteIn(const QJsonObject& object)
{
    bool isSound = true;
    const auto report = reportIn(object, "report", isSound);
    auto seen = reportIn(object, "seen", isSound);
    if (!report || !isSound) {
        return std::nullopt;
    }
    return ReportWrite{idIn<base::SessionId>(object, "session"), *report, std::move(seen)};
}

std::optional<PendingWrite> stateIn(const QJsonObject& object)
{
    const auto state = sessions::sessionStateOf(object.value(QLatin1String("state")).toString().toStdString());
    if (!state) {
        return std::nullopt;
    }
    return StateWrite{idIn<base::SessionId>(object, "session"), *state,
                      sessions::sessionStateOf(object.value(QLatin1String("seen")).toString().toStdString())};
}

std::optional<sessions::Session> bookedIn(QJsonObject object)
{
    sessions::Session session;
    session.client = idIn<base::ClientId>(object, "client");
    const auto kind = sessions::sessionKindOf(object.value(QLatin1String("kind")).toString().toStdString());
    object.remove(QLatin1String("client"));
    object.remove(QLatin1String("kind"));
    const auto place = exchange::readBookingPlace(object, "booked", exchange::CoachNames());
    if (!place || !kind) {
        return std::nullopt;
    }
    session.coach = place->coach;
    session.date = place->date;
    session.startMinute = place->startMinute;
    session.minutes = place->minutes;
    session.place = place->place;
    session.placeCapacity = place->placeCapacity;
    session.isLocked = place->isLocked;
    session.kind = *kind;
    return session;
}

/// A number alone is a booking that nobody compares.
bool takeWithdrawn(BookingChanges& changes, const QJsonValue& value)
{
    const QJsonObject object = value.toObject();
    const base::SessionId session = value.isObject() ? idIn<base::SessionId>(object, "session") : base::SessionId(value.toInteger());
    changes.withdrawn.push_back(session);
    if (!object.contains(QLatin1String("seen"))) {
        return true;
    }
    const auto place = exchange::readBookingPlace(object.value(QLatin1String("seen")), "seen", exchange::CoachNames());
    const auto state = sessions::sessionStateOf(object.value(QLatin1String("seen_state")).toString().toStdString());
    if (place && state) {
        changes.seenWithdrawn[session] = {*place, *state};
    }
    return place && state;
}

std::optional<PendingWrite> bookingsIn(const QJsonObject& object)
{
    BookingChanges changes;
    for (const QJsonValue& value : object.value(QLatin1String("booked")).toArray()) {
        const auto session = bookedIn(value.toObject());
        if (!session) {
            return std::nullopt;
        }
        changes.booked.push_back(*session);
    }
    for (const QJsonValue& value : object.value(QLatin1String("moved")).toArray()) {
        const QJsonObject moved = value.toObject();
        const auto to = exchange::readBookingPlace(moved.value(QLatin1String("to")), "to", exchange::CoachNames());
        const QJsonValue seenValue = moved.value(QLatin1String("seen"));
        const auto seen = exchange::readBookingPlace(seenValue, "seen", exchange::CoachNames());
        if (!to || (!seenValue.isUndefined() && !seen)) {
            return std::nullopt;
        }
        changes.moved.push_back({idIn<base::SessionId>(moved, "session"), *to, seen ? std::optional(*seen) : std::nullopt});
    }
    for (const QJsonValue& value : object.value(QLatin1String("withdrawn")).toArray()) {
        if (!takeWithdrawn(changes, value)) {
            return std::nullopt;
        }
    }
    return changes.isEmpty() ? std::nullopt : std::optional<PendingWrite>(changes);
}

}  // namespace

QJsonObject toJson(const PendingWrite& write)
{
    const QJsonObject what = std::visit([](const auto& one) { return written(one); }, write);
    return {{QLatin1String(kWriteKeys.at(write.index())), what}};
}

std::optional<PendingWrite> pendingWriteIn(const QJsonObject& object)
{
    using Reader = std::optional<PendingWrite> (*)(const QJsonObject&);
    constexpr std::array<Reader, 4> kReaders{entryIn, reportWriteIn, stateIn, bookingsIn};
    for (std::size_t i = 0; i < kWriteKeys.size(); ++i) {
        if (const QJsonValue what = object.value(QLatin1String(kWriteKeys.at(i))); what.isObject()) {
            return kReaders.at(i)(what.toObject());
        }
    }
    return std::nullopt;
}

}  // namespace chalk::store
