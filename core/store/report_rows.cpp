#include "core/store/report_rows.h"

#include "core/exchange/session_report_json.h"
#include "core/store/client_forms.h"
#include "core/store/statement.h"

#include <QJsonDocument>

namespace chalk::store {

namespace {

using sessions::SessionReport;

std::optional<int> optionalNumber(const Statement& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(row.number(column));
}

/// The columns of a report from `first` on: sleep, soreness, stress, rpe_tenths, minutes, note.
SessionReport reportIn(const Statement& row, int first, base::SessionId session)
{
    return {optionalNumber(row, first),     optionalNumber(row, first + 1), optionalNumber(row, first + 2), optionalNumber(row, first + 3),
            optionalNumber(row, first + 4), row.openedText(first + 5, row.sealedRow("session_report", session), "note")};
}

}  // namespace

SessionReport readReport(Database& database, base::SessionId session)
{
    Statement row(database, QStringLiteral("SELECT sleep, soreness, stress, rpe_tenths, minutes, note FROM session_report WHERE session_id = ?"));
    return row.run(session) && row.next() ? reportIn(row, 0, session) : SessionReport();
}

std::map<base::SessionId, SessionReport> readReports(Database& database, base::ClientId client)
{
    std::map<base::SessionId, SessionReport> reports;
    Statement rows(database, QStringLiteral("SELECT r.session_id, r.sleep, r.soreness, r.stress, r.rpe_tenths, r.minutes, r.note "
                                            "FROM session_report r JOIN session s ON s.id = r.session_id WHERE s.client_id = ?"));
    rows.run(client);
    while (rows.next()) {
        const base::SessionId session(rows.integer(0));
        reports[session] = reportIn(rows, 1, session);
    }
    return reports;
}

void putReport(Database& database, base::SessionId session, const SessionReport& report)
{
    Statement(database, QStringLiteral("DELETE FROM session_report WHERE session_id = ?")).run(session);
    if (!report.isEmpty()) {
        Vault& vault = database.vault();
        Statement(database, QStringLiteral("INSERT INTO session_report (session_id, sleep, soreness, stress, rpe_tenths, minutes, note) VALUES (?, ?, ?, ?, ?, ?, ?)"))
            .run(session, report.sleep, report.soreness, report.stress, report.effortTenths, report.minutes,
                 vault.sealed(vault.toWrite("session_report", session), "note", report.note));
    }
}

bool isHealthKept(Database& database, base::SessionId session)
{
    Statement row(database, QStringLiteral("SELECT c.id, c.birth_day, s.day FROM session s JOIN client c ON c.id = s.client_id WHERE s.id = ?"));
    if (!row.run(session) || !row.next()) {
        return false;
    }
    const auto profile = ClientForms(database).profile(base::ClientId(row.integer(0)));
    return profile && clients::canKeepHealth(*profile, row.optionalDate(1), row.date(2));
}

QString textOfReport(const SessionReport& report)
{
    return QString::fromUtf8(QJsonDocument(exchange::toJson(report)).toJson(QJsonDocument::Compact));
}

SessionReport reportOf(Database& database, const QString& text)
{
    auto report = exchange::readSessionReport(QJsonDocument::fromJson(text.toUtf8()).object(), {});
    if (!report) {
        database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: a report of a session, %2 %3")
                                                      .arg(database.target(), QString::fromStdString(report.error().field),
                                                           QString::fromStdString(report.error().reason))});
        return {};
    }
    return *std::move(report);
}

}  // namespace chalk::store
