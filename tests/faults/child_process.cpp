#include "tests/faults/child_process.h"

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <stdexcept>
#include <vector>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace chalk::faults {

ChildProcess::ChildProcess(const QStringList& arguments)
{
    std::array<int, 2> ends{};
    if (::pipe2(ends.data(), O_CLOEXEC) != 0) {
        throw std::runtime_error("no pipe");
    }
    std::vector<QByteArray> words{QByteArray("fault_tests"), QByteArray("--child")};
    for (const QString& argument : arguments) {
        words.push_back(argument.toUtf8());
    }
    std::vector<char*> pointers;
    for (QByteArray& word : words) {
        pointers.push_back(word.data());
    }
    pointers.push_back(nullptr);
    m_pid = ::fork();
    if (m_pid == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::execv("/proc/self/exe", pointers.data());
        std::_Exit(127);
    }
    ::close(ends[1]);
    m_output = ends[0];
}

ChildProcess::~ChildProcess()
{
    if (m_pid > 0) {
        kill();
        wait();
    }
    ::close(m_output);
}

std::optional<QString> ChildProcess::readLine()
{
    while (true) {
        if (const qsizetype end = m_pending.indexOf('\n'); end >= 0) {
            const QString line = QString::fromUtf8(m_pending.left(end));
            m_pending.remove(0, end + 1);
            return line;
        }
        std::array<char, 4096> bytes{};
        const ssize_t count = ::read(m_output, bytes.data(), bytes.size());
        if (count > 0) {
            m_pending.append(bytes.data(), count);
        } else if (count == 0 || errno != EINTR) {
            return std::nullopt;
        }
    }
}

void ChildProcess::kill()
{
    ::kill(m_pid, SIGKILL);
}

int ChildProcess::wait()
{
    int status = 0;
    while (::waitpid(m_pid, &status, 0) < 0 && errno == EINTR) {
    }
    m_pid = -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
}

}  // namespace chalk::faults
