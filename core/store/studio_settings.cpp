#include "core/store/studio_settings.h"

#include "core/exchange/json_reading.h"
#include "core/store/audit.h"
#include "core/store/statement.h"

#include <QJsonDocument>

namespace chalk::store {

namespace {

QJsonObject readSettings(Database& database)
{
    Statement row(database, QStringLiteral("SELECT settings FROM studio"));
    return row.run() && row.next() ? QJsonDocument::fromJson(row.qtext(0).toUtf8()).object() : QJsonObject();
}

}  // namespace

Result<clients::RestingLimits> StudioSettings::restingLimits()
{
    const Snapshot snapshot(m_database);
    const QJsonObject settings = readSettings(m_database);
    clients::RestingLimits limits;
    if (settings.contains(QStringLiteral("resting_limits"))) {
        exchange::ObjectReader reader(settings.value(QStringLiteral("resting_limits")), "resting_limits");
        reader.allowOnly({"heart_rate", "systolic", "diastolic"});
        limits = {reader.wholeNumber("heart_rate", 40, 200), reader.wholeNumber("systolic", 90, 250), reader.wholeNumber("diastolic", 50, 150)};
        if (reader.fault() || clients::faultyLimitOf(limits)) {
            m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: the resting limits cannot be read").arg(m_database.target())});
        }
    }
    return m_database.resultOf(limits);
}

Result<void> StudioSettings::setRestingLimits(const clients::RestingLimits& limits, const std::optional<clients::RestingLimits>& seen)
{
    Transaction transaction(m_database);
    if (const auto field = clients::faultyLimitOf(limits)) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("%1 is out of its range").arg(QLatin1String(*field))});
    }
    AuditedChange audited(m_database, AuditWhat::RestingLimits);
    QJsonObject settings = readSettings(m_database);
    if (const QLatin1String field("resting_limits"); seen) {
        Conflict conflict{ConflictAbout::RestingLimits};
        conflict.yours = written(limits).value(field).toObject();
        conflict.theirs = settings.contains(field) ? settings.value(field).toObject() : written({}).value(field).toObject();
        refuseChanged(m_database, std::move(conflict), written(*seen).value(field).toObject());
    }
    settings.insert(QStringLiteral("resting_limits"), written(limits).value(QStringLiteral("resting_limits")));
    Statement(m_database, QStringLiteral("UPDATE studio SET settings = ?")).run(QString::fromUtf8(QJsonDocument(settings).toJson(QJsonDocument::Compact)));
    audited.keep();
    return transaction.commit();
}

QJsonObject StudioSettings::written(const clients::RestingLimits& limits)
{
    return {{QStringLiteral("resting_limits"), QJsonObject{{QStringLiteral("heart_rate"), limits.heartRate},
                                                           {QStringLiteral("systolic"), limits.systolic},
                                                           {QStringLiteral("diastolic"), limits.diastolic}}}};
}

}  // namespace chalk::store
