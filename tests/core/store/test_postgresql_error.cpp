#include "core/store/postgresql_error.h"

#include "core/store/server_target.h"

#include <gtest/gtest.h>

namespace chalk::store {

using Kind = StoreError::Kind;

TEST(PostgresqlError, CodesHaveKinds)
{
    // Codes and their names: PostgreSQL 15, appendix A.
    const std::pair<const char*, Kind> codes[] = {{"", Kind::Unreachable},        {"08006", Kind::Unreachable}, {"57P01", Kind::Unreachable}, {"53300", Kind::Unreachable},
                                                  {"40001", Kind::Conflict},      {"40P01", Kind::Conflict},    {"55P03", Kind::Busy},        {"42501", Kind::NotAllowed},
                                                  {"28P01", Kind::NotAllowed},    {"3D000", Kind::NotThere},    {"25006", Kind::CannotWrite}, {"53100", Kind::CannotWrite},
                                                  {"42P01", Kind::Damaged},       {"XX001", Kind::Damaged},     {"23503", Kind::Refused},     {"23514", Kind::Refused},
                                                  {"22003", Kind::Refused},       {"42601", Kind::Other}};
    for (const auto& [code, kind] : codes) {
        EXPECT_EQ(kindOfSqlState(QLatin1String(code), {}), kind) << code;
    }
}

TEST(PostgresqlError, AVersionThatIsReplacedTwiceIsAConflict)
{
    const QString text = QStringLiteral("ERROR:  duplicate key value violates unique constraint \"%1\"");
    EXPECT_EQ(kindOfSqlState(QStringLiteral("23505"), text.arg(QStringLiteral("event_is_replaced_once"))), Kind::Conflict);
    EXPECT_EQ(kindOfSqlState(QStringLiteral("23505"), text.arg(QStringLiteral("session_code_key"))), Kind::Refused);
}

TEST(PostgresqlError, AMessageIsOneSentenceAndNamesTheStudio)
{
    const QSqlError error(QStringLiteral("QPSQL: Unable to create query"), QStringLiteral("ERROR:  permission denied for table form\nCONTEXT:  of a person\n(42501)"),
                          QSqlError::StatementError, QStringLiteral("42501"));
    const StoreError found = postgresqlError(error, QStringLiteral("postgresql://host/db"));
    EXPECT_EQ(found.kind, Kind::NotAllowed);
    EXPECT_EQ(found.message.toStdString(), "Your role at postgresql://host/db does not reach that far: permission denied for table form");
}

TEST(PostgresqlError, AConnectionSaysWhetherAnybodyAnswered)
{
    const auto errorOf = [](const char* text) {
        return postgresqlConnectionError(QSqlError(QString(), QLatin1String(text), QSqlError::ConnectionError), QStringLiteral("postgresql://host/db"));
    };
    const auto kindOf = [&errorOf](const char* text) { return errorOf(text).kind; };
    EXPECT_EQ(kindOf("connection to server at \"127.0.0.1\", port 1 failed: Connection refused"), Kind::Unreachable);
    EXPECT_EQ(kindOf("connection to server failed: FATAL:  password authentication failed for user \"ines\""), Kind::NotAllowed);
    EXPECT_EQ(kindOf("connection to server failed: fe_sendauth: no password supplied"), Kind::NotAllowed);
    EXPECT_TRUE(isAboutPassword(errorOf("connection to server failed: FATAL:  password authentication failed for user \"ines\"")));
    EXPECT_TRUE(isAboutPassword(errorOf("connection to server failed: fe_sendauth: no password supplied")));
    EXPECT_FALSE(isAboutPassword(errorOf("connection to server failed: FATAL:  role \"ines\" is not permitted to log in")));
    EXPECT_EQ(kindOf("connection to server failed: FATAL:  database \"harbour\" does not exist"), Kind::NotThere);
    EXPECT_EQ(kindOf("connection to server failed: FATAL:  the database system is starting up"), Kind::Unreachable);
}

}  // namespace chalk::store
