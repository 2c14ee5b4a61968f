#pragma once

#include <QLoggingCategory>
#include <QString>

#include <memory>

namespace spdlog {
class logger;
}

namespace chalk::app {

/// What the program itself has to say. No name of a client, nothing of anybody's health and no name of a file goes into the log:
/// people are their ids, what failed is its kind.
Q_DECLARE_LOGGING_CATEGORY(appLog)

/// Keeps the program's log while it lives: four files of 256 KB at most, for the owner's eyes only, and every line on disk at once.
/// Whatever is said through Qt's logging goes there with its category, Qt's own warnings among it; what ends the program goes to
/// standard error too. Where the folder cannot be written there is no log, and nothing else is different.
class Logging {
public:
    Logging();
    ~Logging();
    Logging(const Logging&) = delete;
    Logging& operator=(const Logging&) = delete;

    /// `$XDG_STATE_HOME/chalkrung`, or `~/.local/state/chalkrung`.
    [[nodiscard]] static QString folder();

private:
    std::shared_ptr<spdlog::logger> m_logger;
};

}  // namespace chalk::app
