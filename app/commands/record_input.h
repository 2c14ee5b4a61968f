#pragma once

#include "core/base/date.h"
#include "core/sessions/session_report.h"

#include <QByteArray>
#include <QJsonObject>
#include <QString>

#include <optional>
#include <variant>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::app {

/// One lift's part of a file of results, as it was written.
struct RecordItem {
    QString place;  ///< for messages: `line 4`, `records[2]`
    QString lift;   ///< a pattern, or an exercise by key or name
    std::variant<QString, QJsonObject> result;  ///< an entry line, or an event in the words of a history
};

/// A file of one client's results.
struct RecordInput {
    QString client;                  ///< a name, a part of one, or an id
    QString sessionCode;             ///< empty where the file names none
    std::optional<base::Date> date;  ///< of events that have none of their own
    std::vector<RecordItem> items;   ///< at least one, or a report
    QString reportPlace;             ///< for messages: `report`, or `line 5`
    std::optional<sessions::SessionReport> report;  ///< what is said once of the session
};

/// Reads a file of results: one JSON object `{"client": …, "date": …, "session": …, "records": [{"lift": "squat", …}], "report": {…}}`, or lines
/// `client: NAME`, `date: DATE`, `session: CODE`, `LIFT: ENTRY`, and of the report `sleep: 4`, `effort: 7.5`, `note: WORDS` and so on, with `#`
/// before remarks. The fault names the place.
[[nodiscard]] tl::expected<RecordInput, QString> readRecordInput(const QByteArray& text);

}  // namespace chalk::app
