#include "app/commands/command_line.h"

#include <algorithm>

namespace chalk::app {

namespace {

const std::vector<Option>& windowOptions()
{
    static const std::vector<Option> options{
        {QStringLiteral("studio"), QStringLiteral("FILE"), QStringLiteral("the studio's file; your own where it is left out")},
        {QStringLiteral("on"), QStringLiteral("DATE"), QStringLiteral("take DATE (YYYY-MM-DD) for today")},
        {QStringLiteral("passphrase-file"), QStringLiteral("FILE"), QStringLiteral("FILE holds the passphrase of a sealed studio in its first line")},
        {QStringLiteral("help"), {}, QStringLiteral("show this help")}};
    return options;
}

const Option& jsonOption()
{
    static const Option option{QStringLiteral("json"), {}, QStringLiteral("write JSON for programs")};
    return option;
}

const Option& versionOption()
{
    static const Option option{QStringLiteral("version"), {}, QStringLiteral("show the version")};
    return option;
}

std::vector<Option> optionsOf(const Command* command)
{
    std::vector<Option> options = command != nullptr ? command->options : std::vector<Option>();
    options.push_back(command != nullptr ? jsonOption() : versionOption());
    options.insert(options.end(), windowOptions().begin(), windowOptions().end());
    return options;
}

void writeOptions(QTextStream& out, const std::vector<Option>& options)
{
    for (const Option& option : options) {
        const QString value = option.valueName.isEmpty() ? QString() : QLatin1Char(' ') + option.valueName;
        const QString form = QStringLiteral("--") + option.name + value;
        out << "  " << form.leftJustified(20) << "  " << option.help << '\n';
    }
}

bool isOption(const QString& argument)
{
    return argument.size() > 1 && argument.startsWith(QLatin1Char('-'));
}

/// The place of the first argument that is neither an option nor an option's value: that of the command.
qsizetype commandPlace(const QStringList& arguments)
{
    qsizetype place = 0;
    while (place < arguments.size() && isOption(arguments[place]) && arguments[place] != QLatin1String("--")) {
        const auto takesNext = [&name = arguments[place]](const Option& option) {
            return !option.valueName.isEmpty() && name == QStringLiteral("--") + option.name;
        };
        place += std::any_of(windowOptions().begin(), windowOptions().end(), takesNext) ? 2 : 1;
    }
    return place;
}

/// Sorts arguments into the operands and options of a line.
class Sorter {
public:
    Sorter(CommandLine& line, const QStringList& arguments) : m_line(line), m_arguments(arguments), m_known(optionsOf(line.command)) {}

    /// Goes on until something is wrong.
    void sort()
    {
        for (; m_place < m_arguments.size() && m_line.fault.isEmpty(); ++m_place) {
            const QString& argument = m_arguments[m_place];
            if (m_areOperandsLeft || !isOption(argument)) {
                m_line.operands.append(argument);
            } else if (argument == QLatin1String("--")) {
                m_areOperandsLeft = true;
            } else {
                take(argument);
            }
        }
    }

private:
    void take(const QString& argument)
    {
        const qsizetype equals = argument.indexOf(QLatin1Char('='));
        const QString form = argument.left(equals);
        const auto option = std::find_if(m_known.begin(), m_known.end(),
                                         [&form](const Option& one) { return form == QStringLiteral("--") + one.name; });
        if (option == m_known.end()) {
            m_line.fault = QStringLiteral("unknown option %1").arg(form);
        } else if (m_line.options.count(option->name) > 0) {
            m_line.fault = QStringLiteral("option %1 is given twice").arg(form);
        } else if (option->valueName.isEmpty()) {
            m_line.options[option->name] = QString();
            m_line.fault = equals < 0 ? QString() : QStringLiteral("option %1 takes no value").arg(form);
        } else if (equals >= 0) {
            m_line.options[option->name] = argument.mid(equals + 1);
        } else if (++m_place < m_arguments.size()) {
            m_line.options[option->name] = m_arguments[m_place];
        } else {
            m_line.fault = QStringLiteral("option %1 needs %2").arg(form, option->valueName);
        }
    }

    CommandLine& m_line;
    const QStringList& m_arguments;
    std::vector<Option> m_known;
    qsizetype m_place = 0;
    bool m_areOperandsLeft = false;
};

void takeCommonOptions(CommandLine& line)
{
    const auto on = line.options.find(QStringLiteral("on"));
    if (on != line.options.end()) {
        line.day = base::Date::parse(on->second.toStdString());
        if (!line.day) {
            line.fault = QStringLiteral("--on: %1 is no day, YYYY-MM-DD").arg(on->second);
        }
    }
    const auto studio = line.options.find(QStringLiteral("studio"));
    if (studio != line.options.end()) {
        line.studioFile = studio->second;
        if (line.studioFile.isEmpty()) {
            line.fault = QStringLiteral("--studio: the name of the file is empty");
        }
    }
}

void checkOperands(CommandLine& line)
{
    const int least = line.command != nullptr ? line.command->leastOperands : 0;
    const int most = line.command != nullptr ? line.command->mostOperands : 0;
    if (line.operands.size() < least) {
        line.fault = QStringLiteral("%1 is missing").arg(line.command->operands);
    } else if (line.operands.size() > most) {
        line.fault = QStringLiteral("%1 is one argument too many").arg(line.operands[most]);
    }
}

}  // namespace

CommandLine readCommandLine(const QStringList& arguments, const std::vector<Command>& commands)
{
    CommandLine line;
    QStringList own = arguments;
    const qsizetype place = commandPlace(arguments);
    if (place < arguments.size() && arguments[place] != QLatin1String("--")) {
        const QString name = own.takeAt(place);
        const auto found = std::find_if(commands.begin(), commands.end(), [&name](const Command& one) { return one.name == name; });
        if (found == commands.end()) {
            line.wish = CommandLine::Wish::Nonsense;
            line.fault = QStringLiteral("unknown command %1").arg(name);
            return line;
        }
        line.command = &*found;
    }
    Sorter(line, own).sort();
    const bool isHelp = line.options.count(QStringLiteral("help")) > 0;
    if (line.fault.isEmpty() && !isHelp) {
        takeCommonOptions(line);
    }
    if (line.fault.isEmpty() && !isHelp) {
        checkOperands(line);
    }
    if (!line.fault.isEmpty()) {
        line.wish = CommandLine::Wish::Nonsense;
    } else if (isHelp) {
        line.wish = line.command != nullptr ? CommandLine::Wish::CommandHelp : CommandLine::Wish::Help;
    } else if (line.options.count(QStringLiteral("version")) > 0) {
        line.wish = CommandLine::Wish::Version;
    } else {
        line.wish = line.command != nullptr ? CommandLine::Wish::Command : CommandLine::Wish::Window;
    }
    return line;
}

void writeHelp(QTextStream& out, const std::vector<Command>& commands)
{
    out << "Usage: chalkrung [--studio FILE] [--on DATE]    opens the window\n"
           "       chalkrung COMMAND [ARGUMENT ...]         does one thing without a window\n\nCommands:\n";
    for (const Command& command : commands) {
        out << "  " << command.name.leftJustified(20) << "  " << command.summary << '\n';
    }
    out << "\nOptions:\n";
    writeOptions(out, optionsOf(nullptr));
    out << "\n`chalkrung COMMAND --help` says more. Exit status: 0 done, 1 the work failed, 2 wrong use.\n";
}

void writeHelp(QTextStream& out, const Command& command)
{
    out << "Usage: chalkrung " << command.name << (command.operands.isEmpty() ? "" : " ") << command.operands << " [OPTION ...]\n"
        << command.summary << "\n\nOptions:\n";
    writeOptions(out, optionsOf(&command));
    if (!command.details.isEmpty()) {
        out << '\n' << command.details << '\n';
    }
}

}  // namespace chalk::app
