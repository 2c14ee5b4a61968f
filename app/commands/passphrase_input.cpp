#include "app/commands/passphrase_input.h"

#include <QFile>

#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace chalk::app {

namespace {

constexpr qsizetype kLongestLine = 1024;

/// The terminal of this program, silent for as long as this lives.
class SilentTerminal {
public:
    SilentTerminal() : m_descriptor(::open("/dev/tty", O_RDWR | O_CLOEXEC | O_NOCTTY))
    {
        if (m_descriptor >= 0 && ::tcgetattr(m_descriptor, &m_before) == 0) {
            termios silent = m_before;
            silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
            m_isSilent = ::tcsetattr(m_descriptor, TCSAFLUSH, &silent) == 0;
        }
    }
    ~SilentTerminal()
    {
        if (m_isSilent) {
            ::tcsetattr(m_descriptor, TCSAFLUSH, &m_before);
        }
        if (m_descriptor >= 0) {
            ::close(m_descriptor);
        }
    }
    SilentTerminal(const SilentTerminal&) = delete;
    SilentTerminal& operator=(const SilentTerminal&) = delete;

    [[nodiscard]] bool isReady() const { return m_isSilent; }
    void say(const QString& text) const
    {
        const QByteArray bytes = text.toLocal8Bit();
        static_cast<void>(::write(m_descriptor, bytes.constData(), static_cast<std::size_t>(bytes.size())) < 0);
    }
    [[nodiscard]] std::optional<QString> line() const
    {
        QByteArray bytes;
        char letter = 0;
        while (bytes.size() < kLongestLine && ::read(m_descriptor, &letter, 1) == 1) {
            if (letter == '\n') {
                return QString::fromLocal8Bit(bytes);
            }
            bytes.append(letter);
        }
        return std::nullopt;
    }

private:
    int m_descriptor;
    termios m_before{};
    bool m_isSilent = false;
};

}  // namespace

std::optional<QString> passphraseIn(const QString& name, QString& fault)
{
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        fault = QStringLiteral("%1: %2").arg(name, file.errorString());
        return std::nullopt;
    }
    QByteArray line = file.readLine(kLongestLine);
    while (line.endsWith('\n') || line.endsWith('\r')) {
        line.chop(1);
    }
    if (line.isEmpty()) {
        fault = QStringLiteral("%1: the first line is empty: it should be the passphrase").arg(name);
        return std::nullopt;
    }
    return QString::fromUtf8(line);
}

std::optional<QString> askPassphrase(const QString& question)
{
    if (::isatty(STDIN_FILENO) == 0) {
        return std::nullopt;  // nobody is there to answer
    }
    const SilentTerminal terminal;
    if (!terminal.isReady()) {
        return std::nullopt;
    }
    terminal.say(question + QStringLiteral(": "));
    auto answer = terminal.line();
    terminal.say(QStringLiteral("\n"));
    return answer && !answer->isEmpty() ? answer : std::nullopt;
}

}  // namespace chalk::app
