#include "app/commands/command.h"

#include "app/commands/trace_command.h"

#include <QStandardPaths>

#include <algorithm>

namespace chalk::app {

namespace {

const std::vector<Option>& commonOptions()
{
    static const std::vector<Option> options{
        {QStringLiteral("studio"), QStringLiteral("FILE"), QStringLiteral("the studio's file; your own where it is left out")},
        {QStringLiteral("on"), QStringLiteral("DATE"), QStringLiteral("take DATE (YYYY-MM-DD) for today")},
        {QStringLiteral("json"), {}, QStringLiteral("write JSON for programs")},
        {QStringLiteral("help"), {}, QStringLiteral("show this help")}};
    return options;
}

void writeOptions(QTextStream& out, const std::vector<Option>& options)
{
    for (const Option& option : options) {
        const QString form = QStringLiteral("--") + option.name + (option.valueName.isEmpty() ? QString() : QLatin1Char(' ') + option.valueName);
        out << "  " << form.leftJustified(20) << "  " << option.help << '\n';
    }
}

void writeHelp(QTextStream& out, const Command& command)
{
    out << "Usage: chalkrung " << command.name << (command.operands.isEmpty() ? "" : " ") << command.operands << " [OPTION ...]\n"
        << command.summary << "\n\n";
    writeOptions(out, command.options);
    writeOptions(out, commonOptions());
    if (!command.details.isEmpty()) {
        out << '\n' << command.details << '\n';
    }
}

const Option* findOption(const Command& command, const QString& name)
{
    for (const auto* options : {&command.options, &commonOptions()}) {
        const auto found = std::find_if(options->begin(), options->end(), [&name](const Option& option) { return option.name == name; });
        if (found != options->end()) {
            return &*found;
        }
    }
    return nullptr;
}

/// Sorts the arguments of a command into operands and options; answers what is wrong with them, or nothing.
QString parse(const Command& command, const QStringList& arguments, CommandContext& context)
{
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        const QString& argument = arguments[i];
        if (!argument.startsWith(QLatin1String("--"))) {
            if (argument.startsWith(QLatin1Char('-')) && argument.size() > 1) {
                return QStringLiteral("unknown option %1").arg(argument);
            }
            context.operands.append(argument);
            continue;
        }
        const qsizetype equals = argument.indexOf(QLatin1Char('='));
        const QString name = argument.mid(2, equals < 0 ? -1 : equals - 2);
        const Option* option = findOption(command, name);
        if (option == nullptr) {
            return QStringLiteral("unknown option --%1").arg(name);
        }
        if (option->valueName.isEmpty() != (equals < 0) && option->valueName.isEmpty()) {
            return QStringLiteral("option --%1 takes no value").arg(name);
        }
        if (option->valueName.isEmpty()) {
            context.options[name] = QString();
        } else if (equals >= 0) {
            context.options[name] = argument.mid(equals + 1);
        } else if (++i < arguments.size()) {
            context.options[name] = arguments[i];
        } else {
            return QStringLiteral("option --%1 needs %2").arg(name, option->valueName);
        }
    }
    return {};
}

/// Takes over --on and --studio; answers what is wrong with them or with the number of operands, or nothing.
QString complete(const Command& command, CommandContext& context)
{
    if (context.operands.size() < command.leastOperands) {
        return QStringLiteral("%1 is missing").arg(command.operands);
    }
    if (context.operands.size() > command.mostOperands) {
        return QStringLiteral("too many operands: %1").arg(context.operands[command.mostOperands]);
    }
    if (context.has(QStringLiteral("on"))) {
        const auto day = base::Date::parse(context.value(QStringLiteral("on")).toStdString());
        if (!day) {
            return QStringLiteral("--on: %1 is no day, YYYY-MM-DD").arg(context.value(QStringLiteral("on")));
        }
        context.today = *day;
    }
    if (context.has(QStringLiteral("studio")) && context.value(QStringLiteral("studio")).isEmpty()) {
        return QStringLiteral("--studio: the name of a file is empty");
    }
    context.studioFile = context.value(QStringLiteral("studio"));
    return {};
}

void writeOverview(QTextStream& out)
{
    out << "Usage: chalkrung [--studio FILE] [--on DATE]        opens the window\n"
           "       chalkrung COMMAND [OPTION ...]               does one thing without a window\n\nCommands:\n";
    for (const Command& command : allCommands()) {
        out << "  " << command.name.leftJustified(10) << "  " << command.summary << '\n';
    }
    out << "\n`chalkrung COMMAND --help` says more. Exit status: 0 done, 1 failed, 2 wrong use.\n";
}

}  // namespace

QString CommandContext::value(const QString& option, const QString& fallback) const
{
    const auto found = options.find(option);
    return found == options.end() ? fallback : found->second;
}

int CommandContext::refuse(const QString& message) const
{
    err << "chalkrung " << command << ": " << message << '\n';
    return kWrongUse;
}

int CommandContext::giveUp(const QString& message) const
{
    refuse(message);
    return kFailed;
}

const std::vector<Command>& allCommands()
{
    static const std::vector<Command> commands{traceCommand()};
    return commands;
}

int runCommand(const QStringList& arguments, base::Date clockDay, QTextStream& out, QTextStream& err)
{
    const QString name = arguments.value(0);
    if (name == QLatin1String("--help") || name == QLatin1String("help")) {
        writeOverview(out);
        return kDone;
    }
    const auto& commands = allCommands();
    const auto command = std::find_if(commands.begin(), commands.end(), [&name](const Command& one) { return one.name == name; });
    if (command == commands.end()) {
        err << "chalkrung: unknown " << (name.startsWith(QLatin1Char('-')) ? "option " : "command ") << name << "; see chalkrung --help\n";
        return kWrongUse;
    }
    CommandContext context{name, {}, {}, clockDay, {}, out, err};
    QString fault = parse(*command, arguments.mid(1), context);
    if (fault.isEmpty() && context.has(QStringLiteral("help"))) {
        writeHelp(out, *command);
        return kDone;
    }
    if (fault.isEmpty()) {
        fault = complete(*command, context);
    }
    return fault.isEmpty() ? command->run(context) : context.refuse(fault);
}

}  // namespace chalk::app
