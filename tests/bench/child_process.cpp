#include "tests/bench/child_process.h"

#include <array>
#include <chrono>
#include <csignal>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <thread>

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace chalk::bench {

namespace {

constexpr auto kLook = std::chrono::milliseconds(50);
constexpr int kQuietLooks = 20;
constexpr int kMostLooks = 1200;

double secondsOf(const timeval& time)
{
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
}

struct Child {
    pid_t id = 0;
    std::chrono::steady_clock::time_point started = std::chrono::steady_clock::now();
};

Child start(const std::vector<std::string>& arguments, const std::string& output)
{
    std::vector<std::string> copies = arguments;
    std::vector<char*> pointers;
    for (std::string& copy : copies) {
        pointers.push_back(copy.data());
    }
    pointers.push_back(nullptr);
    const pid_t child = ::fork();
    if (child < 0) {
        throw std::runtime_error("no process can be started");
    }
    if (child == 0) {
        const int file = ::open(output.c_str(), O_CREAT | O_TRUNC | O_WRONLY, 0600);
        ::dup2(file, STDOUT_FILENO);
        ::dup2(file, STDERR_FILENO);
        ::execv(pointers.front(), pointers.data());
        ::_exit(127);
    }
    return {child};
}

ProcessCost costOf(const Child& child)
{
    int status = 0;
    rusage usage{};
    ::wait4(child.id, &status, 0, &usage);
    const std::chrono::duration<double> elapsed = std::chrono::steady_clock::now() - child.started;
    return {secondsOf(usage.ru_utime) + secondsOf(usage.ru_stime), elapsed.count(), static_cast<double>(usage.ru_maxrss) * 1024 / 1e6,
            WIFEXITED(status) ? WEXITSTATUS(status) : -1};
}

/// User and system time of a running process in clock ticks; see proc(5), fields 14 and 15 of stat.
long ticksOf(pid_t child)
{
    std::ifstream stat("/proc/" + std::to_string(child) + "/stat");
    std::string text{std::istreambuf_iterator<char>(stat), {}};
    std::istringstream fields(text.substr(text.rfind(')') + 1));
    std::string skipped;
    for (int i = 3; i < 14; ++i) {
        fields >> skipped;
    }
    long user = 0;
    long system = 0;
    fields >> user >> system;
    return user + system;
}

}  // namespace

ProcessCost runToEnd(const std::vector<std::string>& arguments, const std::string& output)
{
    return costOf(start(arguments, output));
}

ProcessCost runUntilQuiet(const std::vector<std::string>& arguments, const std::string& output)
{
    const Child child = start(arguments, output);
    long last = -1;
    for (int looks = 0, quiet = 0; looks < kMostLooks && quiet < kQuietLooks; ++looks) {
        std::this_thread::sleep_for(kLook);
        const long ticks = ticksOf(child.id);
        quiet = ticks == last ? quiet + 1 : 0;
        last = ticks;
    }
    ::kill(child.id, SIGKILL);  // asked to end, it would make a backup first
    return costOf(child);
}

}  // namespace chalk::bench
