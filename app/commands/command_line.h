#pragma once

#include "app/commands/command.h"

#include <optional>

namespace chalk::app {

/// The arguments of the program, sorted and checked.
struct CommandLine {
    enum class Wish : std::uint8_t {
        Window,       ///< no command
        Command,      ///< `command`
        Help,         ///< of the whole program
        CommandHelp,  ///< of `command`
        Version,
        Nonsense      ///< `fault` says why
    };
    Wish wish = Wish::Window;
    const Command* command = nullptr;
    QStringList operands;
    std::map<QString, QString> options;
    QString studioFile;             ///< --studio; empty where it was left out
    std::optional<base::Date> day;  ///< --on
    QString fault;                  ///< one line, without the program's name
};

/// Reads the arguments, without the program's name. Options may stand before and after the command; after `--` all are operands.
[[nodiscard]] CommandLine readCommandLine(const QStringList& arguments, const std::vector<Command>& commands);

/// `chalkrung --help`.
void writeHelp(QTextStream& out, const std::vector<Command>& commands);
/// `chalkrung COMMAND --help`.
void writeHelp(QTextStream& out, const Command& command);

}  // namespace chalk::app
