#include "core/store/sealed_tables.h"

#include <algorithm>
#include <stdexcept>

namespace chalk::store {

namespace {

QStringList words(const char* text)
{
    return QString::fromLatin1(text).split(QLatin1Char(' '));
}

QList<SealedTable> makeSealedTables()
{
    const QStringList id = words("id");
    return {
        {QStringLiteral("client"), id, id, words("goal"), {}, true},
        {QStringLiteral("caution"), id, id, words("body_part text short_text tags"), {}, true},
        {QStringLiteral("clearance"), words("client_id"), words("client_id"), words("reason limits granted_by"), {}, true},
        {QStringLiteral("form"), id, id, words("detail"), {}, true},
        {QStringLiteral("letter"), id, id, words("written_by limits findings file_name"), QStringLiteral("file"), true},
        {QStringLiteral("session_report"), words("session_id"), words("session_id"), words("note"), {}, true},
        {QStringLiteral("report_change"), words("act_id session_id"), words("act_id session_id"), words("before after"), {}, false},
        {QStringLiteral("client_change"), words("act_id client_id"), words("act_id client_id"), words("before after"), {}, false},
        {QStringLiteral("decision"), id, words("client_id coalesce(lift_id,0) day about"), words("note"), {}, false},
        {QStringLiteral("plan"), id, words("client_id begun_day"), words("note content"), {}, false},
        {QStringLiteral("event"), id, words("lift_id day type"), words("detail"), {}, false},
        {QStringLiteral("session_lift"), words("session_id position"), words("session_id lift_id"), words("left_out"), {}, false},
        // Worked out from the log: an older one is found by a replay.
        {QStringLiteral("lift_state"), words("lift_id"), words("lift_id"), words("state"), {}, false},
        {QStringLiteral("tested_maximum"), id, words("client_id lift_id day"), words("note"), {}, false},
        {QStringLiteral("audit"), id, words("coalesce(client_id,0) what"), words("before after"), {}, false},
    };
}

}  // namespace

const QList<SealedTable>& sealedTables()
{
    static const QList<SealedTable> tables = makeSealedTables();
    return tables;
}

const SealedTable& sealedTable(const QString& name)
{
    const auto& tables = sealedTables();
    const auto found = std::find_if(tables.begin(), tables.end(), [&name](const SealedTable& table) { return table.name == name; });
    if (found == tables.end()) {
        throw std::logic_error("no sealed table of that name");
    }
    return *found;
}

}  // namespace chalk::store
