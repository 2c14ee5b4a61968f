#pragma once

#include <QObject>

namespace chalk::app {

/// While it lives, SIGTERM, SIGINT and SIGHUP end the program's event loop in order, as closing the window does, so that settings are
/// kept and the database is closed. One at a time; made after the QCoreApplication.
class EndingSignals {
public:
    EndingSignals();
    ~EndingSignals();
    EndingSignals(const EndingSignals&) = delete;
    EndingSignals& operator=(const EndingSignals&) = delete;

private:
    QObject m_context;  ///< what the connections hang on
};

}  // namespace chalk::app
