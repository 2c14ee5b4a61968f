#pragma once

#include "core/base/date.h"

#include <QString>
#include <QStringList>
#include <QTextStream>

#include <map>
#include <vector>

namespace chalk::app {

/// The exit status of a command.
enum ExitStatus { kDone = 0, kFailed = 1, kWrongUse = 2 };

/// An option of a command, `--name VALUE` or a bare `--name`.
struct Option {
    QString name;       ///< without the dashes
    QString valueName;  ///< empty for a flag
    QString help;
};

/// What a command is run with. Options are known and have their values; the number of operands is right.
struct CommandContext {
    QString command;
    QStringList operands;
    std::map<QString, QString> options;  ///< by name; flags map to an empty text
    base::Date today;                    ///< the clock's day, or that of --on
    QString studioFile;                  ///< --studio, or the user's own
    QTextStream& out;
    QTextStream& err;

    [[nodiscard]] bool has(const QString& option) const { return options.count(option) > 0; }
    /// The option's value; `fallback` where it is absent.
    [[nodiscard]] QString value(const QString& option, const QString& fallback = {}) const;
    [[nodiscard]] bool isJson() const { return has(QStringLiteral("json")); }
    /// Writes one line, `chalkrung COMMAND: message`, and answers kWrongUse.
    int refuse(const QString& message) const;
    /// The same for work that failed; answers kFailed.
    int giveUp(const QString& message) const;
};

/// One command of the command line.
struct Command {
    QString name;
    QString summary;   ///< one line
    QString operands;  ///< for the usage: `FILE`, `[DIR]`
    int leastOperands = 0;
    int mostOperands = 0;
    std::vector<Option> options;  ///< besides --studio, --on, --json and --help
    QString details;   ///< paragraphs for --help
    int (*run)(const CommandContext&);
};

/// All commands, in the order in which --help lists them.
[[nodiscard]] const std::vector<Command>& allCommands();

/// Runs the command that `arguments` (without the program's name) ask for and answers its exit status. `clockDay` is the day by
/// the clock.
int runCommand(const QStringList& arguments, base::Date clockDay, QTextStream& out, QTextStream& err);

}  // namespace chalk::app
