#include "core/store/plan_templates.h"

#include "core/exchange/plan_template_json.h"
#include "core/store/audit.h"
#include "core/store/statement.h"

#include <QJsonDocument>

#include <algorithm>

namespace chalk::store {

Result<std::vector<planning::PlanTemplate>> PlanTemplates::all()
{
    const Snapshot snapshot(m_database);
    std::vector<planning::PlanTemplate> templates;
    Statement rows(m_database, QStringLiteral("SELECT name, detail FROM plan_template ORDER BY name"));
    rows.run();
    while (rows.next()) {
        auto read = exchange::readPlanTemplate(QJsonDocument::fromJson(rows.qtext(1).toUtf8()).object(), {}, m_catalogue);
        if (!read) {
            m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: the template %2, %3 %4")
                                                            .arg(m_database.target(), rows.qtext(0), QString::fromStdString(read.error().field),
                                                                 QString::fromStdString(read.error().reason))});
            break;
        }
        templates.push_back(*std::move(read));
    }
    return m_database.resultOf(std::move(templates));
}

void PlanTemplates::compare(const std::string& name, const QJsonObject& yours, const Seen& seen)
{
    const auto templates = seen ? all() : Result<std::vector<planning::PlanTemplate>>();
    if (!seen || !templates) {
        return;
    }
    const auto now = std::find_if(templates->begin(), templates->end(), [&name](const planning::PlanTemplate& one) { return one.name == name; });
    Conflict conflict{ConflictAbout::Template};
    conflict.yours = yours;
    conflict.theirs = now == templates->end() ? QJsonObject() : exchange::toJson(*now);
    refuseChanged(m_database, std::move(conflict), seen);
}

Result<void> PlanTemplates::save(const planning::PlanTemplate& plan, const Seen& seen)
{
    Transaction transaction(m_database);
    compare(plan.name, exchange::toJson(plan), seen);
    if (const auto fault = planning::faultOf(plan, m_catalogue)) {
        m_database.fail({StoreError::Kind::Refused, QString::fromStdString(fault->field + " " + fault->reason)});
    }
    AuditedChange audited(m_database, AuditWhat::Templates);
    Statement(m_database, QStringLiteral("INSERT INTO plan_template (name, detail) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET detail = excluded.detail"))
        .run(plan.name, QString::fromUtf8(QJsonDocument(exchange::toJson(plan)).toJson(QJsonDocument::Compact)));
    audited.keep();
    return transaction.commit();
}

Result<void> PlanTemplates::rename(const std::string& from, const std::string& to)
{
    Transaction transaction(m_database);
    const auto templates = all();
    if (!templates) {
        return tl::make_unexpected(templates.error());
    }
    const auto named = [&templates](const std::string& name) {
        return std::find_if(templates->begin(), templates->end(), [&name](const planning::PlanTemplate& one) { return one.name == name; });
    };
    if (named(from) == templates->end()) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("There is no template %1").arg(QString::fromStdString(from))});
        return transaction.commit();
    }
    if (named(to) != templates->end()) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("There is a template %1 already").arg(QString::fromStdString(to))});
        return transaction.commit();
    }
    planning::PlanTemplate changed = *named(from);
    changed.name = to;
    if (const auto fault = planning::faultOf(changed, m_catalogue)) {
        m_database.fail({StoreError::Kind::Refused, QString::fromStdString(fault->field + " " + fault->reason)});
    }
    AuditedChange audited(m_database, AuditWhat::Templates);
    Statement(m_database, QStringLiteral("UPDATE plan_template SET name = ?, detail = ? WHERE name = ?"))
        .run(to, QString::fromUtf8(QJsonDocument(exchange::toJson(changed)).toJson(QJsonDocument::Compact)), from);
    audited.keep();
    return transaction.commit();
}

Result<void> PlanTemplates::remove(const std::string& name, const Seen& seen)
{
    Transaction transaction(m_database);
    compare(name, {}, seen);
    AuditedChange audited(m_database, AuditWhat::Templates);
    Statement(m_database, QStringLiteral("DELETE FROM plan_template WHERE name = ?")).run(name);
    audited.keep();
    return transaction.commit();
}

}  // namespace chalk::store
