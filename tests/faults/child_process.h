#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <optional>

#include <sys/types.h>

namespace chalk::faults {

/// This program once more, run as one of the children of children.h. What it writes to its standard output is heard line by line.
class ChildProcess {
public:
    explicit ChildProcess(const QStringList& arguments);
    /// Kills it where it still runs.
    ~ChildProcess();
    ChildProcess(const ChildProcess&) = delete;
    ChildProcess& operator=(const ChildProcess&) = delete;

    /// The next whole line, waited for; nothing at its end.
    [[nodiscard]] std::optional<QString> readLine();
    /// Ends it as nothing else does: it cannot hear the signal.
    void kill();
    /// Waits for its end; its status, or the negative number of the signal that ended it.
    int wait();

private:
    pid_t m_pid = -1;
    int m_output = -1;
    QByteArray m_pending;
};

}  // namespace chalk::faults
