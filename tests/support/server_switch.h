#pragma once

#include <QProcess>
#include <QStringList>

#include <stdexcept>

namespace chalk::test {

/// Turns the whole server that the tests are given by tests/support/with_postgresql.
inline void turnServer(const char* what)
{
    if (QProcess::execute(qEnvironmentVariable("CHALKRUNG_TEST_SERVER_SWITCH"), {QLatin1String(what)}) != 0) {
        throw std::runtime_error(std::string("the server cannot be turned: ") + what);
    }
}

/// As a crash does: whoever is connected is cut off.
inline void stopServer()
{
    turnServer("stop");
}

/// At the same place, with what was committed.
inline void startServer()
{
    turnServer("start");
}

}  // namespace chalk::test
