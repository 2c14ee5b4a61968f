#include "core/store/postgresql_error.h"

#include "core/store/server_target.h"

#include <array>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

struct StateMeaning {
    const char* beginning;
    Kind kind;
};

// The first that fits counts.
constexpr std::array kStateMeanings = {
    StateMeaning{"08", Kind::Unreachable},      // connection exception
    StateMeaning{"57P0", Kind::Unreachable},    // shutdown, crash, not yet up, idle for too long
    StateMeaning{"25P03", Kind::Unreachable},   // idle in a transaction for too long: the connection is gone
    StateMeaning{"53300", Kind::Unreachable},   // too many connections
    StateMeaning{"40", Kind::Conflict},         // serialization failure, deadlock
    StateMeaning{"55P03", Kind::Busy},          // lock not available in time
    StateMeaning{"57014", Kind::Busy},          // query canceled
    StateMeaning{"42501", Kind::NotAllowed},    // insufficient privilege
    StateMeaning{"28", Kind::NotAllowed},       // invalid authorization
    StateMeaning{"3D", Kind::NotThere},         // no such database
    StateMeaning{"25006", Kind::CannotWrite},   // read-only transaction
    StateMeaning{"53", Kind::CannotWrite},      // disk full, out of memory
    StateMeaning{"42P01", Kind::Damaged},       // undefined table: every statement is ours, and what it asks for is in every studio
    StateMeaning{"42703", Kind::Damaged},       // undefined column
    StateMeaning{"XX", Kind::Damaged},          // data or index corrupted, internal error
    StateMeaning{"58", Kind::CannotRead},       // the server's own input and output
    StateMeaning{"22", Kind::Refused},          // data out of range
    StateMeaning{"23", Kind::Refused},          // integrity constraint, and what our triggers raise
};

/// The sentence of the server: `ERROR:  words` and lines of detail, which may quote a person's data, come after one another.
QString firstSentence(const QString& text)
{
    const QString line = text.section(QLatin1Char('\n'), 0, 0).trimmed();
    const qsizetype words = line.indexOf(QLatin1String(":  "));
    return words < 0 ? line : line.mid(words + 3);
}

bool isReplacedTwice(const QString& text)
{
    return text.contains(QLatin1String("_is_replaced_once")) || text.contains(QLatin1String("act_is_undone_once"))
           || text.contains(QLatin1String("act_is_done_once"));
}

StoreError worded(Kind kind, const QString& target, const QString& text)
{
    switch (kind) {
    case Kind::Unreachable:
        return {kind, QStringLiteral("%1 does not answer: %2").arg(target, text)};
    case Kind::Conflict:
        return {kind, QStringLiteral("Somebody else changed this in the meantime; nothing was written (%1)").arg(text)};
    case Kind::Busy:
        return {kind, QStringLiteral("%1 is being written by somebody else for too long").arg(target)};
    case Kind::NotAllowed:
        return {kind, QStringLiteral("Your role at %1 does not reach that far: %2").arg(target, text)};
    case Kind::NotThere:
        return {kind, QStringLiteral("%1 is not there: %2").arg(target, text)};
    case Kind::CannotWrite:
        return {kind, QStringLiteral("%1 cannot be written: %2").arg(target, text)};
    case Kind::CannotRead:
        return {kind, QStringLiteral("%1 cannot be read: %2").arg(target, text)};
    case Kind::Damaged:
        return {kind, QStringLiteral("%1 is damaged: %2").arg(target, text)};
    case Kind::Refused:
        return {kind, QStringLiteral("The entry was refused: %1").arg(text)};
    case Kind::NotAStudio:
    case Kind::Newer:
    case Kind::Older:
    case Kind::Cancelled:
    case Kind::Locked:
    case Kind::Other:
        break;
    }
    return {Kind::Other, QStringLiteral("%1: %2").arg(target, text)};
}

constexpr const char* kAsksForPassword = " asks for a password";
constexpr const char* kTakesNoPassword = " does not take this login with this password";

}  // namespace

bool isAboutPassword(const StoreError& error)
{
    return error.kind == Kind::NotAllowed && (error.message.contains(QLatin1String(kAsksForPassword)) || error.message.contains(QLatin1String(kTakesNoPassword)));
}

Kind kindOfSqlState(const QString& state, const QString& text)
{
    if (state.isEmpty()) {
        return Kind::Unreachable;
    }
    if (state == QLatin1String("23505") && isReplacedTwice(text)) {
        return Kind::Conflict;
    }
    for (const StateMeaning& meaning : kStateMeanings) {
        if (state.startsWith(QLatin1String(meaning.beginning))) {
            return meaning.kind;
        }
    }
    return Kind::Other;
}

StoreError postgresqlError(const QSqlError& error, const QString& target)
{
    if (!error.isValid()) {
        return {Kind::Other, QStringLiteral("%1: nobody knows what went wrong").arg(target)};
    }
    return worded(kindOfSqlState(error.nativeErrorCode(), error.databaseText()), target, firstSentence(error.databaseText()));
}

StoreError postgresqlConnectionError(const QSqlError& error, const QString& target)
{
    const QString text = error.databaseText();
    const bool isAnswered = text.contains(QLatin1String("FATAL:"));
    const QString words = isAnswered ? text.section(QLatin1String("FATAL:"), 1).section(QLatin1Char('\n'), 0, 0).trimmed() : firstSentence(text);
    if (text.contains(QLatin1String("no password supplied"))) {
        return {Kind::NotAllowed, target + QLatin1String(kAsksForPassword)};
    }
    if (text.contains(QLatin1String("password authentication failed"))) {
        return {Kind::NotAllowed, target + QLatin1String(kTakesNoPassword) + QStringLiteral(": ") + words};
    }
    if (!isAnswered) {
        return worded(Kind::Unreachable, target, words);
    }
    if (text.contains(QLatin1String("database")) && text.contains(QLatin1String("does not exist"))) {
        return worded(Kind::NotThere, target, words);
    }
    const bool isFull = text.contains(QLatin1String("too many")) || text.contains(QLatin1String("connection slots"));
    const bool isStarting = text.contains(QLatin1String("starting up")) || text.contains(QLatin1String("shutting down")) || text.contains(QLatin1String("recovery mode"));
    return isFull || isStarting ? worded(Kind::Unreachable, target, words)
                                : StoreError{Kind::NotAllowed, QStringLiteral("%1 lets nobody in so: %2").arg(target, words)};
}

}  // namespace chalk::store
