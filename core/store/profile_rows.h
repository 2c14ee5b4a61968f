#pragma once

#include "core/clients/client.h"
#include "core/clients/health_question.h"
#include "core/sessions/session.h"
#include "core/store/statement.h"

#include <vector>

namespace chalk::store {

// Rows of the tables about clients and sessions, read into values. Column lists and readers stand together.

/// `knee hip`: tags of a caution, and marks of an intake, as they stand in a column. What is unknown is left out.
[[nodiscard]] QString textOfTags(const std::vector<lifts::CautionTag>& tags);
[[nodiscard]] QString textOfMarks(const std::vector<clients::HealthMark>& marks);
[[nodiscard]] std::vector<clients::HealthMark> marksOf(const QString& text);

/// `c.id, c.name, …` of `client c`; read by clientOf.
[[nodiscard]] const QString& clientColumns();
/// The same without goal, birth day and body mass, which who may not see health does not get: they come as nothing.
[[nodiscard]] const QString& clientColumnsFor(const Database& database);
inline constexpr int kClientColumns = 10;
[[nodiscard]] clients::Client clientOf(const Statement& row, int first = 0);

/// `s.id, …` of `session s`; read by sessionOf.
[[nodiscard]] const QString& sessionColumns();
inline constexpr int kSessionColumns = 12;
[[nodiscard]] sessions::Session sessionOf(const Statement& row, int first = 0);

/// `q.state, …` of `clearance q`, read by clearanceOf: not needed where nothing is on file.
[[nodiscard]] const QString& clearanceColumns();
[[nodiscard]] clients::Clearance clearanceOf(const Statement& row, int first = 0);
[[nodiscard]] clients::Clearance readClearance(Database& database, base::ClientId client);

/// `id, …` of `caution`; read by cautionOf.
[[nodiscard]] const QString& cautionColumns();
inline constexpr int kCautionColumns = 6;
[[nodiscard]] clients::Caution cautionOf(const Statement& row);
/// The cautions in force on `day`; all of them without one.
[[nodiscard]] std::vector<clients::Caution> readCautions(Database& database, base::ClientId client, std::optional<base::Date> day);

/// A client's next session, and how many clients its slot holds.
struct NextSession {
    std::optional<sessions::Session> session;
    int taken = 0;
};

/// Finds clients' next sessions: planned or printed, on a day or later.
class NextSessionSearch {
public:
    explicit NextSessionSearch(Database& database);
    [[nodiscard]] NextSession find(base::ClientId client, base::Date day);

private:
    Statement m_next;
    Statement m_taken;
};

}  // namespace chalk::store
