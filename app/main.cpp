#include "app/commands/command_line.h"
#include "app/commands/command_registry.h"
#include "app/commands/passphrase_input.h"
#include "app/logging.h"
#include "app/studio_window.h"
#include "app/system_clock.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QHashSeed>

#include <csignal>
#include <cstdio>
#include <memory>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace {

using chalk::app::CommandContext;
using chalk::app::CommandLine;
using chalk::app::Painting;
using chalk::app::SystemClock;

QStringList argumentsOf(int argc, char** argv)
{
    QStringList arguments;
    for (int i = 1; i < argc; ++i) {
        arguments.append(QString::fromLocal8Bit(argv[i]));
    }
    return arguments;
}

/// A command needs no window; one that paints needs fonts.
std::unique_ptr<QCoreApplication> applicationFor(const CommandLine& line, int& argc, char** argv)
{
    const Painting painting = line.command->painting;
    const bool isPaperAsked = line.options.count(QStringLiteral("paper")) > 0 || line.options.count(QStringLiteral("pdf")) > 0;
    if (painting == Painting::Never || (painting == Painting::WithPaper && !isPaperAsked)) {
        return std::make_unique<QCoreApplication>(argc, argv);
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    return std::make_unique<QGuiApplication>(argc, argv);
}

int runCommand(const CommandLine& line, int& argc, char** argv, QTextStream& out, QTextStream& err)
{
    const auto application = applicationFor(line, argc, argv);
    qCInfo(chalk::app::appLog) << "command" << line.command->name;
    const QString studioFile = line.studioFile.isEmpty() ? chalk::store::defaultStudioFile() : line.studioFile;
    const CommandContext context{line.command->name, line.operands, line.options, SystemClock(line.day).today(), SystemClock::nowUtc,
                                 studioFile,         out,           err};
    const int status = line.command->run(context);
    qCInfo(chalk::app::appLog) << "command" << line.command->name << "ended with" << status;
    return status;
}

int runWindow(const CommandLine& line, int& argc, char** argv, QTextStream& err)
{
    const auto option = line.options.find(QStringLiteral("passphrase-file"));
    const QString file = option == line.options.end() ? qEnvironmentVariable(chalk::app::kPassphraseFileVariable) : option->second;
    QString fault;
    const auto passphrase = file.isEmpty() ? std::nullopt : chalk::app::passphraseIn(file, fault);
    if (!fault.isEmpty()) {
        err << "chalkrung: " << fault << '\n';
        return chalk::app::kWrongUse;
    }
    return chalk::app::runStudioWindow(argc, argv, line.studioFile.isEmpty() ? chalk::store::defaultStudioFile() : line.studioFile, !line.studioFile.isEmpty(),
                                       chalk::seal::Passphrase(passphrase.value_or(QString())), SystemClock(line.day));
}

void writeFault(QTextStream& err, const CommandLine& line)
{
    const QString name = line.command != nullptr ? QStringLiteral("chalkrung ") + line.command->name : QStringLiteral("chalkrung");
    err << name << ": " << line.fault << "; see " << name << " --help\n";
}

/// Reading a whole studio frees and takes the top of the heap again and again: giving it back to the system each time cost a quarter of
/// an import of tables.
void keepFreedMemory()
{
#ifdef __GLIBC__
    constexpr int kMegabyte = 1024 * 1024;
    ::mallopt(M_TRIM_THRESHOLD, 16 * kMegabyte);
    ::mallopt(M_TOP_PAD, kMegabyte);
    ::mallopt(M_MMAP_THRESHOLD, 16 * kMegabyte);
#endif
}

}  // namespace

int main(int argc, char** argv)
{
    QHashSeed::setDeterministicGlobalSeed();  // the same bytes in every PDF
    std::signal(SIGXFSZ, SIG_IGN);            // a full disk is an error to report, not an end
    std::signal(SIGPIPE, SIG_IGN);
    keepFreedMemory();
    const chalk::app::Logging logging;
    QTextStream out(stdout);
    QTextStream err(stderr);
    const CommandLine line = chalk::app::readCommandLine(argumentsOf(argc, argv), chalk::app::allCommands());
    switch (line.wish) {
    case CommandLine::Wish::Window:
        return runWindow(line, argc, argv, err);
    case CommandLine::Wish::Command:
        return runCommand(line, argc, argv, out, err);
    case CommandLine::Wish::Help:
        chalk::app::writeHelp(out, chalk::app::allCommands());
        return chalk::app::kDone;
    case CommandLine::Wish::CommandHelp:
        chalk::app::writeHelp(out, *line.command);
        return chalk::app::kDone;
    case CommandLine::Wish::Version:
        out << "chalkrung " CHALKRUNG_VERSION "\n";
        return chalk::app::kDone;
    case CommandLine::Wish::Nonsense:
        writeFault(err, line);
        return chalk::app::kWrongUse;
    }
    return chalk::app::kWrongUse;
}
