#include "core/store/document_rows.h"

#include "core/exchange/client_form_json.h"
#include "core/exchange/plan_template_json.h"
#include "core/store/form_rows.h"
#include "core/store/lift_codec.h"
#include "core/store/profile_rows.h"
#include "core/store/studio_settings.h"

#include <QJsonDocument>

namespace chalk::store {

namespace {

QString compactText(const QJsonObject& object)
{
    return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

QJsonObject sealedObjectIn(const Statement& row, int column, const SealedRow& sealed)
{
    return QJsonDocument::fromJson(row.opened(column, sealed, "detail").toUtf8()).object();
}

QJsonObject objectIn(const Statement& row, int column)
{
    return QJsonDocument::fromJson(row.qtext(column).toUtf8()).object();
}

void failAt(Database& database, const QString& what, const exchange::JsonFault& fault)
{
    database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: %2, %3 %4")
                                                  .arg(database.target(), what, QString::fromStdString(fault.field), QString::fromStdString(fault.reason))});
}

}  // namespace

void insertForms(Database& database, base::ClientId client, const std::vector<studio::DocumentForm>& forms)
{
    FormRows rows(database);
    for (const studio::DocumentForm& form : forms) {
        rows.add(client, studio::kindOf(form.content), form.day, form.isFinished, compactText(exchange::toJson(form.content)));
    }
}

void insertLetters(Database& database, base::ClientId client, const std::vector<studio::DocumentLetter>& letters)
{
    LetterRows rows(database);
    for (const studio::DocumentLetter& letter : letters) {
        rows.add(client, {letter.writtenBy, letter.day, letter.validUntil, letter.limits, letter.answers, letter.fileName, QByteArray::fromStdString(letter.copy)});
    }
}

void insertTemplates(Database& database, const std::vector<planning::PlanTemplate>& templates)
{
    Statement insert(database, QStringLiteral("INSERT INTO plan_template (name, detail) VALUES (?, ?)"));
    for (const planning::PlanTemplate& plan : templates) {
        insert.run(plan.name, compactText(exchange::toJson(plan)));
    }
}

void insertSettings(Database& database, const clients::RestingLimits& limits)
{
    if (limits != clients::RestingLimits()) {
        Statement(database, QStringLiteral("UPDATE studio SET settings = ?")).run(compactText(StudioSettings::written(limits)));
    }
}

void insertPlannedLifts(Database& database, base::SessionId session, const std::vector<base::LiftId>& lifts)
{
    Statement insert(database, QStringLiteral("INSERT INTO session_lift (session_id, position, lift_id) VALUES (?, ?, ?)"));
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        insert.run(session, static_cast<int>(i), lifts[i]);
    }
}

std::vector<studio::DocumentForm> readDocumentForms(Database& database, base::ClientId client)
{
    std::vector<studio::DocumentForm> forms;
    Statement rows(database, QStringLiteral("SELECT kind, day, is_finished, detail, id FROM form WHERE client_id = ? ORDER BY id"));
    rows.run(client);
    while (rows.next()) {
        auto content = exchange::readFormContent(rows.text(0), sealedObjectIn(rows, 3, rows.sealedRow("form", rows.integer(4))), {});
        if (!content) {
            failAt(database, QStringLiteral("form %1").arg(rows.integer(4)), content.error());
            break;
        }
        forms.push_back({rows.date(1), rows.number(2) == 1, *std::move(content)});
    }
    return forms;
}

std::vector<studio::DocumentLetter> readDocumentLetters(Database& database, base::ClientId client)
{
    std::vector<studio::DocumentLetter> letters;
    Statement rows(database, QStringLiteral("SELECT written_by, day, valid_until_day, limits, findings, file_name, file, id FROM letter WHERE client_id = ? ORDER BY id"));
    rows.run(client);
    while (rows.next()) {
        Letter letter = letterOf(rows);
        letters.push_back({std::move(letter.writtenBy), letter.day, letter.validUntil, std::move(letter.limits), std::move(letter.answers),
                           std::move(letter.fileName), letter.file.toStdString()});
    }
    return letters;
}

std::vector<planning::PlanTemplate> readDocumentTemplates(Database& database, const lifts::Catalogue& catalogue)
{
    std::vector<planning::PlanTemplate> templates;
    Statement rows(database, QStringLiteral("SELECT name, detail FROM plan_template ORDER BY id"));
    rows.run();
    while (rows.next()) {
        auto plan = exchange::readPlanTemplate(objectIn(rows, 1), {}, catalogue);
        if (!plan) {
            failAt(database, QStringLiteral("the template %1").arg(rows.qtext(0)), plan.error());
            break;
        }
        templates.push_back(*std::move(plan));
    }
    return templates;
}

std::map<std::string, std::map<lifts::Pattern, std::string>> readLeftOutLifts(Database& database, base::ClientId client)
{
    std::map<std::string, std::map<lifts::Pattern, std::string>> leftOut;
    Statement rows(database, QStringLiteral("SELECT s.code, l.pattern, l.id, p.left_out, s.id FROM session s JOIN session_lift p ON p.session_id = s.id "
                                            "JOIN lift l ON l.id = p.lift_id WHERE s.client_id = ? AND p.left_out IS NOT NULL AND s.state <> 'withdrawn'"));
    rows.run(client);
    while (rows.next()) {
        leftOut[rows.text(0)][rows.known(lifts::patternOf(rows.text(1)), 1, "lift", 2)] = rows.openedText(3, rows.sealedRow("session_lift", rows.integer(4), rows.integer(2)), "left_out");
    }
    return leftOut;
}

std::map<std::string, std::vector<lifts::Pattern>> readPlannedLifts(Database& database, base::ClientId client)
{
    std::map<std::string, std::vector<lifts::Pattern>> planned;
    Statement rows(database, QStringLiteral("SELECT s.code, l.pattern, l.id FROM session s JOIN session_lift p ON p.session_id = s.id JOIN lift l ON l.id = p.lift_id "
                                            "WHERE s.client_id = ? AND s.state <> 'withdrawn' ORDER BY s.id, p.position"));
    rows.run(client);
    while (rows.next()) {
        planned[rows.text(0)].push_back(rows.known(lifts::patternOf(rows.text(1)), 1, "lift", 2));
    }
    return planned;
}

}  // namespace chalk::store
