#include "app/logging.h"

#include "core/store/private_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <spdlog/sinks/null_sink.h>
#include <spdlog/sinks/rotating_file_sink.h>
#include <spdlog/spdlog.h>

#include <cstdio>

namespace chalk::app {

Q_LOGGING_CATEGORY(appLog, "chalkrung")

namespace {

constexpr std::size_t kBytesPerFile = 256 * 1024;
constexpr std::size_t kOlderFiles = 3;

/// Qt's message handler is a plain function, so the logger that it writes to stands here. Set by Logging alone.
spdlog::logger* handlerLogger = nullptr;

/// Lines of the platform that say nothing about the program.
bool isPlatformNoise(const QString& message)
{
    return message.contains(QLatin1String("propagateSizeHints")) || message.contains(QLatin1String("XDG_RUNTIME_DIR"));
}

spdlog::level::level_enum levelOf(QtMsgType type)
{
    switch (type) {
    case QtDebugMsg:
        return spdlog::level::debug;
    case QtInfoMsg:
        return spdlog::level::info;
    case QtWarningMsg:
        return spdlog::level::warn;
    case QtCriticalMsg:
        return spdlog::level::err;
    case QtFatalMsg:
        return spdlog::level::critical;
    }
    return spdlog::level::info;
}

void handleMessage(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    if (handlerLogger != nullptr && !isPlatformNoise(message)) {
        handlerLogger->log(levelOf(type), "{}: {}", context.category == nullptr ? "default" : context.category, message.toStdString());
    }
    if (type == QtFatalMsg) {
        std::fprintf(stderr, "chalkrung: %s\n", qUtf8Printable(message));
    }
}

spdlog::sink_ptr makeSink(const QString& folder)
{
    if (store::makePrivateFolder(folder)) {
        try {
            const std::string file = QFile::encodeName(folder + QStringLiteral("/chalkrung.log")).toStdString();
            return std::make_shared<spdlog::sinks::rotating_file_sink_mt>(file, kBytesPerFile, kOlderFiles);
        } catch (const spdlog::spdlog_ex&) {
            // A log that cannot be written keeps nobody from working.
        }
    }
    return std::make_shared<spdlog::sinks::null_sink_mt>();
}

}  // namespace

QString Logging::folder()
{
    const QString state = qEnvironmentVariable("XDG_STATE_HOME");
    const QString base = QDir::isAbsolutePath(state) ? state : QDir::homePath() + QStringLiteral("/.local/state");
    return base + QStringLiteral("/chalkrung");
}

Logging::Logging() : m_logger(std::make_shared<spdlog::logger>("chalkrung", makeSink(folder())))
{
    m_logger->flush_on(spdlog::level::info);
    m_logger->set_error_handler([](const std::string&) {});  // a full disk must not fill standard error
    handlerLogger = m_logger.get();
    qInstallMessageHandler(handleMessage);
}

Logging::~Logging()
{
    qInstallMessageHandler(nullptr);
    handlerLogger = nullptr;
}

}  // namespace chalk::app
